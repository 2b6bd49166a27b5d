/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-price-text.h"

/* What a price's smallest unit is in a CwDecimal. */
static CwDecimal
smallest (const CwCurrency *currency)
{
  CwDecimal size = CW_DECIMAL_ONE;
  for (guint i = 0; i < currency->places; i++)
    size /= 10;
  return size;
}

char *
cw_price_text (CwDecimal price, const char *currency,
               const CwTextStyle *style)
{
  g_return_val_if_fail (currency != NULL && style != NULL, NULL);
  const CwCurrency of = cw_currency (currency, CW_HALF_AWAY);
  return price % smallest (&of) == 0
             ? cw_text_style_number (style, cw_decimal_to_double (price),
                                     of.places)
             : cw_decimal_format (price, style);
}

char *
cw_price_entry_text (CwDecimal price, const char *currency,
                     const CwTextStyle *style)
{
  g_return_val_if_fail (style != NULL, NULL);
  CwTextStyle plain = *style;
  plain.thousands[0] = '\0';
  return cw_price_text (price, currency, &plain);
}

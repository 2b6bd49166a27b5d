/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-amount-text.h"

#include <math.h>

#include "cw-i18n.h"

char *
cw_amount_text (const CwTextStyle *style, double value, const char *unit,
                const char **shown_unit)
{
  CwShownAmount shown = cw_text_style_amount (style, value, unit);
  if (shown_unit)
    *shown_unit = shown.unit;
  return cw_text_style_number (style, shown.value, shown.decimals);
}

char *
cw_amount_text_with_unit (const CwTextStyle *style, double value,
                          const char *unit)
{
  const char *shown_unit;
  g_autofree char *number = cw_amount_text (style, value, unit, &shown_unit);
  return *shown_unit ? g_strdup_printf ("%s %s", number, shown_unit)
                     : g_strdup (number);
}

char *
cw_amount_order_text (const CwTextStyle *style, const CwQuantity *quantity)
{
  if (isnan (quantity->order_amount) || !*quantity->order_unit)
    return NULL;
  g_autofree char *number
      = cw_text_style_number (style, quantity->order_amount, 0);
  /* Translators: a count and what is counted: "12 × box". */
  return g_strdup_printf (_("order %s × %s"), number,
                          _(quantity->order_unit));
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-money.h"

#include <math.h>
#include <string.h>

__extension__ typedef __int128 Wide;

#define PLACES 4

/* ISO 4217, table A.1, from memory: those with other than two places. */
static const struct
{
  const char *code;
  guint places;
} minor_units[] = {
  { "BIF", 0 }, { "CLP", 0 }, { "DJF", 0 }, { "GNF", 0 }, { "ISK", 0 },
  { "JPY", 0 }, { "KMF", 0 }, { "KRW", 0 }, { "PYG", 0 }, { "RWF", 0 },
  { "UGX", 0 }, { "UYI", 0 }, { "VND", 0 }, { "VUV", 0 }, { "XAF", 0 },
  { "XOF", 0 }, { "XPF", 0 }, { "BHD", 3 }, { "IQD", 3 }, { "JOD", 3 },
  { "KWD", 3 }, { "LYD", 3 }, { "OMR", 3 }, { "TND", 3 }, { "CLF", 4 },
  { "UYW", 4 },
};

gboolean
cw_currency_is_code (const char *text)
{
  return text && strlen (text) == 3 && g_ascii_isupper (text[0])
         && g_ascii_isupper (text[1]) && g_ascii_isupper (text[2]);
}

CwCurrency
cw_currency (const char *code, CwHalf half)
{
  CwCurrency currency = { "", 2, half };

  if (!cw_currency_is_code (code))
    return currency;
  currency.code = g_intern_string (code);
  for (gsize i = 0; i < G_N_ELEMENTS (minor_units); i++)
    if (g_str_equal (minor_units[i].code, code))
      currency.places = minor_units[i].places;
  return currency;
}

static Wide
power_of_ten (guint exponent)
{
  Wide power = 1;

  for (; exponent > 0; exponent--)
    power *= 10;
  return power;
}

/* @number ÷ @by, @by over 0, to a whole number. */
static Wide
divide (Wide number, Wide by, CwHalf half)
{
  Wide size = number < 0 ? -number : number;
  Wide whole = size / by, twice = size % by * 2;

  if (twice > by || (twice == by && (half == CW_HALF_AWAY || whole % 2)))
    whole++;
  return number < 0 ? -whole : whole;
}

static CwMoney
within (Wide money)
{
  return (CwMoney) CLAMP (money, -(Wide) CW_MONEY_MOST, (Wide) CW_MONEY_MOST);
}

/* @number ÷ @by units of the currency. */
static CwMoney
rounded (Wide number, Wide by, const CwCurrency *currency)
{
  Wide minors = divide (number * power_of_ten (currency->places), by,
                        currency->half);

  return within (minors * power_of_ten (PLACES - currency->places));
}

CwMoney
cw_money_of (CwDecimal amount, CwDecimal price, const CwCurrency *currency)
{
  g_return_val_if_fail (currency != NULL, 0);

  /* Up to 10^18 each: there is room for four places more in 128 bits only
   * when both are not at their ends, which no bid is. */
  if (fabs ((double) amount * (double) price) > 1e33)
    return (amount < 0) == (price < 0) ? CW_MONEY_MOST : -CW_MONEY_MOST;
  return rounded ((Wide) amount * price,
                  (Wide) CW_DECIMAL_ONE * CW_DECIMAL_ONE, currency);
}

CwMoney
cw_money_percent (CwMoney of, CwDecimal percent, const CwCurrency *currency)
{
  g_return_val_if_fail (currency != NULL, 0);

  return rounded ((Wide) of * percent,
                  (Wide) CW_MONEY_ONE * CW_DECIMAL_ONE * 100, currency);
}

CwMoney
cw_money_margin (CwMoney cost, CwDecimal percent, const CwCurrency *currency)
{
  g_return_val_if_fail (currency != NULL, 0);
  g_return_val_if_fail (percent < CW_DECIMAL (100), 0);

  return rounded ((Wide) cost * percent,
                  (Wide) CW_MONEY_ONE * (CW_DECIMAL (100) - percent),
                  currency);
}

CwMoney
cw_money_per (CwMoney of, CwDecimal amount, const CwCurrency *currency)
{
  g_return_val_if_fail (currency != NULL, 0);

  if (amount <= 0)
    return 0;
  return rounded ((Wide) of * CW_DECIMAL_ONE, (Wide) CW_MONEY_ONE * amount,
                  currency);
}

CwMoney
cw_money_round_up (CwMoney money, CwDecimal step)
{
  const CwMoney by = step / (CW_DECIMAL_ONE / CW_MONEY_ONE);
  const CwMoney over = by > 0 ? money % by : 0;

  if (over == 0)
    return money;
  return money - over + (over > 0 ? by : 0);
}

CwDecimal
cw_money_amount (double amount)
{
  const double most = (double) CW_DECIMAL_MOST;

  return llround (CLAMP (amount * 1e6, -most, most));
}

char *
cw_money_to_text (CwMoney money, const CwCurrency *currency)
{
  g_return_val_if_fail (currency != NULL, NULL);

  const guint64 size = (guint64) (money < 0 ? -money : money);
  const char *sign = money < 0 ? "-" : "";
  const guint64 whole = size / CW_MONEY_ONE;
  guint part = (guint) (size % CW_MONEY_ONE);

  if (currency->places == 0)
    return g_strdup_printf ("%s%" G_GUINT64_FORMAT, sign, whole);
  for (guint i = currency->places; i < PLACES; i++)
    part /= 10;
  return g_strdup_printf ("%s%" G_GUINT64_FORMAT ".%0*u", sign, whole,
                          (int) currency->places, part);
}

char *
cw_money_format (CwMoney money, const CwCurrency *currency,
                 const CwTextStyle *style)
{
  g_return_val_if_fail (currency != NULL && style != NULL, NULL);

  g_autofree char *plain = cw_money_to_text (ABS (money), currency);
  const char *point = strchr (plain, '.');
  GString *text = g_string_new (money < 0 ? "−" : "");

  cw_text_style_append_whole (style, text, plain,
                              point ? (gsize) (point - plain)
                                    : strlen (plain));
  if (point)
    g_string_append_printf (text, "%s%s", style->decimal, point + 1);
  if (*currency->code)
    g_string_append_printf (text, " %s", currency->code);
  return g_string_free (text, FALSE);
}

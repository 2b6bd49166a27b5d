/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-text-style.h"

#include <locale.h>
#include <math.h>
#include <string.h>

#include "cw-money.h"

/* Binary fractions carry noise after the fifteenth digit: 2.675 is kept as
 * 2.67499999999999982. Rounding what fifteen digits say is what a reader
 * would do. */
#define SIGNIFICANT 15

CwTextStyle
cw_text_style_plain (CwUnits units)
{
  return (CwTextStyle){
    .units = units, .fraction = 64, .decimals = 1, .decimal = "."
  };
}

/* Takes a sign of the locale, where it is text that fits. */
static void
take_sign (char sign[8], const char *from)
{
  if (strlen (from) < 8 && g_utf8_validate (from, -1, NULL))
    g_strlcpy (sign, from, 8);
}

CwTextStyle
cw_text_style_for_locale (CwUnits units)
{
  CwTextStyle style
      = { .units = units, .fraction = 16, .decimals = 0, .decimal = "." };
  const struct lconv *convention = localeconv ();
  if (*convention->decimal_point != '\0')
    take_sign (style.decimal, convention->decimal_point);
  take_sign (style.thousands, convention->thousands_sep);
  return style;
}

/* Adds one to a string of digits; TRUE when it ran over (999 → 000). */
static gboolean
increment (char *digits, gsize n)
{
  while (n-- > 0)
    {
      if (digits[n]++ != '9')
        return FALSE;
      digits[n] = '0';
    }
  return TRUE;
}

/*
 * The digits of @value × 10^@decimals rounded to a whole number, at least
 * @decimals + 1 of them.
 */
static char *
rounded_digits (double value, guint decimals)
{
  /* "d.dddddddddddddde±xx" */
  char scientific[G_ASCII_DTOSTR_BUF_SIZE];
  g_ascii_formatd (scientific, sizeof scientific, "%.14e", fabs (value));
  int exponent = (int)g_ascii_strtoll (strchr (scientific, 'e') + 1, NULL, 10);
  char digits[SIGNIFICANT + 1];
  digits[0] = scientific[0];
  memcpy (digits + 1, scientific + 2, SIGNIFICANT - 1);
  digits[SIGNIFICANT] = '\0';

  int n_kept = exponent + 1 + (int)decimals;
  GString *kept = g_string_new (NULL);
  for (int i = 0; i < n_kept; i++)
    g_string_append_c (kept, i < SIGNIFICANT ? digits[i] : '0');
  if (n_kept >= 0 && n_kept < SIGNIFICANT && digits[n_kept] >= '5'
      && increment (kept->str, kept->len))
    g_string_prepend_c (kept, '1');
  while (kept->len < decimals + 1)
    g_string_prepend_c (kept, '0');
  return g_string_free (kept, FALSE);
}

void
cw_text_style_append_whole (const CwTextStyle *style, GString *text,
                            const char *digits, gsize n)
{
  g_return_if_fail (style != NULL && text != NULL);

  for (gsize i = 0; i < n; i++)
    {
      if (i > 0 && (n - i) % 3 == 0)
        g_string_append (text, style->thousands);
      g_string_append_c (text, digits[i]);
    }
}

char *
cw_text_style_number (const CwTextStyle *style, double value, guint decimals)
{
  g_return_val_if_fail (style != NULL, NULL);

  if (!isfinite (value))
    return g_strdup ("–");

  g_autofree char *digits = rounded_digits (value, decimals);
  gsize n_whole = strlen (digits) - decimals;
  gboolean is_zero = strspn (digits, "0") == strlen (digits);
  GString *text = g_string_new (value < 0 && !is_zero ? "−" : "");
  cw_text_style_append_whole (style, text, digits, n_whole);
  if (decimals > 0)
    g_string_append_printf (text, "%s%s", style->decimal, digits + n_whole);
  return g_string_free (text, FALSE);
}

/* How an amount of each unit is shown in either system. The factors are exact
 * by definition or follow from such: 1 ft = 0.3048 m, 1 US gal = 231 in³,
 * 1 lb = 0.45359237 kg, and its force in 9.80665 m/s² 4.4482216152605 N. */
#define SQUARE_FOOT 0.09290304
#define GALLON 3.785411784
#define POUND 0.45359237
#define POUND_FORCE 4.4482216152605
static const struct
{
  const char *unit;
  guint decimals; /* metric */
  const char *us_unit;
  double us_size; /* of a US unit in the metric one */
  guint us_decimals;
} shown[] = {
  { "m", 2, "ft", 0.3048, 1 },
  { "m²", 2, "ft²", SQUARE_FOOT, 1 },
  { "L", 1, "gal", GALLON, 1 },
  { "mL", 0, "fl oz", GALLON * 1000 / 128, 1 },
  { "kg", 1, "lb", POUND, 1 },
  { "kg/m²", 1, "lb/ft²", POUND / SQUARE_FOOT, 2 },
  { "L/m²", 2, "gal/ft²", GALLON / SQUARE_FOOT, 3 },
  { "m/h", 1, "ft/h", 0.3048, 0 },
  { "m²/h", 1, "ft²/h", SQUARE_FOOT, 0 },
  { "Pa", 0, "psf", POUND_FORCE / SQUARE_FOOT, 1 },
  { "MPa", 0, "ksi", POUND_FORCE / 645.16 * 1000, 1 },
  { "N", 0, "lb", POUND_FORCE, 0 },
  { "m/s", 1, "mph", 0.44704, 0 },
  { "h", 1, "h", 1, 1 },
  { "d", 1, "d", 1, 1 },
  { "%", 1, "%", 1, 1 },
  { "", 0, "", 1, 0 },
};

CwShownAmount
cw_text_style_amount (const CwTextStyle *style, double value, const char *unit)
{
  CwShownAmount amount = { value, unit, 2 };
  g_return_val_if_fail (style != NULL && unit != NULL, amount);

  for (gsize i = 0; i < G_N_ELEMENTS (shown); i++)
    if (g_str_equal (shown[i].unit, unit))
      return style->units == CW_UNITS_US
                 ? (CwShownAmount){ value / shown[i].us_size, shown[i].us_unit,
                                    shown[i].us_decimals }
                 : (CwShownAmount){ value, shown[i].unit, shown[i].decimals };
  if (cw_currency_is_code (unit))
    amount.decimals = cw_currency (unit, CW_HALF_AWAY).places;
  return amount;
}

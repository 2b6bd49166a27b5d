/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-decimal.h"

#include <string.h>

#include "cw-i18n.h"
#include "cw-text-scan.h"

#define PLACES 6

/* FALSE when @number is out of bounds. */
static gboolean
to_millionths (CwScannedNumber number, CwDecimal *value)
{
  for (; number.places < PLACES; number.places++)
    {
      if (number.digits > CW_DECIMAL_MOST / 10)
        return FALSE;
      number.digits *= 10;
    }
  *value = number.digits;
  return number.digits <= CW_DECIMAL_MOST;
}

/* The shape of a number in a file: -12, 0.5; not +1, .5, 5. or 1e3. Tells the
 * length of the whole part and of the places. */
static gboolean
measure_file_number (const char *digits, gsize *n_whole, gsize *n_places)
{
  *n_whole = strspn (digits, "0123456789");
  *n_places = 0;
  if (digits[*n_whole] == '\0')
    return *n_whole > 0;
  if (digits[*n_whole] != '.')
    return FALSE;
  *n_places = strspn (digits + *n_whole + 1, "0123456789");
  return *n_whole > 0 && *n_places > 0 && *n_places <= PLACES
         && digits[*n_whole + 1 + *n_places] == '\0';
}

gboolean
cw_decimal_from_text (const char *text, CwDecimal *value)
{
  g_return_val_if_fail (text != NULL && value != NULL, FALSE);

  gboolean is_minus = *text == '-';
  const char *digits = text + is_minus;
  gsize n_whole, n_places;
  if (!measure_file_number (digits, &n_whole, &n_places))
    return FALSE;

  CwScannedNumber number = { 0, n_places };
  for (const char *at = digits; *at != '\0'; at++)
    {
      if (*at == '.')
        continue;
      if (number.digits > CW_DECIMAL_MOST / 10)
        return FALSE;
      number.digits = number.digits * 10 + (*at - '0');
    }
  if (!to_millionths (number, value))
    return FALSE;
  *value = is_minus ? -*value : *value;
  return TRUE;
}

/* The number with the given signs and no trailing zeros. */
static char *
write_decimal (CwDecimal value, const char *minus, const char *point)
{
  guint64 size = value < 0 ? -(guint64)value : (guint64)value;
  guint64 whole = size / CW_DECIMAL_ONE;
  guint part = size % CW_DECIMAL_ONE;
  const char *sign = value < 0 ? minus : "";

  if (part == 0)
    return g_strdup_printf ("%s%" G_GUINT64_FORMAT, sign, whole);

  int places = PLACES;
  for (; part % 10 == 0; part /= 10)
    places--;
  return g_strdup_printf ("%s%" G_GUINT64_FORMAT "%s%0*u", sign, whole, point,
                          places, part);
}

char *
cw_decimal_to_text (CwDecimal value)
{
  return write_decimal (value, "-", ".");
}

gboolean
cw_decimal_parse (const char *text, const CwTextStyle *style, CwDecimal *value,
                  GError **error)
{
  g_return_val_if_fail (text != NULL && style != NULL && value != NULL, FALSE);

  CwTextScan scan;
  if (!cw_text_scan_begin (&scan, text, style, error))
    return FALSE;
  gboolean is_minus = cw_text_scan_dash (&scan);
  cw_text_scan_blanks (&scan);
  const char *start = scan.at;
  CwScannedNumber number;
  if (!cw_text_scan_number (&scan, &number, error)
      || !cw_text_scan_end (&scan, _ ("Only a number is expected here"), error))
    return FALSE;

  if (number.places > PLACES)
    return cw_text_scan_refuse (&scan, start, CW_TEXT_ERROR_RANGE,
                                _ ("At most six decimals are kept"), error);
  CwDecimal size;
  if (!to_millionths (number, &size))
    return cw_text_scan_refuse (&scan, start, CW_TEXT_ERROR_RANGE,
                                _ ("The number is too large"), error);
  *value = is_minus ? -size : size;
  return TRUE;
}

char *
cw_decimal_format (CwDecimal value, const CwTextStyle *style)
{
  g_return_val_if_fail (style != NULL, NULL);

  return write_decimal (value, "−", style->decimal);
}

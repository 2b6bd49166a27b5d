/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Writing lengths, and lengths of files.
 */
#include "cw-length.h"

#include "cw-decimal.h"

#define FINEST_FRACTION 64

gboolean
cw_length_from_mm_text (const char *text, CwLength *length)
{
  g_return_val_if_fail (text != NULL && length != NULL, FALSE);

  /* Millionths of a millimetre are nanometres. */
  CwDecimal mm;
  if (!cw_decimal_from_text (text, &mm) || mm > CW_LENGTH_MOST
      || mm < -CW_LENGTH_MOST)
    return FALSE;
  *length = mm;
  return TRUE;
}

char *
cw_length_to_mm_text (CwLength length)
{
  return cw_decimal_to_text (length);
}

static gint64
greatest_common_divisor (gint64 a, gint64 b)
{
  while (b != 0)
    {
      gint64 rest = a % b;
      a = b;
      b = rest;
    }
  return a;
}

/* Whole steps nearest to @size, half upward. */
static gint64
count_steps (gint64 size, gint64 step)
{
  return (size + step / 2) / step;
}

static gint64
fraction_of (const CwTextStyle *style)
{
  return CLAMP (style->fraction, 1, FINEST_FRACTION);
}

static char *
join_feet (gboolean is_minus, gint64 feet, const char *inches)
{
  const char *minus = is_minus ? "−" : "";
  if (feet == 0)
    return g_strdup_printf ("%s%s″", minus, inches);
  return g_strdup_printf ("%s%" G_GINT64_FORMAT "′ %s″", minus, feet, inches);
}

/* Inches in whole steps of 1 / @fraction. Behind feet the nought is written,
 * so that 1′ 0 1/4″ is never taken for a quarter of something else. */
static char *
write_inches (gint64 steps, gint64 fraction, gboolean behind_feet)
{
  gint64 whole = steps / fraction;
  gint64 part = steps % fraction;
  if (part == 0)
    return g_strdup_printf ("%" G_GINT64_FORMAT, whole);

  gint64 common = greatest_common_divisor (fraction, part);
  g_autofree char *text
      = g_strdup_printf ("%" G_GINT64_FORMAT "/%" G_GINT64_FORMAT,
                         part / common, fraction / common);
  if (whole == 0 && !behind_feet)
    return g_steal_pointer (&text);
  return g_strdup_printf ("%" G_GINT64_FORMAT " %s", whole, text);
}

static char *
format_us (CwLength length, gint64 fraction)
{
  gint64 size = length < 0 ? -length : length;
  gint64 steps = count_steps (size, CW_NM_PER_INCH / fraction);
  gint64 feet = steps / (12 * fraction);
  g_autofree char *inches
      = write_inches (steps % (12 * fraction), fraction, feet > 0);
  return join_feet (length < 0 && steps > 0, feet, inches);
}

/* Inches with eight decimals come back to the very nanometre: the last place
 * is a quarter of one. */
static char *
format_decimal_inches (CwLength length, const CwTextStyle *style)
{
  const gint64 places = 100000000;
  gint64 size = length < 0 ? -length : length;
  gint64 rest = size % CW_NM_PER_FOOT;
  gint64 units = (gint64)(((__int128)rest * places * 2 + CW_NM_PER_INCH)
                          / (2 * CW_NM_PER_INCH));
  g_autofree char *decimals
      = g_strdup_printf ("%08" G_GINT64_FORMAT, units % places);
  for (gsize end = 8; end > 1 && decimals[end - 1] == '0'; end--)
    decimals[end - 1] = '\0';
  g_autofree char *inches = g_strdup_printf (
      "%" G_GINT64_FORMAT "%s%s", units / places, style->decimal, decimals);
  return join_feet (length < 0, size / CW_NM_PER_FOOT, inches);
}

static CwLength
metric_step (const CwTextStyle *style)
{
  CwLength step = CW_NM_PER_MM;
  for (guint i = 0; i < MIN (style->decimals, 6); i++)
    step /= 10;
  return step;
}

static char *
format_mm (CwLength length, CwLength step, const CwTextStyle *style)
{
  gint64 size = length < 0 ? -length : length;
  CwLength rounded = count_steps (size, step) * step;
  return cw_decimal_format (length < 0 ? -rounded : rounded, style);
}

char *
cw_length_format_dimension (CwLength length, const CwTextStyle *style)
{
  g_return_val_if_fail (style != NULL, NULL);

  if (style->units == CW_UNITS_US)
    return format_us (length, fraction_of (style));
  return format_mm (length, metric_step (style), style);
}

static char *
with_mm (char *number)
{
  char *text = g_strconcat (number, " mm", NULL);
  g_free (number);
  return text;
}

char *
cw_length_format (CwLength length, const CwTextStyle *style)
{
  g_return_val_if_fail (style != NULL, NULL);

  char *text = cw_length_format_dimension (length, style);
  return style->units == CW_UNITS_US ? text : with_mm (text);
}

char *
cw_length_format_exact (CwLength length, const CwTextStyle *style)
{
  g_return_val_if_fail (style != NULL, NULL);

  if (style->units == CW_UNITS_METRIC)
    return with_mm (format_mm (length, 1, style));
  if (length % (CW_NM_PER_INCH / fraction_of (style)) == 0)
    return format_us (length, fraction_of (style));
  if (length % (CW_NM_PER_INCH / FINEST_FRACTION) == 0)
    return format_us (length, FINEST_FRACTION);
  return format_decimal_inches (length, style);
}

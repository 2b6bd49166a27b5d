/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-scale.h"

#include <math.h>
#include <string.h>

#include "cw-i18n.h"
#include "cw-text-error.h"
#include "cw-text-scan.h"

/* US architects' scales are 12 / x; the metric ones are the reductions of
 * ISO 5455 (from memory). */
const CwStatedScale cw_stated_scales[] = {
  { "1/16\" = 1'-0\"", CW_UNITS_US, 192 },
  { "3/32\" = 1'-0\"", CW_UNITS_US, 128 },
  { "1/8\" = 1'-0\"", CW_UNITS_US, 96 },
  { "3/16\" = 1'-0\"", CW_UNITS_US, 64 },
  { "1/4\" = 1'-0\"", CW_UNITS_US, 48 },
  { "3/8\" = 1'-0\"", CW_UNITS_US, 32 },
  { "1/2\" = 1'-0\"", CW_UNITS_US, 24 },
  { "3/4\" = 1'-0\"", CW_UNITS_US, 16 },
  { "1\" = 1'-0\"", CW_UNITS_US, 12 },
  { "1 1/2\" = 1'-0\"", CW_UNITS_US, 8 },
  { "3\" = 1'-0\"", CW_UNITS_US, 4 },
  { "1:1000", CW_UNITS_METRIC, 1000 },
  { "1:500", CW_UNITS_METRIC, 500 },
  { "1:200", CW_UNITS_METRIC, 200 },
  { "1:100", CW_UNITS_METRIC, 100 },
  { "1:50", CW_UNITS_METRIC, 50 },
  { "1:20", CW_UNITS_METRIC, 20 },
  { "1:10", CW_UNITS_METRIC, 10 },
  { "1:5", CW_UNITS_METRIC, 5 },
  { "1:2", CW_UNITS_METRIC, 2 },
};
const guint cw_n_stated_scales = G_N_ELEMENTS (cw_stated_scales);

#define LEAST_RATIO 0.1
#define MOST_RATIO 1e6
#define LEAST_POINTS 1.0

static gboolean
ratio_in_bounds (const CwTextScan *scan, double value, double *ratio,
                 GError **error)
{
  if (!(value >= LEAST_RATIO && value <= MOST_RATIO))
    return cw_text_scan_refuse (
        scan, scan->text, CW_TEXT_ERROR_RANGE,
        _ ("A sheet's scale lies between 10:1 and 1:1000000"), error);
  *ratio = value;
  return TRUE;
}

static double
scanned_value (const CwScannedNumber *number)
{
  return (double) number->digits / pow (10, number->places);
}

/* "1:75" */
static gboolean
parse_ratio (CwTextScan *scan, double *ratio, GError **error)
{
  CwScannedNumber paper, building;

  if (!cw_text_scan_number (scan, &paper, error))
    return FALSE;
  cw_text_scan_blanks (scan);
  if (!cw_text_scan_sign (scan, ":"))
    return cw_text_scan_refuse (
        scan, scan->at, CW_TEXT_ERROR_UNEXPECTED,
        _ ("A scale is written 1:50 or 1/4\" = 1'-0\""), error);
  cw_text_scan_blanks (scan);
  if (!cw_text_scan_number (scan, &building, error)
      || !cw_text_scan_end (scan, _ ("Nothing may follow the scale"), error))
    return FALSE;
  return ratio_in_bounds (
      scan, scanned_value (&building) / MAX (scanned_value (&paper), 1e-12),
      ratio, error);
}

/* A bare number would be a guess of its unit. */
static gboolean
has_unit (const char *begin, const char *end)
{
  for (const char *at = begin; at < end; at = g_utf8_next_char (at))
    {
      gunichar c = g_utf8_get_char (at);

      if (g_unichar_isalpha (c) || strchr ("'\"", (int) MIN (c, 127)) != NULL
          || (c >= 0x2018 && c <= 0x201f) || (c >= 0x2032 && c <= 0x2034))
        return TRUE;
    }
  return FALSE;
}

/* The text from @begin to @end with a blank for each character before it, so
 * that an error counts its characters from the beginning of it all. */
static char *
in_its_place (const CwTextScan *scan, const char *begin, const char *end)
{
  glong before = g_utf8_pointer_to_offset (scan->text, begin);
  g_autofree char *blanks = g_strnfill ((gsize) before, ' ');
  g_autofree char *part = g_strndup (begin, (gsize) (end - begin));

  return g_strconcat (blanks, part, NULL);
}

/* One length of "1/4" = 1'-0"". */
static gboolean
parse_side (const CwTextScan *scan, const char *begin, const char *end,
            CwLength *length, GError **error)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_US);
  g_autofree char *side = in_its_place (scan, begin, end);
  g_autofree char *bare = g_strdup (side);
  g_autoptr (GError) cause = NULL;

  if (*g_strstrip (bare) == '\0')
    return cw_text_scan_refuse (scan, end, CW_TEXT_ERROR_EMPTY,
                                _ ("A length is expected here"), error);
  if (!cw_length_parse (side, &style, length, &cause))
    {
      gsize blanks = (gsize) g_utf8_pointer_to_offset (scan->text, begin);
      gsize offset = MAX (cw_text_error_offset (cause), blanks) - blanks;

      cw_text_error_set (error, (CwTextError) cause->code,
                         (gsize) (begin - scan->text) + offset, "%s",
                         cause->message);
      return FALSE;
    }
  if (!has_unit (begin, end))
    return cw_text_scan_refuse (
        scan, begin, CW_TEXT_ERROR_UNIT,
        _ ("Both lengths of a scale need their units, as 1/4\" = 1'-0\""),
        error);
  if (*length <= 0)
    return cw_text_scan_refuse (scan, begin, CW_TEXT_ERROR_RANGE,
                                _ ("A length of a scale is more than 0"),
                                error);
  return TRUE;
}

static gboolean
parse_equation (CwTextScan *scan, const char *equals, double *ratio,
                GError **error)
{
  CwLength paper, building;

  return parse_side (scan, scan->text, equals, &paper, error)
         && parse_side (scan, equals + 1,
                        scan->text + strlen (scan->text), &building, error)
         && ratio_in_bounds (scan, (double) building / (double) paper, ratio,
                             error);
}

gboolean
cw_sheet_scale_parse (const char *text, double *ratio, GError **error)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  CwTextScan scan;
  const char *equals;

  g_return_val_if_fail (text != NULL && ratio != NULL, FALSE);

  if (!cw_text_scan_begin (&scan, text, &style, error))
    return FALSE;
  equals = strchr (text, '=');
  return equals ? parse_equation (&scan, equals, ratio, error)
                : parse_ratio (&scan, ratio, error);
}

double
cw_sheet_scale_from_ratio (double ratio)
{
  return ratio * 25.4 / 72;
}

gboolean
cw_sheet_scale_measure (double x0, double y0, double x1, double y1,
                        CwLength length, double *mm_per_point)
{
  double points = hypot (x1 - x0, y1 - y0);

  if (!(points >= LEAST_POINTS) || length <= 0)
    return FALSE;
  *mm_per_point = (double) length / (double) CW_NM_PER_MM / points;
  return TRUE;
}

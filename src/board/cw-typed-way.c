/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-typed-way.h"

#include <math.h>
#include <string.h>

#include "cw-i18n.h"
#include "cw-typed.h"

/* A number without a sign; NULL: there is none. Either decimal mark. */
static const char *
read_number (const char *at, double *number)
{
  double place = 0;
  const char *start = at;

  *number = 0;
  for (; g_ascii_isdigit (*at) || ((*at == '.' || *at == ',') && !(place > 0));
       at++)
    {
      if (!g_ascii_isdigit (*at))
        {
          place = 1;
          continue;
        }
      *number = *number * 10 + (*at - '0');
      place *= 10;
    }
  if (place > 0)
    *number /= place;
  return at > start ? at : NULL;
}

static const char *
skip_blank (const char *at)
{
  while (*at == ' ')
    at++;
  return at;
}

static void
put_slope (CwTypedWay *way, double run, double rise)
{
  double whole = hypot (run, rise);

  way->has_slope = TRUE;
  way->run_share = run / whole;
  way->rise_share = rise / whole;
}

static gboolean
read_pitch (const char *text, double *rise, double *run)
{
  const char *at = read_number (text, rise);

  at = at ? skip_blank (at) : NULL;
  if (at == NULL || *at != ':')
    return FALSE;
  at = read_number (skip_blank (at + 1), run);
  return at && *skip_blank (at) == '\0' && *run > 0;
}

static gboolean
read_degrees (const char *text, double *degrees)
{
  const char *at = read_number (text, degrees);

  at = at ? skip_blank (at) : NULL;
  if (at == NULL)
    return FALSE;
  if (g_str_has_prefix (at, "°"))
    at += strlen ("°");
  else if (g_ascii_strncasecmp (at, "deg", 3) == 0)
    at += 3;
  else
    return FALSE;
  return *skip_blank (at) == '\0' && *degrees <= 90;
}

static gboolean
read_slope (const char *text, CwTypedWay *way)
{
  double rise, run, degrees;

  text = skip_blank (text);
  if (read_pitch (text, &rise, &run))
    put_slope (way, run, rise);
  else if (read_degrees (text, &degrees))
    put_slope (way, cos (degrees * G_PI / 180), sin (degrees * G_PI / 180));
  else
    return FALSE;
  return TRUE;
}

/* Where the slope begins in @text: after the last blank or sign before which
 * all is a length; NULL: there is none. */
static const char *
find_slope (const char *text, CwTypedWay *way)
{
  for (const char *at = text; *at; at++)
    if ((at == text || at[-1] == ' ' || at[-1] == 'x' || at[-1] == 'X'
         || at[-1] == '*' || (guchar) at[-1] == 0x97)
        && g_ascii_isdigit (*at) && read_slope (at, way))
      return at;
  return NULL;
}

/* Takes a multiplication sign off the end of @text; FALSE: there was none. */
static gboolean
take_sign (char *text)
{
  static const char *const signs[] = { "x", "X", "*", "×" };

  g_strchomp (text);
  for (guint i = 0; i < G_N_ELEMENTS (signs); i++)
    if (g_str_has_suffix (text, signs[i]))
      {
        text[strlen (text) - strlen (signs[i])] = '\0';
        g_strchomp (text);
        return TRUE;
      }
  return FALSE;
}

static gboolean
read_with_slope (const char *text, const char *slope,
                 const CwTextStyle *style, CwTypedWay *way, GError **error)
{
  g_autofree char *before = g_strndup (text, (gsize) (slope - text));
  gboolean level = take_sign (before);
  CwLength lengths[CW_TYPED_MOST];

  if (*skip_blank (before) == '\0')
    return TRUE;
  if (cw_typed_lengths (before, style, 1, 1, lengths, error) == 0)
    return FALSE;
  way->has_length = TRUE;
  way->length = lengths[0];
  if (!level)
    return TRUE;
  if (!(way->run_share > 1e-6))
    {
      cw_text_error_set (error, CW_TEXT_ERROR_RANGE, 0, "%s",
                         _ ("An upright way does not lead along; type its "
                            "length alone"));
      return FALSE;
    }
  way->has_rise = TRUE;
  way->rise = (CwLength) llround ((double) way->length * way->rise_share
                                  / way->run_share);
  return TRUE;
}

gboolean
cw_typed_way (const char *text, const CwTextStyle *style, CwTypedWay *way,
              GError **error)
{
  CwLength lengths[CW_TYPED_MOST];
  const char *slope;
  guint n;

  g_return_val_if_fail (text && style && way, FALSE);

  *way = (CwTypedWay) { .has_length = FALSE };
  slope = find_slope (text, way);
  if (slope)
    return read_with_slope (text, slope, style, way, error);
  n = cw_typed_lengths (text, style, 1, 2, lengths, error);
  if (n == 0)
    return FALSE;
  way->has_length = TRUE;
  way->length = lengths[0];
  way->has_rise = n == 2;
  way->rise = n == 2 ? lengths[1] : 0;
  return TRUE;
}

static CwPoint
go (CwPoint from, CwPoint towards, double run, double rise)
{
  double across = towards.x < from.x ? -run : run;
  double up = towards.y < from.y ? -rise : rise;

  return cw_point (from.x + (CwLength) llround (across),
                   from.y + (CwLength) llround (up));
}

gboolean
cw_typed_way_end (const CwTypedWay *way, CwPoint from, CwPoint towards,
                  CwPoint *end)
{
  double dx = (double) (towards.x - from.x);
  double dy = (double) (towards.y - from.y);
  double length = (double) way->length;

  if (way->has_length && way->has_rise)
    *end = go (from, towards, length, (double) way->rise);
  else if (way->has_length && way->has_slope)
    *end = go (from, towards, length * way->run_share,
               length * way->rise_share);
  else if (way->has_length && !cw_point_equal (from, towards))
    *end = cw_point (from.x + (CwLength) llround (dx * length / hypot (dx, dy)),
                     from.y + (CwLength) llround (dy * length / hypot (dx, dy)));
  else
    return FALSE;
  return TRUE;
}

CwPoint
cw_typed_way_onto (const CwTypedWay *way, CwPoint from, CwPoint at)
{
  double run = fabs ((double) (at.x - from.x));
  double rise = fabs ((double) (at.y - from.y));
  double along;

  if (!way->has_slope)
    return at;
  along = run * way->run_share + rise * way->rise_share;
  return go (from, at, along * way->run_share, along * way->rise_share);
}

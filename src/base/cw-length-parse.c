/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading lengths as they are typed.
 *
 *   length   = [minus] ( feet "'" [dash] inches [inch-mark]
 *                      | whole dash inches [inch-mark]
 *                      | amount [unit] )
 *   amount   = number | fraction | whole blank fraction
 *   fraction = digits "/" digits | one of ¼ ½ ¾ ⅓ …
 *
 * All arithmetic is in whole numbers of 128 bits.
 */
#include "cw-length.h"

#include <string.h>

#include "cw-i18n.h"
#include "cw-text-scan.h"

typedef __int128 Wide;

typedef enum
{
  UNIT_NONE,
  UNIT_FEET,
  UNIT_INCHES,
  UNIT_METRES,
  UNIT_CENTIMETRES,
  UNIT_MILLIMETRES,
} Unit;

/* Longer marks first, so that two feet marks are an inch mark. */
static const struct
{
  const char *mark;
  Unit unit;
} marks[] = {
  { "''", UNIT_INCHES }, { "′′", UNIT_INCHES }, { "’’", UNIT_INCHES },
  { "\"", UNIT_INCHES }, { "″", UNIT_INCHES },  { "”", UNIT_INCHES },
  { "'", UNIT_FEET },    { "′", UNIT_FEET },    { "’", UNIT_FEET },
};

static const struct
{
  const char *name;
  Unit unit;
} names[] = {
  { "ft", UNIT_FEET },   { "foot", UNIT_FEET },      { "feet", UNIT_FEET },
  { "in", UNIT_INCHES }, { "inch", UNIT_INCHES },    { "inches", UNIT_INCHES },
  { "m", UNIT_METRES },  { "cm", UNIT_CENTIMETRES }, { "mm", UNIT_MILLIMETRES },
};

static const struct
{
  const char *sign;
  guint above, below;
} fractions[] = {
  { "½", 1, 2 }, { "⅓", 1, 3 }, { "⅔", 2, 3 },  { "¼", 1, 4 }, { "¾", 3, 4 },
  { "⅕", 1, 5 }, { "⅖", 2, 5 }, { "⅗", 3, 5 },  { "⅘", 4, 5 }, { "⅙", 1, 6 },
  { "⅚", 5, 6 }, { "⅐", 1, 7 }, { "⅛", 1, 8 },  { "⅜", 3, 8 }, { "⅝", 5, 8 },
  { "⅞", 7, 8 }, { "⅑", 1, 9 }, { "⅒", 1, 10 },
};

/* above / below, as typed. */
typedef struct
{
  Wide above, below;
  gboolean is_whole; /* digits alone */
  gboolean has_fraction;
} Amount;

static gint64
unit_size (Unit unit, const CwTextStyle *style)
{
  switch (unit)
    {
    case UNIT_FEET:
      return CW_NM_PER_FOOT;
    case UNIT_INCHES:
      return CW_NM_PER_INCH;
    case UNIT_METRES:
      return 1000 * CW_NM_PER_MM;
    case UNIT_CENTIMETRES:
      return 10 * CW_NM_PER_MM;
    case UNIT_MILLIMETRES:
      return CW_NM_PER_MM;
    case UNIT_NONE:
      break;
    }
  return style->units == CW_UNITS_US ? CW_NM_PER_INCH : CW_NM_PER_MM;
}

static gboolean
refuse (const CwTextScan *scan, const char *at, const char *sentence,
        GError **error)
{
  return cw_text_scan_refuse (scan, at, CW_TEXT_ERROR_UNEXPECTED, sentence,
                              error);
}

static gboolean
take_fraction_sign (CwTextScan *scan, Amount *amount)
{
  for (gsize i = 0; i < G_N_ELEMENTS (fractions); i++)
    if (cw_text_scan_sign (scan, fractions[i].sign))
      {
        amount->above = fractions[i].above;
        amount->below = fractions[i].below;
        amount->has_fraction = TRUE;
        return TRUE;
      }
  return FALSE;
}

static gboolean
take_slash (CwTextScan *scan)
{
  return cw_text_scan_sign (scan, "/") || cw_text_scan_sign (scan, "⁄");
}

/* What stands under the slash. */
static gboolean
take_denominator (CwTextScan *scan, Amount *amount, GError **error)
{
  const char *start = scan->at;
  CwScannedNumber below;
  if (!cw_text_scan_number (scan, &below, error))
    return FALSE;
  if (below.places > 0 || below.digits < 1 || below.digits > 1000000)
    return refuse (
        scan, start,
        _ ("Under a fraction’s line stands a whole number from 1 to 1000000"),
        error);
  amount->below = below.digits;
  amount->has_fraction = TRUE;
  return TRUE;
}

/* Whether a fraction stands next: digits and a slash, or a fraction sign. */
static gboolean
at_fraction (const CwTextScan *scan)
{
  CwTextScan ahead = *scan;
  Amount amount;
  if (take_fraction_sign (&ahead, &amount))
    return TRUE;
  if (!cw_text_scan_at_digit (&ahead))
    return FALSE;
  while (cw_text_scan_at_digit (&ahead))
    ahead.at++;
  return take_slash (&ahead);
}

/* The fraction that was seen to stand next. */
static gboolean
take_fraction (CwTextScan *scan, Amount *amount, GError **error)
{
  if (take_fraction_sign (scan, amount))
    return TRUE;
  CwScannedNumber above;
  if (!cw_text_scan_number (scan, &above, error))
    return FALSE;
  amount->above = above.digits;
  return take_slash (scan) && take_denominator (scan, amount, error);
}

/* The fraction after a whole number, if there is one: 6 1/2, 6½, and with
 * @dash also 6-1/2, which after feet can only be inches. */
static gboolean
take_mixed_part (CwTextScan *scan, gboolean dash, Amount *amount,
                 GError **error)
{
  CwTextScan ahead = *scan;
  if (!dash || !cw_text_scan_dash (&ahead))
    cw_text_scan_blanks (&ahead);
  if (!at_fraction (&ahead))
    return TRUE;

  const char *start = ahead.at;
  Amount part;
  scan->at = ahead.at;
  if (!take_fraction (scan, &part, error))
    return FALSE;
  if (part.above >= part.below)
    return refuse (scan, start,
                   _ ("A fraction after a whole number must be less than one"),
                   error);
  *amount = (Amount){ amount->above * part.below + part.above, part.below,
                      FALSE, TRUE };
  return TRUE;
}

static gboolean
take_amount (CwTextScan *scan, gboolean dash, Amount *amount, GError **error)
{
  *amount = (Amount){ 0 };
  if (at_fraction (scan))
    return take_fraction (scan, amount, error);

  CwScannedNumber number;
  if (!cw_text_scan_number (scan, &number, error))
    return FALSE;
  *amount = (Amount){ number.digits, 1, number.places == 0, FALSE };
  for (guint i = 0; i < number.places; i++)
    amount->below *= 10;
  return !amount->is_whole || take_mixed_part (scan, dash, amount, error);
}

static Unit
unit_of_name (const char *name)
{
  for (gsize i = 0; i < G_N_ELEMENTS (names); i++)
    if (g_str_equal (name, names[i].name))
      return names[i].unit;
  return UNIT_NONE;
}

/* A mark or a name in any case, "ft." and "in." too; UNIT_NONE when neither
 * stands next. */
static gboolean
take_unit (CwTextScan *scan, Unit *unit, GError **error)
{
  *unit = UNIT_NONE;
  cw_text_scan_blanks (scan);
  for (gsize i = 0; i < G_N_ELEMENTS (marks); i++)
    if (cw_text_scan_sign (scan, marks[i].mark))
      {
        *unit = marks[i].unit;
        return TRUE;
      }

  const char *start = scan->at;
  while (g_unichar_isalpha (g_utf8_get_char (scan->at)))
    scan->at = g_utf8_next_char (scan->at);
  if (scan->at == start)
    return TRUE;

  g_autofree char *typed = g_strndup (start, scan->at - start);
  g_autofree char *name = g_utf8_strdown (typed, -1);
  *unit = unit_of_name (name);
  if (*unit == UNIT_FEET || *unit == UNIT_INCHES)
    cw_text_scan_sign (scan, ".");
  if (*unit != UNIT_NONE)
    return TRUE;
  return cw_text_scan_refuse (scan, start, CW_TEXT_ERROR_UNIT,
                              _ ("The units are ', \", ft, in, m, cm and mm"),
                              error);
}

/* Amount × unit in nanometres, half away from zero. */
static Wide
to_nm (const Amount *amount, gint64 size)
{
  return (amount->above * size * 2 + amount->below) / (amount->below * 2);
}

/* Inches with or without their mark, after @feet. */
static gboolean
take_inches (CwTextScan *scan, const Amount *feet, Wide *nm, GError **error)
{
  const char *start = scan->at;
  Amount inches;
  if (!take_amount (scan, TRUE, &inches, error))
    return FALSE;
  if (inches.above >= 12 * inches.below)
    return cw_text_scan_refuse (scan, start, CW_TEXT_ERROR_RANGE,
                                _ ("Inches after feet must be less than 12"),
                                error);

  cw_text_scan_blanks (scan);
  const char *mark = scan->at;
  Unit unit;
  if (!take_unit (scan, &unit, error))
    return FALSE;
  if (unit != UNIT_NONE && unit != UNIT_INCHES)
    return cw_text_scan_refuse (scan, mark, CW_TEXT_ERROR_UNIT,
                                _ ("After feet only inches can follow"), error);
  *nm = to_nm (feet, CW_NM_PER_FOOT) + to_nm (&inches, CW_NM_PER_INCH);
  return TRUE;
}

/* What follows a feet mark: nothing, or inches after whole feet. */
static gboolean
take_after_feet (CwTextScan *scan, const Amount *feet, Wide *nm, GError **error)
{
  cw_text_scan_blanks (scan);
  if (*scan->at == '\0')
    {
      *nm = to_nm (feet, CW_NM_PER_FOOT);
      return TRUE;
    }
  if (!feet->is_whole)
    return refuse (scan, scan->at,
                   _ ("Only whole feet can be followed by inches"), error);
  if (cw_text_scan_dash (scan))
    cw_text_scan_blanks (scan);
  return take_inches (scan, feet, nm, error);
}

/* 12-6.5: the dash stands close on both sides, or it could be a minus. */
static gboolean
take_after_dash (CwTextScan *scan, const char *dash, const Amount *feet,
                 Wide *nm, GError **error)
{
  if (!feet->is_whole)
    return refuse (scan, dash, _ ("Only whole feet can stand before the dash"),
                   error);
  if (at_fraction (scan))
    return refuse (scan, dash,
                   _ ("This may be inches or feet and inches; put a foot mark "
                      "or a space instead of the dash"),
                   error);
  return take_inches (scan, feet, nm, error);
}

static gboolean
take_after_amount (CwTextScan *scan, const Amount *amount, Wide *nm,
                   GError **error)
{
  const char *dash = scan->at;
  if (cw_text_scan_dash (scan))
    return take_after_dash (scan, dash, amount, nm, error);

  Unit unit;
  if (!take_unit (scan, &unit, error))
    return FALSE;
  if (unit == UNIT_FEET)
    return take_after_feet (scan, amount, nm, error);
  if (unit == UNIT_NONE && amount->has_fraction
      && scan->style->units == CW_UNITS_METRIC)
    return cw_text_scan_refuse (scan, scan->at, CW_TEXT_ERROR_UNIT,
                                _ ("A fraction needs its unit"), error);
  *nm = to_nm (amount, unit_size (unit, scan->style));
  return TRUE;
}

gboolean
cw_length_parse (const char *text, const CwTextStyle *style, CwLength *length,
                 GError **error)
{
  g_return_val_if_fail (text != NULL && style != NULL && length != NULL, FALSE);

  CwTextScan scan;
  if (!cw_text_scan_begin (&scan, text, style, error))
    return FALSE;
  gboolean is_minus = cw_text_scan_dash (&scan);
  cw_text_scan_blanks (&scan);

  const char *start = scan.at;
  Amount amount;
  Wide nm;
  if (!take_amount (&scan, FALSE, &amount, error)
      || !take_after_amount (&scan, &amount, &nm, error)
      || !cw_text_scan_end (&scan, _ ("Nothing more is expected here"), error))
    return FALSE;

  if (nm > CW_LENGTH_MOST)
    return cw_text_scan_refuse (&scan, start, CW_TEXT_ERROR_RANGE,
                                _ ("No length here is over 1000 km"), error);
  *length = is_minus ? -(CwLength)nm : (CwLength)nm;
  return TRUE;
}

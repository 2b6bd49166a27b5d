/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-field-text.h"

#include <math.h>
#include <string.h>

#include "cw-decimal.h"
#include "cw-i18n.h"
#include "cw-length.h"
#include "cw-text-error.h"

/* Places of a US number that no short one is equal to: 43 kg are 94.8 lb. */
#define SHORT_PLACES 3
#define PLACES 6

/* What one of the reader's units is in the field's own; 1 when they are the
 * same. */
static double
unit_size (const CwField *field, const CwTextStyle *style)
{
  if (field->kind != CW_FIELD_DECIMAL || !field->unit || !*field->unit)
    return 1;
  return 1 / cw_text_style_amount (style, 1, field->unit).value;
}

/* The decimal that a number of the reader's units is kept as. */
static CwDecimal
kept (CwDecimal given, double size)
{
  return (CwDecimal) round ((double) given * size);
}

static CwDecimal
to_places (double millionths, guint places)
{
  const double step = pow (10, PLACES - (int) places);
  return (CwDecimal) (round (millionths / step) * step);
}

/* In the reader's units with as few places as read the same again; where it
 * takes many, it was meant in the other system, and some are enough. */
static char *
format_in_units (CwDecimal value, double size, const CwTextStyle *style)
{
  const double millionths = (double) value / size;
  const double digits = floor (log10 (MAX (fabs (millionths) / 1e6, 1e-6)));
  guint places = 0;
  while (places <= SHORT_PLACES
         && kept (to_places (millionths, places), size) != value)
    places++;
  if (places > SHORT_PLACES)
    places = (guint) CLAMP (SHORT_PLACES - 1 - digits, 1, PLACES);
  return cw_decimal_format (to_places (millionths, places), style);
}

char *
cw_field_text_format (const CwField *field, gint64 value,
                      const CwTextStyle *style)
{
  const double size = unit_size (field, style);
  if (fabs (size - 1) > 1e-9)
    return format_in_units (value, size, style);
  switch (field->kind)
    {
    case CW_FIELD_LENGTH:
      return cw_length_format_exact (value, style);
    case CW_FIELD_DECIMAL:
      return cw_decimal_format (value, style);
    default:
      return g_strdup_printf ("%" G_GINT64_FORMAT, value);
    }
}

static gboolean
parse_count (const char *text, const CwTextStyle *style, gint64 *value,
             GError **error)
{
  CwDecimal decimal;
  if (!cw_decimal_parse (text, style, &decimal, error))
    return FALSE;
  if (decimal % CW_DECIMAL_ONE != 0)
    {
      cw_text_error_set (error, CW_TEXT_ERROR_UNEXPECTED, 0,
                         _("This is counted: type a whole number."));
      return FALSE;
    }
  *value = decimal / CW_DECIMAL_ONE;
  return TRUE;
}

/* Whether @text ends in @unit, which is then cut off. */
static gboolean
take_unit (char *text, const char *unit)
{
  if (!g_str_has_suffix (text, unit))
    return FALSE;
  text[strlen (text) - strlen (unit)] = '\0';
  return TRUE;
}

/* A number in the reader's units, or in the one that it names: "20 psf" and
 * "960 Pa" in either system. */
static gboolean
parse_in_units (const CwField *field, const char *text,
                const CwTextStyle *style, CwDecimal *value, GError **error)
{
  const CwTextStyle us = { .units = CW_UNITS_US };
  const CwShownAmount other = cw_text_style_amount (&us, 1, field->unit);
  g_autofree char *number = g_strchomp (g_strdup (text));
  double size = unit_size (field, style);
  CwDecimal given;
  if (take_unit (number, field->unit))
    size = 1;
  else if (take_unit (number, other.unit))
    size = 1 / other.value;
  if (!cw_decimal_parse (number, style, &given, error))
    return FALSE;
  *value = kept (given, size);
  return TRUE;
}

static gboolean
parse_kind (const CwField *field, const char *text, const CwTextStyle *style,
            gint64 *value, GError **error)
{
  if (field->kind == CW_FIELD_DECIMAL && field->unit && *field->unit)
    return parse_in_units (field, text, style, value, error);
  switch (field->kind)
    {
    case CW_FIELD_LENGTH:
      return cw_length_parse (text, style, value, error);
    case CW_FIELD_DECIMAL:
      return cw_decimal_parse (text, style, value, error);
    default:
      return parse_count (text, style, value, error);
    }
}

gboolean
cw_field_text_parse (const CwField *field, const char *text,
                     const CwTextStyle *style, gint64 *value, GError **error)
{
  gint64 given, least, most;
  if (!parse_kind (field, text, style, &given, error))
    return FALSE;
  cw_field_bounds (field, &least, &most);
  if (given < least || given > most)
    {
      g_autofree char *low = cw_field_text_format (field, least, style);
      g_autofree char *high = cw_field_text_format (field, most, style);
      cw_text_error_set (error, CW_TEXT_ERROR_RANGE, 0,
                         /* Translators: the least and the greatest value. */
                         _("Allowed is %s to %s."), low, high);
      return FALSE;
    }
  *value = given;
  return TRUE;
}

/* A metric length is no fraction of an inch: then one that is near. */
static char *
default_number (const CwField *field, const CwTextStyle *style)
{
  if (field->kind != CW_FIELD_LENGTH)
    return cw_field_text_format (field, field->fallback, style);
  CwLength shown;
  g_autofree char *near = cw_length_format (field->fallback, style);
  if (cw_length_parse (near, style, &shown, NULL)
      && shown == field->fallback)
    return g_steal_pointer (&near);
  return g_strconcat ("≈ ", near, NULL);
}

/* The default as words; NULL when there is none to tell. (transfer full) */
static char *
default_text (const CwField *field, const CwTextStyle *style)
{
  if (cw_field_is_text (field) || (field->flags & CW_FIELD_REQUIRED)
      || (field->flags & CW_FIELD_FROM_MARK))
    return NULL;
  if (field->kind == CW_FIELD_YES_NO)
    return g_strdup (field->fallback ? _("yes") : _("no"));
  if (field->kind == CW_FIELD_CHOICE)
    {
      const CwChoice *choice
          = cw_field_choice_by_value (field, field->fallback);
      return choice ? g_strdup (_(choice->label)) : NULL;
    }
  g_autofree char *number = default_number (field, style);
  const char *unit = cw_field_text_unit (field, style);
  return *unit ? g_strdup_printf ("%s %s", number, unit)
               : g_steal_pointer (&number);
}

char *
cw_field_text_help (const CwField *field, const CwTextStyle *style)
{
  const char *help = field->help ? _(field->help) : "";
  g_autofree char *fallback = default_text (field, style);
  if (!fallback)
    return g_strdup (help);
  /* Translators: what an attribute is for, then its default. */
  return g_strdup_printf (_("%s Default: %s."), help, fallback);
}

const char *
cw_field_text_unit (const CwField *field, const CwTextStyle *style)
{
  if (field->kind == CW_FIELD_LENGTH || !field->unit)
    return "";
  return field->kind == CW_FIELD_DECIMAL
             ? cw_text_style_amount (style, 1, field->unit).unit
             : field->unit;
}

char *
cw_field_text_pointed (const char *text, const GError *error)
{
  gsize offset = MIN (cw_text_error_offset (error), strlen (text));
  if (offset == 0 || !g_utf8_validate (text, (gssize) offset, NULL))
    return g_strdup (error->message);
  g_autofree char *good = g_strndup (text, offset);
  /* Translators: first what could be read of the text, then what is wrong
   * with what follows. */
  return g_strdup_printf (_("%s ▸ %s"), good, error->message);
}

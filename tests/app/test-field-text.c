/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "cw-case-table.h"
#include "cw-field-text.h"
#include "cw-project.h"
#include "cw-text-error.h"

static const CwField *
find_field (const char *element, const char *name)
{
  for (const CwNodeType *const *type = cw_node_types; *type; type++)
    if (strcmp ((*type)->element, element) == 0)
      {
        int index = cw_node_type_field (*type, name);
        g_assert_cmpint (index, >=, 0);
        return &(*type)->fields[index];
      }
  g_error ("no element %s", element);
  return NULL;
}

static CwTextStyle
style_named (const char *name)
{
  CwTextStyle style = cw_text_style_plain (
      strcmp (name, "us") == 0 ? CW_UNITS_US : CW_UNITS_METRIC);
  if (g_str_has_suffix (name, "-comma"))
    strcpy (style.decimal, ",");
  return style;
}

/* What was read is written so that it reads the same again. */
static void
read_and_written (void)
{
  g_autoptr (GPtrArray) cases = cw_case_table_load ("app/field-texts.tsv", 5);
  for (guint i = 0; i < cases->len; i++)
    {
      char **at = ((CwCase *) cases->pdata[i])->columns;
      const CwField *field = find_field (at[0], at[1]);
      CwTextStyle style = style_named (at[2]);
      g_autofree char *text = cw_case_quoted (at[3]);
      g_autoptr (GError) error = NULL;
      gint64 value, again;
      g_test_message ("%s", at[3]);
      g_assert_true (
          cw_field_text_parse (field, text, &style, &value, &error));
      g_assert_no_error (error);
      g_assert_cmpint (value, ==, g_ascii_strtoll (at[4], NULL, 10));
      g_autofree char *written = cw_field_text_format (field, value, &style);
      g_assert_true (
          cw_field_text_parse (field, written, &style, &again, &error));
      g_assert_cmpint (again, ==, value);
    }
}

static void
refused (void)
{
  g_autoptr (GPtrArray) cases
      = cw_case_table_load ("app/field-texts-refused.tsv", 6);
  for (guint i = 0; i < cases->len; i++)
    {
      char **at = ((CwCase *) cases->pdata[i])->columns;
      CwTextStyle style = style_named (at[2]);
      g_autofree char *text = cw_case_quoted (at[3]);
      g_autoptr (GError) error = NULL;
      gint64 value = 42;
      g_test_message ("%s", at[3]);
      g_assert_false (cw_field_text_parse (find_field (at[0], at[1]), text,
                                           &style, &value, &error));
      g_assert_cmpint (value, ==, 42);
      g_assert_cmpuint (cw_text_error_offset (error), ==,
                        g_ascii_strtoull (at[4], NULL, 10));
      if (strcmp (at[5], "-") != 0)
        g_assert_nonnull (strstr (error->message, at[5]));
    }
}

/* The message stands behind what could be read. */
static void
points_at_the_character (void)
{
  CwTextStyle style = style_named ("us");
  const CwField *field = find_field ("window", "width");
  g_autoptr (GError) error = NULL;
  gint64 value;
  g_assert_false (
      cw_field_text_parse (field, "12' 6x", &style, &value, &error));
  g_autofree char *pointed = cw_field_text_pointed ("12' 6x", error);
  g_assert_true (g_str_has_prefix (pointed, "12' 6 ▸ "));
  g_assert_true (g_str_has_suffix (pointed, error->message));
}

static void
assert_unit (const char *element, const char *field, const char *style_name,
             const char *unit)
{
  CwTextStyle style = style_named (style_name);
  g_assert_cmpstr (
      cw_field_text_unit (find_field (element, field), &style), ==, unit);
}

static void
units_beside_entries (void)
{
  assert_unit ("base-coat", "waste", "us", "%");
  assert_unit ("window", "width", "us", "");
  assert_unit ("wind", "pressure", "us", "psf");
  assert_unit ("wind", "pressure", "metric", "Pa");
  assert_unit ("wind", "speed", "us", "mph");
  assert_unit ("wind", "speed", "metric", "m/s");
  assert_unit ("panel", "mass", "us", "lb");
  assert_unit ("labour", "panels", "us", "ft²/h");
  assert_unit ("joint-mortar", "pot-life", "us", "min");
}

static void
assert_read (const char *text, const char *element, const char *name,
             gint64 expected)
{
  CwTextStyle style = style_named ("us");
  g_autoptr (GError) error = NULL;
  gint64 value;
  cw_field_text_parse (find_field (element, name), text, &style, &value,
                       &error);
  g_assert_no_error (error);
  g_assert_cmpint (value, ==, expected);
}

/* A designer's or a maker's figure is typed as it is given. */
static void
other_units_typed (void)
{
  assert_read ("960 Pa", "wind", "pressure", CW_DECIMAL (960));
  assert_read ("44kg", "panel", "mass", CW_DECIMAL (44));
  assert_read ("51.5 m/s ", "wind", "speed", 51500000);
}

/* What a file kept in the other system is shown short. */
static void
shown_short (void)
{
  CwTextStyle style = style_named ("us");
  g_autofree char *mass = cw_field_text_format (
      find_field ("panel", "mass"), CW_DECIMAL (43), &style);
  g_autofree char *wetting = cw_field_text_format (
      find_field ("joint-mortar", "wetting"), CW_DECIMAL_ONE / 2, &style);
  g_autofree char *payload = cw_field_text_format (
      find_field ("truck", "payload"), CW_DECIMAL (19958), &style);
  g_assert_cmpstr (mass, ==, "94.8");
  g_assert_cmpstr (wetting, ==, "0.0123");
  g_assert_cmpstr (payload, ==, "43999.9");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/field-text/read-and-written", read_and_written);
  g_test_add_func ("/field-text/refused", refused);
  g_test_add_func ("/field-text/points-at-the-character",
                   points_at_the_character);
  g_test_add_func ("/field-text/units-beside-entries", units_beside_entries);
  g_test_add_func ("/field-text/other-units-typed", other_units_typed);
  g_test_add_func ("/field-text/shown-short", shown_short);
  return g_test_run ();
}

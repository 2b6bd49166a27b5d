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
units_beside_entries (void)
{
  g_assert_cmpstr (cw_field_text_unit (find_field ("base-coat", "waste")), ==,
                   "%");
  g_assert_cmpstr (cw_field_text_unit (find_field ("window", "width")), ==,
                   "");
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
  return g_test_run ();
}

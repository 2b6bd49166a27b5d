/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-length.h"

#include <math.h>
#include <string.h>

#include "cw-case-table.h"
#include "cw-text-error.h"

#define LONG_RUN (g_getenv ("CW_LONG") != NULL)

static CwTextStyle
style_named (const char *name)
{
  CwTextStyle style = cw_text_style_plain (
      g_str_has_prefix (name, "us") ? CW_UNITS_US : CW_UNITS_METRIC);
  if (g_str_has_suffix (name, "-comma"))
    g_strlcpy (style.decimal, ",", sizeof style.decimal);
  return style;
}

static CwLength
read_length (const char *text, const CwTextStyle *style)
{
  CwLength length = 0;
  g_autoptr (GError) error = NULL;
  if (!cw_length_parse (text, style, &length, &error))
    g_error ("«%s» was refused: %s", text, error->message);
  return length;
}

static void
assert_reads (const char *text, const CwTextStyle *style, CwLength expected)
{
  CwLength length = read_length (text, style);
  if (length != expected)
    g_error ("«%s» was read as %" G_GINT64_FORMAT " nm, not %" G_GINT64_FORMAT,
             text, length, expected);
}

static void
test_read_table (void)
{
  g_autoptr (GPtrArray) table = cw_case_table_load ("base/lengths-read.tsv", 4);
  for (guint i = 0; i < table->len; i++)
    {
      const CwCase *row = table->pdata[i];
      CwTextStyle style = style_named (row->columns[0]);
      g_autofree char *text = cw_case_quoted (row->columns[1]);
      assert_reads (text, &style, g_ascii_strtoll (row->columns[2], NULL, 10));
    }
}

static CwTextError
error_named (const char *name)
{
  static const char *const names[] = { "empty", "unexpected", "unit", "range" };
  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    if (g_str_equal (names[i], name))
      return i;
  g_error ("No error is called %s", name);
}

static void
check_refused (const CwCase *row)
{
  CwTextStyle style = style_named (row->columns[0]);
  g_autofree char *text = cw_case_quoted (row->columns[1]);
  CwLength length = 4711;
  g_autoptr (GError) error = NULL;
  if (cw_length_parse (text, &style, &length, &error))
    g_error ("line %u: «%s» was not refused", row->line, text);

  g_assert_cmpint (length, ==, 4711);
  g_test_message ("«%s»: %s", text, error->message);
  g_assert_error (error, CW_TEXT_ERROR, (int)error_named (row->columns[3]));
  glong character
      = g_utf8_pointer_to_offset (text, text + cw_text_error_offset (error));
  if (character + 1 != atol (row->columns[2]))
    g_error ("line %u: «%s»: points at character %ld: %s", row->line, text,
             character + 1, error->message);
  if (strstr (error->message, row->columns[4]) == NULL)
    g_error ("line %u: «%s»: %s", row->line, text, error->message);
}

static void
test_refused_table (void)
{
  g_autoptr (GPtrArray) table
      = cw_case_table_load ("base/lengths-refused.tsv", 5);
  for (guint i = 0; i < table->len; i++)
    check_refused (table->pdata[i]);
}

static void
test_not_utf8 (void)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_US);
  CwLength length;
  g_autoptr (GError) error = NULL;
  g_assert_false (cw_length_parse ("12\xff", &style, &length, &error));
  g_assert_error (error, CW_TEXT_ERROR, CW_TEXT_ERROR_UNEXPECTED);
  g_assert_cmpuint (cw_text_error_offset (error), ==, 2);
}

static void
test_message_names_the_character (void)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_US);
  CwLength length;
  g_autoptr (GError) error = NULL;
  g_assert_false (cw_length_parse ("12′ 6 lb", &style, &length, &error));
  g_assert_cmpstr (error->message, ==,
                   "The units are ', \", ft, in, m, cm and mm "
                   "(at character 7: “l”)");
  g_assert_cmpuint (cw_text_error_offset (error), ==, strlen ("12′ 6 "));
}

/* Text → length → text → length, and the text the same both times. */
static void
assert_comes_back (CwLength length, const CwTextStyle *style)
{
  g_autofree char *text = cw_length_format (length, style);
  assert_reads (text, style, length);
  g_autofree char *again = cw_length_format (read_length (text, style), style);
  g_assert_cmpstr (again, ==, text);
  g_autofree char *exact = cw_length_format_exact (length, style);
  assert_reads (exact, style, length);
  g_autofree char *dimension = cw_length_format_dimension (length, style);
  assert_reads (dimension, style, length);
}

/* Writes the length in the ways of estimators, with its own arithmetic. */
static void
assert_us_forms (guint sixtyfourths)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_US);
  guint feet = sixtyfourths / 768, inches = sixtyfourths / 64;
  guint rest = inches % 12, part = sixtyfourths % 64;
  char decimals[16];
  /* 1/64 = 0.015625 exactly. */
  g_snprintf (decimals, sizeof decimals, "%06u", part * 15625);
  char *forms[] = { g_strdup_printf ("%u' %u %u/64\"", feet, rest, part),
                    g_strdup_printf ("%u-%u.%s", feet, rest, decimals),
                    g_strdup_printf ("%uft %u.%sin", feet, rest, decimals),
                    g_strdup_printf ("%u %u/64\"", inches, part),
                    g_strdup_printf ("%u.%s", inches, decimals) };
  for (guint i = 0; i < G_N_ELEMENTS (forms); i++)
    {
      assert_reads (forms[i], &style,
                    sixtyfourths * G_GINT64_CONSTANT (396875));
      g_free (forms[i]);
    }
}

/* Every 1/64 in up to 100 ft: 76 800 of them, all in the long run. */
static void
test_every_sixtyfourth (void)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_US);
  guint step = LONG_RUN ? 1 : 7;
  for (guint i = 0; i <= 76800; i += step)
    {
      assert_comes_back (i * G_GINT64_CONSTANT (396875), &style);
      assert_comes_back (-(gint64)i * 396875, &style);
      assert_us_forms (i);
    }
}

static void
assert_metric_forms (guint tenths)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  g_autofree char *mm = g_strdup_printf ("%u.%u", tenths / 10, tenths % 10);
  g_autofree char *cm
      = g_strdup_printf ("%u.%02u cm", tenths / 100, tenths % 100);
  g_autofree char *m
      = g_strdup_printf ("%u.%04um", tenths / 10000, tenths % 10000);
  assert_reads (mm, &style, tenths * G_GINT64_CONSTANT (100000));
  assert_reads (cm, &style, tenths * G_GINT64_CONSTANT (100000));
  assert_reads (m, &style, tenths * G_GINT64_CONSTANT (100000));
}

/* Every 0.1 mm up to 100 m: a million, all in the long run. */
static void
test_every_tenth_of_a_millimetre (void)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  guint step = LONG_RUN ? 1 : 97;
  for (guint i = 0; i <= 1000000; i += step)
    {
      assert_comes_back (i * G_GINT64_CONSTANT (100000), &style);
      assert_metric_forms (i);
    }
}

/* Any length at all comes back from its exact form, in any style. */
static void
test_exact_form_of_any_length (void)
{
  CwTextStyle styles[]
      = { style_named ("us"), style_named ("metric"), style_named ("us-comma"),
          style_named ("metric-comma") };
  styles[2].fraction = 16;
  styles[3].decimals = 0;
  for (guint i = 0; i < 20000; i++)
    {
      gint64 length = ((gint64)g_test_rand_int () << 20) ^ g_test_rand_int ();
      length = (length % CW_LENGTH_MOST) >> g_test_rand_int_range (0, 40);
      for (guint j = 0; j < G_N_ELEMENTS (styles); j++)
        {
          g_autofree char *text = cw_length_format_exact (length, &styles[j]);
          assert_reads (text, &styles[j], length);
        }
    }
}

static void
test_limits_of_length (void)
{
  CwTextStyle us = style_named ("us"), metric = style_named ("metric");
  const CwLength limits[] = { CW_LENGTH_MOST, -CW_LENGTH_MOST };
  for (guint i = 0; i < G_N_ELEMENTS (limits); i++)
    {
      g_autofree char *feet = cw_length_format_exact (limits[i], &us);
      g_autofree char *mm = cw_length_format_exact (limits[i], &metric);
      assert_reads (feet, &us, limits[i]);
      assert_reads (mm, &metric, limits[i]);
    }
}

static void
assert_written (CwLength length, const CwTextStyle *style, const char *expected)
{
  g_autofree char *text = cw_length_format (length, style);
  g_assert_cmpstr (text, ==, expected);
}

static void
test_written_us (void)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_US);
  style.fraction = 16;
  assert_written (0, &style, "0″");
  assert_written (CW_INCHES (12), &style, "1′ 0″");
  assert_written (CW_INCHES (150) + CW_INCHES (1) / 2, &style, "12′ 6 1/2″");
  assert_written (-CW_INCHES (6), &style, "−6″");
  assert_written (CW_INCHES (1) / 64, &style, "0″");
  assert_written (-CW_INCHES (1) / 64, &style, "0″");
  assert_written (CW_INCHES (1) / 32, &style, "1/16″");
  assert_written (CW_INCHES (12) - 1, &style, "1′ 0″");
  assert_written (CW_MM (3810), &style, "12′ 6″");
}

static void
test_written_metric (void)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  assert_written (0, &style, "0 mm");
  assert_written (CW_MM (3810), &style, "3810 mm");
  assert_written (CW_MM (3810) + 50000, &style, "3810.1 mm");
  assert_written (-CW_MM (3810) - 50000, &style, "−3810.1 mm");
  assert_written (-49999, &style, "0 mm");
  style = style_named ("metric-comma");
  assert_written (CW_MM (1) / 2, &style, "0,5 mm");
  style.decimals = 0;
  assert_written (CW_MM (1) / 2, &style, "1 mm");

  g_autofree char *dimension
      = cw_length_format_dimension (CW_MM (12810), &style);
  g_assert_cmpstr (dimension, ==, "12810");
}

static void
test_written_exact (void)
{
  CwTextStyle us = cw_text_style_plain (CW_UNITS_US);
  us.fraction = 16;
  g_autofree char *sixtyfourth
      = cw_length_format_exact (CW_INCHES (12) + 396875, &us);
  g_assert_cmpstr (sixtyfourth, ==, "1′ 0 1/64″");
  g_autofree char *metre = cw_length_format_exact (CW_MM (1000), &us);
  g_assert_cmpstr (metre, ==, "3′ 3.37007874″");
  CwTextStyle metric = cw_text_style_plain (CW_UNITS_METRIC);
  g_autofree char *inch = cw_length_format_exact (396875, &metric);
  g_assert_cmpstr (inch, ==, "0.396875 mm");
}

/* I-01, NIST SP 811 appendix B (from memory): exact. */
static void
test_units_of_length (void)
{
  CwTextStyle us = style_named ("us");
  g_assert_cmpint (CW_NM_PER_INCH, ==, 25400000);
  assert_reads ("1 in", &us, CW_MM (254) / 10);
  assert_reads ("1 ft", &us, CW_MM (3048) / 10);
  assert_reads ("3 ft", &us, CW_MM (9144) / 10);
  assert_reads ("0.3048 m", &us, CW_NM_PER_FOOT);
}

static void
test_file_text (void)
{
  static const struct
  {
    const char *text, *canonical;
    CwLength length;
  } good[] = {
    { "0", "0", 0 },
    { "-0", "0", 0 },
    { "0.396875", "0.396875", 396875 },
    { "-12.50", "-12.5", -12500000 },
    { "007", "7", CW_MM (7) },
    { "1000000000", "1000000000", CW_LENGTH_MOST },
    { "-1000000000.000000", "-1000000000", -CW_LENGTH_MOST },
  };
  for (guint i = 0; i < G_N_ELEMENTS (good); i++)
    {
      CwLength length = 1;
      g_assert_true (cw_length_from_mm_text (good[i].text, &length));
      g_assert_cmpint (length, ==, good[i].length);
      g_autofree char *text = cw_length_to_mm_text (length);
      g_assert_cmpstr (text, ==, good[i].canonical);
    }

  static const char *const bad[] = { "",
                                     "-",
                                     ".5",
                                     "5.",
                                     "+5",
                                     "1e3",
                                     " 5",
                                     "5 ",
                                     "5mm",
                                     "0.1234567",
                                     "1,5",
                                     "--5",
                                     "0x10",
                                     "1.2.3",
                                     "nan",
                                     "1000000000.000001",
                                     "99999999999999999999" };
  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      CwLength length;
      if (cw_length_from_mm_text (bad[i], &length))
        g_error ("“%s” was taken for a length", bad[i]);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/length/read/table", test_read_table);
  g_test_add_func ("/length/read/refused", test_refused_table);
  g_test_add_func ("/length/read/not-utf8", test_not_utf8);
  g_test_add_func ("/length/read/message", test_message_names_the_character);
  g_test_add_func ("/length/read/units", test_units_of_length);
  g_test_add_func ("/length/round-trip/sixtyfourths", test_every_sixtyfourth);
  g_test_add_func ("/length/round-trip/tenths-of-mm",
                   test_every_tenth_of_a_millimetre);
  g_test_add_func ("/length/round-trip/exact", test_exact_form_of_any_length);
  g_test_add_func ("/length/round-trip/limits", test_limits_of_length);
  g_test_add_func ("/length/write/us", test_written_us);
  g_test_add_func ("/length/write/metric", test_written_metric);
  g_test_add_func ("/length/write/exact", test_written_exact);
  g_test_add_func ("/length/file", test_file_text);
  return g_test_run ();
}

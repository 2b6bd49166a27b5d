/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-decimal.h"

#include "cw-text-error.h"

static void
assert_file_text (const char *text, CwDecimal expected, const char *canonical)
{
  CwDecimal value = 1;
  g_assert_true (cw_decimal_from_text (text, &value));
  g_assert_cmpint (value, ==, expected);
  g_autofree char *written = cw_decimal_to_text (value);
  g_assert_cmpstr (written, ==, canonical);
}

static void
test_file_text (void)
{
  assert_file_text ("43", CW_DECIMAL (43), "43");
  assert_file_text ("16.933333", 16933333, "16.933333");
  assert_file_text ("-0.000001", -1, "-0.000001");
  assert_file_text ("0.10", 100000, "0.1");
  assert_file_text ("00012", CW_DECIMAL (12), "12");
  assert_file_text ("1000000000000", CW_DECIMAL_MOST, "1000000000000");
  assert_file_text ("-1000000000000", -CW_DECIMAL_MOST, "-1000000000000");
}

static void
test_file_text_refused (void)
{
  static const char *const bad[] = { "",
                                     "-",
                                     "+1",
                                     ".5",
                                     "5.",
                                     "1e3",
                                     "1 ",
                                     " 1",
                                     "1,5",
                                     "1.2.3",
                                     "0.1234567",
                                     "0x1f",
                                     "1000000000000.000001",
                                     "99999999999999999999999999999999",
                                     "inf",
                                     "½" };
  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      CwDecimal value;
      if (cw_decimal_from_text (bad[i], &value))
        g_error ("“%s” was taken for a number", bad[i]);
    }
}

static void
assert_typed (const char *text, const CwTextStyle *style, CwDecimal expected)
{
  CwDecimal value = 1;
  g_autoptr (GError) error = NULL;
  g_assert_true (cw_decimal_parse (text, style, &value, &error));
  g_assert_no_error (error);
  g_assert_cmpint (value, ==, expected);
}

static void
test_typed (void)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  assert_typed (" 12.5 ", &style, 12500000);
  assert_typed ("−3", &style, CW_DECIMAL (-3));
  assert_typed ("-3", &style, CW_DECIMAL (-3));
  assert_typed (".25", &style, 250000);
  g_strlcpy (style.decimal, ",", sizeof style.decimal);
  assert_typed ("12,5", &style, 12500000);
}

static void
assert_typed_refused (const char *text, const CwTextStyle *style,
                      CwTextError code, gsize offset)
{
  CwDecimal value = 4711;
  g_autoptr (GError) error = NULL;
  g_assert_false (cw_decimal_parse (text, style, &value, &error));
  g_assert_error (error, CW_TEXT_ERROR, (int)code);
  g_assert_cmpuint (cw_text_error_offset (error), ==, offset);
  g_assert_cmpint (value, ==, 4711);
}

static void
test_typed_refused (void)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  assert_typed_refused ("", &style, CW_TEXT_ERROR_EMPTY, 0);
  assert_typed_refused ("twelve", &style, CW_TEXT_ERROR_UNEXPECTED, 0);
  assert_typed_refused ("12 kg", &style, CW_TEXT_ERROR_UNEXPECTED, 3);
  assert_typed_refused ("12,5", &style, CW_TEXT_ERROR_UNEXPECTED, 2);
  assert_typed_refused ("1.2345678", &style, CW_TEXT_ERROR_RANGE, 0);
  assert_typed_refused ("1000000000001", &style, CW_TEXT_ERROR_RANGE, 0);
  assert_typed_refused ("-1000000000000.1", &style, CW_TEXT_ERROR_RANGE, 1);
}

static void
test_round_trip (void)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  g_strlcpy (style.decimal, ",", sizeof style.decimal);
  for (guint i = 0; i < 20000; i++)
    {
      CwDecimal value
          = (((gint64)g_test_rand_int () << 31) ^ g_test_rand_int ())
            % CW_DECIMAL_MOST;
      g_autofree char *file = cw_decimal_to_text (value);
      CwDecimal again;
      g_assert_true (cw_decimal_from_text (file, &again));
      g_assert_cmpint (again, ==, value);
      g_autofree char *shown = cw_decimal_format (value, &style);
      assert_typed (shown, &style, value);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/decimal/file", test_file_text);
  g_test_add_func ("/decimal/file/refused", test_file_text_refused);
  g_test_add_func ("/decimal/typed", test_typed);
  g_test_add_func ("/decimal/typed/refused", test_typed_refused);
  g_test_add_func ("/decimal/round-trip", test_round_trip);
  return g_test_run ();
}

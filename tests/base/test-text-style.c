/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-text-style.h"

#include <math.h>

static void
assert_number (const CwTextStyle *style, double value, guint decimals,
               const char *expected)
{
  g_autofree char *text = cw_text_style_number (style, value, decimals);
  g_assert_cmpstr (text, ==, expected);
}

static void
test_number (void)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  assert_number (&style, 0, 0, "0");
  assert_number (&style, 0, 2, "0.00");
  assert_number (&style, 1234.5, 1, "1234.5");
  assert_number (&style, 0.05, 1, "0.1");
  assert_number (&style, 0.04, 1, "0.0");
  assert_number (&style, 0.004, 1, "0.0");
  assert_number (&style, -0.04, 1, "0.0");
  assert_number (&style, 99.95, 1, "100.0");
  assert_number (&style, 9.5, 0, "10");
  assert_number (&style, 0.5, 0, "1");
  assert_number (&style, 1e-12, 3, "0.000");
  assert_number (&style, 123456789012.0, 0, "123456789012");
  assert_number (&style, 1e20, 0, "100000000000000000000");
  assert_number (&style, NAN, 1, "–");
  assert_number (&style, INFINITY, 1, "–");
}

/* Ties go away from zero as the reader sees them, not as binary noise has
 * them: 2.675 is kept as 2.67499999999999982. */
static void
test_ties (void)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  assert_number (&style, 2.675, 2, "2.68");
  assert_number (&style, -2.675, 2, "−2.68");
  assert_number (&style, 0.125, 2, "0.13");
  assert_number (&style, 1.005, 2, "1.01");
  assert_number (&style, 2.5, 0, "3");
}

static void
test_grouping (void)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  g_strlcpy (style.decimal, ",", sizeof style.decimal);
  g_strlcpy (style.thousands, "\u202f", sizeof style.thousands);
  assert_number (&style, 999, 0, "999");
  assert_number (&style, 999.95, 1, "1\u202f000,0");
  assert_number (&style, -1234567.891, 2, "−1\u202f234\u202f567,89");
}

static void
assert_shown (CwUnits units, double value, const char *unit, double expected,
              const char *shown_unit)
{
  CwTextStyle style = cw_text_style_plain (units);
  CwShownAmount shown = cw_text_style_amount (&style, value, unit);
  g_assert_cmpfloat_with_epsilon (shown.value, expected,
                                  1e-14 * fabs (expected));
  g_assert_cmpstr (shown.unit, ==, shown_unit);
}

/* I-01 to I-04: NIST SP 811 appendix B (from memory); I-03 by 231 cubic
 * inches (derived). */
static void
test_us_amounts (void)
{
  assert_shown (CW_UNITS_US, 0.3048, "m", 1, "ft");       /* I-01 */
  assert_shown (CW_UNITS_US, 0.9144, "m", 3, "ft");       /* I-01 */
  assert_shown (CW_UNITS_US, 0.09290304, "m²", 1, "ft²"); /* I-02 */
  assert_shown (CW_UNITS_US, 0.83612736, "m²", 9, "ft²"); /* I-02 */
  assert_shown (CW_UNITS_US, 3.785411784, "L", 1, "gal"); /* I-03 */
  assert_shown (CW_UNITS_US, 231 * 0.0254 * 0.0254 * 0.0254 * 1000, "L", 1,
                "gal");                                  /* I-03 */
  assert_shown (CW_UNITS_US, 0.45359237, "kg", 1, "lb"); /* I-04 */
  assert_shown (CW_UNITS_US, 4.4482216152605, "N", 1, "lb"); /* I-04 */
  assert_shown (CW_UNITS_US, 8, "h", 8, "h");
  assert_shown (CW_UNITS_US, 5, "%", 5, "%");
  assert_shown (CW_UNITS_US, 38, "", 38, "");
  assert_shown (CW_UNITS_US, 1.5, "USD", 1.5, "USD");
}

static void
assert_us_size (double size, const char *unit, double error,
                const char *us_unit)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_US);
  CwShownAmount shown = cw_text_style_amount (&style, size, unit);
  g_assert_cmpfloat_with_epsilon (shown.value, 1, error);
  g_assert_cmpstr (shown.unit, ==, us_unit);
}

/* I-03 and I-05 to the places printed, NIST SP 811 appendix B (from memory);
 * a mile is 5280 ft (derived from I-01); the last ones follow from the ones
 * above. */
static void
test_us_sizes (void)
{
  assert_us_size (29.5735295625, "mL", 1e-14, "fl oz"); /* I-03 */
  assert_us_size (47.88026, "Pa", 1e-7, "psf");         /* I-05 */
  assert_us_size (6.894757, "MPa", 1e-7, "ksi");        /* I-05 */
  assert_us_size (5280 * 0.3048 / 3600, "m/s", 1e-14, "mph");
  assert_us_size (0.3048, "m/h", 1e-14, "ft/h");
  assert_us_size (0.09290304, "m²/h", 1e-14, "ft²/h");
  assert_us_size (0.45359237 / 0.09290304, "kg/m²", 1e-14, "lb/ft²");
  assert_us_size (3.785411784 / 0.09290304, "L/m²", 1e-14, "gal/ft²");
}

static void
test_metric_amounts (void)
{
  static const char *const units[]
      = { "m",   "m²",   "L",  "kg",  "h", "d",   "%",    "",
          "EUR", "mL",   "Pa", "MPa", "N", "m/s", "kg/m²", "L/m²",
          "m/h", "m²/h" };
  for (guint i = 0; i < G_N_ELEMENTS (units); i++)
    assert_shown (CW_UNITS_METRIC, 12.5, units[i], 12.5, units[i]);
}

static void
test_locale (void)
{
  CwTextStyle style = cw_text_style_for_locale (CW_UNITS_US);
  g_assert_cmpstr (style.decimal, ==, ".");
  g_assert_cmpstr (style.thousands, ==, "");
  g_assert_cmpuint (style.fraction, ==, 16);
  g_assert_cmpuint (style.decimals, ==, 0);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/text-style/number", test_number);
  g_test_add_func ("/text-style/number/ties", test_ties);
  g_test_add_func ("/text-style/number/grouping", test_grouping);
  g_test_add_func ("/text-style/amount/us", test_us_amounts);
  g_test_add_func ("/text-style/amount/us-sizes", test_us_sizes);
  g_test_add_func ("/text-style/amount/metric", test_metric_amounts);
  g_test_add_func ("/text-style/locale", test_locale);
  return g_test_run ();
}

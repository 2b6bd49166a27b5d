/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the window says that no widget works out: ruler marks, scales,
 * amounts.
 */
#include <math.h>

#include "cw-amount-text.h"
#include "cw-case-table.h"
#include "cw-ruler-steps.h"
#include "cw-scale-text.h"

/* At every zoom there is: numbers and marks keep their room, and a number
 * stands on a mark. */
static void
ruler_keeps_its_room (void)
{
  const CwUnits units[] = { CW_UNITS_US, CW_UNITS_METRIC };
  for (guint u = 0; u < 2; u++)
    for (double nm = 2e4; nm < 5e8; nm *= 1.3)
      {
        CwRulerSteps steps = cw_ruler_steps (units[u], nm, 60);
        g_assert_cmpint (steps.labelled % steps.fine, ==, 0);
        g_assert_cmpfloat ((double) steps.labelled / nm, >=, 60);
        g_assert_cmpfloat ((double) steps.fine / nm, >=, 6);
      }
}

static void
ruler_counts_as_the_trade_does (void)
{
  CwRulerSteps us = cw_ruler_steps (CW_UNITS_US, 5e6, 60);
  CwRulerSteps metric = cw_ruler_steps (CW_UNITS_METRIC, 5e6, 60);
  g_assert_cmpint (us.labelled, ==, CW_INCHES (12));
  g_assert_cmpint (metric.labelled, ==, CW_MM (500));
}

static void
scales_in_words (void)
{
  g_autoptr (GPtrArray) cases = cw_case_table_load ("app/scale-words.tsv", 4);
  for (guint i = 0; i < cases->len; i++)
    {
      char **at = ((CwCase *) cases->pdata[i])->columns;
      double scale
          = cw_sheet_scale_from_ratio (g_ascii_strtod (at[0], NULL));
      CwUnits units
          = g_str_equal (at[1], "us") ? CW_UNITS_US : CW_UNITS_METRIC;
      g_autofree char *text = cw_scale_text_of (scale, units);
      g_autofree char *words = cw_case_quoted (at[2]);
      g_autofree char *near = cw_case_quoted (at[3]);
      const CwStatedScale *stated = cw_scale_near (scale, units);
      g_assert_cmpstr (text, ==, words);
      g_assert_cmpstr (stated ? stated->label : "", ==, near);
    }
}

static void
amounts_in_units (void)
{
  CwTextStyle us = cw_text_style_plain (CW_UNITS_US);
  CwTextStyle metric = cw_text_style_plain (CW_UNITS_METRIC);
  g_autofree char *feet = cw_amount_text_with_unit (&us, 3.048, "m");
  g_autofree char *metres = cw_amount_text_with_unit (&metric, 3.048, "m");
  g_autofree char *count = cw_amount_text_with_unit (&us, 12, "");
  g_assert_true (g_str_has_prefix (feet, "10"));
  g_assert_true (g_str_has_suffix (feet, " ft"));
  g_assert_true (g_str_has_prefix (metres, "3.0"));
  g_assert_true (g_str_has_suffix (metres, " m"));
  g_assert_cmpstr (count, ==, "12");
}

static void
orders_in_words (void)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  CwQuantity boxes = { .order_amount = 12, .order_unit = "box" };
  CwQuantity area = { .order_amount = NAN, .order_unit = "" };
  g_autofree char *order = cw_amount_order_text (&style, &boxes);
  g_assert_cmpstr (order, ==, "order 12 × box");
  g_assert_null (cw_amount_order_text (&style, &area));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/ruler/keeps-its-room", ruler_keeps_its_room);
  g_test_add_func ("/ruler/counts-as-the-trade-does",
                   ruler_counts_as_the_trade_does);
  g_test_add_func ("/scale/in-words", scales_in_words);
  g_test_add_func ("/amount/in-units", amounts_in_units);
  g_test_add_func ("/amount/orders-in-words", orders_in_words);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Named scales against the published series.
 */
#include <math.h>

#include "cw-case-table.h"
#include "cw-length.h"
#include "cw-takeoff-pdf.h"

#define ROOM 100.0      /* points */
#define POINTS_PER_MM (72 / 25.4)

static CwUnits
units_of (const CwCase *row)
{
  return g_str_equal (row->columns[0], "us") ? CW_UNITS_US : CW_UNITS_METRIC;
}

static double
choose (CwUnits units, double size, const char **label)
{
  return cw_named_scale_that_fits (units, size, size / 3, ROOM, ROOM, label);
}

/* What just fills the room at a scale gets that scale; a hair more gets the
 * next of the series. */
static void
test_series (void)
{
  g_autoptr (GPtrArray) rows = cw_case_table_load ("report/named-scales.tsv", 5);
  for (guint i = 0; i < rows->len; i++)
    {
      const CwCase *row = rows->pdata[i];
      const CwCase *next = i + 1 < rows->len ? rows->pdata[i + 1] : NULL;
      const double ratio = g_ascii_strtod (row->columns[1], NULL);
      const double size = ROOM / POINTS_PER_MM * ratio;
      const char *label = NULL;
      g_assert_cmpfloat_with_epsilon (choose (units_of (row), size, &label),
                                      ratio, 1e-12);
      g_assert_cmpstr (label, ==, row->columns[2]);
      if (!next || units_of (next) != units_of (row))
        continue;
      g_assert_cmpfloat_with_epsilon (
          choose (units_of (row), size * 1.0001, NULL),
          g_ascii_strtod (next->columns[1], NULL), 1e-12);
    }
}

static double
length_of (const char *text)
{
  const CwTextStyle style = cw_text_style_plain (CW_UNITS_US);
  g_autoptr (GError) error = NULL;
  CwLength length;
  cw_length_parse (g_strstrip ((char *) text), &style, &length, &error);
  g_assert_no_error (error);
  return (double) length;
}

/* A label says its own ratio: 12 / x for x inches to the foot. */
static void
test_labels (void)
{
  g_autoptr (GPtrArray) rows = cw_case_table_load ("report/named-scales.tsv", 5);
  for (guint i = 0; i < rows->len; i++)
    {
      const CwCase *row = rows->pdata[i];
      const double ratio = g_ascii_strtod (row->columns[1], NULL);
      const gboolean is_us = units_of (row) == CW_UNITS_US;
      g_auto (GStrv) parts
          = g_strsplit (row->columns[2], is_us ? "=" : ":", 2);
      if (is_us)
        g_assert_cmpfloat_with_epsilon (
            length_of (parts[1]) / length_of (parts[0]), ratio, 1e-12);
      else
        {
          g_auto (GStrv) groups = g_strsplit (parts[1], " ", -1);
          g_autofree char *digits = g_strjoinv ("", groups);
          g_assert_cmpfloat_with_epsilon (g_ascii_strtod (digits, NULL), ratio,
                                          1e-12);
        }
    }
}

/* The height counts as the width does. */
static void
test_height (void)
{
  const char *label;
  g_assert_cmpfloat_with_epsilon (
      cw_named_scale_that_fits (CW_UNITS_METRIC, 1000, 9000, 400, 300, &label),
      100, 1e-12);
  g_assert_cmpstr (label, ==, "1:100");
}

static void
test_beyond (void)
{
  const char *label = NULL;
  const double ratio = choose (CW_UNITS_US, 300000, &label);
  g_assert_cmpfloat (300000 * POINTS_PER_MM / ratio, <=, ROOM);
  g_assert_cmpfloat (300000 * POINTS_PER_MM / (ratio - 1), >, ROOM);
  g_assert_cmpstr (label, ==, "fitted to the page, no named scale");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/report/named-scale/series", test_series);
  g_test_add_func ("/report/named-scale/labels", test_labels);
  g_test_add_func ("/report/named-scale/height", test_height);
  g_test_add_func ("/report/named-scale/beyond", test_beyond);
  return g_test_run ();
}

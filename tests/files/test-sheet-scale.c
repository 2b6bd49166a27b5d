/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-scale.h"

#include <math.h>
#include <string.h>

#include "cw-case-table.h"
#include "cw-text-error.h"

static void
assert_near (double value, double expected, double relative)
{
  if (!(fabs (value - expected) <= relative * fabs (expected)))
    g_error ("%.12g is not %.12g", value, expected);
}

static void
test_read (void)
{
  g_autoptr (GPtrArray) table
      = cw_case_table_load ("files/scales-read.tsv", 3);

  for (guint i = 0; i < table->len; i++)
    {
      const CwCase *row = table->pdata[i];
      g_autofree char *text = cw_case_quoted (row->columns[0]);
      g_autoptr (GError) error = NULL;
      double ratio = 0;

      if (!cw_sheet_scale_parse (text, &ratio, &error))
        g_error ("«%s» was refused: %s", text, error->message);
      assert_near (ratio, g_ascii_strtod (row->columns[1], NULL), 1e-15);
    }
}

static void
test_refused (void)
{
  g_autoptr (GPtrArray) table
      = cw_case_table_load ("files/scales-refused.tsv", 2);

  for (guint i = 0; i < table->len; i++)
    {
      const CwCase *row = table->pdata[i];
      const char *part = row->n_columns > 2 ? row->columns[2] : "";
      g_autofree char *text = cw_case_quoted (row->columns[0]);
      g_autoptr (GError) error = NULL;
      double ratio = -1;

      if (cw_sheet_scale_parse (text, &ratio, &error))
        g_error ("«%s» was read as %g", text, ratio);
      g_assert_true (error->domain == CW_TEXT_ERROR);
      if (cw_text_error_offset (error)
              != g_ascii_strtoull (row->columns[1], NULL, 10)
          || strstr (error->message, part) == NULL)
        g_error ("«%s» was refused at %zu: %s", text,
                 cw_text_error_offset (error), error->message);
      g_assert_true (ratio < 0);
    }
}

/* The character named is counted over the whole text, not its part. */
static void
test_character (void)
{
  g_autoptr (GError) error = NULL;
  double ratio;

  g_assert_false (cw_sheet_scale_parse ("1/4″ = 1' ?", &ratio, &error));
  g_assert_nonnull (strstr (error->message, "character 11"));
  g_assert_cmpuint (cw_text_error_offset (error), ==, 12);
}

/* Every stated scale is read back from its own label. */
static void
test_stated (void)
{
  for (guint i = 0; i < cw_n_stated_scales; i++)
    {
      double ratio = 0;

      g_assert_true (
          cw_sheet_scale_parse (cw_stated_scales[i].label, &ratio, NULL));
      assert_near (ratio, cw_stated_scales[i].ratio, 1e-15);
    }
}

/* 1/4" = 1'-0" is 18 points a foot; 24'-6" between the levels of a real sheet
 * are 441.0 points (measured on its vectors). */
static void
test_measure (void)
{
  double mm_per_point = 0;

  g_assert_true (cw_sheet_scale_measure (
      100, 50, 100, 491, 24 * CW_NM_PER_FOOT + 6 * CW_NM_PER_INCH,
      &mm_per_point));
  assert_near (mm_per_point, cw_sheet_scale_from_ratio (48), 1e-12);
  assert_near (mm_per_point, 304.8 / 18, 1e-12);
  g_assert_true (
      cw_sheet_scale_measure (0, 0, 3, 4, CW_MM (500), &mm_per_point));
  assert_near (mm_per_point, 100, 1e-15);
}

static void
test_measure_refused (void)
{
  double mm_per_point = -1;

  g_assert_false (
      cw_sheet_scale_measure (5, 5, 5.5, 5, CW_MM (100), &mm_per_point));
  g_assert_false (cw_sheet_scale_measure (5, 5, 50, 5, 0, &mm_per_point));
  g_assert_false (cw_sheet_scale_measure (5, 5, 50, 5, -1, &mm_per_point));
  g_assert_false (
      cw_sheet_scale_measure (5, NAN, 50, 5, CW_MM (1), &mm_per_point));
  g_assert_true (mm_per_point < 0);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/files/sheet-scale/read", test_read);
  g_test_add_func ("/files/sheet-scale/refused", test_refused);
  g_test_add_func ("/files/sheet-scale/character", test_character);
  g_test_add_func ("/files/sheet-scale/stated", test_stated);
  g_test_add_func ("/files/sheet-scale/measure", test_measure);
  g_test_add_func ("/files/sheet-scale/measure-refused",
                   test_measure_refused);
  return g_test_run ();
}

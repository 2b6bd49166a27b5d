/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-grid.h"

static const CwSheetGrid page = { 2592, 1728 };

static CwSheetLookout
lookout_at (double x, double y, double pixels_a_point)
{
  return (CwSheetLookout) { x, y, pixels_a_point, pixels_a_point, 1600, 1000,
                            1 };
}

/* Drawn for the very zoom it is looked at. */
static void
test_level (void)
{
  for (double pixels = 0.0626; pixels < 31.9; pixels *= 1.07)
    {
      CwSheetLookout lookout = lookout_at (0, 0, pixels);
      int level = cw_sheet_grid_level (&lookout);
      double scale = cw_sheet_grid_scale (&page, level);

      g_assert_cmpfloat_with_epsilon (scale, pixels, 1e-6);
    }
}

static void
test_level_limits (void)
{
  CwSheetLookout near = lookout_at (0, 0, 1e6);
  CwSheetLookout far = lookout_at (0, 0, 1e-6);

  g_assert_cmpint (cw_sheet_grid_level (&near), ==, CW_SHEET_LEVEL_HIGHEST);
  g_assert_cmpint (cw_sheet_grid_level (&far), ==, CW_SHEET_LEVEL_LOWEST);
}

static void
test_level_distance (void)
{
  g_assert_cmpfloat_with_epsilon (cw_sheet_level_distance (4000, 4000), 0,
                                  1e-12);
  g_assert_cmpfloat_with_epsilon (
      cw_sheet_level_distance (8000, 4000),
      cw_sheet_level_distance (2000, 4000), 1e-12);
}

/* A screen of twice the pixels gets a drawing of twice the pixels. */
static void
test_level_of_fine_screen (void)
{
  CwSheetLookout lookout = lookout_at (0, 0, 2);

  lookout.scale_factor = 2;
  g_assert_cmpfloat_with_epsilon (
      cw_sheet_grid_scale (&page, cw_sheet_grid_level (&lookout)), 4, 1e-9);
}

/* The tiles of a level cover the page: no gap, nothing twice. */
static void
test_cover (void)
{
  for (int level = CW_SHEET_LEVEL_LOWEST; level < 5000000; level += 777777)
    {
      double scale = cw_sheet_grid_scale (&page, level);
      CwSheetKey key = { level, 0, 0 };
      CwSheetArea area;
      gint64 covered = 0;

      for (key.row = 0; key.column = 0, cw_sheet_grid_area (&page, &key, &area);
           key.row++)
        for (; cw_sheet_grid_area (&page, &key, &area); key.column++)
          covered += (gint64) area.width * area.height;
      g_assert_cmpfloat ((double) covered, >=,
                         page.width * scale * page.height * scale - 1e-6);
      g_assert_cmpfloat ((double) covered, <,
                         (page.width * scale + 1) * (page.height * scale + 1));
    }
}

static void
test_beside_page (void)
{
  CwSheetArea area;

  g_assert_false (
      cw_sheet_grid_area (&page, &(CwSheetKey) { 1000000, -1, 0 }, &area));
  g_assert_false (
      cw_sheet_grid_area (&page, &(CwSheetKey) { 1000000, 6, 0 }, &area));
  g_assert_true (
      cw_sheet_grid_area (&page, &(CwSheetKey) { 1000000, 5, 3 }, &area));
  g_assert_cmpint (area.width, ==, 2592 - 5 * 512);
  g_assert_cmpint (area.height, ==, 1728 - 3 * 512);
}

/* All of the window and no tile that it does not show. */
static void
test_span (void)
{
  CwSheetLookout lookout = lookout_at (-1000, -600, 2);
  CwSheetSpan span = cw_sheet_grid_span (&page, 2000000, &lookout);

  g_assert_cmpint (span.first_column, ==, 1000 / 512);
  g_assert_cmpint (span.last_column, ==, 2600 / 512 + 1);
  g_assert_cmpint (span.first_row, ==, 600 / 512);
  g_assert_cmpint (span.last_row, ==, 1600 / 512 + 1);
}

static void
test_span_out_of_sight (void)
{
  CwSheetLookout lookout = lookout_at (5000, 0, 2);
  CwSheetSpan span = cw_sheet_grid_span (&page, 2000000, &lookout);

  g_assert_cmpint (span.first_column, ==, span.last_column);
}

static void
test_distance (void)
{
  CwSheetSpan span = { 2, 5, 1, 4 };

  g_assert_cmpint (cw_sheet_span_distance (&span, &(CwSheetKey) { 1000000, 3, 2 }),
                   ==, 0);
  g_assert_cmpint (cw_sheet_span_distance (&span, &(CwSheetKey) { 1000000, 4, 2 }),
                   ==, 4);
  g_assert_cmpint (cw_sheet_span_distance (&span, &(CwSheetKey) { 1000000, 2, 1 }),
                   ==, 8);
}

static void
test_joined (void)
{
  CwSheetArea a = { 512, 0, 512, 512 }, b = { 0, 512, 100, 90 };
  CwSheetArea none = { 0, 0, 0, 0 };
  CwSheetArea both = cw_sheet_area_joined (a, b);
  CwSheetArea one = cw_sheet_area_joined (none, a);

  g_assert_cmpint (both.x, ==, 0);
  g_assert_cmpint (both.y, ==, 0);
  g_assert_cmpint (both.width, ==, 1024);
  g_assert_cmpint (both.height, ==, 602);
  g_assert_cmpmem (&one, sizeof one, &a, sizeof a);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/grid/level/sharp", test_level);
  g_test_add_func ("/board/grid/level/limits", test_level_limits);
  g_test_add_func ("/board/grid/level/fine-screen",
                   test_level_of_fine_screen);
  g_test_add_func ("/board/grid/level/distance", test_level_distance);
  g_test_add_func ("/board/grid/area/cover", test_cover);
  g_test_add_func ("/board/grid/area/beside", test_beside_page);
  g_test_add_func ("/board/grid/area/joined", test_joined);
  g_test_add_func ("/board/grid/span/window", test_span);
  g_test_add_func ("/board/grid/span/out-of-sight", test_span_out_of_sight);
  g_test_add_func ("/board/grid/span/distance", test_distance);
  return g_test_run ();
}

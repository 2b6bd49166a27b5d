/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-snap.h"

#include <math.h>

/* A window of 1200 × 600 mm at 1:50, its lower left corner 900 mm to the right
 * of the wall's origin and 800 above it. */
#define MM_PER_POINT (50 * 25.4 / 72)
#define AT_X 200.0
#define AT_Y 500.0

static CwDrawnLines *
window_lines (void)
{
  const double left = AT_X + 900 / MM_PER_POINT;
  const double right = left + 1200 / MM_PER_POINT;
  const double bottom = AT_Y - 800 / MM_PER_POINT;
  const double top = bottom - 600 / MM_PER_POINT;
  const CwDrawnLine sides[] = { { left, top, right, top, 0 },
                                { right, top, right, bottom, 0 },
                                { right, bottom, left, bottom, 0 },
                                { left, bottom, left, top, 0 } };
  g_autoptr (GArray) lines = g_array_new (FALSE, FALSE, sizeof *sides);

  g_array_append_vals (lines, sides, G_N_ELEMENTS (sides));
  return cw_drawn_lines_new (lines);
}

static const CwPlacing placing
    = { NULL, AT_X, AT_Y, MM_PER_POINT, MM_PER_POINT, FALSE };

/* A nanometre for the rounding of the page's points. */
static void
assert_at (CwPoint at, double x_mm, double y_mm)
{
  g_assert_cmpint (ABS (at.x - (CwLength) llround (x_mm * 1e6)), <=, 1);
  g_assert_cmpint (ABS (at.y - (CwLength) llround (y_mm * 1e6)), <=, 1);
}

static void
test_corner (void)
{
  g_autoptr (CwDrawnLines) lines = window_lines ();
  const CwSheetSpot spot = cw_sheet_snap (
      lines, &placing, cw_point (CW_MM (2080), CW_MM (1415)), CW_MM (40));

  g_assert_cmpint (spot.kind, ==, CW_DRAWN_END);
  assert_at (spot.at, 2100, 1400);
}

static void
test_run (void)
{
  g_autoptr (CwDrawnLines) lines = window_lines ();
  const CwSheetSpot spot = cw_sheet_snap (
      lines, &placing, cw_point (CW_MM (1500), CW_MM (815)), CW_MM (40));

  g_assert_cmpint (spot.kind, ==, CW_DRAWN_RUN);
  assert_at (spot.at, 1500, 800);
  g_assert_cmpint (MIN (spot.from.x, spot.to.x), ==, CW_MM (900));
  g_assert_cmpint (MAX (spot.from.x, spot.to.x), ==, CW_MM (2100));
}

static void
test_out_of_reach (void)
{
  g_autoptr (CwDrawnLines) lines = window_lines ();

  g_assert_cmpint (cw_sheet_snap (lines, &placing,
                                  cw_point (CW_MM (1500), CW_MM (1100)),
                                  CW_MM (40))
                       .kind,
                   ==, CW_DRAWN_NOTHING);
}

/* A print that came out 2 % too tall: each way by its own scale. */
static void
test_stretched (void)
{
  g_autoptr (CwDrawnLines) lines = window_lines ();
  CwPlacing stretched = placing;

  stretched.along *= 0.98;
  const CwSheetSpot spot = cw_sheet_snap (
      lines, &stretched, cw_point (CW_MM (905), CW_MM (780)), CW_MM (40));

  g_assert_cmpint (spot.kind, ==, CW_DRAWN_END);
  assert_at (spot.at, 900, 784);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/sheet-snap/corner", test_corner);
  g_test_add_func ("/board/sheet-snap/run", test_run);
  g_test_add_func ("/board/sheet-snap/out-of-reach", test_out_of_reach);
  g_test_add_func ("/board/sheet-snap/stretched", test_stretched);
  return g_test_run ();
}

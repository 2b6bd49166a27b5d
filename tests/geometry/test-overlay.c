/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Union, difference and intersection where the answer is plain.
 */
#include <math.h>

#include "cw-arch.h"

static void
assert_near (double found, double expected, double tolerance)
{
  if (!(fabs (found - expected) <= tolerance))
    g_error ("%.17g is not %.17g", found, expected);
}

static CwRegion *
box (int left, int bottom, int right, int top, guint tag)
{
  const CwBox sides
      = { CW_MM (left), CW_MM (bottom), CW_MM (right), CW_MM (top) };
  return cw_region_new_box (&sides, tag);
}

static CwRegion *
disc (int x, int y, int diameter, guint tag)
{
  return cw_hole_region_round (cw_point (CW_MM (x), CW_MM (y)),
                               CW_MM (diameter), tag);
}

/* Takes both. */
static CwRegion *
joined (CwRegion *a, CwRegion *b)
{
  const CwRegion *const both[] = { a, b };
  CwRegion *region = cw_region_union (both, 2);
  cw_region_unref (a);
  cw_region_unref (b);
  return region;
}

static CwRegion *
less (CwRegion *from, CwRegion *what)
{
  CwRegion *region = cw_region_subtract (from, what);
  cw_region_unref (from);
  cw_region_unref (what);
  return region;
}

static CwRegion *
common (CwRegion *a, CwRegion *b)
{
  CwRegion *region = cw_region_intersect (a, b);
  cw_region_unref (a);
  cw_region_unref (b);
  return region;
}

static void
assert_region (const CwRegion *region, guint n_parts, guint n_loops,
               double area, double length)
{
  g_autoptr (GPtrArray) parts = cw_region_parts (region);
  g_assert_cmpuint (parts->len, ==, n_parts);
  g_assert_cmpuint (cw_region_n_loops (region), ==, n_loops);
  assert_near (cw_region_area (region), area, 1e-8);
  assert_near (cw_region_length (region), length, 1e-7);
}

/* A hole inside keeps its own side's tag. */
static void
test_window (void)
{
  g_autoptr (CwRegion) net
      = less (box (0, 0, 9000, 2700, 1), box (900, 900, 2100, 2300, 2));
  assert_region (net, 1, 2, 24.3 - 1.68, 2 * 11.7 + 5.2);
  assert_near (cw_region_length_of (net, 1), 23.4, 1e-14);
  assert_near (cw_region_length_of (net, 2), 5.2, 1e-14);
}

/* A door stands on the base: what it takes of it is gone. */
static void
test_door (void)
{
  g_autoptr (CwRegion) net
      = less (box (0, 0, 9000, 2700, 1), box (4000, 0, 4900, 2100, 2));
  assert_region (net, 1, 1, 24.3 - 1.89, 23.4 - 0.9 + 5.1);
  assert_near (cw_region_length_of (net, 1), 22.5, 1e-14);
  assert_near (cw_region_length_of (net, 2), 5.1, 1e-14);
}

/* So is one that hangs below it. */
static void
test_over_rim (void)
{
  g_autoptr (CwRegion) net
      = less (box (0, 0, 9000, 2700, 1), box (4000, -300, 4900, 2100, 2));
  assert_region (net, 1, 1, 24.3 - 1.89, 23.4 - 0.9 + 5.1);
}

static void
test_through (void)
{
  g_autoptr (CwRegion) net
      = less (box (0, 0, 9000, 2700, 1), box (4000, -1, 4900, 2701, 2));
  assert_region (net, 2, 2, 24.3 - 2.43, 2 * 8.1 + 4 * 2.7);
}

static void
test_all_gone (void)
{
  g_autoptr (CwRegion) net
      = less (box (0, 0, 900, 2700, 1), box (-1, -1, 901, 2701, 2));
  g_autoptr (CwRegion) itself
      = less (box (0, 0, 900, 2700, 1), box (0, 0, 900, 2700, 2));
  g_assert_true (cw_region_is_empty (net));
  g_assert_true (cw_region_is_empty (itself));
}

/* What shares nothing is handed back as it is. */
static void
test_apart (void)
{
  g_autoptr (CwRegion) wall = box (0, 0, 9000, 2700, 1);
  g_autoptr (CwRegion) beside = box (9000, 0, 9900, 2700, 2);
  g_autoptr (CwRegion) net = cw_region_subtract (wall, beside);
  g_autoptr (CwRegion) both = cw_region_intersect (wall, beside);
  g_assert_true (net == wall);
  g_assert_true (cw_region_is_empty (both));
}

static void
test_overlap_once (void)
{
  g_autoptr (CwRegion) region
      = joined (box (0, 0, 1200, 1400, 1), box (1000, 400, 2200, 1800, 2));
  assert_region (region, 1, 1, 2 * 1.68 - 0.2, 2 * (2.2 + 1.8));
}

/* Openings side by side become one without the mullion between them. */
static void
test_side_by_side (void)
{
  g_autoptr (CwRegion) region
      = joined (box (0, 0, 1200, 1400, 1), box (1200, 200, 2000, 1000, 2));
  assert_region (region, 1, 1, 1.68 + 0.64, 5.2 + 3.2 - 1.6);
}

static void
test_nested (void)
{
  g_autoptr (CwRegion) region
      = joined (box (0, 0, 1200, 1400, 1), box (200, 200, 1000, 1000, 2));
  assert_region (region, 1, 1, 1.68, 5.2);
  assert_near (cw_region_length_of (region, 2), 0, 0);
}

/* The same opening drawn twice. */
static void
test_twice (void)
{
  CwRegion *arch = cw_opening_region (cw_point (0, 0), CW_MM (1500),
                                      CW_MM (1200), CW_ARCH_THREE_CENTRED,
                                      CW_MM (300));
  double area = cw_region_area (arch), length = cw_region_length (arch);
  g_autoptr (CwRegion) region = joined (cw_region_ref (arch), arch);
  assert_region (region, 1, 1, area, length);
}

/* What touches at a corner alone does not hang together. */
static void
test_corners_touch (void)
{
  g_autoptr (CwRegion) region
      = joined (box (0, 0, 1000, 1000, 1), box (1000, 1000, 2000, 2000, 2));
  assert_region (region, 2, 2, 2, 8);
}

/* A wall that an opening's corner touches from inside is still one piece;
 * touched twice it is two. */
static void
test_touched_from_inside (void)
{
  g_autoptr (CwRegion) once
      = less (box (0, 0, 3000, 2000, 1), disc (1500, 600, 1200, 2));
  assert_region (once, 1, 1, 6 - G_PI * 0.36,
                 10 + G_PI * 1.2);
  g_autoptr (CwRegion) twice
      = less (box (0, 0, 3000, 2000, 1), disc (1500, 1000, 2000, 2));
  assert_region (twice, 2, 2, 6 - G_PI, 10 + 2 * G_PI);
}

/* Two discs of 1 m radius, their middles 1 m apart: a lens of
 * 2 acos (1/2) - √3/2, by the formula for two circles. */
static void
test_lens (void)
{
  double lens = 2 * acos (0.5) - sqrt (3) / 2;
  double arc = 2 * G_PI / 3;
  g_autoptr (CwRegion) both
      = common (disc (0, 0, 2000, 1), disc (1000, 0, 2000, 2));
  g_autoptr (CwRegion) any
      = joined (disc (0, 0, 2000, 1), disc (1000, 0, 2000, 2));
  g_autoptr (CwRegion) one
      = less (disc (0, 0, 2000, 1), disc (1000, 0, 2000, 2));
  assert_region (both, 1, 1, lens, 2 * arc);
  assert_region (any, 1, 1, 2 * G_PI - lens, 2 * (2 * G_PI - arc));
  assert_region (one, 1, 1, G_PI - lens, 2 * G_PI);
}

/* Deep in a step of any walk along the arc: a lens 60 mm long, 0.9 mm thick. */
static void
test_thin_lens (void)
{
  const int r = 500;
  double half = acos ((r - 0.45) / r);
  double lens = 2 * 0.25 * (half - sin (half) * cos (half));
  g_autoptr (CwRegion) left = disc (0, 0, 2 * r, 1);
  g_autoptr (CwRegion) right = cw_hole_region_round (
      cw_point (CW_MM (2 * r) - CW_MM (9) / 10, 0), CW_MM (2 * r), 2);
  g_autoptr (CwRegion) both = cw_region_intersect (left, right);
  assert_region (both, 1, 1, lens, 4 * half * 0.5);
}

static void
test_discs_touch (void)
{
  g_autoptr (CwRegion) any
      = joined (disc (0, 0, 2000, 1), disc (1500, 0, 1000, 2));
  g_autoptr (CwRegion) both
      = common (disc (0, 0, 2000, 1), disc (1500, 0, 1000, 2));
  assert_region (any, 2, 2, G_PI * 1.25, 3 * G_PI);
  assert_near (cw_region_area (both), 0, 1e-9);
}

static void
test_ring (void)
{
  g_autoptr (CwRegion) ring
      = less (disc (0, 0, 2000, 1), disc (0, 0, 1000, 2));
  assert_region (ring, 1, 2, G_PI * 0.75, 3 * G_PI);
  g_autoptr (CwRegion) filled
      = joined (cw_region_ref (ring), disc (0, 0, 1000, 2));
  assert_region (filled, 1, 1, G_PI, 2 * G_PI);
}

/* The arches of an arcade stand springing to springing. */
static void
test_arcade (void)
{
  CwRegion *arches[5];
  for (guint i = 0; i < G_N_ELEMENTS (arches); i++)
    arches[i] = cw_opening_region (cw_point (CW_MM (1200 * (int) i), 0),
                                   CW_MM (1200), CW_MM (900),
                                   CW_ARCH_SEMICIRCULAR, CW_MM (600));
  g_autoptr (CwRegion) arcade = cw_region_union (
      (const CwRegion *const *) arches, G_N_ELEMENTS (arches));
  double area = 5 * (1.2 * 0.9 + G_PI * 0.18);
  assert_region (arcade, 1, 1, area, 6 + 2 * 0.9 + 5 * G_PI * 0.6);
  g_autoptr (CwRegion) net
      = less (box (-500, 0, 6500, 1500, 9), cw_region_ref (arcade));
  /* The crowns touch the eave, which parts the wall between them. */
  assert_region (net, 6, 6, 7 * 1.5 - area,
                 7 + 2 * 1.5 + 2 * 0.9 + 1 + 5 * G_PI * 0.6);
  for (guint i = 0; i < G_N_ELEMENTS (arches); i++)
    cw_region_unref (arches[i]);
}

/* Taken out of a piece that was cut from the wall before, and out of the wall
 * itself: the same, for the sloping side that cuts round. */
static void
test_cut_then_less (void)
{
  const CwSide sides[] = {
    cw_side_straight (cw_point (0, 0), 1),
    cw_side_straight (cw_point (CW_MM (7001), 0), 2),
    cw_side_straight (cw_point (CW_MM (3333), CW_MM (4999)), 3),
  };
  g_autoptr (CwRegion) gable
      = cw_region_new_loop (sides, G_N_ELEMENTS (sides));
  g_autoptr (CwRegion) low = NULL;
  cw_region_split (gable, CW_AXIS_Y, CW_MM (1777), 4, &low, NULL);
  g_autoptr (CwRegion) high = cw_region_subtract (gable, low);
  g_autoptr (CwRegion) both = cw_region_intersect (gable, low);
  assert_near (cw_region_area (both), cw_region_area (low), 1e-8);
  assert_region (high, 1, 1, cw_region_area (gable) - cw_region_area (low),
                 cw_region_length (high));
}

static void
test_none (void)
{
  g_autoptr (CwRegion) none = cw_region_union (NULL, 0);
  g_autoptr (CwRegion) wall = box (0, 0, 900, 900, 1);
  g_autoptr (CwRegion) net = cw_region_subtract (wall, none);
  g_autoptr (CwRegion) both = cw_region_intersect (wall, none);
  g_assert_true (cw_region_is_empty (none));
  assert_region (net, 1, 1, 0.81, 3.6);
  g_assert_true (cw_region_is_empty (both));
}

#define ADD(path, function)                                                   \
  g_test_add_func ("/geometry/overlay/" path, function)

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  ADD ("less/window", test_window);
  ADD ("less/door", test_door);
  ADD ("less/over-rim", test_over_rim);
  ADD ("less/through", test_through);
  ADD ("less/all", test_all_gone);
  ADD ("less/apart", test_apart);
  ADD ("less/touched-from-inside", test_touched_from_inside);
  ADD ("less/cut-before", test_cut_then_less);
  ADD ("joined/overlap", test_overlap_once);
  ADD ("joined/side-by-side", test_side_by_side);
  ADD ("joined/nested", test_nested);
  ADD ("joined/twice", test_twice);
  ADD ("joined/corners-touch", test_corners_touch);
  ADD ("joined/discs-touch", test_discs_touch);
  ADD ("joined/arcade", test_arcade);
  ADD ("common/lens", test_lens);
  ADD ("common/thin-lens", test_thin_lens);
  ADD ("ring", test_ring);
  ADD ("none", test_none);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-region.h"

#include <math.h>

#include "cw-arch.h"
#include "cw-outline.h"
#include "random-shape.h"

#define TAG_CUT 77

static void
assert_near (double found, double expected, double tolerance)
{
  if (!(fabs (found - expected) <= tolerance))
    g_error ("%.17g is not %.17g", found, expected);
}

static CwRegion *
box (double left, double bottom, double right, double top, guint tag)
{
  const CwBox sides = { llround (left * 1e6), llround (bottom * 1e6),
                        llround (right * 1e6), llround (top * 1e6) };
  return cw_region_new_box (&sides, tag);
}

/* Corners as pairs of mm; sides are tagged from 1. */
static CwRegion *
polygon (const double *xy, gsize n)
{
  g_autofree CwSide *sides = g_new (CwSide, n);
  for (gsize i = 0; i < n; i++)
    sides[i] = cw_side_straight (
        cw_point (llround (xy[2 * i] * 1e6), llround (xy[2 * i + 1] * 1e6)),
        (guint) i + 1);
  return cw_region_new_loop (sides, n);
}

#define POLYGON(...)                                                          \
  polygon ((const double[]){ __VA_ARGS__ },                                   \
           sizeof ((const double[]){ __VA_ARGS__ }) / sizeof (double) / 2)

static CwRegion *
arch (void)
{
  return cw_opening_region (cw_point (0, 0), CW_MM (1500), CW_MM (1200),
                            CW_ARCH_SEGMENTAL, CW_MM (300));
}

static guint
n_parts (const CwRegion *region)
{
  g_autoptr (GPtrArray) parts = cw_region_parts (region);
  return parts->len;
}

static void
test_area (void)
{
  g_autoptr (CwRegion) square = box (0, 0, 3000, 2000, 1);
  g_autoptr (CwRegion) gable
      = POLYGON (0, 0, 9000, 0, 9000, 2700, 4500, 4500, 0, 2700);
  g_autoptr (CwRegion) empty = cw_region_new_empty ();
  assert_near (cw_region_area (square), 6, 0);
  assert_near (cw_region_area (gable), 32.4, 1e-14);
  assert_near (cw_region_area (empty), 0, 0);
}

/* A square nanometre is seen beside a square kilometre. */
static void
test_area_exact (void)
{
  const CwLength km = CW_MM (1000000);
  const CwSide sides[] = {
    cw_side_straight (cw_point (0, 0), 1),
    cw_side_straight (cw_point (km, 0), 1),
    cw_side_straight (cw_point (km, 1), 1),
    cw_side_straight (cw_point (1, 1), 1),
    cw_side_straight (cw_point (1, 2), 1),
    cw_side_straight (cw_point (0, 2), 1),
  };
  g_autoptr (CwRegion) region
      = cw_region_new_loop (sides, G_N_ELEMENTS (sides));
  assert_near (cw_region_area (region), 1e-6 + 1e-18, 5e-22);
}

static void
test_lengths (void)
{
  g_autoptr (CwRegion) gable
      = POLYGON (0, 0, 9000, 0, 9000, 2700, 4500, 4500, 0, 2700);
  double rake = hypot (4.5, 1.8);
  assert_near (cw_region_length_of (gable, 1), 9, 1e-14);
  assert_near (cw_region_length_of (gable, 3), rake, 1e-14);
  assert_near (cw_region_length_of (gable, 99), 0, 0);
  assert_near (cw_region_length (gable), 9 + 2 * 2.7 + 2 * rake, 1e-13);
}

/* Given clockwise it is turned round, and each side keeps its tag. */
static void
test_turned (void)
{
  g_autoptr (CwRegion) region
      = POLYGON (0, 0, 0, 3000, 1000, 3000, 2000, 0);
  assert_near (cw_region_area (region), 4.5, 1e-15);
  assert_near (cw_region_length_of (region, 1), 3, 1e-15);
  assert_near (cw_region_length_of (region, 2), 1, 1e-15);
  assert_near (cw_region_length_of (region, 4), 2, 1e-15);
}

static void
test_is_box (void)
{
  g_autoptr (CwRegion) square = box (0, 0, 3000, 2000, 1);
  g_autoptr (CwRegion) corner_more
      = POLYGON (0, 0, 1000, 0, 3000, 0, 3000, 2000, 0, 2000);
  g_autoptr (CwRegion) l
      = POLYGON (0, 0, 3000, 0, 3000, 1000, 1000, 1000, 1000, 2000, 0, 2000);
  g_autoptr (CwRegion) gable
      = POLYGON (0, 0, 9000, 0, 9000, 2700, 4500, 4500, 0, 2700);
  g_autoptr (CwRegion) arched = arch ();
  g_assert_true (cw_region_is_box (square));
  g_assert_true (cw_region_is_box (corner_more));
  g_assert_false (cw_region_is_box (l));
  g_assert_false (cw_region_is_box (gable));
  g_assert_false (cw_region_is_box (arched));
}

static void
test_split_level (void)
{
  g_autoptr (CwRegion) gable
      = POLYGON (0, 0, 9000, 0, 9000, 2700, 4500, 4500, 0, 2700);
  g_autoptr (CwRegion) low = NULL;
  g_autoptr (CwRegion) high = NULL;
  cw_region_split (gable, CW_AXIS_Y, CW_MM (2700), TAG_CUT, &low, &high);
  g_assert_true (cw_region_is_box (low));
  assert_near (cw_region_area (low), 24.3, 1e-14);
  assert_near (cw_region_area (high), 8.1, 1e-14);
  assert_near (cw_region_length_of (low, TAG_CUT), 9, 0);
  assert_near (cw_region_length_of (high, TAG_CUT), 9, 0);
  assert_near (cw_region_length_of (high, 3), hypot (4.5, 1.8), 1e-14);
}

static void
test_split_upright (void)
{
  g_autoptr (CwRegion) gable
      = POLYGON (0, 0, 9000, 0, 9000, 2700, 4500, 4500, 0, 2700);
  g_autoptr (CwRegion) low = NULL;
  g_autoptr (CwRegion) high = NULL;
  cw_region_split (gable, CW_AXIS_X, CW_MM (2250), TAG_CUT, &low, &high);
  /* Half way up the rake it is 3600 high. */
  assert_near (cw_region_length_of (low, TAG_CUT), 3.6, 0);
  assert_near (cw_region_area (low), 2.25 * (2.7 + 3.6) / 2, 1e-14);
  assert_near (cw_region_area (low) + cw_region_area (high), 32.4, 1e-14);
}

static guint
n_arcs (const CwRegion *region)
{
  guint n = 0;
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      CwLoop loop = cw_region_loop (region, i);
      for (gsize j = 0; j < loop.n_sides; j++)
        n += loop.sides[j].is_arc;
    }
  return n;
}

/* Every arc of the part lies on @of's one circle. */
static void
assert_same_circle (const CwRegion *part, const CwSide *of)
{
  g_assert_cmpuint (n_arcs (part), >, 0);
  for (gsize i = 0; i < cw_region_n_loops (part); i++)
    {
      CwLoop loop = cw_region_loop (part, i);
      for (gsize j = 0; j < loop.n_sides; j++)
        if (loop.sides[j].is_arc)
          {
            assert_near (loop.sides[j].cx, of->cx, 0);
            assert_near (loop.sides[j].cy, of->cy, 0);
            assert_near (loop.sides[j].rx, of->rx, 0);
          }
    }
}

/* Cut again and again, arcs stay arcs of the same circle, and their lengths
 * and areas add up to the whole. */
static void
test_arcs_kept (void)
{
  g_autoptr (CwRegion) region = arch ();
  CwLoop loop = cw_region_loop (region, 0);
  const CwSide *arc = &loop.sides[2];
  g_autoptr (CwRegion) rest = cw_region_ref (region);
  double area = 0, length = 0;
  g_assert_true (arc->is_arc);
  for (int x = 100; x <= 1500; x += 100)
    {
      CwRegion *low = NULL, *high = NULL;
      cw_region_split (rest, CW_AXIS_X, CW_MM (x), TAG_CUT, &low, &high);
      assert_same_circle (low, arc);
      area += cw_region_area (low);
      length += cw_region_length_of (low, CW_OPENING_SIDE_HEAD);
      cw_region_unref (low);
      cw_region_unref (rest);
      rest = high;
    }
  g_assert_true (cw_region_is_empty (rest));
  assert_near (area, cw_region_area (region), 1e-14);
  assert_near (length, cw_region_length_of (region, CW_OPENING_SIDE_HEAD),
               1e-14);
}

/* A level line through the head leaves a cap of the same circle. */
static void
test_arc_level (void)
{
  g_autoptr (CwRegion) region = arch ();
  g_autoptr (CwRegion) low = NULL;
  g_autoptr (CwRegion) high = NULL;
  cw_region_split (region, CW_AXIS_Y, CW_MM (1400), TAG_CUT, &low, &high);
  /* r = (1500² / 4 + 300²) / 600; a cap of 100 mm. */
  double r = 1.0875, chord = 2 * sqrt (0.1 * (2 * r - 0.1));
  double t = 2 * asin (chord / 2 / r);
  assert_near (cw_region_length_of (high, TAG_CUT), chord, 2e-9);
  assert_near (cw_region_area (high), r * r * (t - sin (t)) / 2, 1e-9);
  g_assert_cmpuint (n_arcs (high), ==, 1);
  g_assert_cmpuint (n_arcs (low), ==, 2);
}

/* A line beside the region gives the region itself. */
static void
test_split_beside (void)
{
  g_autoptr (CwRegion) region = arch ();
  g_autoptr (CwRegion) low = NULL;
  g_autoptr (CwRegion) high = NULL;
  cw_region_split (region, CW_AXIS_Y, CW_MM (1500), TAG_CUT, &low, &high);
  g_assert_true (low == region);
  g_assert_true (cw_region_is_empty (high));
  g_clear_pointer (&low, cw_region_unref);
  cw_region_split (region, CW_AXIS_X, 0, TAG_CUT, &low, NULL);
  g_assert_true (cw_region_is_empty (low));
}

/* Two horns that only touch at the notch between them come apart there. */
static void
test_split_at_notch (void)
{
  g_autoptr (CwRegion) region = POLYGON (0, 0, 4000, 0, 4000, 3000, 2000, 1000,
                                         1000, 3000, 0, 3000);
  g_autoptr (CwRegion) high = NULL;
  cw_region_split (region, CW_AXIS_Y, CW_MM (1000), TAG_CUT, NULL, &high);
  g_autoptr (GPtrArray) parts = cw_region_parts (high);
  g_assert_cmpuint (parts->len, ==, 2);
  assert_near (cw_region_area (parts->pdata[0]), 3, 1e-14);
  assert_near (cw_region_area (parts->pdata[1]), 2, 1e-14);
}

/* The same where a round notch touches the line. */
static void
test_split_at_round_notch (void)
{
  const CwCorner corners[] = {
    { { 0, 0 }, 0, 1 },
    { { CW_MM (3000), 0 }, 0, 2 },
    { { CW_MM (3000), CW_MM (2000) }, 0, 3 },
    { { CW_MM (2500), CW_MM (2000) }, CW_MM (-1000), 4 },
    { { CW_MM (500), CW_MM (2000) }, 0, 5 },
    { { 0, CW_MM (2000) }, 0, 6 },
  };
  g_autoptr (CwRegion) region
      = cw_outline_region (corners, G_N_ELEMENTS (corners));
  g_autoptr (CwRegion) low = NULL;
  g_autoptr (CwRegion) high = NULL;
  cw_region_split (region, CW_AXIS_Y, CW_MM (1000), TAG_CUT, &low, &high);
  g_assert_true (cw_region_is_box (low));
  g_autoptr (GPtrArray) parts = cw_region_parts (high);
  g_assert_cmpuint (parts->len, ==, 2);
  for (guint i = 0; i < 2; i++)
    assert_near (cw_region_area (parts->pdata[i]), 1.5 - G_PI / 4, 1e-12);
}

/* A side of the wall on the line keeps its tag; the cut takes the rest. */
static void
test_side_on_line (void)
{
  g_autoptr (CwRegion) steps = POLYGON (0, 0, 3000, 0, 3000, 1000, 1000, 1000,
                                        1000, 2000, 0, 2000);
  g_autoptr (CwRegion) low = NULL;
  g_autoptr (CwRegion) high = NULL;
  cw_region_split (steps, CW_AXIS_Y, CW_MM (1000), TAG_CUT, &low, &high);
  assert_near (cw_region_length_of (low, 3), 2, 0);
  assert_near (cw_region_length_of (low, TAG_CUT), 1, 0);
  assert_near (cw_region_length_of (high, 3), 0, 0);
  assert_near (cw_region_length_of (high, TAG_CUT), 1, 0);
}

static void
test_clip (void)
{
  g_autoptr (CwRegion) region = arch ();
  const CwBox slot = { CW_MM (100), CW_MM (200), CW_MM (700), CW_MM (800) };
  g_autoptr (CwRegion) inside = cw_region_clip (region, &slot, TAG_CUT);
  g_assert_true (cw_region_is_box (inside));
  assert_near (cw_region_area (inside), 0.36, 1e-15);
  assert_near (cw_region_length_of (inside, TAG_CUT), 2.4, 1e-15);

  const CwBox beside = { CW_MM (1500), 0, CW_MM (2000), CW_MM (800) };
  g_autoptr (CwRegion) nothing = cw_region_clip (region, &beside, TAG_CUT);
  g_assert_true (cw_region_is_empty (nothing));
}

/* From the left, then from below; a hole goes with the part around it. */
static void
test_parts (void)
{
  g_autoptr (CwRegion) right = box (5000, 0, 6000, 1000, 1);
  g_autoptr (CwRegion) above = box (0, 4000, 3000, 5000, 2);
  g_autoptr (CwRegion) below = box (0, 0, 3000, 3000, 3);
  g_autoptr (CwRegion) hole = box (1000, 1000, 2000, 2000, 4);
  g_autoptr (CwRegion) island = box (1200, 1200, 1300, 1300, 5);
  g_autoptr (CwRegion) ring = cw_region_subtract (below, hole);
  const CwRegion *const all[] = { right, island, above, ring };
  g_autoptr (CwRegion) joined = cw_region_union (all, G_N_ELEMENTS (all));
  g_autoptr (GPtrArray) parts = cw_region_parts (joined);
  g_assert_cmpuint (parts->len, ==, 4);
  assert_near (cw_region_area (parts->pdata[0]), 8, 1e-14);
  assert_near (cw_region_area (parts->pdata[1]), 3, 1e-14);
  assert_near (cw_region_area (parts->pdata[2]), 0.01, 1e-16);
  assert_near (cw_region_area (parts->pdata[3]), 1, 1e-15);
  g_assert_cmpuint (cw_region_n_loops (parts->pdata[0]), ==, 2);
}

static void
assert_spans (const CwRegion *region, CwAxis axis, double at, const double *mm,
              guint n)
{
  g_autoptr (GArray) spans = cw_region_spans (region, axis, llround (at * 1e6));
  g_assert_cmpuint (spans->len, ==, n);
  for (guint i = 0; i < n; i++)
    g_assert_cmpint (g_array_index (spans, CwLength, i), ==,
                     llround (mm[i] * 1e6));
}

#define SPANS(region, axis, at, ...)                                          \
  assert_spans (region, axis, at, (const double[]){ __VA_ARGS__ },            \
                sizeof ((const double[]){ __VA_ARGS__ }) / sizeof (double))

static void
test_spans (void)
{
  g_autoptr (CwRegion) wall = box (0, 0, 9000, 2700, 1);
  g_autoptr (CwRegion) window = box (900, 900, 2100, 2300, 2);
  g_autoptr (CwRegion) door = box (4000, 0, 4900, 2100, 3);
  g_autoptr (CwRegion) less = cw_region_subtract (wall, window);
  g_autoptr (CwRegion) net = cw_region_subtract (less, door);
  SPANS (net, CW_AXIS_Y, 1500, 0, 900, 2100, 4000, 4900, 9000);
  SPANS (net, CW_AXIS_Y, 500, 0, 4000, 4900, 9000);
  SPANS (net, CW_AXIS_Y, 2500, 0, 9000);
  SPANS (net, CW_AXIS_X, 1500, 0, 900, 2300, 2700);
  SPANS (net, CW_AXIS_X, 4500, 2100, 2700);
  assert_spans (net, CW_AXIS_Y, 2700.000001, NULL, 0);
  assert_spans (net, CW_AXIS_Y, -0.000001, NULL, 0);
}

/* Where a tip from below touches the line the span goes on. */
static void
test_span_past_tip (void)
{
  g_autoptr (CwRegion) wall = box (0, 0, 4000, 2000, 1);
  g_autoptr (CwRegion) tip = POLYGON (1000, 500, 3000, 500, 2000, 1000);
  g_autoptr (CwRegion) net = cw_region_subtract (wall, tip);
  SPANS (net, CW_AXIS_Y, 1000, 0, 4000);
  SPANS (net, CW_AXIS_Y, 750, 0, 1500, 2500, 4000);
}

static void
test_contains (void)
{
  g_autoptr (CwRegion) wall = box (0, 0, 9000, 2700, 1);
  g_autoptr (CwRegion) window = box (900, 900, 2100, 2300, 2);
  g_autoptr (CwRegion) net = cw_region_subtract (wall, window);
  g_assert_true (cw_region_contains (net, cw_point (CW_MM (1), CW_MM (1))));
  g_assert_true (cw_region_contains (net, cw_point (0, CW_MM (1000))));
  g_assert_false (cw_region_contains (net, cw_point (-1, CW_MM (1000))));
  g_assert_false (
      cw_region_contains (net, cw_point (CW_MM (1000), CW_MM (1000))));
  g_assert_false (
      cw_region_contains (net, cw_point (CW_MM (9000) + 1, CW_MM (1000))));
}

/* There and back; the figures do not change. */
static void
test_move (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed ((guint32) g_test_rand_int ());
  for (int i = 0; i < 200; i++)
    {
      g_autoptr (CwRegion) region = random_wall (rand, CW_MM (1));
      g_autoptr (CwRegion) moved
          = cw_region_move (region, CW_MM (7000), CW_MM (-300));
      g_autoptr (CwRegion) back
          = cw_region_move (moved, CW_MM (-7000), CW_MM (300));
      CwBox before = cw_region_box (region), after = cw_region_box (moved);
      g_assert_true (cw_region_is_empty (moved)
                     == cw_region_is_empty (region));
      /* Openings may cover the whole of a wall: one in some 80 000. */
      if (cw_region_is_empty (region))
        continue;
      g_assert_cmpint (after.left, ==, before.left + CW_MM (7000));
      g_assert_cmpint (after.top, ==, before.top - CW_MM (300));
      assert_near (cw_region_area (moved), cw_region_area (region), 1e-11);
      assert_near (cw_region_length (moved), cw_region_length (region), 1e-11);
      assert_near (cw_region_area (back), cw_region_area (region), 1e-11);
      g_assert_cmpuint (n_parts (moved), ==, n_parts (region));
    }
}

static void
test_mirror (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed ((guint32) g_test_rand_int ());
  for (int i = 0; i < 200; i++)
    {
      g_autoptr (CwRegion) region = random_wall (rand, CW_MM (1));
      g_autoptr (CwRegion) mirrored = cw_region_mirror (region, CW_MM (3000));
      CwBox before = cw_region_box (region), after = cw_region_box (mirrored);
      if (cw_region_is_empty (region))
        continue;
      g_assert_cmpint (after.left, ==, CW_MM (6000) - before.right);
      g_assert_cmpint (after.right, ==, CW_MM (6000) - before.left);
      g_assert_cmpint (after.bottom, ==, before.bottom);
      assert_near (cw_region_area (mirrored), cw_region_area (region), 1e-11);
      for (guint tag = 0; tag < 24; tag++)
        assert_near (cw_region_length_of (mirrored, tag),
                     cw_region_length_of (region, tag), 1e-11);
      g_assert_cmpuint (n_parts (mirrored), ==, n_parts (region));
    }
}

static void
assert_within_1_nm (CwLength a, CwLength b)
{
  g_assert_cmpint (a - b, >=, -1);
  g_assert_cmpint (a - b, <=, 1);
}

/* A quarter brings up to the right, four bring it back. */
static void
test_turn (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed ((guint32) g_test_rand_int ());
  for (int i = 0; i < 200; i++)
    {
      g_autoptr (CwRegion) region = random_wall (rand, CW_MM (1));
      g_autoptr (CwRegion) once = cw_region_turn (region);
      g_autoptr (CwRegion) twice = cw_region_turn (once);
      g_autoptr (CwRegion) thrice = cw_region_turn (twice);
      g_autoptr (CwRegion) whole = cw_region_turn (thrice);
      CwBox before = cw_region_box (region), after = cw_region_box (once);
      CwBox again = cw_region_box (whole);
      if (cw_region_is_empty (region))
        continue;
      assert_within_1_nm (after.left, before.bottom);
      assert_within_1_nm (after.right, before.top);
      assert_within_1_nm (after.bottom, -before.right);
      assert_within_1_nm (after.top, -before.left);
      assert_within_1_nm (again.left, before.left);
      assert_within_1_nm (again.top, before.top);
      assert_near (cw_region_area (once), cw_region_area (region), 1e-11);
      assert_near (cw_region_length (once), cw_region_length (region), 1e-11);
      g_assert_cmpuint (n_parts (once), ==, n_parts (region));
    }
}

static void
test_mirror_twice (void)
{
  g_autoptr (CwRegion) gable
      = POLYGON (0, 0, 9000, 0, 9000, 2700, 4500, 4500, 0, 2700);
  g_autoptr (CwRegion) once = cw_region_mirror (gable, CW_MM (4000));
  g_autoptr (CwRegion) twice = cw_region_mirror (once, CW_MM (4000));
  g_assert_false (cw_region_contains (once, cw_point (CW_MM (8500),
                                                      CW_MM (100))));
  CwPoint inside = cw_point (CW_MM (-900), CW_MM (100));
  g_assert_true (cw_region_contains (once, inside));
  g_assert_false (cw_region_contains (gable, inside));
  assert_near (cw_region_length_of (twice, 3), hypot (4.5, 1.8), 1e-14);
  g_autoptr (CwRegion) differ = cw_region_subtract (twice, gable);
  g_assert_true (cw_region_is_empty (differ));
}

static void
check_distance (const double *xy, gsize n, gpointer data)
{
  const CwSide *arc = data;
  gboolean any = FALSE;
  for (gsize i = 0; i < n; i++)
    {
      /* The middle of the chord to the next point, where both are on the
       * arc, is no further inside than was asked. */
      const double *from = &xy[2 * i], *to = &xy[2 * ((i + 1) % n)];
      if (from[1] < 1.2e9 + 1 || to[1] < 1.2e9 + 1)
        continue;
      double x = (from[0] + to[0]) / 2, y = (from[1] + to[1]) / 2;
      double off = arc->rx - hypot (x - arc->cx, y - arc->cy);
      g_assert_true (off >= -1 && off <= 1e5 + 1);
      any = TRUE;
    }
  g_assert_true (any);
}

static void
test_flatten (void)
{
  g_autoptr (CwRegion) region = arch ();
  CwLoop loop = cw_region_loop (region, 0);
  CwSide arc = loop.sides[2];
  cw_region_flatten (region, 1e5, check_distance, &arc);
}

static void
test_counted (void)
{
  CwRegion *region = arch ();
  CwRegion *same = cw_region_ref (region);
  g_assert_true (same == region);
  cw_region_unref (region);
  assert_near (cw_region_length_of (same, CW_OPENING_SIDE_SILL), 1.5, 0);
  cw_region_unref (same);
}

#define ADD(path, function)                                                   \
  g_test_add_func ("/geometry/region/" path, function)

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  ADD ("area/whole", test_area);
  ADD ("area/exact", test_area_exact);
  ADD ("lengths", test_lengths);
  ADD ("turned", test_turned);
  ADD ("is-box", test_is_box);
  ADD ("split/level", test_split_level);
  ADD ("split/upright", test_split_upright);
  ADD ("split/arcs-kept", test_arcs_kept);
  ADD ("split/arc-level", test_arc_level);
  ADD ("split/beside", test_split_beside);
  ADD ("split/notch", test_split_at_notch);
  ADD ("split/round-notch", test_split_at_round_notch);
  ADD ("split/side-on-line", test_side_on_line);
  ADD ("clip", test_clip);
  ADD ("parts", test_parts);
  ADD ("spans/openings", test_spans);
  ADD ("spans/tip", test_span_past_tip);
  ADD ("contains", test_contains);
  ADD ("move", test_move);
  ADD ("mirror/random", test_mirror);
  ADD ("turn/random", test_turn);
  ADD ("mirror/twice", test_mirror_twice);
  ADD ("flatten", test_flatten);
  ADD ("counted", test_counted);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Setting out: counts known by arithmetic, and random walls whose pieces and
 * joints must cover the net wall exactly.
 */
#include <math.h>

#include "walls.h"

/* Width of n panels of 2400 with joints of 3 between them; heights alike. */
static CwLength
panels_long (guint n)
{
  return CW_MM (2403) * n - CW_MM (3);
}

static CwLength
courses_high (guint n)
{
  return CW_MM (603) * n - CW_MM (3);
}

static void
assert_counts (const CwLayout *layout, guint whole, guint rasped, guint cut)
{
  g_assert_cmpuint (cw_layout_count (layout, CW_PIECE_WHOLE), ==, whole);
  g_assert_cmpuint (cw_layout_count (layout, CW_PIECE_RASPED), ==, rasped);
  g_assert_cmpuint (cw_layout_count (layout, CW_PIECE_CUT), ==, cut);
}

static void
test_whole_panels (void)
{
  WallMaker maker;
  wall_begin_box (&maker, panels_long (4), courses_high (5));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_counts (layout, 20, 0, 0);
  g_assert_cmpuint (layout->courses->len, ==, 5);
  /* 5 × 3 head joints, 4 bed joints. */
  g_assert_cmpuint (layout->joints->len, ==, 19);
  g_assert_cmpuint (layout->troubles->len, ==, 0);
}

static void
test_rasped_or_sawn (void)
{
  WallMaker maker;
  wall_begin_box (&maker, panels_long (3) - CW_MM (20), courses_high (1));
  g_autoptr (CwLayout) rasped = wall_layout (&maker);
  assert_counts (rasped, 2, 1, 0);
  wall_begin_box (&maker, panels_long (3) - CW_MM (25) - 1, courses_high (1));
  g_autoptr (CwLayout) sawn = wall_layout (&maker);
  assert_counts (sawn, 2, 0, 1);
}

static void
test_one_nanometre_more (void)
{
  WallMaker maker;
  wall_begin_box (&maker, panels_long (1) + 1, courses_high (1));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  g_assert_cmpuint (layout->pieces->len, ==, 2);
}

static void
test_least_piece_shortens_neighbour (void)
{
  /* 2400 + 3 + 100 would leave 100: the neighbour gives 50 of its length. */
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (2503), courses_high (1));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  g_assert_cmpuint (layout->pieces->len, ==, 2);
  const CwPiece *last = &g_array_index (layout->pieces, CwPiece, 1);
  g_assert_cmpint (cw_box_width (&last->box), ==, CW_MM (150));
  g_assert_cmpuint (layout->troubles->len, ==, 0);
}

static void
test_starts (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (4000), courses_high (1));
  maker.setting_out->start = CW_START_RIGHT;
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  const CwPiece *first = &g_array_index (layout->pieces, CwPiece, 0);
  g_assert_cmpint (first->box.right, ==, CW_MM (4000));
  g_assert_cmpint (first->box.left, ==, CW_MM (1600));
  g_assert_cmpint (first->kind, ==, CW_PIECE_WHOLE);
}

static void
test_upright_run (void)
{
  WallMaker maker;
  wall_begin_box (&maker, courses_high (3), panels_long (1));
  maker.setting_out->run = CW_RUN_VERTICAL;
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_counts (layout, 3, 0, 0);
  g_assert_cmpuint (layout->courses->len, ==, 3);
}

static void
test_opening_notches (void)
{
  /* One window inside one panel's place. */
  WallMaker maker;
  wall_begin_box (&maker, panels_long (2), courses_high (1));
  wall_add_opening (&maker, CW_MM (900), CW_MM (200), CW_MM (600),
                    CW_MM (400));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_counts (layout, 1, 0, 1);
  const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, 0);
  g_assert_true (piece->cuts & CW_CUT_NOTCH);
  g_assert_cmpfloat_with_epsilon (piece->area, 2.4 * 0.6 - 0.6 * 0.4, 1e-12);
}

static void
test_stub_out_is_a_hole (void)
{
  WallMaker maker;
  wall_begin_box (&maker, panels_long (2), courses_high (1));
  wall_add_stub_out (&maker, CW_MM (700), CW_MM (300), CW_MM (60));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_counts (layout, 1, 0, 1);
  const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, 0);
  g_assert_cmpint (piece->cuts, ==, CW_CUT_HOLE);
  g_assert_cmpfloat_with_epsilon (piece->area, 2.4 * 0.6, 1e-12);
}

/* max(2, ceil((600 - 2 × 25) / 300) + 1) = 3 on each stud. */
static void
test_fasteners (void)
{
  WallMaker maker;
  wall_begin_box (&maker, panels_long (1), courses_high (1));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, 0);
  g_assert_cmpuint (cw_layout_piece_fasteners (layout, piece), ==,
                    3 * layout->studs->len);
}

static double
joint_area (const CwLayout *layout)
{
  const CwPanel *panel = cw_list_at (layout->wall->buildup->panels, 0);
  double length = 0;
  for (guint i = 0; i < layout->joints->len; i++)
    {
      const CwJoint *joint = &g_array_index (layout->joints, CwJoint, i);
      length += cw_length_in_m (ABS (joint->to.x - joint->from.x)
                                + ABS (joint->to.y - joint->from.y));
    }
  return length * cw_length_in_m (panel->joint);
}

static double
piece_area (const CwLayout *layout)
{
  double area = 0;
  for (guint i = 0; i < layout->pieces->len; i++)
    area += g_array_index (layout->pieces, CwPiece, i).area;
  return area;
}

/* What of the wall lies in the gaps between courses and between the pieces of
 * a course, by cutting the net wall there: independent of the joints. */
static double
gap_area (const CwLayout *layout)
{
  g_autoptr (CwRegion) rest = cw_region_ref (layout->wall->net);
  for (guint i = 0; i < layout->pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, i);
      g_autoptr (CwRegion) shape
          = piece->shape ? cw_region_ref (piece->shape)
                         : cw_region_new_box (&piece->box, 0);
      CwRegion *left = cw_region_subtract (rest, shape);
      cw_region_unref (rest);
      rest = left;
    }
  return cw_region_area (rest);
}

static void
assert_inside (const CwLayout *layout)
{
  for (guint i = 0; i < layout->pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, i);
      g_assert_cmpint (piece->box.left, >=, piece->slot.left);
      g_assert_cmpint (piece->box.right, <=, piece->slot.right);
      g_assert_cmpint (piece->box.bottom, >=, piece->slot.bottom);
      g_assert_cmpint (piece->box.top, <=, piece->slot.top);
      for (guint j = 0; j < i; j++)
        {
          const CwPiece *other = &g_array_index (layout->pieces, CwPiece, j);
          if (!piece->shape && !other->shape)
            g_assert_false (cw_box_overlaps (&piece->box, &other->box));
        }
    }
}

static CwLength
random_mm (int low, int high)
{
  return CW_MM (g_test_rand_int_range (low, high));
}

static void
begin_random_wall (WallMaker *maker)
{
  const CwLength width = random_mm (3000, 15000);
  const CwLength eaves = random_mm (1500, 5000);
  const CwPoint corners[] = { { 0, 0 },
                              { width, 0 },
                              { width, eaves },
                              { width / 2, eaves + random_mm (1, 3000) },
                              { 0, eaves } };
  wall_begin (maker, corners, G_N_ELEMENTS (corners));
  CwLength x = random_mm (200, 900);
  while (x < width - CW_MM (2200))
    {
      const CwLength opening = random_mm (400, 1900);
      if (g_test_rand_bit ())
        wall_add_opening (maker, x, random_mm (0, 900), opening,
                          random_mm (300, 1200));
      else
        wall_add_arch (maker, x, random_mm (0, 400), opening,
                       random_mm (300, 800), opening / 5);
      x += opening + random_mm (100, 2000);
    }
}

static void
set_random_rules (WallMaker *maker)
{
  CwSettingOut *rules = maker->setting_out;
  rules->run = g_test_rand_int_range (0, 2);
  rules->start = g_test_rand_int_range (0, 3);
  rules->bond = g_test_rand_int_range (0, 3);
  rules->stagger = random_mm (0, 2400);
  rules->offset = random_mm (0, 2400);
  rules->base = random_mm (0, 600);
  rules->joints_on_studs = g_test_rand_bit ();
  rules->at_openings = g_test_rand_int_range (0, 2);
}

/* Joints of no width: the pieces alone cover the wall to the last digits. */
static void
test_random_cover (void)
{
  const guint n = g_getenv ("CW_LONG") ? 20000 : 2000;
  for (guint round = 0; round < n; round++)
    {
      WallMaker maker;
      begin_random_wall (&maker);
      set_random_rules (&maker);
      maker.panel->joint = 0;
      g_autoptr (CwLayout) layout = wall_layout (&maker);
      const double net = cw_region_area (layout->wall->net);
      g_assert_cmpfloat (fabs (piece_area (layout) - net), <=, 1e-9 * net);
      assert_inside (layout);
    }
}

/* With joints: pieces and what lies between them make the wall. */
static void
test_random_gaps (void)
{
  for (guint round = 0; round < 60; round++)
    {
      WallMaker maker;
      begin_random_wall (&maker);
      set_random_rules (&maker);
      g_autoptr (CwLayout) layout = wall_layout (&maker);
      const double net = cw_region_area (layout->wall->net);
      g_assert_cmpfloat (fabs (piece_area (layout) + gap_area (layout) - net),
                         <=, 1e-8 * net);
      assert_inside (layout);
    }
}

/* On a plain wall length times joint is the area between the pieces. */
static void
test_joint_area (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (9753), CW_MM (2743));
  maker.setting_out->bond = CW_BOND_STAGGER;
  maker.setting_out->stagger = CW_MM (1200);
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  g_assert_cmpfloat_with_epsilon (
      piece_area (layout) + joint_area (layout),
      cw_region_area (layout->wall->net), 1e-9);
}

static void
test_no_outline (void)
{
  WallMaker maker;
  const CwPoint crossed[] = { { 0, 0 },
                              { CW_MM (1000), CW_MM (1000) },
                              { CW_MM (1000), 0 },
                              { 0, CW_MM (1000) } };
  wall_begin (&maker, crossed, G_N_ELEMENTS (crossed));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  g_assert_cmpuint (layout->pieces->len, ==, 0);
}

static void
test_piece_at (void)
{
  WallMaker maker;
  wall_begin_box (&maker, panels_long (2), courses_high (2));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  const CwPiece *piece
      = cw_layout_piece_at (layout, cw_point (CW_MM (3000), CW_MM (700)));
  g_assert_nonnull (piece);
  g_autofree char *name = cw_layout_piece_name (layout, piece);
  g_assert_cmpstr (name, ==, "South-2-2");
  g_assert_null (cw_layout_piece_at (layout, cw_point (-1, 0)));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/whole-panels", test_whole_panels);
  g_test_add_func ("/layout/rasped-or-sawn", test_rasped_or_sawn);
  g_test_add_func ("/layout/one-nanometre-more", test_one_nanometre_more);
  g_test_add_func ("/layout/least-piece-shortens-neighbour",
                   test_least_piece_shortens_neighbour);
  g_test_add_func ("/layout/starts", test_starts);
  g_test_add_func ("/layout/upright-run", test_upright_run);
  g_test_add_func ("/layout/opening-notches", test_opening_notches);
  g_test_add_func ("/layout/stub-out-is-a-hole", test_stub_out_is_a_hole);
  g_test_add_func ("/layout/fasteners", test_fasteners);
  g_test_add_func ("/layout/random-cover", test_random_cover);
  g_test_add_func ("/layout/random-gaps", test_random_gaps);
  g_test_add_func ("/layout/joint-area", test_joint_area);
  g_test_add_func ("/layout/no-outline", test_no_outline);
  g_test_add_func ("/layout/piece-at", test_piece_at);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Setting out: counts known by arithmetic.
 */
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
  g_test_add_func ("/layout/joint-area", test_joint_area);
  g_test_add_func ("/layout/no-outline", test_no_outline);
  g_test_add_func ("/layout/piece-at", test_piece_at);
  return g_test_run ();
}

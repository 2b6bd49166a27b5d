/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The cuts of a piece and its mass, worked by hand: panels of 2400 × 600 of
 * 43 kg with joints of 3.
 */
#include <math.h>

#include "cw-piece-cuts.h"
#include "walls.h"

/*  Sawn across at 1000 and ripped at 400.  */
static void
test_cuts_of_box (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (1000), CW_MM (400));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, 0);
  g_autoptr (GArray) cuts = cw_piece_cuts (layout, piece);
  g_assert_cmpuint (cuts->len, ==, 2);
  for (guint i = 0; i < 2; i++)
    {
      const CwPieceCut *cut = &g_array_index (cuts, CwPieceCut, i);
      g_assert_false (cut->is_rasped);
      g_assert_cmpfloat_with_epsilon (
          cut->length, cut->kind == CW_CUT_LENGTH ? 0.4 : 1.0, 1e-12);
    }
  /* 43 kg × 0.4 m² / 1.44 m² */
  g_assert_cmpfloat_with_epsilon (cw_piece_mass (layout, piece),
                                  43 * 0.4 / 1.44, 1e-9);
}

static double
length_of (const GArray *cuts, CwCutFlags kind, guint *n)
{
  double length = 0;
  *n = 0;
  for (guint i = 0; i < cuts->len; i++)
    {
      const CwPieceCut *cut = &g_array_index (cuts, CwPieceCut, i);
      if (cut->kind != kind)
        continue;
      length += cut->length;
      (*n)++;
    }
  return length;
}

/*  A box of 100 × 60 with 10 all round, 120 × 80, on the joint's middle:
 *  58.5 of it in each panel, sawn on three sides.
 */
static void
test_hole_on_a_joint (void)
{
  WallMaker maker;
  guint n;
  wall_begin_box (&maker, CW_MM (4803), CW_MM (600));
  wall_add_box_out (&maker, CW_MM (2401) + CW_MM (1) / 2, CW_MM (300),
                    CW_MM (100), CW_MM (60), CW_MM (10));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  for (guint i = 0; i < 2; i++)
    {
      const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, i);
      g_autoptr (GArray) cuts = cw_piece_cuts (layout, piece);
      g_assert_cmpint (piece->kind, ==, CW_PIECE_CUT);
      g_assert_cmpuint (cuts->len, ==, 1);
      g_assert_cmpfloat_with_epsilon (length_of (cuts, CW_CUT_HOLE, &n),
                                      2 * 0.0585 + 0.080, 1e-12);
      g_assert_cmpfloat_with_epsilon (
          cw_piece_mass (layout, piece),
          43 * (1.44 - 0.0585 * 0.080) / 1.44, 1e-9);
    }
}

static void
test_round_hole (void)
{
  WallMaker maker;
  guint n;
  wall_begin_box (&maker, CW_MM (2400), CW_MM (600));
  wall_add_stub_out (&maker, CW_MM (700), CW_MM (300), CW_MM (60));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, 0);
  g_autoptr (GArray) cuts = cw_piece_cuts (layout, piece);
  g_assert_cmpfloat_with_epsilon (length_of (cuts, CW_CUT_HOLE, &n),
                                  G_PI * 0.060, 1e-9);
  g_assert_cmpfloat_with_epsilon (
      cw_piece_mass (layout, piece),
      43 * (1 - G_PI * 0.03 * 0.03 / 1.44), 1e-9);
}

/*  A window's lower corner taken out of a panel: two sides of a notch.  */
static void
test_cuts_of_notch (void)
{
  WallMaker maker;
  guint n;
  wall_begin_box (&maker, CW_MM (2400), CW_MM (1203));
  wall_add_opening (&maker, CW_MM (1000), CW_MM (400), CW_MM (500),
                    CW_MM (500));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, 0);
  g_autoptr (GArray) cuts = cw_piece_cuts (layout, piece);
  g_assert_cmpfloat_with_epsilon (length_of (cuts, CW_CUT_NOTCH, &n),
                                  0.2 + 0.5 + 0.2, 1e-12);
  g_assert_cmpuint (n, ==, 3);
  g_assert_cmpuint (cuts->len, ==, 3);
}

/*  An arch of 1000 × 200 under its springing at 500, rise 100: a segment of
 *  radius (500² + 100²) / 200 = 1300; its crown stays 50 under the panel's top.
 */
static void
test_cuts_of_curve (void)
{
  WallMaker maker;
  guint n;
  wall_begin_box (&maker, CW_MM (2400), CW_MM (650));
  maker.panel->height = CW_MM (650);
  wall_add_arch (&maker, CW_MM (700), CW_MM (100), CW_MM (1000), CW_MM (400),
                 CW_MM (100));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, 0);
  g_autoptr (GArray) cuts = cw_piece_cuts (layout, piece);
  g_assert_cmpfloat_with_epsilon (length_of (cuts, CW_CUT_CURVE, &n),
                                  2 * 1.3 * asin (0.5 / 1.3), 1e-9);
  g_assert_cmpfloat_with_epsilon (length_of (cuts, CW_CUT_NOTCH, &n),
                                  0.4 + 1.0 + 0.4, 1e-12);
}

/*  20 off the end with the rasp, within its limit of 25.  */
static void
test_cuts_rasped (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (2380), CW_MM (600));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, 0);
  g_autoptr (GArray) cuts = cw_piece_cuts (layout, piece);
  const CwPieceCut *cut = &g_array_index (cuts, CwPieceCut, 0);
  g_assert_cmpuint (cuts->len, ==, 1);
  g_assert_cmpint (cut->kind, ==, CW_CUT_LENGTH);
  g_assert_true (cut->is_rasped);
  g_assert_cmpint (cut->from.x, ==, CW_MM (2380));
  g_assert_cmpint (cut->to.x, ==, CW_MM (2380));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/piece-cuts/box", test_cuts_of_box);
  g_test_add_func ("/piece-cuts/hole-on-a-joint", test_hole_on_a_joint);
  g_test_add_func ("/piece-cuts/round-hole", test_round_hole);
  g_test_add_func ("/piece-cuts/notch", test_cuts_of_notch);
  g_test_add_func ("/piece-cuts/curve", test_cuts_of_curve);
  g_test_add_func ("/piece-cuts/rasped", test_cuts_rasped);
  return g_test_run ();
}

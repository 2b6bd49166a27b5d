/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "board-cases.h"

#include "cw-snap-gap.h"

typedef struct
{
  CwDocument *document;
  CwWall *wall;
  CwSnapField field;
} Field;

static Field
field_of (CwDocument *document, int radius, int grid)
{
  Field field = { .document = document };

  field.wall = cw_wall_new (cw_document_project (document),
                            case_elevation (document, "e1"));
  field.field = (CwSnapField) { .wall = field.wall,
                                .radius = CW_MM (radius),
                                .grid = CW_MM (grid) };
  return field;
}

static void
field_clear (Field *field)
{
  cw_wall_unref (field->wall);
  g_object_unref (field->document);
}
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Field, field_clear)

static void
assert_snap (Field *field, int from_x, int from_y, int x, int y,
             CwSnapKind x_kind, CwSnapKind y_kind)
{
  CwSnap snap
      = cw_snap (&field->field, cw_point (CW_MM (from_x), CW_MM (from_y)));

  g_assert_cmpint (snap.at.x, ==, CW_MM (x));
  g_assert_cmpint (snap.at.y, ==, CW_MM (y));
  g_assert_cmpint (snap.x_kind, ==, x_kind);
  g_assert_cmpint (snap.y_kind, ==, y_kind);
}

static void
test_corner (void)
{
  g_auto (Field) field = field_of (case_wall (), 40, 5);

  assert_snap (&field, 6020, 3020, 6000, 3000, CW_SNAP_CORNER,
               CW_SNAP_CORNER);
  assert_snap (&field, 980, 910, 1000, 900, CW_SNAP_CORNER, CW_SNAP_CORNER);
}

static void
test_middle (void)
{
  g_auto (Field) field = field_of (case_wall (), 40, 5);

  assert_snap (&field, 3013, 11, 3000, 0, CW_SNAP_MIDDLE, CW_SNAP_MIDDLE);
}

/* Along the side where the grid has it, across exactly on the side. */
static void
test_side (void)
{
  g_auto (Field) field = field_of (case_wall (), 40, 5);

  assert_snap (&field, 3522, 13, 3520, 0, CW_SNAP_GRID, CW_SNAP_SIDE);
  assert_snap (&field, 6012, 703, 6000, 705, CW_SNAP_SIDE, CW_SNAP_GRID);
}

static void
test_guides (void)
{
  g_auto (Field) field = field_of (case_wall (), 40, 5);

  assert_snap (&field, 3602, 2312, 3600, 2300, CW_SNAP_GRID,
               CW_SNAP_ALIGN_Y);
  assert_snap (&field, 2217, 222, 2200, 220, CW_SNAP_ALIGN_X, CW_SNAP_GRID);
  assert_snap (&field, 2217, 588, 2200, 600, CW_SNAP_ALIGN_X,
               CW_SNAP_ALIGN_Y);
}

/* A guide and a side together: the point on the side under the guide. */
static void
test_guide_on_side (void)
{
  g_auto (Field) field = field_of (case_wall (), 40, 5);

  assert_snap (&field, 2190, 12, 2200, 0, CW_SNAP_ALIGN_X, CW_SNAP_SIDE);
}

static void
test_grid (void)
{
  g_auto (Field) field = field_of (case_wall (), 40, 5);

  assert_snap (&field, 3622, 418, 3620, 420, CW_SNAP_GRID, CW_SNAP_GRID);
  assert_snap (&field, -3622, -418, -3620, -420, CW_SNAP_GRID, CW_SNAP_GRID);
}

static void
test_suspended (void)
{
  g_auto (Field) field = field_of (case_wall (), 0, 5);

  assert_snap (&field, 5998, 2999, 6000, 3000, CW_SNAP_GRID, CW_SNAP_GRID);
  field.field.grid = 0;
  assert_snap (&field, 5998, 2999, 5998, 2999, CW_SNAP_NONE, CW_SNAP_NONE);
}

static void
test_skipped (void)
{
  const char *const ids[] = { "o1", NULL };
  g_auto (Field) field = field_of (case_wall (), 40, 5);

  field.field.skip_ids = ids;
  assert_snap (&field, 982, 912, 980, 910, CW_SNAP_GRID, CW_SNAP_GRID);
}

static void
test_points (void)
{
  const CwPoint points[] = { { CW_MM (7777), CW_MM (1234) } };
  g_auto (Field) field = field_of (case_wall (), 40, 5);

  field.field.points = points;
  field.field.n_points = G_N_ELEMENTS (points);
  assert_snap (&field, 7790, 1240, 7777, 1234, CW_SNAP_CORNER,
               CW_SNAP_CORNER);
  assert_snap (&field, 7790, 4000, 7777, 4000, CW_SNAP_ALIGN_X,
               CW_SNAP_GRID);
}

/* Of two corners in reach the nearer. */
static void
test_nearest (void)
{
  const CwPoint points[] = { { CW_MM (7000), 0 }, { CW_MM (7030), 0 } };
  g_auto (Field) field = field_of (case_wall (), 40, 5);

  field.field.points = points;
  field.field.n_points = G_N_ELEMENTS (points);
  assert_snap (&field, 7014, 0, 7000, 0, CW_SNAP_CORNER, CW_SNAP_CORNER);
  assert_snap (&field, 7016, 0, 7030, 0, CW_SNAP_CORNER, CW_SNAP_CORNER);
}

/* The same eight pixels from a corner at every zoom: inside they draw,
 * outside they do not. */
static void
test_radius_at_every_zoom (void)
{
  for (double mm = 0.1; mm < 60; mm *= 1.7)
    {
      g_auto (Hand) hand = hand_new (CW_TOOL_TAPE, case_wall ());
      CwPoint first, second;

      hand.mm_per_pixel = mm;
      hand_click (&hand, 6000 + 5 * mm, 3000 + 5 * mm);
      hand_click (&hand, 6000 + 600 * mm, 3000 + 300 * mm);
      g_assert_true (cw_tool_two_points (hand.tool, &first, &second));
      g_assert_cmpint (first.x, ==, CW_MM (6000));
      g_assert_cmpint (first.y, ==, CW_MM (3000));
      hand_click (&hand, 6000 + 9.5 * mm, 3000 + 9.5 * mm);
      hand_click (&hand, 6000 + 600 * mm, 3000 + 300 * mm);
      g_assert_true (cw_tool_two_points (hand.tool, &first, &second));
      g_assert_cmpint (first.x, !=, CW_MM (6000));
      g_assert_cmpint (first.y, !=, CW_MM (3000));
    }
}

/* The grid is round, and a pixel or less: nothing that could be aimed at is
 * lost, and nothing is kept that nobody could mean. */
static void
test_grid_steps (void)
{
  for (double mm = 0.05; mm < 500; mm *= 1.3)
    {
      CwLength metric = cw_snap_grid (CW_UNITS_METRIC, mm * 1e6);
      CwLength us = cw_snap_grid (CW_UNITS_US, mm * 1e6);

      g_assert_cmpint (metric % CW_MM (1), ==, 0);
      g_assert_cmpint (us % (CW_NM_PER_INCH / 16), ==, 0);
      g_assert_true (metric == CW_MM (1) || (double) metric <= mm * 1e6);
      g_assert_true (us == CW_NM_PER_INCH / 16 || (double) us <= mm * 1e6);
    }
  g_assert_cmpint (cw_snap_grid (CW_UNITS_METRIC, 7e6), ==, CW_MM (5));
  g_assert_cmpint (cw_snap_grid (CW_UNITS_US, 26e6), ==, CW_INCHES (1));
}

/* On a semicircular head, wherever it is aimed at from beside. */
static void
test_arc (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_ARCH, case_wall ());
  g_autoptr (CwWall) wall = NULL;
  CwSnapField field = { .radius = CW_MM (40) };

  hand_click (&hand, 3000, 300);
  hand_type (&hand, "1000 x 2000 x 500");
  wall = cw_wall_new (cw_document_project (hand.document),
                      case_elevation (hand.document, "e1"));
  field.wall = wall;
  for (double angle = 0.3; angle < 1.2; angle += 0.1)
    {
      CwPoint at = { (CwLength) llround (3500e6 + 520e6 * cos (angle)),
                     (CwLength) llround (1800e6 + 520e6 * sin (angle)) };
      CwSnap snap = cw_snap (&field, at);
      double radius = hypot ((double) snap.at.x - 3500e6,
                             (double) snap.at.y - 1800e6);

      g_assert_cmpint (snap.x_kind, ==, CW_SNAP_SIDE);
      g_assert_cmpfloat_with_epsilon (radius, 500e6, 1e3);
    }
}

/* A moved box falls on things by whichever corner is nearest. */
static void
test_box (void)
{
  g_auto (Field) field = field_of (case_wall (), 40, 5);
  CwBox box = case_box (3802, 112, 4985, 888);
  CwPoint move;
  CwSnap snap = cw_snap_box (&field.field, &box, &move);

  g_assert_cmpint (move.x, ==, CW_MM (15));
  g_assert_cmpint (move.y, ==, CW_MM (12));
  g_assert_cmpint (snap.x_kind, ==, CW_SNAP_ALIGN_X);
  g_assert_cmpint (snap.y_kind, ==, CW_SNAP_ALIGN_Y);
}

static void
assert_gap (int left, int bottom, int width, int expected_left)
{
  g_autoptr (CwProject) project = case_long_wall ();
  const CwElevation *elevation = cw_list_at (project->elevations, 0);
  g_autoptr (CwWall) wall = cw_wall_new (project, elevation);
  CwSnapField field = { .wall = wall, .radius = CW_MM (40) };
  CwBox box = case_box (left, bottom, left + width, bottom + 100);
  CwSnapGap gap;

  if (expected_left < 0)
    {
      g_assert_false (cw_snap_gap (&field, &box, FALSE, &gap));
      return;
    }
  g_assert_true (cw_snap_gap (&field, &box, FALSE, &gap));
  g_assert_cmpint (box.left + gap.move, ==, CW_MM (expected_left));
  g_assert_cmpint (gap.to[0].x - gap.from[0].x, ==,
                   gap.to[1].x - gap.from[1].x);
}

/* On a bare stretch of a wall 60 m long: the middle, and no other place. */
static void
test_gap (void)
{
  assert_gap (29510 - 20, 8850, 1000, 29500);
  assert_gap (20000, 8850, 1000, -1);
}

static void
test_joints (void)
{
  CwJoint parts[] = {
    { TRUE, { 0, CW_MM (600) }, { CW_MM (6000), CW_MM (600) } },
    { FALSE, { CW_MM (2400), 0 }, { CW_MM (2400), CW_MM (600) } },
  };
  g_autoptr (GArray) joints = g_array_new (FALSE, FALSE, sizeof (CwJoint));
  CwSnapField field = { .radius = CW_MM (40), .grid = CW_MM (5),
                        .joints = joints };
  CwPoint near = { CW_MM (2400), CW_MM (600) };
  CwSnap snap;

  g_array_append_vals (joints, parts, 2);
  snap = cw_snap (&field, cw_point (CW_MM (2413), CW_MM (588)));
  g_assert_true (cw_point_equal (snap.at, near));
  g_assert_cmpint (snap.x_kind, ==, CW_SNAP_JOINT_X);
  g_assert_cmpint (snap.y_kind, ==, CW_SNAP_JOINT_Y);
  field.points = &(CwPoint) { CW_MM (2420), CW_MM (5000) };
  field.n_points = 1;
  snap = cw_snap (&field, cw_point (CW_MM (2413), CW_MM (588)));
  g_assert_cmpint (snap.x_kind, ==, CW_SNAP_ALIGN_X);
  g_assert_cmpint (snap.at.x, ==, CW_MM (2420));
}

/* On a sheet at 1:50 whose top left is at the wall's 1000, 2000 mm: a cross at
 * 3000.3, 1700.2 mm, and a slope. */
static CwDrawnLines *
drawn_lines (CwSnapField *field)
{
  const double point = 50 * 25.4 / 72;
  const CwDrawnLine all[] = {
    { 1600.0 / point, 300 / point, 2300 / point, 299.8 / point, 0 },
    { 2000.3 / point, 100 / point, 2000.3 / point, 500 / point, 0 },
    { 1500 / point, 1000 / point, 2000 / point, 750 / point, 0 },
  };
  g_autoptr (GArray) lines = g_array_new (FALSE, FALSE, sizeof *all);

  g_array_append_vals (lines, all, G_N_ELEMENTS (all));
  field->drawn_at = (CwPlacing) { NULL, -1000 / point, 2000 / point, point,
                                  point, FALSE };
  field->drawn_step = CW_MM (1);
  field->drawn = cw_drawn_lines_new (lines);
  return (CwDrawnLines *) field->drawn;
}

/* Rounded to what a drawing can mean. */
static void
test_sheet (void)
{
  g_auto (Field) field = field_of (case_wall (), 40, 5);
  g_autoptr (CwDrawnLines) lines = drawn_lines (&field.field);

  assert_snap (&field, 2985, 1710, 3000, 1700, CW_SNAP_SHEET_CORNER,
               CW_SNAP_SHEET_CORNER);
  assert_snap (&field, 3012, 1602, 3000, 1600, CW_SNAP_SHEET_LINE,
               CW_SNAP_GRID);
  assert_snap (&field, 2590, 1713, 2600, 1700, CW_SNAP_SHEET_CORNER,
               CW_SNAP_SHEET_CORNER);
}

/* What is drawn on the wall itself goes first, and so does its guide along a
 * line of the sheet. */
static void
test_sheet_under_wall (void)
{
  g_auto (Field) field = field_of (case_wall (), 40, 5);
  const double point = 50 * 25.4 / 72;
  const CwDrawnLine all[]
      = { { 6010 / point, -3005 / point, 6010 / point, -1000 / point, 0 },
          { 4000 / point, -1905 / point, 7000 / point, -1905 / point, 0 } };
  g_autoptr (GArray) array = g_array_new (FALSE, FALSE, sizeof *all);
  g_autoptr (CwDrawnLines) lines = NULL;

  g_array_append_vals (array, all, G_N_ELEMENTS (all));
  lines = cw_drawn_lines_new (array);
  field.field.drawn = lines;
  field.field.drawn_at = (CwPlacing) { NULL, 0, 0, point, point, FALSE };
  assert_snap (&field, 6008, 3006, 6000, 3000, CW_SNAP_CORNER,
               CW_SNAP_CORNER);
  assert_snap (&field, 6012, 2500, 6000, 2500, CW_SNAP_SIDE, CW_SNAP_GRID);
}

/* The sheet's own unsharpness is not taken over: what is level with a corner
 * of the wall by the sheet is level. */
static void
test_sheet_level_with_wall (void)
{
  g_auto (Field) field = field_of (case_wall (), 40, 5);
  const double point = 50 * 25.4 / 72;
  const CwDrawnLine all[]
      = { { 7000 / point, -3002 / point, 9000 / point, -3002 / point, 0 },
          { 9500 / point, -2998 / point, 9500 / point, -1000 / point, 0 },
          { 7000 / point, -3008 / point, 8000 / point, -3030 / point, 0 } };
  g_autoptr (GArray) array = g_array_new (FALSE, FALSE, sizeof *all);
  g_autoptr (CwDrawnLines) lines = NULL;

  g_array_append_vals (array, all, G_N_ELEMENTS (all));
  lines = cw_drawn_lines_new (array);
  field.field.drawn = lines;
  field.field.drawn_at = (CwPlacing) { NULL, 0, 0, point, point, FALSE };
  field.field.drawn_step = CW_MM (1);
  assert_snap (&field, 8000, 2996, 8000, 3000, CW_SNAP_GRID,
               CW_SNAP_ALIGN_Y);
  assert_snap (&field, 9490, 2990, 9500, 3000, CW_SNAP_SHEET_CORNER,
               CW_SNAP_SHEET_CORNER);
  assert_snap (&field, 7004, 3012, 7000, 3008, CW_SNAP_SHEET_CORNER,
               CW_SNAP_SHEET_CORNER);
}

static void
test_sheet_suspended (void)
{
  g_auto (Field) field = field_of (case_wall (), 0, 5);
  g_autoptr (CwDrawnLines) lines = drawn_lines (&field.field);

  assert_snap (&field, 2985, 1710, 2985, 1710, CW_SNAP_GRID, CW_SNAP_GRID);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/snap/corner", test_corner);
  g_test_add_func ("/board/snap/middle", test_middle);
  g_test_add_func ("/board/snap/side", test_side);
  g_test_add_func ("/board/snap/guides", test_guides);
  g_test_add_func ("/board/snap/guide-on-side", test_guide_on_side);
  g_test_add_func ("/board/snap/grid", test_grid);
  g_test_add_func ("/board/snap/suspended", test_suspended);
  g_test_add_func ("/board/snap/skipped", test_skipped);
  g_test_add_func ("/board/snap/points", test_points);
  g_test_add_func ("/board/snap/nearest", test_nearest);
  g_test_add_func ("/board/snap/radius-at-every-zoom",
                   test_radius_at_every_zoom);
  g_test_add_func ("/board/snap/grid-steps", test_grid_steps);
  g_test_add_func ("/board/snap/arc", test_arc);
  g_test_add_func ("/board/snap/box", test_box);
  g_test_add_func ("/board/snap/gap", test_gap);
  g_test_add_func ("/board/snap/joints", test_joints);
  g_test_add_func ("/board/snap/sheet", test_sheet);
  g_test_add_func ("/board/snap/sheet-under-wall", test_sheet_under_wall);
  g_test_add_func ("/board/snap/sheet-level-with-wall",
                   test_sheet_level_with_wall);
  g_test_add_func ("/board/snap/sheet-suspended", test_sheet_suspended);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "board-cases.h"

#include <math.h>

#define ASSERT_OUTLINE(document, id, ...)                                     \
  G_STMT_START                                                                \
  {                                                                           \
    const int expected[][2] = { __VA_ARGS__ };                                \
    case_assert_outline (document, id, G_N_ELEMENTS (expected), expected);    \
  }                                                                           \
  G_STMT_END

static Hand
begin (void)
{
  return hand_new (CW_TOOL_WALL, case_empty (CW_UNITS_METRIC));
}

/* Aimed badly by up to 8 mm (a pixel and a half): what comes of it is exact. */
static void
test_clicks (void)
{
  g_auto (Hand) hand = begin ();

  hand_click (&hand, 1002, 498);
  hand_click (&hand, 7001, 507);
  hand_click (&hand, 6994, 3501);
  hand_click (&hand, 1007, 3492);
  g_assert_false (cw_document_can_undo (hand.document));
  hand_click (&hand, 1020, 520);
  ASSERT_OUTLINE (hand.document, "e1", { 0, 0 }, { 6000, 0 }, { 6000, 3000 },
                  { 0, 3000 });
  g_assert_cmpstr (cw_document_elevation_id (hand.document), ==, "e1");
  case_assert_selected (hand.document, "e1");
  g_assert_true (cw_tool_take_done (hand.tool));
  g_assert_false (cw_tool_take_done (hand.tool));
}

static void
test_clockwise (void)
{
  g_auto (Hand) hand = begin ();

  hand_click (&hand, 0, 0);
  hand_click (&hand, 0, 3000);
  hand_click (&hand, 3000, 4500);
  hand_click (&hand, 6000, 3000);
  hand_click (&hand, 6000, 0);
  g_assert_true (cw_tool_finish (hand.tool));
  ASSERT_OUTLINE (hand.document, "e1", { 0, 0 }, { 6000, 0 }, { 6000, 3000 },
                  { 3000, 4500 }, { 0, 3000 });
}

static void
test_edges (void)
{
  const CwEdge expected[] = { CW_EDGE_BASE, CW_EDGE_OUTSIDE_CORNER,
                              CW_EDGE_RAKE, CW_EDGE_RAKE,
                              CW_EDGE_OUTSIDE_CORNER };
  const CwOutline *outline;

  g_auto (Hand) hand = begin ();
  hand_click (&hand, 0, 0);
  hand_click (&hand, 6000, 0);
  hand_click (&hand, 6000, 3000);
  hand_click (&hand, 3000, 4500);
  hand_click (&hand, 0, 3000);
  cw_tool_finish (hand.tool);
  outline = (const CwOutline *) case_elevation (hand.document, "e1")->outline;
  for (gsize i = 0; i < G_N_ELEMENTS (expected); i++)
    {
      const CwCornerNode *corner = cw_list_at (outline->corners, i);

      g_assert_cmpint (corner->edge, ==, expected[i]);
    }
}

/* Corners typed as places from the origin, whatever the pointer does. */
static void
test_typed_places (void)
{
  g_auto (Hand) hand
      = hand_new (CW_TOOL_WALL, case_empty (CW_UNITS_METRIC));
  static const int corners[][2]
      = { { 0, 0 }, { 4000, 0 }, { 4000, 2700 }, { 0, 2400 } };

  hand_move (&hand, 777, 333);
  hand_type (&hand, "0; 0");
  hand_type (&hand, "4000; 0");
  hand_type (&hand, "4 m; 2.7 m");
  hand_type (&hand, "0; 2400");
  g_assert_true (cw_tool_finish (hand.tool));
  case_assert_outline (hand.document, "e1", 4, corners);
  g_assert_cmpuint (hand_type_wrong (&hand, "0; 1; 2"), ==, 4);
  g_assert_cmpuint (hand_type_wrong (&hand, "0; 1x"), ==, 4);
}

static void
test_typed_sides (void)
{
  g_auto (Hand) hand = begin ();

  hand_click (&hand, 0, 0);
  hand_move (&hand, 900, 3);
  hand_type (&hand, "6250.5");
  hand_move (&hand, 6252, 900);
  hand_type (&hand, "2.75 m");
  hand_move (&hand, 100, 2748);
  hand_type (&hand, "6250.5");
  hand_click (&hand, 1, 1);
  g_assert_cmpint (
      ((const CwCornerNode *) cw_list_at (
           ((const CwOutline *) case_elevation (hand.document, "e1")->outline)
               ->corners,
           2))
          ->x,
      ==, CW_MM (6250) + CW_MM (1) / 2);
}

/* Half a span along and the rise: a gable by its run and rise. */
static void
test_typed_offset (void)
{
  g_auto (Hand) hand = begin ();

  hand_click (&hand, 0, 0);
  hand_move (&hand, 500, 0);
  hand_type (&hand, "8000");
  hand_move (&hand, 7000, 900);
  hand_type (&hand, "4000 x 3000");
  cw_tool_finish (hand.tool);
  ASSERT_OUTLINE (hand.document, "e1", { 0, 0 }, { 8000, 0 },
                  { 4000, 3000 });
}

static void
test_typed_rectangle (void)
{
  g_auto (Hand) hand = begin ();

  hand_type (&hand, "7200 × 2700");
  ASSERT_OUTLINE (hand.document, "e1", { 0, 0 }, { 7200, 0 },
                  { 7200, 2700 }, { 0, 2700 });
  cw_document_undo (hand.document);
  g_assert_null (case_item (hand.document, "e1"));
}

static void
test_typed_feet (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WALL, case_empty (CW_UNITS_US));
  const CwOutline *outline;
  const CwCornerNode *corner;

  hand_type (&hand, "32' 6 1/2\" x 9'");
  outline = (const CwOutline *) case_elevation (hand.document, "e1")->outline;
  corner = cw_list_at (outline->corners, 2);
  g_assert_cmpint (corner->x, ==, CW_INCHES (390) + CW_NM_PER_INCH / 2);
  g_assert_cmpint (corner->y, ==, CW_INCHES (108));
}

static void
test_wrong_text (void)
{
  g_auto (Hand) hand = begin ();

  g_assert_cmpuint (hand_type_wrong (&hand, "6000"), ==, 4);
  g_assert_cmpuint (hand_type_wrong (&hand, "6000 x 3q"), ==, 8);
  g_assert_cmpuint (hand_type_wrong (&hand, "6000 x 0"), >=, 6);
  g_assert_cmpuint (hand_type_wrong (&hand, "1 x 2 x 3"), >=, 5);
  hand_type_wrong (&hand, "");
  hand_type_wrong (&hand, "20 km x 3 m");
  g_assert_false (cw_document_can_undo (hand.document));
  hand_click (&hand, 0, 0);
  hand_type_wrong (&hand, "1000");
}

/* Sides that cross are told, and the corners stay to be mended. */
static void
test_crossing (void)
{
  g_auto (Hand) hand = begin ();
  const CwProject *before = cw_document_project (hand.document);

  hand_click (&hand, 0, 0);
  hand_click (&hand, 6000, 3000);
  hand_click (&hand, 6000, 0);
  hand_click (&hand, 0, 3000);
  g_assert_false (cw_tool_finish (hand.tool));
  g_assert_true (cw_document_project (hand.document) == before);
  g_assert_nonnull (strstr (cw_tool_hint (hand.tool), "cross"));
  g_assert_true (cw_tool_delete (hand.tool));
  g_assert_true (cw_tool_finish (hand.tool));
  ASSERT_OUTLINE (hand.document, "e1", { 0, 0 }, { 6000, 0 },
                  { 6000, 3000 });
}

static void
test_too_few (void)
{
  g_auto (Hand) hand = begin ();

  g_assert_false (cw_tool_finish (hand.tool));
  hand_click (&hand, 0, 0);
  hand_click (&hand, 6000, 0);
  g_assert_false (cw_tool_finish (hand.tool));
  g_assert_false (cw_document_can_undo (hand.document));
}

static void
test_cancel (void)
{
  g_auto (Hand) hand = begin ();
  const CwProject *before = cw_document_project (hand.document);

  g_assert_false (cw_tool_cancel (hand.tool));
  hand_click (&hand, 0, 0);
  hand_click (&hand, 6000, 0);
  hand_click (&hand, 6000, 3000);
  g_assert_true (cw_tool_cancel (hand.tool));
  g_assert_false (cw_tool_cancel (hand.tool));
  g_assert_false (cw_tool_finish (hand.tool));
  g_assert_true (cw_document_project (hand.document) == before);
}

static void
test_undo (void)
{
  g_auto (Hand) hand = begin ();
  const CwProject *before = cw_document_project (hand.document);
  const CwProject *after;

  hand_type (&hand, "6000 x 3000");
  after = cw_document_project (hand.document);
  cw_document_undo (hand.document);
  g_assert_true (cw_document_project (hand.document) == before);
  cw_document_redo (hand.document);
  g_assert_true (cw_document_project (hand.document) == after);
}

/* A side that leans by less than a roof does is level; held free, it is as
 * drawn; held straight, it is level or upright whatever is pointed at. */
static void
test_straight (void)
{
  g_auto (Hand) hand = begin ();

  hand.hold = CW_HOLD_FREE;
  hand_click (&hand, 0, 0);
  hand_click (&hand, 6000, 50);
  hand.hold = CW_HOLD_STRAIGHT;
  hand_click (&hand, 5000, 3000);
  hand_click (&hand, 500, 2000);
  hand.hold = CW_HOLD_NONE;
  g_assert_true (cw_tool_finish (hand.tool));
  ASSERT_OUTLINE (hand.document, "e1", { 0, 0 }, { 6000, 50 },
                  { 6000, 3000 }, { 500, 3000 });
}

/* Beside a wall that has an outline, a new wall; the first is not touched. */
static void
test_second_wall (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WALL, case_wall ());
  const CwElevation *first = case_elevation (hand.document, "e1");

  hand_click (&hand, 8000, 0);
  hand_click (&hand, 10000, 0);
  hand_click (&hand, 10000, 2000);
  hand_click (&hand, 8000, 2000);
  hand_click (&hand, 8000, 0);
  g_assert_true (case_elevation (hand.document, "e1") == first);
  ASSERT_OUTLINE (hand.document, "e2", { 0, 0 }, { 2000, 0 },
                  { 2000, 2000 }, { 0, 2000 });
  g_assert_cmpstr (case_elevation (hand.document, "e2")->buildup, ==, "b1");
  g_assert_cmpstr (cw_document_elevation_id (hand.document), ==, "e2");
}

/* Traced on a sheet it lies where it was traced: 2000 mm at 1:50 are 40 mm
 * of paper, 113.386 points. */
static void
test_on_sheet (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WALL, case_wall_on_sheet ());
  const CwElevation *second;

  hand_click (&hand, 2000, 4000);
  hand_click (&hand, 4000, 4000);
  hand_click (&hand, 4000, 5000);
  hand_click (&hand, 2000, 5000);
  cw_tool_finish (hand.tool);
  second = case_elevation (hand.document, "e2");
  g_assert_cmpstr (second->sheet, ==, "s1");
  g_assert_cmpfloat_with_epsilon (cw_decimal_to_double (second->at_x),
                                  100 + 40 / 25.4 * 72, 1e-4);
  g_assert_cmpfloat_with_epsilon (cw_decimal_to_double (second->at_y),
                                  400 - 80 / 25.4 * 72, 1e-4);
}

/* Another elevation shown in the middle of it: nothing is left over. */
static void
test_elevation_changed (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WALL, case_wall ());

  hand_click (&hand, 8000, 0);
  hand_click (&hand, 9000, 0);
  hand_click (&hand, 9000, 900);
  cw_document_show_elevation (hand.document, NULL);
  cw_tool_refresh (hand.tool);
  g_assert_false (cw_tool_finish (hand.tool));
  g_assert_false (cw_tool_cancel (hand.tool));
}

static void
test_overlay (void)
{
  g_auto (Hand) hand = begin ();
  g_autoptr (CwDisplayList) list = NULL;
  g_autofree char *text = NULL;

  hand_click (&hand, 0, 0);
  hand_move (&hand, 6000, 0);
  list = cw_tool_overlay (hand.tool, 5e6);
  text = cw_display_list_to_text (list);
  g_assert_nonnull (strstr (text, "6000"));
}

/* From the first corner to the opposite one. */
static void
test_drag_rectangle (void)
{
  static const int corners[][2]
      = { { 0, 0 }, { 4000, 0 }, { 4000, 2500 }, { 0, 2500 } };
  g_auto (Hand) hand = hand_new (CW_TOOL_WALL, case_empty (CW_UNITS_METRIC));

  hand_drag (&hand, 100, 200, 4100, 2700);
  case_assert_outline (hand.document, "e1", 4, corners);
}

/* Over the head of a wall 4 m long, bowed up by 600 mm through the middle. */
static void
test_drag_arc (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WALL, case_empty (CW_UNITS_METRIC));
  g_autoptr (CwWall) wall = NULL;
  g_autoptr (GArray) corners = NULL;
  const CwElevation *elevation;
  double bow = 0.6, half = 2, radius = (half * half + bow * bow) / (2 * bow);
  double angle = asin (half / radius);

  hand_click (&hand, 0, 0);
  hand_click (&hand, 4000, 0);
  hand_click (&hand, 4000, 2500);
  hand_drag (&hand, 0, 2500, 2000, 3100);
  g_assert_true (cw_tool_finish (hand.tool));
  elevation = case_elevation (hand.document, "e1");
  corners = cw_corners_from_list (
      ((const CwOutline *) elevation->outline)->corners);
  g_assert_cmpint (g_array_index (corners, CwCorner, 2).sagitta, ==,
                   CW_MM (600));
  wall = cw_wall_new (cw_document_project (hand.document), elevation);
  /* The segment of a circle: r² (a - sin a cos a), from memory. */
  g_assert_cmpfloat_with_epsilon (
      cw_region_area (wall->outline),
      10 + radius * radius * (angle - sin (angle) * cos (angle)), 1e-6);
}

/* 6:12 over 3 m rises by exactly 1.5 m. */
static void
test_typed_pitch (void)
{
  static const int corners[][2]
      = { { 0, 0 }, { 6000, 0 }, { 6000, 2500 }, { 3000, 4000 }, { 0, 2500 } };
  g_auto (Hand) hand = hand_new (CW_TOOL_WALL, case_empty (CW_UNITS_METRIC));

  hand_click (&hand, 0, 0);
  hand_click (&hand, 6000, 0);
  hand_click (&hand, 6000, 2500);
  hand_move (&hand, 5000, 3000);
  hand_type (&hand, "3000 x 6:12");
  hand_move (&hand, 1000, 2000);
  hand_type (&hand, "3000 x 6 : 12");
  g_assert_true (cw_tool_finish (hand.tool));
  case_assert_outline (hand.document, "e1", 5, corners);
}

/* 26.565 degrees is 1 in 2: 1000 along the slope, then any way on it. */
static void
test_typed_slope (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WALL, case_empty (CW_UNITS_METRIC));
  g_autoptr (GArray) corners = NULL;
  CwPoint top;

  hand_click (&hand, 0, 0);
  hand_click (&hand, 6000, 0);
  hand_move (&hand, 5000, 3000);
  hand_type (&hand, "5000 90°");
  hand_move (&hand, 5000, 6000);
  hand_type (&hand, "26.565051177 deg");
  hand_click (&hand, 4025, 6105);
  hand_click (&hand, 0, 2000);
  g_assert_true (cw_tool_finish (hand.tool));
  corners = cw_corners_from_list (
      ((const CwOutline *) case_elevation (hand.document, "e1")->outline)
          ->corners);
  top = g_array_index (corners, CwCorner, 3).at;
  g_assert_cmpint (g_array_index (corners, CwCorner, 2).at.y, ==,
                   CW_MM (5000));
  g_assert_cmpfloat_with_epsilon (
      (double) (top.y - CW_MM (5000)) / (double) (CW_MM (6000) - top.x), 0.5,
      1e-6);
}

static void
test_typed_wrong_way (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WALL, case_empty (CW_UNITS_METRIC));

  hand_click (&hand, 0, 0);
  hand_move (&hand, 1000, 0);
  hand_type_wrong (&hand, "1000 x 90°");
  hand_type_wrong (&hand, "6:0");
  hand_type_wrong (&hand, "1000 120°");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/wall-tool/clicks", test_clicks);
  g_test_add_func ("/board/wall-tool/clockwise", test_clockwise);
  g_test_add_func ("/board/wall-tool/edges", test_edges);
  g_test_add_func ("/board/wall-tool/typed/places", test_typed_places);
  g_test_add_func ("/board/wall-tool/typed/sides", test_typed_sides);
  g_test_add_func ("/board/wall-tool/typed/offset", test_typed_offset);
  g_test_add_func ("/board/wall-tool/typed/rectangle", test_typed_rectangle);
  g_test_add_func ("/board/wall-tool/typed/feet", test_typed_feet);
  g_test_add_func ("/board/wall-tool/typed/wrong", test_wrong_text);
  g_test_add_func ("/board/wall-tool/crossing", test_crossing);
  g_test_add_func ("/board/wall-tool/too-few", test_too_few);
  g_test_add_func ("/board/wall-tool/cancel", test_cancel);
  g_test_add_func ("/board/wall-tool/undo", test_undo);
  g_test_add_func ("/board/wall-tool/straight", test_straight);
  g_test_add_func ("/board/wall-tool/second-wall", test_second_wall);
  g_test_add_func ("/board/wall-tool/on-sheet", test_on_sheet);
  g_test_add_func ("/board/wall-tool/elevation-changed",
                   test_elevation_changed);
  g_test_add_func ("/board/wall-tool/overlay", test_overlay);
  g_test_add_func ("/board/wall-tool/drag-rectangle", test_drag_rectangle);
  g_test_add_func ("/board/wall-tool/drag-arc", test_drag_arc);
  g_test_add_func ("/board/wall-tool/typed-pitch", test_typed_pitch);
  g_test_add_func ("/board/wall-tool/typed-slope", test_typed_slope);
  g_test_add_func ("/board/wall-tool/typed-wrong-way", test_typed_wrong_way);
  return g_test_run ();
}

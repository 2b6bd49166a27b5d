/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "board-cases.h"

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

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/wall-tool/clicks", test_clicks);
  g_test_add_func ("/board/wall-tool/clockwise", test_clockwise);
  g_test_add_func ("/board/wall-tool/edges", test_edges);
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
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The dimension tool, and a dimension by its handles.
 */
#include <string.h>

#include "board-cases.h"
#include "cw-dimension.h"

static const CwDimension *
dimension (Hand *hand, const char *id)
{
  const CwNode *item = case_item (hand->document, id);

  g_assert_nonnull (item);
  g_assert_true (item->type == &cw_dimension_type);
  return (const CwDimension *) item;
}

static void
assert_dimension (Hand *hand, const char *id, CwDimensionWay way,
                  const int (*ends)[2], int offset, double length)
{
  const CwDimension *it = dimension (hand, id);

  g_assert_cmpint (it->way, ==, way);
  g_assert_cmpint (it->x, ==, CW_MM (ends[0][0]));
  g_assert_cmpint (it->y, ==, CW_MM (ends[0][1]));
  g_assert_cmpint (it->to_x, ==, CW_MM (ends[1][0]));
  g_assert_cmpint (it->to_y, ==, CW_MM (ends[1][1]));
  g_assert_cmpint (it->offset, ==, CW_MM (offset));
  g_assert_cmpfloat_with_epsilon ((double) cw_dimension_length (it) / 1e6,
                                  length, 1e-6);
}

/* The ends fall on the window's corners exactly. */
static void
test_level (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_DIMENSION, case_wall ());

  hand_click (&hand, 1004, 897);
  hand_click (&hand, 2197, 903);
  g_assert_false (cw_document_can_undo (hand.document));
  hand_click (&hand, 1700, 400);
  assert_dimension (&hand, "d1", CW_DIMENSION_LEVEL,
                    (const int[][2]) { { 1000, 900 }, { 2200, 900 } }, -500,
                    1200);
  case_assert_selected (hand.document, "d1");
  g_assert_true (cw_tool_take_done (hand.tool));
  cw_document_undo (hand.document);
  g_assert_null (case_item (hand.document, "d1"));
}

static void
test_drag (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_DIMENSION, case_wall ());

  hand_drag (&hand, 1000, 900, 1000, 2300);
  hand_click (&hand, 700, 1600);
  assert_dimension (&hand, "d1", CW_DIMENSION_UPRIGHT,
                    (const int[][2]) { { 1000, 900 }, { 1000, 2300 } }, -300,
                    1400);
}

/* Between points that are neither level nor upright the pointer says. */
static void
test_way (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_DIMENSION, case_wall ());
  const int ends[][2] = { { 0, 0 }, { 6000, 3000 } };

  hand.hold = CW_HOLD_ADD;
  hand_click (&hand, 0, 0);
  hand_click (&hand, 6000, 3000);
  hand_click (&hand, 3000, 3400);
  assert_dimension (&hand, "d1", CW_DIMENSION_LEVEL, ends, 3400, 6000);
  g_assert_false (cw_tool_take_done (hand.tool));
  hand_click (&hand, 0, 0);
  hand_click (&hand, 6000, 3000);
  hand_click (&hand, 6500, 1500);
  assert_dimension (&hand, "d2", CW_DIMENSION_UPRIGHT, ends, 6500, 3000);
  hand_click (&hand, 0, 0);
  hand_click (&hand, 6000, 3000);
  hand_move (&hand, 3000 - 447, 1500 + 894);
  hand_type (&hand, "1000");
  assert_dimension (&hand, "d3", CW_DIMENSION_ALIGNED, ends, 1000,
                    6708.203932);
}

/* A chosen way holds; none is measured that would be nothing. */
static void
test_form (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_DIMENSION, case_wall ());
  const int ends[][2] = { { 0, 0 }, { 6000, 3000 } };

  cw_tool_next_form (hand.tool);
  cw_tool_next_form (hand.tool);
  hand_click (&hand, 0, 0);
  hand_click (&hand, 6000, 3000);
  hand_move (&hand, 6500, 1500);
  g_assert_nonnull (strstr (cw_tool_hint (hand.tool), "along"));
  hand_click (&hand, 6500, 1500);
  assert_dimension (&hand, "d1", CW_DIMENSION_LEVEL, ends, 1500, 6000);
}

static void
test_typed (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_DIMENSION, case_wall ());

  hand_click (&hand, 0, 0);
  hand_move (&hand, 800, 10);
  hand_type (&hand, "2400 x 900");
  hand_move (&hand, 1000, -800);
  hand_type_wrong (&hand, "1x");
  hand_type (&hand, "750");
  assert_dimension (&hand, "d1", CW_DIMENSION_LEVEL,
                    (const int[][2]) { { 0, 0 }, { 2400, 900 } }, -750, 2400);
}

static void
test_without_wall (void)
{
  g_auto (Hand) hand
      = hand_new (CW_TOOL_DIMENSION, case_empty (CW_UNITS_METRIC));

  g_assert_nonnull (strstr (cw_tool_hint (hand.tool), "outline first"));
  hand_click (&hand, 0, 0);
  hand_click (&hand, 600, 0);
  hand_click (&hand, 600, 600);
  hand_type_wrong (&hand, "600");
  g_assert_false (cw_document_can_undo (hand.document));
}

static void
test_take_back (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_DIMENSION, case_wall ());

  hand_click (&hand, 0, 0);
  hand_click (&hand, 3000, 0);
  g_assert_true (cw_tool_delete (hand.tool));
  hand_click (&hand, 6000, 0);
  hand_click (&hand, 3000, -600);
  assert_dimension (&hand, "d1", CW_DIMENSION_LEVEL,
                    (const int[][2]) { { 0, 0 }, { 6000, 0 } }, -600, 6000);
  g_assert_false (cw_tool_delete (hand.tool));
}

static void
draw_one (Hand *hand)
{
  hand_click (hand, 1000, 900);
  hand_click (hand, 2200, 900);
  hand_click (hand, 1600, 400);
  hand_take (hand, CW_TOOL_SELECT);
}

/* Its line is picked beside openings and faces; handles change it. */
static void
test_handles (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_DIMENSION, case_wall ());

  draw_one (&hand);
  hand_click (&hand, 200, 200);
  case_assert_selected (hand.document, "e1");
  hand_click (&hand, 1300, 403);
  case_assert_selected (hand.document, "d1");
  hand_drag (&hand, 1600, 400, 1650, 600);
  assert_dimension (&hand, "d1", CW_DIMENSION_LEVEL,
                    (const int[][2]) { { 1000, 900 }, { 2200, 900 } }, -300,
                    1200);
  hand_drag (&hand, 2200, 900, 5998, 4);
  assert_dimension (&hand, "d1", CW_DIMENSION_LEVEL,
                    (const int[][2]) { { 1000, 900 }, { 6000, 0 } }, -300,
                    5000);
  cw_document_undo (hand.document);
  cw_document_undo (hand.document);
  assert_dimension (&hand, "d1", CW_DIMENSION_LEVEL,
                    (const int[][2]) { { 1000, 900 }, { 2200, 900 } }, -500,
                    1200);
}

static void
test_moved (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_DIMENSION, case_wall ());

  draw_one (&hand);
  cw_tool_nudge (hand.tool, CW_MM (10), CW_MM (20));
  assert_dimension (&hand, "d1", CW_DIMENSION_LEVEL,
                    (const int[][2]) { { 1010, 920 }, { 2210, 920 } }, -500,
                    1200);
  g_assert_true (cw_tool_delete (hand.tool));
  g_assert_null (case_item (hand.document, "d1"));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/dimension/level", test_level);
  g_test_add_func ("/board/dimension/drag", test_drag);
  g_test_add_func ("/board/dimension/way", test_way);
  g_test_add_func ("/board/dimension/form", test_form);
  g_test_add_func ("/board/dimension/typed", test_typed);
  g_test_add_func ("/board/dimension/without-wall", test_without_wall);
  g_test_add_func ("/board/dimension/take-back", test_take_back);
  g_test_add_func ("/board/dimension/handles", test_handles);
  g_test_add_func ("/board/dimension/moved", test_moved);
  return g_test_run ();
}

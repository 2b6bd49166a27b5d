/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The tape and the scale of the sheet.
 */
#include <string.h>

#include "board-cases.h"

static void
test_tape (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_TAPE, case_wall ());
  CwPoint first, second;

  hand_click (&hand, 1004, 897);
  g_assert_false (cw_tool_two_points (hand.tool, &first, &second));
  hand_click (&hand, 2197, 2304);
  g_assert_true (cw_tool_two_points (hand.tool, &first, &second));
  g_assert_true (cw_point_equal (first, cw_point (CW_MM (1000), CW_MM (900))));
  g_assert_true (
      cw_point_equal (second, cw_point (CW_MM (2200), CW_MM (2300))));
  g_assert_nonnull (strstr (cw_tool_hint (hand.tool), "1200"));
  g_assert_nonnull (strstr (cw_tool_hint (hand.tool), "1400"));
  g_assert_false (cw_document_can_undo (hand.document));
}

static void
test_tape_drag (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_TAPE, case_wall ());
  CwPoint first, second;

  hand_drag (&hand, 0, 0, 6000, 0);
  g_assert_true (cw_tool_two_points (hand.tool, &first, &second));
  g_assert_cmpint (second.x - first.x, ==, CW_MM (6000));
  hand_click (&hand, 0, 0);
  g_assert_false (cw_tool_two_points (hand.tool, &first, &second));
}

static double
across (Hand *hand)
{
  const CwSheet *sheet
      = cw_project_sheet (cw_document_project (hand->document), "s1");

  g_assert_nonnull (sheet->scale);
  return cw_decimal_to_double (((const CwScale *) sheet->scale)->across);
}

/* What was taken for 2000 mm is said to be 4000: twice the scale. */
static void
test_scale (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_SCALE, case_wall_on_sheet ());
  const CwElevation *wall = case_elevation (hand.document, "e1");

  hand_click (&hand, 1000, 1000);
  hand_type_wrong (&hand, "4000");
  hand_click (&hand, 3000, 1000);
  hand_type_wrong (&hand, "4000 x 1");
  hand_type (&hand, "4 m");
  g_assert_cmpfloat_with_epsilon (across (&hand), 100 * 25.4 / 72, 1e-5);
  g_assert_true (cw_tool_take_done (hand.tool));
  g_assert_true (case_elevation (hand.document, "e1") == wall);
  cw_document_undo (hand.document);
  g_assert_cmpfloat_with_epsilon (across (&hand), 50 * 25.4 / 72, 1e-5);
}

static void
test_scale_straight (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_SCALE, case_wall_on_sheet ());
  CwPoint first, second;

  hand_click (&hand, 1000, 1000);
  hand.hold = CW_HOLD_STRAIGHT;
  hand_click (&hand, 3000, 1040);
  g_assert_true (cw_tool_two_points (hand.tool, &first, &second));
  g_assert_cmpint (second.y, ==, first.y);
}

static void
test_scale_without_sheet (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_SCALE, case_wall ());

  g_assert_nonnull (strstr (cw_tool_hint (hand.tool), "plan sheet first"));
  hand_click (&hand, 1000, 1000);
  hand_click (&hand, 3000, 1000);
  hand_type_wrong (&hand, "4000");
  g_assert_false (cw_document_can_undo (hand.document));
}

static void
test_take_back (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_SCALE, case_wall_on_sheet ());
  CwPoint first, second;

  hand_click (&hand, 1000, 1000);
  hand_click (&hand, 3000, 1000);
  g_assert_true (cw_tool_delete (hand.tool));
  g_assert_false (cw_tool_two_points (hand.tool, &first, &second));
  hand_click (&hand, 3500, 1000);
  g_assert_true (cw_tool_two_points (hand.tool, &first, &second));
  g_assert_true (cw_tool_cancel (hand.tool));
  g_assert_false (cw_tool_cancel (hand.tool));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/tape/clicks", test_tape);
  g_test_add_func ("/board/tape/drag", test_tape_drag);
  g_test_add_func ("/board/scale/typed", test_scale);
  g_test_add_func ("/board/scale/straight", test_scale_straight);
  g_test_add_func ("/board/scale/without-sheet", test_scale_without_sheet);
  g_test_add_func ("/board/scale/take-back", test_take_back);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Handles of arcs and of unclad areas, and what is typed while one is dragged
 * or something is selected.
 */
#include "board-cases.h"
#include "cw-edit-corners.h"
#include "cw-tool-typed.h"

static CwCorner
corner (Hand *hand, const char *owner, guint i)
{
  g_autoptr (GArray) corners
      = cw_edit_corners (cw_document_project (hand->document), owner);

  g_assert_nonnull (corners);
  g_assert_cmpuint (i, <, corners->len);
  return g_array_index (corners, CwCorner, i);
}

static void
bow_top (Hand *hand)
{
  g_autoptr (CwProject) bowed = cw_edit_bow_side (
      cw_document_project (hand->document), "e1", 2, CW_MM (500), NULL);

  g_assert_nonnull (bowed);
  cw_document_edit (hand->document, bowed, "Bow", NULL);
  hand_click (hand, 3500, 500);
  case_assert_selected (hand->document, "e1");
}

static void
test_bow (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_SELECT, case_wall ());

  bow_top (&hand);
  hand_drag (&hand, 3000, 3500, 3100, 3850);
  g_assert_cmpint (corner (&hand, "e1", 2).sagitta, ==, CW_MM (850));
  cw_document_undo (hand.document);
  g_assert_cmpint (corner (&hand, "e1", 2).sagitta, ==, CW_MM (500));
}

/* Half a circle is the most. */
static void
test_bow_most (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_SELECT, case_wall ());

  bow_top (&hand);
  hand_drag (&hand, 3000, 3500, 3000, 9000);
  g_assert_cmpint (corner (&hand, "e1", 2).sagitta, ==, CW_MM (3000));
}

static void
begin_drag (Hand *hand, double x0, double y0, double x1, double y1)
{
  hand_move (hand, x0, y0);
  hand_press (hand, x0, y0);
  hand_move (hand, x1, y1);
}

static void
test_typed_bow (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_SELECT, case_wall ());

  bow_top (&hand);
  begin_drag (&hand, 3000, 3500, 3000, 3700);
  hand_type_wrong (&hand, "99 km");
  hand_type (&hand, "612.5");
  hand_move (&hand, 3000, 4000);
  hand_release (&hand, 3000, 4000);
  g_assert_cmpint (corner (&hand, "e1", 2).sagitta, ==, CW_MM (1225) / 2);
}

static void
test_unclad (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_SELECT, case_wall ());
  CwPoint at = corner (&hand, "u1", 2).at;

  hand_click (&hand, 5400, 1700);
  case_assert_selected (hand.document, "u1");
  hand_drag (&hand, (double) at.x / 1e6, (double) at.y / 1e6, 5700, 2400);
  g_assert_true (cw_point_equal (corner (&hand, "u1", 2).at,
                                 cw_point (CW_MM (5700), CW_MM (2400))));
  g_assert_true (cw_tool_delete (hand.tool));
  g_assert_nonnull (case_item (hand.document, "u1"));
}

/* From the side that stays; the button that goes up later changes nothing. */
static void
test_typed_size (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_SELECT, case_wall ());

  hand_click (&hand, 1600, 1600);
  begin_drag (&hand, 1000, 1600, 900, 1600);
  hand_type (&hand, "1350");
  hand_release (&hand, 300, 1600);
  case_assert_box (hand.document, "o1", 850, 900, 1350, 1400);
  begin_drag (&hand, 2200, 2300, 2300, 2350);
  hand_type (&hand, "1000 x 1100");
  hand_release (&hand, 2500, 2500);
  case_assert_box (hand.document, "o1", 850, 900, 1000, 1100);
  cw_document_undo (hand.document);
  cw_document_undo (hand.document);
  case_assert_box (hand.document, "o1", 1000, 900, 1200, 1400);
}

/* What is selected is moved by typing, or put at a distance from a corner. */
static void
test_typed_move (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_SELECT, case_wall ());
  g_autoptr (GError) error = NULL;
  guint wrong;

  hand_click (&hand, 1600, 1600);
  g_assert_true (cw_tool_enter_fields (
      hand.tool, (const char *const[]) { "250", "-100" }, &wrong, &error));
  case_assert_box (hand.document, "o1", 1250, 800, 1200, 1400);
  hand_move (&hand, 2, 3);
  g_assert_true (cw_tool_choose_reference (hand.tool));
  g_assert_true (cw_tool_enter_fields (
      hand.tool, (const char *const[]) { "900", "600" }, &wrong, &error));
  g_assert_no_error (error);
  case_assert_box (hand.document, "o1", 900, 600, 1200, 1400);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/handles/bow", test_bow);
  g_test_add_func ("/board/handles/bow-most", test_bow_most);
  g_test_add_func ("/board/handles/typed-bow", test_typed_bow);
  g_test_add_func ("/board/handles/unclad", test_unclad);
  g_test_add_func ("/board/handles/typed-size", test_typed_size);
  g_test_add_func ("/board/handles/typed-move", test_typed_move);
  return g_test_run ();
}

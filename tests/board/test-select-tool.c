/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "board-cases.h"

static Hand
begin (void)
{
  return hand_new (CW_TOOL_SELECT, case_wall ());
}

static void
assert_selected (Hand *hand, const char *ids)
{
  g_autofree char *found = g_strjoinv (
      " ", (char **) cw_document_selection (hand->document));

  g_assert_cmpstr (found, ==, ids);
}

static void
test_click (void)
{
  g_auto (Hand) hand = begin ();

  hand_click (&hand, 1500, 1500);
  assert_selected (&hand, "o1");
  hand_click (&hand, 4500, 600);
  assert_selected (&hand, "p1");
  hand_click (&hand, 3000, 400);
  assert_selected (&hand, "e1");
  hand_click (&hand, 9000, 9000);
  assert_selected (&hand, "");
}

static void
test_add (void)
{
  g_auto (Hand) hand = begin ();

  hand_click (&hand, 1500, 1500);
  hand.hold = CW_HOLD_ADD;
  hand_click (&hand, 4500, 600);
  assert_selected (&hand, "o1 p1");
  hand_click (&hand, 1500, 1500);
  assert_selected (&hand, "p1");
  hand_click (&hand, 9000, 9000);
  assert_selected (&hand, "p1");
}

/* Drawn over several: only what lies in it as a whole. */
static void
test_band (void)
{
  g_auto (Hand) hand = begin ();

  hand_drag (&hand, -500, -500, 5500, 2400);
  assert_selected (&hand, "o1 p1");
  hand_drag (&hand, 6500, 3500, 1900, -100);
  assert_selected (&hand, "p1 t1 u1");
}

static void
test_move (void)
{
  g_auto (Hand) hand = begin ();
  const CwProject *before = cw_document_project (hand.document);

  hand.hold = CW_HOLD_FREE;
  hand_drag (&hand, 1500, 1500, 1837, 1513);
  case_assert_box (hand.document, "o1", 1335, 915, 1200, 1400);
  cw_document_undo (hand.document);
  g_assert_true (cw_document_project (hand.document) == before);
}

/* A trembling press is a click. */
static void
test_tremble (void)
{
  g_auto (Hand) hand = begin ();
  const CwProject *before = cw_document_project (hand.document);

  hand_drag (&hand, 1500, 1500, 1510, 1505);
  g_assert_true (cw_document_project (hand.document) == before);
}

/* Near to a corner of something else the box falls on it exactly: its right
 * side on the unclad area's left. */
static void
test_move_snaps (void)
{
  g_auto (Hand) hand = begin ();

  hand_drag (&hand, 1500, 1500, 4317, 1700);
  g_assert_cmpint (case_get (case_item (hand.document, "o1"), "x"), ==,
                   CW_MM (3800));
}

static void
test_move_straight (void)
{
  g_auto (Hand) hand = begin ();

  hand.hold = CW_HOLD_STRAIGHT | CW_HOLD_FREE;
  hand_drag (&hand, 1500, 1500, 2100, 1590);
  case_assert_box (hand.document, "o1", 1600, 900, 1200, 1400);
}

static void
test_move_several (void)
{
  g_auto (Hand) hand = begin ();
  const CwUnclad *unclad;

  hand_click (&hand, 1500, 1500);
  hand.hold = CW_HOLD_ADD;
  hand_click (&hand, 5400, 1700);
  hand.hold = CW_HOLD_FREE;
  hand_drag (&hand, 1500, 1500, 1600, 1450);
  case_assert_box (hand.document, "o1", 1100, 850, 1200, 1400);
  unclad = (const CwUnclad *) case_item (hand.document, "u1");
  g_assert_cmpint (((const CwCornerNode *) cw_list_at (unclad->corners, 0))->x,
                   ==, CW_MM (5100));
  case_assert_box (hand.document, "p1", 4500, 600, 100, 100);
}

static void
test_given_up (void)
{
  g_auto (Hand) hand = begin ();
  const CwProject *before = cw_document_project (hand.document);

  hand_press (&hand, 1500, 1500);
  hand_move (&hand, 2500, 1500);
  g_assert_true (cw_document_project (hand.document) != before);
  g_assert_true (cw_tool_cancel (hand.tool));
  hand_release (&hand, 2500, 1500);
  g_assert_true (cw_document_project (hand.document) == before);
  g_assert_false (cw_document_can_undo (hand.document));
}

static void
test_resize (void)
{
  g_auto (Hand) hand = begin ();

  hand_click (&hand, 1500, 1500);
  hand.hold = CW_HOLD_FREE;
  hand_drag (&hand, 2200, 2300, 2405, 2450);
  case_assert_box (hand.document, "o1", 1000, 900, 1405, 1550);
  hand_drag (&hand, 1000, 1675, 800, 1600);
  case_assert_box (hand.document, "o1", 800, 900, 1605, 1550);
  hand_drag (&hand, 1602.5, 900, 1602.5, 1000);
  case_assert_box (hand.document, "o1", 800, 1000, 1605, 1450);
}

/* The springing line goes down, the crown stays; a segmental head that rises
 * by more than half its width becomes a pointed one. */
static void
test_springing (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_ARCH, case_wall ());
  const CwNode *arch;

  hand_click (&hand, 3000, 300);
  hand_type (&hand, "1000 x 2000 x 200");
  hand_take (&hand, CW_TOOL_SELECT);
  hand.hold = CW_HOLD_FREE;
  hand_drag (&hand, 3000, 2100, 3000, 1950);
  arch = case_item (hand.document, "o2");
  g_assert_cmpint (case_get (arch, "rise"), ==, CW_MM (350));
  g_assert_cmpint (case_get (arch, "height"), ==, CW_MM (1650));
  g_assert_cmpint (case_get (arch, "head"), ==, CW_ARCH_SEGMENTAL);
  hand_drag (&hand, 4000, 1950, 4100, 1700);
  arch = case_item (hand.document, "o2");
  g_assert_cmpint (case_get (arch, "rise"), ==, CW_MM (600));
  g_assert_cmpint (case_get (arch, "head"), ==, CW_ARCH_POINTED);
  hand_drag (&hand, 4000, 1700, 4000, -900);
  arch = case_item (hand.document, "o2");
  g_assert_cmpint (case_get (arch, "height"), >, 0);
  g_assert_cmpint (case_get (arch, "rise") + case_get (arch, "height"), ==,
                   CW_MM (2000));
}

/* Pushed past its other side it stays a window of a millimetre. */
static void
test_resize_past (void)
{
  g_auto (Hand) hand = begin ();

  hand_click (&hand, 1500, 1500);
  hand.hold = CW_HOLD_FREE;
  hand_drag (&hand, 2200, 1600, 300, 1600);
  case_assert_box (hand.document, "o1", 1000, 900, 1, 1400);
}

static void
test_corner (void)
{
  const int moved[][2]
      = { { 0, 0 }, { 6000, 0 }, { 6000, 3500 }, { 0, 3000 } };
  g_auto (Hand) hand = begin ();

  hand_click (&hand, 3000, 400);
  hand_drag (&hand, 6000, 3000, 6003, 3500);
  case_assert_outline (hand.document, "e1", G_N_ELEMENTS (moved), moved);
}

/* As far as it is a wall; beyond, the tool says why. */
static void
test_corner_crossing (void)
{
  g_auto (Hand) hand = begin ();
  const CwOutline *outline;

  hand_click (&hand, 3000, 400);
  hand_press (&hand, 6000, 3000);
  hand_move (&hand, 3000, -500);
  g_assert_nonnull (strstr (cw_tool_hint (hand.tool), "cross"));
  hand_release (&hand, 3000, -500);
  outline = (const CwOutline *) case_elevation (hand.document, "e1")->outline;
  {
    g_autoptr (CwRegion) shape = cw_outline_shape (outline);

    g_assert_nonnull (shape);
  }
}

static void
test_remove_corner (void)
{
  const int left[][2] = { { 0, 0 }, { 6000, 0 }, { 0, 3000 } };
  g_auto (Hand) hand = begin ();

  hand_click (&hand, 3000, 400);
  hand_click (&hand, 6000, 3000);
  g_assert_true (cw_tool_delete (hand.tool));
  case_assert_outline (hand.document, "e1", G_N_ELEMENTS (left), left);
  hand_click (&hand, 6000, 0);
  g_assert_false (cw_tool_delete (hand.tool));
}

static void
test_nudge (void)
{
  g_auto (Hand) hand = begin ();
  const CwProject *before = cw_document_project (hand.document);

  hand_click (&hand, 1500, 1500);
  for (guint i = 0; i < 3; i++)
    cw_tool_nudge (hand.tool, CW_MM (10), 0);
  cw_tool_nudge (hand.tool, 0, -CW_MM (1));
  case_assert_box (hand.document, "o1", 1030, 899, 1200, 1400);
  cw_document_undo (hand.document);
  g_assert_true (cw_document_project (hand.document) == before);
}

static void
test_delete (void)
{
  g_auto (Hand) hand = begin ();

  g_assert_false (cw_tool_delete (hand.tool));
  hand_click (&hand, 1500, 1500);
  g_assert_true (cw_tool_delete (hand.tool));
  g_assert_null (case_item (hand.document, "o1"));
  assert_selected (&hand, "");
  cw_document_undo (hand.document);
  g_assert_nonnull (case_item (hand.document, "o1"));
  assert_selected (&hand, "o1");
}

/* Undone from elsewhere in the middle of a drag: the drag is over. */
static void
test_changed_behind (void)
{
  g_auto (Hand) hand = begin ();
  const CwProject *before = cw_document_project (hand.document);

  hand_press (&hand, 1500, 1500);
  hand_move (&hand, 2500, 1500);
  cw_document_undo (hand.document);
  cw_tool_refresh (hand.tool);
  hand_move (&hand, 2600, 1500);
  hand_release (&hand, 2600, 1500);
  g_assert_true (cw_document_project (hand.document) == before);
}

static void
test_escape (void)
{
  g_auto (Hand) hand = begin ();

  hand_click (&hand, 1500, 1500);
  g_assert_true (cw_tool_cancel (hand.tool));
  assert_selected (&hand, "");
  g_assert_false (cw_tool_cancel (hand.tool));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/select-tool/click", test_click);
  g_test_add_func ("/board/select-tool/add", test_add);
  g_test_add_func ("/board/select-tool/band", test_band);
  g_test_add_func ("/board/select-tool/move/free", test_move);
  g_test_add_func ("/board/select-tool/move/tremble", test_tremble);
  g_test_add_func ("/board/select-tool/move/snaps", test_move_snaps);
  g_test_add_func ("/board/select-tool/move/straight", test_move_straight);
  g_test_add_func ("/board/select-tool/move/several", test_move_several);
  g_test_add_func ("/board/select-tool/move/given-up", test_given_up);
  g_test_add_func ("/board/select-tool/move/changed-behind",
                   test_changed_behind);
  g_test_add_func ("/board/select-tool/resize/handles", test_resize);
  g_test_add_func ("/board/select-tool/resize/past", test_resize_past);
  g_test_add_func ("/board/select-tool/resize/springing", test_springing);
  g_test_add_func ("/board/select-tool/corner/move", test_corner);
  g_test_add_func ("/board/select-tool/corner/crossing",
                   test_corner_crossing);
  g_test_add_func ("/board/select-tool/corner/remove", test_remove_corner);
  g_test_add_func ("/board/select-tool/nudge", test_nudge);
  g_test_add_func ("/board/select-tool/delete", test_delete);
  g_test_add_func ("/board/select-tool/escape", test_escape);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Placing one thing after the other: where they fall, and what is said.
 */
#include <string.h>

#include "board-cases.h"
#include "cw-snap-gap.h"

static void
place (Hand *hand, const char *size, double x, double y)
{
  hand_click (hand, x, y);
  hand_move (hand, x + 200, y + 200);
  hand_type (hand, size);
}

/* Two windows 66 mm apart; a third can be put as near, by the pointer alone,
 * at a zoom where that is less than snapping reaches. */
static void
test_close_neighbours (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WINDOW, case_wall ());
  const CwNode *third;

  hand.hold = CW_HOLD_ADD;
  hand_type (&hand, "2266; 900");
  hand_move (&hand, 2600, 1500);
  hand_type (&hand, "800 x 1400");
  case_assert_box (hand.document, "o2", 2266, 900, 800, 1400);
  hand.mm_per_pixel = 15;
  hand_move (&hand, 3066 + 60, 1300);
  g_assert_cmpstr (cw_tool_snap_words (hand.tool), ==, "Equal gaps");
  hand_drag (&hand, 3066 + 60, 900, 3066 + 66 + 805, 2300);
  third = case_item (hand.document, "o3");
  g_assert_nonnull (third);
  g_assert_cmpint (case_get (third, "x"), ==, CW_MM (3132));
  g_assert_cmpint (case_get (third, "y"), ==, CW_MM (900));
}

/* Held off, the edge of the neighbour does not draw. */
static void
test_held_off (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WINDOW, case_wall ());

  hand.mm_per_pixel = 15;
  hand_move (&hand, 2262, 905);
  g_assert_cmpstr (cw_tool_snap_words (hand.tool), ==, "Corner");
  hand.hold = CW_HOLD_FREE;
  g_assert_cmpint (cw_tool_get_form (hand.tool), ==, 0);
  place (&hand, "800 x 1400", 2262, 905);
  g_assert_cmpint (case_get (case_item (hand.document, "o2"), "x"), ==,
                   CW_MM (2260));
}

static void
assert_up (int left, int bottom, int height, int expected_bottom)
{
  g_autoptr (CwProject) project = case_long_wall ();
  const CwElevation *elevation = cw_list_at (project->elevations, 0);
  g_autoptr (CwWall) wall = cw_wall_new (project, elevation);
  CwSnapField field = { .wall = wall, .radius = CW_MM (40) };
  CwBox box = case_box (left, bottom, left + 100, bottom + height);
  CwSnapGap gap;

  g_assert_true (cw_snap_gap (&field, &box, TRUE, &gap));
  g_assert_cmpint (box.bottom + gap.move, ==, CW_MM (expected_bottom));
  g_assert_cmpint (gap.to[0].y - gap.from[0].y, ==,
                   gap.to[1].y - gap.from[1].y);
  g_assert_cmpint (gap.from[0].x, ==, gap.to[1].x);
}

/* Over the window at 900 to 2300 mm of a wall 9 m high: midway to its top, or
 * as far over the window as that is over the base. */
static void
test_gap_up (void)
{
  assert_up (700, 5160, 1000, 5150);
  assert_up (700, 3190, 1000, 3200);
}

static void
test_words (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_ARCH, case_wall ());
  const CwNode *arch;
  double crown;

  hand_drag (&hand, 3000, 600, 4000, 2000);
  arch = case_item (hand.document, "o2");
  crown = (double) (case_get (arch, "y") + case_get (arch, "height")
                    + case_get (arch, "rise"))
          / 1e6;
  hand_take (&hand, CW_TOOL_TAPE);
  hand_move (&hand, 3503, crown + 4);
  g_assert_cmpstr (cw_tool_snap_words (hand.tool), ==, "Crown");
  hand_move (&hand, 3004,
             (double) (case_get (arch, "y") + case_get (arch, "height"))
                     / 1e6
                 - 3);
  g_assert_cmpstr (cw_tool_snap_words (hand.tool), ==, "Springing");
  hand_move (&hand, 3004, 597);
  g_assert_cmpstr (cw_tool_snap_words (hand.tool), ==, "Corner");
  hand_move (&hand, 3000, 11);
  g_assert_cmpstr (cw_tool_snap_words (hand.tool), ==, "Middle");
  hand_move (&hand, 4822, 13);
  g_assert_cmpstr (cw_tool_snap_words (hand.tool), ==, "Side");
  hand_move (&hand, 1600, 3500);
  g_assert_null (cw_tool_snap_words (hand.tool));
  hand.hold = CW_HOLD_FREE;
  hand_move (&hand, 3004, 597);
  g_assert_nonnull (strstr (cw_tool_snap_words (hand.tool), "held off"));
}

/* The hint says how to place more than one, and that it is so. */
static void
test_keeps_on (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_DOOR, case_wall ());

  g_assert_nonnull (strstr (cw_tool_hint (hand.tool), "Shift keeps"));
  hand.hold = CW_HOLD_ADD;
  hand_move (&hand, 3000, 500);
  g_assert_nonnull (strstr (cw_tool_hint (hand.tool), "stays on"));
  hand.hold = CW_HOLD_NONE;
  hand_move (&hand, 3000, 500);
  cw_tool_set_keeps_on (hand.tool, TRUE);
  hand_type (&hand, "900 x 2100");
  g_assert_false (cw_tool_take_done (hand.tool));
  cw_tool_set_keeps_on (hand.tool, FALSE);
  hand_type (&hand, "800 x 2100");
  g_assert_true (cw_tool_take_done (hand.tool));
  hand_take (&hand, CW_TOOL_TAPE);
  g_assert_null (strstr (cw_tool_hint (hand.tool), "Shift keeps"));
}

/* A head that was chosen goes on to the next tool of the kind. */
static void
test_form (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_ARCH, case_wall ());
  guint form;

  for (guint i = 0; i < 4; i++)
    cw_tool_next_form (hand.tool);
  form = cw_tool_get_form (hand.tool);
  hand_take (&hand, CW_TOOL_SELECT);
  hand_take (&hand, CW_TOOL_ARCH);
  cw_tool_set_form (hand.tool, form);
  hand_drag (&hand, 3000, 600, 4000, 2400);
  g_assert_cmpint (case_get (case_item (hand.document, "o2"), "head"), ==,
                   CW_ARCH_POINTED);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/placing/close-neighbours", test_close_neighbours);
  g_test_add_func ("/board/placing/held-off", test_held_off);
  g_test_add_func ("/board/placing/gap-up", test_gap_up);
  g_test_add_func ("/board/placing/words", test_words);
  g_test_add_func ("/board/placing/keeps-on", test_keeps_on);
  g_test_add_func ("/board/placing/form", test_form);
  return g_test_run ();
}

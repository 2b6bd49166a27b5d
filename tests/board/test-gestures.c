/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Thousands of random gestures. Whatever a hand does: every outline is one
 * that can be a wall, every item has a size and an id of its own, what is
 * wrong with a wall is among the checks, a gesture is one step at most,
 * nothing is selected that is not there, the project can be written and read,
 * undo all the way gives the very first project and redo the very last.
 *
 * A failure is had again with the seed that the first line of the output
 * names: test-gestures --seed=SEED -p /board/gestures/on-wall
 */
#include "random-hand.h"
#include "sound-project.h"

#define GESTURES 60
/* Estimates take longer than gestures. */
#define CHECKED_EVERY 12

static guint
rounds (guint usual)
{
  return g_getenv ("CW_LONG") ? 25 * usual : usual;
}

/* At most one step further than before. */
static void
assert_one_step (CwDocument *document, guint former)
{
  const guint now = cw_document_present_state (document);

  g_assert_cmpuint (now, <=, former + 1);
  if (now > former)
    g_assert_false (cw_document_can_redo (document));
}

static void
do_one (Hand *hand)
{
  const guint former = cw_document_present_state (hand->document);
  g_autoptr (CwDisplayList) list = NULL;

  if (!random_gesture (hand))
    assert_one_step (hand->document, former);
  sound_assert_project (cw_document_project (hand->document));
  sound_assert_selection (hand->document);
  list = cw_tool_overlay (hand->tool, hand->mm_per_pixel * 1e6);
  g_assert_nonnull (list);
  g_assert_cmpstr (cw_tool_hint (hand->tool), !=, "");
}

/* Returns how many faults of walls were found among the checks. */
static guint
run (CwDocument *document)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_SELECT, document);
  const CwProject *first = cw_document_project (document);
  guint n_faults = 0;

  for (guint i = 1; i <= GESTURES; i++)
    {
      do_one (&hand);
      if (i % CHECKED_EVERY != 0)
        continue;
      n_faults += sound_assert_checked (cw_document_project (document));
      sound_assert_file (cw_document_project (document));
    }
  sound_assert_history (document, first);
  return n_faults;
}

static void
test_on_wall (void)
{
  guint n_faults = 0;

  for (guint i = 0; i < rounds (40); i++)
    n_faults += run (case_wall ());
  g_test_message ("%u faults of walls, all told", n_faults);
  /* Else the hand was too tame to show anything. */
  g_assert_cmpuint (n_faults, >, 0);
}

static void
test_on_sheet (void)
{
  for (guint i = 0; i < rounds (20); i++)
    run (case_wall_on_sheet ());
}

static void
test_from_nothing (void)
{
  for (guint i = 0; i < rounds (20); i++)
    run (case_empty (i % 2 ? CW_UNITS_US : CW_UNITS_METRIC));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/gestures/on-wall", test_on_wall);
  g_test_add_func ("/board/gestures/on-sheet", test_on_sheet);
  g_test_add_func ("/board/gestures/from-nothing", test_from_nothing);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A panel plan looked at for longer: it goes on from the cuts it has, and ends
 * with them or with fewer panels.
 */
#include "one-plan-checker.h"
#include "walls.h"

/* A gable with openings: pieces of many sizes. */
static CwLayout *
gable_layout (void)
{
  const CwPoint corners[] = { { 0, 0 },
                              { CW_MM (9130), 0 },
                              { CW_MM (9130), CW_MM (3110) },
                              { CW_MM (4400), CW_MM (6050) },
                              { 0, CW_MM (2700) } };
  WallMaker maker;
  wall_begin (&maker, corners, G_N_ELEMENTS (corners));
  wall_add_opening (&maker, CW_MM (810), CW_MM (930), CW_MM (1330),
                    CW_MM (1270));
  wall_add_opening (&maker, CW_MM (3370), 0, CW_MM (1010), CW_MM (2130));
  wall_add_opening (&maker, CW_MM (6170), CW_MM (870), CW_MM (1570),
                    CW_MM (1410));
  return wall_layout (&maker);
}

static CwPanelPlan *
plan_of (const CwLayout *layout, CwCutEffort effort,
         const CwPanelPlan *former)
{
  const CwPanelWalls walls = { layout, 0, 1 };
  return cw_panel_plan_new (&walls, 1, 0, CW_OFFCUTS_PROJECT, effort, former,
                            NULL);
}

static void
test_former (void)
{
  g_autoptr (CwLayout) layout = gable_layout ();
  g_autoptr (CwPanelPlan) first
      = plan_of (layout, CW_CUT_EFFORT_FIRST, NULL);
  g_autoptr (CwPanelPlan) live
      = plan_of (layout, CW_CUT_EFFORT_LIVE, first);
  check_one_plan (first);
  check_one_plan (live);
  g_assert_cmpuint (live->n_panels, <=, first->n_panels);
  g_assert_cmpuint (live->least, >=, first->least);
  g_assert_cmpint (live->effort, ==, CW_CUT_EFFORT_LIVE);
}

static void
note_share (guint n_panels, double share, gpointer data)
{
  g_assert_cmpuint (n_panels, >, 0);
  *(double *) data = share;
}

static void
test_improve (void)
{
  g_autoptr (CwLayout) layout = gable_layout ();
  g_autoptr (CwPanelPlan) first
      = plan_of (layout, CW_CUT_EFFORT_FIRST, NULL);
  double share = 0;
  g_autoptr (CwPanelPlan) better
      = cw_panel_plan_improve (first, note_share, &share, NULL);
  check_one_plan (better);
  g_assert_cmpuint (better->n_panels, <=, first->n_panels);
  g_assert_true (cw_panel_plan_is_settled (better, CW_CUT_EFFORT_LONG));
  if (better->n_panels > better->least)
    g_assert_cmpfloat (share, >, 0.99);

  /* Nothing is looked for twice. */
  g_autoptr (CwPanelPlan) again
      = cw_panel_plan_improve (better, NULL, NULL, NULL);
  g_assert_true (again == better);
}

static void
test_improve_cancelled (void)
{
  g_autoptr (CwLayout) layout = gable_layout ();
  g_autoptr (CwPanelPlan) first
      = plan_of (layout, CW_CUT_EFFORT_FIRST, NULL);
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  g_cancellable_cancel (cancellable);
  g_autoptr (CwPanelPlan) kept
      = cw_panel_plan_improve (first, NULL, NULL, cancellable);
  check_one_plan (kept);
  g_assert_cmpuint (kept->n_panels, ==, first->n_panels);
  g_assert_cmpuint (kept->least, ==, first->least);
  g_assert_cmpint (kept->effort, ==, first->effort);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/layout/panel-plan/former", test_former);
  g_test_add_func ("/layout/panel-plan/improve", test_improve);
  g_test_add_func ("/layout/panel-plan/improve-cancelled",
                   test_improve_cancelled);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The long search: never worse, stopped and gone on with, and its progress.
 */
#include "estimate-cases.h"
#include "panel-plan-checker.h"

/* Walls whose live plan is one panel above its bound: something is left to be
 * looked for. Asserted in open_takeoff(). */
static const char open_walls[]
    = "9.37x2.83 window:1.21x1.37@1.13,0.87 window:0.83x1.11@4.71,0.93; "
      "7.43x2.71 window:1.61x1.27@2.3,0.9";

static CwTakeoff *
open_takeoff (void)
{
  g_autoptr (CwProject) project = case_project (open_walls, "");
  CwTakeoff *live = settled_takeoff (project, NULL);

  g_assert_true (cw_takeoff_is_settled (live, CW_CUT_EFFORT_LIVE));
  g_assert_false (cw_takeoff_is_settled (live, CW_CUT_EFFORT_LONG));
  return live;
}

/* What is told, and after how many calls the search is stopped. */
typedef struct
{
  guint n_calls, n_panels;
  double share;
  guint stop_after;           /* 0: never */
  GCancellable *cancellable;
} Watch;

static void
told (guint n_panels, double share, gpointer data)
{
  Watch *watch = data;

  watch->n_calls++;
  g_assert_cmpuint (n_panels, <=, watch->n_panels);
  g_assert_cmpfloat (share, >=, watch->share - 1e-9);
  g_assert_cmpfloat (share, <=, 1 + 1e-9);
  watch->n_panels = n_panels;
  watch->share = share;
  if (watch->n_calls == watch->stop_after)
    g_cancellable_cancel (watch->cancellable);
}

static void
test_progress (void)
{
  g_autoptr (CwTakeoff) live = open_takeoff ();
  Watch watch = { .n_panels = panels_used (live) };
  g_autoptr (CwTakeoff) best = cw_takeoff_search (live, told, &watch, NULL);

  check_panel_plans (best);
  g_assert_true (cw_takeoff_is_settled (best, CW_CUT_EFFORT_LONG));
  g_assert_cmpuint (panels_used (best), <=, panels_used (live));
  g_assert_cmpuint (panels_needed (best), >=, panels_needed (live));
  g_assert_cmpuint (watch.n_calls, >, 3);
  g_assert_cmpuint (watch.n_panels, >=, panels_used (best));
}

static CwTakeoff *
stopped_after (const CwTakeoff *takeoff, guint n_calls)
{
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  Watch watch = { .n_panels = panels_used (takeoff),
                  .stop_after = n_calls,
                  .cancellable = cancellable };

  return cw_takeoff_search (takeoff, told, &watch, cancellable);
}

static void
assert_same_cuts (const CwCutPlan *a, const CwCutPlan *b)
{
  g_assert_cmpuint (a->panels->len, ==, b->panels->len);
  for (guint i = 0; i < a->panels->len; i++)
    {
      const CwCutPanel *one = a->panels->pdata[i];
      const CwCutPanel *other = b->panels->pdata[i];

      g_assert_cmpmem (one->placements->data,
                       one->placements->len * sizeof (CwCutPlacement),
                       other->placements->data,
                       other->placements->len * sizeof (CwCutPlacement));
    }
}

static void
assert_same_shares (const CwTakeoff *a, const CwTakeoff *b)
{
  const CwPanelStock *one = a->stocks->pdata[0], *other = b->stocks->pdata[0];

  g_assert_cmpuint (one->shares->len, ==, other->shares->len);
  for (guint i = 0; i < one->shares->len; i++)
    assert_same_cuts (
        g_array_index (one->shares, CwPanelShare, i).plan->cut,
        g_array_index (other->shares, CwPanelShare, i).plan->cut);
}

/* Stopped twice and begun again, it ends where it ends at one go. */
static void
test_stop_leaves_no_trace (void)
{
  g_autoptr (CwTakeoff) live = open_takeoff ();
  g_autoptr (CwTakeoff) at_one_go
      = cw_takeoff_search (live, NULL, NULL, NULL);
  g_autoptr (CwTakeoff) early = stopped_after (live, 1);
  g_autoptr (CwTakeoff) later = stopped_after (early, 3);
  g_autoptr (CwTakeoff) best = cw_takeoff_search (later, NULL, NULL, NULL);

  check_panel_plans (early);
  check_panel_plans (later);
  g_assert_false (cw_takeoff_is_settled (later, CW_CUT_EFFORT_LONG));
  g_assert_cmpuint (panels_used (early), <=, panels_used (live));
  g_assert_cmpuint (panels_used (later), <=, panels_used (early));
  g_assert_cmpuint (panels_used (best), ==, panels_used (at_one_go));
  assert_same_shares (best, at_one_go);
}

/* The next project with the same pieces has what was found, and searches on
 * to the same end. */
static void
test_found_is_taken_over (void)
{
  g_autoptr (CwTakeoff) live = open_takeoff ();
  g_autoptr (CwTakeoff) found = stopped_after (live, 2);
  const CwNode *elevation = cw_list_at (live->project->elevations, 0);
  g_autoptr (CwNode) named = cw_node_copy (elevation);
  g_autoptr (CwNode) next = NULL;
  g_autoptr (CwTakeoff) takeoff = NULL, best = NULL, at_one_go = NULL;

  cw_node_put_text (named, "name", "South");
  next = cw_node_replace (&live->project->node, elevation, named);
  takeoff = cw_takeoff_new ((CwProject *) next, found, NULL);
  g_assert_cmpuint (panels_used (takeoff), ==, panels_used (found));
  g_assert_true (cw_takeoff_is_settled (takeoff, CW_CUT_EFFORT_LIVE));
  best = cw_takeoff_search (takeoff, NULL, NULL, NULL);
  at_one_go = cw_takeoff_search (live, NULL, NULL, NULL);
  assert_same_shares (best, at_one_go);
}

static void
test_settled_stays (void)
{
  g_autoptr (CwProject) project = case_project ("9.609x6.027", "");
  g_autoptr (CwTakeoff) live = settled_takeoff (project, NULL);
  g_autoptr (CwTakeoff) best = cw_takeoff_search (live, NULL, NULL, NULL);

  g_assert_true (best == live);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/estimate/takeoff-search/progress", test_progress);
  g_test_add_func ("/estimate/takeoff-search/stop-leaves-no-trace",
                   test_stop_leaves_no_trace);
  g_test_add_func ("/estimate/takeoff-search/found-is-taken-over",
                   test_found_is_taken_over);
  g_test_add_func ("/estimate/takeoff-search/settled-stays",
                   test_settled_stays);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "app-cases.h"
#include "cw-edits.h"
#include "cw-estimator.h"
#include "estimate-cases.h"

/* Enough for some milliseconds of work. */
#define MANY_WALLS 60

static CwCornerNode *
corner (int x, int y)
{
  CwNode *node = cw_node_new (&cw_corner_type);
  cw_node_put (node, "x", CW_MM (x));
  cw_node_put (node, "y", CW_MM (y));
  return (CwCornerNode *) node;
}

static CwNode *
outline (int width, int height)
{
  CwCornerNode *corners[] = { corner (0, 0), corner (width, 0),
                              corner (width, height), corner (0, height) };
  g_autoptr (CwList) list = cw_list_new ((CwNode *const *) corners, 4);
  CwNode *node = cw_node_new (&cw_outline_type);
  cw_node_set_list (node, CW_OUTLINE_CORNERS, list);
  for (int i = 0; i < 4; i++)
    cw_node_unref (corners[i]);
  return node;
}

/* @n walls, the first @width mm long. */
static CwProject *
project_with (guint n, int width)
{
  CwProject *project = cw_project_new_default (CW_UNITS_METRIC);
  for (guint i = 0; i < n; i++)
    {
      g_autofree char *id = NULL;
      g_autoptr (CwProject) former = project;
      g_autoptr (CwProject) next
          = cw_edit_add_elevation (former, "Wall", NULL, &id);
      const CwElevation *elevation = cw_project_elevation (next, id);
      g_autoptr (CwNode) drawn = cw_node_copy (&elevation->node);
      g_autoptr (CwNode) shape
          = outline (i == 0 ? width : 20000 + (int) i, 9000);
      cw_node_set_child (drawn, CW_ELEVATION_OUTLINE, shape);
      project = (CwProject *) cw_node_replace (&next->node, &elevation->node,
                                               drawn);
    }
  return project;
}

typedef struct
{
  CwEstimator *estimator;
  const CwProject *last;
  guint n_told;           /* projects, each once */
  guint n_improved;       /* takeoffs of a project told before */
} Watch;

static void
told (Watch *watch)
{
  const CwProject *project = cw_estimator_takeoff (watch->estimator)->project;
  if (project == watch->last)
    watch->n_improved++;
  else
    watch->n_told++;
  watch->last = project;
}

static Watch *
watch_new (void)
{
  Watch *watch = g_new0 (Watch, 1);
  watch->estimator = cw_estimator_new ();
  g_signal_connect_swapped (watch->estimator, "takeoff-changed",
                            G_CALLBACK (told), watch);
  return watch;
}

static void
watch_free (Watch *watch)
{
  g_assert_finalize_object (watch->estimator);
  g_free (watch);
}
G_DEFINE_AUTOPTR_CLEANUP_FUNC (Watch, watch_free)

static gboolean
is_idle (gpointer data)
{
  return !cw_estimator_is_busy (((Watch *) data)->estimator);
}

static double
gross (Watch *watch)
{
  return cw_takeoff_quantity (cw_estimator_takeoff (watch->estimator), NULL,
                              "wall.gross")
      ->amount;
}

static void
works_out (void)
{
  g_autoptr (Watch) watch = watch_new ();
  g_autoptr (CwProject) project = project_with (1, 10000);
  g_assert_false (cw_estimator_is_busy (watch->estimator));
  g_assert_null (cw_estimator_takeoff (watch->estimator));
  cw_estimator_set_project (watch->estimator, project);
  g_assert_true (cw_estimator_is_busy (watch->estimator));
  case_wait (is_idle, watch);
  g_assert_cmpuint (watch->n_told, ==, 1);
  g_assert_true (cw_estimator_takeoff (watch->estimator)->project == project);
  g_assert_cmpfloat_with_epsilon (gross (watch), 90, 1e-9);
}

/* Of projects that come faster than figures only the newest is told of. */
static void
newest_wins (void)
{
  g_autoptr (Watch) watch = watch_new ();
  g_autoptr (CwProject) last = NULL;
  for (int i = 0; i < 20; i++)
    {
      g_clear_pointer (&last, cw_node_unref);
      last = project_with (MANY_WALLS, 10000 + 1000 * i);
      cw_estimator_set_project (watch->estimator, last);
    }
  case_wait (is_idle, watch);
  g_assert_cmpuint (watch->n_told, ==, 1);
  g_assert_true (cw_estimator_takeoff (watch->estimator)->project == last);
}

static void
last_good_stays (void)
{
  g_autoptr (Watch) watch = watch_new ();
  g_autoptr (CwProject) first = project_with (1, 10000);
  g_autoptr (CwProject) second = project_with (MANY_WALLS, 12000);
  cw_estimator_set_project (watch->estimator, first);
  case_wait (is_idle, watch);
  cw_estimator_set_project (watch->estimator, second);
  g_assert_true (cw_estimator_is_busy (watch->estimator));
  g_assert_cmpfloat_with_epsilon (gross (watch), 90, 1e-9);
  case_wait (is_idle, watch);
  g_assert_cmpfloat (gross (watch), >, 1000);
  g_assert_cmpuint (watch->n_told, ==, 2);
}

static void
same_is_not_worked_out_again (void)
{
  g_autoptr (Watch) watch = watch_new ();
  g_autoptr (CwProject) project = project_with (1, 10000);
  cw_estimator_set_project (watch->estimator, project);
  case_wait (is_idle, watch);
  cw_estimator_set_project (watch->estimator, project);
  g_assert_false (cw_estimator_is_busy (watch->estimator));
  g_assert_cmpuint (watch->n_told, ==, 1);
}

static guint
panels_used (Watch *watch)
{
  return (guint) cw_takeoff_quantity (
             cw_estimator_takeoff (watch->estimator), NULL, "panel.stock")
      ->amount;
}

static gboolean
has_told (gpointer data)
{
  return ((Watch *) data)->n_told > 0;
}

/* Figures come at once, and again when the cut plan was looked for. */
static void
looks_on_when_it_stays (void)
{
  g_autoptr (Watch) watch = watch_new ();
  g_autoptr (CwProject) project = project_with (MANY_WALLS, 10000);
  g_autoptr (CwTakeoff) quick = cw_takeoff_new (project, NULL, NULL);
  g_assert_false (cw_takeoff_is_settled (quick, CW_CUT_EFFORT_LIVE));
  cw_estimator_set_project (watch->estimator, project);
  case_wait (has_told, watch);
  const guint at_first = panels_used (watch);
  g_assert_true (cw_estimator_is_busy (watch->estimator));
  case_wait (is_idle, watch);
  g_assert_cmpuint (watch->n_told, ==, 1);
  g_assert_cmpuint (watch->n_improved, ==, 1);
  g_assert_cmpuint (panels_used (watch), <=, at_first);
  g_assert_true (cw_takeoff_is_settled (
      cw_estimator_takeoff (watch->estimator), CW_CUT_EFFORT_LIVE));
}

static gboolean
tick (gpointer data)
{
  (*(guint *) data)++;
  return G_SOURCE_CONTINUE;
}

/* Setting a project only hands it over, and the main loop goes round while
 * the thread works: 300 ticks at least come before the figures do. */
static gboolean
has_ticked (gpointer data)
{
  return *(guint *) data >= 300;
}

static void
main_loop_goes_on (void)
{
  g_autoptr (Watch) watch = watch_new ();
  g_autoptr (CwProject) project = project_with (40 * MANY_WALLS, 10000);
  guint n_ticks = 0;
  guint source = g_idle_add (tick, &n_ticks);
  cw_estimator_set_project (watch->estimator, project);
  g_assert_true (cw_estimator_is_busy (watch->estimator));
  case_wait (has_ticked, &n_ticks);
  g_assert_true (cw_estimator_is_busy (watch->estimator));
  g_source_remove (source);
  case_wait (is_idle, watch);
}

static void
note_gone (gpointer data, GObject *former)
{
  *(gboolean *) data = TRUE;
}

static gboolean
is_true (gpointer flag)
{
  return *(gboolean *) flag;
}

/* A window may close while its figures are being worked out. */
static void
may_be_dropped_at_work (void)
{
  CwEstimator *estimator = cw_estimator_new ();
  g_autoptr (CwProject) project = project_with (MANY_WALLS, 10000);
  gboolean gone = FALSE;
  g_object_weak_ref (G_OBJECT (estimator), note_gone, &gone);
  cw_estimator_set_project (estimator, project);
  g_object_unref (estimator);
  case_wait (is_true, &gone);
}

/* Something is left to be looked for when the live plans stand. */
static CwProject *
open_project (void)
{
  return case_project (
      "9.37x2.83 window:1.21x1.37@1.13,0.87 window:0.83x1.11@4.71,0.93; "
      "7.43x2.71 window:1.61x1.27@2.3,0.9",
      "");
}

static CwSearch
search_of (Watch *watch)
{
  return cw_estimator_search (watch->estimator, NULL, NULL);
}

/* At work, and some way. */
static gboolean
is_searching (gpointer data)
{
  guint n_panels = 0;
  return cw_estimator_search (((Watch *) data)->estimator, &n_panels, NULL)
             == CW_SEARCH_RUNNING
         && n_panels > 0;
}

static gboolean
has_stopped (gpointer data)
{
  return search_of (data) == CW_SEARCH_STOPPED;
}

static gboolean
is_settled (gpointer data)
{
  const CwTakeoff *takeoff
      = cw_estimator_takeoff (((Watch *) data)->estimator);
  return takeoff && cw_takeoff_is_settled (takeoff, CW_CUT_EFFORT_LONG);
}

static void
searches_when_idle (void)
{
  g_autoptr (Watch) watch = watch_new ();
  g_autoptr (CwProject) project = open_project ();
  cw_estimator_set_project (watch->estimator, project);
  case_wait (is_searching, watch);
  const guint live = panels_used (watch);
  g_assert_false (cw_estimator_is_busy (watch->estimator));
  case_wait (is_settled, watch);
  g_assert_cmpint (search_of (watch), ==, CW_SEARCH_NONE);
  g_assert_cmpuint (panels_used (watch), <=, live);
}

static void
stops_and_searches_on (void)
{
  g_autoptr (Watch) watch = watch_new ();
  g_autoptr (CwProject) project = open_project ();
  cw_estimator_set_project (watch->estimator, project);
  case_wait (is_searching, watch);
  const guint live = panels_used (watch);
  cw_estimator_stop (watch->estimator);
  case_wait (has_stopped, watch);
  g_assert_false (is_settled (watch));
  const guint found = panels_used (watch);
  g_assert_cmpuint (found, <=, live);
  cw_estimator_search_on (watch->estimator);
  case_wait (is_settled, watch);
  g_assert_cmpuint (panels_used (watch), <=, found);
}

/* The next project ends the search, and gets its figures. */
static void
edit_ends_search (void)
{
  g_autoptr (Watch) watch = watch_new ();
  g_autoptr (CwProject) project = open_project ();
  g_autoptr (CwProject) next = project_with (1, 10000);
  cw_estimator_set_project (watch->estimator, project);
  case_wait (is_searching, watch);
  cw_estimator_set_project (watch->estimator, next);
  case_wait (is_idle, watch);
  g_assert_true (cw_estimator_takeoff (watch->estimator)->project == next);
  g_assert_cmpfloat_with_epsilon (gross (watch), 90, 1e-9);
}

static gboolean
is_not_searching (gpointer data)
{
  return search_of (data) == CW_SEARCH_NONE;
}

static void
may_be_switched_off (void)
{
  g_autoptr (Watch) watch = watch_new ();
  g_autoptr (CwProject) project = open_project ();
  cw_estimator_set_project (watch->estimator, project);
  case_wait (is_searching, watch);
  cw_estimator_set_searches (watch->estimator, FALSE);
  case_wait (is_not_searching, watch);
  g_assert_false (is_settled (watch));
  g_assert_true (cw_estimator_takeoff (watch->estimator)->project == project);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/estimator/works-out", works_out);
  g_test_add_func ("/estimator/newest-wins", newest_wins);
  g_test_add_func ("/estimator/last-good-stays", last_good_stays);
  g_test_add_func ("/estimator/same-is-not-worked-out-again",
                   same_is_not_worked_out_again);
  g_test_add_func ("/estimator/looks-on-when-it-stays",
                   looks_on_when_it_stays);
  g_test_add_func ("/estimator/main-loop-goes-on", main_loop_goes_on);
  g_test_add_func ("/estimator/searches-when-idle", searches_when_idle);
  g_test_add_func ("/estimator/stops-and-searches-on",
                   stops_and_searches_on);
  g_test_add_func ("/estimator/edit-ends-search", edit_ends_search);
  g_test_add_func ("/estimator/may-be-switched-off", may_be_switched_off);
  g_test_add_func ("/estimator/may-be-dropped-at-work",
                   may_be_dropped_at_work);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A large job: 200 elevations, each 30 m × 12 m with 25 windows, no two
 * alike. What the first takeoff costs, what an edit of one wall does, what
 * looking for the cut plans at the live effort does, afresh and after an
 * edit, and what finding the checks does.
 *
 *   bench-large-job [ELEVATIONS]
 */
#include <stdio.h>
#include <stdlib.h>

#include "cw-checks.h"
#include "large-job.h"

#define ELEVATIONS 200

/* @former with the first window of a wall in the middle moved. */
static CwProject *
move_window (const CwProject *former)
{
  const CwElevation *elevation = cw_list_at (
      former->elevations, cw_list_length (former->elevations) / 2);
  const CwOpening *window = cw_list_at (elevation->items, 0);
  g_autoptr (CwNode) moved = cw_node_copy (&window->node);
  cw_node_put (moved, "x", window->x + CW_MM (10));
  return (CwProject *)cw_node_replace (&former->node, &window->node, moved);
}

static gint64 began;

static void
tell (const char *what, const CwTakeoff *takeoff)
{
  const double ms = (double)(g_get_monotonic_time () - began) / 1e3;
  printf ("%-14s %9.1f ms  %.0f panels, at least %.0f\n", what, ms,
          case_amount (takeoff, NULL, "panel.stock"),
          case_amount (takeoff, NULL, "panel.least"));
  began = g_get_monotonic_time ();
}

static void
tell_checks (const CwTakeoff *takeoff)
{
  const CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  began = g_get_monotonic_time ();
  g_autoptr (GPtrArray) checks = cw_checks_find (takeoff, &style, NULL);
  const double ms = (double)(g_get_monotonic_time () - began) / 1e3;
  printf ("%-14s %9.1f ms  %u checks\n", "checks", ms, checks->len);
}

static void
run (const CwProject *project)
{
  began = g_get_monotonic_time ();
  g_autoptr (CwTakeoff) first = cw_takeoff_new (project, NULL, NULL);
  tell ("first", first);
  g_autoptr (CwTakeoff) settled
      = cw_takeoff_improve (first, CW_CUT_EFFORT_LIVE, NULL);
  tell ("improved", settled);
  g_autoptr (CwProject) next = move_window (project);
  began = g_get_monotonic_time ();
  g_autoptr (CwTakeoff) edited = cw_takeoff_new (next, settled, NULL);
  tell ("edit", edited);
  g_autoptr (CwTakeoff) again
      = cw_takeoff_improve (edited, CW_CUT_EFFORT_LIVE, NULL);
  tell ("improved again", again);
  tell_checks (again);
}

int
main (int argc, char *argv[])
{
  const guint n = argc > 1 ? (guint)MAX (1, atoi (argv[1])) : ELEVATIONS;
  g_autoptr (CwProject) project = large_job (n, LARGE_JOB_EVEN);
  run (project);
  return 0;
}

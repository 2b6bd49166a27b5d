/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What an edit costs: on a wall of 60 m × 9 m with 30 windows, 10 arches and
 * 20 round stub-outs, one window moves by 10 mm and every quantity of the
 * project follows. The baseline, in the same run: GEOS intersects each of the
 * wall's 375 panels (2400 × 600) with the whole wall polygon, arcs flattened
 * to 0.1 mm.
 *
 *   bench-takeoff [ROUNDS]
 *
 * Prints "edit MS, geos MS, ratio R": medians over the rounds, the
 * ratio too.
 */
#include <stdio.h>
#include <stdlib.h>

#include "estimate-cases.h"
#include "geos-shape.h"

#define ROUNDS 21
/* nm */
#define FLATTENING 1e5

static CwProject *project;
static CwTakeoff *takeoff;

static char *
describe_wall (void)
{
  GString *wall = g_string_new ("60x9");
  for (int i = 0; i < 30; i++)
    g_string_append_printf (wall, " window:1.2x1.4@%d.31,%s",
                            1 + 4 * (i % 15), i < 15 ? "1.0" : "4.1");
  for (int i = 0; i < 10; i++)
    g_string_append_printf (wall, " arch:1.6x0.8+0.4:segmental@%d.2,6.9",
                            1 + 6 * i);
  for (int i = 0; i < 20; i++)
    g_string_append_printf (wall, " stub:0.11@%d.7,%s", 1 + 3 * i,
                            i % 2 ? "0.45" : "3.3");
  return g_string_free (wall, FALSE);
}

/* The wall of @former with its first window moved by @by. */
static CwProject *
move_window (const CwProject *former, CwLength by)
{
  const CwElevation *elevation = cw_list_at (former->elevations, 0);
  const CwOpening *window = cw_list_at (elevation->items, 0);
  g_autoptr (CwNode) moved = cw_node_copy (&window->node);
  cw_node_put (moved, "x", window->x + by);
  return (CwProject *)cw_node_replace (&former->node, &window->node, moved);
}

static double
edit (guint round)
{
  const gint64 start = g_get_monotonic_time ();
  CwProject *next = move_window (project, round % 2 ? CW_MM (-10) : CW_MM (10));
  CwTakeoff *after = cw_takeoff_new (next, takeoff, NULL);
  const double ms = (double)(g_get_monotonic_time () - start) / 1e3;
  g_assert_true (after->walls->pdata[0] != takeoff->walls->pdata[0]);
  cw_takeoff_unref (takeoff);
  cw_node_unref (&project->node);
  takeoff = after;
  project = next;
  return ms;
}

static CwRegion *
wall_with_holes (void)
{
  const CwWallTakeoff *wall = takeoff->walls->pdata[0];
  CwRegion *region = cw_region_ref (wall->wall->net);
  for (guint i = 0; i < wall->wall->stub_outs->len; i++)
    {
      g_autoptr (CwRegion) hole
          = cw_stub_out_shape (wall->wall->stub_outs->pdata[i], FALSE);
      CwRegion *less = cw_region_subtract (region, hole);
      cw_region_unref (region);
      region = less;
    }
  return region;
}

static double
intersect_all (void)
{
  g_autoptr (CwRegion) region = wall_with_holes ();
  g_autoptr (GeosShape) wall = geos_shape_new (region, FLATTENING);
  const gint64 start = g_get_monotonic_time ();
  for (int course = 0; course < 15; course++)
    for (int i = 0; i < 25; i++)
      {
        const CwBox box
            = { CW_MM (2400) * i, CW_MM (600) * course,
                CW_MM (2400) * (i + 1), CW_MM (600) * (course + 1) };
        g_autoptr (GeosShape) panel = geos_shape_box (&box);
        g_autoptr (GeosShape) piece = geos_shape_intersect (panel, wall);
        g_assert_nonnull (piece);
      }
  return (double)(g_get_monotonic_time () - start) / 1e3;
}

static int
compare (gconstpointer a, gconstpointer b)
{
  const double one = *(const double *)a, other = *(const double *)b;
  return (one > other) - (one < other);
}

static double
median (double *values, guint n)
{
  qsort (values, n, sizeof *values, compare);
  return values[n / 2];
}

/* Side by side, so that both see the machine in the same mood. */
static void
run (guint rounds)
{
  g_autofree double *ours = g_new (double, rounds);
  g_autofree double *geos = g_new (double, rounds);
  g_autofree double *ratios = g_new (double, rounds);
  for (guint i = 0; i < rounds; i++)
    {
      ours[i] = edit (i);
      geos[i] = intersect_all ();
      ratios[i] = ours[i] / geos[i];
    }
  printf ("edit %.3f ms, geos %.3f ms, ratio %.4f\n", median (ours, rounds),
          median (geos, rounds), median (ratios, rounds));
}

int
main (int argc, char *argv[])
{
  const guint rounds = argc > 1 ? (guint)MAX (1, atoi (argv[1])) : ROUNDS;
  g_autofree char *wall = describe_wall ();
  project = case_project (wall, "");
  takeoff = cw_takeoff_new (project, NULL, NULL);

  run (rounds);
  cw_takeoff_unref (takeoff);
  cw_node_unref (&project->node);
  return 0;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-region-overlay-cut.h"

#include "cw-exact.h"
#include "cw-side-meet.h"

/* Corners and meeting places, no two of them within a rounding. */
typedef struct
{
  GArray *places;   /* CwPoint */
} Nodes;

/* A side with the places where it is to be cut. */
typedef struct
{
  CwSide side;
  CwPoint end;
  CwBox box;
  GArray *stops;    /* (nullable): Stop */
} Run;

typedef struct
{
  double share;
  CwPoint at;
} Stop;

#define SAME_PLACE 2

static CwPoint
node_at (Nodes *nodes, CwPoint point)
{
  for (guint i = 0; i < nodes->places->len; i++)
    {
      const CwPoint node = g_array_index (nodes->places, CwPoint, i);
      if (ABS (node.x - point.x) <= SAME_PLACE
          && ABS (node.y - point.y) <= SAME_PLACE)
        return node;
    }
  g_array_append_val (nodes->places, point);
  return point;
}

static void
run_clear (gpointer data)
{
  Run *run = data;
  g_clear_pointer (&run->stops, g_array_unref);
}

static GArray *
runs_of (const CwRegion *region, Nodes *nodes)
{
  GArray *runs = g_array_new (FALSE, FALSE, sizeof (Run));
  g_array_set_clear_func (runs, run_clear);
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      const CwLoop loop = cw_region_loop (region, i);
      for (gsize j = 0; j < loop.n_sides; j++)
        {
          Run run = { loop.sides[j] };
          run.side.start = node_at (nodes, run.side.start);
          run.end = node_at (nodes, cw_loop_end (&loop, j));
          run.box = cw_side_box (&run.side, run.end);
          g_array_append_val (runs, run);
        }
    }
  return runs;
}

static void
add_stop (Run *run, double share, CwPoint at)
{
  const Stop stop = { share, at };
  if (cw_point_equal (at, run->side.start) || cw_point_equal (at, run->end))
    return;
  if (run->stops == NULL)
    run->stops = g_array_new (FALSE, FALSE, sizeof (Stop));
  g_array_append_val (run->stops, stop);
}

static gboolean
boxes_touch (const CwBox *a, const CwBox *b)
{
  return a->left <= b->right + SAME_PLACE && b->left <= a->right + SAME_PLACE
         && a->bottom <= b->top + SAME_PLACE
         && b->bottom <= a->top + SAME_PLACE;
}

static void
meet_runs (Run *a, Run *b, Nodes *nodes, GArray *meets)
{
  if (!boxes_touch (&a->box, &b->box))
    return;
  g_array_set_size (meets, 0);
  cw_sides_meet (&a->side, a->end, &b->side, b->end, meets);
  for (guint i = 0; i < meets->len; i++)
    {
      const CwMeet *meet = &g_array_index (meets, CwMeet, i);
      const CwPoint at = node_at (nodes, meet->at);
      add_stop (a, meet->share_a, at);
      add_stop (b, meet->share_b, at);
    }
}

static int
compare_stops (gconstpointer a, gconstpointer b)
{
  const double first = ((const Stop *) a)->share;
  const double second = ((const Stop *) b)->share;
  return (first > second) - (first < second);
}

static void
add_part (GArray *parts, const CwSide *side, CwPoint end)
{
  const CwOverlayPart part = { *side, end, FALSE };
  if (!cw_point_equal (side->start, end))
    g_array_append_val (parts, part);
}

static void
cut_run (const Run *run, GArray *parts)
{
  const double sweep = run->side.to - run->side.from;
  CwSide rest = run->side;
  if (run->stops)
    g_array_sort (run->stops, compare_stops);
  for (guint i = 0; run->stops && i < run->stops->len; i++)
    {
      const Stop *stop = &g_array_index (run->stops, Stop, i);
      if (cw_point_equal (stop->at, rest.start))
        continue;
      CwSide part = rest;
      part.to = run->side.from + stop->share * sweep;
      add_part (parts, &part, stop->at);
      rest.start = stop->at;
      rest.from = part.to;
    }
  add_part (parts, &rest, run->end);
}

static GArray *
cut_runs (const GArray *runs)
{
  GArray *parts = g_array_new (FALSE, FALSE, sizeof (CwOverlayPart));
  for (guint i = 0; i < runs->len; i++)
    cut_run (&g_array_index (runs, Run, i), parts);
  return parts;
}

void
cw_overlay_cut (const CwRegion *a, const CwRegion *b, GArray **parts_a,
                GArray **parts_b)
{
  Nodes nodes = { g_array_new (FALSE, FALSE, sizeof (CwPoint)) };
  g_autoptr (GArray) runs_a = runs_of (a, &nodes);
  g_autoptr (GArray) runs_b = runs_of (b, &nodes);
  g_autoptr (GArray) meets = g_array_new (FALSE, FALSE, sizeof (CwMeet));
  for (guint i = 0; i < runs_a->len; i++)
    for (guint j = 0; j < runs_b->len; j++)
      meet_runs (&g_array_index (runs_a, Run, i),
                 &g_array_index (runs_b, Run, j), &nodes, meets);
  *parts_a = cut_runs (runs_a);
  *parts_b = cut_runs (runs_b);
  g_array_unref (nodes.places);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-drawn-runs.h"

#include <math.h>

/* A line that leaves its level by no more is level. */
#define SLOPE 0.03
/* Over a gap so wide a run goes on. */
#define GAP 0.5

static void
add_run (GArray *runs, double at, double one, double other)
{
  const CwDrawnRun run = { at, MIN (one, other), MAX (one, other) };

  g_array_append_val (runs, run);
}

static int
compare_at (gconstpointer a, gconstpointer b)
{
  const CwDrawnRun *one = a, *other = b;

  return (one->at > other->at) - (one->at < other->at);
}

static int
compare_begin (gconstpointer a, gconstpointer b)
{
  const CwDrawnRun *one = a, *other = b;

  return (one->begin > other->begin) - (one->begin < other->begin);
}

/* Joins what lies on one line: @n runs from @first on, which are sorted anew.
 * The longest says where it is. */
static void
join_some (CwDrawnRun *first, guint n, GArray *joined)
{
  double longest = 0;

  qsort (first, n, sizeof *first, compare_begin);
  for (guint i = 0; i < n; i++)
    {
      CwDrawnRun *last
          = i > 0 ? &g_array_index (joined, CwDrawnRun, joined->len - 1)
                  : NULL;
      const double length = first[i].end - first[i].begin;

      if (last == NULL || first[i].begin > last->end + GAP)
        {
          g_array_append_val (joined, first[i]);
          longest = length;
          continue;
        }
      last->end = MAX (last->end, first[i].end);
      if (length > longest)
        {
          last->at = first[i].at;
          longest = length;
        }
    }
}

/* Takes @runs. (transfer full) */
static GArray *
join (GArray *runs)
{
  GArray *joined = g_array_new (FALSE, FALSE, sizeof (CwDrawnRun));
  CwDrawnRun *all = (CwDrawnRun *) runs->data;
  guint first = 0;

  g_array_sort (runs, compare_at);
  for (guint i = 1; i <= runs->len; i++)
    if (i == runs->len || all[i].at > all[first].at + CW_DRAWN_REACH / 2)
      {
        join_some (all + first, i - first, joined);
        first = i;
      }
  g_array_unref (runs);
  g_array_sort (joined, compare_at);
  return joined;
}

CwDrawnRuns *
cw_drawn_runs_new (const CwDrawnLines *lines, double left, double top,
                   double right, double bottom)
{
  CwDrawnRuns *runs = g_new (CwDrawnRuns, 1);
  g_autoptr (GArray) found = g_array_new (FALSE, FALSE, sizeof (guint));
  GArray *level = g_array_new (FALSE, FALSE, sizeof (CwDrawnRun));
  GArray *upright = g_array_new (FALSE, FALSE, sizeof (CwDrawnRun));

  cw_drawn_lines_within (lines, left, top, right, bottom, found);
  for (guint i = 0; i < found->len; i++)
    {
      const CwDrawnLine *line
          = cw_drawn_lines_at (lines, g_array_index (found, guint, i));

      if (fabs (line->y0 - line->y1) <= SLOPE)
        add_run (level, (line->y0 + line->y1) / 2, line->x0, line->x1);
      else if (fabs (line->x0 - line->x1) <= SLOPE)
        add_run (upright, (line->x0 + line->x1) / 2, line->y0, line->y1);
    }
  runs->level = join (level);
  runs->upright = join (upright);
  return runs;
}

void
cw_drawn_runs_free (CwDrawnRuns *runs)
{
  g_array_unref (runs->level);
  g_array_unref (runs->upright);
  g_free (runs);
}

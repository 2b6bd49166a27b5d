/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "cw-region.h"

/* Steps along an arc so that no chord is further than @deviation from it: a
 * chord over the angle a stays within r (1 - cos a/2). */
static guint
n_steps (const CwSide *side, double deviation)
{
  const double radius = MAX (side->rx, side->ry);
  const double share = MIN (deviation / radius, 1);
  const double step = 2 * acos (1 - share);
  const double steps = ceil (fabs (side->to - side->from) / step);
  return (guint) CLAMP (steps, 1, 1000000);
}

static void
add_point (GArray *xy, double x, double y)
{
  g_array_append_val (xy, x);
  g_array_append_val (xy, y);
}

static void
flatten_side (const CwSide *side, CwPoint end, double deviation, GArray *xy)
{
  add_point (xy, (double) side->start.x, (double) side->start.y);
  if (!side->is_arc)
    return;
  const guint n = n_steps (side, deviation);
  for (guint i = 1; i < n; i++)
    {
      double x, y;
      cw_side_at (side, end, (double) i / n, &x, &y);
      add_point (xy, x, y);
    }
}

void
cw_region_flatten (const CwRegion *region, double deviation,
                   CwFlatLoopFunc add, gpointer data)
{
  g_return_if_fail (deviation > 0);

  g_autoptr (GArray) xy = g_array_new (FALSE, FALSE, sizeof (double));
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      const CwLoop loop = cw_region_loop (region, i);
      g_array_set_size (xy, 0);
      for (gsize j = 0; j < loop.n_sides; j++)
        flatten_side (&loop.sides[j], cw_loop_end (&loop, j), deviation, xy);
      add (&g_array_index (xy, double, 0), xy->len / 2, data);
    }
}

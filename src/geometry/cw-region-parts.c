/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-exact.h"
#include "cw-region-private.h"

static int
compare_parts (gconstpointer a, gconstpointer b)
{
  const CwBox first = cw_region_box (*(CwRegion *const *) a);
  const CwBox second = cw_region_box (*(CwRegion *const *) b);
  if (first.left != second.left)
    return first.left < second.left ? -1 : 1;
  return (first.bottom > second.bottom) - (first.bottom < second.bottom);
}

static CwPoint
point_on (const CwLoop *loop)
{
  double x, y;
  cw_side_at (&loop->sides[0], cw_loop_end (loop, 0), 0.5, &x, &y);
  return cw_point_nearest (x, y);
}

/* A part's first loop is its rim; the least rim around a hole is its own. */
static CwRegion *
part_around (const GPtrArray *parts, const CwLoop *hole)
{
  CwRegion *around = NULL;
  double least = G_MAXDOUBLE;
  for (guint i = 0; i < parts->len; i++)
    {
      CwRegion *part = parts->pdata[i];
      const CwLoop rim = cw_region_loop (part, 0);
      g_autoptr (CwRegion) filled = cw_region_begin ();
      cw_region_add_loop (filled, rim.sides, rim.n_sides);
      const double area = cw_loop_area (&rim);
      if (area < least && cw_region_contains (filled, point_on (hole)))
        {
          around = part;
          least = area;
        }
    }
  return around ? around : g_ptr_array_index (parts, 0);
}

static void
add_holes (const CwRegion *region, const GPtrArray *parts)
{
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      const CwLoop loop = cw_region_loop (region, i);
      if (cw_loop_area (&loop) < 0)
        cw_region_add_loop (parts->len == 1 ? g_ptr_array_index (parts, 0)
                                            : part_around (parts, &loop),
                            loop.sides, loop.n_sides);
    }
}

GPtrArray *
cw_region_parts (const CwRegion *region)
{
  GPtrArray *parts
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_region_unref);
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      const CwLoop loop = cw_region_loop (region, i);
      if (cw_loop_area (&loop) > 0)
        {
          CwRegion *part = cw_region_begin ();
          cw_region_add_loop (part, loop.sides, loop.n_sides);
          g_ptr_array_add (parts, part);
        }
    }
  if (parts->len > 0)
    add_holes (region, parts);
  g_ptr_array_sort (parts, compare_parts);
  return parts;
}

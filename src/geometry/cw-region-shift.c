/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-region-private.h"
#include "cw-side-private.h"

static void
move_boxes (GArray *moved, const GArray *boxes, CwLength dx, CwLength dy)
{
  for (guint i = 0; i < boxes->len; i++)
    {
      const CwBox *from = &g_array_index (boxes, CwBox, i);
      const CwBox box = { from->left + dx, from->bottom + dy,
                          from->right + dx, from->top + dy };
      g_array_append_val (moved, box);
    }
}

CwRegion *
cw_region_move (const CwRegion *region, CwLength dx, CwLength dy)
{
  CwRegion *moved = cw_region_begin ();
  g_array_append_vals (moved->firsts, region->firsts->data,
                       region->firsts->len);
  g_array_append_vals (moved->sides, region->sides->data, region->sides->len);
  move_boxes (moved->boxes, region->boxes, dx, dy);
  for (guint i = 0; i < moved->sides->len; i++)
    {
      CwSide *side = &g_array_index (moved->sides, CwSide, i);
      side->start.x += dx;
      side->start.y += dy;
      side->cx += (double) dx;
      side->cy += (double) dy;
    }
  return moved;
}

static CwSide
mirrored (const CwSide *side, CwPoint end, CwLength at)
{
  CwSide mirror = cw_side_reversed (side, end);
  mirror.start.x = 2 * at - mirror.start.x;
  mirror.cx = 2 * (double) at - mirror.cx;
  mirror.from = G_PI - mirror.from;
  mirror.to = G_PI - mirror.to;
  return mirror;
}

/* A mirrored loop would run the other way round: its sides are reversed. */
CwRegion *
cw_region_mirror (const CwRegion *region, CwLength at)
{
  CwRegion *mirror = cw_region_begin ();
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      const CwLoop loop = cw_region_loop (region, i);
      g_autofree CwSide *sides = g_new (CwSide, loop.n_sides);
      for (gsize j = 0; j < loop.n_sides; j++)
        sides[loop.n_sides - 1 - j]
            = mirrored (&loop.sides[j], cw_loop_end (&loop, j), at);
      cw_region_add_loop (mirror, sides, loop.n_sides);
    }
  return mirror;
}

/* The point at angle t of an ellipse comes to stand at t - pi/2 of the turned
 * one, whose half axes have changed places. */
static CwSide
turned (const CwSide *side)
{
  CwSide turned = *side;
  turned.start = cw_point (side->start.y, -side->start.x);
  turned.cx = side->cy;
  turned.cy = -side->cx;
  turned.rx = side->ry;
  turned.ry = side->rx;
  turned.from = side->from - G_PI_2;
  turned.to = side->to - G_PI_2;
  return turned;
}

CwRegion *
cw_region_turn (const CwRegion *region)
{
  CwRegion *result = cw_region_begin ();
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      const CwLoop loop = cw_region_loop (region, i);
      g_autofree CwSide *sides = g_new (CwSide, loop.n_sides);
      for (gsize j = 0; j < loop.n_sides; j++)
        sides[j] = turned (&loop.sides[j]);
      cw_region_add_loop (result, sides, loop.n_sides);
    }
  return result;
}

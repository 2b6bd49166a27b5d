/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-region-private.h"

#include "cw-exact.h"
#include "cw-side-private.h"

CwRegion *
cw_region_begin (void)
{
  CwRegion *region = g_new (CwRegion, 1);
  g_atomic_ref_count_init (&region->count);
  region->sides = g_array_new (FALSE, FALSE, sizeof (CwSide));
  region->firsts = g_array_new (FALSE, FALSE, sizeof (gsize));
  region->boxes = g_array_new (FALSE, FALSE, sizeof (CwBox));
  return region;
}

static const CwBox no_box = { CW_LENGTH_MOST, CW_LENGTH_MOST,
                             -CW_LENGTH_MOST, -CW_LENGTH_MOST };

static CwBox
box_of_loop (const CwLoop *loop)
{
  CwBox box = no_box;
  for (gsize i = 0; i < loop->n_sides; i++)
    {
      const CwBox side = cw_side_box (&loop->sides[i], cw_loop_end (loop, i));
      box = cw_box_around (&box, &side);
    }
  return box;
}

void
cw_region_add_loop (CwRegion *region, const CwSide *sides, gsize n)
{
  const gsize first = region->sides->len;
  if (n < 2 || (n == 2 && !sides[0].is_arc && !sides[1].is_arc))
    return;
  const CwLoop loop = { sides, n };
  const CwBox box = box_of_loop (&loop);
  g_array_append_val (region->firsts, first);
  g_array_append_val (region->boxes, box);
  g_array_append_vals (region->sides, sides, (guint) n);
}

CwRegion *
cw_region_new_empty (void)
{
  return cw_region_begin ();
}

CwRegion *
cw_region_new_box (const CwBox *box, guint tag)
{
  CwRegion *region = cw_region_begin ();
  const CwSide sides[] = {
    cw_side_straight (cw_point (box->left, box->bottom), tag),
    cw_side_straight (cw_point (box->right, box->bottom), tag),
    cw_side_straight (cw_point (box->right, box->top), tag),
    cw_side_straight (cw_point (box->left, box->top), tag),
  };
  if (box->left < box->right && box->bottom < box->top)
    cw_region_add_loop (region, sides, G_N_ELEMENTS (sides));
  return region;
}

static void
add_reversed (CwRegion *region, const CwLoop *loop)
{
  g_autofree CwSide *sides = g_new (CwSide, loop->n_sides);
  for (gsize i = 0; i < loop->n_sides; i++)
    sides[loop->n_sides - 1 - i]
        = cw_side_reversed (&loop->sides[i], cw_loop_end (loop, i));
  cw_region_add_loop (region, sides, loop->n_sides);
}

CwRegion *
cw_region_new_loop (const CwSide *sides, gsize n_sides)
{
  CwRegion *region = cw_region_begin ();
  const CwLoop loop = { sides, n_sides };

  if (cw_loop_area (&loop) < 0)
    add_reversed (region, &loop);
  else
    cw_region_add_loop (region, sides, n_sides);
  return region;
}

CwRegion *
cw_region_ref (const CwRegion *region)
{
  g_atomic_ref_count_inc (&((CwRegion *) region)->count);
  return (CwRegion *) region;
}

void
cw_region_unref (CwRegion *region)
{
  if (!g_atomic_ref_count_dec (&region->count))
    return;
  g_array_unref (region->sides);
  g_array_unref (region->firsts);
  g_array_unref (region->boxes);
  g_free (region);
}

gsize
cw_region_n_loops (const CwRegion *region)
{
  return region->firsts->len;
}

CwLoop
cw_region_loop (const CwRegion *region, gsize index)
{
  const gsize first = g_array_index (region->firsts, gsize, index);
  const gsize end = index + 1 < region->firsts->len
                        ? g_array_index (region->firsts, gsize, index + 1)
                        : region->sides->len;
  return (CwLoop) { &g_array_index (region->sides, CwSide, first),
                    end - first };
}

gboolean
cw_region_is_empty (const CwRegion *region)
{
  return region->firsts->len == 0;
}

CwBox
cw_region_loop_box (const CwRegion *region, gsize index)
{
  return g_array_index (region->boxes, CwBox, index);
}

CwBox
cw_region_box (const CwRegion *region)
{
  CwBox box = no_box;
  for (guint i = 0; i < region->boxes->len; i++)
    box = cw_box_around (&box, &g_array_index (region->boxes, CwBox, i));
  return box;
}

static gboolean
is_level_or_upright (const CwSide *side, CwPoint end)
{
  return !side->is_arc
         && (side->start.x == end.x || side->start.y == end.y);
}

/* A loop of level and upright sides whose corners all are corners of its box
 * or lie on its rim bounds exactly that box when the areas agree; cheaper:
 * every corner is on the rim and no side leaves it. */
gboolean
cw_region_is_box (const CwRegion *region)
{
  if (cw_region_n_loops (region) != 1)
    return FALSE;
  const CwBox box = cw_region_box (region);
  const CwLoop loop = cw_region_loop (region, 0);
  for (gsize i = 0; i < loop.n_sides; i++)
    {
      const CwPoint from = loop.sides[i].start, to = cw_loop_end (&loop, i);
      if (!is_level_or_upright (&loop.sides[i], to))
        return FALSE;
      if (from.x == to.x && from.x != box.left && from.x != box.right)
        return FALSE;
      if (from.y == to.y && from.y != box.bottom && from.y != box.top)
        return FALSE;
    }
  return TRUE;
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Union, intersection and difference. All sides of both regions are cut where
 * they meet; each part then is wholly inside, outside or along the rim of the
 * other region; the parts that bound the result are linked to loops. Arcs are
 * cut by their angles and stay arcs.
 */
#include "cw-exact.h"
#include "cw-region-overlay-cut.h"
#include "cw-region-private.h"
#include "cw-side-private.h"

typedef enum
{
  LIES_OUTSIDE,
  LIES_INSIDE,
  LIES_SAME,        /* on the rim, the insides on one side */
  LIES_OPPOSITE,    /* on the rim, the insides on both sides */
} Lie;

static CwPoint
middle_of (const CwOverlayPart *part)
{
  double x, y;
  cw_side_at (&part->side, part->end, 0.5, &x, &y);
  return cw_point_nearest (x, y);
}

/* The same way between the same ends, through about the same middle. */
static gboolean
run_together (const CwOverlayPart *a, const CwOverlayPart *b)
{
  const CwPoint first = middle_of (a), second = middle_of (b);
  return ABS (first.x - second.x) <= 2 && ABS (first.y - second.y) <= 2;
}

static Lie
lie_of (const CwOverlayPart *part, const CwRegion *other, const GArray *other_parts)
{
  for (guint i = 0; i < other_parts->len; i++)
    {
      const CwOverlayPart *twin = &g_array_index (other_parts, CwOverlayPart, i);
      if (cw_point_equal (part->side.start, twin->side.start)
          && cw_point_equal (part->end, twin->end)
          && run_together (part, twin))
        return LIES_SAME;
      if (cw_point_equal (part->side.start, twin->end)
          && cw_point_equal (part->end, twin->side.start)
          && run_together (part, twin))
        return LIES_OPPOSITE;
    }
  return cw_region_contains (other, middle_of (part)) ? LIES_INSIDE
                                                      : LIES_OUTSIDE;
}

static void
choose_parts (const GArray *parts, const CwRegion *other,
              const GArray *other_parts, guint lies, gboolean reverse,
              GArray *chosen)
{
  for (guint i = 0; i < parts->len; i++)
    {
      CwOverlayPart part = g_array_index (parts, CwOverlayPart, i);
      if (!(lies & 1u << lie_of (&part, other, other_parts)))
        continue;
      if (reverse)
        {
          const CwPoint end = part.side.start;
          part.side = cw_side_reversed (&part.side, part.end);
          part.end = end;
        }
      g_array_append_val (chosen, part);
    }
}

/* Of the unused parts, and @first, that start where @part ends, the one
 * furthest to the left, which is the first one clockwise from the way back:
 * what hangs together at a point alone comes apart. */
static CwOverlayPart *
next_part (GArray *parts, const CwOverlayPart *part,
           const CwOverlayPart *first)
{
  CwOverlayPart *best = NULL;
  CwRay best_ray = { 0 };
  const CwRay back = cw_side_ray_at_end (&part->side, part->end);
  for (guint i = 0; i < parts->len; i++)
    {
      CwOverlayPart *next = &g_array_index (parts, CwOverlayPart, i);
      if ((next->is_used && next != first)
          || !cw_point_equal (next->side.start, part->end))
        continue;
      const CwRay ray = cw_side_ray_at_start (&next->side, next->end);
      if (!best || cw_ray_compare_clockwise (&back, &ray, &best_ray) < 0)
        {
          best = next;
          best_ray = ray;
        }
    }
  return best;
}

static CwRegion *
link_parts (GArray *parts)
{
  CwRegion *region = cw_region_begin ();
  GArray *sides = g_array_new (FALSE, FALSE, sizeof (CwSide));
  for (guint i = 0; i < parts->len; i++)
    {
      CwOverlayPart *first = &g_array_index (parts, CwOverlayPart, i);
      CwOverlayPart *part = first;
      g_array_set_size (sides, 0);
      while (part && !part->is_used)
        {
          part->is_used = TRUE;
          g_array_append_val (sides, part->side);
          part = next_part (parts, part, first);
        }
      cw_region_add_loop (region, (CwSide *) (gpointer) sides->data,
                          sides->len);
    }
  g_array_unref (sides);
  return region;
}

/* Bit masks of 1 << Lie: which parts of each bound the result. */
static CwRegion *
overlay (const CwRegion *a, guint lies_a, const CwRegion *b, guint lies_b,
         gboolean reverse_b)
{
  GArray *parts_a, *parts_b;
  cw_overlay_cut (a, b, &parts_a, &parts_b);
  GArray *chosen = g_array_new (FALSE, FALSE, sizeof (CwOverlayPart));
  choose_parts (parts_a, b, parts_b, lies_a, FALSE, chosen);
  choose_parts (parts_b, a, parts_a, lies_b, reverse_b, chosen);
  CwRegion *result = link_parts (chosen);
  g_array_unref (parts_a);
  g_array_unref (parts_b);
  g_array_unref (chosen);
  return result;
}

static gboolean
are_apart (const CwRegion *a, const CwRegion *b)
{
  const CwBox a_box = cw_region_box (a), b_box = cw_region_box (b);
  return !cw_box_overlaps (&a_box, &b_box);
}

/* Not even touching: regions that share a side become one. */
static gboolean
are_clear (const CwRegion *a, const CwRegion *b)
{
  const CwBox a_box = cw_region_box (a), b_box = cw_region_box (b);
  return a_box.right < b_box.left || b_box.right < a_box.left
         || a_box.top < b_box.bottom || b_box.top < a_box.bottom;
}

static void
add_all_loops (CwRegion *to, const CwRegion *from)
{
  for (gsize i = 0; i < cw_region_n_loops (from); i++)
    {
      const CwLoop loop = cw_region_loop (from, i);
      cw_region_add_loop (to, loop.sides, loop.n_sides);
    }
}

static CwRegion *
union_of_two (const CwRegion *a, const CwRegion *b)
{
  return overlay (a, 1 << LIES_OUTSIDE | 1 << LIES_SAME, b, 1 << LIES_OUTSIDE,
                  FALSE);
}

/* Takes those of @groups that @region may overlap or touch into it. */
static CwRegion *
join_group (GPtrArray *groups, const CwRegion *region)
{
  CwRegion *joined = cw_region_ref (region);
  for (guint i = 0; i < groups->len;)
    {
      const CwRegion *group = g_ptr_array_index (groups, i);
      if (are_clear (group, joined))
        {
          i++;
          continue;
        }
      CwRegion *both = union_of_two (group, joined);
      cw_region_unref (joined);
      joined = both;
      g_ptr_array_remove_index_fast (groups, i);
      i = 0;
    }
  return joined;
}

/* Regions that are clear of each other are only laid side by side, so that
 * the many openings of a wall cost next to nothing. */
CwRegion *
cw_region_union (const CwRegion *const *regions, gsize n)
{
  g_autoptr (GPtrArray) groups
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_region_unref);
  for (gsize i = 0; i < n; i++)
    g_ptr_array_add (groups, join_group (groups, regions[i]));

  CwRegion *joined = cw_region_begin ();
  for (guint i = 0; i < groups->len; i++)
    add_all_loops (joined, g_ptr_array_index (groups, i));
  return joined;
}

CwRegion *
cw_region_subtract (const CwRegion *from, const CwRegion *what)
{
  if (are_apart (from, what))
    return cw_region_ref (from);
  return overlay (from, 1 << LIES_OUTSIDE | 1 << LIES_OPPOSITE, what,
                  1 << LIES_INSIDE, TRUE);
}

CwRegion *
cw_region_intersect (const CwRegion *a, const CwRegion *b)
{
  if (are_apart (a, b))
    return cw_region_new_empty ();
  return overlay (a, 1 << LIES_INSIDE | 1 << LIES_SAME, b, 1 << LIES_INSIDE,
                  FALSE);
}

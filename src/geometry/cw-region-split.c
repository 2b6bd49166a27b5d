/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Cutting a region along a level or upright line.
 *
 *        high        1. Every side is cut where it crosses the line, so that
 *    B____  ____     each part is low, high, or lies on the line.
 *    |    \/    |    2. The low parts, run after run, are chains that start
 *  --S----EX----E--  and end on the line (S, E).
 *    |          |    3. Sorted along the line, starts and ends take turns;
 *    |___low____|    each pair is joined by a side on the line.
 *
 * Which of start and end comes first depends on which half is wanted, as the
 * inside is always to the left. A chain ends wherever it touches the line, so
 * that what only hangs together at a point comes apart. Where several ends
 * fall on one point, they follow each other as their sides leave it.
 */
#include "cw-region-split.h"

#include "cw-exact.h"
#include "cw-region-private.h"
#include "cw-side-private.h"

typedef struct
{
  CwAxis axis;
  CwLength at;
  guint tag;
  CwHalf half;
  gboolean only_chains; /* nobody asks for the region */
  CwRegion *region;     /* what becomes of it */
  GArray *sides;        /* CwSide: all chains, one after the other */
  GArray *chains;       /* Chain */
  GArray *lying;        /* CwSidePart on the line that bound the half */
} Half;

typedef struct
{
  guint first, n;       /* of its sides */
  CwPoint start, end;
  gint next;            /* the chain it is joined to */
  gboolean is_done;
} Chain;

/* Joins run with the inside to the left: backward along the line for the
 * part below a level line and for the part right of an upright one. */
static gboolean
joins_run_backward (const Half *half)
{
  return (half->axis == CW_AXIS_Y) == (half->half == CW_HALF_LOW);
}

/* Of the parts on this half, those that come from the line; every other one
 * goes on where the one before it ended. */
static gboolean
begins_chain (const Half *half, const CwSidePart *part)
{
  return part->half == half->half
         && cw_across (half->axis, part->side.start) == half->at;
}

static void
keep_lying (Half *half, const CwSidePart *part)
{
  const CwLength way = cw_along (half->axis, part->end)
                       - cw_along (half->axis, part->side.start);
  if ((way < 0) == joins_run_backward (half))
    g_array_append_val (half->lying, *part);
}

static void
add_to_chain (Half *half, const CwSidePart *part, gboolean begin)
{
  if (begin)
    {
      const Chain chain = { half->sides->len, 0, part->side.start, part->end,
                            -1, FALSE };
      g_array_append_val (half->chains, chain);
    }
  Chain *chain = &g_array_index (half->chains, Chain, half->chains->len - 1);
  chain->n++;
  chain->end = part->end;
  g_array_append_val (half->sides, part->side);
}

/* The chains of one loop, the first of which begins at @first. */
static void
collect_chains (Half *half, const GArray *parts, guint first)
{
  for (guint i = 0; i < parts->len; i++)
    {
      const CwSidePart *part = &g_array_index (parts, CwSidePart,
                                               (first + i) % parts->len);
      if (part->half == CW_HALF_LINE)
        keep_lying (half, part);
      if (part->half == half->half)
        add_to_chain (half, part, begins_chain (half, part));
    }
}

/* A loop that never comes from the line is wholly on one half. */
static void
take_loop (Half *half, const CwLoop *loop, const GArray *parts)
{
  const CwSidePart *part = &g_array_index (parts, CwSidePart, 0);
  guint first = 0;
  while (first < parts->len && !begins_chain (half, &part[first]))
    first++;
  if (first < parts->len)
    collect_chains (half, parts, first);
  else if (part[0].half == half->half)
    cw_region_add_loop (half->region, loop->sides, loop->n_sides);
  else
    collect_chains (half, parts, 0);
}

typedef struct
{
  CwLength along;
  guint chain;
  gboolean is_start;
} ChainEnd;

/* How the chain leaves the line at that end. */
static CwRay
ray_of (const Half *half, const ChainEnd *end)
{
  const Chain *chain = &g_array_index (half->chains, Chain, end->chain);
  const CwSide *side
      = &g_array_index (half->sides, CwSide, chain->first);
  if (end->is_start)
    return cw_side_ray_at_start (side, chain->n > 1 ? side[1].start
                                                    : chain->end);
  return cw_side_ray_at_end (&side[chain->n - 1], chain->end);
}

/* Along the line; at one point as the rays pass a line beside it. */
static int
compare_ends (gconstpointer a, gconstpointer b, gpointer data)
{
  const ChainEnd *first = a, *second = b;
  const Half *half = data;
  if (first->along != second->along)
    return first->along < second->along ? -1 : 1;
  const CwRay ray = ray_of (half, first), other = ray_of (half, second);
  const int turn = cw_ray_turn (&ray, &other);
  if (turn != 0)
    return joins_run_backward (half) ? -turn : turn;
  return (int) first->chain - (int) second->chain;
}

static GArray *
sorted_ends (Half *half)
{
  GArray *ends = g_array_sized_new (FALSE, FALSE, sizeof (ChainEnd),
                                    2 * half->chains->len);
  for (guint i = 0; i < half->chains->len; i++)
    {
      const Chain *chain = &g_array_index (half->chains, Chain, i);
      const ChainEnd start = { cw_along (half->axis, chain->start), i, TRUE };
      const ChainEnd end = { cw_along (half->axis, chain->end), i, FALSE };
      g_array_append_val (ends, start);
      g_array_append_val (ends, end);
    }
  g_array_sort_with_data (ends, compare_ends, half);
  return ends;
}

/* Brings the kind whose turn it is to the place @at among its equals. */
static void
take_turn (GArray *ends, guint at, gboolean is_start)
{
  ChainEnd *end = &g_array_index (ends, ChainEnd, 0);
  guint i = at;
  while (i < ends->len && end[i].along == end[at].along
         && end[i].is_start != is_start)
    i++;
  if (i == ends->len || end[i].along != end[at].along)
    return;
  const ChainEnd turn = end[i];
  for (; i > at; i--)
    end[i] = end[i - 1];
  end[at] = turn;
}

static void
join_chains (Half *half)
{
  GArray *ends = sorted_ends (half);
  const gboolean start_first = joins_run_backward (half);
  for (guint i = 0; i + 1 < ends->len; i += 2)
    {
      take_turn (ends, i, start_first);
      take_turn (ends, i + 1, !start_first);
      const ChainEnd *first = &g_array_index (ends, ChainEnd, i);
      const guint from = first[start_first ? 1 : 0].chain;
      const guint to = first[start_first ? 0 : 1].chain;
      g_array_index (half->chains, Chain, from).next = (gint) to;
    }
  g_array_unref (ends);
}

/* The side on the line from @from to @to: of those that lay there already,
 * each keeps its tag; between them the cut's. */
static void
add_join (const Half *half, GArray *loop, CwPoint from, CwPoint to)
{
  const CwLength sense
      = cw_along (half->axis, from) < cw_along (half->axis, to) ? 1 : -1;
  CwPoint now = from;
  g_assert (cw_across (half->axis, from) == half->at);
  g_assert (cw_across (half->axis, to) == half->at);
  while (!cw_point_equal (now, to))
    {
      const CwLength here = sense * cw_along (half->axis, now);
      CwLength stop = sense * cw_along (half->axis, to);
      guint tag = half->tag;
      for (guint i = 0; i < half->lying->len; i++)
        {
          const CwSidePart *part
              = &g_array_index (half->lying, CwSidePart, i);
          const CwLength start = sense * cw_along (half->axis, part->side.start);
          const CwLength end = sense * cw_along (half->axis, part->end);
          if (start <= here && here < end)
            {
              stop = MIN (stop, end);
              tag = part->side.tag;
              break;
            }
          if (here < start)
            stop = MIN (stop, start);
        }
      const CwSide side = cw_side_straight (now, tag);
      g_array_append_val (loop, side);
      now = cw_on_line (half->axis, half->at, sense * stop);
    }
}

static void
close_loop (Half *half, guint first, GArray *loop)
{
  gint i = (gint) first;
  g_array_set_size (loop, 0);
  while (i >= 0 && !g_array_index (half->chains, Chain, i).is_done)
    {
      Chain *chain = &g_array_index (half->chains, Chain, i);
      chain->is_done = TRUE;
      g_array_append_vals (
          loop, &g_array_index (half->sides, CwSide, chain->first), chain->n);
      if (chain->next >= 0)
        add_join (half, loop, chain->end,
                  g_array_index (half->chains, Chain, chain->next).start);
      i = chain->next;
    }
  cw_region_add_loop (half->region, &g_array_index (loop, CwSide, 0),
                      loop->len);
}

/* Room for what a cut usually makes; growing bit by bit is what costs. */
#define USUAL 32

static void
half_begin (Half *half)
{
  half->region = cw_region_begin ();
  half->sides = g_array_sized_new (FALSE, FALSE, sizeof (CwSide), USUAL);
  half->chains = g_array_sized_new (FALSE, FALSE, sizeof (Chain), USUAL);
  half->lying = g_array_sized_new (FALSE, FALSE, sizeof (CwSidePart), USUAL);
}

static CwRegion *
half_end (Half *half)
{
  GArray *loop = g_array_new (FALSE, FALSE, sizeof (CwSide));
  join_chains (half);
  for (guint i = 0; i < half->chains->len; i++)
    if (!g_array_index (half->chains, Chain, i).is_done)
      close_loop (half, i, loop);
  g_array_unref (loop);
  g_array_unref (half->sides);
  g_array_unref (half->chains);
  g_array_unref (half->lying);
  return half->region;
}

static void
half_free (Half *half)
{
  cw_region_unref (half->region);
  g_array_unref (half->sides);
  g_array_unref (half->chains);
  g_array_unref (half->lying);
}

/* A loop that the line passes by goes to its half as it is. */
static gboolean
pass_beside (const CwRegion *region, gsize i, Half *low, Half *high)
{
  const CwBox box = cw_region_loop_box (region, i);
  const gboolean is_upright = low->axis == CW_AXIS_X;
  const gboolean is_low = (is_upright ? box.right : box.top) < low->at;
  const gboolean is_high = (is_upright ? box.left : box.bottom) > low->at;
  Half *half = is_low == (low->half == CW_HALF_LOW) ? low : high;
  if (!is_low && !is_high)
    return FALSE;
  if (half->sides && !half->only_chains)
    {
      const CwLoop loop = cw_region_loop (region, i);
      cw_region_add_loop (half->region, loop.sides, loop.n_sides);
    }
  return TRUE;
}

/* A straight side that keeps off the line. */
static gboolean
is_aside (const CwLoop *loop, gsize i, CwAxis axis, CwLength at)
{
  const CwLength from = cw_across (axis, loop->sides[i].start);
  const CwLength to = cw_across (axis, cw_loop_end (loop, i));
  return !loop->sides[i].is_arc && (from < at) == (to < at)
         && (from > at) == (to > at) && from != at;
}

/* Where only the ends of chains matter, what lies within them is left out,
 * but for the side after one that meets the line: it tells where that ends. */
static void
cut_loop (const CwLoop *loop, const Half *low, GArray *parts)
{
  gboolean was_aside
      = is_aside (loop, loop->n_sides - 1, low->axis, low->at);
  g_array_set_size (parts, 0);
  for (gsize i = 0; i < loop->n_sides; i++)
    {
      const gboolean aside = is_aside (loop, i, low->axis, low->at);
      if (!low->only_chains || !aside || !was_aside)
        cw_side_cut (&loop->sides[i], cw_loop_end (loop, i), low->axis,
                     low->at, parts);
      was_aside = aside;
    }
}

static void
split_loops (const CwRegion *region, Half *low, Half *high)
{
  GArray *parts = g_array_sized_new (FALSE, FALSE, sizeof (CwSidePart), USUAL);
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      const CwLoop loop = cw_region_loop (region, i);
      if (pass_beside (region, i, low, high))
        continue;
      cut_loop (&loop, low, parts);
      if (low->sides)
        take_loop (low, &loop, parts);
      if (high->sides)
        take_loop (high, &loop, parts);
    }
  g_array_unref (parts);
}

/* The line passes the region by: one part is the region itself. */
static gboolean
split_beside (const CwRegion *region, CwAxis axis, CwLength at,
              CwRegion **low, CwRegion **high)
{
  const CwBox box = cw_region_box (region);
  const gboolean is_low
      = (axis == CW_AXIS_X ? box.right : box.top) <= at;
  const gboolean is_high
      = (axis == CW_AXIS_X ? box.left : box.bottom) >= at;

  if (!is_low && !is_high)
    return FALSE;
  if (low)
    *low = is_low ? cw_region_ref (region) : cw_region_new_empty ();
  if (high)
    *high = is_low ? cw_region_new_empty () : cw_region_ref (region);
  return TRUE;
}

void
cw_region_split (const CwRegion *region, CwAxis axis, CwLength at, guint tag,
                 CwRegion **low, CwRegion **high)
{
  g_return_if_fail (region != NULL);

  if (split_beside (region, axis, at, low, high))
    return;
  Half below = { axis, at, tag, CW_HALF_LOW };
  Half above = { axis, at, tag, CW_HALF_HIGH };
  if (low)
    half_begin (&below);
  if (high)
    half_begin (&above);
  split_loops (region, &below, &above);
  if (low)
    *low = half_end (&below);
  if (high)
    *high = half_end (&above);
}

CwRegion *
cw_region_clip (const CwRegion *region, const CwBox *box, guint tag)
{
  CwRegion *rest = NULL, *clip = NULL;

  cw_region_split (region, CW_AXIS_Y, box->bottom, tag, NULL, &rest);
  cw_region_split (rest, CW_AXIS_Y, box->top, tag, &clip, NULL);
  cw_region_unref (rest);
  cw_region_split (clip, CW_AXIS_X, box->left, tag, NULL, &rest);
  cw_region_unref (clip);
  cw_region_split (rest, CW_AXIS_X, box->right, tag, &clip, NULL);
  cw_region_unref (rest);
  return clip;
}

/* A span that begins where the last one ends goes on from it. */
static void
add_span (GArray *spans, CwLength low, CwLength high)
{
  if (spans->len > 0
      && g_array_index (spans, CwLength, spans->len - 1) == low)
    g_array_index (spans, CwLength, spans->len - 1) = high;
  else
    {
      g_array_append_val (spans, low);
      g_array_append_val (spans, high);
    }
}

/* The line is looked at from below (from the left), where the region has
 * anything there; on its bottom (left) rim from above. */
GArray *
cw_region_spans (const CwRegion *region, CwAxis axis, CwLength at)
{
  const CwBox box = cw_region_box (region);
  const CwLength rim = axis == CW_AXIS_X ? box.left : box.bottom;
  Half half = { axis, at, 0, at == rim ? CW_HALF_HIGH : CW_HALF_LOW, TRUE };
  Half none = { axis, at };
  GArray *spans = g_array_new (FALSE, FALSE, sizeof (CwLength));

  half_begin (&half);
  split_loops (region, &half, &none);
  GArray *ends = sorted_ends (&half);
  for (guint i = 0; i + 1 < ends->len; i += 2)
    {
      const ChainEnd *pair = &g_array_index (ends, ChainEnd, i);
      if (pair[0].along < pair[1].along)
        add_span (spans, pair[0].along, pair[1].along);
    }
  g_array_unref (ends);
  half_free (&half);
  return spans;
}

gboolean
cw_region_contains (const CwRegion *region, CwPoint point)
{
  g_autoptr (GArray) spans = cw_region_spans (region, CW_AXIS_Y, point.y);
  for (guint i = 0; i + 1 < spans->len; i += 2)
    if (g_array_index (spans, CwLength, i) <= point.x
        && point.x <= g_array_index (spans, CwLength, i + 1))
      return TRUE;
  return FALSE;
}

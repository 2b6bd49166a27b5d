/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-freed-rests.h"

#include "cw-frame.h"

/* Of one piece; more are hardly ever worth the saw. */
#define MOST_RESTS 4

/* The piece cut into upright strips (or level ones): what is free of it at
 * the low and at the high end of each strip. */
typedef struct
{
  const CwPiece *piece;
  gboolean level;
  CwInterval across, along;  /* of the box: over the strips, along them */
  GArray *places;            /* CwLength: where strips begin and end */
  GArray *low, *high;        /* CwLength: free at the ends of each strip */
} Strips;

static CwLength
across_of (const Strips *strips, CwPoint point)
{
  return strips->level ? point.y : point.x;
}

static void
add_place (Strips *strips, CwLength place)
{
  guint at = strips->places->len;
  while (at > 0 && g_array_index (strips->places, CwLength, at - 1) > place)
    at--;
  if (place < strips->across.low || place > strips->across.high
      || (at > 0 && g_array_index (strips->places, CwLength, at - 1) == place))
    return;
  g_array_insert_val (strips->places, at, place);
}

/* On a rake or a curve a rectangle may begin anywhere. */
#define PARTS_OF_A_SLOPE 4

static void
add_places (Strips *strips, const CwLoop *loop)
{
  for (gsize i = 0; i < loop->n_sides; i++)
    {
      const CwPoint start = loop->sides[i].start;
      const CwPoint end = cw_loop_end (loop, i);
      const CwLength from = across_of (strips, start);
      const CwLength to = across_of (strips, end);
      add_place (strips, from);
      if (start.x == end.x || start.y == end.y)
        continue;
      for (int part = 1; part < PARTS_OF_A_SLOPE; part++)
        add_place (strips, from + (to - from) / PARTS_OF_A_SLOPE * part);
    }
}

/* What straight sides leave free of the strip from @low to @high. */
static void
note_side (const Strips *strips, CwPoint a, CwPoint b, CwInterval strip,
           CwInterval *within)
{
  const CwLength from = across_of (strips, a), to = across_of (strips, b);
  const CwLength at_a = strips->level ? a.x : a.y;
  const CwLength at_b = strips->level ? b.x : b.y;
  if (MAX (from, to) <= strip.low || MIN (from, to) >= strip.high)
    return;
  /* Strips end at the corners: a side runs through all of it. */
  const double slope = (double) (at_b - at_a) / (double) (to - from);
  const double one = (double) at_a + slope * (double) (strip.low - from);
  const double other = (double) at_a + slope * (double) (strip.high - from);
  /* A slope's place in between is no whole number of nanometres. */
  const CwLength off = at_a == at_b ? 0 : 1;
  within->low = MIN (within->low, (CwLength) MIN (one, other) - off);
  within->high = MAX (within->high, (CwLength) MAX (one, other) + off);
}

static void
note_loops (const Strips *strips, CwInterval strip, CwInterval *within)
{
  const CwRegion *shape = strips->piece->shape;
  for (gsize i = 0; i < cw_region_n_loops (shape); i++)
    {
      const CwLoop loop = cw_region_loop (shape, i);
      for (gsize j = 0; j < loop.n_sides; j++)
        note_side (strips, loop.sides[j].start, cw_loop_end (&loop, j), strip,
                   within);
    }
}

static CwBox
box_of (const Strips *strips, CwInterval across, CwInterval along)
{
  return strips->level ? (CwBox) { along.low, across.low, along.high,
                                   across.high }
                       : (CwBox) { across.low, along.low, across.high,
                                   along.high };
}

static gboolean
has_arcs (const CwRegion *shape)
{
  for (gsize i = 0; i < cw_region_n_loops (shape); i++)
    {
      const CwLoop loop = cw_region_loop (shape, i);
      for (gsize j = 0; j < loop.n_sides; j++)
        if (loop.sides[j].is_arc)
          return TRUE;
    }
  return FALSE;
}

/* The extent of the piece along the strip. */
static CwInterval
extent_in (const Strips *strips, CwInterval strip, gboolean arcs)
{
  CwInterval within = { strips->along.high, strips->along.low };
  if (!arcs)
    {
      note_loops (strips, strip, &within);
      return within;
    }
  const CwBox box = box_of (strips, strip, strips->along);
  g_autoptr (CwRegion) part = cw_region_clip (strips->piece->shape, &box, 0);
  if (cw_region_is_empty (part))
    return within;
  const CwBox around = cw_region_box (part);
  return strips->level ? (CwInterval) { around.left, around.right }
                       : (CwInterval) { around.bottom, around.top };
}

static void
measure_strips (Strips *strips)
{
  const gboolean arcs = has_arcs (strips->piece->shape);
  for (guint i = 0; i + 1 < strips->places->len; i++)
    {
      const CwInterval strip
          = { g_array_index (strips->places, CwLength, i),
              g_array_index (strips->places, CwLength, i + 1) };
      const CwInterval piece = extent_in (strips, strip, arcs);
      const CwLength low = piece.low - strips->along.low;
      const CwLength high = strips->along.high - piece.high;
      g_array_append_val (strips->low, low);
      g_array_append_val (strips->high, high);
    }
}

typedef struct
{
  CwLength kerf;
  CwPoint least;
  GArray *boxes;             /* CwBox: may overlap */
} Candidates;

static void
add_candidate (Candidates *candidates, const CwBox *box)
{
  if (cw_box_width (box) >= candidates->least.x
      && cw_box_height (box) >= candidates->least.y)
    g_array_append_vals (candidates->boxes, box, 1);
}

/* Of the strips from @first to before @end: what is free of all of them. */
static void
add_run (const Strips *strips, Candidates *candidates, guint first, guint end,
         CwLength low, CwLength high)
{
  const CwLength kerf = candidates->kerf;
  CwInterval across = { g_array_index (strips->places, CwLength, first),
                        g_array_index (strips->places, CwLength, end) };
  if (across.low > strips->across.low)
    across.low += kerf;
  if (across.high < strips->across.high)
    across.high -= kerf;
  if (across.low >= across.high)
    return;
  const CwInterval below = { strips->along.low, strips->along.low + low - kerf };
  const CwInterval above
      = { strips->along.high - high + kerf, strips->along.high };
  const CwBox boxes[] = { box_of (strips, across, below),
                          box_of (strips, across, above) };
  if (low > kerf)
    add_candidate (candidates, &boxes[0]);
  if (high > kerf)
    add_candidate (candidates, &boxes[1]);
}

static void
add_runs (const Strips *strips, Candidates *candidates)
{
  for (guint first = 0; first < strips->low->len; first++)
    {
      CwLength low = G_MAXINT64, high = G_MAXINT64;
      for (guint i = first; i < strips->low->len; i++)
        {
          low = MIN (low, g_array_index (strips->low, CwLength, i));
          high = MIN (high, g_array_index (strips->high, CwLength, i));
          if (low <= candidates->kerf && high <= candidates->kerf)
            break;
          add_run (strips, candidates, first, i + 1, low, high);
        }
    }
}

static void
look_along (const CwPiece *piece, gboolean level, Candidates *candidates)
{
  const CwInterval x = { piece->box.left, piece->box.right };
  const CwInterval y = { piece->box.bottom, piece->box.top };
  Strips strips = { .piece = piece,
                    .level = level,
                    .across = level ? y : x,
                    .along = level ? x : y };
  g_autoptr (GArray) places = g_array_new (FALSE, FALSE, sizeof (CwLength));
  g_autoptr (GArray) low = g_array_new (FALSE, FALSE, sizeof (CwLength));
  g_autoptr (GArray) high = g_array_new (FALSE, FALSE, sizeof (CwLength));

  strips.places = places;
  strips.low = low;
  strips.high = high;
  for (gsize i = 0; i < cw_region_n_loops (piece->shape); i++)
    {
      const CwLoop loop = cw_region_loop (piece->shape, i);
      add_places (&strips, &loop);
    }
  add_place (&strips, strips.across.low);
  add_place (&strips, strips.across.high);
  measure_strips (&strips);
  add_runs (&strips, candidates);
}

static int
compare_boxes (gconstpointer a, gconstpointer b)
{
  const CwBox *one = a, *other = b;
  const double first = cw_box_area (one), second = cw_box_area (other);
  if (first > second || first < second)
    return first > second ? -1 : 1;
  if (one->left != other->left)
    return one->left < other->left ? -1 : 1;
  return (one->bottom > other->bottom) - (one->bottom < other->bottom);
}

static gboolean
is_clear (const GArray *rests, guint first, const CwBox *box, CwLength kerf)
{
  const CwBox around = { box->left - kerf, box->bottom - kerf,
                         box->right + kerf, box->top + kerf };
  for (guint i = first; i < rests->len; i++)
    if (cw_box_overlaps (&around, &g_array_index (rests, CwBox, i)))
      return FALSE;
  return TRUE;
}

static void
take_largest (const Candidates *candidates, GArray *rests)
{
  const guint first = rests->len;
  g_array_sort (candidates->boxes, compare_boxes);
  for (guint i = 0; i < candidates->boxes->len; i++)
    {
      const CwBox *box = &g_array_index (candidates->boxes, CwBox, i);
      if (rests->len - first < MOST_RESTS
          && is_clear (rests, first, box, candidates->kerf))
        g_array_append_vals (rests, box, 1);
    }
}

void
cw_freed_rests (const CwPiece *piece, CwLength kerf, CwPoint least,
                GArray *rests)
{
  g_return_if_fail (piece != NULL && rests != NULL && kerf >= 0);

  /* Most pieces waste too little; areas are rounded. */
  const double wasted
      = (cw_box_area (&piece->box) - piece->area) * (1 + 1e-9) + 1e-9;
  if (!piece->shape
      || wasted < cw_length_in_m (least.x) * cw_length_in_m (least.y))
    return;
  g_autoptr (GArray) boxes = g_array_new (FALSE, FALSE, sizeof (CwBox));
  Candidates candidates = { kerf, least, boxes };
  look_along (piece, FALSE, &candidates);
  look_along (piece, TRUE, &candidates);
  take_largest (&candidates, rests);
}

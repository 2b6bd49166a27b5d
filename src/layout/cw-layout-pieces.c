/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Questions about the pieces of a layout.
 */
#include "cw-layout.h"
#include "cw-studs.h"

/* The tip of a piece that tapers off on a stud holds no fastener. */
#define LEAST_HELD CW_MM (1)

guint
cw_layout_count (const CwLayout *layout, CwPieceKind kind)
{
  guint n = 0;
  for (guint i = 0; i < layout->pieces->len; i++)
    n += g_array_index (layout->pieces, CwPiece, i).kind == kind;
  return n;
}

static guint
fasteners_on (CwLength height, const CwFastener *fastener)
{
  const CwLength between = height - 2 * fastener->edge;
  if (between <= 0)
    return 2;
  const CwLength gaps
      = (between + fastener->spacing - 1) / fastener->spacing;
  return (guint) MAX (2, gaps + 1);
}

static void
place_fasteners (GArray *points, CwLength x, CwLength low, CwLength high,
                 CwLength edge, guint n)
{
  /* Where the edges leave no room, at the thirds. */
  const CwLength in
      = high - low > 2 * edge ? edge : (high - low) / 3;
  for (guint i = 0; i < n; i++)
    {
      const CwPoint point
          = cw_point (x, low + in + (high - low - 2 * in) * i / (n - 1));
      g_array_append_val (points, point);
    }
}

/* Between @low and @high at a stud; @points may be NULL. */
static guint
fasteners_between (CwLength low, CwLength high, CwLength x,
                   const CwFastener *fastener, GArray *points)
{
  const guint n = fasteners_on (high - low, fastener);
  if (points)
    place_fasteners (points, x, low, high, fastener->edge, n);
  return n;
}

static CwLength
spans_length (const GArray *spans)
{
  CwLength length = 0;
  for (guint i = 0; i + 1 < spans->len; i += 2)
    length += g_array_index (spans, CwLength, i + 1)
              - g_array_index (spans, CwLength, i);
  return length;
}

/* Whether a jamb or an end of the shape runs down the line. */
static gboolean
has_side_on (const CwRegion *shape, CwLength x)
{
  for (gsize i = 0; i < cw_region_n_loops (shape); i++)
    {
      const CwLoop loop = cw_region_loop (shape, i);
      for (gsize k = 0; k < loop.n_sides; k++)
        if (loop.sides[k].start.x == x && cw_loop_end (&loop, k).x == x)
          return TRUE;
    }
  return FALSE;
}

/* What of the piece stands at a stud. Where a jamb runs down the stud it is
 * what stands on the side of the wall, whichever hand the opening is on. */
static GArray *
spans_at_stud (const CwPiece *piece, CwLength x)
{
  if (!has_side_on (piece->shape, x))
    return cw_region_spans (piece->shape, CW_AXIS_X, x);
  g_autoptr (GArray) left = cw_region_spans (
      piece->shape, CW_AXIS_X, MAX (x - 1, piece->box.left + 1));
  g_autoptr (GArray) right = cw_region_spans (
      piece->shape, CW_AXIS_X, MIN (x + 1, piece->box.right - 1));
  const CwLength on_left = spans_length (left);
  const CwLength on_right = spans_length (right);
  if (on_left == on_right ? left->len > right->len : on_left > on_right)
    return g_steal_pointer (&left);
  return g_steal_pointer (&right);
}

/* A stud at the very edge holds what stands just inside it. */
static guint
fasteners_at (const CwPiece *piece, CwLength x, const CwFastener *fastener,
              GArray *points)
{
  const CwLength inside
      = CLAMP (x, piece->box.left + 1, piece->box.right - 1);
  if (!piece->shape)
    return fasteners_between (piece->box.bottom, piece->box.top, inside,
                              fastener, points);
  g_autoptr (GArray) spans = spans_at_stud (piece, inside);
  guint n = 0;
  for (guint i = 0; i + 1 < spans->len; i += 2)
    {
      const CwLength low = g_array_index (spans, CwLength, i);
      const CwLength high = g_array_index (spans, CwLength, i + 1);
      if (high - low >= LEAST_HELD)
        n += fasteners_between (low, high, inside, fastener, points);
    }
  return n;
}

/* Counts, and notes the places unless @points is NULL. */
static guint
fasteners_of (const CwLayout *layout, const CwPiece *piece, GArray *points)
{
  const CwBuildup *buildup = layout->wall->buildup;
  const CwFastener *fastener = (const CwFastener *) buildup->fastener;
  if (!fastener || fastener->spacing <= 0)
    return 0;
  const CwPanel *panel = cw_list_at (buildup->panels, 0);
  guint n = 0;
  for (guint i
       = cw_studs_from (layout->studs, piece->box.left - panel->joint);
       i < layout->studs->len; i++)
    {
      const CwLength x = g_array_index (layout->studs, CwLength, i);
      if (x > piece->box.right + panel->joint)
        break;
      n += fasteners_at (piece, x, fastener, points);
    }
  return n;
}

guint
cw_layout_piece_fasteners (const CwLayout *layout, const CwPiece *piece)
{
  return fasteners_of (layout, piece, NULL);
}

void
cw_layout_piece_fastener_points (const CwLayout *layout, const CwPiece *piece,
                                 GArray *points)
{
  g_return_if_fail (points != NULL);
  fasteners_of (layout, piece, points);
}

static gboolean
box_contains (const CwBox *box, CwPoint point)
{
  return box->left <= point.x && point.x <= box->right
         && box->bottom <= point.y && point.y <= box->top;
}

const CwPiece *
cw_layout_piece_at (const CwLayout *layout, CwPoint point)
{
  for (guint i = 0; i < layout->pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, i);
      if (box_contains (&piece->box, point)
          && (!piece->shape || cw_region_contains (piece->shape, point)))
        return piece;
    }
  return NULL;
}

char *
cw_layout_piece_name (const CwLayout *layout, const CwPiece *piece)
{
  return g_strdup_printf ("%s-%u-%u", layout->wall->elevation->name,
                          piece->course, piece->number);
}

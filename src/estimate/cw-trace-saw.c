/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where pieces are sawn: the sides of a sawn piece, its holes with them, that
 * do not bound the blank that the cut plan brings out of a panel.
 */
#include "cw-piece-cuts.h"
#include "cw-trace-private.h"

static gboolean
bounds (const CwBox *blank, CwPoint from, CwPoint to)
{
  return (from.x == to.x && (from.x == blank->left || from.x == blank->right))
         || (from.y == to.y
             && (from.y == blank->bottom || from.y == blank->top));
}

static void
trace_loop (CwTrace *trace, const CwLoop *loop, const CwBox *blank,
            gboolean is_curved)
{
  for (gsize i = 0; i < loop->n_sides; i++)
    {
      const CwSide *side = &loop->sides[i];
      const CwPoint end = cw_loop_end (loop, i);

      if (!side->is_arc == !is_curved
          && (is_curved || !bounds (blank, side->start, end)))
        cw_trace_side (trace, side, end, 1);
    }
}

static void
trace_piece (CwTrace *trace, const CwPiece *piece, gboolean is_curved)
{
  g_autoptr (CwRegion) region
      = cw_piece_region (trace->takeoff->layout, piece);

  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      const CwLoop loop = cw_region_loop (region, i);

      trace_loop (trace, &loop, &piece->box, is_curved);
    }
  /* The blank, which the plan saws out of a panel. */
  if (!is_curved)
    cw_trace_region (trace, cw_region_new_box (&piece->box, 0), 0);
}

void
cw_trace_saw_cuts (CwTrace *trace, guint is_curved)
{
  const GArray *pieces = trace->takeoff->layout->pieces;

  for (guint i = 0; i < pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (pieces, CwPiece, i);

      if (piece->kind == CW_PIECE_CUT)
        trace_piece (trace, piece, is_curved != 0);
    }
}

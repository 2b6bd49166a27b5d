/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Saw cuts: the sides of sawn pieces that do not lie on the edges of the
 * panel that they come from.
 */
#include "cw-estimate-private.h"

typedef struct
{
  double straight, curved;    /* m */
} SawCuts;

static gboolean
lies_on_edge (const CwBox *panel, CwPoint a, CwPoint b)
{
  return (a.x == b.x && (a.x == panel->left || a.x == panel->right))
         || (a.y == b.y && (a.y == panel->bottom || a.y == panel->top));
}

static void
saw_shape (SawCuts *cuts, const CwPiece *piece)
{
  for (gsize i = 0; i < cw_region_n_loops (piece->shape); i++)
    {
      CwLoop loop = cw_region_loop (piece->shape, i);

      for (gsize j = 0; j < loop.n_sides; j++)
        {
          const CwSide *side = &loop.sides[j];
          CwPoint end = cw_loop_end (&loop, j);

          if (side->is_arc)
            cuts->curved += cw_side_length (side, end);
          else if (!lies_on_edge (&piece->slot, side->start, end))
            cuts->straight += cw_side_length (side, end);
        }
    }
}

static void
saw_box (SawCuts *cuts, const CwPiece *piece)
{
  double width = cw_length_in_m (cw_box_width (&piece->box));
  double height = cw_length_in_m (cw_box_height (&piece->box));

  cuts->straight
      += height
             * ((piece->box.left > piece->slot.left)
                + (piece->box.right < piece->slot.right))
         + width
               * ((piece->box.bottom > piece->slot.bottom)
                  + (piece->box.top < piece->slot.top));
}

void
cw_estimate_saw (CwWallEstimate *estimate)
{
  const GArray *pieces = estimate->layout->pieces;
  SawCuts cuts = { 0, 0 };

  for (guint i = 0; i < pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (pieces, CwPiece, i);

      if (piece->kind != CW_PIECE_CUT)
        continue;
      if (piece->shape)
        saw_shape (&cuts, piece);
      else
        saw_box (&cuts, piece);
    }
  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "saw.length", cuts.straight),
      N_ ("straight sides of sawn pieces inside their panels"));
  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "saw.curve", cuts.curved),
      N_ ("curved sides of sawn pieces"));
}

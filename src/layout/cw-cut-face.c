/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-face.h"

#include "cw-piece-cuts.h"

char *
cw_cut_letter (guint placement)
{
  const char letter = (char) ('A' + placement % 26);

  return placement < 26 ? g_strdup_printf ("%c", letter)
                        : g_strdup_printf ("%c%u", letter,
                                           placement / 26 + 1);
}

const CwLayout *
cw_cut_piece (const CwPanelPlan *plan, guint blank, const CwPiece **piece)
{
  g_return_val_if_fail (plan != NULL && blank < plan->pieces->len, NULL);

  const CwPanelPiece *name
      = &g_array_index (plan->pieces, CwPanelPiece, blank);
  const CwLayout *layout = plan->layouts->pdata[name->wall];

  if (piece)
    *piece = &g_array_index (layout->pieces, CwPiece, name->piece);
  return layout;
}

CwRegion *
cw_cut_face (const CwPanelPlan *plan, const CwCutPlacement *placement)
{
  const CwPiece *piece;
  const CwLayout *layout = cw_cut_piece (plan, placement->blank, &piece);
  g_return_val_if_fail (layout != NULL, NULL);

  g_autoptr (CwRegion) face = cw_piece_region (layout, piece);
  CwBox box = piece->box;

  /* A panel that stands on the wall lies with its foot at the left. */
  if (!cw_layout_stands (layout) != !placement->turned)
    {
      CwRegion *turned = cw_region_turn (face);
      cw_region_unref (face);
      face = turned;
      box = (CwBox) { box.bottom, -box.right, box.top, -box.left };
    }
  return cw_region_move (face, placement->x - box.left,
                         placement->y - box.bottom);
}

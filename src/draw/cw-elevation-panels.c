/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-elevation-layers.h"

static const CwStyle piece_styles[] = {
  [CW_PIECE_WHOLE] = CW_STYLE_PIECE_WHOLE,
  [CW_PIECE_RASPED] = CW_STYLE_PIECE_RASPED,
  [CW_PIECE_CUT] = CW_STYLE_PIECE_CUT,
};

void
cw_draw_piece (CwDisplayList *list, CwStyle style, const char *id,
               const CwPiece *piece)
{
  if (piece->shape)
    cw_display_list_add_region (list, style, id, piece->shape);
  else
    cw_display_list_add_box (list, style, id, &piece->box);
}

gboolean
cw_draw_lies_on (const CwBox *box, CwPoint from, CwPoint to)
{
  return (from.x == to.x && (from.x == box->left || from.x == box->right))
         || (from.y == to.y && (from.y == box->bottom || from.y == box->top));
}

char *
cw_draw_piece_id (const CwPiece *piece)
{
  return g_strdup_printf ("%u-%u", piece->course, piece->number);
}

/* Kind by kind: the painter draws neighbours of one style in one go. */
void
cw_draw_panels (const CwLayerDrawing *drawing)
{
  const GArray *pieces = drawing->layout->pieces;
  for (guint kind = 0; kind < G_N_ELEMENTS (piece_styles); kind++)
    for (guint i = 0; i < pieces->len; i++)
      {
        const CwPiece *piece = &g_array_index (pieces, CwPiece, i);
        if (piece->kind != kind)
          continue;
        g_autofree char *id = cw_draw_piece_id (piece);
        cw_draw_piece (drawing->list, piece_styles[kind], id, piece);
      }
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-item-words.h"

#include "cw-cut-words.h"
#include "cw-hit.h"
#include "cw-i18n.h"

static const CwNode *
item_of (const CwWall *wall, const char *id)
{
  return g_strcmp0 (id, wall->elevation->id) == 0
             ? &wall->elevation->node
             : cw_node_find (&wall->elevation->node, id);
}

char *
cw_item_name (const CwWall *wall, const char *id)
{
  g_return_val_if_fail (wall != NULL && id != NULL, NULL);
  const CwNode *item = item_of (wall, id);
  const CwWallOpening *opening = cw_hit_opening (wall, id);

  if (!item)
    return NULL;
  if (item == &wall->elevation->node)
    return g_strdup (wall->elevation->name);
  return g_strdup_printf ("%s %s", _ (item->type->label),
                          opening && opening->mark ? opening->mark->name
                                                   : id);
}

static char *
size_words (const CwBox *box, const CwTextStyle *style)
{
  g_autofree char *width = cw_length_format (cw_box_width (box), style);
  g_autofree char *height = cw_length_format (cw_box_height (box), style);

  /* Translators: width and height. */
  return g_strdup_printf (_ ("%s × %s"), width, height);
}

char *
cw_item_size (const CwWall *wall, const char *id, const CwTextStyle *style)
{
  g_return_val_if_fail (wall != NULL && id != NULL, NULL);
  CwBox box;

  if (!cw_hit_bounds (wall, id, &box))
    return NULL;
  g_autofree char *size = size_words (&box, style);
  g_autofree char *x = cw_length_format (box.left, style);
  g_autofree char *y = cw_length_format (box.bottom, style);
  if (g_strcmp0 (id, wall->elevation->id) == 0)
    return g_steal_pointer (&size);
  /* Translators: a size, then how far across and up the wall it begins. */
  return g_strdup_printf (_ ("%s at %s, %s"), size, x, y);
}

static const char *
kind_words (const CwPiece *piece)
{
  static const char *const words[] = {
    [CW_PIECE_WHOLE] = N_ ("whole"),
    [CW_PIECE_RASPED] = N_ ("rasped"),
    [CW_PIECE_CUT] = N_ ("cut"),
  };

  return _ (words[piece->kind]);
}

char *
cw_item_piece_words (const CwPiece *piece, const CwTextStyle *style)
{
  g_return_val_if_fail (piece != NULL, NULL);
  g_autofree char *size = size_words (&piece->box, style);
  g_autofree char *shape = cw_cut_shape_text (piece);

  if (shape)
    /* Translators: course, piece, kind, what is sawn out of it, size. */
    return g_strdup_printf (_ ("Piece %u-%u, %s, %s: %s"), piece->course,
                            piece->number, kind_words (piece), shape, size);
  /* Translators: course, piece, kind, size. */
  return g_strdup_printf (_ ("Piece %u-%u, %s: %s"), piece->course,
                          piece->number, kind_words (piece), size);
}

static gboolean
is_on (const CwPiece *piece, CwPoint at)
{
  const CwBox *box = &piece->box;

  return at.x >= box->left && at.x <= box->right && at.y >= box->bottom
         && at.y <= box->top
         && (!piece->shape || cw_region_contains (piece->shape, at));
}

const CwPiece *
cw_item_piece_at (const CwLayout *layout, CwPoint at)
{
  g_return_val_if_fail (layout != NULL, NULL);
  for (guint i = 0; i < layout->pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, i);

      if (is_on (piece, at))
        return piece;
    }
  return NULL;
}

/* (transfer full) */
static char *
item_words (const CwWall *wall, const char *id, const CwTextStyle *style)
{
  g_autofree char *name = cw_item_name (wall, id);
  g_autofree char *size = cw_item_size (wall, id, style);

  return size ? g_strdup_printf (_ ("%s: %s"), name, size)
              : g_steal_pointer (&name);
}

static gboolean
is_shown (const CwWall *wall, const CwNode *item, CwLayers layers)
{
  if (cw_hit_opening (wall, cw_node_id (item)))
    return layers & CW_LAYER_OPENINGS;
  return item->type != &cw_stub_out_type || layers & CW_LAYER_STUB_OUTS;
}

char *
cw_item_words_at (const CwWall *wall, const CwWallTakeoff *takeoff,
                  CwPoint at, CwLength reach, CwLayers layers,
                  const CwTextStyle *style)
{
  g_return_val_if_fail (wall != NULL, NULL);
  const CwNode *item = cw_hit_at (wall, at, reach);

  if (item && item != &wall->elevation->node && is_shown (wall, item, layers))
    return item_words (wall, cw_node_id (item), style);
  if (!takeoff || !(layers & CW_LAYER_PANELS))
    return NULL;
  const CwPiece *piece = cw_item_piece_at (takeoff->layout, at);
  return piece ? cw_item_piece_words (piece, style) : NULL;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-drawing.h"

#include "cw-cut-private.h"
#include "cw-cut-rests.h"
#include "cw-elevation-layers.h"

/* About the width of a character of a name, points. */
#define CHARACTER_WIDTH 5.5

/* Of a hole's arc the centre, else both ends. */
static void
note_corners (const CwCutPicture *picture, const CwSide *side, CwPoint end,
              gboolean is_hole)
{
  const CwPoint centre
      = cw_point ((CwLength) side->cx, (CwLength) side->cy);

  if (side->is_arc && is_hole)
    g_array_append_val (picture->corners, centre);
  else
    {
      g_array_append_val (picture->corners, side->start);
      g_array_append_val (picture->corners, end);
    }
}

/* What of a loop's sides the plan's cuts do not make. */
static void
draw_own_cuts (const CwCutPicture *picture, const CwRegion *face,
               const CwBox *blank, const char *id)
{
  for (gsize i = 0; i < cw_region_n_loops (face); i++)
    {
      const CwLoop loop = cw_region_loop (face, i);
      for (gsize j = 0; j < loop.n_sides; j++)
        {
          const CwSide *side = &loop.sides[j];
          const CwPoint end = cw_loop_end (&loop, j);

          if (!side->is_arc && cw_draw_lies_on (blank, side->start, end))
            continue;
          cw_display_list_add_side (picture->list, CW_STYLE_CUT_SHAPE, id,
                                    side, end);
          note_corners (picture, side, end, i > 0);
        }
    }
}

static void
draw_label (const CwCutPicture *picture, const CwBox *room, const char *id,
            const char *text, gboolean must_fit)
{
  const double x = ((double) room->left + (double) room->right) / 2e6;
  const double y = ((double) room->bottom + (double) room->top) / 2e6;

  if (must_fit)
    cw_display_list_add_text_in (picture->list, CW_STYLE_PIECE_NUMBER, id, x,
                                 y, 0, 0.9 * (double) cw_box_width (room) / 1e6,
                                 0.9 * (double) cw_box_height (room) / 1e6,
                                 text);
  else
    cw_display_list_add_text (picture->list, CW_STYLE_CUT_LETTER, id, x, y, 0,
                              CW_ANCHOR_CENTRE, text);
}

/* The name where it fits in a line with its letter; the letter always. */
static void
label_piece (const CwCutPicture *picture, const CwRegion *face,
             const CwBox *blank, guint placement, const char *name,
             gboolean with_names)
{
  g_autofree char *letter = cw_cut_letter (placement);
  g_autofree char *both = g_strdup_printf ("%s  %s", letter, name);
  const double needed = CHARACTER_WIDTH * (double) g_utf8_strlen (both, -1)
                        * picture->mm_per_unit * 1.2;
  const CwBox room
      = cw_region_is_box (face)
            ? *blank
            : cw_draw_shape_room (face, blank, (CwLength) (needed * 1e6));
  const gboolean fits = with_names
                        && (double) cw_box_width (&room) / 1e6 > needed
                        && (double) cw_box_height (&room) / 1e6
                               > 12 * picture->mm_per_unit;

  draw_label (picture, &room, name, fits ? both : letter, fits);
}

static void
draw_piece (const CwCutPicture *picture, guint index, gboolean with_names)
{
  const CwCutPlacement *placement = &g_array_index (
      picture->whole->placements, CwCutPlacement, index);
  const CwPiece *piece;
  const CwLayout *layout
      = cw_cut_piece (picture->plan, placement->blank, &piece);
  const CwBox blank = { placement->x, placement->y,
                        placement->x + placement->width,
                        placement->y + placement->height };
  g_autoptr (CwRegion) face = cw_cut_face (picture->plan, placement);
  g_autofree char *name = cw_layout_piece_name (layout, piece);

  cw_display_list_add_region (picture->list, CW_STYLE_CUT_PIECE, name, face);
  draw_own_cuts (picture, face, &blank, name);
  label_piece (picture, face, &blank, index, name, with_names);
}

/* What nothing comes out of tells its size. */
static void
draw_rests (const CwCutPicture *picture, const GArray *rests,
            gboolean with_size)
{
  for (guint i = 0; i < rests->len; i++)
    {
      const CwBox *rest = &g_array_index (rests, CwBox, i);
      g_autofree char *id
          = g_strdup_printf (with_size ? "rest-%u" : "freed-%u", i + 1);
      g_autofree char *width = cw_length_format_dimension (
          cw_box_width (rest), picture->style);
      g_autofree char *height = cw_length_format_dimension (
          cw_box_height (rest), picture->style);
      g_autofree char *size = g_strdup_printf ("%s × %s", width, height);

      cw_display_list_add_box (picture->list, CW_STYLE_CUT_REST, id, rest);
      if (!with_size)
        continue;
      cw_display_list_add_text_in (
          picture->list, CW_STYLE_PIECE_NUMBER, id,
          ((double) rest->left + (double) rest->right) / 2e6,
          ((double) rest->bottom + (double) rest->top) / 2e6, 0,
          0.9 * (double) cw_box_width (rest) / 1e6,
          0.9 * (double) cw_box_height (rest) / 1e6, size);
    }
}

CwDisplayList *
cw_cut_drawing (const CwPanelPlan *plan, guint panel, gboolean with_names,
                const CwTextStyle *style, double mm_per_unit, CwCutRoom *room)
{
  g_return_val_if_fail (plan != NULL && plan->cut != NULL, NULL);
  g_return_val_if_fail (panel < plan->cut->panels->len, NULL);
  g_return_val_if_fail (style != NULL && mm_per_unit > 0, NULL);

  const CwBox stock
      = { 0, 0, plan->cut->rules.length, plan->cut->rules.height };
  CwCutRoom taken = { 0, 0, (double) stock.right / 1e6,
                      (double) stock.top / 1e6 };
  g_autoptr (CwCutWhole) whole = cw_cut_whole_new (plan, panel);
  g_autoptr (GArray) left
      = cw_cut_rests (plan->cut->panels->pdata[panel], &plan->cut->rules);
  g_autoptr (GArray) corners = g_array_new (FALSE, FALSE, sizeof (CwPoint));
  const CwCutPicture picture
      = { cw_display_list_new (), plan, whole,
          style, mm_per_unit, corners, room ? room : &taken };

  *picture.room = taken;
  cw_display_list_add_box (picture.list, CW_STYLE_CUT_STOCK, "stock", &stock);
  draw_rests (&picture, left, TRUE);
  draw_rests (&picture, whole->rests, FALSE);
  for (guint i = 0; i < whole->placements->len; i++)
    draw_piece (&picture, i, with_names);
  cw_cut_draw_saw (&picture);
  cw_cut_draw_figures (&picture);
  return picture.list;
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Piece numbers, each where its piece has room for it.
 */
#include <string.h>

#include "cw-elevation-layers.h"
#include "cw-i18n.h"

/* A shape is looked at in so many level strips; a number stands in two
 * neighbours. */
#define STRIPS 6

/* About the width of a figure of a piece number, and of the letter that stands
 * at the right of a stub-out, points. */
#define FIGURE_WIDTH 5.5
#define LETTER_WIDTH 12.0

/* The widest part of @shape that lies in it all the way from @low to @high:
 * its spans at both lines and between them overlap there. */
static CwBox
strip_room (const CwRegion *shape, CwLength low, CwLength high)
{
  CwBox room = { 0, low, 0, high };
  g_autoptr (GArray) spans
      = cw_region_spans (shape, CW_AXIS_Y, (low + high) / 2);
  g_autoptr (GArray) below = cw_region_spans (shape, CW_AXIS_Y, low + 1);
  g_autoptr (GArray) above = cw_region_spans (shape, CW_AXIS_Y, high - 1);
  for (guint i = 0; i + 1 < spans->len; i += 2)
    for (guint j = 0; j + 1 < below->len; j += 2)
      for (guint k = 0; k + 1 < above->len; k += 2)
        {
          const CwLength *a = &g_array_index (spans, CwLength, i);
          const CwLength *b = &g_array_index (below, CwLength, j);
          const CwLength *c = &g_array_index (above, CwLength, k);
          const CwLength left = MAX (a[0], MAX (b[0], c[0]));
          const CwLength right = MIN (a[1], MIN (b[1], c[1]));
          if (right - left > cw_box_width (&room))
            room = (CwBox) { left, low, right, high };
        }
  return room;
}

CwBox
cw_draw_shape_room (const CwRegion *shape, const CwBox *box, CwLength needed)
{
  static const guint order[STRIPS - 1] = { 2, 1, 3, 0, 4 };
  const CwLength strip = cw_box_height (box) / STRIPS;
  CwBox best = { 0, 0, 0, 0 };
  for (guint i = 0; i < G_N_ELEMENTS (order); i++)
    {
      const CwLength low = box->bottom + order[i] * strip;
      const CwBox room = strip_room (shape, low, low + 2 * strip);
      if (cw_box_width (&room) > cw_box_width (&best))
        best = room;
      if (cw_box_width (&best) >= needed)
        break;
    }
  return best;
}

/* Stub-outs, each with its letter. (element-type CwBox) */
static GArray *
find_obstacles (const CwLayerDrawing *drawing)
{
  const GPtrArray *stub_outs = drawing->wall->stub_outs;
  const CwLength letter
      = (CwLength) (LETTER_WIDTH * drawing->mm_per_unit * CW_NM_PER_MM);
  GArray *obstacles
      = g_array_sized_new (FALSE, FALSE, sizeof (CwBox), stub_outs->len);
  for (guint i = 0; i < stub_outs->len; i++)
    {
      g_autoptr (CwRegion) shape
          = cw_stub_out_shape (stub_outs->pdata[i], FALSE);
      CwBox hole = cw_region_box (shape);
      hole.right += letter;
      hole.bottom -= letter / 2;
      hole.top += letter / 2;
      g_array_append_val (obstacles, hole);
    }
  return obstacles;
}

/* A number keeps to the wider side of whatever stands in its room. */
static void
clear_obstacles (const GArray *obstacles, CwBox *room)
{
  for (guint i = 0; i < obstacles->len; i++)
    {
      const CwBox *hole = &g_array_index (obstacles, CwBox, i);
      if (!cw_box_overlaps (room, hole))
        continue;
      if (hole->left - room->left > room->right - hole->right)
        room->right = MAX (hole->left, room->left);
      else
        room->left = MIN (hole->right, room->right);
    }
}

/* With the letter of its kind where there is room for both. (transfer full) */
static char *
number_text (const CwPiece *piece, const char *id, double room,
             double mm_per_unit)
{
  static const char *const letters[] = {
    [CW_PIECE_WHOLE] = NC_ ("piece letter", "W"),
    [CW_PIECE_RASPED] = NC_ ("piece letter", "R"),
    [CW_PIECE_CUT] = NC_ ("piece letter", "C"),
  };
  g_autofree char *text = g_strdup_printf (
      "%s %s", id,
      g_dpgettext2 (GETTEXT_PACKAGE, "piece letter", letters[piece->kind]));

  return FIGURE_WIDTH * (double) strlen (text) * mm_per_unit <= room
             ? g_steal_pointer (&text)
             : g_strdup (id);
}

/* Level where the number fits so, else upright in what is taller than wide. */
static void
draw_number (const CwLayerDrawing *drawing, const CwBox *room,
             const CwPiece *piece, const char *id)
{
  const double mm = CW_NM_PER_MM;
  const double width = 0.9 * (double) cw_box_width (room) / mm;
  const double height = 0.9 * (double) cw_box_height (room) / mm;
  const double needed
      = FIGURE_WIDTH * (double) strlen (id) * drawing->mm_per_unit;
  const gboolean upright = width < needed && width < height;
  if (width <= 0 || height <= 0)
    return;
  const double along = upright ? height : width;
  g_autofree char *text
      = number_text (piece, id, along, drawing->mm_per_unit);
  cw_display_list_add_text_in (
      drawing->list, CW_STYLE_PIECE_NUMBER, id,
      ((double) room->left + (double) room->right) / 2 / mm,
      ((double) room->bottom + (double) room->top) / 2 / mm,
      upright ? G_PI / 2 : 0, along, upright ? width : height, text);
}

void
cw_draw_numbers (const CwLayerDrawing *drawing)
{
  const GArray *pieces = drawing->layout->pieces;
  g_autoptr (GArray) obstacles = find_obstacles (drawing);
  for (guint i = 0; i < pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (pieces, CwPiece, i);
      g_autofree char *id = cw_draw_piece_id (piece);
      const double needed
          = FIGURE_WIDTH * (double) strlen (id) * drawing->mm_per_unit;
      CwBox room = piece->box;
      if (piece->shape)
        room = cw_draw_shape_room (
            piece->shape, &piece->box,
            (CwLength) (needed * 1.2 * CW_NM_PER_MM));
      clear_obstacles (obstacles, &room);
      draw_number (drawing, &room, piece, id);
    }
}

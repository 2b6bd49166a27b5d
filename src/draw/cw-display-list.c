/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-display-items.h"

#include <math.h>
#include <string.h>

static const CwExtent empty_extent
    = { G_MAXDOUBLE, G_MAXDOUBLE, -G_MAXDOUBLE, -G_MAXDOUBLE };

CwDisplayList *
cw_display_list_new (void)
{
  CwDisplayList *list = g_new0 (CwDisplayList, 1);
  g_atomic_ref_count_init (&list->count);
  list->items = g_array_new (FALSE, FALSE, sizeof (CwDisplayItem));
  list->ops = g_byte_array_new ();
  list->numbers = g_array_new (FALSE, FALSE, sizeof (double));
  list->texts = g_array_new (FALSE, FALSE, sizeof (CwDisplayText));
  list->strings = g_string_new (NULL);
  return list;
}

CwDisplayList *
cw_display_list_ref (const CwDisplayList *list)
{
  g_return_val_if_fail (list, NULL);
  g_atomic_ref_count_inc (&((CwDisplayList *) list)->count);
  return (CwDisplayList *) list;
}

void
cw_display_list_unref (CwDisplayList *list)
{
  g_return_if_fail (list);
  if (!g_atomic_ref_count_dec (&list->count))
    return;
  g_array_unref (list->items);
  g_byte_array_unref (list->ops);
  g_array_unref (list->numbers);
  g_array_unref (list->texts);
  g_string_free (list->strings, TRUE);
  g_free (list);
}

guint
cw_path_op_numbers (guint8 op)
{
  return op == CW_OP_ARC ? 6 : op == CW_OP_CLOSE ? 0 : 2;
}

static guint32
add_string (CwDisplayList *list, const char *string)
{
  guint32 place = list->strings->len;
  g_string_append_len (list->strings, string, strlen (string) + 1);
  return place;
}

static guint32
add_id (CwDisplayList *list, const char *id)
{
  if (!id)
    return 0;
  if (list->last_id == 0
      || strcmp (list->strings->str + list->last_id - 1, id) != 0)
    list->last_id = add_string (list, id) + 1;
  return list->last_id;
}

static CwDisplayItem *
last_item (CwDisplayList *list)
{
  return &g_array_index (list->items, CwDisplayItem, list->items->len - 1);
}

void
cw_display_list_begin (CwDisplayList *list, CwStyle style, const char *id)
{
  g_return_if_fail (list && !list->is_building);
  g_return_if_fail (style < CW_N_STYLES);
  CwDisplayItem item = {
    .style = style,
    .kind = CW_SHAPE_OP_PATH,
    .id = add_id (list, id),
    .first = list->ops->len,
    .first_number = list->numbers->len,
    .extent = empty_extent,
  };
  g_array_append_val (list->items, item);
  list->is_building = TRUE;
}

static void
add_op (CwDisplayList *list, CwPathOp op, const double *numbers)
{
  guint8 byte = op;
  g_byte_array_append (list->ops, &byte, 1);
  g_array_append_vals (list->numbers, numbers, cw_path_op_numbers (op));
}

static void
add_point (CwDisplayList *list, CwPathOp op, double x, double y)
{
  add_op (list, op, (const double[]) { x, y });
  cw_extent_add (&last_item (list)->extent, x, y);
}

void
cw_display_list_move_to (CwDisplayList *list, double x, double y)
{
  g_return_if_fail (list && list->is_building);
  add_point (list, CW_OP_MOVE, x, y);
}

void
cw_display_list_line_to (CwDisplayList *list, double x, double y)
{
  g_return_if_fail (list && list->is_building);
  add_point (list, CW_OP_LINE, x, y);
}

/* Ends of the arc and each quarter point that it passes. */
static void
extend_by_arc (CwExtent *extent, const double *arc)
{
  double low = MIN (arc[4], arc[5]), high = MAX (arc[4], arc[5]);
  cw_extent_add (extent, arc[0] + arc[2] * cos (low),
                 arc[1] + arc[3] * sin (low));
  cw_extent_add (extent, arc[0] + arc[2] * cos (high),
                 arc[1] + arc[3] * sin (high));
  for (double k = ceil (low / G_PI_2); k * G_PI_2 <= high; k++)
    cw_extent_add (extent, arc[0] + arc[2] * cos (k * G_PI_2),
                   arc[1] + arc[3] * sin (k * G_PI_2));
}

void
cw_display_list_arc (CwDisplayList *list, double cx, double cy, double rx,
                     double ry, double from, double to)
{
  g_return_if_fail (list && list->is_building);
  const double arc[] = { cx, cy, rx, ry, from, to };
  add_op (list, CW_OP_ARC, arc);
  extend_by_arc (&last_item (list)->extent, arc);
}

void
cw_display_list_close (CwDisplayList *list)
{
  g_return_if_fail (list && list->is_building);
  add_op (list, CW_OP_CLOSE, NULL);
  last_item (list)->is_closed = TRUE;
}

void
cw_display_list_end (CwDisplayList *list)
{
  g_return_if_fail (list && list->is_building);
  CwDisplayItem *item = last_item (list);
  item->n_ops = list->ops->len - item->first;
  list->is_building = FALSE;
}

static inline double
in_mm (double nm)
{
  return nm / CW_NM_PER_MM;
}

static void
add_side (CwDisplayList *list, const CwSide *side, CwPoint end)
{
  if (side->is_arc)
    cw_display_list_arc (list, in_mm (side->cx), in_mm (side->cy),
                         in_mm (side->rx), in_mm (side->ry), side->from,
                         side->to);
  else
    cw_display_list_line_to (list, in_mm (end.x), in_mm (end.y));
}

static void
add_loop (CwDisplayList *list, const CwLoop *loop)
{
  if (loop->n_sides == 0)
    return;
  CwPoint start = loop->sides[0].start;
  cw_display_list_move_to (list, in_mm (start.x), in_mm (start.y));
  for (gsize i = 0; i < loop->n_sides; i++)
    /* Closing draws the last straight side. */
    if (i + 1 < loop->n_sides || loop->sides[i].is_arc)
      add_side (list, &loop->sides[i], cw_loop_end (loop, i));
  cw_display_list_close (list);
}

void
cw_display_list_add_region (CwDisplayList *list, CwStyle style,
                            const char *id, const CwRegion *region)
{
  g_return_if_fail (list && region);
  if (cw_region_is_empty (region))
    return;
  cw_display_list_begin (list, style, id);
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      CwLoop loop = cw_region_loop (region, i);
      add_loop (list, &loop);
    }
  cw_display_list_end (list);
}

void
cw_display_list_add_box (CwDisplayList *list, CwStyle style, const char *id,
                         const CwBox *box)
{
  g_return_if_fail (list && box);
  cw_display_list_begin (list, style, id);
  cw_display_list_move_to (list, in_mm (box->left), in_mm (box->bottom));
  cw_display_list_line_to (list, in_mm (box->right), in_mm (box->bottom));
  cw_display_list_line_to (list, in_mm (box->right), in_mm (box->top));
  cw_display_list_line_to (list, in_mm (box->left), in_mm (box->top));
  cw_display_list_close (list);
  cw_display_list_end (list);
}

void
cw_display_list_add_line (CwDisplayList *list, CwStyle style, const char *id,
                          CwPoint from, CwPoint to)
{
  g_return_if_fail (list);
  cw_display_list_begin (list, style, id);
  cw_display_list_move_to (list, in_mm (from.x), in_mm (from.y));
  cw_display_list_line_to (list, in_mm (to.x), in_mm (to.y));
  cw_display_list_end (list);
}

void
cw_display_list_add_side (CwDisplayList *list, CwStyle style, const char *id,
                          const CwSide *side, CwPoint end)
{
  g_return_if_fail (list && side);
  cw_display_list_begin (list, style, id);
  cw_display_list_move_to (list, in_mm (side->start.x),
                           in_mm (side->start.y));
  add_side (list, side, end);
  cw_display_list_end (list);
}

static void
add_text (CwDisplayList *list, CwStyle style, const char *id,
          CwDisplayText text, const char *words)
{
  text.text = add_string (list, words);
  CwDisplayItem item = {
    .style = style,
    .kind = CW_SHAPE_OP_TEXT,
    .id = add_id (list, id),
    .first = list->texts->len,
    .extent = { text.x, text.y, text.x, text.y },
  };
  g_array_append_val (list->texts, text);
  g_array_append_val (list->items, item);
}

void
cw_display_list_add_text (CwDisplayList *list, CwStyle style, const char *id,
                          double x, double y, double angle, CwAnchor anchor,
                          const char *text)
{
  g_return_if_fail (list && !list->is_building && text);
  add_text (list, style, id,
            (CwDisplayText) { .x = x, .y = y, .angle = angle,
                              .anchor = anchor },
            text);
}

void
cw_display_list_add_text_in (CwDisplayList *list, CwStyle style,
                             const char *id, double x, double y,
                             double angle, double room_width,
                             double room_height, const char *text)
{
  g_return_if_fail (list && !list->is_building && text);
  if (room_width <= 0 || room_height <= 0)
    return;
  add_text (list, style, id,
            (CwDisplayText) { .x = x, .y = y, .angle = angle,
                              .anchor = CW_ANCHOR_CENTRE,
                              .room_width = room_width,
                              .room_height = room_height },
            text);
}

static void
append_item (CwDisplayList *list, const CwDisplayList *other,
             const CwDisplayItem *item)
{
  CwDisplayItem copy = *item;
  copy.id = add_id (list, cw_display_list_id (other, item));
  if (item->kind == CW_SHAPE_OP_TEXT)
    {
      CwDisplayText text = *cw_display_list_text (other, item);
      text.text
          = add_string (list, cw_display_list_string (other, text.text));
      copy.first = list->texts->len;
      g_array_append_val (list->texts, text);
    }
  else
    {
      copy.first += list->ops->len;
      copy.first_number += list->numbers->len;
    }
  g_array_append_val (list->items, copy);
}

void
cw_display_list_append (CwDisplayList *list, const CwDisplayList *other)
{
  g_return_if_fail (list && other && list != other);
  g_return_if_fail (!list->is_building && !other->is_building);
  for (gsize i = 0; i < other->items->len; i++)
    append_item (list, other, cw_display_list_item (other, i));
  /* Paths last: the items above counted from the old lengths. */
  g_byte_array_append (list->ops, other->ops->data, other->ops->len);
  g_array_append_vals (list->numbers, other->numbers->data,
                       other->numbers->len);
}

gsize
cw_display_list_length (const CwDisplayList *list)
{
  g_return_val_if_fail (list, 0);
  return list->items->len;
}

gboolean
cw_display_list_bounds (const CwDisplayList *list, double *left,
                        double *bottom, double *right, double *top)
{
  g_return_val_if_fail (list, FALSE);
  CwExtent all = empty_extent;
  for (gsize i = 0; i < list->items->len; i++)
    {
      const CwDisplayItem *item = cw_display_list_item (list, i);
      if (item->kind != CW_SHAPE_OP_PATH || item->n_ops == 0)
        continue;
      cw_extent_add (&all, item->extent.left, item->extent.bottom);
      cw_extent_add (&all, item->extent.right, item->extent.top);
    }
  if (all.left > all.right)
    return FALSE;
  *left = all.left;
  *bottom = all.bottom;
  *right = all.right;
  *top = all.top;
  return TRUE;
}

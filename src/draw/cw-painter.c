/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-painter.h"

#include <math.h>

#include "cw-hatch.h"
#include "cw-painter-private.h"

/* Along a level line: on paper at most, and on the wall, so that a hatch grows
 * finer with the panels it stands on; under the least it is a flat tone. */
#define HATCH_SPACING 9.0
#define HATCH_SPACING_MM 200.0
#define HATCH_LEAST 3.0
/* How much of the line's colour a hatch line has, and a flat tone. */
#define HATCH_STRENGTH 0.6
#define FLAT_STRENGTH 0.15


static gboolean
is_wanted (const CwPainting *painting, const CwDisplayItem *item)
{
  const CwExtent *clip = &painting->clip, *extent = &item->extent;
  if (extent->left > clip->right || extent->right < clip->left
      || extent->bottom > clip->top || extent->top < clip->bottom)
    return FALSE;
  return !painting->paint->only_id
         || g_strcmp0 (cw_display_list_id (painting->list, item),
                       painting->paint->only_id) == 0;
}

/* A radius of nothing would leave cairo without a way back from its space, and
 * the whole context in error. */
#define LEAST_RADIUS 1e-6

static void
trace_flat_arc (const CwPainting *painting, const double *arc)
{
  cairo_line_to (painting->cr,
                 cw_painting_x (painting, arc[0] + arc[2] * cos (arc[5])),
                 cw_painting_y (painting, arc[1] + arc[3] * sin (arc[5])));
}

/* Cairo has circles alone: the ellipse is one in a stretched space, which is
 * mirrored too, as y runs down there. */
static void
trace_arc (const CwPainting *painting, const double *arc)
{
  cairo_t *cr = painting->cr;
  double across = painting->paint->scale * arc[2];
  double along = painting->paint->scale * arc[3];
  if (!(across >= LEAST_RADIUS) || !(along >= LEAST_RADIUS))
    {
      trace_flat_arc (painting, arc);
      return;
    }
  cairo_save (cr);
  cairo_translate (cr, cw_painting_x (painting, arc[0]), cw_painting_y (painting, arc[1]));
  cairo_scale (cr, across, -along);
  if (arc[5] >= arc[4])
    cairo_arc (cr, 0, 0, 1, arc[4], arc[5]);
  else
    cairo_arc_negative (cr, 0, 0, 1, arc[4], arc[5]);
  cairo_restore (cr);
}

static void
trace_op (const CwPainting *painting, guint8 op, const double *numbers)
{
  cairo_t *cr = painting->cr;
  if (op == CW_OP_CLOSE)
    cairo_close_path (cr);
  else if (op == CW_OP_ARC)
    trace_arc (painting, numbers);
  else if (op == CW_OP_MOVE)
    cairo_move_to (cr, cw_painting_x (painting, numbers[0]),
                   cw_painting_y (painting, numbers[1]));
  else
    cairo_line_to (cr, cw_painting_x (painting, numbers[0]),
                   cw_painting_y (painting, numbers[1]));
}

static void
trace_item (const CwPainting *painting, const CwDisplayItem *item)
{
  const double *numbers = cw_display_list_numbers (painting->list, item);
  for (guint i = 0; i < item->n_ops; i++)
    {
      const guint8 op = painting->list->ops->data[item->first + i];
      trace_op (painting, op, numbers);
      numbers += cw_path_op_numbers (op);
    }
}

static double
hatch_spacing (const CwPainting *painting)
{
  return MIN (HATCH_SPACING, HATCH_SPACING_MM * painting->paint->scale);
}

static void
set_colour_share (cairo_t *cr, const CwColour *colour, double share)
{
  const CwColour thin = { colour->red, colour->green, colour->blue,
                          colour->alpha * share };
  cw_painting_set_colour (cr, &thin);
}

/* Lines of 45°, tied to the wall's origin so that a hatch stays in place when
 * the view is moved. */
static void
trace_hatch (const CwPainting *painting, const CwStyleValues *style,
             const cairo_path_t *shape, double slope)
{
  const CwHatchLines lines = {
    .slope = slope,
    .x = painting->paint->x,
    .y = painting->paint->y,
    .spacing = hatch_spacing (painting),
    .is_dotted = style->hatch == CW_HATCH_DOTS,
  };
  cw_hatch_trace (painting->cr, shape, &lines);
}

static void
draw_hatch_lines (const CwPainting *painting, const CwStyleValues *style,
                  const cairo_path_t *shape)
{
  cairo_t *cr = painting->cr;
  if (style->hatch != CW_HATCH_RISING)
    trace_hatch (painting, style, shape, 1);
  if (style->hatch == CW_HATCH_RISING || style->hatch == CW_HATCH_CROSS)
    trace_hatch (painting, style, shape, -1);
  set_colour_share (cr, &style->line, HATCH_STRENGTH);
  cairo_set_dash (cr, NULL, 0, 0);
  cairo_set_line_width (cr, style->hatch == CW_HATCH_DOTS ? 1 : 0.5);
  cairo_stroke (cr);
}

static void
hatch (const CwPainting *painting, const CwStyleValues *style)
{
  cairo_t *cr = painting->cr;
  if (hatch_spacing (painting) < HATCH_LEAST)
    {
      set_colour_share (cr, &style->line, FLAT_STRENGTH);
      cairo_fill_preserve (cr);
      return;
    }
  cairo_path_t *kept = cairo_copy_path (cr);
  cairo_path_t *shape = cairo_copy_path_flat (cr);
  cairo_new_path (cr);
  draw_hatch_lines (painting, style, shape);
  cairo_append_path (cr, kept);
  cairo_path_destroy (shape);
  cairo_path_destroy (kept);
}

static void
stroke (cairo_t *cr, const CwStyleValues *style)
{
  guint n = 0;
  while (n < G_N_ELEMENTS (style->dash) && style->dash[n] > 0)
    n++;
  cairo_set_dash (cr, style->dash, (int) n, 0);
  cairo_set_line_width (cr, style->width);
  cw_painting_set_colour (cr, &style->line);
  cairo_stroke_preserve (cr);
}

/* Everything traced so far, in one go: a path an item costs twice as much. */
static void
ink_path (const CwPainting *painting, const CwStyleValues *style,
          gboolean is_closed)
{
  cairo_t *cr = painting->cr;
  if (is_closed && style->fill.alpha > 0)
    {
      cw_painting_set_colour (cr, &style->fill);
      cairo_fill_preserve (cr);
    }
  if (is_closed && style->hatch != CW_HATCH_NONE)
    hatch (painting, style);
  if (style->width > 0 && style->line.alpha > 0)
    stroke (cr, style);
  cairo_new_path (cr);
}

static void
find_clip (CwPainting *painting)
{
  double left, top, right, bottom;
  const CwPaint *paint = painting->paint;
  /* Strokes and texts reach a little beyond their points. */
  const double margin = 60;
  cairo_clip_extents (painting->cr, &left, &top, &right, &bottom);
  painting->clip
      = (CwExtent) { (left - margin - paint->x) / paint->scale,
                     (paint->y - bottom - margin) / paint->scale,
                     (right + margin - paint->x) / paint->scale,
                     (paint->y - top + margin) / paint->scale };
}

/* Traces the run of wanted paths of one style from @first on; returns where
 * the run ends. */
static gsize
paint_run (const CwPainting *painting, gsize first, const CwStyleValues *style)
{
  const CwDisplayItem *start = cw_display_list_item (painting->list, first);
  gsize i = first;
  for (; i < painting->list->items->len; i++)
    {
      const CwDisplayItem *item = cw_display_list_item (painting->list, i);
      if (item->kind != CW_SHAPE_OP_PATH || item->style != start->style
          || item->is_closed != start->is_closed)
        break;
      if (is_wanted (painting, item))
        trace_item (painting, item);
    }
  ink_path (painting, style, start->is_closed);
  return i;
}

void
cw_paint (cairo_t *cr, const CwDisplayList *list, const CwPaint *paint)
{
  g_return_if_fail (paint->scale > 0);

  CwPainting painting = { .cr = cr, .list = list, .paint = paint };
  cairo_save (cr);
  cairo_new_path (cr);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_MITER);
  find_clip (&painting);
  for (gsize i = 0; i < list->items->len;)
    {
      const CwDisplayItem *item = cw_display_list_item (list, i);
      const CwStyleValues *style
          = cw_style_values (paint->palette, item->style);
      if (item->kind == CW_SHAPE_OP_PATH)
        i = paint_run (&painting, i, style);
      else
        {
          if (is_wanted (&painting, item))
            cw_painting_text (&painting, item, style);
          i++;
        }
    }
  cairo_restore (cr);
  cw_painting_clear_texts (&painting);
}

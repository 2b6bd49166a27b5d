/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The dimensions that somebody drew, each where it was put.
 */
#include <math.h>

#include "cw-dimension.h"
#include "cw-elevation-drawing.h"
#include "cw-elevation-layers.h"

/* Points on paper. */
#define TICK 2.5
#define OVERSHOOT 3.0
#define GAP 4.0
#define FIGURE_RISE 6.0
/* Of a figure's character, about. */
#define FIGURE_WIDTH 5.0

/* Of one dimension: its line, in mm, and the unit vector along it. */
typedef struct
{
  const CwLayerDrawing *drawing;
  const CwDimension *dimension;
  double x[2], y[2];
  double along_x, along_y;
} Drawn;

static void
find_line (Drawn *drawn)
{
  CwPoint line[2];
  double way;

  cw_dimension_line (drawn->dimension, line);
  for (guint i = 0; i < 2; i++)
    {
      drawn->x[i] = (double) line[i].x / CW_NM_PER_MM;
      drawn->y[i] = (double) line[i].y / CW_NM_PER_MM;
    }
  way = hypot (drawn->x[1] - drawn->x[0], drawn->y[1] - drawn->y[0]);
  drawn->along_x = way > 0 ? (drawn->x[1] - drawn->x[0]) / way : 1;
  drawn->along_y = way > 0 ? (drawn->y[1] - drawn->y[0]) / way : 0;
}

static void
add_line (const Drawn *drawn, double x0, double y0, double x1, double y1)
{
  cw_display_list_move_to (drawn->drawing->list, x0, y0);
  cw_display_list_line_to (drawn->drawing->list, x1, y1);
}

/* From near the point that is measured to a little past the line; none where
 * the line runs through the point. */
static void
add_lead (const Drawn *drawn, CwPoint point, guint end)
{
  const double unit = drawn->drawing->mm_per_unit;
  const double x = (double) point.x / CW_NM_PER_MM;
  const double y = (double) point.y / CW_NM_PER_MM;
  const double dx = drawn->x[end] - x, dy = drawn->y[end] - y;
  const double way = hypot (dx, dy);

  if (way <= GAP * unit)
    return;
  add_line (drawn, x + dx / way * GAP * unit, y + dy / way * GAP * unit,
            drawn->x[end] + dx / way * OVERSHOOT * unit,
            drawn->y[end] + dy / way * OVERSHOOT * unit);
}

/* Half way between along the line and across it. */
static void
add_tick (const Drawn *drawn, guint end)
{
  const double reach = TICK * drawn->drawing->mm_per_unit;
  const double dx = (drawn->along_x - drawn->along_y) * reach;
  const double dy = (drawn->along_y + drawn->along_x) * reach;

  add_line (drawn, drawn->x[end] - dx, drawn->y[end] - dy,
            drawn->x[end] + dx, drawn->y[end] + dy);
}

/* Read from below, or from the right. */
static double
reading_angle (const Drawn *drawn)
{
  const double angle = atan2 (drawn->along_y, drawn->along_x);

  if (angle > G_PI_2 + 1e-9)
    return angle - G_PI;
  return angle <= -G_PI_2 + 1e-9 ? angle + G_PI : angle;
}

/* Over the middle of the line; where that is too short, past its end. */
static void
add_figure (const Drawn *drawn)
{
  const CwLayerDrawing *drawing = drawn->drawing;
  const double unit = drawing->mm_per_unit;
  const double way
      = hypot (drawn->x[1] - drawn->x[0], drawn->y[1] - drawn->y[0]);
  const double angle = reading_angle (drawn);
  const double up_x = -sin (angle), up_y = cos (angle);
  g_autofree char *text = cw_length_format_dimension (
      cw_dimension_length (drawn->dimension), drawing->style);
  const double width
      = FIGURE_WIDTH * (double) g_utf8_strlen (text, -1) * unit;
  const double past = way / 2 + width / 2 + 2 * OVERSHOOT * unit;
  const double along = width > way - TICK * unit ? past : 0;
  const double rise = along > 0 ? 0 : FIGURE_RISE * unit;

  cw_display_list_add_text (
      drawing->list, CW_STYLE_DIMENSION_TEXT, drawn->dimension->id,
      (drawn->x[0] + drawn->x[1]) / 2 + along * drawn->along_x + rise * up_x,
      (drawn->y[0] + drawn->y[1]) / 2 + along * drawn->along_y + rise * up_y,
      angle, CW_ANCHOR_CENTRE, text);
}

static void
draw_one (const CwLayerDrawing *drawing, const CwDimension *dimension)
{
  Drawn drawn = { .drawing = drawing, .dimension = dimension };

  find_line (&drawn);
  cw_display_list_begin (drawing->list, CW_STYLE_DIMENSION, dimension->id);
  add_line (&drawn, drawn.x[0], drawn.y[0], drawn.x[1], drawn.y[1]);
  add_lead (&drawn, cw_dimension_from (dimension), 0);
  add_lead (&drawn, cw_dimension_to (dimension), 1);
  add_tick (&drawn, 0);
  add_tick (&drawn, 1);
  cw_display_list_end (drawing->list);
  add_figure (&drawn);
}

void
cw_draw_dimension (CwDisplayList *list, const CwDimension *dimension,
                   const CwTextStyle *style, double mm_per_unit)
{
  const CwLayerDrawing drawing
      = { .list = list, .style = style, .mm_per_unit = mm_per_unit };

  draw_one (&drawing, dimension);
}

void
cw_draw_drawn_dimensions (const CwLayerDrawing *drawing)
{
  const GPtrArray *dimensions = drawing->wall->dimensions;

  for (guint i = 0; i < dimensions->len; i++)
    draw_one (drawing, g_ptr_array_index (dimensions, i));
}

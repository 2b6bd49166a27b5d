/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Bits of overlays that tools share.
 */
#include "cw-tool-private.h"

#include <math.h>

#define MM 1e6

static gboolean
is_guide (CwSnapKind kind)
{
  return kind == CW_SNAP_ALIGN_X || kind == CW_SNAP_ALIGN_Y
         || kind == CW_SNAP_JOINT_X || kind == CW_SNAP_JOINT_Y;
}

/* A ring about a corner, a triangle at a middle, a cross on a side: told
 * apart by shape. */
static void
draw_ring (CwDisplayList *list, CwPoint at, double radius)
{
  double x = (double) at.x / MM, y = (double) at.y / MM;

  cw_display_list_begin (list, CW_STYLE_GUIDE, NULL);
  cw_display_list_move_to (list, x + radius, y);
  cw_display_list_arc (list, x, y, radius, radius, 0, 2 * G_PI);
  cw_display_list_close (list);
  cw_display_list_end (list);
}

static void
draw_square (CwDisplayList *list, CwPoint at, double radius)
{
  double x = (double) at.x / MM, y = (double) at.y / MM;

  cw_display_list_begin (list, CW_STYLE_GUIDE, NULL);
  cw_display_list_move_to (list, x - radius, y - radius);
  cw_display_list_line_to (list, x + radius, y - radius);
  cw_display_list_line_to (list, x + radius, y + radius);
  cw_display_list_line_to (list, x - radius, y + radius);
  cw_display_list_close (list);
  cw_display_list_end (list);
}

static void
draw_half_ring (CwDisplayList *list, CwPoint at, double radius)
{
  double x = (double) at.x / MM, y = (double) at.y / MM;

  cw_display_list_begin (list, CW_STYLE_GUIDE, NULL);
  cw_display_list_move_to (list, x + radius, y);
  cw_display_list_arc (list, x, y, radius, radius, 0, G_PI);
  cw_display_list_close (list);
  cw_display_list_end (list);
}

static void
draw_triangle (CwDisplayList *list, CwPoint at, double radius)
{
  double x = (double) at.x / MM, y = (double) at.y / MM;

  cw_display_list_begin (list, CW_STYLE_GUIDE, NULL);
  cw_display_list_move_to (list, x - radius, y - radius * 0.6);
  cw_display_list_line_to (list, x + radius, y - radius * 0.6);
  cw_display_list_line_to (list, x, y + radius);
  cw_display_list_close (list);
  cw_display_list_end (list);
}

static void
draw_cross (CwDisplayList *list, CwPoint at, double radius)
{
  double x = (double) at.x / MM, y = (double) at.y / MM;

  cw_display_list_begin (list, CW_STYLE_GUIDE, NULL);
  cw_display_list_move_to (list, x - radius, y - radius);
  cw_display_list_line_to (list, x + radius, y + radius);
  cw_display_list_move_to (list, x - radius, y + radius);
  cw_display_list_line_to (list, x + radius, y - radius);
  cw_display_list_end (list);
}

/* Two short bars along a joint, one on each side of it. */
static void
draw_bars (CwDisplayList *list, CwPoint at, double radius, gboolean upright)
{
  double x = (double) at.x / MM, y = (double) at.y / MM;
  double half = radius / 2;

  cw_display_list_begin (list, CW_STYLE_GUIDE, NULL);
  for (int way = -1; way <= 1; way += 2)
    {
      double dx = upright ? way * half : 0, dy = upright ? 0 : way * half;
      double along_x = upright ? 0 : radius, along_y = upright ? radius : 0;

      cw_display_list_move_to (list, x + dx - along_x, y + dy - along_y);
      cw_display_list_line_to (list, x + dx + along_x, y + dy + along_y);
    }
  cw_display_list_end (list);
}

/* Both gaps that are alike, each with its size. */
static void
draw_gaps (CwTool *tool, CwDisplayList *list, const CwSnapGap *gap,
           double nm_per_pixel)
{
  for (guint i = 0; i < 2; i++)
    {
      cw_display_list_add_line (list, CW_STYLE_GUIDE, NULL, gap->from[i],
                                gap->to[i]);
      cw_tool_draw_length (tool, list, gap->from[i], gap->to[i],
                           nm_per_pixel);
    }
}

/* A ring on a corner, a square on one of the sheet's, a lying half ring at a springing, a standing triangle at
 * a middle, one on its point at a crown, a cross on a side. */
static void
draw_sign (CwDisplayList *list, CwSnapKind kind, CwPoint at, double radius)
{
  switch (kind)
    {
    case CW_SNAP_CORNER:
      draw_ring (list, at, radius);
      break;
    case CW_SNAP_SPRINGING:
      draw_half_ring (list, at, radius);
      break;
    case CW_SNAP_CROWN:
      draw_triangle (list, at, -radius);
      break;
    case CW_SNAP_MIDDLE:
      draw_triangle (list, at, radius);
      break;
    case CW_SNAP_SHEET_CORNER:
      draw_square (list, at, radius);
      break;
    case CW_SNAP_SIDE:
    case CW_SNAP_SHEET_LINE:
      draw_cross (list, at, radius);
      break;
    default:
      break;
    }
}

/* Of the two coordinates' kinds. */
static CwSnapKind
telling_kind (const CwSnap *snap)
{
  if (snap->x_kind == CW_SNAP_NONE)
    return snap->y_kind;
  return snap->y_kind == CW_SNAP_NONE ? snap->x_kind
                                      : MIN (snap->x_kind, snap->y_kind);
}

/* Beside the pointer, where lengths of what is drawn do not stand. */
static void
draw_words (CwTool *tool, CwDisplayList *list, double nm_per_pixel)
{
  const char *words = cw_tool_snap_words (tool);

  if (words)
    cw_tool_draw_label (list, tool->snap.at, CW_ANCHOR_LEFT, 14, 14,
                        nm_per_pixel, words);
}

void
cw_tool_draw_snap (CwTool *tool, CwDisplayList *list, double nm_per_pixel)
{
  const CwSnap *snap = &tool->snap;
  double radius = CW_TOOL_HANDLE_PIXELS * nm_per_pixel / MM;

  if (!tool->shows_snap)
    return;
  if (is_guide (snap->x_kind))
    cw_display_list_add_line (list, CW_STYLE_GUIDE, NULL, snap->x_from,
                              snap->at);
  if (is_guide (snap->y_kind))
    cw_display_list_add_line (list, CW_STYLE_GUIDE, NULL, snap->y_from,
                              snap->at);
  if (snap->x_kind == CW_SNAP_JOINT_X)
    draw_bars (list, snap->at, radius, TRUE);
  if (snap->y_kind == CW_SNAP_JOINT_Y)
    draw_bars (list, snap->at, radius, FALSE);
  if (snap->x_kind == CW_SNAP_GAP)
    draw_gaps (tool, list, &tool->gap, nm_per_pixel);
  if (snap->y_kind == CW_SNAP_GAP)
    draw_gaps (tool, list, &tool->gap_up, nm_per_pixel);
  draw_sign (list, telling_kind (snap), snap->at, radius);
  draw_words (tool, list, nm_per_pixel);
}

void
cw_tool_draw_handle (CwDisplayList *list, CwPoint at, double nm_per_pixel)
{
  CwLength half = (CwLength) llround (CW_TOOL_HANDLE_PIXELS * nm_per_pixel);
  CwBox box = { at.x - half, at.y - half, at.x + half, at.y + half };

  cw_display_list_add_box (list, CW_STYLE_HANDLE, NULL, &box);
}

void
cw_tool_draw_reference (CwDisplayList *list, CwPoint at, double nm_per_pixel)
{
  CwLength half = (CwLength) llround (1.5 * CW_TOOL_HANDLE_PIXELS
                                      * nm_per_pixel);
  CwBox box = { at.x - half, at.y - half, at.x + half, at.y + half };

  cw_display_list_add_box (list, CW_STYLE_GUIDE, NULL, &box);
  draw_cross (list, at, (double) half / MM);
}

void
cw_tool_draw_label (CwDisplayList *list, CwPoint at, CwAnchor anchor,
                    double dx_pixels, double dy_pixels, double nm_per_pixel,
                    const char *text)
{
  double x = ((double) at.x + dx_pixels * nm_per_pixel) / MM;
  double y = ((double) at.y + dy_pixels * nm_per_pixel) / MM;

  cw_display_list_add_text (list, CW_STYLE_DIMENSION_TEXT, NULL, x, y, 0,
                            anchor, text);
}

void
cw_tool_draw_length (CwTool *tool, CwDisplayList *list, CwPoint from,
                     CwPoint to, double nm_per_pixel)
{
  double length = hypot ((double) (to.x - from.x), (double) (to.y - from.y));
  CwPoint middle = { from.x + (to.x - from.x) / 2,
                     from.y + (to.y - from.y) / 2 };
  gboolean steep = ABS (to.y - from.y) > ABS (to.x - from.x);
  g_autofree char *text
      = cw_length_format ((CwLength) llround (length), &tool->style);

  if (length < 12 * nm_per_pixel)
    return;
  if (steep)
    cw_tool_draw_label (list, middle, CW_ANCHOR_LEFT, 10, 0, nm_per_pixel,
                        text);
  else
    cw_tool_draw_label (list, middle, CW_ANCHOR_CENTRE, 0, 12, nm_per_pixel,
                        text);
}

void
cw_tool_draw_size (CwTool *tool, CwDisplayList *list, const CwBox *box,
                   double nm_per_pixel)
{
  CwPoint low_left = { box->left, box->bottom };
  CwPoint low_right = { box->right, box->bottom };
  CwPoint high_right = { box->right, box->top };

  cw_tool_draw_length (tool, list, low_left, low_right, nm_per_pixel);
  cw_tool_draw_length (tool, list, low_right, high_right, nm_per_pixel);
}

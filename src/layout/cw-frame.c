/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-frame.h"

CwFrame
cw_frame_new (const CwSettingOut *setting_out, const CwBox *wall)
{
  return (CwFrame) {
    .is_upright = setting_out->run == CW_RUN_VERTICAL,
    .from_right = setting_out->start == CW_START_RIGHT,
    .wall = *wall,
  };
}

static CwInterval
interval (CwLength a, CwLength b)
{
  return (CwInterval) { MIN (a, b), MAX (a, b) };
}

/* From the wall's corner to x and back: the same sum either way. */
static CwLength
turn_x (const CwFrame *frame, CwLength x)
{
  return frame->from_right ? frame->wall.right - x : x - frame->wall.left;
}

static CwLength
to_x (const CwFrame *frame, CwLength x)
{
  return frame->from_right ? frame->wall.right - x : x + frame->wall.left;
}

static CwInterval
x_extent (const CwFrame *frame, const CwBox *box)
{
  return interval (turn_x (frame, box->left), turn_x (frame, box->right));
}

static CwInterval
y_extent (const CwFrame *frame, const CwBox *box)
{
  return interval (box->bottom - frame->wall.bottom,
                   box->top - frame->wall.bottom);
}

CwInterval
cw_frame_along_of (const CwFrame *frame, const CwBox *box)
{
  return frame->is_upright ? y_extent (frame, box) : x_extent (frame, box);
}

CwInterval
cw_frame_across_of (const CwFrame *frame, const CwBox *box)
{
  return frame->is_upright ? x_extent (frame, box) : y_extent (frame, box);
}

CwInterval
cw_frame_along (const CwFrame *frame)
{
  return cw_frame_along_of (frame, &frame->wall);
}

CwInterval
cw_frame_across (const CwFrame *frame)
{
  return cw_frame_across_of (frame, &frame->wall);
}

CwPoint
cw_frame_point (const CwFrame *frame, CwLength along, CwLength across)
{
  CwLength x = frame->is_upright ? across : along;
  CwLength y = frame->is_upright ? along : across;
  return cw_point (to_x (frame, x), y + frame->wall.bottom);
}

CwBox
cw_frame_box (const CwFrame *frame, CwInterval along, CwInterval across)
{
  CwPoint a = cw_frame_point (frame, along.low, across.low);
  CwPoint b = cw_frame_point (frame, along.high, across.high);
  return (CwBox) { MIN (a.x, b.x), a.y, MAX (a.x, b.x), b.y };
}

/* The line of constant `across` (or of constant `along`) on the wall. */
static CwAxis
line_on_wall (const CwFrame *frame, gboolean is_upright, CwLength at,
              CwLength *on_wall)
{
  *on_wall = is_upright ? to_x (frame, at) : at + frame->wall.bottom;
  return is_upright ? CW_AXIS_X : CW_AXIS_Y;
}

void
cw_frame_cut (const CwFrame *frame, const CwRegion *region, CwLength across,
              CwRegion **before, CwRegion **beyond)
{
  CwLength at;
  CwAxis axis = line_on_wall (frame, frame->is_upright, across, &at);
  gboolean swaps = frame->is_upright && frame->from_right;
  cw_region_split (region, axis, at, 0, swaps ? beyond : before,
                   swaps ? before : beyond);
}

static GArray *
spans (const CwFrame *frame, const CwRegion *region, gboolean line_is_upright,
       CwLength at)
{
  CwLength on_wall;
  CwAxis axis = line_on_wall (frame, line_is_upright, at, &on_wall);
  g_autoptr (GArray) places = cw_region_spans (region, axis, on_wall);
  gboolean turned = !line_is_upright && frame->from_right;
  guint n = places->len / 2;
  GArray *result = g_array_sized_new (FALSE, FALSE, sizeof (CwInterval), n);
  for (guint i = 0; i < n; i++)
    {
      guint from = turned ? n - 1 - i : i;
      CwLength a = g_array_index (places, CwLength, 2 * from);
      CwLength b = g_array_index (places, CwLength, 2 * from + 1);
      CwBox box = { a, a, b, b };
      CwInterval span = line_is_upright ? y_extent (frame, &box)
                                        : x_extent (frame, &box);
      g_array_append_val (result, span);
    }
  return result;
}

GArray *
cw_frame_spans_along (const CwFrame *frame, const CwRegion *region,
                      CwLength across)
{
  return spans (frame, region, frame->is_upright, across);
}

GArray *
cw_frame_spans_across (const CwFrame *frame, const CwRegion *region,
                       CwLength along)
{
  return spans (frame, region, !frame->is_upright, along);
}

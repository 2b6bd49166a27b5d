/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a quantity comes from, lit up: its trace, as it was measured.
 */
#include "cw-elevation-drawing.h"
#include "cw-trace.h"

/* Of a dot, mm. */
#define DOT 12.0

static void
light_dot (CwDisplayList *list, CwPoint point)
{
  double x = (double) point.x / CW_NM_PER_MM;
  double y = (double) point.y / CW_NM_PER_MM;

  cw_display_list_begin (list, CW_STYLE_LIT, NULL);
  cw_display_list_move_to (list, x + DOT, y);
  cw_display_list_arc (list, x, y, DOT, DOT, 0, 2 * G_PI);
  cw_display_list_close (list);
  cw_display_list_end (list);
}

static void
light (CwDisplayList *list, const CwTraceItem *item)
{
  switch (item->kind)
    {
    case CW_TRACE_REGION:
      cw_display_list_add_region (list, CW_STYLE_LIT, NULL, item->region);
      break;
    case CW_TRACE_LINE:
      cw_display_list_add_side (list, CW_STYLE_LIT, NULL, &item->side,
                                item->end);
      break;
    case CW_TRACE_POINT:
      light_dot (list, item->side.start);
      break;
    }
}

CwDisplayList *
cw_elevation_drawing_lit (const CwWallTakeoff *takeoff,
                          const CwQuantityType *type, const char *variant)
{
  CwDisplayList *list = cw_display_list_new ();
  g_autoptr (GArray) trace = cw_wall_trace (takeoff, type, variant);

  for (guint i = 0; i < trace->len; i++)
    light (list, &g_array_index (trace, CwTraceItem, i));
  return list;
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the tools share: the wall they work on, snapping, editing.
 */
#include "cw-tool-private.h"

#include <math.h>

const CwProject *
cw_tool_project (CwTool *tool)
{
  return cw_document_project (tool->document);
}

const CwElevation *
cw_tool_elevation (CwTool *tool)
{
  return cw_document_elevation (tool->document);
}

const CwWall *
cw_tool_wall (CwTool *tool)
{
  const CwElevation *elevation = cw_tool_elevation (tool);
  CwWall *former = g_steal_pointer (&tool->wall);

  if (elevation)
    tool->wall = cw_wall_renew (former, cw_tool_project (tool), elevation);
  g_clear_pointer (&former, cw_wall_unref);
  return tool->wall;
}

CwLength
cw_tool_reach (const CwPointer *pointer, double pixels)
{
  return (CwLength) llround (pixels * pointer->nm_per_pixel);
}

gboolean
cw_tool_is_apart (const CwPointer *pointer, CwPoint a, CwPoint b,
                  double pixels)
{
  return hypot ((double) (a.x - b.x), (double) (a.y - b.y))
         >= pixels * pointer->nm_per_pixel;
}

/* The scale is yet to be found with the sheet's points as they are. */
static CwLength
drawn_step (CwTool *tool)
{
  if (tool->kind == CW_TOOL_SCALE)
    return 0;
  return tool->style.units == CW_UNITS_US ? CW_INCHES (1) / 16 : CW_MM (1);
}

CwSnapField
cw_tool_snap_field (CwTool *tool, const CwPointer *pointer)
{
  gboolean free = (pointer->hold & CW_HOLD_FREE) != 0;

  return (CwSnapField) {
    .wall = cw_tool_wall (tool),
    .joints = tool->joints,
    .drawn = tool->drawn,
    .drawn_at = tool->drawn_at,
    .drawn_step = drawn_step (tool),
    .radius = free ? 0 : cw_tool_reach (pointer, CW_TOOL_SNAP_PIXELS),
    .grid = cw_snap_grid (tool->style.units, pointer->nm_per_pixel),
  };
}

CwPoint
cw_tool_snap (CwTool *tool, const CwPointer *pointer, const CwPoint *points,
              gsize n_points, const char *const *skip_ids)
{
  CwSnapField field = cw_tool_snap_field (tool, pointer);

  field.points = points;
  field.n_points = n_points;
  field.skip_ids = skip_ids;
  tool->snap = cw_snap (&field, pointer->at);
  tool->shows_snap = TRUE;
  return tool->snap.at;
}

static gboolean
is_gap_better (CwSnapKind kind, CwLength move, const CwSnapGap *gap)
{
  return kind == CW_SNAP_NONE || kind == CW_SNAP_GRID
         || ABS (gap->move) < ABS (move);
}

void
cw_tool_snap_gaps (CwTool *tool, const CwSnapField *field, const CwBox *box,
                   CwPoint *by)
{
  CwBox level = *box, upright = *box;

  level.bottom += by->y;
  level.top += by->y;
  upright.left += by->x;
  upright.right += by->x;
  if (cw_snap_gap (field, &level, FALSE, &tool->gap)
      && is_gap_better (tool->snap.x_kind, by->x, &tool->gap))
    {
      by->x = tool->gap.move;
      tool->snap.x_kind = CW_SNAP_GAP;
    }
  if (cw_snap_gap (field, &upright, TRUE, &tool->gap_up)
      && is_gap_better (tool->snap.y_kind, by->y, &tool->gap_up))
    {
      by->y = tool->gap_up.move;
      tool->snap.y_kind = CW_SNAP_GAP;
    }
}

CwPoint
cw_tool_straighten (CwPoint from, CwPoint at)
{
  if (ABS (at.x - from.x) >= ABS (at.y - from.y))
    return cw_point (at.x, from.y);
  return cw_point (from.x, at.y);
}

void
cw_tool_edit (CwTool *tool, const CwProject *project, const char *name,
              const char *select)
{
  cw_document_seal (tool->document);
  cw_document_edit (tool->document, project, name, NULL);
  if (select)
    cw_document_select (tool->document,
                        (const char *const[]) { select, NULL });
}

void
cw_tool_placed (CwTool *tool)
{
  tool->shows_snap = FALSE;
  tool->done = (tool->pointer.hold & CW_HOLD_ADD) == 0;
}

char *
cw_tool_size_text (CwTool *tool, CwLength width, CwLength height)
{
  g_autofree char *wide = cw_length_format (width, &tool->style);
  g_autofree char *high = cw_length_format (height, &tool->style);

  return g_strdup_printf ("%s × %s", wide, high);
}

guint
cw_tool_way_fields (CwTool *tool, CwTypedField *fields, CwPoint from,
                    CwPoint to)
{
  double dx = fabs ((double) (to.x - from.x));
  double dy = fabs ((double) (to.y - from.y));
  gboolean has_now = tool->has_pointer && !cw_point_equal (from, to);

  fields[0] = (CwTypedField) { N_ ("Length"), CW_TYPED_SIZE, has_now,
                               (CwLength) llround (hypot (dx, dy)), 0 };
  fields[1] = (CwTypedField) { N_ ("Angle or pitch"), CW_TYPED_SLOPE, has_now,
                               0, atan2 (dy, dx) * 180 / G_PI };
  return 2;
}

guint
cw_tool_size_fields (CwTypedField *fields, const char *width,
                     const char *height, const CwBox *now)
{
  fields[0] = (CwTypedField) { width, CW_TYPED_SIZE, now != NULL,
                               now ? cw_box_width (now) : 0, 0 };
  fields[1] = (CwTypedField) { height, CW_TYPED_SIZE, now != NULL,
                               now ? cw_box_height (now) : 0, 0 };
  return 2;
}

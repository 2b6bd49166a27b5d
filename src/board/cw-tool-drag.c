/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-tool-drag.h"

#include <string.h>

#define MERGE "drag"

static const CwElevation *
elevation_of (const CwDrag *drag)
{
  return drag->wall->elevation;
}

static const char *const *
ids_of (const CwDrag *drag)
{
  return (const char *const *) drag->ids;
}

/* Bounds of all that is dragged. */
static gboolean
find_box (CwDrag *drag)
{
  gboolean found = FALSE;

  for (char **id = drag->ids; *id; id++)
    {
      CwBox box;

      if (!cw_hit_bounds (drag->wall, *id, &box))
        continue;
      drag->box = found ? cw_box_around (&drag->box, &box) : box;
      found = TRUE;
    }
  return found;
}

static void
begin (CwDrag *drag, CwTool *tool)
{
  const CwWall *wall = cw_tool_wall (tool);

  cw_drag_clear (drag);
  if (wall == NULL)
    return;
  drag->base = cw_node_ref (cw_tool_project (tool));
  drag->shown = drag->base;
  drag->wall = cw_wall_ref (wall);
  drag->ids = g_strdupv ((char **) cw_document_selection (tool->document));
  cw_document_seal (tool->document);
}

void
cw_drag_begin_move (CwDrag *drag, CwTool *tool, CwPoint from)
{
  begin (drag, tool);
  drag->from = from;
  if (drag->base && !find_box (drag))
    cw_drag_clear (drag);
}

void
cw_drag_begin_handle (CwDrag *drag, CwTool *tool, const CwHandle *handle)
{
  begin (drag, tool);
  drag->by_handle = TRUE;
  drag->handle = *handle;
  if (drag->base && handle->kind != CW_HANDLE_CORNER && !find_box (drag))
    cw_drag_clear (drag);
}

static void
show (CwDrag *drag, CwTool *tool, const CwProject *project, const char *name)
{
  drag->shown = project;
  cw_document_edit (tool->document, project, name, MERGE);
}

/* Moved boxes fall on what stays, by the nearest of their corners. */
static CwPoint
way_to (CwDrag *drag, CwTool *tool, const CwPointer *pointer)
{
  CwPoint way = { pointer->at.x - drag->from.x, pointer->at.y - drag->from.y };
  CwSnapField field = cw_tool_snap_field (tool, pointer);
  CwBox moved = drag->box;
  CwPoint by;

  if (pointer->hold & CW_HOLD_STRAIGHT)
    way = cw_tool_straighten (cw_point (0, 0), way);
  moved.left += way.x;
  moved.right += way.x;
  moved.bottom += way.y;
  moved.top += way.y;
  field.wall = drag->wall;
  field.skip_ids = ids_of (drag);
  tool->snap = cw_snap_box (&field, &moved, &by);
  tool->shows_snap = TRUE;
  cw_tool_snap_gaps (tool, &field, &moved, &by);
  if (!(pointer->hold & CW_HOLD_STRAIGHT))
    return cw_point (way.x + by.x, way.y + by.y);
  return cw_point (way.x == 0 ? 0 : way.x + by.x,
                   way.y == 0 ? 0 : way.y + by.y);
}

static void
move_to (CwDrag *drag, CwTool *tool, const CwPointer *pointer)
{
  CwPoint way = way_to (drag, tool, pointer);
  g_autoptr (CwProject) project = cw_edit_move (
      drag->base, elevation_of (drag), ids_of (drag), way.x, way.y);

  if (cw_edit_is_in_bounds (project, ids_of (drag)))
    show (drag, tool, project, _ ("Move"));
}

/* The item that the handle belongs to, as it is drawn. */
static const CwNode *
handled_item (const CwDrag *drag)
{
  return cw_node_find (&elevation_of (drag)->node, drag->ids[0]);
}

static CwPoint
handle_to (CwDrag *drag, CwTool *tool, const CwPointer *pointer)
{
  CwSnapField field = cw_tool_snap_field (tool, pointer);

  field.wall = drag->wall;
  field.skip_ids = ids_of (drag);
  tool->snap = cw_snap (&field, pointer->at);
  tool->shows_snap = TRUE;
  return tool->snap.at;
}

static void
replace_by (CwDrag *drag, CwTool *tool, const CwNode *item, const CwNode *by,
            const char *name)
{
  g_autoptr (CwProject) project = cw_edit_replace (drag->base, item, by);

  show (drag, tool, project, name);
}

static void
resize_to (CwDrag *drag, CwTool *tool, const CwPointer *pointer)
{
  const CwNode *item = handled_item (drag);
  CwBox box = cw_handle_drag (&drag->box, drag->handle.kind,
                              handle_to (drag, tool, pointer));
  g_autoptr (CwNode) by = NULL;

  if (item == NULL || !cw_edit_box_is_sound (&box))
    return;
  by = cw_edit_fill (drag->base, item, &box);
  replace_by (drag, tool, item, by, _ ("Resize"));
}

static void
spring_to (CwDrag *drag, CwTool *tool, const CwPointer *pointer)
{
  const CwNode *item = handled_item (drag);
  CwPoint to = handle_to (drag, tool, pointer);
  g_autoptr (CwNode) by = NULL;

  if (item == NULL)
    return;
  by = cw_edit_spring (drag->base, item, to.y);
  replace_by (drag, tool, item, by, _ ("Change rise"));
}

/* One of a dimension's points, or its line. */
static void
measure_to (CwDrag *drag, CwTool *tool, const CwPointer *pointer)
{
  const CwNode *item = handled_item (drag);
  CwPoint to = handle_to (drag, tool, pointer);
  gboolean is_line = drag->handle.kind == CW_HANDLE_LINE;
  g_autoptr (CwNode) by = NULL;

  if (item == NULL || !cw_edit_point_is_sound (to))
    return;
  by = is_line ? cw_edit_dimension_line (item, to)
               : cw_edit_dimension_end (item, drag->handle.corner, to);
  replace_by (drag, tool, item, by,
              is_line ? _ ("Move dimension line") : _ ("Move dimension"));
}

/* The other corners of the outline, to come into line with. */
static CwPoint
corner_to (CwDrag *drag, CwTool *tool, const CwPointer *pointer,
           const GArray *corners)
{
  g_autofree CwPoint *others = g_new0 (CwPoint, MAX (corners->len, 1));
  CwSnapField field = cw_tool_snap_field (tool, pointer);
  gsize n = 0;

  for (guint i = 0; i < corners->len; i++)
    if (i != drag->handle.corner)
      others[n++] = g_array_index (corners, CwCorner, i).at;
  field.wall = drag->wall;
  field.skip_ids = ids_of (drag);
  field.points = others;
  field.n_points = n;
  tool->snap = cw_snap (&field, pointer->at);
  tool->shows_snap = TRUE;
  return tool->snap.at;
}

static void
set_trouble (CwDrag *drag, char *trouble)
{
  g_free (drag->trouble);
  drag->trouble = trouble;
}

/* The outline follows as long as it is a wall. */
static void
reshape_to (CwDrag *drag, CwTool *tool, const CwPointer *pointer)
{
  const CwElevation *elevation = elevation_of (drag);
  const CwOutline *outline = (const CwOutline *) elevation->outline;
  g_autoptr (GArray) corners = cw_corners_from_list (outline->corners);
  g_autoptr (CwProject) project = NULL;
  CwOutlineCheck check;
  CwPoint to = corner_to (drag, tool, pointer, corners);

  g_array_index (corners, CwCorner, drag->handle.corner).at = to;
  check = cw_outline_check ((CwCorner *) corners->data, corners->len);
  set_trouble (drag, check.fault == CW_OUTLINE_VALID
                         ? NULL
                         : cw_outline_check_text (&check));
  if (drag->trouble || !cw_edit_point_is_sound (to))
    return;
  project = cw_edit_set_corners (drag->base, elevation,
                                 (CwCorner *) corners->data, corners->len);
  show (drag, tool, project, _ ("Move corner"));
}

void
cw_drag_to (CwDrag *drag, CwTool *tool, const CwPointer *pointer)
{
  if (drag->base == NULL)
    return;
  if (!drag->by_handle)
    move_to (drag, tool, pointer);
  else if (drag->handle.kind == CW_HANDLE_CORNER)
    reshape_to (drag, tool, pointer);
  else if (drag->handle.kind == CW_HANDLE_SPRINGING)
    spring_to (drag, tool, pointer);
  else if (drag->handle.kind & (CW_HANDLE_END | CW_HANDLE_LINE))
    measure_to (drag, tool, pointer);
  else
    resize_to (drag, tool, pointer);
}

void
cw_drag_end (CwDrag *drag, CwTool *tool)
{
  if (drag->base == NULL)
    return;
  cw_document_seal (tool->document);
  tool->shows_snap = FALSE;
  cw_drag_clear (drag);
}

void
cw_drag_give_up (CwDrag *drag, CwTool *tool)
{
  g_autoptr (CwProject) base = NULL;

  if (drag->base == NULL)
    return;
  base = cw_node_ref (drag->base);
  if (cw_tool_project (tool) != base)
    show (drag, tool, base, _ ("Move"));
  cw_drag_end (drag, tool);
}

gboolean
cw_drag_goes_on (const CwDrag *drag, CwTool *tool)
{
  return drag->base == NULL || drag->shown == cw_tool_project (tool);
}

void
cw_drag_clear (CwDrag *drag)
{
  g_clear_pointer (&drag->base, cw_node_unref);
  g_clear_pointer (&drag->wall, cw_wall_unref);
  g_clear_pointer (&drag->ids, g_strfreev);
  g_free (drag->trouble);
  *drag = (CwDrag) { .base = NULL };
}

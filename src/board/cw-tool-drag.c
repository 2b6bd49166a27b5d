/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-tool-drag.h"

#include <math.h>
#include <string.h>

#include "cw-dimension.h"
#include "cw-edit-corners.h"

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
  if (drag->base && !(handle->kind & (CW_HANDLE_CORNER | CW_HANDLE_BOW))
      && !find_box (drag))
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
resize_to (CwDrag *drag, CwTool *tool, CwPoint to)
{
  const CwNode *item = handled_item (drag);
  CwBox box = cw_handle_drag (&drag->box, drag->handle.kind, to);
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

/* Shows it, or says why it is no outline. @project: (nullable): taken. */
static void
show_corners (CwDrag *drag, CwTool *tool, CwProject *project, char *fault,
              const char *name)
{
  g_autoptr (CwProject) made = project;

  set_trouble (drag, fault);
  if (made && !fault)
    show (drag, tool, made, name);
}

/* The outline follows as long as it is one. */
static void
reshape_to (CwDrag *drag, CwTool *tool, const CwPointer *pointer)
{
  g_autoptr (GArray) corners = cw_edit_corners (drag->base, drag->ids[0]);
  char *fault = NULL;
  CwProject *project;
  CwPoint to;

  if (corners == NULL || drag->handle.corner >= corners->len)
    return;
  to = corner_to (drag, tool, pointer, corners);
  if (!cw_edit_point_is_sound (to))
    return;
  g_array_index (corners, CwCorner, drag->handle.corner).at = to;
  project = cw_edit_put_corners (drag->base, drag->ids[0], corners, &fault);
  show_corners (drag, tool, project, fault, _ ("Move corner"));
}

/* How far @at lies outward of the side's chord. No further than half a circle,
 * and where nothing is fallen on to the step that a pixel allows. */
static CwLength
bow_at (CwTool *tool, const GArray *corners, guint side, CwPoint at)
{
  CwPoint from = g_array_index (corners, CwCorner, side).at;
  CwPoint to
      = g_array_index (corners, CwCorner, (side + 1) % corners->len).at;
  CwLength step
      = cw_snap_grid (tool->style.units, tool->pointer.nm_per_pixel);
  CwLength most = (CwLength) hypot ((double) (to.x - from.x),
                                    (double) (to.y - from.y))
                  / 2;
  CwLength left = cw_dimension_offset (CW_DIMENSION_ALIGNED, from, to, at);
  CwLength bow = cw_corners_are_clockwise (corners) ? left : -left;

  if (cw_snap_words (&tool->snap) == NULL)
    bow = step * (CwLength) llround ((double) bow / (double) step);
  return CLAMP (bow, -most, most);
}

static void
bow_by (CwDrag *drag, CwTool *tool, CwLength bow)
{
  char *fault = NULL;
  CwProject *project = cw_edit_bow_side (drag->base, drag->ids[0],
                                         drag->handle.corner, bow, &fault);

  show_corners (drag, tool, project, fault, _ ("Bow side"));
}

static void
bow_to (CwDrag *drag, CwTool *tool, const CwPointer *pointer)
{
  g_autoptr (GArray) corners = cw_edit_corners (drag->base, drag->ids[0]);
  CwPoint to;

  if (corners == NULL || drag->handle.corner >= corners->len)
    return;
  to = handle_to (drag, tool, pointer);
  bow_by (drag, tool, bow_at (tool, corners, drag->handle.corner, to));
}

/* The sides of the box that the handle moves. */
#define ACROSS (CW_HANDLE_LEFT | CW_HANDLE_RIGHT)
#define UP (CW_HANDLE_BOTTOM | CW_HANDLE_TOP)

static CwLength
present_bow (CwDrag *drag, CwTool *tool)
{
  g_autoptr (GArray) corners
      = cw_edit_corners (cw_tool_project (tool), drag->ids[0]);

  return corners && drag->handle.corner < corners->len
             ? g_array_index (corners, CwCorner, drag->handle.corner).sagitta
             : 0;
}

guint
cw_drag_fields (CwDrag *drag, CwTool *tool, CwTypedField *fields)
{
  const CwWall *wall = cw_tool_wall (tool);
  guint kind = drag->handle.kind;
  CwBox box;

  if (drag->base == NULL || !drag->by_handle || wall == NULL)
    return 0;
  if (kind == CW_HANDLE_BOW)
    {
      fields[0] = (CwTypedField) { N_ ("Bow"), CW_TYPED_SIZE, TRUE,
                                   ABS (present_bow (drag, tool)), 0 };
      return 1;
    }
  if (!(kind & (ACROSS | UP)) || !cw_hit_bounds (wall, drag->ids[0], &box))
    return 0;
  cw_tool_size_fields (fields, N_ ("Width"), N_ ("Height"), &box);
  if (!(kind & ACROSS))
    fields[0] = fields[1];
  return (kind & ACROSS) && (kind & UP) ? 2 : 1;
}

/* Where the handle comes to when the box has that size. */
static CwPoint
place_for_size (const CwDrag *drag, CwLength width, CwLength height)
{
  const CwBox *box = &drag->box;

  return cw_point (drag->handle.kind & CW_HANDLE_LEFT ? box->right - width
                                                      : box->left + width,
                   drag->handle.kind & CW_HANDLE_BOTTOM
                       ? box->top - height
                       : box->bottom + height);
}

gboolean
cw_drag_enter (CwDrag *drag, CwTool *tool, const char *text, GError **error)
{
  CwTypedField fields[CW_TYPED_FIELDS_MOST];
  guint most = cw_drag_fields (drag, tool, fields);
  CwLength lengths[CW_TYPED_MOST];
  guint n = most > 0 ? cw_typed_lengths (text, &tool->style, 1, most, lengths,
                                         error)
                     : 0;
  CwLength up = n == 2 || !(drag->handle.kind & ACROSS)
                    ? lengths[n == 2 ? 1 : 0]
                    : cw_box_height (&drag->box);

  if (n == 0)
    return FALSE;
  if (drag->handle.kind == CW_HANDLE_BOW)
    bow_by (drag, tool,
            present_bow (drag, tool) < 0 ? -lengths[0] : lengths[0]);
  else
    resize_to (drag, tool, place_for_size (drag, lengths[0], up));
  if (drag->trouble == NULL)
    {
      cw_drag_end (drag, tool);
      return TRUE;
    }
  cw_text_error_set (error, CW_TEXT_ERROR_RANGE, 0, "%s", drag->trouble);
  return FALSE;
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
  else if (drag->handle.kind == CW_HANDLE_BOW)
    bow_to (drag, tool, pointer);
  else if (drag->handle.kind == CW_HANDLE_SPRINGING)
    spring_to (drag, tool, pointer);
  else if (drag->handle.kind & (CW_HANDLE_END | CW_HANDLE_LINE))
    measure_to (drag, tool, pointer);
  else
    resize_to (drag, tool, handle_to (drag, tool, pointer));
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

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The select tool: click, add to what is selected, band, drag to move, drag
 * a handle to resize, nudge, delete.
 *
 *            ┌── handle ──▶ ON_HANDLE ──┐
 *   IDLE ────┼── item ────▶ ON_ITEM ────┼── far enough ──▶ dragging
 *            └── nothing ─▶ ON_GROUND ──┘
 */
#include "cw-tool-private.h"

#include <string.h>

#include "cw-dimension.h"
#include "cw-edit-arrange.h"
#include "cw-edit-corners.h"
#include "cw-tool-drag.h"

typedef enum
{
  IDLE,
  ON_GROUND,
  ON_ITEM,
  ON_HANDLE,
} Pressed;

typedef struct
{
  CwTool tool;
  Pressed pressed;
  gboolean dragging;
  CwPoint from, at;         /* unsnapped */
  CwHandle handle;
  CwDrag drag;
  int corner;               /* of the outline, chosen by its handle; -1: none */
} SelectTool;

/* The only thing selected, or NULL. */
static const char *
only_one (CwTool *tool)
{
  const char *const *ids = cw_document_selection (tool->document);

  return ids[0] && !ids[1] ? ids[0] : NULL;
}

static void
start (CwTool *tool)
{
  ((SelectTool *) tool)->corner = -1;
}

static void
clear (CwTool *tool)
{
  cw_drag_clear (&((SelectTool *) tool)->drag);
}

static GArray *
handles_of (CwTool *tool)
{
  const char *id = only_one (tool);
  const CwWall *wall = cw_tool_wall (tool);

  return id && wall ? cw_handles (wall, id)
                    : g_array_new (FALSE, FALSE, sizeof (CwHandle));
}

static gboolean
press_handle (SelectTool *self, const CwPointer *pointer)
{
  g_autoptr (GArray) handles = handles_of (&self->tool);

  if (!cw_handles_pick (handles, pointer->at,
                        cw_tool_reach (pointer, CW_TOOL_SNAP_PIXELS),
                        &self->handle))
    return FALSE;
  self->pressed = ON_HANDLE;
  self->corner = self->handle.kind == CW_HANDLE_CORNER
                     ? (int) self->handle.corner
                     : -1;
  return TRUE;
}

static void
toggle (CwTool *tool, const char *id)
{
  const char *const *ids = cw_document_selection (tool->document);
  g_autoptr (GPtrArray) by = g_ptr_array_new ();
  gboolean was = cw_document_is_selected (tool->document, id);

  for (; *ids; ids++)
    if (strcmp (*ids, id) != 0)
      g_ptr_array_add (by, (gpointer) *ids);
  if (!was)
    g_ptr_array_add (by, (gpointer) id);
  g_ptr_array_add (by, NULL);
  cw_document_select (tool->document, (const char *const *) by->pdata);
}

static void
select_one (CwTool *tool, const char *id)
{
  cw_document_select (tool->document, (const char *const[]) { id, NULL });
}

static void
press_item (SelectTool *self, const CwNode *item, CwHold hold)
{
  const char *id = cw_node_id (item);

  if (hold & CW_HOLD_ADD)
    toggle (&self->tool, id);
  else if (!cw_document_is_selected (self->tool.document, id))
    select_one (&self->tool, id);
}

static void
press (CwTool *tool, const CwPointer *pointer, guint n_press)
{
  SelectTool *self = (SelectTool *) tool;
  const CwWall *wall = cw_tool_wall (tool);
  const CwNode *item;

  self->from = self->at = pointer->at;
  self->dragging = FALSE;
  if (press_handle (self, pointer))
    return;
  self->corner = -1;
  item = wall ? cw_hit_at (wall, pointer->at,
                           cw_tool_reach (pointer, CW_TOOL_SNAP_PIXELS))
              : NULL;
  self->pressed = item && item->type != &cw_elevation_type ? ON_ITEM
                                                           : ON_GROUND;
  if (item)
    press_item (self, item, pointer->hold);
  else if (!(pointer->hold & CW_HOLD_ADD))
    cw_document_select (tool->document, NULL);
}

static void
begin_drag (SelectTool *self)
{
  self->dragging = TRUE;
  if (self->pressed == ON_ITEM)
    cw_drag_begin_move (&self->drag, &self->tool, self->from);
  else if (self->pressed == ON_HANDLE)
    cw_drag_begin_handle (&self->drag, &self->tool, &self->handle);
}

static void
move (CwTool *tool, const CwPointer *pointer)
{
  SelectTool *self = (SelectTool *) tool;

  self->at = pointer->at;
  if (self->pressed == IDLE)
    return;
  if (!self->dragging
      && cw_tool_is_apart (pointer, self->from, self->at,
                           CW_TOOL_DRAG_PIXELS))
    begin_drag (self);
  if (self->dragging && self->pressed != ON_GROUND)
    cw_drag_to (&self->drag, tool, pointer);
}

static void
select_within (SelectTool *self, const CwBox *box, CwHold hold)
{
  CwTool *tool = &self->tool;
  const CwWall *wall = cw_tool_wall (tool);
  g_autoptr (GPtrArray) found = NULL;
  g_autoptr (GPtrArray) ids = g_ptr_array_new ();

  if (wall == NULL)
    return;
  if (hold & CW_HOLD_ADD)
    for (const char *const *id = cw_document_selection (tool->document); *id;
         id++)
      g_ptr_array_add (ids, (gpointer) *id);
  found = cw_hit_within (wall, box);
  for (guint i = 0; i < found->len; i++)
    {
      const char *id = cw_node_id (g_ptr_array_index (found, i));

      if (!(hold & CW_HOLD_ADD)
          || !cw_document_is_selected (tool->document, id))
        g_ptr_array_add (ids, (gpointer) id);
    }
  g_ptr_array_add (ids, NULL);
  cw_document_select (tool->document, (const char *const *) ids->pdata);
}

static void
release (CwTool *tool, const CwPointer *pointer)
{
  SelectTool *self = (SelectTool *) tool;
  gboolean dragging = self->dragging;

  move (tool, pointer);
  if (dragging && self->pressed == ON_GROUND)
    {
      CwBox box = cw_tool_box (self->from, self->at);

      select_within (self, &box, pointer->hold);
    }
  cw_drag_end (&self->drag, tool);
  self->pressed = IDLE;
  self->dragging = FALSE;
}

static void
nudge (CwTool *tool, CwLength dx, CwLength dy)
{
  const CwElevation *elevation = cw_tool_elevation (tool);
  const char *const *ids = cw_document_selection (tool->document);
  g_autofree char *all = NULL, *merge = NULL;
  g_autoptr (CwProject) project = NULL;

  if (elevation == NULL || !ids[0] || ((SelectTool *) tool)->dragging)
    return;
  project = cw_edit_move (cw_tool_project (tool), elevation, ids, dx, dy);
  if (!cw_edit_is_in_bounds (project, ids))
    return;
  all = g_strjoinv (" ", (char **) ids);
  merge = g_strconcat ("nudge ", all, NULL);
  cw_document_edit (tool->document, project, _ ("Move"), merge);
}

static void
end_drag (SelectTool *self)
{
  cw_drag_end (&self->drag, &self->tool);
  self->pressed = IDLE;
  self->dragging = FALSE;
}

static guint
list_fields (CwTool *tool, CwTypedField *fields)
{
  return cw_drag_fields (&((SelectTool *) tool)->drag, tool, fields);
}

static gboolean
enter_text (CwTool *tool, const char *text, GError **error)
{
  SelectTool *self = (SelectTool *) tool;
  CwTypedField fields[CW_TYPED_FIELDS_MOST];

  if (list_fields (tool, fields) == 0)
    {
      cw_text_error_set (error, CW_TEXT_ERROR_UNEXPECTED, 0, "%s",
                         _ ("Select something, or drag a handle, first"));
      return FALSE;
    }
  if (!cw_drag_enter (&self->drag, tool, text, error))
    return FALSE;
  end_drag (self);
  return TRUE;
}

/* The lower left of all that is selected, as it was before it is dragged. */
static gboolean
find_lower_left (SelectTool *self, CwPoint *before, CwPoint *now)
{
  CwTool *tool = &self->tool;
  const CwElevation *elevation = cw_tool_elevation (tool);
  const char *const *ids = cw_document_selection (tool->document);
  CwBox box;

  if (elevation == NULL || self->drag.by_handle
      || !cw_edit_bounds (cw_tool_project (tool), elevation, ids, &box))
    return FALSE;
  *before = *now = cw_point (box.left, box.bottom);
  if (self->drag.base)
    *before = cw_point (self->drag.box.left, self->drag.box.bottom);
  return TRUE;
}

static CwToolWants
wants_point (CwTool *tool, CwPoint *last, CwPoint *now)
{
  return find_lower_left ((SelectTool *) tool, last, now)
             ? CW_TOOL_WANTS_NEXT
             : CW_TOOL_WANTS_NONE;
}

/* The lower left comes there. */
static gboolean
place_point (CwTool *tool, CwPoint at, CwPoint from)
{
  SelectTool *self = (SelectTool *) tool;
  const char *const *ids = cw_document_selection (tool->document);
  CwPoint before, now;
  g_autoptr (CwProject) project = NULL;

  if (!find_lower_left (self, &before, &now))
    return FALSE;
  project = cw_edit_move (cw_tool_project (tool), cw_tool_elevation (tool),
                          ids, at.x - now.x, at.y - now.y);
  if (!cw_edit_is_in_bounds (project, ids))
    return FALSE;
  if (self->drag.base)
    cw_document_edit (tool->document, project, _ ("Move"), "drag");
  else
    cw_tool_edit (tool, project, _ ("Move"), NULL);
  end_drag (self);
  return TRUE;
}

static gboolean
cancel (CwTool *tool)
{
  SelectTool *self = (SelectTool *) tool;
  gboolean busy = self->pressed != IDLE;

  cw_drag_give_up (&self->drag, tool);
  self->pressed = IDLE;
  self->dragging = FALSE;
  if (self->corner >= 0)
    {
      self->corner = -1;
      return TRUE;
    }
  if (busy || !cw_document_selection (tool->document)[0])
    return busy;
  cw_document_select (tool->document, NULL);
  return TRUE;
}

/* The outline without the chosen corner, when that is still one. */
static gboolean
remove_corner (SelectTool *self)
{
  CwTool *tool = &self->tool;
  const char *owner = only_one (tool);
  g_autofree char *fault = NULL;
  g_autoptr (GArray) corners
      = owner ? cw_edit_corners (cw_tool_project (tool), owner) : NULL;
  g_autoptr (CwProject) project = NULL;

  if (corners == NULL || (guint) self->corner >= corners->len)
    return FALSE;
  project = cw_edit_remove_corner (cw_tool_project (tool), owner,
                                   (guint) self->corner, &fault);
  if (project == NULL)
    return FALSE;
  self->corner = -1;
  cw_tool_edit (tool, project, _ ("Remove corner"), NULL);
  return TRUE;
}

static gboolean
remove_selected (CwTool *tool)
{
  SelectTool *self = (SelectTool *) tool;
  const CwElevation *elevation = cw_tool_elevation (tool);
  g_autoptr (CwProject) project = NULL;

  if (elevation == NULL || self->dragging)
    return FALSE;
  if (self->corner >= 0)
    return remove_corner (self);
  project = cw_edit_remove (cw_tool_project (tool), elevation,
                            cw_document_selection (tool->document));
  if (project == cw_tool_project (tool))
    return FALSE;
  cw_tool_edit (tool, project, _ ("Delete"), NULL);
  return TRUE;
}

/* What was dragged may be no more. A drag's own edits come by here too. */
static void
refresh (CwTool *tool)
{
  SelectTool *self = (SelectTool *) tool;

  if (only_one (tool) == NULL)
    self->corner = -1;
  if (!cw_drag_goes_on (&self->drag, tool))
    {
      cw_drag_clear (&self->drag);
      self->pressed = IDLE;
      self->dragging = FALSE;
    }
}

static char *
hint (CwTool *tool)
{
  SelectTool *self = (SelectTool *) tool;

  if (self->dragging && self->drag.trouble)
    return g_strdup (self->drag.trouble);
  if (self->dragging)
    return g_strdup (_ ("Type a measure for it to be exact; Alt or F holds "
                        "snapping off; Escape gives up"));
  if (self->corner >= 0)
    return g_strdup (_ ("Drag the corner; Delete removes it"));
  if (cw_document_selection (tool->document)[0])
    return g_strdup (_ ("Drag to move, a handle to resize; arrows nudge; "
                        "Delete removes"));
  return g_strdup (_ ("Click what you want to change; drag over several"));
}

static void
draw_selected_dimension (CwDisplayList *list, const CwDimension *dimension)
{
  CwPoint line[2];

  cw_dimension_line (dimension, line);
  cw_display_list_add_line (list, CW_STYLE_SELECTION, dimension->id, line[0],
                            line[1]);
}

static void
draw_selected (CwTool *tool, CwDisplayList *list)
{
  const CwWall *wall = cw_tool_wall (tool);
  const char *const *ids = cw_document_selection (tool->document);

  for (; wall && *ids; ids++)
    {
      const CwDimension *dimension = cw_hit_dimension (wall, *ids);
      g_autoptr (CwRegion) shape = cw_hit_shape (wall, *ids);

      if (dimension)
        draw_selected_dimension (list, dimension);
      if (shape)
        cw_display_list_add_region (list, CW_STYLE_SELECTION, *ids, shape);
    }
}

/* What a drag changes: the size, or an arch's rise. */
static char *
dragged_text (SelectTool *self, const CwWall *wall, const char *id,
              const CwBox *box)
{
  CwTool *tool = &self->tool;
  const CwWallOpening *found = cw_hit_opening (wall, id);
  g_autofree char *rise = NULL;

  if (found == NULL || !self->drag.by_handle
      || self->drag.handle.kind != CW_HANDLE_SPRINGING)
    return cw_tool_size_text (tool, cw_box_width (box), cw_box_height (box));
  rise = cw_length_format (found->opening->rise, &tool->style);
  return g_strdup_printf (_ ("rise %s"), rise);
}

static void
draw_size (SelectTool *self, CwDisplayList *list, double nm_per_pixel)
{
  const char *id = only_one (&self->tool);
  const CwWall *wall = cw_tool_wall (&self->tool);
  g_autofree char *text = NULL;
  CwBox box;

  if (!id || !wall || cw_hit_dimension (wall, id)
      || !cw_hit_bounds (wall, id, &box))
    return;
  text = dragged_text (self, wall, id, &box);
  cw_tool_draw_label (
      list, cw_point (box.left + cw_box_width (&box) / 2, box.top),
      CW_ANCHOR_CENTRE, 0, 16, nm_per_pixel, text);
}

static void
overlay (CwTool *tool, CwDisplayList *list, double nm_per_pixel)
{
  SelectTool *self = (SelectTool *) tool;
  g_autoptr (GArray) handles = handles_of (tool);
  CwBox band = cw_tool_box (self->from, self->at);

  draw_selected (tool, list);
  for (guint i = 0; i < handles->len; i++)
    cw_tool_draw_handle (list, g_array_index (handles, CwHandle, i).at,
                         nm_per_pixel);
  if (self->dragging && self->pressed == ON_GROUND)
    cw_display_list_add_box (list, CW_STYLE_DRAFT, NULL, &band);
  else if (self->dragging)
    {
      draw_size (self, list, nm_per_pixel);
      cw_tool_draw_snap (tool, list, nm_per_pixel);
    }
}

const CwToolClass cw_tool_select_class = {
  .size = sizeof (SelectTool),
  .start = start,
  .clear = clear,
  .press = press,
  .move = move,
  .release = release,
  .nudge = nudge,
  .fields = list_fields,
  .enter_text = enter_text,
  .wants_point = wants_point,
  .place_point = place_point,
  .cancel = cancel,
  .remove = remove_selected,
  .refresh = refresh,
  .hint = hint,
  .overlay = overlay,
};

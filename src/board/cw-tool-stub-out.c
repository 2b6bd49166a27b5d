/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The stub-out tool: a click sets the centre; the diameter is dragged, given
 * by a second click, or typed.
 */
#include "cw-tool-private.h"

#include <math.h>

typedef struct
{
  CwTool tool;
  gboolean has_centre, pressed;
  CwPoint centre, at;
} StubOutTool;

static CwNode *
new_stub_out (StubOutTool *self, CwShape shape, CwLength width,
              CwLength height)
{
  CwNode *item = cw_node_new (&cw_stub_out_type);
  g_autofree char *id
      = cw_project_free_id (cw_tool_project (&self->tool), "p");

  cw_node_put_text (item, "id", id);
  cw_node_put (item, "shape", shape);
  cw_node_put (item, "x", self->centre.x);
  cw_node_put (item, "y", self->centre.y);
  cw_node_put (item, "width", width);
  cw_node_put (item, "height", height);
  return item;
}

static gboolean
is_sound (StubOutTool *self, CwLength width, CwLength height)
{
  CwBox box = { self->centre.x - width / 2, self->centre.y - height / 2,
                self->centre.x + width / 2, self->centre.y + height / 2 };

  return cw_edit_box_is_sound (&box);
}

static gboolean
place (StubOutTool *self, CwShape shape, CwLength width, CwLength height)
{
  CwTool *tool = &self->tool;
  g_autoptr (CwNode) item = NULL;
  g_autoptr (CwProject) project = NULL;

  self->has_centre = self->pressed = FALSE;
  if (!is_sound (self, width, height))
    return FALSE;
  item = new_stub_out (self, shape, width, height);
  project = cw_edit_add_item (cw_tool_project (tool),
                              cw_tool_elevation (tool), item);
  cw_tool_edit (tool, project, _ ("Place stub-out"), cw_node_id (item));
  cw_tool_placed (tool);
  return TRUE;
}

/* Twice the way from the centre, to the round measure that a pixel allows. */
static CwLength
diameter (const StubOutTool *self)
{
  CwLength step = cw_snap_grid (self->tool.style.units,
                                self->tool.pointer.nm_per_pixel);
  double radius = hypot ((double) (self->at.x - self->centre.x),
                         (double) (self->at.y - self->centre.y));

  return step * (CwLength) llround (2 * radius / (double) step);
}

static void
aim (StubOutTool *self, const CwPointer *pointer)
{
  CwPointer free = *pointer;

  if (self->has_centre)
    free.hold |= CW_HOLD_FREE;
  self->at = cw_tool_snap (&self->tool, &free, NULL, 0, NULL);
}

static void
press (CwTool *tool, const CwPointer *pointer, guint n_press)
{
  StubOutTool *self = (StubOutTool *) tool;

  if (cw_tool_elevation (tool) == NULL)
    return;
  aim (self, pointer);
  if (self->has_centre
      && cw_tool_is_apart (pointer, self->centre, self->at,
                           CW_TOOL_DRAG_PIXELS))
    {
      place (self, CW_SHAPE_ROUND, diameter (self), diameter (self));
      return;
    }
  self->centre = self->at;
  self->has_centre = self->pressed = TRUE;
}

static void
move (CwTool *tool, const CwPointer *pointer)
{
  aim ((StubOutTool *) tool, pointer);
}

static void
release (CwTool *tool, const CwPointer *pointer)
{
  StubOutTool *self = (StubOutTool *) tool;

  if (!self->pressed)
    return;
  self->pressed = FALSE;
  aim (self, pointer);
  if (cw_tool_is_apart (pointer, self->centre, self->at, CW_TOOL_DRAG_PIXELS))
    place (self, CW_SHAPE_ROUND, diameter (self), diameter (self));
}

static gboolean
enter_text (CwTool *tool, const char *text, GError **error)
{
  StubOutTool *self = (StubOutTool *) tool;
  CwLength lengths[CW_TYPED_MOST];
  guint n;

  if (cw_tool_elevation (tool) == NULL
      || (!tool->has_pointer && !self->has_centre))
    {
      cw_text_error_set (error, CW_TEXT_ERROR_UNEXPECTED, 0, "%s",
                         _ ("Click the stub-out’s centre on a wall first"));
      return FALSE;
    }
  n = cw_typed_lengths (text, &tool->style, 1, 2, lengths, error);
  if (n == 0)
    return FALSE;
  if (!self->has_centre)
    self->centre = self->at;
  if (n == 1)
    return place (self, CW_SHAPE_ROUND, lengths[0], lengths[0]);
  return place (self, CW_SHAPE_RECTANGULAR, lengths[0], lengths[1]);
}

static guint
list_fields (CwTool *tool, CwTypedField *fields)
{
  StubOutTool *self = (StubOutTool *) tool;
  CwLength across = self->has_centre ? diameter (self) : 0;

  if (cw_tool_elevation (tool) == NULL)
    return 0;
  fields[0] = (CwTypedField) { N_ ("Diameter or width"), CW_TYPED_SIZE,
                               across > 0, across, 0 };
  fields[1] = (CwTypedField) { N_ ("Height"), CW_TYPED_SIZE, FALSE, 0, 0 };
  return 2;
}

static CwToolWants
wants_point (CwTool *tool, CwPoint *last, CwPoint *now)
{
  StubOutTool *self = (StubOutTool *) tool;

  if (cw_tool_elevation (tool) == NULL || self->has_centre)
    return CW_TOOL_WANTS_NONE;
  *now = self->at;
  return CW_TOOL_WANTS_FIRST;
}

static gboolean
place_point (CwTool *tool, CwPoint at, CwPoint from)
{
  StubOutTool *self = (StubOutTool *) tool;

  if (!cw_edit_point_is_sound (at))
    return FALSE;
  self->centre = self->at = at;
  self->has_centre = TRUE;
  return TRUE;
}

static gboolean
cancel (CwTool *tool)
{
  StubOutTool *self = (StubOutTool *) tool;
  gboolean any = self->has_centre;

  self->has_centre = self->pressed = FALSE;
  return any;
}

static void
refresh (CwTool *tool)
{
  if (cw_tool_elevation (tool) == NULL)
    cancel (tool);
}

static char *
hint (CwTool *tool)
{
  if (cw_tool_elevation (tool) == NULL)
    return g_strdup (_ ("Draw the wall’s outline first"));
  if (((StubOutTool *) tool)->has_centre)
    return g_strdup (_ ("Click its edge, or type its diameter or "
                        "width × height"));
  return g_strdup (_ ("Click the centre of the stub-out"));
}

static void
overlay (CwTool *tool, CwDisplayList *list, double nm_per_pixel)
{
  StubOutTool *self = (StubOutTool *) tool;
  CwLength across = self->has_centre ? diameter (self) : 0;

  if (across > 0)
    {
      g_autoptr (CwRegion) shape
          = cw_hole_region_round (self->centre, across, 0);
      g_autofree char *size = cw_length_format (across, &tool->style);
      g_autofree char *text = g_strconcat ("⌀ ", size, NULL);

      cw_display_list_add_region (list, CW_STYLE_DRAFT, NULL, shape);
      cw_tool_draw_label (list,
                          cw_point (self->centre.x,
                                    self->centre.y + across / 2),
                          CW_ANCHOR_CENTRE, 0, 12, nm_per_pixel, text);
    }
  cw_tool_draw_snap (tool, list, nm_per_pixel);
}

const CwToolClass cw_tool_stub_out_class = {
  .size = sizeof (StubOutTool),
  .places = TRUE,
  .press = press,
  .move = move,
  .release = release,
  .enter_text = enter_text,
  .fields = list_fields,
  .wants_point = wants_point,
  .place_point = place_point,
  .cancel = cancel,
  .remove = cancel,
  .refresh = refresh,
  .hint = hint,
  .overlay = overlay,
};

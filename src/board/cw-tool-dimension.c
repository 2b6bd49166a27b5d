/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The dimension tool: two points, then where its line stands.
 *
 *   FROM ── click ──▶ TO ── click ──▶ LINE ── click ──▶ placed
 *     └── drag ─────────────────────▶ LINE
 */
#include <math.h>

#include "cw-dimension.h"
#include "cw-elevation-drawing.h"
#include "cw-tool-private.h"
#include "cw-typed-way.h"

/* What the next click gives. */
typedef enum
{
  FROM,
  TO,
  LINE,
} Next;

/* Which way is measured: as the pointer lies, or as was chosen. */
typedef enum
{
  BY_POINTER,
  ALIGNED,
  LEVEL,
  UPRIGHT,
  N_FORMS,
} Form;

/* Its form is a Form. */
typedef struct
{
  CwTool tool;
  Next next;
  gboolean pressed;
  CwPoint from, to, at;
} DimensionTool;

static gboolean
has_wall (CwTool *tool)
{
  const CwElevation *elevation = cw_tool_elevation (tool);

  return elevation && elevation->outline;
}

/* How far to the side of the line between the points, were it of @way, the
 * pointer lies; -1: it would measure nothing. */
static double
aside (const DimensionTool *self, CwDimensionWay way)
{
  CwPoint half = { (self->to.x - self->from.x) / 2,
                   (self->to.y - self->from.y) / 2 };
  CwPoint middle = { self->from.x + half.x, self->from.y + half.y };

  if ((way == CW_DIMENSION_LEVEL && half.x == 0)
      || (way == CW_DIMENSION_UPRIGHT && half.y == 0))
    return -1;
  return (double) ABS (cw_dimension_offset (
      way, middle, cw_point (middle.x + half.x, middle.y + half.y),
      self->at));
}

/* By where the pointer lies from between the points: over or under, beside,
 * or off the straight way. One of the first two where they are as good. */
static CwDimensionWay
way_by_pointer (const DimensionTool *self)
{
  CwDimensionWay best = CW_DIMENSION_LEVEL;

  if (aside (self, CW_DIMENSION_UPRIGHT)
      > aside (self, CW_DIMENSION_LEVEL))
    best = CW_DIMENSION_UPRIGHT;
  if (!(self->tool.pointer.hold & CW_HOLD_STRAIGHT)
      && self->from.x != self->to.x && self->from.y != self->to.y
      && aside (self, CW_DIMENSION_ALIGNED) > aside (self, best))
    best = CW_DIMENSION_ALIGNED;
  return best;
}

static CwDimensionWay
present_way (const DimensionTool *self)
{
  switch ((Form) self->tool.form)
    {
    case ALIGNED:
      return CW_DIMENSION_ALIGNED;
    case LEVEL:
      return CW_DIMENSION_LEVEL;
    case UPRIGHT:
      return CW_DIMENSION_UPRIGHT;
    default:
      return way_by_pointer (self);
    }
}

/* With nothing to fall on, to the step that a pixel allows. */
static CwLength
present_offset (DimensionTool *self)
{
  CwTool *tool = &self->tool;
  CwDimensionWay way = present_way (self);
  CwLength offset = cw_dimension_offset (way, self->from, self->to, self->at);
  CwLength step = cw_snap_grid (tool->style.units, tool->pointer.nm_per_pixel);

  if (way != CW_DIMENSION_ALIGNED)
    return offset;
  return step * (CwLength) llround ((double) offset / (double) step);
}

static CwNode *
new_dimension (DimensionTool *self, const char *id, CwLength offset)
{
  CwNode *item = cw_node_new (&cw_dimension_type);

  cw_node_put_text (item, "id", id);
  cw_node_put (item, "way", present_way (self));
  cw_node_put (item, "x", self->from.x);
  cw_node_put (item, "y", self->from.y);
  cw_node_put (item, "to-x", self->to.x);
  cw_node_put (item, "to-y", self->to.y);
  cw_node_put (item, "offset", offset);
  return item;
}

static gboolean
place (DimensionTool *self, CwLength offset)
{
  CwTool *tool = &self->tool;
  g_autofree char *id = cw_project_free_id (cw_tool_project (tool), "d");
  g_autoptr (CwNode) item = new_dimension (self, id, offset);
  g_autoptr (CwProject) project = cw_edit_add_item (
      cw_tool_project (tool), cw_tool_elevation (tool), item);

  if (!cw_edit_is_in_bounds (project, (const char *const[]) { id, NULL }))
    return FALSE;
  self->next = FROM;
  cw_tool_edit (tool, project, _ ("Place dimension"), id);
  cw_tool_placed (tool);
  return TRUE;
}

static void
aim (DimensionTool *self, const CwPointer *pointer)
{
  self->at = cw_tool_snap (&self->tool, pointer, &self->from,
                           self->next == TO ? 1 : 0, NULL);
  if (self->next == TO && (pointer->hold & CW_HOLD_STRAIGHT))
    self->at = cw_tool_straighten (self->from, self->at);
  self->tool.snap.at = self->at;
}

static void
take_to (DimensionTool *self, CwPoint to)
{
  self->to = to;
  self->next = LINE;
  self->pressed = FALSE;
}

static void
press (CwTool *tool, const CwPointer *pointer, guint n_press)
{
  DimensionTool *self = (DimensionTool *) tool;

  if (!has_wall (tool))
    return;
  aim (self, pointer);
  if (self->next == FROM)
    {
      self->from = self->at;
      self->next = TO;
      self->pressed = TRUE;
    }
  else if (self->next == LINE)
    place (self, present_offset (self));
  else if (cw_tool_is_apart (pointer, self->from, self->at,
                             CW_TOOL_DRAG_PIXELS))
    take_to (self, self->at);
}

static void
move (CwTool *tool, const CwPointer *pointer)
{
  aim ((DimensionTool *) tool, pointer);
}

static void
release (CwTool *tool, const CwPointer *pointer)
{
  DimensionTool *self = (DimensionTool *) tool;

  if (!self->pressed)
    return;
  self->pressed = FALSE;
  aim (self, pointer);
  if (cw_tool_is_apart (pointer, self->from, self->at, CW_TOOL_DRAG_PIXELS))
    take_to (self, self->at);
}

static gboolean
refuse (GError **error, const char *sentence)
{
  cw_text_error_set (error, CW_TEXT_ERROR_UNEXPECTED, 0, "%s", sentence);
  return FALSE;
}

/* How far the line stands away, to the side of the pointer. */
static gboolean
enter_offset (DimensionTool *self, const char *text, GError **error)
{
  CwLength lengths[CW_TYPED_MOST];
  CwLength offset;

  if (cw_typed_lengths (text, &self->tool.style, 1, 1, lengths, error) == 0)
    return FALSE;
  offset = cw_dimension_offset (present_way (self), self->from, self->to,
                                self->at);
  if (place (self, offset < 0 ? -lengths[0] : lengths[0]))
    return TRUE;
  return refuse (error, _ ("That is too far from the wall"));
}

static gboolean
enter_text (CwTool *tool, const char *text, GError **error)
{
  DimensionTool *self = (DimensionTool *) tool;
  CwTypedWay way;
  CwPoint to;

  if (!has_wall (tool))
    return refuse (error, _ ("Draw the wall’s outline first"));
  if (self->next == FROM)
    return refuse (error, _ ("Click where to measure from"));
  if (self->next == LINE)
    return enter_offset (self, text, error);
  if (!cw_typed_way (text, &tool->style, &way, error))
    return FALSE;
  if (!cw_typed_way_end (&way, self->from, self->at, &to))
    return refuse (error, _ ("Type how far it is, too"));
  take_to (self, to);
  return TRUE;
}

static guint
list_fields (CwTool *tool, CwTypedField *fields)
{
  DimensionTool *self = (DimensionTool *) tool;

  if (!has_wall (tool) || self->next == FROM)
    return 0;
  if (self->next == TO)
    return cw_tool_way_fields (tool, fields, self->from, self->at);
  fields[0] = (CwTypedField) { N_ ("Offset"), CW_TYPED_SIZE, TRUE,
                               ABS (present_offset (self)), 0 };
  return 1;
}

static CwToolWants
wants_point (CwTool *tool, CwPoint *last, CwPoint *now)
{
  DimensionTool *self = (DimensionTool *) tool;

  *last = self->from;
  *now = self->at;
  if (!has_wall (tool) || self->next == LINE)
    return CW_TOOL_WANTS_NONE;
  return self->next == FROM ? CW_TOOL_WANTS_FIRST : CW_TOOL_WANTS_NEXT;
}

static gboolean
place_point (CwTool *tool, CwPoint at, CwPoint from)
{
  DimensionTool *self = (DimensionTool *) tool;

  if (!cw_edit_point_is_sound (at))
    return FALSE;
  if (self->next == TO)
    {
      take_to (self, at);
      return TRUE;
    }
  self->from = at;
  self->next = TO;
  return TRUE;
}

static void
next_form (CwTool *tool)
{
  DimensionTool *self = (DimensionTool *) tool;

  self->tool.form = (self->tool.form + 1) % N_FORMS;
}

static gboolean
take_back (CwTool *tool)
{
  DimensionTool *self = (DimensionTool *) tool;

  if (self->next == FROM)
    return FALSE;
  self->next--;
  self->pressed = FALSE;
  return TRUE;
}

static gboolean
cancel (CwTool *tool)
{
  DimensionTool *self = (DimensionTool *) tool;
  gboolean any = self->next != FROM;

  self->next = FROM;
  self->pressed = FALSE;
  return any;
}

static void
refresh (CwTool *tool)
{
  if (!has_wall (tool))
    cancel (tool);
}

static char *
line_hint (const DimensionTool *self)
{
  static const char *const ways[N_FORMS] = {
    N_ ("as the pointer lies"),
    N_ ("straight across"),
    N_ ("along"),
    N_ ("up"),
  };

  return g_strdup_printf (
      /* Translators: the way that is measured: along, up… */
      _ ("Click where the dimension line stands, or type how far away. "
         "Measured: %s; M chooses another"),
      _ (ways[self->tool.form]));
}

static char *
hint (CwTool *tool)
{
  DimensionTool *self = (DimensionTool *) tool;

  if (!has_wall (tool))
    return g_strdup (_ ("Draw the wall’s outline first"));
  switch (self->next)
    {
    case FROM:
      return g_strdup (_ ("Click where to measure from; a dimension stands "
                          "where it is put and follows nothing"));
    case TO:
      return g_strdup (_ ("Click where to measure to, or type how far it is; "
                          "hold Ctrl for level or upright"));
    case LINE:
    default:
      return line_hint (self);
    }
}

static void
overlay (CwTool *tool, CwDisplayList *list, double nm_per_pixel)
{
  DimensionTool *self = (DimensionTool *) tool;

  if (self->next == TO)
    {
      cw_display_list_add_line (list, CW_STYLE_DRAFT, NULL, self->from,
                                self->at);
      cw_tool_draw_length (tool, list, self->from, self->at, nm_per_pixel);
    }
  else if (self->next == LINE)
    {
      g_autoptr (CwNode) item
          = new_dimension (self, "", present_offset (self));
      CwPoint line[2];

      cw_dimension_line ((CwDimension *) item, line);
      cw_display_list_add_line (list, CW_STYLE_DRAFT, NULL, line[0], line[1]);
      cw_draw_dimension (list, (CwDimension *) item, &tool->style,
                         nm_per_pixel / 1e6);
      cw_tool_draw_handle (list, self->to, nm_per_pixel);
    }
  if (self->next != FROM)
    cw_tool_draw_handle (list, self->from, nm_per_pixel);
  cw_tool_draw_snap (tool, list, nm_per_pixel);
}

const CwToolClass cw_tool_dimension_class = {
  .size = sizeof (DimensionTool),
  .places = TRUE,
  .press = press,
  .move = move,
  .release = release,
  .enter_text = enter_text,
  .fields = list_fields,
  .wants_point = wants_point,
  .place_point = place_point,
  .next_form = next_form,
  .cancel = cancel,
  .remove = take_back,
  .refresh = refresh,
  .hint = hint,
  .overlay = overlay,
};

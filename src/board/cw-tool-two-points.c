/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The tools that take two points: the tape, which measures and leaves
 * nothing, and the scale of the sheet, which takes a known length.
 */
#include "cw-tool-private.h"

#include <math.h>

#include "cw-sheet-scale.h"
#include "cw-typed-way.h"

typedef struct
{
  CwTool tool;
  guint n;              /* points set */
  gboolean pressed;
  CwPoint first, second, at;
} TwoPointsTool;

/* The sheet is measured where the pointer is; the wall by what it shows. */
static CwPoint
find (TwoPointsTool *self, const CwPointer *pointer)
{
  CwPoint at = pointer->at;

  if (self->tool.kind == CW_TOOL_TAPE)
    at = cw_tool_snap (&self->tool, pointer, &self->first,
                       self->n > 0 ? 1 : 0, NULL);
  if (self->n == 1 && (pointer->hold & CW_HOLD_STRAIGHT))
    at = cw_tool_straighten (self->first, at);
  self->tool.snap.at = at;
  return at;
}

static void
press (CwTool *tool, const CwPointer *pointer, guint n_press)
{
  TwoPointsTool *self = (TwoPointsTool *) tool;

  if (self->n == 2)
    self->n = 0;
  self->at = find (self, pointer);
  if (self->n == 0)
    {
      self->first = self->at;
      self->n = 1;
      self->pressed = TRUE;
    }
  else if (cw_tool_is_apart (pointer, self->first, self->at,
                             CW_TOOL_DRAG_PIXELS))
    {
      self->second = self->at;
      self->n = 2;
    }
}

static void
move (CwTool *tool, const CwPointer *pointer)
{
  TwoPointsTool *self = (TwoPointsTool *) tool;

  self->at = find (self, pointer);
}

static void
release (CwTool *tool, const CwPointer *pointer)
{
  TwoPointsTool *self = (TwoPointsTool *) tool;

  if (!self->pressed)
    return;
  self->pressed = FALSE;
  self->at = find (self, pointer);
  if (!cw_tool_is_apart (pointer, self->first, self->at,
                         CW_TOOL_DRAG_PIXELS))
    return;
  self->second = self->at;
  self->n = 2;
}

static gboolean
refuse (GError **error, const char *sentence)
{
  cw_text_error_set (error, CW_TEXT_ERROR_UNEXPECTED, 0, "%s", sentence);
  return FALSE;
}

/* The scale by which the two points are @length apart; 0: too near. */
static double
measure (TwoPointsTool *self, const CwPlacing *placing, CwLength length)
{
  double x0, y0, x1, y1, mm_per_point;

  cw_placing_to_page (placing, (double) self->first.x, (double) self->first.y,
                      &x0, &y0);
  cw_placing_to_page (placing, (double) self->second.x,
                      (double) self->second.y, &x1, &y1);
  return cw_sheet_scale_measure (x0, y0, x1, y1, length, &mm_per_point)
             ? mm_per_point
             : 0;
}

static void
take_second (TwoPointsTool *self, CwPoint at)
{
  self->second = self->at = at;
  self->n = 2;
  self->pressed = FALSE;
}

/* Where that would be: a length laid off from the first point. */
static gboolean
enter_way (TwoPointsTool *self, const char *text, GError **error)
{
  CwTypedWay way;
  CwPoint to;

  if (self->n != 1)
    return refuse (error, _ ("Click where to measure from"));
  if (!cw_typed_way (text, &self->tool.style, &way, error))
    return FALSE;
  if (!cw_typed_way_end (&way, self->first, self->at, &to))
    return refuse (error, _ ("Type how far it is, too"));
  take_second (self, to);
  return TRUE;
}

static gboolean
enter_text (CwTool *tool, const char *text, GError **error)
{
  TwoPointsTool *self = (TwoPointsTool *) tool;
  CwPlacing placing
      = cw_placing_of (cw_tool_project (tool), cw_tool_elevation (tool));
  CwLength lengths[CW_TYPED_MOST];
  g_autoptr (CwProject) project = NULL;
  double mm_per_point;

  if (tool->kind == CW_TOOL_TAPE)
    return enter_way (self, text, error);
  if (placing.sheet == NULL || self->n < 2)
    return refuse (error, _ ("Click two points of the sheet first"));
  if (!cw_typed_lengths (text, &tool->style, 1, 1, lengths, error))
    return FALSE;
  mm_per_point = measure (self, &placing, lengths[0]);
  if (!(mm_per_point > 0))
    return refuse (error, _ ("The points are too near each other"));
  project = cw_edit_set_scale (cw_tool_project (tool), placing.sheet,
                               mm_per_point);
  self->n = 0;
  cw_tool_edit (tool, project, _ ("Set scale"), NULL);
  cw_tool_placed (tool);
  return TRUE;
}

static guint
list_fields (CwTool *tool, CwTypedField *fields)
{
  TwoPointsTool *self = (TwoPointsTool *) tool;

  if (tool->kind == CW_TOOL_TAPE)
    return self->n == 1 ? cw_tool_way_fields (tool, fields, self->first,
                                              self->at)
                        : 0;
  if (self->n < 2)
    return 0;
  fields[0]
      = (CwTypedField) { N_ ("True length"), CW_TYPED_SIZE, FALSE, 0, 0 };
  return 1;
}

static CwToolWants
wants_point (CwTool *tool, CwPoint *last, CwPoint *now)
{
  TwoPointsTool *self = (TwoPointsTool *) tool;

  *last = self->first;
  *now = self->at;
  if (tool->kind != CW_TOOL_TAPE)
    return CW_TOOL_WANTS_NONE;
  return self->n == 1 ? CW_TOOL_WANTS_NEXT : CW_TOOL_WANTS_FIRST;
}

static gboolean
place_point (CwTool *tool, CwPoint at, CwPoint from)
{
  TwoPointsTool *self = (TwoPointsTool *) tool;

  if (self->n == 1)
    {
      take_second (self, at);
      return TRUE;
    }
  self->first = self->at = at;
  self->n = 1;
  return TRUE;
}

static gboolean
cancel (CwTool *tool)
{
  TwoPointsTool *self = (TwoPointsTool *) tool;
  gboolean any = self->n > 0;

  self->n = 0;
  self->pressed = FALSE;
  return any;
}

static gboolean
take_back (CwTool *tool)
{
  TwoPointsTool *self = (TwoPointsTool *) tool;

  if (self->n == 0)
    return FALSE;
  self->n--;
  return TRUE;
}

static gboolean
two_points (CwTool *tool, CwPoint *first, CwPoint *second)
{
  TwoPointsTool *self = (TwoPointsTool *) tool;

  if (self->n < 2)
    return FALSE;
  *first = self->first;
  *second = self->second;
  return TRUE;
}

static char *
measured_text (TwoPointsTool *self)
{
  CwTool *tool = &self->tool;
  CwLength dx = ABS (self->second.x - self->first.x);
  CwLength dy = ABS (self->second.y - self->first.y);
  CwLength way = (CwLength) llround (hypot ((double) dx, (double) dy));
  g_autofree char *whole = cw_length_format (way, &tool->style);
  g_autofree char *along = cw_length_format (dx, &tool->style);
  g_autofree char *up = cw_length_format (dy, &tool->style);

  return g_strdup_printf (_ ("%s apart: %s along, %s up; click to measure "
                             "again"),
                          whole, along, up);
}

static char *
tape_hint (TwoPointsTool *self)
{
  if (self->n == 2)
    return measured_text (self);
  return g_strdup (self->n == 0 ? _ ("Click where to measure from")
                                : _ ("Click where to measure to"));
}

static char *
scale_hint (TwoPointsTool *self)
{
  CwPlacing placing = cw_placing_of (cw_tool_project (&self->tool),
                                     cw_tool_elevation (&self->tool));

  if (placing.sheet == NULL)
    return g_strdup (_ ("Add a plan sheet first"));
  switch (self->n)
    {
    case 0:
      return g_strdup (_ ("Click one end of a length that you know"));
    case 1:
      return g_strdup (_ ("Click its other end; hold Ctrl for level or "
                          "upright"));
    default:
      return g_strdup (_ ("Type the true length between the points"));
    }
}

static char *
hint (CwTool *tool)
{
  TwoPointsTool *self = (TwoPointsTool *) tool;

  return tool->kind == CW_TOOL_TAPE ? tape_hint (self) : scale_hint (self);
}

static void
overlay (CwTool *tool, CwDisplayList *list, double nm_per_pixel)
{
  TwoPointsTool *self = (TwoPointsTool *) tool;
  CwPoint end = self->n == 2 ? self->second : self->at;

  if (self->n > 0)
    {
      cw_display_list_add_line (list, CW_STYLE_DRAFT, NULL, self->first, end);
      cw_tool_draw_handle (list, self->first, nm_per_pixel);
      if (tool->kind == CW_TOOL_TAPE)
        cw_tool_draw_length (tool, list, self->first, end, nm_per_pixel);
    }
  if (self->n == 2)
    cw_tool_draw_handle (list, self->second, nm_per_pixel);
  cw_tool_draw_snap (tool, list, nm_per_pixel);
}

const CwToolClass cw_tool_two_points_class = {
  .size = sizeof (TwoPointsTool),
  .press = press,
  .move = move,
  .release = release,
  .enter_text = enter_text,
  .fields = list_fields,
  .wants_point = wants_point,
  .place_point = place_point,
  .cancel = cancel,
  .remove = take_back,
  .hint = hint,
  .overlay = overlay,
  .two_points = two_points,
};

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The wall tool: clicks set corners, typed lengths go the way the pointer
 * points, the first corner or Enter closes. A drag from the first corner makes
 * a rectangle; one from a later corner bows the side that led there, through
 * where the button goes up: an arc by three points.
 */
#include "cw-edit-corners.h"
#include "cw-tool-private.h"
#include "cw-typed-way.h"

#include <math.h>
#include <string.h>

/* Sides this near to level or upright are meant to be: a roof of 1:12, the
 * flattest that is drawn as one, rises by 0.083. */
#define NEARLY 0.02
#define ARC_PARTS 32

typedef struct
{
  CwTool tool;
  GArray *corners;      /* CwPoint */
  GArray *bows;         /* CwLength: of the side from the corner of that index,
                           to the right of the way */
  gboolean pressed, dragging;
  CwPoint from;         /* of the pointer, when it was pressed */
  CwTypedWay locked;    /* the slope that was typed, until the next corner */
  CwPoint next;         /* where the next corner would come */
  gboolean has_next;
  char *trouble;        /* (nullable): why it cannot be closed */
  char *elevation_id;   /* (nullable): shown when it was begun */
} WallTool;

static CwPoint
corner (const WallTool *self, guint i)
{
  return g_array_index (self->corners, CwPoint, i);
}

static CwPoint
last (const WallTool *self)
{
  return corner (self, self->corners->len - 1);
}

static void
begin_anew (WallTool *self)
{
  g_array_set_size (self->corners, 0);
  g_array_set_size (self->bows, 0);
  self->pressed = self->dragging = FALSE;
  self->locked.has_slope = FALSE;
  g_clear_pointer (&self->trouble, g_free);
}

static void
start (CwTool *tool)
{
  WallTool *self = (WallTool *) tool;

  self->corners = g_array_new (FALSE, FALSE, sizeof (CwPoint));
  self->bows = g_array_new (FALSE, FALSE, sizeof (CwLength));
}

static void
clear (CwTool *tool)
{
  WallTool *self = (WallTool *) tool;

  g_array_unref (self->corners);
  g_array_unref (self->bows);
  g_free (self->trouble);
  g_free (self->elevation_id);
}

static gboolean
is_of_note (CwSnapKind kind)
{
  return kind != CW_SNAP_NONE && kind != CW_SNAP_GRID;
}

/* Level or upright help, where nothing else has been snapped to. */
static CwPoint
help_straight (CwTool *tool, CwPoint from, CwPoint at)
{
  double dx = fabs ((double) (at.x - from.x));
  double dy = fabs ((double) (at.y - from.y));

  if (dy <= NEARLY * dx && !is_of_note (tool->snap.y_kind))
    {
      tool->snap.y_kind = CW_SNAP_ALIGN_Y;
      tool->snap.y_from = from;
      at.y = from.y;
    }
  else if (dx <= NEARLY * dy && !is_of_note (tool->snap.x_kind))
    {
      tool->snap.x_kind = CW_SNAP_ALIGN_X;
      tool->snap.x_from = from;
      at.x = from.x;
    }
  return at;
}

static CwPoint
aim (WallTool *self, const CwPointer *pointer)
{
  CwTool *tool = &self->tool;
  CwPoint at
      = cw_tool_snap (tool, pointer, (const CwPoint *) self->corners->data,
                      self->corners->len, NULL);

  if (self->corners->len == 0)
    return at;
  if (pointer->hold & CW_HOLD_STRAIGHT)
    at = cw_tool_straighten (last (self), at);
  else if (!(pointer->hold & CW_HOLD_FREE))
    at = help_straight (tool, last (self), at);
  if (!self->pressed)
    at = cw_typed_way_onto (&self->locked, last (self), at);
  tool->snap.at = at;
  return at;
}

static void
set_trouble (WallTool *self, char *trouble)
{
  g_free (self->trouble);
  self->trouble = trouble;
}

static void
add_corner (WallTool *self, CwPoint at)
{
  if (self->corners->len > 0 && cw_point_equal (last (self), at))
    return;
  if (self->corners->len == 0)
    {
      g_free (self->elevation_id);
      self->elevation_id
          = g_strdup (cw_document_elevation_id (self->tool.document));
    }
  set_trouble (self, NULL);
  self->locked.has_slope = FALSE;
  g_array_append_val (self->corners, at);
  g_array_set_size (self->bows, self->corners->len);
  g_array_index (self->bows, CwLength, self->bows->len - 1) = 0;
}

/* The shift is told together with the elevation that it belongs to. */
static void
commit (WallTool *self, const CwCorner *corners, gsize n)
{
  CwTool *tool = &self->tool;
  CwPoint shift;
  g_autofree char *id = NULL;
  g_autoptr (CwProject) project
      = cw_edit_draw_outline (cw_tool_project (tool), cw_tool_elevation (tool),
                              corners, n, &id, &shift);
  gboolean is_new
      = g_strcmp0 (id, cw_document_elevation_id (tool->document)) != 0;

  begin_anew (self);
  if (!is_new)
    tool->shift = shift;
  cw_tool_edit (tool, project, _ ("Draw outline"), NULL);
  tool->shift = is_new ? shift : cw_point (0, 0);
  cw_document_show_elevation (tool->document, id);
  cw_document_select (tool->document, (const char *const[]) { id, NULL });
  cw_tool_placed (tool);
}

/* Whether all of it lies where a project may have points. */
static gboolean
is_within_bounds (const CwCorner *corners, gsize n)
{
  CwBox box = cw_tool_box (corners[0].at, corners[0].at);

  for (gsize i = 1; i < n; i++)
    {
      box.left = MIN (box.left, corners[i].at.x);
      box.right = MAX (box.right, corners[i].at.x);
      box.bottom = MIN (box.bottom, corners[i].at.y);
      box.top = MAX (box.top, corners[i].at.y);
    }
  return cw_edit_box_is_sound (&box);
}

static gboolean
close_corners (WallTool *self, const CwCorner *corners, gsize n)
{
  CwOutlineCheck check = cw_outline_check (corners, n);

  if (check.fault != CW_OUTLINE_VALID)
    set_trouble (self, cw_outline_check_text (&check));
  else if (!is_within_bounds (corners, n))
    set_trouble (self, g_strdup (_ ("The outline is too large, or lies too "
                                    "far from its origin.")));
  else
    {
      commit (self, corners, n);
      return TRUE;
    }
  return FALSE;
}

static gboolean
finish (CwTool *tool)
{
  WallTool *self = (WallTool *) tool;
  guint n = self->corners->len;
  g_autoptr (GArray) corners = g_array_new (FALSE, TRUE, sizeof (CwCorner));
  CwLength outward;

  if (n == 0)
    return FALSE;
  g_array_set_size (corners, n);
  for (guint i = 0; i < n; i++)
    g_array_index (corners, CwCorner, i).at = corner (self, i);
  outward = cw_corners_are_clockwise (corners) ? -1 : 1;
  for (guint i = 0; i < n; i++)
    g_array_index (corners, CwCorner, i).sagitta
        = outward * g_array_index (self->bows, CwLength, i);
  return close_corners (self, (CwCorner *) corners->data, n);
}

static gboolean
is_at_first (const WallTool *self, const CwPointer *pointer, CwPoint at)
{
  if (self->corners->len < 3)
    return FALSE;
  return cw_point_equal (at, corner (self, 0))
         || !cw_tool_is_apart (pointer, pointer->at, corner (self, 0),
                               CW_TOOL_SNAP_PIXELS);
}

static void
press (CwTool *tool, const CwPointer *pointer, guint n_press)
{
  WallTool *self = (WallTool *) tool;
  CwPoint at = aim (self, pointer);

  self->next = at;
  self->has_next = TRUE;
  if (is_at_first (self, pointer, at)
      || (n_press == 2 && self->corners->len >= 3))
    finish (tool);
  else
    {
      add_corner (self, at);
      self->pressed = TRUE;
      self->dragging = FALSE;
      self->from = pointer->at;
    }
}

/* No further than half a circle, and to the step that a pixel allows. */
static CwLength
sound_bow (WallTool *self, CwPoint from, CwPoint to, CwLength bow)
{
  CwLength step = cw_snap_grid (self->tool.style.units,
                                self->tool.pointer.nm_per_pixel);
  CwLength most = (CwLength) hypot ((double) (to.x - from.x),
                                    (double) (to.y - from.y))
                  / 2;

  if (!is_of_note (self->tool.snap.x_kind)
      && !is_of_note (self->tool.snap.y_kind))
    bow = step * (CwLength) llround ((double) bow / (double) step);
  return CLAMP (bow, -most, most);
}

/* The side to the corner that is held runs through where the pointer is. */
static void
bow_side (WallTool *self)
{
  guint n = self->corners->len;
  CwPoint from, to;

  if (n < 2)
    return;
  from = corner (self, n - 2);
  to = corner (self, n - 1);
  g_array_index (self->bows, CwLength, n - 2)
      = sound_bow (self, from, to, cw_bow_through (from, self->next, to));
}

static void
move (CwTool *tool, const CwPointer *pointer)
{
  WallTool *self = (WallTool *) tool;

  self->next = aim (self, pointer);
  self->has_next = TRUE;
  if (!self->pressed || self->corners->len == 0)
    return;
  self->dragging |= cw_tool_is_apart (pointer, pointer->at, self->from,
                                      2 * CW_TOOL_SNAP_PIXELS);
  if (self->dragging)
    bow_side (self);
}

static gboolean
close_rectangle (WallTool *self, const CwBox *box)
{
  CwCorner corners[] = {
    { .at = cw_point (box->left, box->bottom) },
    { .at = cw_point (box->right, box->bottom) },
    { .at = cw_point (box->right, box->top) },
    { .at = cw_point (box->left, box->top) },
  };

  return close_corners (self, corners, G_N_ELEMENTS (corners));
}

/* Dragged from the first corner to the opposite one. */
static void
release (CwTool *tool, const CwPointer *pointer)
{
  WallTool *self = (WallTool *) tool;
  gboolean rectangle;

  if (!self->pressed)
    return;
  move (tool, pointer);
  rectangle = self->dragging && self->corners->len == 1;
  self->pressed = self->dragging = FALSE;
  if (rectangle)
    {
      CwBox box = cw_tool_box (corner (self, 0), self->next);

      if (cw_edit_box_is_sound (&box))
        close_rectangle (self, &box);
    }
}

static gboolean
enter_rectangle (WallTool *self, CwLength width, CwLength height)
{
  CwPlacing placing = cw_placing_of (cw_tool_project (&self->tool),
                                     cw_tool_elevation (&self->tool));
  CwPoint at = self->corners->len > 0               ? corner (self, 0)
               : placing.sheet && self->has_next ? self->next
                                                  : cw_point (0, 0);
  CwBox box = { at.x, at.y, at.x + width, at.y + height };

  return close_rectangle (self, &box);
}

static gboolean
refuse (GError **error, const char *sentence)
{
  cw_text_error_set (error, CW_TEXT_ERROR_UNEXPECTED, 0, "%s", sentence);
  return FALSE;
}

static gboolean
enter_first (WallTool *self, const CwLength *lengths, GError **error)
{
  if (enter_rectangle (self, lengths[0], lengths[1]))
    return TRUE;
  return refuse (error, self->trouble);
}

/* A slope alone holds the pointer to it. */
static gboolean
enter_way (WallTool *self, const char *text, GError **error)
{
  CwPoint towards = self->has_next ? self->next : last (self);
  CwTypedWay way;
  CwPoint end;

  if (!cw_typed_way (text, &self->tool.style, &way, error))
    return FALSE;
  if (cw_typed_way_end (&way, last (self), towards, &end))
    add_corner (self, end);
  else if (way.has_slope)
    self->locked = way;
  else
    return refuse (error, _ ("Point the way the side goes, then type its "
                             "length"));
  return TRUE;
}

static gboolean
enter_text (CwTool *tool, const char *text, GError **error)
{
  WallTool *self = (WallTool *) tool;
  CwLength lengths[CW_TYPED_MOST];
  guint n;

  if (self->corners->len == 0 || tool->typed_together)
    {
      n = cw_typed_lengths (text, &tool->style, 2, 2, lengths, error);
      return n > 0 && enter_first (self, lengths, error);
    }
  return enter_way (self, text, error);
}

static guint
list_fields (CwTool *tool, CwTypedField *fields)
{
  WallTool *self = (WallTool *) tool;

  if (self->corners->len == 0)
    return cw_tool_size_fields (fields, N_ ("Length"), N_ ("Height"), NULL);
  return cw_tool_way_fields (tool, fields, last (self),
                             self->has_next ? self->next : last (self));
}

static CwToolWants
wants_point (CwTool *tool, CwPoint *from, CwPoint *now)
{
  WallTool *self = (WallTool *) tool;

  *now = self->next;
  if (self->corners->len == 0)
    return CW_TOOL_WANTS_FIRST;
  *from = last (self);
  if (!self->has_next)
    *now = *from;
  return CW_TOOL_WANTS_NEXT;
}

static gboolean
place_point (CwTool *tool, CwPoint at, CwPoint from)
{
  WallTool *self = (WallTool *) tool;
  guint n = self->corners->len;

  if (!cw_edit_point_is_sound (at) || (n > 0 && cw_point_equal (last (self), at)))
    return FALSE;
  if (n >= 3 && cw_point_equal (at, corner (self, 0)))
    return finish (tool);
  add_corner (self, at);
  return TRUE;
}

static gboolean
cancel (CwTool *tool)
{
  WallTool *self = (WallTool *) tool;
  gboolean any = self->corners->len > 0;

  begin_anew (self);
  return any;
}

static gboolean
remove_last (CwTool *tool)
{
  WallTool *self = (WallTool *) tool;

  if (self->corners->len == 0)
    return FALSE;
  set_trouble (self, NULL);
  g_array_set_size (self->corners, self->corners->len - 1);
  g_array_set_size (self->bows, self->corners->len);
  self->pressed = self->dragging = FALSE;
  self->locked.has_slope = FALSE;
  return TRUE;
}

/* Corners are in the coordinates of the elevation they were begun on. */
static void
refresh (CwTool *tool)
{
  WallTool *self = (WallTool *) tool;

  if (g_strcmp0 (self->elevation_id,
                 cw_document_elevation_id (tool->document))
      != 0)
    begin_anew (self);
}

static char *
hint (CwTool *tool)
{
  WallTool *self = (WallTool *) tool;

  if (self->trouble)
    return g_strdup (self->trouble);
  if (self->corners->len == 0)
    return g_strdup (_ ("Click the wall’s first corner, drag a rectangle, or "
                        "type its length × height"));
  if (self->dragging)
    return g_strdup (self->corners->len == 1
                         ? _ ("Let go at the opposite corner")
                         : _ ("Let go where the arc runs through"));
  if (self->locked.has_slope)
    return g_strdup (_ ("Click how far the slope goes, or type its length"));
  if (self->corners->len < 3)
    return g_strdup (_ ("Click the next corner, or type how far it is; drag "
                        "from it for an arc; Backspace takes a corner back"));
  return g_strdup (_ ("Click the next corner or type its distance; Enter or "
                      "the first corner closes the outline"));
}

static void
draw_side (CwDisplayList *list, CwPoint from, CwPoint to, CwLength bow)
{
  guint parts = bow == 0 ? 1 : ARC_PARTS;

  for (guint i = 1; i <= parts; i++)
    {
      CwPoint at = cw_bow_point (from, to, bow, (double) i / parts);

      cw_display_list_line_to (list, (double) at.x / 1e6,
                               (double) at.y / 1e6);
    }
}

static void
draw_way (const WallTool *self, CwDisplayList *list)
{
  CwPoint first = corner (self, 0);

  cw_display_list_begin (list, CW_STYLE_DRAFT, NULL);
  cw_display_list_move_to (list, (double) first.x / 1e6,
                           (double) first.y / 1e6);
  for (guint i = 1; i < self->corners->len; i++)
    draw_side (list, corner (self, i - 1), corner (self, i),
               g_array_index (self->bows, CwLength, i - 1));
  if (self->has_next && !self->dragging)
    draw_side (list, last (self), self->next, 0);
  cw_display_list_end (list);
}

static gboolean
draws_rectangle (const WallTool *self)
{
  return self->dragging && self->corners->len == 1;
}

static void
draw_rectangle (WallTool *self, CwDisplayList *list, double nm_per_pixel)
{
  CwBox box = cw_tool_box (corner (self, 0), self->next);

  cw_display_list_add_box (list, CW_STYLE_DRAFT, NULL, &box);
  cw_tool_draw_size (&self->tool, list, &box, nm_per_pixel);
}

static void
overlay (CwTool *tool, CwDisplayList *list, double nm_per_pixel)
{
  WallTool *self = (WallTool *) tool;
  guint n = self->corners->len;

  if (draws_rectangle (self))
    draw_rectangle (self, list, nm_per_pixel);
  else if (n > 0)
    draw_way (self, list);
  for (guint i = 0; i < n; i++)
    {
      cw_tool_draw_handle (list, corner (self, i), nm_per_pixel);
      if (i > 0)
        cw_tool_draw_length (tool, list, corner (self, i - 1),
                             corner (self, i), nm_per_pixel);
    }
  if (n > 0 && self->has_next && !self->dragging)
    cw_tool_draw_length (tool, list, last (self), self->next, nm_per_pixel);
  cw_tool_draw_snap (tool, list, nm_per_pixel);
}

const CwToolClass cw_tool_wall_class = {
  .size = sizeof (WallTool),
  .places = TRUE,
  .start = start,
  .clear = clear,
  .press = press,
  .move = move,
  .release = release,
  .enter_text = enter_text,
  .fields = list_fields,
  .wants_point = wants_point,
  .place_point = place_point,
  .finish = finish,
  .cancel = cancel,
  .remove = remove_last,
  .refresh = refresh,
  .hint = hint,
  .overlay = overlay,
};

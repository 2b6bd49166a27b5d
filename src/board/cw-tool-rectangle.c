/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The tools that place something by a rectangle: window, door, arch, unclad
 * area and band. Drag it, click two corners, or click one and type the size.
 */
#include "cw-tool-private.h"

typedef struct RectangleTool RectangleTool;

/* What is different among them. */
typedef struct
{
  const CwNodeType *type;
  const char *stem;         /* of ids */
  const char *edit;         /* N_() for the history */
  const char *first, *second;   /* N_() hints */
  guint most;               /* lengths that may be typed */
  gboolean stands;          /* on the base of the wall */
} Kind;

/* The form of an arch is 0: as the rise asks; else its head + 1. */
struct RectangleTool
{
  CwTool tool;
  const Kind *kind;
  gboolean has_anchor, pressed;
  CwPoint anchor, at;
};

static const Kind kinds[CW_N_TOOLS] = {
  [CW_TOOL_WINDOW]
  = { &cw_window_type, "o", N_ ("Place window"),
      N_ ("Drag the window’s rough opening, or click a corner"),
      N_ ("Click the opposite corner, or type width × height"), 2, FALSE },
  [CW_TOOL_DOOR]
  = { &cw_door_type, "o", N_ ("Place door"),
      N_ ("Drag the door’s rough opening, or click a corner; it stands on "
          "the base"),
      N_ ("Click the opposite corner, or type width × height"), 2, TRUE },
  [CW_TOOL_ARCH]
  = { &cw_arch_type, "o", N_ ("Place arch"),
      N_ ("Drag the arch up to its crown, or click a corner"),
      N_ ("Click the opposite corner, or type width × full height × rise"), 3,
      FALSE },
  [CW_TOOL_UNCLAD]
  = { &cw_unclad_type, "u", N_ ("Place unclad area"),
      N_ ("Drag over what is not clad, or click a corner"),
      N_ ("Click the opposite corner, or type width × height"), 2, FALSE },
  [CW_TOOL_BAND]
  = { &cw_band_type, "t", N_ ("Place band"),
      N_ ("Drag the band, or click a corner"),
      N_ ("Click the opposite corner, or type length × height"), 2, FALSE },
};

static void
start (CwTool *tool)
{
  ((RectangleTool *) tool)->kind = &kinds[tool->kind];
}

/* How far a level side of the outline that looks down and has @x over it is
 * from @y; FALSE when it is none. */
static gboolean
is_base_under (CwPoint from, CwPoint to, CwLength x)
{
  return from.y == to.y && from.x < to.x && x >= from.x && x <= to.x;
}

/* The level on which a door over @x stands, the nearest to @y. */
static CwLength
base_level (const CwWall *wall, CwLength x, CwLength y)
{
  CwLength level;
  gboolean found = FALSE;
  CwLoop loop;

  if (wall == NULL || wall->outline == NULL)
    return 0;
  level = cw_region_box (wall->outline).bottom;
  loop = cw_region_loop (wall->outline, 0);
  for (gsize i = 0; i < loop.n_sides; i++)
    {
      CwPoint from = loop.sides[i].start, to = cw_loop_end (&loop, i);

      if (!loop.sides[i].is_arc && is_base_under (from, to, x)
          && (!found || ABS (from.y - y) < ABS (level - y)))
        {
          level = from.y;
          found = TRUE;
        }
    }
  return level;
}

/* The box between two corners, let down or cut off to stand on the base. */
static CwBox
box_between (RectangleTool *self, CwPoint a, CwPoint b)
{
  CwBox box = cw_tool_box (a, b);

  if (self->kind->stands && !(self->tool.pointer.hold & CW_HOLD_FREE))
    {
      CwLength x = box.left + cw_box_width (&box) / 2;

      box.bottom = base_level (cw_tool_wall (&self->tool), x, box.bottom);
    }
  return box;
}

/* Of the chosen head, what gives it its usual look. */
static CwLength
rise_of_form (RectangleTool *self, CwLength width)
{
  switch ((CwArchHead) (self->tool.form - 1))
    {
    case CW_ARCH_SEMICIRCULAR:
      return width / 2;
    case CW_ARCH_POINTED:
      /* Each circle about the other springing. */
      return (CwLength) ((double) width * 0.8660254037844386);
    case CW_ARCH_SEMI_ELLIPTICAL:
    case CW_ARCH_THREE_CENTRED:
      return width / 3;
    case CW_ARCH_SEGMENTAL:
    default:
      return width / 5;
    }
}

/* The chosen head, unless it cannot stand with that rise. */
static CwArchHead
head_for (RectangleTool *self, CwLength width, CwLength rise)
{
  CwArchHead head = (CwArchHead) (self->tool.form - 1);

  if (self->tool.form == 0 || !cw_arch_is_possible (head, width, rise))
    return cw_edit_head_for (width, rise);
  return head;
}

/* About a fifth of the width, to a round measure; what an arch has until
 * somebody says otherwise. */
static CwLength
usual_rise (RectangleTool *self, const CwBox *box)
{
  CwLength step = self->tool.style.units == CW_UNITS_US ? CW_NM_PER_INCH / 4
                                                        : CW_MM (5);
  CwLength rise = MIN (cw_box_width (box) / 5, cw_box_height (box) / 2);

  if (self->tool.form > 0)
    return CLAMP (rise_of_form (self, cw_box_width (box)), 1,
                  cw_box_height (box) - 1);
  return rise > step ? rise - rise % step : MAX (rise, 1);
}

static void
put_box (CwNode *item, const CwBox *box)
{
  cw_node_put (item, "x", box->left);
  cw_node_put (item, "y", box->bottom);
  cw_node_put (item, "width", cw_box_width (box));
  cw_node_put (item, "height", cw_box_height (box));
}

static void
put_arch (RectangleTool *self, CwNode *item, const CwBox *box, CwLength rise)
{
  put_box (item, box);
  cw_node_put (item, "height", cw_box_height (box) - rise);
  cw_node_put (item, "rise", rise);
  cw_node_put (item, "head",
               head_for (self, cw_box_width (box), rise));
}

static void
put_corners (CwNode *item, const CwBox *box)
{
  CwPoint corners[] = {
    { box->left, box->bottom },
    { box->right, box->bottom },
    { box->right, box->top },
    { box->left, box->top },
  };
  CwNode *nodes[G_N_ELEMENTS (corners)];
  g_autoptr (CwList) list = NULL;

  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    {
      nodes[i] = cw_node_new (&cw_corner_type);
      cw_node_put (nodes[i], "x", corners[i].x);
      cw_node_put (nodes[i], "y", corners[i].y);
    }
  list = cw_list_new (nodes, G_N_ELEMENTS (nodes));
  for (guint i = 0; i < G_N_ELEMENTS (nodes); i++)
    cw_node_unref (nodes[i]);
  cw_node_set_list (item, CW_UNCLAD_CORNERS, list);
}

static CwNode *
new_item (RectangleTool *self, const char *id, const CwBox *box,
          CwLength rise)
{
  CwNode *item = cw_node_new (self->kind->type);

  cw_node_put_text (item, "id", id);
  if (item->type == &cw_unclad_type)
    put_corners (item, box);
  else if (item->type == &cw_arch_type)
    put_arch (self, item, box, rise);
  else
    put_box (item, box);
  return item;
}

/* @rise: of an arch; 0: the usual one. */
static gboolean
place (RectangleTool *self, const CwBox *box, CwLength rise)
{
  CwTool *tool = &self->tool;
  const CwElevation *elevation = cw_tool_elevation (tool);
  g_autofree char *id = NULL;
  g_autoptr (CwNode) item = NULL;
  g_autoptr (CwProject) project = NULL;

  self->has_anchor = self->pressed = FALSE;
  if (elevation == NULL || !cw_edit_box_is_sound (box))
    return FALSE;
  id = cw_project_free_id (cw_tool_project (tool), self->kind->stem);
  item = new_item (self, id, box, rise > 0 ? rise : usual_rise (self, box));
  project = cw_edit_add_item (cw_tool_project (tool), elevation, item);
  cw_tool_edit (tool, project, _ (self->kind->edit), id);
  cw_tool_placed (tool);
  return TRUE;
}

static void
aim (RectangleTool *self, const CwPointer *pointer)
{
  CwTool *tool = &self->tool;
  CwSnapField field = cw_tool_snap_field (tool, pointer);
  CwBox there = cw_tool_box (pointer->at, pointer->at);
  CwPoint by;

  self->at = cw_tool_snap (tool, pointer, &self->anchor,
                           self->has_anchor ? 1 : 0, NULL);
  by = cw_point (self->at.x - pointer->at.x, self->at.y - pointer->at.y);
  cw_tool_snap_gaps (tool, &field, &there, &by);
  self->at = cw_point (pointer->at.x + by.x, pointer->at.y + by.y);
  tool->snap.at = self->at;
}

static void
press (CwTool *tool, const CwPointer *pointer, guint n_press)
{
  RectangleTool *self = (RectangleTool *) tool;

  if (cw_tool_elevation (tool) == NULL)
    return;
  aim (self, pointer);
  if (self->has_anchor
      && cw_tool_is_apart (pointer, self->anchor, self->at,
                           CW_TOOL_DRAG_PIXELS))
    {
      CwBox box = box_between (self, self->anchor, self->at);

      place (self, &box, 0);
      return;
    }
  self->anchor = self->at;
  self->has_anchor = self->pressed = TRUE;
}

static void
move (CwTool *tool, const CwPointer *pointer)
{
  aim ((RectangleTool *) tool, pointer);
}

static void
release (CwTool *tool, const CwPointer *pointer)
{
  RectangleTool *self = (RectangleTool *) tool;
  CwBox box;

  if (!self->pressed)
    return;
  self->pressed = FALSE;
  aim (self, pointer);
  if (!cw_tool_is_apart (pointer, self->anchor, self->at,
                         CW_TOOL_DRAG_PIXELS))
    return;
  box = box_between (self, self->anchor, self->at);
  place (self, &box, 0);
}

static CwPoint
middle_of_wall (CwTool *tool)
{
  const CwWall *wall = cw_tool_wall (tool);
  CwBox box;

  if (wall == NULL || wall->outline == NULL)
    return cw_point (0, 0);
  box = cw_region_box (wall->outline);
  return cw_point (box.left + cw_box_width (&box) / 2,
                   box.bottom + cw_box_height (&box) / 2);
}

/* A typed size goes from the clicked corner to where the pointer is, or up
 * and to the right. */
static CwBox
typed_box (RectangleTool *self, CwLength width, CwLength height)
{
  CwTool *tool = &self->tool;
  CwPoint from = self->has_anchor    ? self->anchor
                 : tool->has_pointer ? self->at
                                     : middle_of_wall (tool);
  gboolean apart = self->has_anchor
                   && cw_tool_is_apart (&tool->pointer, from, self->at,
                                        CW_TOOL_SNAP_PIXELS);
  gboolean left = apart && self->at.x < from.x;
  gboolean down = apart && self->at.y < from.y;
  CwBox box = box_between (self, from,
                           cw_point (from.x + (left ? -width : width),
                                     from.y + (down ? -height : height)));

  box.top = box.bottom + height;
  return box;
}

static gboolean
refuse (GError **error, const char *sentence)
{
  cw_text_error_set (error, CW_TEXT_ERROR_RANGE, 0, "%s", sentence);
  return FALSE;
}

static gboolean
enter_text (CwTool *tool, const char *text, GError **error)
{
  RectangleTool *self = (RectangleTool *) tool;
  CwLength lengths[CW_TYPED_MOST] = { 0 };
  CwBox box;

  if (cw_tool_elevation (tool) == NULL)
    return refuse (error, _ ("Draw the wall’s outline first"));
  if (!cw_typed_lengths (text, &tool->style, 2, self->kind->most, lengths,
                         error))
    return FALSE;
  if (lengths[2] >= lengths[1])
    return refuse (error, _ ("The rise must be less than the full height"));
  box = typed_box (self, lengths[0], lengths[1]);
  if (place (self, &box, lengths[2]))
    return TRUE;
  return refuse (error, _ ("That is too large for a wall"));
}

static guint
list_fields (CwTool *tool, CwTypedField *fields)
{
  RectangleTool *self = (RectangleTool *) tool;
  CwBox box;
  gboolean is_arch = self->kind->type == &cw_arch_type;
  guint n;

  if (cw_tool_elevation (tool) == NULL)
    return 0;
  box = box_between (self, self->anchor, self->at);
  n = cw_tool_size_fields (
      fields, self->kind->type == &cw_band_type ? N_ ("Length") : N_ ("Width"),
      is_arch ? N_ ("Full height") : N_ ("Height"),
      self->has_anchor && cw_edit_box_is_sound (&box) ? &box : NULL);
  if (is_arch)
    fields[n++] = (CwTypedField) { N_ ("Rise"), CW_TYPED_SIZE,
                                   fields[0].has_now,
                                   usual_rise (self, &box), 0 };
  return n;
}

static CwToolWants
wants_point (CwTool *tool, CwPoint *last, CwPoint *now)
{
  RectangleTool *self = (RectangleTool *) tool;

  if (cw_tool_elevation (tool) == NULL)
    return CW_TOOL_WANTS_NONE;
  *last = self->anchor;
  *now = self->at;
  return self->has_anchor ? CW_TOOL_WANTS_NEXT : CW_TOOL_WANTS_FIRST;
}

/* The first corner is the one next to what it was measured from: a size that
 * is typed then goes on the same way. */
static gboolean
place_point (CwTool *tool, CwPoint at, CwPoint from)
{
  RectangleTool *self = (RectangleTool *) tool;
  CwLength reach = cw_tool_reach (&tool->pointer, 2 * CW_TOOL_SNAP_PIXELS);
  CwBox box;

  if (!cw_edit_point_is_sound (at))
    return FALSE;
  if (self->has_anchor)
    {
      box = box_between (self, self->anchor, at);
      return place (self, &box, 0);
    }
  self->has_anchor = TRUE;
  self->anchor = at;
  self->at = cw_point (at.x + (at.x < from.x ? -reach : reach),
                       at.y + (at.y < from.y ? -reach : reach));
  return TRUE;
}

static gboolean
cancel (CwTool *tool)
{
  RectangleTool *self = (RectangleTool *) tool;
  gboolean any = self->has_anchor;

  self->has_anchor = self->pressed = FALSE;
  return any;
}

static void
refresh (CwTool *tool)
{
  if (cw_tool_elevation (tool) == NULL)
    cancel (tool);
}

static void
next_form (CwTool *tool)
{
  RectangleTool *self = (RectangleTool *) tool;

  if (self->kind->type == &cw_arch_type)
    self->tool.form = (self->tool.form + 1) % (CW_ARCH_THREE_CENTRED + 2);
}

/* What the arch will have over its springing. */
static char *
arch_hint (RectangleTool *self)
{
  static const char *const heads[] = {
    N_ ("as the rise asks"), N_ ("semicircular"),  N_ ("segmental"),
    N_ ("semi-elliptical"),  N_ ("pointed"),       N_ ("three-centred"),
  };

  return g_strdup_printf (
      /* Translators: first what to do next, then the kind of arch. */
      _ ("%s. Head: %s; A chooses another"),
      self->has_anchor ? _ (self->kind->second) : _ (self->kind->first),
      _ (heads[self->tool.form]));
}

static char *
hint (CwTool *tool)
{
  RectangleTool *self = (RectangleTool *) tool;

  if (cw_tool_elevation (tool) == NULL)
    return g_strdup (_ ("Draw the wall’s outline first"));
  if (self->kind->type == &cw_arch_type)
    return arch_hint (self);
  return g_strdup (self->has_anchor ? _ (self->kind->second)
                                    : _ (self->kind->first));
}

static void
draw_draft (RectangleTool *self, CwDisplayList *list, double nm_per_pixel)
{
  CwBox box = box_between (self, self->anchor, self->at);

  if (!cw_edit_box_is_sound (&box))
    return;
  cw_tool_draw_size (&self->tool, list, &box, nm_per_pixel);
  if (self->kind->type != &cw_arch_type)
    cw_display_list_add_box (list, CW_STYLE_DRAFT, NULL, &box);
  else
    {
      g_autoptr (CwNode) arch
          = new_item (self, "", &box, usual_rise (self, &box));
      g_autoptr (CwRegion) shape = cw_opening_shape ((CwOpening *) arch);

      cw_display_list_add_region (list, CW_STYLE_DRAFT, NULL, shape);
    }
}

static void
overlay (CwTool *tool, CwDisplayList *list, double nm_per_pixel)
{
  RectangleTool *self = (RectangleTool *) tool;

  if (self->has_anchor)
    draw_draft (self, list, nm_per_pixel);
  cw_tool_draw_snap (tool, list, nm_per_pixel);
}

const CwToolClass cw_tool_rectangle_class = {
  .size = sizeof (RectangleTool),
  .places = TRUE,
  .start = start,
  .press = press,
  .move = move,
  .release = release,
  .next_form = next_form,
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

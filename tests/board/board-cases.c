/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "board-cases.h"

#include "cw-text-error.h"

#include <math.h>

static CwNode *
sized (const CwNodeType *type, const char *id, int x, int y, int width,
       int height)
{
  CwNode *node = cw_node_new (type);

  cw_node_put_text (node, "id", id);
  cw_node_put (node, "x", CW_MM (x));
  cw_node_put (node, "y", CW_MM (y));
  cw_node_put (node, "width", CW_MM (width));
  cw_node_put (node, "height", CW_MM (height));
  return node;
}

static CwList *
box_corners (int left, int bottom, int right, int top)
{
  const CwCorner corners[] = {
    { .at = { CW_MM (left), CW_MM (bottom) }, .tag = CW_EDGE_BASE },
    { .at = { CW_MM (right), CW_MM (bottom) }, .tag = CW_EDGE_OUTSIDE_CORNER },
    { .at = { CW_MM (right), CW_MM (top) }, .tag = CW_EDGE_EAVE },
    { .at = { CW_MM (left), CW_MM (top) }, .tag = CW_EDGE_OUTSIDE_CORNER },
  };

  return cw_corners_to_list (corners, G_N_ELEMENTS (corners));
}

static CwNode *
unclad (const char *id, int left, int bottom, int right, int top)
{
  CwNode *node = cw_node_new (&cw_unclad_type);
  g_autoptr (CwList) corners = box_corners (left, bottom, right, top);

  cw_node_put_text (node, "id", id);
  cw_node_set_list (node, CW_UNCLAD_CORNERS, corners);
  return node;
}

/* (transfer full) of the items */
static CwNode *
elevation_with (const char *id, int width, int height, CwNode **items,
                gsize n)
{
  CwNode *elevation = cw_node_new (&cw_elevation_type);
  g_autoptr (CwNode) outline = cw_node_new (&cw_outline_type);
  g_autoptr (CwList) corners = box_corners (0, 0, width, height);
  g_autoptr (CwList) list = cw_list_new (items, n);

  cw_node_set_list (outline, CW_OUTLINE_CORNERS, corners);
  cw_node_put_text (elevation, "id", id);
  cw_node_put_text (elevation, "name", "South");
  cw_node_put_text (elevation, "buildup", "b1");
  cw_node_set_child (elevation, CW_ELEVATION_OUTLINE, outline);
  cw_node_set_list (elevation, CW_ELEVATION_ITEMS, list);
  for (gsize i = 0; i < n; i++)
    cw_node_unref (items[i]);
  return elevation;
}

static CwProject *
project_with (CwNode *elevation, CwNode *sheet)
{
  g_autoptr (CwProject) plain = cw_project_new_default (CW_UNITS_METRIC);
  g_autoptr (CwList) elevations = cw_list_new (&elevation, 1);
  CwNode *project = cw_node_copy (&plain->node);

  cw_node_set_list (project, CW_PROJECT_ELEVATIONS, elevations);
  if (sheet)
    {
      g_autoptr (CwList) sheets = cw_list_new (&sheet, 1);

      cw_node_set_list (project, CW_PROJECT_SHEETS, sheets);
    }
  cw_node_freeze (project);
  return (CwProject *) project;
}

static CwNode *
usual_elevation (void)
{
  CwNode *items[] = {
    sized (&cw_window_type, "o1", 1000, 900, 1200, 1400),
    sized (&cw_stub_out_type, "p1", 4500, 600, 100, 100),
    sized (&cw_band_type, "t1", 2500, 2600, 3000, 150),
    unclad ("u1", 5000, 1500, 5800, 2000),
  };

  return elevation_with ("e1", 6000, 3000, items, G_N_ELEMENTS (items));
}

static CwDocument *
shown (const CwProject *project)
{
  CwDocument *document = cw_document_new (project);

  cw_document_show_elevation (document, "e1");
  return document;
}

CwDocument *
case_empty (CwUnits units)
{
  g_autoptr (CwProject) project = cw_project_new_default (units);

  return cw_document_new (project);
}

CwDocument *
case_wall (void)
{
  g_autoptr (CwNode) elevation = usual_elevation ();
  g_autoptr (CwProject) project = project_with (elevation, NULL);

  return shown (project);
}

static CwNode *
sheet_of (CwDecimal mm_per_point)
{
  CwNode *sheet = cw_node_new (&cw_sheet_type);
  g_autoptr (CwNode) scale = cw_node_new (&cw_scale_type);

  cw_node_put (scale, "across", mm_per_point);
  cw_node_put (scale, "along", mm_per_point);
  cw_node_put_text (sheet, "id", "s1");
  cw_node_put_text (sheet, "file", "sheet.pdf");
  cw_node_set_child (sheet, CW_SHEET_SCALE, scale);
  return sheet;
}

CwDocument *
case_wall_on_sheet (void)
{
  g_autoptr (CwNode) elevation = usual_elevation ();
  g_autoptr (CwNode) sheet
      = sheet_of ((CwDecimal) llround (50 * 25.4 / 72 * CW_DECIMAL_ONE));
  g_autoptr (CwProject) project = NULL;

  cw_node_put_text (elevation, "sheet", "s1");
  cw_node_put (elevation, "at-x", 100 * CW_DECIMAL_ONE);
  cw_node_put (elevation, "at-y", 400 * CW_DECIMAL_ONE);
  project = project_with (elevation, sheet);
  return shown (project);
}

static CwNode *
long_wall_item (guint i)
{
  g_autofree char *id = g_strdup_printf ("o%u", i + 1);
  int x = 600 + 960 * (int) i;
  CwNode *node;

  if (i % 6 < 3)
    return sized (&cw_window_type, id, x, 900 + 2400 * (int) (i % 3), 800,
                  1400);
  if (i % 6 > 3)
    return sized (&cw_stub_out_type, id, x + 300, 1200 + 40 * (int) i, 150,
                  150);
  node = sized (&cw_arch_type, id, x, 200, 850, 2000);
  cw_node_put (node, "rise", CW_MM (425));
  cw_node_put (node, "head", CW_ARCH_SEMICIRCULAR);
  return node;
}

CwProject *
case_long_wall (void)
{
  CwNode *items[60];
  g_autoptr (CwNode) elevation = NULL;

  for (guint i = 0; i < G_N_ELEMENTS (items); i++)
    items[i] = long_wall_item (i);
  elevation
      = elevation_with ("e1", 60000, 9000, items, G_N_ELEMENTS (items));
  return project_with (elevation, NULL);
}

const CwElevation *
case_elevation (CwDocument *document, const char *id)
{
  const CwElevation *elevation
      = cw_project_elevation (cw_document_project (document), id);

  g_assert_nonnull (elevation);
  return elevation;
}

const CwNode *
case_item (CwDocument *document, const char *id)
{
  return cw_node_find (&cw_document_project (document)->node, id);
}

gint64
case_get (const CwNode *node, const char *field)
{
  int index = cw_node_type_field (node->type, field);

  g_assert_cmpint (index, >=, 0);
  return cw_node_get (node, (guint) index);
}

CwBox
case_box (int left, int bottom, int right, int top)
{
  return (CwBox) { CW_MM (left), CW_MM (bottom), CW_MM (right), CW_MM (top) };
}

void
case_assert_outline (CwDocument *document, const char *id, gsize n,
                     const int (*corners)[2])
{
  const CwElevation *elevation = case_elevation (document, id);
  const CwList *list;

  g_assert_nonnull (elevation->outline);
  list = ((const CwOutline *) elevation->outline)->corners;
  g_assert_cmpuint (cw_list_length (list), ==, n);
  for (gsize i = 0; i < n; i++)
    {
      const CwCornerNode *corner = cw_list_at (list, i);

      g_assert_cmpint (corner->x, ==, CW_MM (corners[i][0]));
      g_assert_cmpint (corner->y, ==, CW_MM (corners[i][1]));
    }
}

void
case_assert_box (CwDocument *document, const char *id, int x, int y,
                 int width, int height)
{
  const CwNode *item = case_item (document, id);

  g_assert_nonnull (item);
  g_assert_cmpint (case_get (item, "x"), ==, CW_MM (x));
  g_assert_cmpint (case_get (item, "y"), ==, CW_MM (y));
  g_assert_cmpint (case_get (item, "width"), ==, CW_MM (width));
  g_assert_cmpint (case_get (item, "height"), ==, CW_MM (height));
}

void
case_assert_selected (CwDocument *document, const char *id)
{
  const char *const *ids = cw_document_selection (document);

  if (id == NULL)
    {
      g_assert_null (ids[0]);
      return;
    }
  g_assert_cmpstr (ids[0], ==, id);
  g_assert_null (ids[1]);
}

/* -------------------------------------------------------------- the hand */

Hand
hand_new (CwToolKind kind, CwDocument *document)
{
  return (Hand) { document, cw_tool_new (kind, document), 5, CW_HOLD_NONE, 0,
                  0 };
}

void
hand_clear (Hand *hand)
{
  cw_tool_free (hand->tool);
  g_object_unref (hand->document);
}

void
hand_take (Hand *hand, CwToolKind kind)
{
  cw_tool_free (hand->tool);
  hand->tool = cw_tool_new (kind, hand->document);
}

static CwPointer
pointer (Hand *hand, double x, double y)
{
  hand->x = x;
  hand->y = y;
  return (CwPointer) {
    .at = cw_point ((CwLength) llround (x * 1e6), (CwLength) llround (y * 1e6)),
    .nm_per_pixel = hand->mm_per_pixel * 1e6,
    .hold = hand->hold,
  };
}

/* As the board does after every event. */
static void
follow (Hand *hand)
{
  cw_tool_take_shift (hand->tool);
  cw_tool_refresh (hand->tool);
}

void
hand_move (Hand *hand, double x, double y)
{
  CwPointer at = pointer (hand, x, y);

  cw_tool_move (hand->tool, &at);
  follow (hand);
}

void
hand_press (Hand *hand, double x, double y)
{
  CwPointer at = pointer (hand, x, y);

  cw_tool_press (hand->tool, &at, 1);
  follow (hand);
}

void
hand_release (Hand *hand, double x, double y)
{
  CwPointer at = pointer (hand, x, y);

  cw_tool_release (hand->tool, &at);
  follow (hand);
}

void
hand_click (Hand *hand, double x, double y)
{
  hand_move (hand, x, y);
  hand_press (hand, x, y);
  hand_release (hand, x, y);
}

void
hand_drag (Hand *hand, double x0, double y0, double x1, double y1)
{
  hand_move (hand, x0, y0);
  hand_press (hand, x0, y0);
  for (int i = 1; i <= 4; i++)
    hand_move (hand, x0 + (x1 - x0) * i / 4, y0 + (y1 - y0) * i / 4);
  hand_release (hand, x1, y1);
}

void
hand_type (Hand *hand, const char *text)
{
  g_autoptr (GError) error = NULL;

  if (!cw_tool_enter_text (hand->tool, text, &error))
    g_error ("“%s” was refused: %s", text, error->message);
  g_assert_no_error (error);
  follow (hand);
}

gsize
hand_type_wrong (Hand *hand, const char *text)
{
  g_autoptr (GError) error = NULL;

  g_assert_false (cw_tool_enter_text (hand->tool, text, &error));
  g_assert_nonnull (error);
  g_assert_cmpuint (error->domain, ==, CW_TEXT_ERROR);
  follow (hand);
  return cw_text_error_offset (error);
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Moving, filling and removing what lies on a wall.
 */
#include "cw-dimension.h"
#include "cw-edit.h"

/* No field of a place goes beyond. */
#define FARTHEST CW_MM (10000000)

static CwList *
moved_corners (const CwList *corners, CwLength dx, CwLength dy)
{
  g_autoptr (GPtrArray) moved
      = g_ptr_array_new_with_free_func (cw_node_unref);

  for (gsize i = 0; i < cw_list_length (corners); i++)
    g_ptr_array_add (moved, cw_edit_moved (cw_list_at (corners, i), dx, dy));
  return cw_list_new ((CwNode *const *) moved->pdata, moved->len);
}

/* Of a node with those fields. */
static void
shift_place (CwNode *node, const char *x_name, const char *y_name,
             CwLength dx, CwLength dy)
{
  int x = cw_node_type_field (node->type, x_name);
  int y = cw_node_type_field (node->type, y_name);

  g_assert (x >= 0 && y >= 0);
  cw_node_set (node, (guint) x, cw_node_get (node, (guint) x) + dx);
  cw_node_set (node, (guint) y, cw_node_get (node, (guint) y) + dy);
}

CwNode *
cw_edit_moved (const CwNode *item, CwLength dx, CwLength dy)
{
  CwNode *by;

  g_return_val_if_fail (item != NULL, NULL);

  if (dx == 0 && dy == 0)
    return cw_node_ref (item);
  by = cw_node_copy (item);
  if (item->type == &cw_unclad_type)
    {
      g_autoptr (CwList) corners
          = moved_corners (cw_node_list (item, CW_UNCLAD_CORNERS), dx, dy);

      cw_node_set_list (by, CW_UNCLAD_CORNERS, corners);
    }
  else
    shift_place (by, "x", "y", dx, dy);
  if (item->type == &cw_dimension_type)
    shift_place (by, "to-x", "to-y", dx, dy);
  cw_node_freeze (by);
  return by;
}

/* The items of @elevation with the chosen ones moved, or left out when
 * @remove. */
static CwList *
changed_items (const CwElevation *elevation, const char *const *ids,
               gboolean remove, CwLength dx, CwLength dy)
{
  g_autoptr (GPtrArray) items
      = g_ptr_array_new_with_free_func (cw_node_unref);

  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    {
      const CwNode *item = cw_list_at (elevation->items, i);
      gboolean chosen = g_strv_contains (ids, cw_node_id (item));

      if (!chosen)
        g_ptr_array_add (items, cw_node_ref (item));
      else if (!remove)
        g_ptr_array_add (items, cw_edit_moved (item, dx, dy));
    }
  return cw_list_new ((CwNode *const *) items->pdata, items->len);
}

static gboolean
has_any (const CwElevation *elevation, const char *const *ids)
{
  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    if (g_strv_contains (ids, cw_node_id (cw_list_at (elevation->items, i))))
      return TRUE;
  return FALSE;
}

CwProject *
cw_edit_move (const CwProject *project, const CwElevation *elevation,
              const char *const *ids, CwLength dx, CwLength dy)
{
  g_autoptr (CwNode) by = NULL;
  g_autoptr (CwList) items = NULL;

  g_return_val_if_fail (project && elevation && ids, NULL);

  if ((dx == 0 && dy == 0) || !has_any (elevation, ids))
    return cw_node_ref (project);
  by = cw_node_copy (&elevation->node);
  items = changed_items (elevation, ids, FALSE, dx, dy);
  cw_node_set_list (by, CW_ELEVATION_ITEMS, items);
  return cw_edit_replace (project, &elevation->node, by);
}

CwProject *
cw_edit_remove (const CwProject *project, const CwElevation *elevation,
                const char *const *ids)
{
  gboolean outline;
  g_autoptr (CwNode) by = NULL;
  g_autoptr (CwList) items = NULL;

  g_return_val_if_fail (project && elevation && ids, NULL);

  outline = elevation->outline && g_strv_contains (ids, elevation->id);
  if (!outline && !has_any (elevation, ids))
    return cw_node_ref (project);
  by = cw_node_copy (&elevation->node);
  if (outline)
    cw_node_set_child (by, CW_ELEVATION_OUTLINE, NULL);
  items = changed_items (elevation, ids, TRUE, 0, 0);
  cw_node_set_list (by, CW_ELEVATION_ITEMS, items);
  return cw_edit_replace (project, &elevation->node, by);
}

CwArchHead
cw_edit_head_for (CwLength width, CwLength rise)
{
  if (2 * rise == width)
    return CW_ARCH_SEMICIRCULAR;
  return 2 * rise < width ? CW_ARCH_SEGMENTAL : CW_ARCH_POINTED;
}

/* The rise stays as it was where its head allows it over the new width, and
 * leaves something for the height under the springing. */
static CwLength
fitting_rise (const CwOpening *arch, CwLength width, CwLength full_height)
{
  CwLength least, most;

  cw_arch_rise_limits ((CwArchHead) arch->head, width, &least, &most);
  most = MIN (most, full_height - 1);
  return CLAMP (arch->rise, MIN (least, most), most);
}

static void
put_if_other (CwNode *node, const char *field, gint64 value)
{
  int index = cw_node_type_field (node->type, field);

  g_assert (index >= 0);
  if (cw_node_get (node, (guint) index) != value)
    cw_node_set (node, (guint) index, value);
}

/* What its mark gives is stated by the opening only where it differs now. */
static void
fill_opening (CwNode *by, const CwOpening *resolved, const CwBox *box)
{
  CwLength width = cw_box_width (box), height = cw_box_height (box);
  CwLength rise = 0;

  if (resolved->node.type == &cw_arch_type)
    rise = fitting_rise (resolved, width, height);
  put_if_other (by, "x", box->left);
  put_if_other (by, "y", box->bottom);
  if (width != resolved->width)
    cw_node_put (by, "width", width);
  if (height - rise != resolved->height)
    cw_node_put (by, "height", height - rise);
  if (rise != resolved->rise)
    cw_node_put (by, "rise", rise);
}

static void
fill_stub_out (CwNode *by, const CwBox *box)
{
  CwLength width = cw_box_width (box), height = cw_box_height (box);

  if (((CwStubOut *) by)->shape == CW_SHAPE_ROUND)
    width = height = MIN (width, height);
  put_if_other (by, "x", box->left + cw_box_width (box) / 2);
  put_if_other (by, "y", box->bottom + cw_box_height (box) / 2);
  put_if_other (by, "width", width);
  put_if_other (by, "height", height);
}

static void
fill_band (CwNode *by, const CwBox *box)
{
  put_if_other (by, "x", box->left);
  put_if_other (by, "y", box->bottom);
  put_if_other (by, "width", cw_box_width (box));
  put_if_other (by, "height", cw_box_height (box));
}

CwNode *
cw_edit_fill (const CwProject *project, const CwNode *item, const CwBox *box)
{
  CwNode *by;

  g_return_val_if_fail (cw_edit_box_is_sound (box), cw_node_ref (item));

  by = cw_node_copy (item);
  if (cw_node_is_opening (item))
    {
      g_autoptr (CwOpening) resolved = cw_project_resolve_opening (
          project, (const CwOpening *) item);

      fill_opening (by, resolved, box);
    }
  else if (item->type == &cw_stub_out_type)
    fill_stub_out (by, box);
  else if (item->type == &cw_band_type)
    fill_band (by, box);
  cw_node_freeze (by);
  return by;
}

static gboolean
is_of_circles (gint64 head)
{
  return head == CW_ARCH_SEGMENTAL || head == CW_ARCH_SEMICIRCULAR
         || head == CW_ARCH_POINTED;
}

CwNode *
cw_edit_spring (const CwProject *project, const CwNode *arch, CwLength level)
{
  g_autoptr (CwOpening) resolved = NULL;
  CwLength full, rise, least, most;
  gint64 head;
  CwNode *by;

  g_return_val_if_fail (arch && arch->type == &cw_arch_type, NULL);

  resolved = cw_project_resolve_opening (project, (const CwOpening *) arch);
  full = resolved->height + resolved->rise;
  rise = CLAMP (resolved->y + full - level, 1, full - 1);
  head = is_of_circles (resolved->head)
             ? cw_edit_head_for (resolved->width, rise)
             : resolved->head;
  cw_arch_rise_limits ((CwArchHead) head, resolved->width, &least, &most);
  rise = CLAMP (rise, least, MIN (most, full - 1));
  by = cw_node_copy (arch);
  cw_node_put (by, "rise", rise);
  cw_node_put (by, "height", full - rise);
  if (head != resolved->head)
    cw_node_put (by, "head", head);
  cw_node_freeze (by);
  return by;
}

gboolean
cw_edit_point_is_sound (CwPoint point)
{
  return ABS (point.x) <= FARTHEST && ABS (point.y) <= FARTHEST;
}

gboolean
cw_edit_box_is_sound (const CwBox *box)
{
  return cw_box_width (box) >= 2 && cw_box_height (box) >= 2
         && cw_edit_point_is_sound (cw_point (box->left, box->bottom))
         && cw_edit_point_is_sound (cw_point (box->right, box->top));
}

/* An item's place, or an unclad area's corners. */
static gboolean
is_in_bounds (const CwNode *node)
{
  int x = cw_node_type_field (node->type, "x");
  int y = cw_node_type_field (node->type, "y");
  const CwList *corners;

  if (node->type == &cw_dimension_type)
    {
      CwBox box = cw_dimension_box ((const CwDimension *) node);

      return cw_edit_point_is_sound (cw_point (box.left, box.bottom))
             && cw_edit_point_is_sound (cw_point (box.right, box.top));
    }
  if (x >= 0 && y >= 0)
    return cw_edit_point_is_sound (
        cw_point (cw_node_get (node, (guint) x), cw_node_get (node, (guint) y)));
  if (node->type != &cw_unclad_type)
    return TRUE;
  corners = cw_node_list (node, CW_UNCLAD_CORNERS);
  for (gsize i = 0; i < cw_list_length (corners); i++)
    if (!is_in_bounds (cw_list_at (corners, i)))
      return FALSE;
  return TRUE;
}

gboolean
cw_edit_is_in_bounds (const CwProject *project, const char *const *ids)
{
  for (; *ids; ids++)
    {
      const CwNode *node = cw_node_find (&project->node, *ids);

      if (node && !is_in_bounds (node))
        return FALSE;
    }
  return TRUE;
}

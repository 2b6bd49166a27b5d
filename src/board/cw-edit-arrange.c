/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-edit-arrange.h"

#include <stdlib.h>

#include "cw-choose.h"
#include "cw-free-ids.h"
#include "cw-hit.h"

/* An item to be moved, and where it is. */
typedef struct
{
  const CwNode *item;
  CwBox box;
} Placed;

static CwProject *
with_items (const CwProject *project, const CwElevation *elevation,
            const GPtrArray *items)
{
  g_autoptr (CwList) list
      = cw_list_new ((CwNode *const *) items->pdata, items->len);
  g_autoptr (CwNode) by = cw_node_copy (&elevation->node);

  cw_node_set_list (by, CW_ELEVATION_ITEMS, list);
  return cw_edit_replace (project, &elevation->node, by);
}

static const CwNode *
find_item (const CwElevation *elevation, const char *id)
{
  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    {
      const CwNode *item = cw_list_at (elevation->items, i);

      if (g_strcmp0 (cw_node_id (item), id) == 0)
        return item;
    }
  return NULL;
}

/* The items with those ids, in the order of the ids. */
static GArray *
find_placed (const CwProject *project, const CwElevation *elevation,
             const char *const *ids)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (Placed));
  g_autoptr (CwWall) wall = cw_wall_new (project, elevation);

  for (; *ids; ids++)
    {
      Placed placed = { find_item (elevation, *ids), { 0, 0, 0, 0 } };

      if (placed.item && cw_hit_bounds (wall, *ids, &placed.box))
        g_array_append_val (found, placed);
    }
  return found;
}

/* FALSE: there are none. */
static gboolean
bounds_of (const GArray *placed, CwBox *box)
{
  if (placed->len == 0)
    return FALSE;
  *box = g_array_index (placed, Placed, 0).box;
  for (guint i = 1; i < placed->len; i++)
    *box = cw_box_around (box, &g_array_index (placed, Placed, i).box);
  return TRUE;
}

gboolean
cw_edit_bounds (const CwProject *project, const CwElevation *elevation,
                const char *const *ids, CwBox *box)
{
  g_autoptr (GArray) found = NULL;

  g_return_val_if_fail (project && elevation && ids && box, FALSE);

  found = find_placed (project, elevation, ids);
  return bounds_of (found, box);
}

/* @elevation's items with each of @former replaced by the one of @by in the
 * same place. */
static CwProject *
exchange (const CwProject *project, const CwElevation *elevation,
          GPtrArray *former, const GPtrArray *by)
{
  g_autoptr (GPtrArray) items
      = g_ptr_array_new_with_free_func (cw_node_unref);
  gboolean any = FALSE;

  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    {
      CwNode *item = cw_list_at (elevation->items, i);
      guint at;

      if (g_ptr_array_find (former, item, &at))
        {
          any |= by->pdata[at] != (gpointer) item;
          item = by->pdata[at];
        }
      g_ptr_array_add (items, cw_node_ref (item));
    }
  return any ? with_items (project, elevation, items)
             : cw_node_ref (project);
}

/* Every one of @placed moved by its own way. */
static CwProject *
move_each (const CwProject *project, const CwElevation *elevation,
           const GArray *placed, const CwPoint *ways)
{
  g_autoptr (GPtrArray) former = g_ptr_array_new ();
  g_autoptr (GPtrArray) by = g_ptr_array_new_with_free_func (cw_node_unref);

  for (guint i = 0; i < placed->len; i++)
    {
      const CwNode *item = g_array_index (placed, Placed, i).item;

      g_ptr_array_add (former, (gpointer) item);
      g_ptr_array_add (by, cw_edit_moved (item, ways[i].x, ways[i].y));
    }
  return exchange (project, elevation, former, by);
}

static CwPoint
way_into_line (const CwBox *box, const CwBox *with, CwAlign how)
{
  switch (how)
    {
    case CW_ALIGN_LEFT:
      return cw_point (with->left - box->left, 0);
    case CW_ALIGN_RIGHT:
      return cw_point (with->right - box->right, 0);
    case CW_ALIGN_CENTRE:
      return cw_point ((with->left + with->right - box->left - box->right) / 2,
                       0);
    case CW_ALIGN_BOTTOM:
      return cw_point (0, with->bottom - box->bottom);
    case CW_ALIGN_TOP:
      return cw_point (0, with->top - box->top);
    case CW_ALIGN_MIDDLE:
      return cw_point (0, (with->bottom + with->top - box->bottom - box->top)
                              / 2);
    default:
      g_return_val_if_reached (cw_point (0, 0));
    }
}

CwProject *
cw_edit_align (const CwProject *project, const CwElevation *elevation,
               const char *const *ids, CwAlign how)
{
  g_autoptr (GArray) placed = NULL;
  g_autofree CwPoint *ways = NULL;

  g_return_val_if_fail (project && elevation && ids, NULL);

  placed = find_placed (project, elevation, ids);
  ways = g_new0 (CwPoint, MAX (placed->len, 1));
  for (guint i = 1; i < placed->len; i++)
    ways[i] = way_into_line (&g_array_index (placed, Placed, i).box,
                             &g_array_index (placed, Placed, 0).box, how);
  return move_each (project, elevation, placed, ways);
}

static int
compare_across (gconstpointer a, gconstpointer b)
{
  const CwBox *one = &((const Placed *) a)->box;
  const CwBox *other = &((const Placed *) b)->box;

  return one->left < other->left ? -1 : one->left > other->left;
}

static int
compare_up (gconstpointer a, gconstpointer b)
{
  const CwBox *one = &((const Placed *) a)->box;
  const CwBox *other = &((const Placed *) b)->box;

  return one->bottom < other->bottom ? -1 : one->bottom > other->bottom;
}

static CwLength
size_of (const CwBox *box, gboolean upright)
{
  return upright ? cw_box_height (box) : cw_box_width (box);
}

static CwLength
start_of (const CwBox *box, gboolean upright)
{
  return upright ? box->bottom : box->left;
}

/* The room between the first and the last of @placed, in order, that is not
 * taken up; less than nothing when they overlap. */
static CwLength
free_room (const GArray *placed, gboolean upright)
{
  const CwBox *first = &g_array_index (placed, Placed, 0).box;
  const CwBox *last = &g_array_index (placed, Placed, placed->len - 1).box;
  CwLength room = start_of (last, upright) - start_of (first, upright);

  for (guint i = 0; i + 1 < placed->len; i++)
    room -= size_of (&g_array_index (placed, Placed, i).box, upright);
  return room;
}

CwProject *
cw_edit_distribute (const CwProject *project, const CwElevation *elevation,
                    const char *const *ids, gboolean upright)
{
  g_autoptr (GArray) placed = NULL;
  g_autofree CwPoint *ways = NULL;
  CwLength room, sizes = 0;

  g_return_val_if_fail (project && elevation && ids, NULL);

  placed = find_placed (project, elevation, ids);
  if (placed->len < 3)
    return cw_node_ref (project);
  g_array_sort (placed, upright ? compare_up : compare_across);
  room = free_room (placed, upright);
  ways = g_new0 (CwPoint, placed->len);
  for (guint i = 1; i + 1 < placed->len; i++)
    {
      const CwBox *box = &g_array_index (placed, Placed, i).box;
      CwLength to = start_of (&g_array_index (placed, Placed, 0).box, upright);
      CwLength way;

      sizes += size_of (&g_array_index (placed, Placed, i - 1).box, upright);
      to += sizes + room * i / ((CwLength) placed->len - 1);
      way = to - start_of (box, upright);
      ways[i] = upright ? cw_point (0, way) : cw_point (way, 0);
    }
  return move_each (project, elevation, placed, ways);
}

static CwLength
width_of (const CwProject *project, const CwNode *item)
{
  g_autoptr (CwOpening) resolved = NULL;
  int field;

  if (cw_node_is_opening (item))
    {
      resolved
          = cw_project_resolve_opening (project, (const CwOpening *) item);
      return resolved->width;
    }
  if (item->type == &cw_stub_out_type)
    return 0;
  field = cw_node_type_field (item->type, "width");
  return field >= 0 ? cw_node_get (item, (guint) field) : 0;
}

/* Corners and what stands at them turned over, and their order turned round,
 * so that they run the same way as before. A side belongs to the corner that
 * it starts from. */
static CwList *
mirrored_corners (const CwList *corners, CwLength sum)
{
  g_autoptr (GArray) former = cw_corners_from_list (corners);
  guint n = former->len;
  g_autofree CwCorner *by = g_new0 (CwCorner, MAX (n, 1));

  for (guint i = 0; i < n; i++)
    {
      by[i] = g_array_index (former, CwCorner, (2 * n - 2 - i) % n);
      by[i].at = g_array_index (former, CwCorner, n - 1 - i).at;
      by[i].at.x = sum - by[i].at.x;
    }
  return cw_corners_to_list (by, n);
}

/* The line of an aligned one turns to the other side of its way. */
static void
mirror_dimension (CwNode *by, CwLength sum)
{
  const CwDimension *former = (const CwDimension *) by;
  CwLength x = sum - former->x, to_x = sum - former->to_x;

  if (former->way != CW_DIMENSION_LEVEL && former->offset != 0)
    cw_node_put (by, "offset", -former->offset);
  cw_node_put (by, "x", x);
  cw_node_put (by, "to-x", to_x);
}

CwNode *
cw_edit_mirrored (const CwProject *project, const CwNode *item, CwLength sum)
{
  CwNode *by;

  g_return_val_if_fail (project && item, NULL);

  by = cw_node_copy (item);
  if (item->type == &cw_unclad_type)
    {
      g_autoptr (CwList) corners
          = mirrored_corners (cw_node_list (item, CW_UNCLAD_CORNERS), sum);

      cw_node_set_list (by, CW_UNCLAD_CORNERS, corners);
    }
  else if (item->type == &cw_dimension_type)
    mirror_dimension (by, sum);
  else
    {
      int x = cw_node_type_field (item->type, "x");

      cw_node_set (by, (guint) x,
                   sum - cw_node_get (item, (guint) x)
                       - width_of (project, item));
    }
  cw_node_freeze (by);
  return by;
}

CwProject *
cw_edit_mirror (const CwProject *project, const CwElevation *elevation,
                const char *const *ids)
{
  g_autoptr (GPtrArray) former = g_ptr_array_new ();
  g_autoptr (GPtrArray) by = g_ptr_array_new_with_free_func (cw_node_unref);
  g_autoptr (GArray) placed = NULL;
  CwBox box;

  g_return_val_if_fail (project && elevation && ids, NULL);

  placed = find_placed (project, elevation, ids);
  if (!bounds_of (placed, &box))
    return cw_node_ref (project);
  for (guint i = 0; i < placed->len; i++)
    {
      const CwNode *item = g_array_index (placed, Placed, i).item;
      CwNode *turned = cw_edit_mirrored (project, item, box.left + box.right);

      g_ptr_array_add (former, (gpointer) item);
      g_ptr_array_add (by, turned);
      if (cw_node_equal (turned, item))
        {
          by->pdata[by->len - 1] = cw_node_ref (item);
          cw_node_unref (turned);
        }
    }
  return exchange (project, elevation, former, by);
}

/* Left and right, added up, of what the whole elevation is turned about. */
static CwLength
middle_sum (const CwProject *project, const CwElevation *elevation)
{
  g_autoptr (CwWall) wall = cw_wall_new (project, elevation);
  g_auto (GStrv) ids = cw_choose_all (elevation);
  CwBox box = { 0, 0, 0, 0 };

  if (wall->outline)
    box = cw_region_box (wall->outline);
  else
    cw_edit_bounds (project, elevation, (const char *const *) ids, &box);
  return box.left + box.right;
}

CwProject *
cw_edit_mirror_elevation (const CwProject *project,
                          const CwElevation *elevation)
{
  g_autoptr (GPtrArray) items
      = g_ptr_array_new_with_free_func (cw_node_unref);
  g_autoptr (CwNode) by = NULL;
  g_autoptr (CwList) list = NULL;
  CwLength sum;

  g_return_val_if_fail (project && elevation, NULL);

  sum = middle_sum (project, elevation);
  by = cw_node_copy (&elevation->node);
  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    g_ptr_array_add (items,
                     cw_edit_mirrored (
                         project, cw_list_at (elevation->items, i), sum));
  list = cw_list_new ((CwNode *const *) items->pdata, items->len);
  cw_node_set_list (by, CW_ELEVATION_ITEMS, list);
  if (elevation->outline)
    {
      g_autoptr (CwNode) outline = cw_node_copy (elevation->outline);
      g_autoptr (CwList) corners = mirrored_corners (
          cw_node_list (elevation->outline, CW_OUTLINE_CORNERS), sum);

      cw_node_set_list (outline, CW_OUTLINE_CORNERS, corners);
      cw_node_set_child (by, CW_ELEVATION_OUTLINE, outline);
    }
  return cw_edit_replace (project, &elevation->node, by);
}

static CwPoint
step_of (CwPoint way, guint i, guint n, gboolean whole)
{
  CwLength by = whole ? (CwLength) n : 1;

  return cw_point (way.x * i / by, way.y * i / by);
}

CwProject *
cw_edit_repeat (const CwProject *project, const CwElevation *elevation,
                const char *const *ids, guint n, CwPoint way, gboolean whole,
                char ***new_ids)
{
  g_autoptr (GArray) placed = NULL;
  g_autoptr (CwFreeIds) free_ids = NULL;
  g_autoptr (GPtrArray) items
      = g_ptr_array_new_with_free_func (cw_node_unref);
  g_autoptr (GStrvBuilder) made = g_strv_builder_new ();

  g_return_val_if_fail (project && elevation && ids && new_ids, NULL);
  g_return_val_if_fail (n <= CW_REPEAT_MOST, NULL);

  placed = find_placed (project, elevation, ids);
  free_ids = cw_free_ids_new (project);
  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    g_ptr_array_add (items, cw_node_ref (cw_list_at (elevation->items, i)));
  for (guint i = 1; i <= n; i++)
    for (guint j = 0; j < placed->len; j++)
      {
        CwPoint by = step_of (way, i, n, whole);
        g_autoptr (CwNode) copy = cw_free_ids_copy (
            free_ids, g_array_index (placed, Placed, j).item);

        g_strv_builder_add (made, cw_node_id (copy));
        g_ptr_array_add (items, cw_edit_moved (copy, by.x, by.y));
      }
  *new_ids = g_strv_builder_end (made);
  return **new_ids ? with_items (project, elevation, items)
                   : cw_node_ref (project);
}

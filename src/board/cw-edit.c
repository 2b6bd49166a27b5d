/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-edit.h"

#include <math.h>
#include <string.h>

#include "cw-edge-guess.h"
#include "cw-i18n.h"
#include "cw-placing.h"

CwProject *
cw_edit_replace (const CwProject *project, const CwNode *former,
                 const CwNode *by)
{
  g_return_val_if_fail (project != NULL && former != NULL, NULL);

  return (CwProject *) cw_node_replace (&project->node, former, by);
}

static CwProject *
with_items (const CwProject *project, const CwElevation *elevation,
            const CwList *items)
{
  g_autoptr (CwNode) by = cw_node_copy (&elevation->node);

  cw_node_set_list (by, CW_ELEVATION_ITEMS, items);
  return cw_edit_replace (project, &elevation->node, by);
}

CwProject *
cw_edit_add_item (const CwProject *project, const CwElevation *elevation,
                  const CwNode *item)
{
  g_autoptr (CwList) items = NULL;

  g_return_val_if_fail (elevation != NULL && item != NULL, NULL);

  items = cw_list_append (elevation->items, item);
  return with_items (project, elevation, items);
}

static CwNode *
outline_node (const CwCorner *corners, gsize n)
{
  CwNode *outline = cw_node_new (&cw_outline_type);
  g_autoptr (CwList) list = cw_corners_to_list (corners, n);

  cw_node_set_list (outline, CW_OUTLINE_CORNERS, list);
  return outline;
}

CwProject *
cw_edit_set_corners (const CwProject *project, const CwElevation *elevation,
                     const CwCorner *corners, gsize n)
{
  g_autoptr (CwNode) outline = outline_node (corners, n);
  g_autoptr (CwNode) by = cw_node_copy (&elevation->node);

  cw_node_set_child (by, CW_ELEVATION_OUTLINE, outline);
  return cw_edit_replace (project, &elevation->node, by);
}

static CwPoint
lower_left (const CwCorner *corners, gsize n)
{
  CwPoint low = corners[0].at;

  for (gsize i = 1; i < n; i++)
    {
      low.x = MIN (low.x, corners[i].at.x);
      low.y = MIN (low.y, corners[i].at.y);
    }
  return low;
}

/* The id of a buildup that a new wall can have. */
static const char *
usual_buildup (const CwProject *project, const CwElevation *like)
{
  const CwBuildup *first;

  if (like)
    return like->buildup;
  first = cw_list_length (project->buildups) > 0
              ? cw_list_at (project->buildups, 0)
              : NULL;
  return first ? first->id : "";
}

static CwNode *
new_elevation (const CwProject *project, const CwElevation *like)
{
  CwNode *elevation = cw_node_new (&cw_elevation_type);
  g_autofree char *id = cw_project_free_id (project, "e");
  g_autofree char *name = g_strdup_printf (
      _ ("Wall %u"), (guint) cw_list_length (project->elevations) + 1);

  cw_node_put_text (elevation, "id", id);
  cw_node_put_text (elevation, "name", name);
  cw_node_put_text (elevation, "buildup", usual_buildup (project, like));
  return elevation;
}

static CwDecimal
decimal (double value)
{
  return (CwDecimal) llround (value * (double) CW_DECIMAL_ONE);
}

static void
put_place (CwNode *elevation, const CwProject *project,
           const CwElevation *shown, CwPoint shift)
{
  CwPlacing placing = cw_placing_of (project, shown);
  double x, y;

  if (placing.sheet == NULL)
    return;
  cw_placing_to_page (&placing, (double) shift.x, (double) shift.y, &x, &y);
  cw_node_put_text (elevation, "sheet", placing.sheet->id);
  cw_node_put (elevation, "at-x", decimal (x));
  cw_node_put (elevation, "at-y", decimal (y));
}

static CwCorner *
shifted (const CwCorner *corners, gsize n, CwPoint shift)
{
  CwCorner *copy = g_memdup2 (corners, n * sizeof *corners);

  for (gsize i = 0; i < n; i++)
    {
      copy[i].at.x -= shift.x;
      copy[i].at.y -= shift.y;
    }
  return copy;
}

/* What already stands in the elevation stays where it is seen. */
static void
shift_items (CwNode *elevation, CwPoint shift)
{
  const CwList *items = cw_node_list (elevation, CW_ELEVATION_ITEMS);
  g_autoptr (GPtrArray) moved
      = g_ptr_array_new_with_free_func (cw_node_unref);
  g_autoptr (CwList) list = NULL;

  for (gsize i = 0; i < cw_list_length (items); i++)
    g_ptr_array_add (moved, cw_edit_moved (cw_list_at (items, i), -shift.x,
                                           -shift.y));
  list = cw_list_new ((CwNode *const *) moved->pdata, moved->len);
  cw_node_set_list (elevation, CW_ELEVATION_ITEMS, list);
}

static CwProject *
with_new_elevation (const CwProject *project, const CwNode *elevation)
{
  CwNode *by = cw_node_copy (&project->node);
  g_autoptr (CwList) list = cw_list_append (project->elevations, elevation);

  cw_node_set_list (by, CW_PROJECT_ELEVATIONS, list);
  cw_node_freeze (by);
  return (CwProject *) by;
}

CwProject *
cw_edit_draw_outline (const CwProject *project, const CwElevation *elevation,
                      const CwCorner *corners, gsize n, char **id,
                      CwPoint *shift)
{
  gboolean is_new = elevation == NULL || elevation->outline != NULL;
  g_autoptr (CwNode) by = is_new ? new_elevation (project, elevation)
                                 : cw_node_copy (&elevation->node);
  g_autofree CwCorner *own = NULL;
  g_autoptr (CwNode) outline = NULL;

  g_return_val_if_fail (n > 0 && id != NULL && shift != NULL, NULL);

  *shift = lower_left (corners, n);
  own = shifted (corners, n, *shift);
  cw_edge_guess (own, n);
  outline = outline_node (own, n);
  cw_node_set_child (by, CW_ELEVATION_OUTLINE, outline);
  put_place (by, project, elevation, *shift);
  if (!is_new)
    shift_items (by, *shift);
  *id = g_strdup (cw_node_id (by));
  return is_new ? with_new_elevation (project, by)
                : cw_edit_replace (project, &elevation->node, by);
}

CwProject *
cw_edit_set_scale (const CwProject *project, const CwSheet *sheet,
                   double mm_per_point)
{
  g_autoptr (CwNode) scale = cw_node_new (&cw_scale_type);
  g_autoptr (CwNode) by = NULL;

  g_return_val_if_fail (sheet != NULL && mm_per_point > 0, NULL);

  cw_node_put (scale, "across", decimal (mm_per_point));
  cw_node_put (scale, "along", decimal (mm_per_point));
  by = cw_node_copy (&sheet->node);
  cw_node_set_child (by, CW_SHEET_SCALE, scale);
  return cw_edit_replace (project, &sheet->node, by);
}

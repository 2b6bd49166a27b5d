/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model-cases.h"

CwNode *
case_outline (gsize n, const int (*corners)[2], CwEdge edge)
{
  g_autofree CwCorner *list = g_new0 (CwCorner, n);
  g_autoptr (CwList) nodes = NULL;
  CwNode *outline = cw_node_new (&cw_outline_type);

  for (gsize i = 0; i < n; i++)
    list[i] = (CwCorner) { cw_point (CW_MM (corners[i][0]),
                                     CW_MM (corners[i][1])),
                           0, edge };
  nodes = cw_corners_to_list (list, n);
  cw_node_set_list (outline, CW_OUTLINE_CORNERS, nodes);
  return outline;
}

CwNode *
case_window (const char *id, int x, int y)
{
  CwNode *window = cw_node_new (&cw_window_type);

  cw_node_put_text (window, "id", id);
  cw_node_put (window, "x", CW_MM (x));
  cw_node_put (window, "y", CW_MM (y));
  cw_node_put (window, "width", CW_MM (1000));
  cw_node_put (window, "height", CW_MM (1000));
  return window;
}

CwNode *
case_elevation (const char *id, int width, int height, guint n)
{
  const int corners[][2]
      = { { 0, 0 }, { width, 0 }, { width, height }, { 0, height } };
  g_autoptr (CwNode) outline
      = case_outline (G_N_ELEMENTS (corners), corners, CW_EDGE_ABUTMENT);
  g_autoptr (GPtrArray) windows
      = g_ptr_array_new_with_free_func (cw_node_unref);
  g_autoptr (CwList) items = NULL;
  CwNode *elevation = cw_node_new (&cw_elevation_type);

  for (guint i = 0; i < n; i++)
    {
      g_autofree char *window_id = g_strdup_printf ("%s-o%u", id, i + 1);

      g_ptr_array_add (windows,
                       case_window (window_id, 500 + 2000 * (int) i, 500));
    }
  items = cw_list_new ((CwNode *const *) windows->pdata, windows->len);
  cw_node_put_text (elevation, "id", id);
  cw_node_put_text (elevation, "buildup", "b1");
  cw_node_set_child (elevation, CW_ELEVATION_OUTLINE, outline);
  cw_node_set_list (elevation, CW_ELEVATION_ITEMS, items);
  return elevation;
}

CwProject *
case_project (guint n_elevations, guint n_windows_each)
{
  g_autoptr (CwProject) plain = cw_project_new_default (CW_UNITS_METRIC);
  g_autoptr (GPtrArray) elevations
      = g_ptr_array_new_with_free_func (cw_node_unref);
  g_autoptr (CwList) list = NULL;
  CwNode *project = cw_node_copy (&plain->node);

  for (guint i = 0; i < n_elevations; i++)
    {
      g_autofree char *id = g_strdup_printf ("e%u", i + 1);

      g_ptr_array_add (elevations,
                       case_elevation (id, 60000, 9000, n_windows_each));
    }
  list = cw_list_new ((CwNode *const *) elevations->pdata, elevations->len);
  cw_node_set_list (project, CW_PROJECT_ELEVATIONS, list);
  cw_node_freeze (project);
  return (CwProject *) project;
}

CwProject *
case_project_with_item (const CwProject *project, CwNode *item)
{
  CwNode *elevation = cw_list_at (project->elevations, 0);
  const CwNode *former = cw_node_find (elevation, cw_node_id (item));
  g_autoptr (CwNode) changed = NULL;
  g_autoptr (CwList) items = NULL;

  if (former)
    return (CwProject *) cw_node_replace (&project->node, former, item);
  items = cw_list_append (cw_node_list (elevation, CW_ELEVATION_ITEMS), item);
  changed = cw_node_copy (elevation);
  cw_node_set_list (changed, CW_ELEVATION_ITEMS, items);
  return (CwProject *) cw_node_replace (&project->node, elevation, changed);
}

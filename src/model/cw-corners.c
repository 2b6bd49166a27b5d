/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Corners between the project and the geometry.
 */
#include "cw-project.h"

GArray *
cw_corners_from_list (const CwList *list)
{
  gsize n = cw_list_length (list);
  GArray *corners = g_array_sized_new (FALSE, FALSE, sizeof (CwCorner), n);

  for (gsize i = 0; i < n; i++)
    {
      const CwCornerNode *node = cw_list_at (list, i);
      CwCorner corner = { { node->x, node->y }, node->sagitta,
                          (guint) node->edge };

      g_array_append_val (corners, corner);
    }
  return corners;
}

static CwNode *
corner_to_node (const CwCorner *corner)
{
  CwNode *node = cw_node_new (&cw_corner_type);

  cw_node_put (node, "x", corner->at.x);
  cw_node_put (node, "y", corner->at.y);
  cw_node_put (node, "edge", corner->tag);
  if (corner->sagitta != 0)
    cw_node_put (node, "sagitta", corner->sagitta);
  return node;
}

CwList *
cw_corners_to_list (const CwCorner *corners, gsize n)
{
  g_autoptr (GPtrArray) nodes
      = g_ptr_array_new_full ((guint) n, cw_node_unref);

  for (gsize i = 0; i < n; i++)
    g_ptr_array_add (nodes, corner_to_node (&corners[i]));
  return cw_list_new ((CwNode *const *) nodes->pdata, n);
}

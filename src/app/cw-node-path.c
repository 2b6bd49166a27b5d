/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-node-path.h"

CwNodePath *
cw_node_path_new (const char *id)
{
  CwNodePath *path = g_new0 (CwNodePath, 1);
  path->id = g_strdup (id);
  return path;
}

CwNodePath *
cw_node_path_down (const CwNodePath *path, guint slot, int index)
{
  g_return_val_if_fail (path->n_steps < CW_NODE_PATH_STEPS, NULL);
  CwNodePath *down = g_memdup2 (path, sizeof *path);
  down->id = g_strdup (path->id);
  down->steps[down->n_steps].slot = slot;
  down->steps[down->n_steps].index = index;
  down->n_steps++;
  return down;
}

void
cw_node_path_free (CwNodePath *path)
{
  g_free (path->id);
  g_free (path);
}

static const CwNode *
step_down (const CwNode *node, guint slot, int index)
{
  if (slot >= node->type->n_slots)
    return NULL;
  if (index < 0)
    return cw_node_child (node, slot);
  const CwList *list = cw_node_list (node, slot);
  return (gsize) index < cw_list_length (list)
             ? cw_list_at (list, (gsize) index)
             : NULL;
}

const CwNode *
cw_node_path_find (const CwNodePath *path, const CwProject *project)
{
  const CwNode *node = path->id ? cw_node_find (&project->node, path->id)
                                : &project->node;
  for (guint i = 0; node && i < path->n_steps; i++)
    node = step_down (node, path->steps[i].slot, path->steps[i].index);
  return node;
}

char *
cw_node_path_text (const CwNodePath *path)
{
  GString *text = g_string_new (path->id ? path->id : "");
  for (guint i = 0; i < path->n_steps; i++)
    g_string_append_printf (text, "/%u.%d", path->steps[i].slot,
                            path->steps[i].index);
  return g_string_free (text, FALSE);
}

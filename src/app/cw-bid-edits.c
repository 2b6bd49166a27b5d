/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-bid-edits.h"

CwProject *
cw_edit_add_to_list (const CwProject *project, guint slot)
{
  g_return_val_if_fail (project != NULL, NULL);
  g_return_val_if_fail (cw_project_type.slots[slot].is_list, NULL);

  g_autoptr (CwNode) node
      = cw_node_new (cw_project_type.slots[slot].types[0]);
  /* What is priced by a length or an area is, at first, by the project's. */
  if (cw_node_type_field (node->type, "units") >= 0)
    cw_node_put (node, "units", project->units);
  return cw_project_with_list (
      project, slot,
      cw_list_append (cw_node_list (&project->node, slot), node));
}

CwProject *
cw_edit_remove_from_list (const CwProject *project, guint slot, gsize index)
{
  g_return_val_if_fail (project != NULL, NULL);
  g_return_val_if_fail (cw_project_type.slots[slot].is_list, NULL);
  g_return_val_if_fail (
      index < cw_list_length (cw_node_list (&project->node, slot)), NULL);

  return cw_project_with_list (
      project, slot,
      cw_list_remove (cw_node_list (&project->node, slot), index));
}

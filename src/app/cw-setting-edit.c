/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-setting-edit.h"

#include "cw-buildup-edits.h"
#include "cw-edits.h"

guint
cw_setting_n_walls (const CwProject *project, const char *buildup_id)
{
  g_autoptr (GPtrArray) users = cw_buildup_users (project, buildup_id);
  return users->len;
}

/* (transfer full): @project, or one where the wall has a buildup of its own */
static CwProject *
with_own_buildup (const CwProject *project, const CwElevation *elevation,
                  const char *name)
{
  return cw_setting_n_walls (project, elevation->buildup) > 1
             ? cw_edit_vary_buildup (project, elevation->id, name)
             : cw_node_ref (project);
}

CwProject *
cw_setting_take (const CwProject *project, const char *elevation_id,
                 const CwSettingChoice *choice, gboolean alone,
                 const char *name)
{
  const CwElevation *elevation = cw_project_elevation (project, elevation_id);
  g_return_val_if_fail (elevation != NULL, NULL);
  g_autoptr (CwProject) ready
      = alone ? with_own_buildup (project, elevation, name)
              : cw_node_ref (project);
  elevation = cw_project_elevation (ready, elevation_id);
  const CwBuildup *buildup = cw_project_buildup (ready, elevation->buildup);
  g_return_val_if_fail (buildup != NULL, NULL);
  g_autoptr (CwBuildup) set = cw_setting_choice_apply (choice, buildup);
  return (CwProject *) cw_node_replace (&ready->node, &buildup->node,
                                        &set->node);
}

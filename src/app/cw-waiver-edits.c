/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-waiver-edits.h"

static void
put_if_any (CwNode *node, const char *field, const char *text)
{
  if (text && *text)
    cw_node_put_text (node, field, text);
}

CwProject *
cw_edit_waive (const CwProject *project, const CwCheck *check,
               const char *reason, const char *by, const char *date)
{
  g_return_val_if_fail (project != NULL && check != NULL && reason != NULL,
                        NULL);
  const CwWaiver *former = cw_check_waiver (check, project);
  g_autoptr (CwNode) waiver = cw_node_new (&cw_waiver_type);
  CwList *waivers;
  cw_node_put_text (waiver, "check", check->type->code);
  put_if_any (waiver, "elevation", check->elevation_id);
  put_if_any (waiver, "item", check->item);
  cw_node_put_text (waiver, "reason", reason);
  put_if_any (waiver, "by", by);
  put_if_any (waiver, "date", date);
  put_if_any (waiver, "figures", check->figures);
  waivers = former ? cw_list_set (project->waivers,
                                  (gsize) cw_list_index (project->waivers,
                                                         &former->node),
                                  waiver)
                   : cw_list_append (project->waivers, waiver);
  return cw_project_with_list (project, CW_PROJECT_WAIVERS, waivers);
}

CwProject *
cw_edit_take_waiver_back (const CwProject *project, const CwWaiver *waiver)
{
  g_return_val_if_fail (project != NULL && waiver != NULL, NULL);
  const int index = cw_list_index (project->waivers, &waiver->node);
  if (index < 0)
    return cw_node_ref (project);
  return cw_project_with_list (
      project, CW_PROJECT_WAIVERS,
      cw_list_remove (project->waivers, (gsize) index));
}

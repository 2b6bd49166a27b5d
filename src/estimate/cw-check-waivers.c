/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Which waiver is for which check.
 */
#include "cw-checks.h"

static gboolean
is_for (const CwWaiver *waiver, const CwCheck *check)
{
  return g_str_equal (waiver->check, check->type->code)
         && g_str_equal (waiver->elevation,
                         check->elevation_id ? check->elevation_id : "")
         && g_str_equal (waiver->item, check->item);
}

const CwWaiver *
cw_check_waiver (const CwCheck *check, const CwProject *project)
{
  g_return_val_if_fail (check != NULL && project != NULL, NULL);

  for (gsize i = 0; i < cw_list_length (project->waivers); i++)
    {
      const CwWaiver *waiver = cw_list_at (project->waivers, i);

      if (is_for (waiver, check))
        return waiver;
    }
  return NULL;
}

static gboolean
is_used (const CwWaiver *waiver, const GPtrArray *checks)
{
  for (guint i = 0; i < checks->len; i++)
    if (is_for (waiver, checks->pdata[i]))
      return TRUE;
  return FALSE;
}

GPtrArray *
cw_waivers_idle (const CwProject *project, const GPtrArray *checks)
{
  GPtrArray *idle = g_ptr_array_new ();

  for (gsize i = 0; i < cw_list_length (project->waivers); i++)
    {
      CwWaiver *waiver = cw_list_at (project->waivers, i);

      if (!is_used (waiver, checks))
        g_ptr_array_add (idle, waiver);
    }
  return idle;
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The checks of a takeoff as warnings with their lines.
 */
#include "cw-batch.h"
#include "cw-checks.h"
#include "cw-file-error.h"
#include "cw-i18n.h"

static GError *
warning_of_project (const CwCheck *check)
{
  GError *error = NULL;
  cw_file_error_set (&error, CW_FILE_ERROR_SENSE, 0, _ ("warning: %s"),
                     check->text);
  return error;
}

static GError *
warning_of_elevation (const CwCheck *check, GBytes *bytes)
{
  GError *error = NULL;
  g_autofree char *places = NULL;
  if (check->n_places > 0)
    places = g_strdup_printf (g_dngettext (GETTEXT_PACKAGE, " in %u place",
                                           " in %u places", check->n_places),
                              check->n_places);
  cw_file_error_set (&error, CW_FILE_ERROR_SENSE,
                     cw_project_xml_line (bytes, check->elevation_id),
                     _ ("warning: <elevation id=\"%s\">%s: %s"),
                     check->elevation_id, places ? places : "", check->text);
  return error;
}

GPtrArray *
cw_batch_warnings (const CwTakeoff *takeoff, GBytes *bytes)
{
  GPtrArray *warnings
      = g_ptr_array_new_with_free_func ((GDestroyNotify)g_error_free);
  g_autoptr (GPtrArray) checks = cw_checks_find (takeoff);
  for (guint i = 0; i < checks->len; i++)
    {
      const CwCheck *check = checks->pdata[i];
      g_ptr_array_add (warnings, check->elevation_id
                                     ? warning_of_elevation (check, bytes)
                                     : warning_of_project (check));
    }
  return warnings;
}

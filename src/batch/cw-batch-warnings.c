/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The checks of a takeoff as warnings with their lines.
 */
#include "cw-batch.h"
#include "cw-checks.h"
#include "cw-file-error.h"
#include "cw-i18n.h"

static const char *
severity_word (const CwCheck *check)
{
  static const char *const words[]
      = { N_ ("error"), N_ ("warning"), N_ ("note") };
  return _ (words[check->type->severity]);
}

/* Where it is: " in 3 places", or nothing. */
static char *
places_text (const CwCheck *check)
{
  const guint n = check->places->len;
  if (n < 2)
    return g_strdup ("");
  return g_strdup_printf (g_dngettext (GETTEXT_PACKAGE, " in %u place",
                                       " in %u places", n),
                          n);
}

/* Notes and what was waived stand in the PDF and the table of checks; an
 * error is told of in any case, and what is no longer as it was waived. */
static gboolean
is_told (const CwCheck *check)
{
  if (check->type->severity == CW_CHECK_NOTE)
    return FALSE;
  return !check->waiver || check->is_changed
         || check->type->severity == CW_CHECK_ERROR;
}

static char *
waiver_text (const CwCheck *check)
{
  if (!check->waiver)
    return g_strdup ("");
  return g_strdup_printf (check->is_changed
                              ? _ (" [waived: %s; the figures have changed]")
                              : _ (" [waived: %s]"),
                          check->waiver->reason);
}

/* The line of what it is about, as near as the file names it. */
static guint
line_of (const CwCheck *check, GHashTable *lines)
{
  g_auto (GStrv) ids = g_strsplit_set (check->item, "+/", 2);
  guint line = ids[0] && *ids[0] ? cw_project_xml_line (lines, ids[0]) : 0;
  if (line == 0 && check->elevation_id)
    line = cw_project_xml_line (lines, check->elevation_id);
  return line;
}

static GError *
warning_of (const CwCheck *check, GHashTable *lines)
{
  GError *error = NULL;
  g_autofree char *places = places_text (check);
  g_autofree char *waiver = waiver_text (check);
  g_autofree char *where
      = check->elevation_id
            ? g_strdup_printf ("<elevation id=\"%s\">%s",
                               check->elevation_id, places)
            : g_strdup ("");
  cw_file_error_set (&error, CW_FILE_ERROR_SENSE, line_of (check, lines),
                     "%s: %s%s%s: %s %s%s", severity_word (check), where,
                     *where ? ": " : "",
                     _ (check->type->title), check->text,
                     _ (check->type->remedy), waiver);
  return error;
}

GPtrArray *
cw_batch_warnings (const GPtrArray *checks, GHashTable *lines)
{
  GPtrArray *warnings
      = g_ptr_array_new_with_free_func ((GDestroyNotify)g_error_free);
  for (guint i = 0; i < checks->len; i++)
    if (is_told (checks->pdata[i]))
      g_ptr_array_add (warnings, warning_of (checks->pdata[i], lines));
  return warnings;
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a takeoff has figures for and an estimator should still look at: walls
 * that give none, and rules of setting out that could not be kept.
 */
#include "cw-batch.h"
#include "cw-file-error.h"
#include "cw-i18n.h"

#define N_TROUBLES (CW_TROUBLE_AT_CORNER + 1)

typedef struct
{
  GBytes *bytes;
  GPtrArray *warnings;
} Search;

static void
add_warning (Search *search, const CwElevation *elevation, guint n_places,
             const char *sentence)
{
  GError *error = NULL;
  g_autofree char *places = NULL;
  if (n_places > 0)
    places = g_strdup_printf (g_dngettext (GETTEXT_PACKAGE, " in %u place",
                                           " in %u places", n_places),
                              n_places);
  cw_file_error_set (&error, CW_FILE_ERROR_SENSE,
                     cw_project_xml_line (search->bytes, elevation->id),
                     _ ("warning: <elevation id=\"%s\">%s: %s"), elevation->id,
                     places ? places : "", sentence);
  g_ptr_array_add (search->warnings, error);
}

static void
warn_of_troubles (Search *search, const CwLayout *layout)
{
  guint n_places[N_TROUBLES] = { 0 };
  for (guint i = 0; i < layout->troubles->len; i++)
    n_places[g_array_index (layout->troubles, CwLayoutTrouble, i).kind]++;
  for (CwTroubleKind kind = 0; kind < N_TROUBLES; kind++)
    if (n_places[kind] > 0)
      add_warning (search, layout->wall->elevation,
                   kind <= CW_TROUBLE_TOO_MANY ? 0 : n_places[kind],
                   _ (cw_trouble_text (kind)));
}

static void
warn_of_wall (Search *search, const CwWallTakeoff *takeoff)
{
  const CwWall *wall = takeoff->wall;
  if (wall->outline == NULL)
    add_warning (search, wall->elevation, 0,
                 _ ("It has no outline, so nothing of it is counted. Draw "
                    "one."));
  else if (wall->buildup == NULL)
    add_warning (search, wall->elevation, 0,
                 _ ("It names no buildup, so no panels and no materials are "
                    "counted. Choose one."));
  warn_of_troubles (search, takeoff->layout);
}

GPtrArray *
cw_batch_warnings (const CwTakeoff *takeoff, GBytes *bytes)
{
  Search search
      = { bytes,
          g_ptr_array_new_with_free_func ((GDestroyNotify)g_error_free) };
  for (guint i = 0; i < takeoff->walls->len; i++)
    warn_of_wall (&search, takeoff->walls->pdata[i]);
  return search.warnings;
}

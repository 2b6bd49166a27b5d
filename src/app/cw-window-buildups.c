/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The project's buildups from the window: the windows that edit them and their
 * prices, and one of the library for a wall.
 */
#include "cw-window-private.h"

#include "cw-buildup-edits.h"
#include "cw-buildups-window.h"
#include "cw-library-dialog.h"
#include "cw-prices-window.h"

static void
show_buildups (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  const CwElevation *elevation = cw_window_elevation (window);
  if (!window->buildups)
    {
      CwBuildupsWindow *buildups
          = cw_buildups_window_new (GTK_WINDOW (window), window->job);
      g_set_weak_pointer (&window->buildups, GTK_WINDOW (buildups));
    }
  if (elevation)
    cw_buildups_window_choose (CW_BUILDUPS_WINDOW (window->buildups),
                               elevation->buildup);
  gtk_window_present (window->buildups);
}

static void
show_prices (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  if (!window->prices)
    {
      CwPricesWindow *prices
          = cw_prices_window_new (GTK_WINDOW (window), window->job);
      g_set_weak_pointer (&window->prices, GTK_WINDOW (prices));
    }
  gtk_window_present (window->prices);
}

/* The wall that the question was about. */
typedef struct
{
  CwWindow *window;
  char *elevation;
} ForWall;

static void
for_wall_free (ForWall *for_wall)
{
  g_object_unref (for_wall->window);
  g_free (for_wall->elevation);
  g_free (for_wall);
}

static void
give_to_wall (const CwBuildup *buildup, gpointer data)
{
  ForWall *for_wall = data;
  const CwProject *project = cw_window_project (for_wall->window);
  if (!cw_project_elevation (project, for_wall->elevation))
    return;
  g_autofree char *id = NULL;
  g_autoptr (CwProject) more = cw_buildup_add (project, buildup, &id);
  g_autoptr (CwProject) next
      = cw_buildup_give (more, for_wall->elevation, id);
  cw_document_edit (cw_window_document (for_wall->window), next,
                    _("Take a buildup"), NULL);
}

static void
from_library (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  const CwElevation *elevation = cw_window_elevation (window);
  if (!elevation)
    return;
  ForWall *for_wall = g_new0 (ForWall, 1);
  for_wall->window = g_object_ref (window);
  for_wall->elevation = g_strdup (elevation->id);
  cw_library_dialog_open (GTK_WINDOW (window),
                          cw_job_style (window->job)->units, give_to_wall,
                          for_wall, (GDestroyNotify) for_wall_free);
}

void
cw_window_add_buildup_actions (CwWindow *window)
{
  static const GActionEntry entries[] = {
    { "buildups", show_buildups, NULL, NULL, NULL },
    { "prices", show_prices, NULL, NULL, NULL },
    { "buildup-from-library", from_library, NULL, NULL, NULL },
  };
  g_action_map_add_action_entries (G_ACTION_MAP (window), entries,
                                   G_N_ELEMENTS (entries), window);
}

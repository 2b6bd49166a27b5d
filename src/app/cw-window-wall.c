/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The list of walls in the window: adding, copying, ordering, taking away.
 */
#include "cw-window-private.h"

#include "cw-edits.h"
#include "cw-house-dialog.h"

static void
edit (CwWindow *window, CwProject *next, const char *name)
{
  cw_document_edit (cw_window_document (window), next, name, NULL);
  cw_node_unref (next);
}

static void
show_wall (CwWindow *window, const char *id)
{
  CwDocument *document = cw_window_document (window);
  cw_document_show_elevation (document, id);
  cw_document_select (document, (const char *const[]) { NULL });
}

/* One that was begun and has nothing in it is as good as a new one. */
static gboolean
is_blank (const CwElevation *elevation, const char *sheet_id)
{
  return !elevation->outline && cw_list_length (elevation->items) == 0
         && g_strcmp0 (elevation->sheet, sheet_id ? sheet_id : "") == 0;
}

static const CwElevation *
blank_wall (const CwProject *project, const char *sheet_id)
{
  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    if (is_blank (cw_list_at (project->elevations, i), sheet_id))
      return cw_list_at (project->elevations, i);
  return NULL;
}

void
cw_window_begin_wall (CwWindow *window, const char *sheet_id)
{
  const CwProject *project = cw_window_project (window);
  const CwElevation *blank = blank_wall (project, sheet_id);
  if (blank)
    show_wall (window, blank->id);
  else
    {
      g_autofree char *id = NULL;
      g_autofree char *name = cw_edit_free_name (project, _("Wall"));
      CwSheetPlace place = { sheet_id, 0, 0 };
      edit (window, cw_edit_add_elevation (project, name, &place, &id),
            _("Add a wall"));
      show_wall (window, id);
    }
  cw_board_set_tool (cw_window_board (window), CW_TOOL_WALL);
}

static void
add_wall (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  const CwElevation *elevation = cw_window_elevation (window);
  const CwList *sheets = cw_window_project (window)->sheets;
  const char *sheet = elevation && *elevation->sheet ? elevation->sheet
                      : !elevation && cw_list_length (sheets)
                          ? cw_node_id (cw_list_at (sheets, 0))
                          : NULL;
  cw_window_go_to_walls (window);
  cw_window_begin_wall (window, sheet);
}

/* Its size is typed at once. */
static void
type_wall (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  cw_window_go_to_walls (window);
  cw_window_begin_wall (window, NULL);
  cw_walls_place_type (window->walls);
}

static void
walls_made (gpointer data)
{
  CwWindow *window = data;
  cw_window_go_to_walls (window);
  cw_board_zoom_fit (cw_window_board (window));
}

static void
type_sizes (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  cw_house_dialog_show (GTK_WINDOW (window), window->job, walls_made, window);
}

static void
show_copy (CwWindow *window,
           CwProject *(*copied) (const CwProject *project, const char *id,
                                 const char *name, char **new_id),
           const char *step)
{
  const CwProject *project = cw_window_project (window);
  const CwElevation *elevation = cw_window_elevation (window);
  g_autofree char *id = NULL;
  g_autofree char *name = cw_edit_free_name (project, elevation->name);
  edit (window, copied (project, elevation->id, name, &id), step);
  show_wall (window, id);
}

static void
duplicate_wall (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  show_copy (data, cw_edit_duplicate_elevation, _("Duplicate a wall"));
}

static void
duplicate_mirrored (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  show_copy (data, cw_edit_duplicate_mirrored,
             _("Duplicate a wall mirrored"));
}

static void
move_wall (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  edit (window,
        cw_edit_move_elevation (cw_window_project (window),
                                cw_window_elevation (window)->id,
                                g_variant_get_int32 (parameter)),
        _("Move a wall in the list"));
}

/* The one that takes its place in the list is shown next. */
static void
remove_wall (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  const CwElevation *elevation = cw_window_elevation (window);
  gsize index = (gsize) cw_list_index (
      cw_window_project (window)->elevations, &elevation->node);
  edit (window,
        cw_edit_remove_elevation (cw_window_project (window), elevation->id),
        _("Remove a wall"));
  const CwList *rest = cw_window_project (window)->elevations;
  if (cw_list_length (rest) > 0)
    show_wall (window,
               cw_node_id (cw_list_at (
                   rest, MIN (index, cw_list_length (rest) - 1))));
}

static void
best_setting_out (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwSettingPanel *panel = cw_walls_place_setting (CW_WINDOW (data)->walls);
  gboolean opens = !cw_setting_panel_is_open (panel);
  if (opens)
    cw_window_go_to_walls (data);
  cw_setting_panel_set_open (panel, opens);
}

static void
wall_shown (CwWindow *window)
{
  gboolean has_wall = cw_window_elevation (window) != NULL;
  cw_window_enable (window, "duplicate-wall", has_wall);
  cw_window_enable (window, "duplicate-mirrored", has_wall);
  cw_window_enable (window, "move-wall", has_wall);
  cw_window_enable (window, "remove-wall", has_wall);
}

void
cw_window_add_wall_actions (CwWindow *window)
{
  static const GActionEntry entries[] = {
    { "add-wall", add_wall, NULL, NULL, NULL },
    { "type-wall", type_wall, NULL, NULL, NULL },
    { "type-sizes", type_sizes, NULL, NULL, NULL },
    { "duplicate-wall", duplicate_wall, NULL, NULL, NULL },
    { "duplicate-mirrored", duplicate_mirrored, NULL, NULL, NULL },
    { "move-wall", move_wall, "i", NULL, NULL },
    { "remove-wall", remove_wall, NULL, NULL, NULL },
    { "best-setting-out", best_setting_out, NULL, NULL, NULL },
  };
  g_action_map_add_action_entries (G_ACTION_MAP (window), entries,
                                   G_N_ELEMENTS (entries), window);
  g_signal_connect_object (cw_window_document (window), "changed",
                           G_CALLBACK (wall_shown), window,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (cw_window_document (window), "selection-changed",
                           G_CALLBACK (wall_shown), window,
                           G_CONNECT_SWAPPED);
  wall_shown (window);
}

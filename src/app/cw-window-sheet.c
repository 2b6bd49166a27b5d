/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plan sheets in the window: adding, scaling, turning, taking away.
 */
#include "cw-window-private.h"

#include "cw-dialogs.h"
#include "cw-edits.h"
#include "cw-scale-dialog.h"
#include "cw-sheet-dialog.h"

static void
edit (CwWindow *window, CwProject *next, const char *name)
{
  cw_document_edit (cw_window_document (window), next, name, NULL);
  cw_node_unref (next);
}

static const CwElevation *
wall_on_sheet (CwWindow *window, const char *sheet_id)
{
  const CwList *elevations = cw_window_project (window)->elevations;
  for (gsize i = 0; i < cw_list_length (elevations); i++)
    {
      const CwElevation *elevation = cw_list_at (elevations, i);
      if (g_strcmp0 (elevation->sheet, sheet_id) == 0)
        return elevation;
    }
  return NULL;
}

/* The shown wall if it is on the sheet, else the first one that is, else a
 * new one. */
static void
go_to_sheet (CwWindow *window, const char *sheet_id)
{
  const CwElevation *shown = cw_window_elevation (window);
  cw_window_go_to_walls (window);
  if (shown && g_strcmp0 (shown->sheet, sheet_id) == 0)
    return;
  const CwElevation *wall = wall_on_sheet (window, sheet_id);
  if (wall)
    cw_document_show_elevation (cw_window_document (window), wall->id);
  else
    cw_window_begin_wall (window, sheet_id);
}

static void
begin_measuring (gpointer data)
{
  cw_board_set_tool (cw_window_board (data), CW_TOOL_SCALE);
}

static void
sheet_added (const char *sheet_id, gboolean measure, gpointer data)
{
  CwWindow *window = data;
  cw_window_go_to_walls (window);
  cw_window_begin_wall (window, sheet_id);
  if (measure)
    begin_measuring (window);
}

static void
sheet_chosen (GFile *file, gpointer data)
{
  g_autoptr (CwWindow) window = data;
  if (file)
    cw_sheet_dialog_add (GTK_WINDOW (window), window->job, file, sheet_added,
                         window);
}

static void
add_sheet (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  cw_dialogs_open_file (GTK_WINDOW (window), _("Add a plan sheet"),
                        CW_FILES_SHEET, cw_job_folder (window->job),
                        sheet_chosen, g_object_ref (window));
}

static void
show_sheet_walls (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  go_to_sheet (data, g_variant_get_string (parameter, NULL));
}

static void
trace_on_sheet (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  cw_window_go_to_walls (data);
  cw_window_begin_wall (data, g_variant_get_string (parameter, NULL));
}

static void
state_scale (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  const char *id = g_variant_get_string (parameter, NULL);
  if (!cw_project_sheet (cw_window_project (window), id))
    return;
  go_to_sheet (window, id);
  cw_scale_dialog_state (GTK_WINDOW (window), window->job, id,
                         begin_measuring, window);
}

static void
turn_sheet (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  const char *id = g_variant_get_string (parameter, NULL);
  const CwSheet *sheet = cw_project_sheet (cw_window_project (window), id);
  if (sheet)
    edit (window,
          cw_edit_turn_sheet (cw_window_project (window), id,
                              (sheet->turn + 90) % 360),
          _("Turn a plan sheet"));
}

static void
remove_sheet (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  const char *id = g_variant_get_string (parameter, NULL);
  if (cw_project_sheet (cw_window_project (window), id))
    edit (window, cw_edit_remove_sheet (cw_window_project (window), id),
          _("Remove a plan sheet"));
}

/* The sheet that the board shows: the wall's, or the first one. */
static const CwSheet *
shown_sheet (CwWindow *window)
{
  const CwProject *project = cw_window_project (window);
  const CwElevation *elevation = cw_window_elevation (window);
  if (elevation)
    return cw_project_sheet (project, elevation->sheet);
  return cw_list_length (project->sheets) ? cw_list_at (project->sheets, 0)
                                          : NULL;
}

/* What was set out to be done when there was no scale yet. */
static void
scale_set (gpointer data)
{
  const CwElevation *elevation = cw_window_elevation (data);
  cw_board_set_tool (cw_window_board (data),
                     elevation && elevation->outline ? CW_TOOL_SELECT
                                                     : CW_TOOL_WALL);
  gtk_widget_grab_focus (GTK_WIDGET (cw_window_board (data)));
}

static void
two_points (CwWindow *window)
{
  double points[4];
  const CwSheet *sheet = shown_sheet (window);
  CwBoard *board = cw_window_board (window);
  if (!sheet || cw_board_get_tool (board) != CW_TOOL_SCALE
      || !cw_board_get_sheet_points (board, &points[0], &points[1],
                                     &points[2], &points[3]))
    return;
  cw_scale_dialog_measured (GTK_WINDOW (window), window->job, sheet->id,
                            points, scale_set, window);
}

void
cw_window_add_sheet_actions (CwWindow *window)
{
  static const GActionEntry entries[] = {
    { "add-sheet", add_sheet, NULL, NULL, NULL },
    { "go-to-sheet", show_sheet_walls, "s", NULL, NULL },
    { "trace-on-sheet", trace_on_sheet, "s", NULL, NULL },
    { "sheet-scale", state_scale, "s", NULL, NULL },
    { "turn-sheet", turn_sheet, "s", NULL, NULL },
    { "remove-sheet", remove_sheet, "s", NULL, NULL },
  };
  g_action_map_add_action_entries (G_ACTION_MAP (window), entries,
                                   G_N_ELEMENTS (entries), window);
  g_signal_connect_object (cw_window_board (window), "two-points",
                           G_CALLBACK (two_points), window,
                           G_CONNECT_SWAPPED);
}

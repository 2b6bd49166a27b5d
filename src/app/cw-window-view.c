/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the window lets one choose about the board: the tool, what is shown,
 * how large.
 */
#include "cw-window-private.h"

#include "cw-settings.h"

#define STEP 1.25

static const struct
{
  const char *action;
  CwLayers layer;             /* 0: the sheet */
  gboolean at_first;          /* shown, before somebody chose */
} layers[] = {
  { "show-sheet", 0, TRUE },
  { "show-openings", CW_LAYER_OPENINGS, TRUE },
  { "show-stub-outs", CW_LAYER_STUB_OUTS, TRUE },
  { "show-studs", CW_LAYER_STUDS, TRUE },
  { "show-panels", CW_LAYER_PANELS, TRUE },
  { "show-numbers", CW_LAYER_NUMBERS, TRUE },
  { "show-dimensions", CW_LAYER_DIMENSIONS, TRUE },
  { "show-levels", CW_LAYER_LEVELS, TRUE },
  { "show-checks", CW_LAYER_CHECKS, TRUE },
  { "show-mesh", CW_LAYER_MESH, FALSE },
  { "show-barrier", CW_LAYER_BARRIER, FALSE },
};

static gboolean
is_on (CwWindow *window, const char *action)
{
  g_autoptr (GVariant) state = g_action_group_get_action_state (
      G_ACTION_GROUP (window), action);
  return g_variant_get_boolean (state);
}

static void
show_layers (CwWindow *window)
{
  CwLayers shown = CW_LAYER_WALL | CW_LAYER_BANDS;
  for (gsize i = 0; i < G_N_ELEMENTS (layers); i++)
    if (is_on (window, layers[i].action))
      shown |= layers[i].layer;
  cw_board_set_layers (cw_window_board (window), shown,
                       is_on (window, "show-sheet"));
}

static void
layer_changed (GSimpleAction *action, GVariant *state, gpointer data)
{
  g_simple_action_set_state (action, state);
  cw_settings_set_flag (g_action_get_name (G_ACTION (action)),
                        g_variant_get_boolean (state));
  show_layers (data);
}

/* Not remembered: who begins sees the board. */
static void
as_printed_changed (GSimpleAction *action, GVariant *state, gpointer data)
{
  g_simple_action_set_state (action, state);
  cw_board_set_as_printed (cw_window_board (data),
                           g_variant_get_boolean (state));
}

static void
tool_chosen (GSimpleAction *action, GVariant *state, gpointer data)
{
  CwBoard *board = cw_window_board (data);
  const char *name = g_variant_get_string (state, NULL);
  for (guint i = 0; i < CW_N_TOOLS; i++)
    if (g_strcmp0 (cw_tool_infos[i].name, name) == 0)
      cw_board_set_tool (board, cw_tool_infos[i].kind);
  gtk_widget_grab_focus (GTK_WIDGET (board));
}

static void
tool_changed (CwWindow *window)
{
  CwToolKind kind = cw_board_get_tool (cw_window_board (window));
  GAction *action
      = g_action_map_lookup_action (G_ACTION_MAP (window), "tool");
  g_simple_action_set_state (G_SIMPLE_ACTION (action),
                             g_variant_new_string (cw_tool_infos[kind].name));
}

static void
fit (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  cw_board_zoom_fit (cw_window_board (data));
}

static void
fit_selection (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  cw_board_zoom_to_selection (cw_window_board (data));
}

static void
list_items (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  cw_walls_place_list_items (cw_window_walls (data));
}

static void
closer (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  cw_board_zoom_by (cw_window_board (data), STEP);
}

static void
farther (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  cw_board_zoom_by (cw_window_board (data), 1 / STEP);
}

static void
add_layer_actions (CwWindow *window)
{
  for (gsize i = 0; i < G_N_ELEMENTS (layers); i++)
    {
      gboolean shown
          = cw_settings_get_flag (layers[i].action, layers[i].at_first);
      GActionEntry entry = { .name = layers[i].action,
                             .state = shown ? "true" : "false",
                             .change_state = layer_changed };
      g_action_map_add_action_entries (G_ACTION_MAP (window), &entry, 1,
                                       window);
    }
}

void
cw_window_add_view_actions (CwWindow *window)
{
  static const GActionEntry entries[] = {
    { "tool", NULL, "s", "'select'", tool_chosen },
    { "fit", fit, NULL, NULL, NULL },
    { "list-items", list_items, NULL, NULL, NULL },
    { "fit-selection", fit_selection, NULL, NULL, NULL },
    { "as-printed", NULL, NULL, "false", as_printed_changed },
    { "closer", closer, NULL, NULL, NULL },
    { "farther", farther, NULL, NULL, NULL },
  };
  g_action_map_add_action_entries (G_ACTION_MAP (window), entries,
                                   G_N_ELEMENTS (entries), window);
  add_layer_actions (window);
  show_layers (window);
  g_signal_connect_object (cw_window_board (window), "tool-changed",
                           G_CALLBACK (tool_changed), window,
                           G_CONNECT_SWAPPED);
}

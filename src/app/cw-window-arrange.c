/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the window does with the selection: align, distribute, mirror, repeat,
 * marks, choosing what is alike; and the menu of the board that offers it.
 */
#include "cw-window-private.h"

#include "cw-choose.h"
#include "cw-edit-arrange.h"
#include "cw-edit-marks.h"
#include "cw-edits.h"
#include "cw-look.h"
#include "cw-panel-head.h"
#include "cw-repeat-dialog.h"

static const char *const *
selection (CwWindow *window)
{
  return cw_document_selection (cw_window_document (window));
}

typedef CwProject *(*ChosenEdit) (const CwProject *project,
                                  const CwElevation *elevation,
                                  const char *const *ids);

/* What is selected on the shown wall. */
static void
edit_chosen (CwWindow *window, ChosenEdit change, const char *name)
{
  const CwElevation *elevation = cw_window_elevation (window);
  if (elevation)
    cw_window_edit (window,
                    change (cw_window_project (window), elevation,
                            selection (window)),
                    name);
}

static void
align (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  static const char *const names[]
      = { "left", "centre", "right", "bottom", "middle", "top" };
  CwWindow *window = data;
  const CwElevation *elevation = cw_window_elevation (window);
  for (guint i = 0; elevation && i < G_N_ELEMENTS (names); i++)
    if (g_strcmp0 (names[i], g_variant_get_string (parameter, NULL)) == 0)
      cw_window_edit (window,
                      cw_edit_align (cw_window_project (window), elevation,
                                     selection (window), (CwAlign) i),
                      _("Align"));
}

static void
distribute (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  const CwElevation *elevation = cw_window_elevation (window);
  gboolean upright
      = g_strcmp0 (g_variant_get_string (parameter, NULL), "up") == 0;
  if (elevation)
    cw_window_edit (window,
                    cw_edit_distribute (cw_window_project (window), elevation,
                                        selection (window), upright),
                    _("Distribute"));
}

static void
mirror (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  edit_chosen (data, cw_edit_mirror, _("Mirror"));
}

static void
mirror_wall (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  const CwElevation *elevation = cw_window_elevation (window);
  if (elevation)
    cw_window_edit (window,
                    cw_edit_mirror_elevation (cw_window_project (window),
                                              elevation),
                    _("Mirror a wall"));
}

static void
repeat (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  cw_repeat_dialog_show (GTK_WINDOW (window), window->job);
}

static CwProject *
with_mark (const CwProject *project, const CwElevation *elevation,
           const char *const *ids)
{
  g_autofree char *mark = NULL;
  return cw_edit_make_mark (project, elevation, ids, &mark);
}

static void
make_mark (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  edit_chosen (data, with_mark, _("Make a mark"));
}

static void
break_away (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  edit_chosen (data, cw_edit_break_away, _("Break away from a mark"));
}

/* In the middle of what is seen of the wall. */
static void
place_mark (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwBoard *board = cw_window_board (data);
  if (cw_board_place_mark (board, g_variant_get_string (parameter, NULL),
                           gtk_widget_get_width (GTK_WIDGET (board)) / 2.0,
                           gtk_widget_get_height (GTK_WIDGET (board)) / 2.0))
    gtk_widget_grab_focus (GTK_WIDGET (board));
}

static void
choose (CwWindow *window, char **ids)
{
  if (ids[0])
    cw_document_select (cw_window_document (window),
                        (const char *const *) ids);
  g_strfreev (ids);
}

static void
choose_all (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  const CwElevation *elevation = cw_window_elevation (data);
  if (elevation)
    choose (data, cw_choose_all (elevation));
}

static void
choose_kind (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  const CwElevation *elevation = cw_window_elevation (data);
  if (elevation)
    choose (data, cw_choose_kind (elevation, selection (data)));
}

static void
choose_mark (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  const CwElevation *elevation = cw_window_elevation (data);
  if (elevation)
    choose (data, cw_choose_mark (elevation, selection (data)));
}

static void
remove_chosen (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  edit_chosen (data, cw_edit_remove, _("Delete"));
}

static void
go_to_state (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwDocument *document = cw_window_document (data);
  guint state = (guint) g_variant_get_int32 (parameter);
  if (state < cw_document_n_states (document))
    cw_document_go_to_state (document, state);
}

/* How many items of the shown wall are selected. */
typedef struct
{
  guint items, openings, marked;
} Chosen;

static Chosen
count_chosen (CwWindow *window)
{
  const CwElevation *elevation = cw_window_elevation (window);
  Chosen n = { 0, 0, 0 };
  for (const char *const *id = selection (window); elevation && *id; id++)
    {
      const CwNode *node = cw_node_find (&elevation->node, *id);
      if (!node || node == &elevation->node)
        continue;
      n.items++;
      if (!cw_node_is_opening (node))
        continue;
      n.openings++;
      n.marked += *((const CwOpening *) node)->mark != '\0';
    }
  return n;
}

static void
selection_changed (CwWindow *window)
{
  Chosen n = count_chosen (window);
  const CwElevation *elevation = cw_window_elevation (window);
  cw_window_enable (window, "cut", n.items > 0);
  cw_window_enable (window, "copy", n.items > 0);
  cw_window_enable (window, "paste", elevation != NULL);
  cw_window_enable (window, "remove-chosen", n.items > 0);
  cw_window_enable (window, "repeat", n.items > 0);
  cw_window_enable (window, "choose-kind", n.items > 0);
  cw_window_enable (window, "choose-mark", n.marked > 0);
  cw_window_enable (window, "choose-all", elevation != NULL);
  cw_window_enable (window, "mirror", n.items > 1);
  cw_window_enable (window, "mirror-wall", elevation != NULL);
  cw_window_enable (window, "align", n.items > 1);
  cw_window_enable (window, "distribute", n.items > 2);
  cw_window_enable (window, "make-mark", n.openings > 0);
  cw_window_enable (window, "break-away", n.marked > 0);
}

static void
show_menu (CwWindow *window, double x, double y)
{
  GtkWidget *board = GTK_WIDGET (cw_window_board (window));
  double at_x, at_y;
  selection_changed (window);
  cw_window_enable_side_actions (window);
  gtk_widget_translate_coordinates (board, gtk_widget_get_parent (board), x, y,
                                    &at_x, &at_y);
  gtk_popover_set_pointing_to (
      GTK_POPOVER (window->board_menu),
      &(GdkRectangle) { (int) at_x, (int) at_y, 1, 1 });
  gtk_popover_popup (GTK_POPOVER (window->board_menu));
}

/* Back to where the keys work on what is selected. */
static void
menu_closed (CwWindow *window)
{
  gtk_widget_grab_focus (GTK_WIDGET (cw_window_board (window)));
}

static void
add_board_menu (CwWindow *window)
{
  GtkWidget *board = GTK_WIDGET (cw_window_board (window));
  g_autoptr (GtkBuilder) builder
      = gtk_builder_new_from_resource (CW_RESOURCE_PATH "/menus.ui");
  window->board_menu = gtk_popover_menu_new_from_model (
      G_MENU_MODEL (gtk_builder_get_object (builder, "board-menu")));
  cw_widget_set_name (window->board_menu, _("What can be done here"));
  gtk_popover_set_has_arrow (GTK_POPOVER (window->board_menu), FALSE);
  gtk_widget_set_halign (window->board_menu, GTK_ALIGN_START);
  gtk_overlay_add_overlay (GTK_OVERLAY (gtk_widget_get_parent (board)),
                           window->board_menu);
  g_signal_connect_object (window->board_menu, "closed",
                           G_CALLBACK (menu_closed), window,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (board, "menu-wanted", G_CALLBACK (show_menu),
                           window, G_CONNECT_SWAPPED);
}

/* Only while the board has the focus: an entry keeps its own keys. */
static void
add_board_keys (CwWindow *window)
{
  static const char *const keys[][2] = {
    { "<Control>x", "win.cut" },
    { "<Control>c", "win.copy" },
    { "<Control>v", "win.paste" },
    { "<Control>a", "win.choose-all" },
    { "<Control><Shift>k", "win.choose-kind" },
    { "<Control><Shift>m", "win.choose-mark" },
    { "<Control>m", "win.mirror" },
    { "<Control>r", "win.repeat" },
    { "<Control>k", "win.make-mark" },
  };
  GtkEventController *controller = gtk_shortcut_controller_new ();
  for (gsize i = 0; i < G_N_ELEMENTS (keys); i++)
    gtk_shortcut_controller_add_shortcut (
        GTK_SHORTCUT_CONTROLLER (controller),
        gtk_shortcut_new (gtk_shortcut_trigger_parse_string (keys[i][0]),
                          gtk_named_action_new (keys[i][1])));
  gtk_widget_add_controller (GTK_WIDGET (cw_window_board (window)),
                             controller);
}

void
cw_window_add_arrange_actions (CwWindow *window)
{
  static const GActionEntry entries[] = {
    { "align", align, "s", NULL, NULL },
    { "distribute", distribute, "s", NULL, NULL },
    { "mirror", mirror, NULL, NULL, NULL },
    { "mirror-wall", mirror_wall, NULL, NULL, NULL },
    { "repeat", repeat, NULL, NULL, NULL },
    { "make-mark", make_mark, NULL, NULL, NULL },
    { "place-mark", place_mark, "s", NULL, NULL },
    { "break-away", break_away, NULL, NULL, NULL },
    { "choose-all", choose_all, NULL, NULL, NULL },
    { "choose-kind", choose_kind, NULL, NULL, NULL },
    { "choose-mark", choose_mark, NULL, NULL, NULL },
    { "remove-chosen", remove_chosen, NULL, NULL, NULL },
    { "go-to-state", go_to_state, "i", NULL, NULL },
  };
  g_action_map_add_action_entries (G_ACTION_MAP (window), entries,
                                   G_N_ELEMENTS (entries), window);
  cw_window_add_clip_actions (window);
  cw_window_add_side_actions (window);
  add_board_menu (window);
  add_board_keys (window);
  g_signal_connect_object (cw_window_document (window), "changed",
                           G_CALLBACK (selection_changed), window,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (cw_window_document (window), "selection-changed",
                           G_CALLBACK (selection_changed), window,
                           G_CONNECT_SWAPPED);
  selection_changed (window);
}

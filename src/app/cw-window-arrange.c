/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the window does with the selection: align, distribute, mirror, repeat,
 * marks, corners, choosing what is alike; and the menu of the board that
 * offers it.
 */
#include "cw-window-private.h"

#include "cw-choose.h"
#include "cw-edit-arrange.h"
#include "cw-edit-corners.h"
#include "cw-edit-marks.h"
#include "cw-edits.h"
#include "cw-look.h"
#include "cw-panel-head.h"
#include "cw-repeat-dialog.h"

/* How near to a side its menu is meant, pixels. */
#define REACH 14

static const char *const *
selection (CwWindow *window)
{
  return cw_document_selection (cw_window_document (window));
}

/* Takes @next; NULL: nothing happens. */
static void
edit (CwWindow *window, CwProject *next, const char *name)
{
  CwDocument *document = cw_window_document (window);
  if (!next)
    return;
  cw_document_seal (document);
  cw_document_edit (document, next, name, NULL);
  cw_node_unref (next);
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
      edit (window,
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
    edit (window,
          cw_edit_distribute (cw_window_project (window), elevation,
                              selection (window), upright),
          _("Distribute"));
}

static void
mirror (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  const CwElevation *elevation = cw_window_elevation (window);
  if (elevation)
    edit (window,
          cw_edit_mirror (cw_window_project (window), elevation,
                          selection (window)),
          _("Mirror"));
}

static void
mirror_wall (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  const CwElevation *elevation = cw_window_elevation (window);
  if (elevation)
    edit (window,
          cw_edit_mirror_elevation (cw_window_project (window), elevation),
          _("Mirror a wall"));
}

static void
repeat (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  cw_repeat_dialog_show (GTK_WINDOW (window), window->job);
}

static void
make_mark (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  const CwElevation *elevation = cw_window_elevation (window);
  g_autofree char *mark = NULL;
  if (elevation)
    edit (window,
          cw_edit_make_mark (cw_window_project (window), elevation,
                             selection (window), &mark),
          _("Make a mark"));
}

static void
break_away (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  const CwElevation *elevation = cw_window_elevation (window);
  if (elevation)
    edit (window,
          cw_edit_break_away (cw_window_project (window), elevation,
                              selection (window)),
          _("Break away from a mark"));
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
  CwWindow *window = data;
  const CwElevation *elevation = cw_window_elevation (window);
  if (elevation)
    edit (window,
          cw_edit_remove (cw_window_project (window), elevation,
                          selection (window)),
          _("Delete"));
}

/* The side that the menu was asked for at. */
typedef struct
{
  const char *owner;
  int side;
  CwPoint on;
  CwLength chord, bow;
} Side;

static gboolean
find_side (CwWindow *window, const char *owner, Side *side)
{
  CwBoard *board = cw_window_board (window);
  CwLength reach
      = (CwLength) (REACH * cw_board_get_mm_per_pixel (board) * 1e6);
  g_autoptr (GArray) corners
      = cw_edit_corners (cw_window_project (window), owner);
  if (!corners)
    return FALSE;
  side->owner = owner;
  side->side = cw_corners_side_at (corners, cw_board_get_menu_point (board),
                                   reach, &side->on);
  if (side->side < 0)
    return FALSE;
  const CwCorner *from
      = &g_array_index (corners, CwCorner, (guint) side->side);
  CwPoint to = g_array_index (corners, CwCorner,
                              ((guint) side->side + 1) % corners->len)
                   .at;
  side->bow = from->sagitta;
  side->chord = MAX (ABS (to.x - from->at.x), ABS (to.y - from->at.y));
  return TRUE;
}

/* Of the unclad area that is selected, or of the outline. */
static gboolean
menu_side (CwWindow *window, Side *side)
{
  const char *const *ids = selection (window);
  const CwElevation *elevation = cw_window_elevation (window);
  return (ids[0] && !ids[1] && find_side (window, ids[0], side))
         || (elevation && elevation->outline
             && find_side (window, elevation->id, side));
}

/* What cannot be is told; takes both. */
static void
edit_corners (CwWindow *window, CwProject *next, char *fault,
              const char *name)
{
  if (fault)
    cw_notice_done (window->notice, fault, NULL);
  edit (window, next, name);
  g_free (fault);
}

static void
insert_corner (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  char *fault = NULL;
  Side side;
  if (!menu_side (data, &side))
    return;
  CwProject *next
      = cw_edit_insert_corner (cw_window_project (data), side.owner,
                               (guint) side.side, side.on, &fault);
  edit_corners (data, next, fault, _("Insert a corner"));
}

/* An eighth of the chord, outward, to a whole millimetre; to be changed by
 * its handle or in the attributes. */
static void
bow_side (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  char *fault = NULL;
  Side side;
  if (!menu_side (data, &side))
    return;
  CwLength bow = side.chord / 8;
  CwProject *next = cw_edit_bow_side (
      cw_window_project (data), side.owner, (guint) side.side,
      MAX (bow - bow % CW_MM (1), 1), &fault);
  edit_corners (data, next, fault, _("Make a side an arc"));
}

static void
straighten_side (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  char *fault = NULL;
  Side side;
  if (!menu_side (data, &side))
    return;
  CwProject *next
      = cw_edit_bow_side (cw_window_project (data), side.owner,
                          (guint) side.side, 0, &fault);
  edit_corners (data, next, fault, _("Make a side straight"));
}

static void
go_to_state (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwDocument *document = cw_window_document (data);
  guint state = (guint) g_variant_get_int32 (parameter);
  if (state < cw_document_n_states (document))
    cw_document_go_to_state (document, state);
}

/* Items of the shown wall that are selected. */
static guint
n_items (CwWindow *window, gboolean openings)
{
  const CwElevation *elevation = cw_window_elevation (window);
  guint n = 0;
  for (const char *const *id = selection (window); elevation && *id; id++)
    {
      const CwNode *node = cw_node_find (&elevation->node, *id);
      n += node && node != &elevation->node
           && (!openings || cw_node_is_opening (node));
    }
  return n;
}

static gboolean
has_marked (CwWindow *window)
{
  const CwElevation *elevation = cw_window_elevation (window);
  for (const char *const *id = selection (window); elevation && *id; id++)
    {
      const CwNode *node = cw_node_find (&elevation->node, *id);
      if (node && cw_node_is_opening (node)
          && *((const CwOpening *) node)->mark)
        return TRUE;
    }
  return FALSE;
}

static void
enable_sides (CwWindow *window)
{
  Side side = { NULL, -1, { 0, 0 }, 0, 0 };
  gboolean on_side = menu_side (window, &side);
  cw_window_enable (window, "insert-corner", on_side);
  cw_window_enable (window, "bow-side", on_side && side.bow == 0);
  cw_window_enable (window, "straighten-side", on_side && side.bow != 0);
}

static void
selection_changed (CwWindow *window)
{
  guint n = n_items (window, FALSE);
  const CwElevation *elevation = cw_window_elevation (window);
  cw_window_enable (window, "cut", n > 0);
  cw_window_enable (window, "copy", n > 0);
  cw_window_enable (window, "paste", elevation != NULL);
  cw_window_enable (window, "remove-chosen", n > 0);
  cw_window_enable (window, "repeat", n > 0);
  cw_window_enable (window, "choose-kind", n > 0);
  cw_window_enable (window, "choose-mark", has_marked (window));
  cw_window_enable (window, "choose-all", elevation != NULL);
  cw_window_enable (window, "mirror", n > 1);
  cw_window_enable (window, "mirror-wall", elevation != NULL);
  cw_window_enable (window, "align", n > 1);
  cw_window_enable (window, "distribute", n > 2);
  cw_window_enable (window, "make-mark", n_items (window, TRUE) > 0);
  cw_window_enable (window, "break-away", has_marked (window));
  enable_sides (window);
}

static void
show_menu (CwWindow *window, double x, double y)
{
  GtkWidget *board = GTK_WIDGET (cw_window_board (window));
  double at_x, at_y;
  selection_changed (window);
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
    { "break-away", break_away, NULL, NULL, NULL },
    { "choose-all", choose_all, NULL, NULL, NULL },
    { "choose-kind", choose_kind, NULL, NULL, NULL },
    { "choose-mark", choose_mark, NULL, NULL, NULL },
    { "remove-chosen", remove_chosen, NULL, NULL, NULL },
    { "insert-corner", insert_corner, NULL, NULL, NULL },
    { "bow-side", bow_side, NULL, NULL, NULL },
    { "straighten-side", straighten_side, NULL, NULL, NULL },
    { "go-to-state", go_to_state, "i", NULL, NULL },
  };
  g_action_map_add_action_entries (G_ACTION_MAP (window), entries,
                                   G_N_ELEMENTS (entries), window);
  cw_window_add_clip_actions (window);
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

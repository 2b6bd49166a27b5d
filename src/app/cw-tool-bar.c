/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-tool-bar.h"

#include "cw-i18n.h"
#include "cw-panel-head.h"
#include "cw-tool.h"

struct _CwToolBar
{
  GtkWidget parent;
};

G_DEFINE_FINAL_TYPE (CwToolBar, cw_tool_bar, GTK_TYPE_WIDGET)

static GtkWidget *
new_face (const char *icon, const char *text)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 3);
  gtk_box_append (GTK_BOX (box), gtk_image_new_from_icon_name (icon));
  gtk_box_append (GTK_BOX (box), gtk_label_new (text));
  return box;
}

static GtkWidget *
new_tool_button (const CwToolInfo *info)
{
  GtkWidget *button = gtk_toggle_button_new ();
  gtk_button_set_child (GTK_BUTTON (button),
                        new_face (info->icon, _(info->label)));
  gtk_widget_add_css_class (button, "cw-tool");
  /* Translators: the name of a tool and the key that chooses it. */
  g_autofree char *tip
      = g_strdup_printf (_("%s (%s)"), _(info->label), info->key);
  gtk_widget_set_tooltip_text (button, tip);
  cw_widget_set_name (button, _(info->label));
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), "win.tool");
  gtk_actionable_set_action_target (GTK_ACTIONABLE (button), "s", info->name);
  return button;
}

static gboolean
open_menu (GtkWidget *button, GVariant *args, gpointer data)
{
  gtk_menu_button_popup (GTK_MENU_BUTTON (button));
  return TRUE;
}

static void
add_key (GtkWidget *button, const char *key)
{
  GtkEventController *keys = gtk_shortcut_controller_new ();
  gtk_shortcut_controller_set_scope (GTK_SHORTCUT_CONTROLLER (keys),
                                     GTK_SHORTCUT_SCOPE_GLOBAL);
  gtk_shortcut_controller_add_shortcut (
      GTK_SHORTCUT_CONTROLLER (keys),
      gtk_shortcut_new (gtk_shortcut_trigger_parse_string (key),
                        gtk_callback_action_new (open_menu, NULL, NULL)));
  gtk_widget_add_controller (button, keys);
}

static GtkWidget *
new_layers_button (void)
{
  GtkWidget *button = cw_icon_menu_button_new (
      "cw-layers-symbolic", _("What is shown"), "layers-menu");
  add_key (button, "F9");
  gtk_widget_set_valign (button, GTK_ALIGN_CENTER);
  return button;
}

static GtkWidget *
new_view_button (const char *icon, const char *name, const char *action)
{
  GtkWidget *button = cw_icon_button_new (icon, name, action);
  gtk_widget_set_valign (button, GTK_ALIGN_CENTER);
  return button;
}

static GtkWidget *
new_row (void)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  for (guint i = 0; i < CW_N_TOOLS; i++)
    gtk_box_append (GTK_BOX (row), new_tool_button (&cw_tool_infos[i]));
  GtkWidget *space = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  gtk_widget_set_hexpand (space, TRUE);
  gtk_box_append (GTK_BOX (row), space);
  gtk_box_append (GTK_BOX (row), new_layers_button ());
  gtk_box_append (GTK_BOX (row),
                  new_view_button ("cw-farther-symbolic", _("Farther"),
                                   "win.farther"));
  gtk_box_append (GTK_BOX (row),
                  new_view_button ("cw-closer-symbolic", _("Closer"),
                                   "win.closer"));
  gtk_box_append (GTK_BOX (row),
                  new_view_button ("cw-fit-symbolic", _("Show all"),
                                   "win.fit"));
  return row;
}

static void
cw_tool_bar_dispose (GObject *object)
{
  GtkWidget *child;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (object))))
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (cw_tool_bar_parent_class)->dispose (object);
}

static void
cw_tool_bar_class_init (CwToolBarClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_tool_bar_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (class),
                                        GTK_ACCESSIBLE_ROLE_TOOLBAR);
}

/* With large text the row is wider than a small window. */
static void
cw_tool_bar_init (CwToolBar *bar)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller),
                                  GTK_POLICY_AUTOMATIC, GTK_POLICY_NEVER);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), new_row ());
  gtk_widget_set_parent (scroller, GTK_WIDGET (bar));
  gtk_widget_add_css_class (GTK_WIDGET (bar), "cw-tools");
  cw_widget_set_name (GTK_WIDGET (bar), _("Tools"));
}

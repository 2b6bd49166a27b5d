/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-panel-head.h"

#include "cw-look.h"

GtkWidget *
cw_panel_head_new (const char *title)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  GtkWidget *label = gtk_label_new (title);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_widget_add_css_class (label, "cw-heading");
  gtk_box_append (GTK_BOX (box), label);
  gtk_widget_add_css_class (box, "cw-panel-head");
  return box;
}

void
cw_widget_set_name (GtkWidget *widget, const char *name)
{
  gtk_accessible_update_property (GTK_ACCESSIBLE (widget),
                                  GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
}

GtkWidget *
cw_icon_button_new (const char *icon, const char *name, const char *action)
{
  GtkWidget *button = gtk_button_new_from_icon_name (icon);
  gtk_widget_set_tooltip_text (button, name);
  cw_widget_set_name (button, name);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), action);
  return button;
}

void
cw_menu_button_take_menu (GtkMenuButton *button, const char *menu_id)
{
  g_autoptr (GtkBuilder) builder
      = gtk_builder_new_from_resource (CW_RESOURCE_PATH "/menus.ui");
  gtk_menu_button_set_menu_model (
      button, G_MENU_MODEL (gtk_builder_get_object (builder, menu_id)));
}

GtkWidget *
cw_icon_menu_button_new (const char *icon, const char *name,
                         const char *menu_id)
{
  GtkWidget *button = gtk_menu_button_new ();
  gtk_menu_button_set_icon_name (GTK_MENU_BUTTON (button), icon);
  gtk_widget_set_tooltip_text (button, name);
  cw_widget_set_name (button, name);
  cw_menu_button_take_menu (GTK_MENU_BUTTON (button), menu_id);
  return button;
}

void
cw_widget_keep_direction (GtkWidget *widget)
{
  if (GTK_IS_LABEL (widget)
      && gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL)
    gtk_label_set_xalign (GTK_LABEL (widget),
                          1 - gtk_label_get_xalign (GTK_LABEL (widget)));
  gtk_widget_set_direction (widget, GTK_TEXT_DIR_LTR);
  if (GTK_IS_ENTRY (widget))
    gtk_widget_set_direction (
        GTK_WIDGET (gtk_editable_get_delegate (GTK_EDITABLE (widget))),
        GTK_TEXT_DIR_LTR);
}

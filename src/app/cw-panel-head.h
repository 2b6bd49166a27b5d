/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The line over a list: its name, and buttons that act on it.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* A box; append buttons to it. */
GtkWidget *cw_panel_head_new (const char *title);

/* A button with one of our icons that calls @action; @name is its tooltip and
 * its name for a screen reader. */
GtkWidget *cw_icon_button_new (const char *icon, const char *name,
                               const char *action);

/* Gives @button a menu of menus.ui. */
void cw_menu_button_take_menu (GtkMenuButton *button, const char *menu_id);

/* A button with one of our icons and a menu of menus.ui. */
GtkWidget *cw_icon_menu_button_new (const char *icon, const char *name,
                                    const char *menu_id);

/* Sizes and the drawing run from left to right in every language; a label of
 * them stays on the side where it is. */
void cw_widget_keep_direction (GtkWidget *widget);

/* What a screen reader says of @widget. */
void cw_widget_set_name (GtkWidget *widget, const char *name);

G_END_DECLS

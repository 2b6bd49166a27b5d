/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A button whose work may take the button itself away: the work is done when
 * GTK is done with the click.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef void (*CwLateFunc) (gpointer owner, gpointer data);

/*
 * cw_late_button_new:
 * @pressed: called soon after a click, if @owner is still there
 * @owner: what it works on; not kept alive by the button
 * @data: (nullable): taken; freed by g_free() with the button and the clicks
 *   still to be answered
 */
GtkWidget *cw_late_button_new (const char *label, CwLateFunc pressed,
                               GObject *owner, gpointer data);

/* A button in the look of the forms, at the beginning of its row. */
GtkWidget *cw_framed_button_new (const char *label);

G_END_DECLS

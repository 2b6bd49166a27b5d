/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Asks for the sizes of a rectangular house, or of walls of one size, and
 * makes the walls at once.
 */
#pragma once

#include "cw-job.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef void (*CwHouseDialogDone) (gpointer data);

/* @done is called when the walls are there. */
void cw_house_dialog_show (GtkWindow *parent, CwJob *job,
                           CwHouseDialogDone done, gpointer data);

G_END_DECLS

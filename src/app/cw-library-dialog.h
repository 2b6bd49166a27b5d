/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Choosing a buildup from the library.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-project.h"

G_BEGIN_DECLS

/* @buildup: borrowed; not called when it was given up. */
typedef void (*CwBuildupChosenFunc) (const CwBuildup *buildup, gpointer data);

/* @units: whose buildups stand first. @free_data: (nullable): called when
 * the dialog is gone. The dialog, borrowed. */
GtkWindow *cw_library_dialog_open (GtkWindow *parent, CwUnits units,
                                   CwBuildupChosenFunc chosen, gpointer data,
                                   GDestroyNotify free_data);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Adding a plan sheet: which page, called what, to which scale.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-job.h"

G_BEGIN_DECLS

/* The sheet is in the project. @measure: its scale is still to be measured. */
typedef void (*CwSheetAddedFunc) (const char *sheet_id, gboolean measure,
                                  gpointer data);

/* Opens @file on another thread, asks, and adds the sheet as one edit; a file
 * that cannot be used is told of. @data outlives the dialog. */
void cw_sheet_dialog_add (GtkWindow *parent, CwJob *job, GFile *file,
                          CwSheetAddedFunc done, gpointer data);

G_END_DECLS

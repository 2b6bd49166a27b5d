/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Questions about a sheet's scale.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-job.h"

G_BEGIN_DECLS

/* @data is the caller's, and outlives the dialog. */
typedef void (*CwScaleFunc) (gpointer data);

/* The scale stated on the sheet; @measure is called when it is to be measured
 * instead. */
void cw_scale_dialog_state (GtkWindow *parent, CwJob *job,
                            const char *sheet_id, CwScaleFunc measure,
                            gpointer data);

/* The true length between two points of the page; @done is called when the
 * scale has been set. */
void cw_scale_dialog_measured (GtkWindow *parent, CwJob *job,
                               const char *sheet_id, const double points[4],
                               CwScaleFunc done, gpointer data);

G_END_DECLS

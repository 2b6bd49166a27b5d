/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The project's buildups in a window of their own: which walls have each, and
 * all their layers to be edited. It edits the job's document, so the main
 * window's undo is its undo.
 */
#pragma once

#include "cw-layer-form.h"

G_BEGIN_DECLS

#define CW_TYPE_BUILDUPS_WINDOW (cw_buildups_window_get_type ())
G_DECLARE_FINAL_TYPE (CwBuildupsWindow, cw_buildups_window, CW,
                      BUILDUPS_WINDOW, GtkWindow)

/* @parent: a window of the application with the actions of the group "win". */
CwBuildupsWindow *cw_buildups_window_new (GtkWindow *parent, CwJob *job);

/* @id: shown if it is there. */
void cw_buildups_window_choose (CwBuildupsWindow *window, const char *id);
const char *cw_buildups_window_chosen (CwBuildupsWindow *window);

CwLayerForm *cw_buildups_window_form (CwBuildupsWindow *window);
CwLayerList *cw_buildups_window_layers (CwBuildupsWindow *window);

G_END_DECLS

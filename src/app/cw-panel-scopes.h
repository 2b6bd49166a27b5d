/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The whole project and its walls in a list, and the panel figures of the
 * one that is chosen.
 *
 * Signal: "chosen".
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-job.h"

G_BEGIN_DECLS

#define CW_TYPE_PANEL_SCOPES (cw_panel_scopes_get_type ())
G_DECLARE_FINAL_TYPE (CwPanelScopes, cw_panel_scopes, CW, PANEL_SCOPES,
                      GtkWidget)

GtkWidget *cw_panel_scopes_new (void);
void cw_panel_scopes_set_job (CwPanelScopes *scopes, CwJob *job);

/* Borrowed; NULL: the whole project. */
const char *cw_panel_scopes_chosen (CwPanelScopes *scopes);
void cw_panel_scopes_choose (CwPanelScopes *scopes,
                             const char *elevation_id);

/* For tests: a figure as it is shown, or NULL. Borrowed. */
const char *cw_panel_scopes_figure (CwPanelScopes *scopes, const char *key);

G_END_DECLS

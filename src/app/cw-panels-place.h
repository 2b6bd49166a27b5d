/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How the panels are sawn and where their pieces go.
 */
#pragma once

#include "cw-cut-detail.h"
#include "cw-cut-grid.h"
#include "cw-panel-scopes.h"

G_BEGIN_DECLS

#define CW_TYPE_PANELS_PLACE (cw_panels_place_get_type ())
G_DECLARE_FINAL_TYPE (CwPanelsPlace, cw_panels_place, CW, PANELS_PLACE,
                      GtkWidget)

GtkWidget *cw_panels_place_new (void);
void cw_panels_place_set_job (CwPanelsPlace *place, CwJob *job);

/* Puts the keyboard on the pictures. */
void cw_panels_place_enter (CwPanelsPlace *place);

/* Borrowed. */
CwPanelScopes *cw_panels_place_scopes (CwPanelsPlace *place);
CwCutGrid *cw_panels_place_grid (CwPanelsPlace *place);
CwCutDetail *cw_panels_place_detail (CwPanelsPlace *place);

G_END_DECLS

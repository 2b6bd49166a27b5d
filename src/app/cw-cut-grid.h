/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The panels of a cut list, or those with a piece of one wall, as pictures;
 * as many as fit beside each other. Only what is seen is drawn.
 *
 * Signal: "chosen" (another panel, or none).
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-cut-item.h"
#include "cw-text-style.h"

G_BEGIN_DECLS

#define CW_TYPE_CUT_GRID (cw_cut_grid_get_type ())
G_DECLARE_FINAL_TYPE (CwCutGrid, cw_cut_grid, CW, CUT_GRID, GtkWidget)

GtkWidget *cw_cut_grid_new (void);

/* @list: (nullable): not worked out yet. @elevation_id: (nullable): of the
 * whole project. The choice stays at the same panel number where there is one. */
void cw_cut_grid_show (CwCutGrid *grid, const CwCutList *list,
                       const char *elevation_id, const CwTextStyle *style);

/* Borrowed, nullable. */
CwCutItem *cw_cut_grid_chosen (CwCutGrid *grid);
guint cw_cut_grid_n_panels (CwCutGrid *grid);
/* Chooses the panel with that number and brings it into sight. */
void cw_cut_grid_choose (CwCutGrid *grid, guint number);

G_END_DECLS

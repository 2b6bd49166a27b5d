/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One elevation in the list: its drawing, name and net area.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-job.h"

G_BEGIN_DECLS

#define CW_TYPE_ELEVATION_ROW (cw_elevation_row_get_type ())
G_DECLARE_FINAL_TYPE (CwElevationRow, cw_elevation_row, CW, ELEVATION_ROW,
                      GtkListBoxRow)

GtkWidget *cw_elevation_row_new (const char *id);
const char *cw_elevation_row_id (CwElevationRow *row);

/* As the job has it now. */
void cw_elevation_row_refresh (CwElevationRow *row, CwJob *job);

G_END_DECLS

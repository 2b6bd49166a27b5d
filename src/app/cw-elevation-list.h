/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The elevations of a project as small drawings with their net areas; choosing
 * one shows it on the board.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-job.h"

G_BEGIN_DECLS

#define CW_TYPE_ELEVATION_LIST (cw_elevation_list_get_type ())
G_DECLARE_FINAL_TYPE (CwElevationList, cw_elevation_list, CW, ELEVATION_LIST,
                      GtkWidget)

void cw_elevation_list_set_job (CwElevationList *list, CwJob *job);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window of one job.
 */
#pragma once

#include "cw-application.h"
#include "cw-job.h"
#include "cw-panels-place.h"
#include "cw-walls-place.h"

G_BEGIN_DECLS

#define CW_TYPE_WINDOW (cw_window_get_type ())
G_DECLARE_FINAL_TYPE (CwWindow, cw_window, CW, WINDOW, GtkApplicationWindow)

CwWindow *cw_window_new (CwApplication *application, CwJob *job);

CwJob *cw_window_job (CwWindow *window);
CwWallsPlace *cw_window_walls (CwWindow *window);
CwPanelsPlace *cw_window_panels (CwWindow *window);

/* From wherever one is to the board. */
void cw_window_go_to_walls (CwWindow *window);
void cw_window_go_to_panels (CwWindow *window);

/* Begins the short tour, unless somebody dismissed it. */
void cw_window_tour_if_new (CwWindow *window);

G_END_DECLS

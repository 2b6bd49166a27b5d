/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The drawing board and all that stands round it.
 */
#pragma once

#include "cw-board-frame.h"
#include "cw-job.h"
#include "cw-setting-panel.h"

G_BEGIN_DECLS

#define CW_TYPE_WALLS_PLACE (cw_walls_place_get_type ())
G_DECLARE_FINAL_TYPE (CwWallsPlace, cw_walls_place, CW, WALLS_PLACE,
                      GtkWidget)

GtkWidget *cw_walls_place_new (void);
void cw_walls_place_set_job (CwWallsPlace *place, CwJob *job);

CwBoard *cw_walls_place_board (CwWallsPlace *place);
CwSettingPanel *cw_walls_place_setting (CwWallsPlace *place);
/* Opens the entry at the pointer. */
/* Begins the short tour. */
void cw_walls_place_tour (CwWallsPlace *place);
/* The keyboard goes to the list of what is on the wall. */
void cw_walls_place_list_items (CwWallsPlace *place);
void cw_walls_place_type (CwWallsPlace *place);

G_END_DECLS

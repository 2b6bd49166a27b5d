/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The best setting out: what may change, the search, its table, and taking a
 * choice. A chosen one is shown on the board before it is taken.
 */
#pragma once

#include "cw-board-frame.h"
#include "cw-job.h"
#include "cw-setting-table.h"

G_BEGIN_DECLS

#define CW_TYPE_SETTING_PANEL (cw_setting_panel_get_type ())
G_DECLARE_FINAL_TYPE (CwSettingPanel, cw_setting_panel, CW, SETTING_PANEL,
                      GtkWidget)

/* @frame outlives the panel. */
void cw_setting_panel_follow (CwSettingPanel *panel, CwBoardFrame *frame,
                              CwJob *job);

/* Closed, it forgets what it found. Opening gives it the keyboard. */
void cw_setting_panel_set_open (CwSettingPanel *panel, gboolean open);
gboolean cw_setting_panel_is_open (CwSettingPanel *panel);

/* The parts, for tests; borrowed. */
void cw_setting_panel_search (CwSettingPanel *panel);
gboolean cw_setting_panel_is_searching (CwSettingPanel *panel);
void cw_setting_panel_set_alone (CwSettingPanel *panel, gboolean alone);
CwSettingTable *cw_setting_panel_table (CwSettingPanel *panel);
/* What the chosen one would change in the project; "" while it is worked
 * out. */
const char *cw_setting_panel_outcome (CwSettingPanel *panel);
void cw_setting_panel_take (CwSettingPanel *panel);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A search for the best setting out on another thread.
 *
 * Signals: "progress"; "ended".
 */
#pragma once

#include "cw-project.h"
#include "cw-setting-search.h"

G_BEGIN_DECLS

#define CW_TYPE_SETTING_RUN (cw_setting_run_get_type ())
G_DECLARE_FINAL_TYPE (CwSettingRun, cw_setting_run, CW, SETTING_RUN, GObject)

/* Begins at once. @alone: for this wall; else for all walls of its buildup. */
CwSettingRun *cw_setting_run_new (const CwProject *project,
                                  const char *elevation_id, gboolean alone,
                                  const CwSettingAllowed *allowed);

/* What was found until then is kept. */
void cw_setting_run_stop (CwSettingRun *run);

gboolean cw_setting_run_is_going (CwSettingRun *run);
gboolean cw_setting_run_was_stopped (CwSettingRun *run);
double cw_setting_run_share (CwSettingRun *run);

/* (element-type CwSettingChoice) (nullable): borrowed; NULL while it goes. */
const GArray *cw_setting_run_choices (CwSettingRun *run);

/* For which wall, and whether for it alone. Borrowed. */
const char *cw_setting_run_elevation (CwSettingRun *run);
gboolean cw_setting_run_is_alone (CwSettingRun *run);

/* Whether all that the figures rest on is the same in @project. */
gboolean cw_setting_run_holds_for (CwSettingRun *run,
                                   const CwProject *project);

G_END_DECLS

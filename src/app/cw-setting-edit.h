/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Taking a choice of setting out: a pure function from a project to the next.
 *
 * The setting out belongs to the buildup, and walls share buildups. So a
 * choice is taken either for all walls of the buildup, which changes it, or
 * for one wall alone: then that wall gets a copy of the buildup, unless no
 * other wall uses it.
 */
#pragma once

#include "cw-project.h"
#include "cw-setting-search.h"

G_BEGIN_DECLS

/* Elevations of @project with this buildup. */
guint cw_setting_n_walls (const CwProject *project, const char *buildup_id);

/*
 * cw_setting_take:
 * @elevation_id: a wall with a buildup
 * @alone: for this wall alone
 * @name: of the copy of the buildup, when one is made
 *
 * Returns: (transfer full)
 */
CwProject *cw_setting_take (const CwProject *project,
                            const char *elevation_id,
                            const CwSettingChoice *choice, gboolean alone,
                            const char *name);

G_END_DECLS

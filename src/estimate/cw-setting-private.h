/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The parts of the search for the best setting out.
 */
#pragma once

#include "cw-cut-plan.h"
#include "cw-setting-search.h"

G_BEGIN_DECLS

/* The present setting out, without figures. */
CwSettingChoice cw_setting_choice_present (const CwBuildup *buildup);

/* Every setting to try, the present one first, without figures; none twice.
 * (transfer full) (element-type CwSettingChoice) */
GArray *cw_setting_choices (const CwWall *wall,
                            const CwSettingAllowed *allowed);

/* Lays the wall as @choice has it and fills in the figures. FALSE when
 * cancelled: they are not to be used. */
gboolean cw_setting_choice_measure (CwSettingChoice *choice,
                                    const CwWall *wall, CwCutEffort effort,
                                    GCancellable *cancellable);

G_END_DECLS

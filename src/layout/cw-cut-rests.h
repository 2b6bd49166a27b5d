/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is left of a panel that is sawn.
 */
#pragma once

#include "cw-cut-plan.h"
#include "cw-point.h"

G_BEGIN_DECLS

/*
 * cw_cut_rests:
 * The parts of @panel that hold no blank when all its cuts are made, in the
 * order in which they come off; a strip of less than a kerf is sawdust.
 *
 * Returns: (transfer full) (element-type CwBox): from the panel's lower left
 */
GArray *cw_cut_rests (const CwCutPanel *panel, const CwCutRules *rules);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Checks a panel plan from what it says alone; shares no code with the
 * planner.
 */
#pragma once

#include "cw-panel-plan.h"

G_BEGIN_DECLS

/*
 * Aborts unless every blank is as large as its piece and comes out of just one
 * panel or rest, by cuts that check_cut_plan() would let pass; every rest that
 * is used lies within its host's blank, a kerf away from the piece as GEOS
 * sees it and from the host's other rests; no piece comes out of its own
 * waste, by way of others either; and the counts add up.
 */
void check_one_plan (const CwPanelPlan *plan);

G_END_DECLS

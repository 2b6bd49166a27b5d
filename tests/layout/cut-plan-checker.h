/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Checks a cut plan from what it says alone; shares no code with the planner.
 */
#pragma once

#include "cw-cut-plan.h"

G_BEGIN_DECLS

/*
 * Aborts with a message unless every blank lies on exactly one panel, in its
 * size, wholly on the panel; no two overlap or come nearer than the kerf; the
 * cuts, made one after the other on the part in hand, set every piece free
 * without touching one; and no panel holds blanks of two groups.
 */
void check_cut_plan (const CwCutPlan *plan, const CwCutBlank *blanks,
                     guint n_blanks);

G_END_DECLS

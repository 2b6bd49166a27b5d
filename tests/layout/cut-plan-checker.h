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

/* The same of one panel, or of a part of one as large as @rules say; blanks
 * may be larger than @largest by rasping. Counts its blanks in @seen, which
 * has a place for each of @blanks. */
void check_cut_panel (const CwCutPanel *panel, const CwCutRules *rules,
                      const CwCutRules *largest, const CwCutBlank *blanks,
                      guint n_blanks, guint8 *seen);

G_END_DECLS

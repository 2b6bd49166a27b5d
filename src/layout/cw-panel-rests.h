/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Waste of pieces that other pieces come out of; private to the panel plan.
 */
#pragma once

#include "cw-panel-plan.h"

G_BEGIN_DECLS

/* (transfer full) (element-type CwPanelRest): frees their cuts. */
GArray *cw_panel_rests_new (void);

/* Fills the plan's rests, in the order of its pieces, by those on which one
 * of its blanks of the same group fits. */
void cw_panel_rests_find (CwPanelPlan *plan, const CwCutRules *rules);

/* nm², with the kerf. */
double cw_panel_rest_area (const CwPanelRest *rest, CwLength kerf);

/*
 * cw_panel_rests_bound:
 * @cut: of the plan's blanks
 * @rules: of the panels, which may be larger than those that are cut
 *
 * Panels that no cut plan of the blanks can do without, rests used or not:
 * cw_cut_bound() for each group. A rest is the one that the plan offers;
 * other ways to make use of waste are not thought of.
 */
guint cw_panel_rests_bound (const CwPanelPlan *plan, const CwCutPlan *cut,
                            const CwCutRules *rules, CwCutEffort effort,
                            GCancellable *cancellable);

/* TRUE when blanks come out of rests. */
gboolean cw_panel_rests_are_used (const CwPanelPlan *plan);

/*
 * cw_panel_rests_use:
 * @saves: how many panels it must save
 *
 * Takes small blanks out of rests, and cuts the others again. Changes the
 * plan if that saves so many panels.
 *
 * Returns: whether it did
 */
gboolean cw_panel_rests_use (CwPanelPlan *plan, guint saves,
                             CwCutProgress progress, gpointer data,
                             GCancellable *cancellable);

/* The same plan with all that can come out of rests; NULL when it would take
 * more panels, or when rests are used already. (transfer full) (nullable) */
CwPanelPlan *cw_panel_plan_with_rests (const CwPanelPlan *plan,
                                       GCancellable *cancellable);

/* cw_cut_plan_improve() of the cuts that a plan has, be they of all its blanks
 * or of those that come out of no rest. (transfer full) */
CwCutPlan *cw_panel_rests_improve (const CwPanelPlan *plan,
                                   CwCutEffort effort, CwCutProgress progress,
                                   gpointer data, GCancellable *cancellable);

G_END_DECLS

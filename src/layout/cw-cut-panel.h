/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From a cut tree to what the saw does: where blanks lie and which cuts are
 * made in which order.
 */
#pragma once

#include "cw-cut-plan.h"
#include "cw-cut-tree.h"

G_BEGIN_DECLS

/* @names: for each blank of the tree its place in the plan's array. Larger
 * parts are cut off first and the rest stays at the far end.
 * Returns: (transfer full) */
CwCutPanel *cw_cut_panel_new (const CwCutTree *tree, const guint *names,
                              guint group, CwLength kerf);

/* A panel that is a piece as it is. */
CwCutPanel *cw_cut_panel_new_whole (guint blank, guint group,
                                    const CwCutRules *rules);
void cw_cut_panel_free (CwCutPanel *panel);

/* @names: for each blank the number that it has from now on; those that are
 * not on the panel are not asked for. */
void cw_cut_panel_rename (CwCutPanel *panel, const guint *names);
/* The same panel with its blanks called so. (transfer full) */
CwCutPanel *cw_cut_panel_renamed (const CwCutPanel *panel,
                                  const guint *names);

G_END_DECLS

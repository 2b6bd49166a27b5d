/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How few panels can do at the very least, proven, whatever the cuts.
 */
#pragma once

#include "cw-cut-plan.h"
#include "cw-cut-search.h"

G_BEGIN_DECLS

/*
 * cw_cut_bound:
 * @blanks: sizes with the kerf added
 * @enough: of a plan that there is; at this bound it stops looking
 * @effort: how many functions are tried: the more, the closer the bound
 *
 * The greatest of the bounds that pairs of dual feasible functions give, one
 * on the widths and one on the heights (Fekete and Schepers, New classes of
 * fast lower bounds for bin packing problems, Math. Program. 91, 2001). Where
 * blanks may be turned each counts the way that weighs less. Holds for any
 * way of cutting, straight through or not.
 *
 * Returns: a number of panels that no plan can go below
 */
guint cw_cut_bound (const CwCutSize *blanks, guint n_blanks, CwCutSize panel,
                    gboolean turn, guint enough, CwCutEffort effort);

G_END_DECLS

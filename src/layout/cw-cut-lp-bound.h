/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The bound by linear programming: blanks get prices such that no panel is
 * worth more than 1; then as many panels are needed as all blanks together
 * are worth.
 */
#pragma once

#include <gio/gio.h>

#include "cw-cut-sizes.h"

G_BEGIN_DECLS

/*
 * cw_cut_lp_bound:
 * @rests: (nullable): what is there to be cut besides panels; what they are worth at most
 *   at the same prices comes off what all blanks are worth
 * @known: a bound known already
 * @enough: panels of a known plan
 * @effort: sums to be compared at most, see cw_cut_prices_effort()
 *
 * Column generation over panels that yield any number of each blank by
 * straight cuts (Gilmore and Gomory 1961, 1965). GLPK proposes the prices;
 * they are rounded to whole numbers, the most that a panel can be worth is
 * worked out exactly, and the bound is the quotient of two whole numbers
 * (Farley, A note on bounding a class of linear programming problems,
 * Operations Research 38, 1990): no rounding of the solver's can make it
 * wrong, and it holds whenever the search for better prices stops.
 *
 * Holds for straight cuts that run right across.
 *
 * Returns: the better of @known and what was found
 */
guint cw_cut_lp_bound (const CwCutSizes *sizes, const CwCutSizes *rests,
                       CwCutSize panel, gboolean turn, guint known,
                       guint enough, guint64 effort,
                       GCancellable *cancellable);

G_END_DECLS

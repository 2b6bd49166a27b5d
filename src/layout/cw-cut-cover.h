/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A store of panels cut in good ways, and the cheapest choice among them that
 * yields every blank: set covering.
 *
 *   pattern     blanks it yields    cost
 *   ┌──┬──┬─┐
 *   │1 │2 │ │   1, 2                1        choose 0 … times each, so that
 *   └──┴──┴─┘                                every blank comes from one at
 *   ┌────┬──┐                                least, and the costs add up to
 *   │ 3  │2 │   2, 3                1        as little as possible
 *   └────┴──┘
 *
 * A search tries many panels but ends with one plan. What it throws away may
 * fit together with what another search, or one for panels of another length,
 * has found; nobody sees that but the sum over all of them.
 *
 * Blanks of one size stand for each other. What a choice yields twice is left
 * on one of the panels as a rest.
 */
#pragma once

#include <gio/gio.h>

#include "cw-cut-tree.h"

G_BEGIN_DECLS

typedef struct CwCutCover CwCutCover;

/* One panel of a choice. */
typedef struct
{
  CwCutTree tree;            /* blanks by their place in the array given */
  guint kind;
  guint64 cost;
} CwCutChosen;

/*
 * cw_cut_cover_new:
 * @blanks: what is needed, each once; with the kerf added, copied
 */
CwCutCover *cw_cut_cover_new (const CwCutSize *blanks, guint n_blanks);
void cw_cut_cover_free (CwCutCover *cover);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwCutCover, cw_cut_cover_free)

/*
 * cw_cut_cover_add:
 * @tree: a panel with at least one blank; copied
 * @kind: which sort of panel it is; told again by the choice
 * @cost: of the panel, in any unit: 1 where panels are counted, cents where
 *   panels of several lengths are bought
 *
 * Returns: whether it is kept: not when panels with the same blanks are
 *   already there at no more cost
 */
gboolean cw_cut_cover_add (CwCutCover *cover, const CwCutTree *tree,
                           guint kind, guint64 cost);

guint cw_cut_cover_n_patterns (const CwCutCover *cover);

/*
 * cw_cut_cover_choose:
 * @below: only choices of less cost count: that of a plan already known
 * @effort: blanks of patterns gone over at the most, some 20 ns each; a step of
 *   the simplex method goes over all patterns. Never counted in time, so that
 *   the same patterns always give the same choice
 *
 * Branches over the linear program with GLPK (integer programming over
 * patterns: Gilmore and Gomory, Operations Research 9, 1961). May be called
 * in any thread.
 *
 * Returns: (transfer full) (nullable) (element-type CwCutChosen): panels that
 *   yield every blank exactly once; NULL when none cheaper was found
 */
GPtrArray *cw_cut_cover_choose (const CwCutCover *cover, guint64 below,
                                guint64 effort, GCancellable *cancellable);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The search for fewer panels: takes some blanks out of the plan, puts them
 * back where they leave the most useful rests, and keeps the change when the
 * plan did not get much worse (ruin and recreate; Schrimpf et al. 2000, with
 * the number of panels as the goal to be beaten). It works with a panel less
 * than the best plan has: a state in which every blank has found a place is a
 * better plan.
 *
 * Effort is counted in places looked at, never in seconds, and chance is seeded: the
 * same blanks always give the same plan.
 */
#pragma once

#include "cw-cut-cover.h"
#include "cw-random.h"

G_BEGIN_DECLS

typedef struct CwCutSearch CwCutSearch;

/*
 * cw_cut_search_new:
 * @blanks: each fits on the panel (turned, if @turn says so); copied
 * @turn: blanks may lie across the panel
 *
 * Starts with a plan made by putting the blanks in, large ones first.
 */
CwCutSearch *cw_cut_search_new (const CwCutSize *blanks, guint n_blanks,
                                CwCutSize panel, gboolean turn, guint64 seed);
void cw_cut_search_free (CwCutSearch *search);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwCutSearch, cw_cut_search_free)

/* Looks at about @effort places for a plan of fewer panels than the best so
 * far, but never fewer than @least. TRUE as soon as one is found. */
gboolean cw_cut_search_run (CwCutSearch *search, guint least, guint64 effort,
                            GCancellable *cancellable);

/*
 * cw_cut_search_take:
 * @panels: (array length=n_panels): a plan of the blanks of the search, each
 *   once; copied
 *
 * Goes on from that plan unless it has more panels than the best so far.
 */
void cw_cut_search_take (CwCutSearch *search, const CwCutTree **panels,
                         guint n_panels);

/*
 * cw_cut_search_collect:
 * @cover: (nullable): for blanks numbered like those of the search; must
 *   outlive its runs
 * @kind, @cost: of the panels, as for cw_cut_cover_add()
 * @most: the store is not filled further than to so many patterns
 *
 * From now on the panels of states that come near to a plan are offered to
 * @cover, those of the best plan at once.
 */
void cw_cut_search_collect (CwCutSearch *search, CwCutCover *cover,
                            guint kind, guint64 cost, guint most);

/* Places looked at since the start. */
guint64 cw_cut_search_weighed (const CwCutSearch *search);

/* The best plan so far; borrowed until the next run. */
guint cw_cut_search_n_panels (const CwCutSearch *search);
const CwCutTree *cw_cut_search_panel (const CwCutSearch *search, guint index);

G_END_DECLS

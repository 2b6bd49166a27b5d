/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A panel of the cut list in words, as papers and window say it.
 */
#pragma once

#include "cw-cut-list.h"

G_BEGIN_DECLS

/* cw_cut_step_text() of the cut @index of the panel; one that is made in the
 * waste of a piece says so: "in the waste of A, across …". (transfer full) */
char *cw_cut_list_step_text (const CwCutListPanel *panel, guint index,
                             const CwTextStyle *style);

/* "across at 1840 mm", "along at 300 mm, from 640 mm to 1840 mm". Places are
 * counted from the panel's lower left corner. (transfer full) */
char *cw_cut_step_text (const CwCut *cut, const CwCutRules *rules,
                        const CwTextStyle *style);

/* What is sawn out of a blank after the plan's cuts: "notch, curve"; NULL for
 * nothing. (transfer full) (nullable) */
char *cw_cut_shape_text (const CwPiece *piece);

/* "South-3-2", "South-3-2 × 4". (transfer full) */
char *cw_cut_piece_text (const CwCutList *list, const CwCutListPiece *piece);

/* "Panel 12", "Panel 12 × 4". (transfer full) */
char *cw_cut_panel_text (const CwCutListPanel *panel);

/* "2400 × 600 mm, kerf 4 mm". (transfer full) */
char *cw_cut_stock_text (const CwCutListPanel *panel,
                         const CwTextStyle *style);

G_END_DECLS

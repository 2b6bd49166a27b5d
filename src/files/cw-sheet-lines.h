/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The lines that a page of a plan sheet is drawn with, to snap to and to find
 * openings in.
 */
#pragma once

#include "cw-drawn-lines.h"
#include "cw-sheet-source.h"

G_BEGIN_DECLS

/*
 * cw_sheet_source_lines:
 * @page, @turn: as for cw_sheet_source_size(); the lines are in points of the
 *   page as turned, precise to a thousandth of a point
 *
 * Takes seconds for a full page: for a worker thread, one at a time for a
 * source.
 *
 * Returns: (transfer full) (nullable): none at all for an image
 */
CwDrawnLines *cw_sheet_source_lines (CwSheetSource *source, guint page,
                                     guint turn, GCancellable *cancellable,
                                     GError **error);

G_END_DECLS

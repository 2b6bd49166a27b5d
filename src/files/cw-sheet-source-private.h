/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "cw-sheet-source.h"

G_BEGIN_DECLS

/* FALSE: an image. */
gboolean cw_sheet_source_is_vector (CwSheetSource *source);

/* Paints the page, turned and clipped to its own box; points of the page as
 * turned lie on the context's user space. */
void cw_sheet_source_paint (CwSheetSource *source, cairo_t *cr, guint page,
                            guint turn);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A quiet label beside the pointer: what rests under it on the board, and how
 * large that is. Comes when the pointer rests, goes when it leaves.
 */
#pragma once

#include "cw-board.h"

G_BEGIN_DECLS

#define CW_TYPE_HOVER_LABEL (cw_hover_label_get_type ())
G_DECLARE_FINAL_TYPE (CwHoverLabel, cw_hover_label, CW, HOVER_LABEL,
                      GtkWidget)

/* @board is borrowed and outlives the label. */
GtkWidget *cw_hover_label_new (CwBoard *board);

/* NULL: nothing is shown. Borrowed. */
const char *cw_hover_label_words (CwHoverLabel *label);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A ruler along an edge of the board: the wall's own lengths, and where the
 * pointer is.
 */
#pragma once

#include "cw-board.h"

G_BEGIN_DECLS

#define CW_TYPE_RULER (cw_ruler_get_type ())
G_DECLARE_FINAL_TYPE (CwRuler, cw_ruler, CW, RULER, GtkWidget)

/* @board outlives the ruler. */
GtkWidget *cw_ruler_new (GtkOrientation orientation, CwBoard *board);
void cw_ruler_set_style (CwRuler *ruler, const CwTextStyle *style);

G_END_DECLS

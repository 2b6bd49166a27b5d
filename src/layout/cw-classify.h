/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What has to be done to a panel to make a piece of it.
 */
#pragma once

#include "cw-layout.h"

G_BEGIN_DECLS

/* Marks the pieces that a stub-out of that @hole (clearance included) goes
 * through with CW_CUT_HOLE. @n pieces at @pieces. */
void cw_classify_hole (CwPiece *pieces, guint n, const CwRegion *hole);

/*
 * cw_classify_piece:
 * Sets the piece's cuts, holes already marked, and its kind. Rasped: there
 * is no hole and all that is taken off a side of the panel, or off both
 * opposite sides together, is at most @rasp deep.
 * @is_upright: panels stand
 */
void cw_classify_piece (CwPiece *piece, gboolean is_upright, CwLength rasp);

G_END_DECLS

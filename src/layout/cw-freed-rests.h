/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a piece leaves of its blank: rectangles that straight cuts free whole.
 *
 *   +--------------+-------+     +---------+-------+
 *   |              : freed |     |         : freed/|
 *   |    piece     +.......|     |         +...../ |
 *   |                      |     |   piece     /   |
 *   +----------------------+     +-----------+-----+
 *
 * A notch at a corner frees one by the notch's own two cuts, one in a side by
 * its three; what a rake or a curve cuts off yields one by two more cuts. What
 * is open to no side, as a window within a panel, is not counted: no straight
 * cut from an edge frees it.
 */
#pragma once

#include "cw-layout.h"

G_BEGIN_DECLS

/*
 * cw_freed_rests:
 * @kerf: kept clear between the piece and a rectangle
 * @least: none narrower or lower is wanted, as it lies on the wall
 *
 * Appends rectangles in wall coordinates to @rests (element-type CwBox): the
 * largest first, each at least a @kerf from the piece and from the others,
 * within the piece's box and open to a side of it.
 */
void cw_freed_rests (const CwPiece *piece, CwLength kerf, CwPoint least,
                     GArray *rests);

G_END_DECLS

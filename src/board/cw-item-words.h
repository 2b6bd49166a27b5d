/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is on a wall, in words: for who hovers over it, for the list of it and
 * for a screen reader.
 */
#pragma once

#include "cw-elevation-drawing.h"

G_BEGIN_DECLS

/* "Window W1", or "Window o3" without a mark; the elevation by its name.
 * (transfer full) (nullable): NULL when there is no such item. */
char *cw_item_name (const CwWall *wall, const char *id);

/* "900 × 1200 at 600, 800": size, and where its lower left corner is.
 * (transfer full) (nullable): NULL when it has no shape. */
char *cw_item_size (const CwWall *wall, const char *id,
                    const CwTextStyle *style);

/* "Piece 3-2, cut, notch: 1200 × 450". (transfer full) */
char *cw_item_piece_words (const CwPiece *piece, const CwTextStyle *style);

/* The piece on whose very shape @at lies, or NULL; borrowed. */
const CwPiece *cw_item_piece_at (const CwLayout *layout, CwPoint at);

/*
 * cw_item_words_at:
 * @takeoff: (nullable): the last good one of that wall
 * @reach: how far beside a small item still counts
 * @layers: only what is shown is spoken of
 *
 * Item or else piece. (transfer full) (nullable): NULL where nothing is
 */
char *cw_item_words_at (const CwWall *wall, const CwWallTakeoff *takeoff,
                        CwPoint at, CwLength reach, CwLayers layers,
                        const CwTextStyle *style);

G_END_DECLS

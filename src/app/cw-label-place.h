/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a label beside the pointer goes. A pure function.
 */
#pragma once

#include <graphene.h>

/*
 * cw_label_place:
 * @pointer: what the label belongs to
 * @keep_free: (nullable): what it should not cover
 * @width, @height: of the label
 * @board: within which it stays, from (0, 0)
 *
 * Of the places right, below, left and above, each a little away, the first
 * that is on the board and leaves @keep_free free; else the one nearest to the
 * right of the pointer that is on the board.
 */
graphene_point_t cw_label_place (const graphene_point_t *pointer,
                                 const graphene_rect_t *keep_free,
                                 float width, float height,
                                 const graphene_size_t *board);

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a drawn dimension measures and where its line stands.
 *
 *      line[0] ├────── 1200 ──────┤ line[1]      ─┐
 *              │                  │               │ offset
 *           from                  │              ─┘
 *                                 to
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

static inline CwPoint
cw_dimension_from (const CwDimension *dimension)
{
  return cw_point (dimension->x, dimension->y);
}

static inline CwPoint
cw_dimension_to (const CwDimension *dimension)
{
  return cw_point (dimension->to_x, dimension->to_y);
}

/* Never less than 0. An aligned one to the nearest nanometre. */
CwLength cw_dimension_length (const CwDimension *dimension);

/* The ends of its line, the first beside the first point. It is offset from
 * that point: up for a level one, to the right for an upright one, to the left
 * of the way for an aligned one. Between points that are the same there is no
 * way: the line is offset up. */
void cw_dimension_line (const CwDimension *dimension, CwPoint line[2]);

/* The offset with which the line runs through @at. */
CwLength cw_dimension_offset (CwDimensionWay way, CwPoint from, CwPoint to,
                              CwPoint at);

/* Round its points and its line. */
CwBox cw_dimension_box (const CwDimension *dimension);

/* How far @at is from its line or from the lines that lead there. */
double cw_dimension_distance (const CwDimension *dimension, CwPoint at);

G_END_DECLS

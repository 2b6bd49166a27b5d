/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Cutting single sides at a line, for this folder only.
 */
#pragma once

#include "cw-region.h"

G_BEGIN_DECLS

/* The coordinate that tells on which side of a line a point is. */
static inline CwLength
cw_across (CwAxis axis, CwPoint point)
{
  return axis == CW_AXIS_X ? point.x : point.y;
}

/* The one that tells where along it. */
static inline CwLength
cw_along (CwAxis axis, CwPoint point)
{
  return axis == CW_AXIS_X ? point.y : point.x;
}

static inline CwPoint
cw_on_line (CwAxis axis, CwLength at, CwLength along)
{
  return axis == CW_AXIS_X ? cw_point (at, along) : cw_point (along, at);
}

typedef enum
{
  CW_HALF_LOW,
  CW_HALF_HIGH,
  CW_HALF_LINE,    /* lies on the line */
} CwHalf;

typedef struct
{
  CwSide side;
  CwPoint end;
  CwHalf half;
} CwSidePart;

/* Appends @side to @parts (CwSidePart), cut where it crosses or
 * touches @axis = @at. */
void cw_side_cut (const CwSide *side, CwPoint end, CwAxis axis, CwLength at,
                  GArray *parts);

G_END_DECLS

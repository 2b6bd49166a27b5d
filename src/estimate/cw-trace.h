/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where on a wall a quantity comes from: the very geometry that was measured,
 * piece by piece, each with its share of the measured amount.
 */
#pragma once

#include "cw-takeoff.h"

G_BEGIN_DECLS

typedef enum { CW_TRACE_LINE, CW_TRACE_REGION, CW_TRACE_POINT } CwTraceKind;

typedef struct
{
  CwTraceKind kind;
  CwSide side;        /* a line; a point is its start */
  CwPoint end;
  CwRegion *region;   /* (owned) of a region */
  double share;       /* see below */
} CwTraceItem;

/*
 * cw_wall_trace:
 * @type: of the quantity; what shows nothing has no items
 * @variant: (nullable): of the quantity: a mark's line lights the openings of
 *   that mark, a task's hours what it is done on
 *
 * The shares add up to what is measured on the wall: m of lines, m² of areas
 * (a line's length by the depth of a reveal where that is the area), pieces
 * and fasteners one each. Of what is made from it by a use, a lap or a waste
 * it is the measured amount that stands at the head of its steps; of water
 * that several layers take it is L. What a plan makes (panels used, the cuts
 * that bring a piece out of its panel) has no share on the wall: pieces that
 * are lit for it have 0, or count one each where they are counted.
 *
 * Returns: (transfer full) (element-type CwTraceItem)
 */
GArray *cw_wall_trace (const CwWallTakeoff *takeoff,
                       const CwQuantityType *type, const char *variant);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The lines of the plan sheet as the shown wall has them under it: from points
 * of the page to nm of the wall.
 */
#pragma once

#include "cw-drawn-lines.h"
#include "cw-placing.h"

G_BEGIN_DECLS

/* What the sheet shows near a point of the wall. */
typedef struct
{
  CwDrawnKind kind;
  CwPoint at;           /* to the nearest nm */
  CwPoint from, to;     /* of CW_DRAWN_RUN: the line's ends */
} CwSheetSpot;

/*
 * cw_sheet_snap:
 * @placing: where the wall lies on the page
 * @reach: nm
 *
 * The nearest end or crossing of lines within reach; else the nearest place on
 * a line.
 */
CwSheetSpot cw_sheet_snap (const CwDrawnLines *lines,
                           const CwPlacing *placing, CwPoint at,
                           CwLength reach);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-snap.h"

#include <math.h>

#define NM_PER_MM 1e6
/* A line that leaves its way by no more, in points, is level or upright. */
#define STRAIGHT 0.03

static CwPoint
on_wall (const CwPlacing *placing, double x, double y)
{
  double x_nm, y_nm;

  cw_placing_to_wall (placing, x, y, &x_nm, &y_nm);
  return cw_point ((CwLength) llround (x_nm), (CwLength) llround (y_nm));
}

CwSheetSpot
cw_sheet_snap (const CwDrawnLines *lines, const CwPlacing *placing,
               CwPoint at, CwLength reach)
{
  CwSheetSpot spot = { CW_DRAWN_NOTHING };
  CwDrawnPoint point;
  double x, y, across, along;

  g_return_val_if_fail (lines != NULL && placing != NULL && reach > 0, spot);

  across = fabs (placing->across);
  along = fabs (placing->along);
  cw_placing_to_page (placing, (double) at.x, (double) at.y, &x, &y);
  /* Where a sheet is stretched one way, reach is that of the finer way. */
  point = cw_drawn_lines_nearest (
      lines, x, y, (double) reach / NM_PER_MM / MAX (across, along));
  spot.kind = point.kind;
  if (point.kind == CW_DRAWN_NOTHING)
    return spot;
  spot.at = on_wall (placing, point.x, point.y);
  const CwDrawnLine *line = cw_drawn_lines_at (lines, point.line);
  spot.from = on_wall (placing, line->x0, line->y0);
  spot.to = on_wall (placing, line->x1, line->y1);
  if (fabs (line->x1 - line->x0) <= STRAIGHT)
    spot.from.x = spot.to.x = spot.at.x;
  if (fabs (line->y1 - line->y0) <= STRAIGHT)
    spot.from.y = spot.to.y = spot.at.y;
  return spot;
}

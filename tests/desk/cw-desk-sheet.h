/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Finding a plan sheet on a picture of the screen, as the eye does: the
 * largest white area.
 */
#pragma once

#include "cw-desk.h"

G_BEGIN_DECLS

/* Where the page's top left lies on the screen, and pixels a point. */
typedef struct
{
  double x, y, scale;
} CwSheetPlace;

/* @page_width, @page_height: in points. The test fails when no white area of
 * that shape, shown whole, is on the screen. */
CwSheetPlace cw_desk_find_sheet (CwDesk *desk, double page_width,
                                 double page_height);

/* With a place of the page in points, y down. */
void cw_desk_click_on_sheet (CwDesk *desk, const CwSheetPlace *sheet,
                             double x, double y);
void cw_desk_point_on_sheet (CwDesk *desk, const CwSheetPlace *sheet,
                             double x, double y);

G_END_DECLS

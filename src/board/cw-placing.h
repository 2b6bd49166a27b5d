/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How the shown elevation lies on its plan sheet: from wall points to points
 * of the page and back.
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

/* Building to paper, where a sheet has no scale yet. */
#define CW_PLACING_ASSUMED_RATIO 100.0

typedef struct
{
  const CwSheet *sheet;     /* (nullable): borrowed from the project */
  double at_x, at_y;        /* the wall's origin on the page, points, y down */
  double across, along;     /* mm of building a point; never 0 */
  gboolean assumed;         /* the sheet has no scale: 1:100 is taken */
} CwPlacing;

/*
 * cw_placing_of:
 * @elevation: (nullable): with none, the project's first sheet lies with its
 *   top left at the wall's origin, so that a wall can be traced on it
 */
CwPlacing cw_placing_of (const CwProject *project,
                         const CwElevation *elevation);

void cw_placing_to_page (const CwPlacing *placing, double x_nm, double y_nm,
                         double *x, double *y);
void cw_placing_to_wall (const CwPlacing *placing, double x, double y,
                         double *x_nm, double *y_nm);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Control joints that part a wall into fields small enough, by the limits of
 * the project.
 */
#pragma once

#include "cw-wall.h"

G_BEGIN_DECLS

typedef struct
{
  double n_columns, n_rows;
  double length;              /* m of joints, over the whole box */
} CwControlGrid;

/* The grid of equal fields with the shortest joints for a wall so wide and
 * high, in metres. */
CwControlGrid cw_control_grid (const CwLimits *limits, double width,
                               double height);

/* Of the wall's bounding box; one field when the wall keeps the limits. */
CwControlGrid cw_control_grid_of (const CwWall *wall);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What lies about a point, found first; which of it is taken, settled after.
 */
#pragma once

#include "cw-snap.h"

G_BEGIN_DECLS

typedef struct
{
  gboolean found;
  double distance;
  CwPoint at;
  CwSnapKind kind;
} CwSnapNearest;

typedef struct
{
  const CwSnapField *field;
  CwPoint at;
  CwSnapNearest corner, middle, guide_x, guide_y, joint_x, joint_y, side;
  CwSnapNearest drawn;    /* a corner of the sheet */
  CwSide on;              /* the side of `side` */
  CwPoint on_end;
} CwSnapSearch;

/* Fills in what of the field is near @search's point, each kind by itself. */
void cw_snap_look_around (CwSnapSearch *search);

/* The nearest multiple; @value itself with no grid. */
CwLength cw_snap_on_grid (CwLength value, CwLength grid);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Equal spacing: where a box that is moved sideways, or up, leaves gaps like
 * those that are there.
 */
#pragma once

#include "cw-snap.h"

G_BEGIN_DECLS

typedef struct
{
  CwLength move;            /* along or up, exact to half a nanometre's rounding */
  CwPoint from[2], to[2];   /* the two gaps that are alike */
} CwSnapGap;

/*
 * cw_snap_gap:
 * @field: its wall, what to skip, and the radius
 *
 * Considers openings that stand beside @box and the ends of the wall: midway
 * between two neighbours, or as far from one as that is from the next. FALSE:
 * nothing of the kind within reach. A box without a size is a side that is
 * being placed. Upright: the same up and down.
 */
gboolean cw_snap_gap (const CwSnapField *field, const CwBox *box,
                      gboolean upright, CwSnapGap *gap);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where two sides meet, for this folder only.
 */
#pragma once

#include "cw-region.h"

G_BEGIN_DECLS

typedef struct
{
  CwPoint at;             /* rounded; the same for both sides */
  double share_a, share_b;  /* of the way along each, 0 … 1 */
} CwMeet;

/* Appends every place where the sides share a point to @meets (CwMeet); for
 * sides that run together, the ends of the stretch; for sides that touch
 * between their ends, to within half a nanometre, that one place. */
void cw_sides_meet (const CwSide *a, CwPoint a_end, const CwSide *b,
                    CwPoint b_end, GArray *meets);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Cutting single sides at a line, for this folder only.
 */
#pragma once

#include "cw-region.h"

G_BEGIN_DECLS

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

/* Appends @side to @parts (CwSidePart), cut where it crosses @axis = @at. */
void cw_side_cut (const CwSide *side, CwPoint end, CwAxis axis, CwLength at,
                  GArray *parts);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A wall's outline as it is drawn: corners with an optional bow, and whether
 * it can be a wall at all.
 */
#pragma once

#include "cw-region.h"

G_BEGIN_DECLS

typedef struct
{
  CwPoint at;
  CwLength sagitta;   /* bow of the side from here to the next corner, outward positive; 0 is straight */
  guint tag;          /* the edge kind of that side */
} CwCorner;

typedef enum
{
  CW_OUTLINE_VALID,
  CW_OUTLINE_TOO_FEW,       /* fewer corners than enclose an area */
  CW_OUTLINE_ZERO_SIDE,     /* two corners on one spot */
  CW_OUTLINE_ARC_TOO_HIGH,  /* a bow of more than half its chord */
  CW_OUTLINE_CROSSES,       /* two sides cross, touch or overlap */
  CW_OUTLINE_NO_AREA,
} CwOutlineFault;

typedef struct
{
  CwOutlineFault fault;
  gsize side;       /* index of the corner that starts the faulty side */
  gsize other;      /* the other side, for CW_OUTLINE_CROSSES */
} CwOutlineCheck;

/* Judges corners given in either sense. Outward is to the right of the way
 * for anticlockwise corners and to the left for clockwise ones. */
CwOutlineCheck cw_outline_check (const CwCorner *corners, gsize n_corners);

/* A sentence for the user about @check. Returns: (transfer full) */
char *cw_outline_check_text (const CwOutlineCheck *check);

/* Returns: (transfer full) (nullable): the region of a valid outline, NULL
 * for an invalid one. Sides carry their corners' tags. */
CwRegion *cw_outline_region (const CwCorner *corners, gsize n_corners);

G_END_DECLS

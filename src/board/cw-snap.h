/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Snapping: the nearest thing of note to a point, exactly.
 */
#pragma once

#include "cw-wall.h"

G_BEGIN_DECLS

typedef enum
{
  CW_SNAP_NONE,
  CW_SNAP_CORNER,
  CW_SNAP_MIDDLE,
  CW_SNAP_SIDE,
  CW_SNAP_ALIGN_X,      /* upright guide through another corner or jamb */
  CW_SNAP_ALIGN_Y,
  CW_SNAP_GRID,
} CwSnapKind;

typedef struct
{
  CwPoint at;           /* exact */
  CwSnapKind x_kind, y_kind;
  CwPoint x_from, y_from;   /* what each coordinate came from, for the guide */
} CwSnap;

typedef struct
{
  const CwWall *wall;       /* (nullable) */
  const char *skip_id;      /* (nullable): an item that must not snap to itself */
  const CwPoint *points;    /* further points: the outline being drawn */
  gsize n_points;
  CwLength radius;
  CwLength grid;            /* 0: none */
} CwSnapField;

CwSnap cw_snap (const CwSnapField *field, CwPoint at);

G_END_DECLS

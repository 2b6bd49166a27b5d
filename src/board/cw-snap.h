/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Snapping: the nearest thing of note to a point, exactly.
 *
 * A corner wins over one of the plan sheet's lines, both over a middle, that
 * over a side, a side over a line of the sheet, that over the guides through
 * other corners, those over the joints of the panels, and all over the grid. A
 * side and a guide go together: the point lies on the side where the guide
 * crosses it.
 */
#pragma once

#include "cw-layout.h"
#include "cw-sheet-snap.h"

G_BEGIN_DECLS

typedef enum
{
  CW_SNAP_NONE,
  CW_SNAP_CORNER,
  CW_SNAP_SPRINGING,    /* of an arch: an end of its springing line */
  CW_SNAP_CROWN,
  CW_SNAP_SHEET_CORNER, /* an end or a crossing of lines on the plan sheet */
  CW_SNAP_MIDDLE,
  CW_SNAP_SIDE,
  CW_SNAP_SHEET_LINE,
  CW_SNAP_ALIGN_X,      /* upright guide through another corner or jamb */
  CW_SNAP_ALIGN_Y,
  CW_SNAP_JOINT_X,      /* a head joint of the panels */
  CW_SNAP_JOINT_Y,      /* a bed joint: a course */
  CW_SNAP_GAP,          /* as far away as others are: cw_snap_gap() */
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
  const char *const *skip_ids;  /* (nullable): items that must not snap to
                                   themselves; NULL-ended. The elevation's id
                                   stands for its outline */
  const CwPoint *points;    /* further points: the outline being drawn */
  gsize n_points;
  const GArray *joints;     /* (nullable) (element-type CwJoint): of the panels */
  const CwDrawnLines *drawn;    /* (nullable): of the sheet that is seen */
  CwPlacing drawn_at;           /* of the wall, on that sheet */
  CwLength drawn_step;      /* to which its lines are rounded: what a drawing
                               can mean; 0: not at all. What is level or
                               plumb with the wall's own but for the sheet's
                               unsharpness is so exactly */
  CwLength radius;          /* 0: nothing but the grid */
  CwLength grid;            /* 0: none */
} CwSnapField;

CwSnap cw_snap (const CwSnapField *field, CwPoint at);

/* What @snap fell on, in words; translated; NULL: nothing of note. */
const char *cw_snap_words (const CwSnap *snap);

/*
 * cw_snap_box:
 * Moves @box, as little as may be, so that its sides fall on something of
 * note; the centre and the size stay as they are otherwise. Returns how far to
 * move it in @move and what it fell on as a snap of the corner concerned.
 */
CwSnap cw_snap_box (const CwSnapField *field, const CwBox *box, CwPoint *move);

/* The largest round step that is no coarser than a pixel: points taken with
 * the pointer are rounded to it and lose nothing that the eye could see. */
CwLength cw_snap_grid (CwUnits units, double nm_per_pixel);

G_END_DECLS

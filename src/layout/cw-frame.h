/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The frame in which a wall is set out. Panels lie `along`, courses follow
 * each other `across`; both are counted from the corner where the work
 * starts, so that left and right, level and upright runs are one sum:
 *
 *              level run                    upright run
 *    from left        from right        from left   from right
 *   across            across            along           along
 *     ^                    ^              ^                ^
 *     |                    |              |                |
 *     +---> along  along <-+              +-> across       +<- across
 */
#pragma once

#include "cw-wall.h"

G_BEGIN_DECLS

typedef struct
{
  CwLength low, high;
} CwInterval;

static inline CwLength
cw_interval_width (CwInterval interval)
{
  return interval.high - interval.low;
}

typedef struct
{
  gboolean is_upright;      /* panels stand */
  gboolean from_right;      /* x is counted from the right, leftward */
  CwBox wall;               /* the outline's bounding box */
} CwFrame;

CwFrame cw_frame_new (const CwSettingOut *setting_out, const CwBox *wall);

/* The extent of the wall; both begin at 0. */
CwInterval cw_frame_along (const CwFrame *frame);
CwInterval cw_frame_across (const CwFrame *frame);

CwBox cw_frame_box (const CwFrame *frame, CwInterval along,
                    CwInterval across);
CwPoint cw_frame_point (const CwFrame *frame, CwLength along,
                        CwLength across);
CwInterval cw_frame_along_of (const CwFrame *frame, const CwBox *box);
CwInterval cw_frame_across_of (const CwFrame *frame, const CwBox *box);

/*
 * cw_frame_cut:
 * Cuts @region along the line @across.
 * @before: (out) (nullable): the part nearer to the start
 * @beyond: (out) (nullable): the other part
 */
void cw_frame_cut (const CwFrame *frame, const CwRegion *region,
                   CwLength across, CwRegion **before, CwRegion **beyond);

/* The stretches of @region on a line of constant `across`, along it, and on
 * a line of constant `along`, across it; sorted.
 * Returns: (transfer full) (element-type CwInterval) */
GArray *cw_frame_spans_along (const CwFrame *frame, const CwRegion *region,
                              CwLength across);
GArray *cw_frame_spans_across (const CwFrame *frame, const CwRegion *region,
                               CwLength along);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the rest of this folder needs to know about sides.
 */
#pragma once

#include "cw-region.h"

G_BEGIN_DECLS

/*
 * Angles strictly inside an arc where it turns round in x (@axis
 * CW_AXIS_X) or in y (CW_AXIS_Y), one after the other from @after on in the
 * arc's own direction. Between two of them the arc only rises or only falls.
 */
gboolean cw_side_next_extreme (const CwSide *side, CwAxis axis, double after,
                               double *angle);

/* The x (or y) that the arc has there, nm. */
double cw_side_extreme (const CwSide *side, CwAxis axis, double angle);

/* The side run through from @end to its start. */
CwSide cw_side_reversed (const CwSide *side, CwPoint end);

/*
 * How a side leaves a point: direction and curvature, positive to the left.
 * For a straight side the direction is in whole numbers and kept exactly.
 */
typedef struct
{
  gboolean is_exact;
  CwPoint way;        /* exact ones alone */
  double dx, dy;      /* any length */
  double curvature;   /* 1 / nm */
} CwRay;

CwRay cw_side_ray_at_start (const CwSide *side, CwPoint end);

/* Looking back from the end. */
CwRay cw_side_ray_at_end (const CwSide *side, CwPoint end);

/* Negative when @b lies to the right of @a (is reached by turning less than
 * half a turn clockwise), positive to the left, 0 when neither can be told. */
int cw_ray_turn (const CwRay *a, const CwRay *b);

/* Negative when turning clockwise from @from comes by @a before @b. */
int cw_ray_compare_clockwise (const CwRay *from, const CwRay *a,
                              const CwRay *b);

G_END_DECLS

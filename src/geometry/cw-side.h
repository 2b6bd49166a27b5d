/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One side of a loop: a straight side, or an arc of a circle or of an ellipse
 * whose axes are level and upright. A side stores its start; it ends where
 * the next side of its loop starts.
 *
 *            t = to                 x = cx + rx cos t
 *          .-'''-.                  y = cy + ry sin t
 *   end  .'       '.  start         t runs from `from` to `to`:
 *       |     +     |  t = from     upward is anticlockwise
 *           (cx,cy)
 *
 * Ends of arcs are the curve's points rounded to whole nanometres; the angles
 * keep full precision, so the pieces of an arc stay on the very same curve
 * and their lengths and areas add up to the arc's.
 */
#pragma once

#include "cw-point.h"

G_BEGIN_DECLS

typedef struct
{
  CwPoint start;
  guint tag;            /* the caller's mark (edge kind, opening …); kept by every operation */
  gboolean is_arc;
  double cx, cy;        /* centre, nm; arcs only, as all that follows */
  double rx, ry;        /* half axes, nm; equal for a circle */
  double from, to;      /* angles in radians, |to - from| <= 2 pi */
} CwSide;

/* A straight side from @start. */
CwSide cw_side_straight (CwPoint start, guint tag);

/*
 * A circular arc from @start to @end that bows out by @sagitta over its
 * chord: positive to the right of the way from start to end (outward, on an
 * anticlockwise loop), negative to the left. |sagitta| may be at most half
 * the chord (a half circle), as drawings give it; not 0.
 */
CwSide cw_side_arc_by_sagitta (CwPoint start, CwPoint end, CwLength sagitta,
                               guint tag);

/* The arc of the axis-parallel ellipse about (@cx, @cy) from angle @from to
 * angle @to; the start point is rounded from the curve. */
CwSide cw_side_arc (double cx, double cy, double rx, double ry, double from,
                    double to, guint tag);

/*
 * Length of the side that ends at @end, in metres. Circles by r·t; ellipses
 * to 1e-12 relative, by elliptic integrals through the arithmetic-geometric
 * mean or Gauss-Legendre panels.
 */
double cw_side_length (const CwSide *side, CwPoint end);

/* Area between the side and its chord, m², positive when the side bows to the
 * right of the way from start to end. Exact by formula; 0 for a straight one. */
double cw_side_bow_area (const CwSide *side, CwPoint end);

/* Bounding box, arcs by their extremes (rounded outward to whole nm). */
CwBox cw_side_box (const CwSide *side, CwPoint end);

/* The point at @share (0 … 1) of the way along the parameter. */
void cw_side_at (const CwSide *side, CwPoint end, double share, double *x,
                 double *y);

G_END_DECLS

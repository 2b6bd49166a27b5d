/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Exact arithmetic on whole nanometres, for this folder only. Products of two
 * lengths need 128 bits; no rounding happens in them, so that which side of a
 * line a point is on is never in doubt.
 */
#pragma once

#include <math.h>

#include "cw-point.h"

G_BEGIN_DECLS

__extension__ typedef __int128 CwWide;

static inline int
cw_wide_sign (CwWide value)
{
  return (value > 0) - (value < 0);
}

/* Twice the signed area of the triangle o, a, b: positive when it runs
 * anticlockwise. */
static inline CwWide
cw_cross (CwPoint o, CwPoint a, CwPoint b)
{
  return (CwWide) (a.x - o.x) * (b.y - o.y)
         - (CwWide) (a.y - o.y) * (b.x - o.x);
}

/* @dividend / @divisor to the nearest whole number, halves upward: the same
 * whichever way round a side is given. @divisor must not be 0. */
static inline CwWide
cw_wide_divide (CwWide dividend, CwWide divisor)
{
  CwWide twice, quotient;

  if (divisor < 0)
    {
      dividend = -dividend;
      divisor = -divisor;
    }
  twice = 2 * dividend + divisor;
  quotient = twice / (2 * divisor);
  return quotient - (twice % (2 * divisor) < 0);
}

static inline CwPoint
cw_point_nearest (double x, double y)
{
  return cw_point (llround (x), llround (y));
}

G_END_DECLS

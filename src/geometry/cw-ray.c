/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-exact.h"
#include "cw-side-private.h"

static CwRay
ray_of_straight (CwPoint from, CwPoint to)
{
  CwPoint way = cw_point (to.x - from.x, to.y - from.y);

  return (CwRay) { TRUE, way, (double) way.x, (double) way.y, 0 };
}

CwRay
cw_side_ray_at_start (const CwSide *side, CwPoint end)
{
  double sense, speed;
  CwRay ray = { 0 };

  if (!side->is_arc)
    return ray_of_straight (side->start, end);
  sense = side->to > side->from ? 1 : -1;
  ray.dx = -sense * side->rx * sin (side->from);
  ray.dy = sense * side->ry * cos (side->from);
  speed = hypot (ray.dx, ray.dy);
  ray.curvature = sense * side->rx * side->ry / (speed * speed * speed);
  return ray;
}

CwRay
cw_side_ray_at_end (const CwSide *side, CwPoint end)
{
  CwSide reversed = cw_side_reversed (side, end);

  return cw_side_ray_at_start (&reversed, side->start);
}

int
cw_ray_turn (const CwRay *a, const CwRay *b)
{
  double cross, size;

  if (a->is_exact && b->is_exact)
    return cw_wide_sign (cw_cross (cw_point (0, 0), a->way, b->way));

  cross = a->dx * b->dy - a->dy * b->dx;
  size = hypot (a->dx, a->dy) * hypot (b->dx, b->dy);
  if (fabs (cross) > 1e-9 * size)
    return cross > 0 ? 1 : -1;
  return (b->curvature > a->curvature) - (b->curvature < a->curvature);
}

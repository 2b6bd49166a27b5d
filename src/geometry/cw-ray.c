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

static double
size_of (const CwRay *ray)
{
  return hypot (ray->dx, ray->dy);
}

/* What may be off in a direction: a straight side that was cut ends up to a
 * nanometre beside itself. */
static double
slack_of (const CwRay *ray)
{
  return ray->is_exact ? 1 / size_of (ray) : 1e-9;
}

/* Two sides that leave a point at the angle t, with curvatures apart by k,
 * meet again soon when they bend towards each other; between there and here
 * they are up to t² / 2 k apart. Where that is within a rounding they touch
 * rather than cross, and their bends tell the sides. */
#define TOUCHES 1.0

/* The sign of the turn from @a to @b as far as directions tell. */
static int
turn_of_directions (const CwRay *a, const CwRay *b)
{
  double cross, angle, bend;

  if (a->is_exact && b->is_exact)
    return cw_wide_sign (cw_cross (cw_point (0, 0), a->way, b->way));

  cross = a->dx * b->dy - a->dy * b->dx;
  angle = fabs (cross) / (size_of (a) * size_of (b));
  angle = MAX (angle - slack_of (a) - slack_of (b), 0);
  bend = fabs (a->curvature - b->curvature);
  if (angle * angle <= 2 * TOUCHES * bend)
    return 0;
  return cross > 0 ? 1 : -1;
}

int
cw_ray_turn (const CwRay *a, const CwRay *b)
{
  int turn = turn_of_directions (a, b);

  if (turn != 0)
    return turn;
  return (b->curvature > a->curvature) - (b->curvature < a->curvature);
}

static double
along (const CwRay *a, const CwRay *b)
{
  return a->dx * b->dx + a->dy * b->dy;
}

/* Clockwise from @from: right beside it, to its right, away from it, to its
 * left, left beside it. */
static int
sector_of (const CwRay *from, const CwRay *ray)
{
  int turn;

  if (along (from, ray) < 0)
    return 2;
  turn = turn_of_directions (from, ray);
  if (turn != 0)
    return turn < 0 ? 1 : 3;
  return ray->curvature < from->curvature ? 0 : 4;
}

int
cw_ray_compare_clockwise (const CwRay *from, const CwRay *a, const CwRay *b)
{
  int sector_a = sector_of (from, a), sector_b = sector_of (from, b);

  if (sector_a != sector_b)
    return sector_a - sector_b;
  return cw_ray_turn (a, b);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-side.h"
#include "cw-exact.h"
#include "cw-side-private.h"

CwSide
cw_side_straight (CwPoint start, guint tag)
{
  return (CwSide) { .start = start, .tag = tag };
}

/*
 * Half the chord c, the bow s and the radius r: r = (c² + s²) / 2 s. The
 * centre lies r - s behind the chord, seen from the bow; the half angle is
 * 2 atan (s / c), which stays accurate for the flattest bow.
 */
CwSide
cw_side_arc_by_sagitta (CwPoint start, CwPoint end, CwLength sagitta, guint tag)
{
  double dx = (double) (end.x - start.x), dy = (double) (end.y - start.y);
  double half_chord = hypot (dx, dy) / 2, s = (double) sagitta;
  double radius, behind, middle, half_angle;
  CwSide side = cw_side_straight (start, tag);

  g_return_val_if_fail (sagitta != 0, side);
  g_return_val_if_fail (!cw_point_equal (start, end), side);

  radius = (half_chord * half_chord + s * s) / (2 * fabs (s));
  behind = (half_chord * half_chord - s * s) / (2 * s);
  half_angle = 2 * atan2 (s, half_chord);

  /* To the right of the way is (dy, -dx); the centre is on the other side. */
  side.is_arc = TRUE;
  side.cx = (double) start.x + dx / 2 - behind * dy / (2 * half_chord);
  side.cy = (double) start.y + dy / 2 + behind * dx / (2 * half_chord);
  side.rx = side.ry = radius;
  middle = s > 0 ? atan2 (-dx, dy) : atan2 (dx, -dy);
  side.from = middle - half_angle;
  side.to = middle + half_angle;
  return side;
}

CwSide
cw_side_arc (double cx, double cy, double rx, double ry, double from, double to,
             guint tag)
{
  CwSide side = { .tag = tag, .is_arc = TRUE, .cx = cx, .cy = cy, .rx = rx,
                  .ry = ry, .from = from, .to = to };

  side.start = cw_point_nearest (cx + rx * cos (from), cy + ry * sin (from));
  return side;
}

/* t - sin t without the loss of digits that a small t brings. */
static double
angle_less_sine (double t)
{
  double term, sum, t2 = t * t;

  if (fabs (t) > 0.5)
    return t - sin (t);
  term = sum = t * t2 / 6;
  for (int n = 5; n < 17; n += 2)
    {
      term *= -t2 / ((n - 1) * n);
      sum += term;
    }
  return sum;
}

/* How far the curve's own point at @angle is from the rounded @point. */
static void
rounding_at (const CwSide *side, double angle, CwPoint point, double *dx,
             double *dy)
{
  *dx = side->cx - (double) point.x + side->rx * cos (angle);
  *dy = side->cy - (double) point.y + side->ry * sin (angle);
}

/*
 * The area between an arc and the chord of its own ends is rx ry (t - sin t)
 * / 2. The stored ends are rounded, so that the chord of the loop is another:
 * the thin quadrilateral between both chords is added. It is worth it because
 * then the areas of the parts of an arc add up to the arc's to the last digit.
 */
double
cw_side_bow_area (const CwSide *side, CwPoint end)
{
  double bow, sx, sy, ex, ey, chord_x, chord_y;

  g_return_val_if_fail (side != NULL, 0);

  if (!side->is_arc)
    return 0;
  bow = side->rx * side->ry * angle_less_sine (side->to - side->from) / 2;
  rounding_at (side, side->from, side->start, &sx, &sy);
  rounding_at (side, side->to, end, &ex, &ey);
  chord_x = (double) (end.x - side->start.x);
  chord_y = (double) (end.y - side->start.y);
  bow += ((chord_x + ex) * (chord_y - sy) - (chord_y + ey) * (chord_x - sx)) / 2;
  return bow / 1e18;
}

gboolean
cw_side_next_extreme (const CwSide *side, CwAxis axis, double after,
                      double *angle)
{
  double shift = axis == CW_AXIS_Y ? G_PI_2 : 0, least = 1e-12;
  double k = (after - shift) / G_PI;

  if (side->to > side->from)
    {
      *angle = (floor (k + least) + 1) * G_PI + shift;
      return *angle < side->to - least;
    }
  *angle = (ceil (k - least) - 1) * G_PI + shift;
  return *angle > side->to + least;
}

double
cw_side_extreme (const CwSide *side, CwAxis axis, double angle)
{
  double shift = axis == CW_AXIS_Y ? G_PI_2 : 0;
  gboolean is_most = fmod (fabs (rint ((angle - shift) / G_PI)), 2) < 0.5;
  double centre = axis == CW_AXIS_Y ? side->cy : side->cx;
  double radius = axis == CW_AXIS_Y ? side->ry : side->rx;

  return is_most ? centre + radius : centre - radius;
}

static void
stretch (const CwSide *side, CwAxis axis, CwLength *least, CwLength *most)
{
  double angle = side->from;

  while (cw_side_next_extreme (side, axis, angle, &angle))
    {
      CwLength extreme = llround (cw_side_extreme (side, axis, angle));

      *least = MIN (*least, extreme);
      *most = MAX (*most, extreme);
    }
}

CwBox
cw_side_box (const CwSide *side, CwPoint end)
{
  CwBox box = { MIN (side->start.x, end.x), MIN (side->start.y, end.y),
                MAX (side->start.x, end.x), MAX (side->start.y, end.y) };

  if (side->is_arc)
    {
      stretch (side, CW_AXIS_X, &box.left, &box.right);
      stretch (side, CW_AXIS_Y, &box.bottom, &box.top);
    }
  return box;
}

void
cw_side_at (const CwSide *side, CwPoint end, double share, double *x, double *y)
{
  double angle;

  g_return_if_fail (side != NULL);

  if (!side->is_arc)
    {
      *x = (double) side->start.x + share * (double) (end.x - side->start.x);
      *y = (double) side->start.y + share * (double) (end.y - side->start.y);
      return;
    }
  angle = side->from + share * (side->to - side->from);
  *x = side->cx + side->rx * cos (angle);
  *y = side->cy + side->ry * sin (angle);
}

CwSide
cw_side_reversed (const CwSide *side, CwPoint end)
{
  CwSide reversed = *side;

  reversed.start = end;
  reversed.from = side->to;
  reversed.to = side->from;
  return reversed;
}

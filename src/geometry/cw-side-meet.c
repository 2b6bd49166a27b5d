/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-exact.h"
#include "cw-side-meet-private.h"

void
cw_add_meet (GArray *meets, CwPoint at, double share_a, double share_b)
{
  const CwMeet meet = { at, CLAMP (share_a, 0, 1), CLAMP (share_b, 0, 1) };
  g_array_append_val (meets, meet);
}

/* The share of the way along the straight @run at which @point is nearest. */
static double
share_of_straight (const CwRun *run, CwPoint point)
{
  const double dx = (double) (run->end.x - run->side->start.x);
  const double dy = (double) (run->end.y - run->side->start.y);
  return ((double) (point.x - run->side->start.x) * dx
          + (double) (point.y - run->side->start.y) * dy)
         / (dx * dx + dy * dy);
}

gboolean
cw_arc_share (const CwSide *side, double x, double y, double slack,
              double *share)
{
  const double angle
      = atan2 ((y - side->cy) / side->ry, (x - side->cx) / side->rx);
  const double sweep = side->to - side->from;
  const double turns = rint (((side->from + side->to) / 2 - angle)
                             / (2 * G_PI));
  *share = (angle + turns * 2 * G_PI - side->from) / sweep;
  return *share >= -slack && *share <= 1 + slack;
}

double
cw_arc_slack (const CwSide *side)
{
  return 0.5 / (MIN (side->rx, side->ry) * fabs (side->to - side->from));
}

#define TOUCHES 1.5

/* TRUE when @point is within a rounding of the side, and where along. */
static gboolean
touches_straight (const CwRun *run, CwPoint point, double *share)
{
  const CwPoint start = run->side->start;
  const double length = hypot ((double) (run->end.x - start.x),
                               (double) (run->end.y - start.y));
  const double off = (double) cw_cross (start, run->end, point) / length;
  *share = share_of_straight (run, point);
  return fabs (off) <= TOUCHES && *share >= 0 && *share <= 1;
}

static gboolean
touches_arc (const CwSide *side, CwPoint point, double *share)
{
  const double x = (double) point.x, y = (double) point.y;
  const double u = (x - side->cx) / side->rx, v = (y - side->cy) / side->ry;
  /* The distance from the curve to the first order. */
  const double off = (u * u + v * v - 1)
                     / (2 * hypot (u / side->rx, v / side->ry));
  return fabs (off) <= TOUCHES
         && cw_arc_share (side, x, y, 2 * cw_arc_slack (side), share);
}

static gboolean
touches (const CwRun *run, CwPoint point, double *share)
{
  if (cw_point_equal (point, run->side->start)
      || cw_point_equal (point, run->end))
    {
      *share = cw_point_equal (point, run->side->start) ? 0 : 1;
      return TRUE;
    }
  return run->side->is_arc ? touches_arc (run->side, point, share)
                           : touches_straight (run, point, share);
}

/* Ends that lie on the other side. Every cut rounds its place to whole
 * nanometres, so a piece's sloping side is a hair off the wall's that it was
 * cut from; an end that near counts as on it, and both sides are later cut at
 * that very point, after which they are the same. */
static void
meet_at_ends (const CwRun *a, const CwRun *b, GArray *meets)
{
  const CwPoint points[] = { a->side->start, a->end, b->side->start, b->end };
  for (guint i = 0; i < G_N_ELEMENTS (points); i++)
    {
      double share_a, share_b;
      if (touches (a, points[i], &share_a) && touches (b, points[i], &share_b))
        cw_add_meet (meets, points[i], share_a, share_b);
    }
}

/* Signs of whole numbers tell whether straight sides cross, without doubt;
 * only the place is rounded. */
static void
meet_straights (const CwRun *a, const CwRun *b, GArray *meets)
{
  const CwPoint p = a->side->start, q = a->end;
  const CwPoint r = b->side->start, s = b->end;
  const CwWide at_r = cw_cross (p, q, r), at_s = cw_cross (p, q, s);
  const CwWide at_p = cw_cross (r, s, p), at_q = cw_cross (r, s, q);

  if (cw_wide_sign (at_r) * cw_wide_sign (at_s) >= 0
      || cw_wide_sign (at_p) * cw_wide_sign (at_q) >= 0)
    return;
  const long double share_b
      = (long double) at_r / ((long double) at_r - (long double) at_s);
  const long double share_a
      = (long double) at_p / ((long double) at_p - (long double) at_q);
  const CwPoint at
      = cw_point (p.x + llroundl (share_a * (long double) (q.x - p.x)),
                  p.y + llroundl (share_a * (long double) (q.y - p.y)));
  cw_add_meet (meets, at, (double) share_a, (double) share_b);
}

static void
meet_at_share (const CwRun *straight, const CwRun *arc, double share,
               gboolean straight_first, GArray *meets)
{
  double x, y, share_arc;
  const double length = hypot (
      (double) (straight->end.x - straight->side->start.x),
      (double) (straight->end.y - straight->side->start.y));
  if (share < -0.5 / length || share > 1 + 0.5 / length)
    return;
  cw_side_at (straight->side, straight->end, share, &x, &y);
  if (!cw_arc_share (arc->side, x, y, cw_arc_slack (arc->side), &share_arc))
    return;
  const CwPoint at = cw_point_nearest (x, y);
  if (straight_first)
    cw_add_meet (meets, at, share, share_arc);
  else
    cw_add_meet (meets, at, share_arc, share);
}

/* In units of the half axes the ellipse is the unit circle and the straight
 * side stays straight: a quadratic. Where both roots fall together the side
 * touches the curve; not beside an end at which they meet anyway. */
static void
meet_straight_and_arc (const CwRun *straight, const CwRun *arc,
                       gboolean straight_first, gboolean meet_at_end,
                       GArray *meets)
{
  const CwSide *curve = arc->side;
  const double u = ((double) straight->side->start.x - curve->cx) / curve->rx;
  const double v = ((double) straight->side->start.y - curve->cy) / curve->ry;
  const double du
      = (double) (straight->end.x - straight->side->start.x) / curve->rx;
  const double dv
      = (double) (straight->end.y - straight->side->start.y) / curve->ry;
  const double a = du * du + dv * dv, half_b = u * du + v * dv;
  const double c = u * u + v * v - 1;
  const double root = half_b * half_b - a * c;
  const double nearest = -half_b / a;
  const double depth = root / (2 * a)
                       / hypot ((u + nearest * du) / curve->rx,
                                (v + nearest * dv) / curve->ry);

  if (fabs (depth) <= CW_GRAZES)
    {
      if (!meet_at_end)
        meet_at_share (straight, arc, nearest, straight_first, meets);
      return;
    }
  if (root < 0)
    return;
  meet_at_share (straight, arc, (-half_b - sqrt (root)) / a, straight_first,
                 meets);
  meet_at_share (straight, arc, (-half_b + sqrt (root)) / a, straight_first,
                 meets);
}

static gboolean
is_same_curve (const CwSide *a, const CwSide *b)
{
  return fabs (a->cx - b->cx) < 0.5 && fabs (a->cy - b->cy) < 0.5
         && fabs (a->rx - b->rx) < 0.5 && fabs (a->ry - b->ry) < 0.5;
}

static gboolean
boxes_touch (const CwBox *a, const CwBox *b)
{
  return a->left <= b->right + 2 && b->left <= a->right + 2
         && a->bottom <= b->top + 2 && b->bottom <= a->top + 2;
}

static void
meet_between_ends (const CwRun *a, const CwRun *b, gboolean meet_at_end,
                   GArray *meets)
{
  if (!a->side->is_arc && !b->side->is_arc)
    meet_straights (a, b, meets);
  else if (!a->side->is_arc)
    meet_straight_and_arc (a, b, TRUE, meet_at_end, meets);
  else if (!b->side->is_arc)
    meet_straight_and_arc (b, a, FALSE, meet_at_end, meets);
  else if (!is_same_curve (a->side, b->side))
    cw_arcs_meet (a, b, meet_at_end, meets);
}

static gboolean
is_near (CwPoint a, CwPoint b)
{
  return ABS (a.x - b.x) <= 2 && ABS (a.y - b.y) <= 2;
}

/* A crossing found again right beside an end is that end. */
static void
drop_twins (GArray *meets, guint first, guint n_ends)
{
  for (guint i = meets->len; i > first + n_ends; i--)
    for (guint j = 0; j < n_ends; j++)
      if (is_near (g_array_index (meets, CwMeet, i - 1).at,
                   g_array_index (meets, CwMeet, first + j).at))
        {
          g_array_remove_index (meets, i - 1);
          break;
        }
}

void
cw_sides_meet (const CwSide *a, CwPoint a_end, const CwSide *b, CwPoint b_end,
               GArray *meets)
{
  const CwBox a_box = cw_side_box (a, a_end), b_box = cw_side_box (b, b_end);
  const CwRun first = { a, a_end }, second = { b, b_end };
  const guint before = meets->len;

  if (!boxes_touch (&a_box, &b_box))
    return;
  meet_at_ends (&first, &second, meets);
  const guint n_ends = meets->len - before;
  meet_between_ends (&first, &second, n_ends > 0, meets);
  drop_twins (meets, before, n_ends);
}

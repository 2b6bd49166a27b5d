/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One side cut at a level or upright line.
 */
#include "cw-exact.h"
#include "cw-region-split.h"
#include "cw-side-private.h"

static CwHalf
half_of (CwLength from, CwLength to, CwLength at)
{
  if (from == at && to == at)
    return CW_HALF_LINE;
  return from <= at && to <= at ? CW_HALF_LOW : CW_HALF_HIGH;
}

static void
add_part (GArray *parts, CwSide side, CwPoint end, CwHalf half)
{
  const CwSidePart part = { side, end, half };
  g_array_append_val (parts, part);
}

static void
cut_straight (const CwSide *side, CwPoint end, CwAxis axis, CwLength at,
              GArray *parts)
{
  const CwLength from = cw_across (axis, side->start), to = cw_across (axis, end);
  if ((from <= at && to <= at) || (from >= at && to >= at))
    {
      add_part (parts, *side, end, half_of (from, to, at));
      return;
    }

  const CwLength start = cw_along (axis, side->start);
  const CwWide step = (CwWide) (cw_along (axis, end) - start) * (at - from);
  const CwPoint crossing = cw_on_line (
      axis, at, start + (CwLength) cw_wide_divide (step, to - from));
  CwSide rest = *side;
  rest.start = crossing;
  add_part (parts, *side, crossing, from < at ? CW_HALF_LOW : CW_HALF_HIGH);
  add_part (parts, rest, end, from < at ? CW_HALF_HIGH : CW_HALF_LOW);
}

/* The angle between @from and @to, where the arc only rises or only falls,
 * at which it meets the line. */
static double
meeting_angle (const CwSide *side, CwAxis axis, CwLength at, double from,
               double to)
{
  const double centre = axis == CW_AXIS_X ? side->cx : side->cy;
  const double radius = axis == CW_AXIS_X ? side->rx : side->ry;
  const double share = CLAMP (((double) at - centre) / radius, -1, 1);
  const double middle = (from + to) / 2;
  /* Both angles with that cosine (or sine), each brought near the middle. */
  const double angle = axis == CW_AXIS_X ? acos (share) : asin (share);
  const double twin = axis == CW_AXIS_X ? -angle : G_PI - angle;
  const double near = angle + 2 * G_PI * rint ((middle - angle) / (2 * G_PI));
  const double far = twin + 2 * G_PI * rint ((middle - twin) / (2 * G_PI));
  const double best
      = fabs (near - middle) <= fabs (far - middle) ? near : far;
  return CLAMP (best, MIN (from, to), MAX (from, to));
}

/* Heights within half a nanometre of the line touch it. */
static double
snapped (double height)
{
  return fabs (height) < 0.5 ? 0 : height;
}

/* An arc of one turn has at most four stretches that only rise or fall: a
 * crossing in each, a touch between them. */
#define MOST_STOPS 8

typedef struct
{
  double angle;
  gboolean crosses;     /* else the arc touches the line and turns back */
} ArcStop;

/* Where the arc crosses or touches the line between its ends. @first: (out):
 * its height before the first stop; 0 when it never leaves the line. The
 * heights of its ends are those of the rounded points, as its neighbours see
 * them. */
static guint
arc_stops (const CwSide *side, CwPoint end, CwAxis axis, CwLength at,
           ArcStop *stops, double *first)
{
  guint n = 0;
  double from = side->from, to;
  double height = (double) (cw_across (axis, side->start) - at);
  gboolean more = TRUE;

  *first = height;
  while (more)
    {
      more = cw_side_next_extreme (side, axis, from, &to);
      const double next
          = more ? snapped (cw_side_extreme (side, axis, to) - (double) at)
                 : (double) (cw_across (axis, end) - at);
      if (!more)
        to = side->to;
      if (((height < 0 && next > 0) || (height > 0 && next < 0))
          && n < MOST_STOPS)
        stops[n++] = (ArcStop) {
          meeting_angle (side, axis, at, from, to), TRUE
        };
      if (more && fabs (next) < 0.5 && n < MOST_STOPS)
        stops[n++] = (ArcStop) { to, FALSE };
      if (fabs (*first) < 0.5)
        *first = next;
      from = to;
      height = next;
    }
  return n;
}

static void
cut_arc (const CwSide *side, CwPoint end, CwAxis axis, CwLength at,
         GArray *parts)
{
  ArcStop stops[MOST_STOPS + 1];
  double first;
  const guint n = arc_stops (side, end, axis, at, stops, &first);
  gboolean is_low = first < 0;
  CwSide part = *side;
  stops[n] = (ArcStop) { side->to, FALSE };
  for (guint i = 0; i <= n; i++)
    {
      double x, y;
      part.to = stops[i].angle;
      cw_side_at (&part, end, 1, &x, &y);
      const CwPoint stop
          = i == n ? end
                   : cw_on_line (axis, at, llround (axis == CW_AXIS_X ? y : x));
      add_part (parts, part, stop, is_low ? CW_HALF_LOW : CW_HALF_HIGH);
      part.start = stop;
      part.from = part.to;
      is_low ^= stops[i].crosses;
    }
}

void
cw_side_cut (const CwSide *side, CwPoint end, CwAxis axis, CwLength at,
             GArray *parts)
{
  if (side->is_arc)
    cut_arc (side, end, axis, at, parts);
  else
    cut_straight (side, end, axis, at, parts);
}

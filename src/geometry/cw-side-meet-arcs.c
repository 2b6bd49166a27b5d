/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where two arcs meet. One is walked along and asked how far it is outside of
 * the other's ellipse: where that changes sign they cross; where it comes near
 * nought and turns back they may cross twice or touch.
 */
#include <math.h>

#include "cw-exact.h"
#include "cw-side-meet-private.h"

typedef struct
{
  double share, outside;
} Sample;

/* Even steps, and ever smaller ones towards the ends, where arcs that share a
 * corner start from nought. */
#define STEPS 64
#define END_STEPS 16
#define MOST_SAMPLES (STEPS + 1 + 2 * END_STEPS)

/* Less than nought inside the ellipse, more outside: nm, to the first order
 * beside the curve. */
static double
outside_at (const CwRun *a, const CwRun *b, double share)
{
  double x, y;
  const CwSide *curve = b->side;
  cw_side_at (a->side, a->end, share, &x, &y);
  const double u = (x - curve->cx) / curve->rx, v = (y - curve->cy) / curve->ry;
  return (u * u + v * v - 1)
         / (2 * MAX (hypot (u / curve->rx, v / curve->ry), G_MINDOUBLE));
}

/* On the curve a sample says nothing of the side; those beside it do. */
static void
take_sample (const CwRun *a, const CwRun *b, double share, Sample *samples,
             guint *n)
{
  const Sample sample = { share, outside_at (a, b, share) };
  if (fabs (sample.outside) > CW_GRAZES)
    samples[(*n)++] = sample;
}

static guint
take_samples (const CwRun *a, const CwRun *b, Sample *samples)
{
  const double step = 1.0 / STEPS;
  guint n = 0;
  take_sample (a, b, 0, samples, &n);
  for (int i = END_STEPS; i > 0; i--)
    take_sample (a, b, ldexp (step, -i), samples, &n);
  for (int i = 1; i < STEPS; i++)
    take_sample (a, b, i * step, samples, &n);
  for (int i = 1; i <= END_STEPS; i++)
    take_sample (a, b, 1 - ldexp (step, -i), samples, &n);
  take_sample (a, b, 1, samples, &n);
  return n;
}

static void
add_at_share (const CwRun *a, const CwRun *b, double share, GArray *meets)
{
  double x, y, share_b;
  cw_side_at (a->side, a->end, share, &x, &y);
  if (cw_arc_share (b->side, x, y, cw_arc_slack (b->side), &share_b))
    cw_add_meet (meets, cw_point_nearest (x, y), share, share_b);
}

static void
meet_between (const CwRun *a, const CwRun *b, double low, double high,
              GArray *meets)
{
  const gboolean starts_inside = outside_at (a, b, low) < 0;
  for (guint i = 0; i < 60; i++)
    {
      const double middle = (low + high) / 2;
      if ((outside_at (a, b, middle) < 0) == starts_inside)
        low = middle;
      else
        high = middle;
    }
  add_at_share (a, b, high, meets);
}

static Sample
sample_at (const CwRun *a, const CwRun *b, double share)
{
  return (Sample) { share, outside_at (a, b, share) };
}

/* Between @low and @high, where the arc comes nearest to the curve from the
 * side that @sign tells, or goes furthest beyond it: by the golden section. */
static Sample
nearest_between (const CwRun *a, const CwRun *b, double low, double high,
                 double sign)
{
  const double golden = (sqrt (5) - 1) / 2;
  Sample left = sample_at (a, b, high - golden * (high - low));
  Sample right = sample_at (a, b, low + golden * (high - low));
  for (guint i = 0; i < 60; i++)
    if (sign * left.outside < sign * right.outside)
      {
        high = right.share;
        right = left;
        left = sample_at (a, b, high - golden * (high - low));
      }
    else
      {
        low = left.share;
        left = right;
        right = sample_at (a, b, low + golden * (high - low));
      }
  return left;
}

/* Three samples on one side of the curve, the middle one the nearest. */
static void
meet_about (const CwRun *a, const CwRun *b, const Sample *three,
            gboolean meet_at_end, GArray *meets)
{
  const double sign = three[1].outside < 0 ? -1 : 1;
  const Sample nearest
      = nearest_between (a, b, three[0].share, three[2].share, sign);
  if (fabs (nearest.outside) <= CW_GRAZES)
    {
      if (!meet_at_end)
        add_at_share (a, b, nearest.share, meets);
    }
  else if (sign * nearest.outside < 0)
    {
      meet_between (a, b, three[0].share, nearest.share, meets);
      meet_between (a, b, nearest.share, three[2].share, meets);
    }
}

static gboolean
is_nearest (const Sample *three)
{
  const double before = three[0].outside, now = three[1].outside,
               after = three[2].outside;
  return (before < 0) == (now < 0) && (now < 0) == (after < 0)
         && fabs (now) <= fabs (before) && fabs (now) <= fabs (after);
}

void
cw_arcs_meet (const CwRun *a, const CwRun *b, gboolean meet_at_end,
              GArray *meets)
{
  Sample samples[MOST_SAMPLES];
  const guint n = take_samples (a, b, samples);
  for (guint i = 1; i < n; i++)
    {
      if ((samples[i - 1].outside < 0) != (samples[i].outside < 0))
        meet_between (a, b, samples[i - 1].share, samples[i].share, meets);
      if (i + 1 < n && is_nearest (&samples[i - 1]))
        meet_about (a, b, &samples[i - 1], meet_at_end, meets);
    }
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "cw-side.h"

/* Nodes and weights of the ten-point Gauss-Legendre rule on -1 … 1, from its
 * published table (Abramowitz and Stegun, table 25.4; from memory, checked in
 * the tests by the elliptic integral that the mean of both axes gives). */
static const double gauss[5][2] = {
  { 0.1488743389816312, 0.2955242247147529 },
  { 0.4333953941292472, 0.2692667193099963 },
  { 0.6794095682990244, 0.2190863625159821 },
  { 0.8650633666889845, 0.1494513491505806 },
  { 0.9739065285171717, 0.0666713443086881 },
};

static double
speed (const CwSide *side, double angle)
{
  return hypot (side->rx * sin (angle), side->ry * cos (angle));
}

static double
panel (const CwSide *side, double from, double to)
{
  double middle = (from + to) / 2, half = (to - from) / 2, sum = 0;

  for (guint i = 0; i < G_N_ELEMENTS (gauss); i++)
    sum += gauss[i][1] * (speed (side, middle - half * gauss[i][0])
                          + speed (side, middle + half * gauss[i][0]));
  return sum * half;
}

/* Halves the panel until both halves agree with the whole: a very flat
 * ellipse turns sharply at its ends and needs short panels only there. */
static double
halved (const CwSide *side, double from, double to, double whole, double slack,
        int depth)
{
  double middle = (from + to) / 2;
  double low = panel (side, from, middle), high = panel (side, middle, to);

  if (depth == 0 || fabs (low + high - whole) <= slack)
    return low + high;
  return halved (side, from, middle, low, slack / 2, depth - 1)
         + halved (side, middle, to, high, slack / 2, depth - 1);
}

static double
ellipse_length (const CwSide *side)
{
  double from = MIN (side->from, side->to), to = MAX (side->from, side->to);
  double whole = panel (side, from, to);

  return halved (side, from, to, whole, whole * 1e-14, 40);
}

double
cw_side_length (const CwSide *side, CwPoint end)
{
  g_return_val_if_fail (side != NULL, 0);

  if (!side->is_arc)
    return hypot ((double) (end.x - side->start.x),
                  (double) (end.y - side->start.y)) / 1e9;
  if (fabs (side->rx - side->ry) <= 1e-15 * side->rx)
    return side->rx * fabs (side->to - side->from) / 1e9;
  return ellipse_length (side) / 1e9;
}

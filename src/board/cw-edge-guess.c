/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-edge-guess.h"

#include "cw-project.h"

static CwPoint
next_of (const CwCorner *corners, gsize n, gsize i)
{
  return corners[(i + 1) % n].at;
}

static gboolean
is_clockwise (const CwCorner *corners, gsize n)
{
  double twice = 0;

  for (gsize i = 0; i < n; i++)
    {
      CwPoint a = corners[i].at, b = next_of (corners, n, i);

      twice += (double) (a.x - corners[0].at.x)
                   * (double) (b.y - corners[0].at.y)
               - (double) (b.x - corners[0].at.x)
                     * (double) (a.y - corners[0].at.y);
    }
  return twice < 0;
}

/* A side belongs to the corner it starts from, so that turning the corners
 * round moves the bows by one. */
static void
turn_round (CwCorner *corners, gsize n)
{
  g_autofree CwCorner *former = g_memdup2 (corners, n * sizeof *corners);

  for (gsize i = 0; i < n; i++)
    {
      corners[i].at = former[n - 1 - i].at;
      corners[i].sagitta = former[(2 * n - 2 - i) % n].sagitta;
    }
}

static gboolean
is_before (CwPoint a, CwPoint b)
{
  return a.y < b.y || (a.y == b.y && a.x < b.x);
}

static void
start_lowest_left (CwCorner *corners, gsize n)
{
  g_autofree CwCorner *former = g_memdup2 (corners, n * sizeof *corners);
  gsize first = 0;

  for (gsize i = 1; i < n; i++)
    if (is_before (corners[i].at, corners[first].at))
      first = i;
  for (gsize i = 0; i < n; i++)
    corners[i] = former[(first + i) % n];
}

static gboolean
looks_down (const CwCorner *corners, gsize n, gsize i)
{
  return next_of (corners, n, i).x > corners[i].at.x;
}

static gboolean
is_level (const CwCorner *corners, gsize n, gsize i)
{
  return next_of (corners, n, i).y == corners[i].at.y
         && corners[i].sagitta == 0;
}

static CwEdge
guess_upright (const CwCorner *corners, gsize n, gsize i)
{
  gboolean is_step = looks_down (corners, n, (i + n - 1) % n)
                     && looks_down (corners, n, (i + 1) % n);

  return is_step ? CW_EDGE_ABUTMENT : CW_EDGE_OUTSIDE_CORNER;
}

static CwEdge
guess_lower (const CwCorner *corners, gsize n, gsize i, gboolean has_base)
{
  if (!has_base)
    return CW_EDGE_BASE;
  return is_level (corners, n, i) && corners[i].at.y == corners[0].at.y
             ? CW_EDGE_BASE
             : CW_EDGE_ABUTMENT;
}

static CwEdge
guess_side (const CwCorner *corners, gsize n, gsize i, gboolean has_base)
{
  if (next_of (corners, n, i).x == corners[i].at.x)
    return guess_upright (corners, n, i);
  if (looks_down (corners, n, i))
    return guess_lower (corners, n, i, has_base);
  return is_level (corners, n, i) ? CW_EDGE_EAVE : CW_EDGE_RAKE;
}

void
cw_edge_guess (CwCorner *corners, gsize n)
{
  gboolean has_base;

  g_return_if_fail (corners != NULL && n > 0);

  if (is_clockwise (corners, n))
    turn_round (corners, n);
  start_lowest_left (corners, n);
  has_base = is_level (corners, n, 0) && looks_down (corners, n, 0);
  for (gsize i = 0; i < n; i++)
    corners[i].tag = guess_side (corners, n, i, has_base);
}

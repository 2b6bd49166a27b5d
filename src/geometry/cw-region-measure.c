/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-exact.h"
#include "cw-region-private.h"

/* Adds @term to @sum with the lost digits kept in @rest (Neumaier), as many
 * small bows stand beside one large wall. */
static void
add_kept (double *sum, double *rest, double term)
{
  const double total = *sum + term;
  if (fabs (*sum) >= fabs (term))
    *rest += (*sum - total) + term;
  else
    *rest += (term - total) + *sum;
  *sum = total;
}

static CwWide
twice_chord_area (const CwLoop *loop)
{
  /* About the first corner, so that the products stay small. */
  const CwPoint origin = loop->sides[0].start;
  CwWide sum = 0;
  for (gsize i = 0; i < loop->n_sides; i++)
    sum += cw_cross (origin, loop->sides[i].start, cw_loop_end (loop, i));
  return sum;
}

static double
area_of_loops (const CwLoop *loops, gsize n)
{
  CwWide twice = 0;
  double bows = 0, rest = 0;
  for (gsize i = 0; i < n; i++)
    {
      twice += twice_chord_area (&loops[i]);
      for (gsize j = 0; j < loops[i].n_sides; j++)
        if (loops[i].sides[j].is_arc)
          add_kept (&bows, &rest,
                    cw_side_bow_area (&loops[i].sides[j],
                                      cw_loop_end (&loops[i], j)));
    }
  return (double) twice / 2e18 + (bows + rest);
}

double
cw_loop_area (const CwLoop *loop)
{
  return area_of_loops (loop, 1);
}

double
cw_region_area (const CwRegion *region)
{
  const gsize n = cw_region_n_loops (region);
  g_autofree CwLoop *loops = g_new (CwLoop, n);
  for (gsize i = 0; i < n; i++)
    loops[i] = cw_region_loop (region, i);
  return area_of_loops (loops, n);
}

static double
length_where (const CwRegion *region, gboolean all, guint tag)
{
  double sum = 0, rest = 0;
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      const CwLoop loop = cw_region_loop (region, i);
      for (gsize j = 0; j < loop.n_sides; j++)
        if (all || loop.sides[j].tag == tag)
          add_kept (&sum, &rest,
                    cw_side_length (&loop.sides[j], cw_loop_end (&loop, j)));
    }
  return sum + rest;
}

double
cw_region_length (const CwRegion *region)
{
  return length_where (region, TRUE, 0);
}

double
cw_region_length_of (const CwRegion *region, guint tag)
{
  return length_where (region, FALSE, tag);
}

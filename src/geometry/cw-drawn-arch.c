/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-drawn-arch.h"

#include <math.h>

#include "cw-drawn-runs.h"

/* An arch of more chords than that is none. */
#define CHORDS_MOST 400
/* How far its points may lie from the arch through them, of the span. */
#define FIT 0.006
/* The flattest arch, of the span: less is a level head drawn askew. */
#define RISE_LEAST 0.02

typedef struct
{
  double x, y;
} Spot;

/* The lines on the way and where it is. */
typedef struct
{
  const CwDrawnLines *lines;
  const CwDrawnShape *shape;
  GArray *near;         /* (element-type guint) */
  GArray *spots;        /* (element-type Spot) */
  Spot at, way;         /* the way it came, of length 1 */
  guint last;
} Walk;

/* Where a step along a line would lead, and how straight on that is. */
typedef struct
{
  Spot to, way;
  double straight;
  guint line;
} Step;

static gboolean
is_in_head (const CwDrawnShape *shape, Spot spot)
{
  return spot.x >= shape->left - CW_DRAWN_REACH
         && spot.x <= shape->right + CW_DRAWN_REACH
         && spot.y <= shape->springing + CW_DRAWN_REACH;
}

static void
consider (const Walk *walk, guint number, Spot from, Spot to, Step *best)
{
  const double length = hypot (to.x - from.x, to.y - from.y);
  const Spot way = { (to.x - from.x) / length, (to.y - from.y) / length };
  const double straight = way.x * walk->way.x + way.y * walk->way.y;

  if (hypot (from.x - walk->at.x, from.y - walk->at.y) > CW_DRAWN_REACH
      || !is_in_head (walk->shape, to) || straight <= best->straight)
    return;
  *best = (Step) { to, way, straight, number };
}

/* On the straightest way, and never back. */
static gboolean
step (Walk *walk)
{
  Step best = { .straight = -0.2 };

  cw_drawn_lines_within (walk->lines, walk->at.x - CW_DRAWN_REACH,
                         walk->at.y - CW_DRAWN_REACH,
                         walk->at.x + CW_DRAWN_REACH,
                         walk->at.y + CW_DRAWN_REACH, walk->near);
  for (guint i = 0; i < walk->near->len; i++)
    {
      const guint number = g_array_index (walk->near, guint, i);
      const CwDrawnLine *line = cw_drawn_lines_at (walk->lines, number);
      const Spot begin = { line->x0, line->y0 }, end = { line->x1, line->y1 };

      if (number == walk->last)
        continue;
      consider (walk, number, begin, end, &best);
      consider (walk, number, end, begin, &best);
    }
  if (best.straight <= -0.2)
    return FALSE;
  walk->at = best.to;
  walk->way = best.way;
  walk->last = best.line;
  g_array_append_val (walk->spots, walk->at);
  return TRUE;
}

static gboolean
has_arrived (const Walk *walk)
{
  return fabs (walk->at.x - walk->shape->right) <= CW_DRAWN_REACH
         && fabs (walk->at.y - walk->shape->springing) <= CW_DRAWN_REACH;
}

/* From springing to springing over the crown. @way: that to begin with. */
static gboolean
walk_over (Walk *walk, Spot way)
{
  walk->at = (Spot) { walk->shape->left, walk->shape->springing };
  walk->way = way;
  walk->last = G_MAXUINT;
  g_array_set_size (walk->spots, 0);
  for (guint i = 0; i < CHORDS_MOST && !has_arrived (walk); i++)
    if (!step (walk))
      return FALSE;
  return has_arrived (walk) && walk->spots->len >= 3;
}

static double
crown_of (const GArray *spots)
{
  double top = G_MAXDOUBLE;

  for (guint i = 0; i < spots->len; i++)
    top = MIN (top, g_array_index (spots, Spot, i).y);
  return top;
}

/* How far a point lies off the circle through springings and crown. */
static double
off_circle (const CwDrawnShape *shape, Spot spot)
{
  const double half = (shape->right - shape->left) / 2;
  const double rise = shape->springing - shape->top;
  const double radius = (half * half + rise * rise) / (2 * rise);

  return fabs (hypot (spot.x - (shape->left + half),
                      spot.y - (shape->top + radius))
               - radius);
}

/* About, for the half ellipse on the springing line. */
static double
off_ellipse (const CwDrawnShape *shape, Spot spot)
{
  const double half = (shape->right - shape->left) / 2;
  const double rise = shape->springing - shape->top;
  const double u = (spot.x - (shape->left + half)) / half;
  const double v = (shape->springing - spot.y) / rise;

  return fabs (hypot (u, v) - 1) * MIN (half, rise);
}

static gboolean
fits (const GArray *spots, const CwDrawnShape *shape,
      double (*off) (const CwDrawnShape *, Spot))
{
  const double most
      = MAX (FIT * (shape->right - shape->left), 2 * CW_DRAWN_REACH);

  for (guint i = 0; i < spots->len; i++)
    if (off (shape, g_array_index (spots, Spot, i)) > most)
      return FALSE;
  return TRUE;
}

static gboolean
judge (const GArray *spots, CwDrawnShape *shape)
{
  shape->top = crown_of (spots);
  if (shape->springing - shape->top
      < RISE_LEAST * (shape->right - shape->left))
    return FALSE;
  if (fits (spots, shape, off_circle))
    shape->head = CW_DRAWN_HEAD_CIRCULAR;
  else if (fits (spots, shape, off_ellipse))
    shape->head = CW_DRAWN_HEAD_ELLIPTICAL;
  else
    return FALSE;
  return TRUE;
}

gboolean
cw_drawn_arch_follow (const CwDrawnLines *lines, CwDrawnShape *shape)
{
  static const Spot ways[] = { { 0, -1 }, { G_SQRT2 / 2, -G_SQRT2 / 2 },
                               { 1, 0 } };
  g_autoptr (GArray) near = g_array_new (FALSE, FALSE, sizeof (guint));
  g_autoptr (GArray) spots = g_array_new (FALSE, FALSE, sizeof (Spot));
  Walk walk = { .lines = lines, .shape = shape, .near = near,
                .spots = spots };

  /* A round arch begins upright, a flat one nearly level. */
  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    if (walk_over (&walk, ways[i]) && judge (spots, shape))
      return TRUE;
  return FALSE;
}

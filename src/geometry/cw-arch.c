/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-arch.h"

#include <math.h>

#define MOST_ARCS 3

/* The curve from the right springing to the left one. */
typedef struct
{
  CwSide arcs[MOST_ARCS];
  guint n;
} Curve;

void
cw_arch_rise_limits (CwArchHead head, CwLength width, CwLength *least,
                     CwLength *most)
{
  const CwLength half = width / 2;
  switch (head)
    {
    case CW_ARCH_SEMICIRCULAR:
      *least = *most = half;
      return;
    case CW_ARCH_SEGMENTAL:
      *least = 1;
      *most = half;
      return;
    case CW_ARCH_SEMI_ELLIPTICAL:
      *least = 1;
      *most = CW_LENGTH_MOST;
      return;
    case CW_ARCH_POINTED:
      *least = half + width % 2;
      *most = CW_LENGTH_MOST;
      return;
    case CW_ARCH_THREE_CENTRED:
      *least = 1;
      *most = half - (width % 2 == 0);
      return;
    }
  g_assert_not_reached ();
}

gboolean
cw_arch_is_possible (CwArchHead head, CwLength width, CwLength rise)
{
  CwLength least, most;
  if (width <= 0)
    return FALSE;
  cw_arch_rise_limits (head, width, &least, &most);
  return rise >= least && rise <= most;
}

static void
add_arc (Curve *curve, double cx, double cy, double rx, double ry,
         double from, double to)
{
  curve->arcs[curve->n++]
      = cw_side_arc (cx, cy, rx, ry, from, to, CW_OPENING_SIDE_HEAD);
}

/* One circle through both springings and the crown. */
static void
add_segment (Curve *curve, CwPoint left, CwLength width, CwLength rise)
{
  const CwPoint right = cw_point (left.x + width, left.y);
  curve->arcs[curve->n++]
      = cw_side_arc_by_sagitta (right, left, rise, CW_OPENING_SIDE_HEAD);
}

/* Radius (h² + s²/4) / s, each centre on the springing line. */
static void
add_point (Curve *curve, CwPoint left, CwLength width, CwLength rise)
{
  const double span = (double) width, height = (double) rise;
  const double radius = (height * height + span * span / 4) / span;
  const double angle = acos ((radius - span / 2) / radius);
  const double x = (double) left.x, y = (double) left.y;
  add_arc (curve, x + span - radius, y, radius, radius, 0, angle);
  add_arc (curve, x + radius, y, radius, radius, G_PI - angle, G_PI);
}

/*
 * The half span a and the rise h: on the line from springing to crown, of
 * length l, a - h is set off from the crown; the upright bisector of what is
 * left meets the springing line in the small centre and the axis in the large
 * one. With m half of what is left: r = m l / a and R = (l - m) l / h.
 */
static void
add_three_centres (Curve *curve, CwPoint left, CwLength width, CwLength rise)
{
  const double a = (double) width / 2, h = (double) rise;
  const double l = hypot (a, h), m = (l - a + h) / 2;
  const double small = m * l / a, large = (l - m) * l / h;
  const double angle = atan2 (large - h, a - small);
  const double x = (double) left.x + a, y = (double) left.y;
  add_arc (curve, x + a - small, y, small, small, 0, angle);
  add_arc (curve, x, y + h - large, large, large, angle, G_PI - angle);
  add_arc (curve, x - a + small, y, small, small, G_PI - angle, G_PI);
}

static Curve
curve_over (CwArchHead head, CwPoint left, CwLength width, CwLength rise)
{
  Curve curve = { .n = 0 };
  switch (head)
    {
    case CW_ARCH_SEMICIRCULAR:
    case CW_ARCH_SEGMENTAL:
      add_segment (&curve, left, width, rise);
      break;
    case CW_ARCH_SEMI_ELLIPTICAL:
      add_arc (&curve, (double) left.x + (double) width / 2, (double) left.y,
               (double) width / 2, (double) rise, 0, G_PI);
      break;
    case CW_ARCH_POINTED:
      add_point (&curve, left, width, rise);
      break;
    case CW_ARCH_THREE_CENTRED:
      add_three_centres (&curve, left, width, rise);
      break;
    }
  return curve;
}

static CwPoint
arc_end (const Curve *curve, guint i, CwPoint left)
{
  return i + 1 < curve->n ? curve->arcs[i + 1].start : left;
}

double
cw_arch_length (CwArchHead head, CwLength width, CwLength rise)
{
  const CwPoint left = cw_point (0, 0);
  const Curve curve = curve_over (head, left, width, rise);
  double sum = 0;
  for (guint i = 0; i < curve.n; i++)
    sum += cw_side_length (&curve.arcs[i], arc_end (&curve, i, left));
  return sum;
}

double
cw_arch_area (CwArchHead head, CwLength width, CwLength rise)
{
  const CwPoint left = cw_point (0, 0);
  const Curve curve = curve_over (head, left, width, rise);
  CwSide sides[MOST_ARCS + 1];
  guint n = 0;

  while (n < curve.n)
    {
      sides[n] = curve.arcs[n];
      n++;
    }
  sides[n++] = cw_side_straight (left, 0);
  g_autoptr (CwRegion) region = cw_region_new_loop (sides, n);
  return cw_region_area (region);
}

CwRegion *
cw_opening_region (CwPoint corner, CwLength width, CwLength height,
                   CwArchHead head, CwLength rise)
{
  const CwPoint right = cw_point (corner.x + width, corner.y);
  const CwPoint right_springing = cw_point (right.x, right.y + height);
  const CwPoint left_springing = cw_point (corner.x, corner.y + height);
  CwSide sides[MOST_ARCS + 3];
  guint n = 0;

  g_return_val_if_fail (width > 0 && height + rise > 0,
                        cw_region_new_empty ());

  sides[n++] = cw_side_straight (corner, CW_OPENING_SIDE_SILL);
  if (height > 0)
    sides[n++] = cw_side_straight (right, CW_OPENING_SIDE_JAMB);
  if (rise > 0)
    {
      const Curve curve = curve_over (head, left_springing, width, rise);
      for (guint i = 0; i < curve.n; i++)
        sides[n++] = curve.arcs[i];
    }
  else
    sides[n++] = cw_side_straight (right_springing, CW_OPENING_SIDE_HEAD);
  if (height > 0)
    sides[n++] = cw_side_straight (left_springing, CW_OPENING_SIDE_JAMB);
  return cw_region_new_loop (sides, n);
}

double
cw_arch_ordinate (CwArchHead head, CwLength width, CwLength rise, double x)
{
  const CwPoint left = cw_point (0, 0);
  const Curve curve = curve_over (head, left, width, rise);
  guint i = 0;

  /* The arcs run from right to left. */
  while (i + 1 < curve.n && x < (double) curve.arcs[i + 1].start.x)
    i++;
  const CwSide *arc = &curve.arcs[i];
  const double share = (x - arc->cx) / arc->rx;
  return arc->cy + arc->ry * sqrt (MAX (0, 1 - share * share));
}

CwRegion *
cw_hole_region_round (CwPoint centre, CwLength diameter, guint tag)
{
  const double x = (double) centre.x, y = (double) centre.y;
  const double radius = (double) diameter / 2;
  const CwSide sides[] = {
    cw_side_arc (x, y, radius, radius, 0, G_PI, tag),
    cw_side_arc (x, y, radius, radius, G_PI, 2 * G_PI, tag),
  };
  return cw_region_new_loop (sides, G_N_ELEMENTS (sides));
}

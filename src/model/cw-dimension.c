/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-dimension.h"

#include <math.h>

CwLength
cw_dimension_length (const CwDimension *dimension)
{
  CwLength along, up;

  g_return_val_if_fail (dimension != NULL, 0);

  along = ABS (dimension->to_x - dimension->x);
  up = ABS (dimension->to_y - dimension->y);
  switch ((CwDimensionWay) dimension->way)
    {
    case CW_DIMENSION_LEVEL:
      return along;
    case CW_DIMENSION_UPRIGHT:
      return up;
    case CW_DIMENSION_ALIGNED:
    default:
      /* Exact where it can be. */
      if (along == 0 || up == 0)
        return along + up;
      return (CwLength) llround (hypot ((double) along, (double) up));
    }
}

/* The unit vector across the way from @from to @to, to its left. */
static void
find_across (CwPoint from, CwPoint to, double *x, double *y)
{
  double along = (double) (to.x - from.x), up = (double) (to.y - from.y);
  double way = hypot (along, up);

  *x = way > 0 ? -up / way : 0;
  *y = way > 0 ? along / way : 1;
}

static CwPoint
aside (CwPoint point, double x, double y, CwLength by)
{
  return cw_point (point.x + (CwLength) llround (x * (double) by),
                   point.y + (CwLength) llround (y * (double) by));
}

void
cw_dimension_line (const CwDimension *dimension, CwPoint line[2])
{
  CwPoint from, to;
  double x, y;

  g_return_if_fail (dimension != NULL && line != NULL);

  from = cw_dimension_from (dimension);
  to = cw_dimension_to (dimension);
  switch ((CwDimensionWay) dimension->way)
    {
    case CW_DIMENSION_LEVEL:
      line[0] = cw_point (from.x, from.y + dimension->offset);
      line[1] = cw_point (to.x, line[0].y);
      break;
    case CW_DIMENSION_UPRIGHT:
      line[0] = cw_point (from.x + dimension->offset, from.y);
      line[1] = cw_point (line[0].x, to.y);
      break;
    case CW_DIMENSION_ALIGNED:
    default:
      find_across (from, to, &x, &y);
      line[0] = aside (from, x, y, dimension->offset);
      line[1] = aside (to, x, y, dimension->offset);
    }
}

CwLength
cw_dimension_offset (CwDimensionWay way, CwPoint from, CwPoint to, CwPoint at)
{
  double x, y;

  if (way == CW_DIMENSION_LEVEL)
    return at.y - from.y;
  if (way == CW_DIMENSION_UPRIGHT)
    return at.x - from.x;
  find_across (from, to, &x, &y);
  return (CwLength) llround (x * (double) (at.x - from.x)
                             + y * (double) (at.y - from.y));
}

CwBox
cw_dimension_box (const CwDimension *dimension)
{
  CwPoint points[4];
  CwBox box;

  g_return_val_if_fail (dimension != NULL, ((CwBox) { 0, 0, 0, 0 }));

  points[0] = cw_dimension_from (dimension);
  points[1] = cw_dimension_to (dimension);
  cw_dimension_line (dimension, points + 2);
  box = (CwBox) { points[0].x, points[0].y, points[0].x, points[0].y };
  for (guint i = 1; i < G_N_ELEMENTS (points); i++)
    {
      box.left = MIN (box.left, points[i].x);
      box.right = MAX (box.right, points[i].x);
      box.bottom = MIN (box.bottom, points[i].y);
      box.top = MAX (box.top, points[i].y);
    }
  return box;
}

static double
distance_to (CwPoint from, CwPoint to, CwPoint at)
{
  double dx = (double) (to.x - from.x), dy = (double) (to.y - from.y);
  double x = (double) (at.x - from.x), y = (double) (at.y - from.y);
  double squared = dx * dx + dy * dy;
  double share = squared > 0 ? CLAMP ((x * dx + y * dy) / squared, 0, 1) : 0;

  return hypot (x - share * dx, y - share * dy);
}

double
cw_dimension_distance (const CwDimension *dimension, CwPoint at)
{
  CwPoint line[2];
  double nearest;

  g_return_val_if_fail (dimension != NULL, G_MAXDOUBLE);

  cw_dimension_line (dimension, line);
  nearest = distance_to (line[0], line[1], at);
  nearest = MIN (nearest,
                 distance_to (cw_dimension_from (dimension), line[0], at));
  return MIN (nearest,
              distance_to (cw_dimension_to (dimension), line[1], at));
}

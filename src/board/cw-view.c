/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-view.h"

#include <math.h>

void
cw_view_to_widget (const CwView *view, double x_nm, double y_nm, double *x,
                   double *y)
{
  *x = view->x + x_nm / view->nm_per_pixel;
  *y = view->y - y_nm / view->nm_per_pixel;
}

void
cw_view_to_wall (const CwView *view, double x, double y, double *x_nm,
                 double *y_nm)
{
  *x_nm = (x - view->x) * view->nm_per_pixel;
  *y_nm = (view->y - y) * view->nm_per_pixel;
}

static CwLength
bounded (double nm)
{
  return (CwLength) llround (
      CLAMP (nm, -(double) CW_LENGTH_MOST, (double) CW_LENGTH_MOST));
}

CwPoint
cw_view_point (const CwView *view, double x, double y)
{
  double x_nm, y_nm;

  cw_view_to_wall (view, x, y, &x_nm, &y_nm);
  return cw_point (bounded (x_nm), bounded (y_nm));
}

void
cw_view_pan (CwView *view, double dx, double dy)
{
  view->x += dx;
  view->y += dy;
}

void
cw_view_zoom (CwView *view, double factor, double x, double y)
{
  double former = view->nm_per_pixel;
  double share;

  g_return_if_fail (factor > 0);

  view->nm_per_pixel
      = CLAMP (former / factor, CW_VIEW_FINEST, CW_VIEW_COARSEST);
  share = former / view->nm_per_pixel;
  view->x = x + (view->x - x) * share;
  view->y = y + (view->y - y) * share;
}

void
cw_view_fit (CwView *view, const CwBox *box, double width, double height,
             double margin)
{
  double wide = MAX ((double) cw_box_width (box), 1);
  double high = MAX ((double) cw_box_height (box), 1);
  double room_x = width - 2 * margin, room_y = height - 2 * margin;

  if (room_x < 1 || room_y < 1)
    return;
  view->nm_per_pixel = CLAMP (MAX (wide / room_x, high / room_y),
                              CW_VIEW_FINEST, CW_VIEW_COARSEST);
  view->x = width / 2
            - ((double) box->left + wide / 2) / view->nm_per_pixel;
  view->y = height / 2
            + ((double) box->bottom + high / 2) / view->nm_per_pixel;
}

CwBox
cw_view_shown (const CwView *view, double width, double height)
{
  CwPoint low = cw_view_point (view, 0, height);
  CwPoint high = cw_view_point (view, width, 0);

  return (CwBox) { low.x, low.y, high.x, high.y };
}

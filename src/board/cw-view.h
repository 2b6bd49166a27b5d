/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where the wall lies in the window: pan and zoom as plain arithmetic. Widget
 * pixels run down, the wall's y runs up.
 */
#pragma once

#include "cw-point.h"

G_BEGIN_DECLS

typedef struct
{
  double x, y;              /* the wall's origin in widget pixels */
  double nm_per_pixel;
} CwView;

/* From a hair's breadth a pixel to a kilometre in a window. */
#define CW_VIEW_FINEST 5e4
#define CW_VIEW_COARSEST 1e9

void cw_view_to_widget (const CwView *view, double x_nm, double y_nm,
                        double *x, double *y);
void cw_view_to_wall (const CwView *view, double x, double y, double *x_nm,
                      double *y_nm);
CwPoint cw_view_point (const CwView *view, double x, double y);

void cw_view_pan (CwView *view, double dx, double dy);

/* What lies at widget point @x, @y stays there; @factor over 1 comes nearer. */
void cw_view_zoom (CwView *view, double factor, double x, double y);

/* The whole of @box in a window of @width x @height pixels with @margin all
 * round. Leaves @view as it is when there is no room at all. */
void cw_view_fit (CwView *view, const CwBox *box, double width, double height,
                  double margin);

/* The part of the wall that a window of that size shows. */
CwBox cw_view_shown (const CwView *view, double width, double height);

G_END_DECLS

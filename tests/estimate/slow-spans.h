/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What of a GEOS shape lies on a line, for the slow estimator. m.
 */
#pragma once

#include <geos_c.h>
#include <glib.h>

G_BEGIN_DECLS

typedef struct
{
  double low, high;
} SlowSpan;

/* The stretches of @shape on the upright line x = @at (else level, y = @at)
 * from @low to @high, sorted. (transfer full) (element-type SlowSpan) */
GArray *slow_spans (const GEOSGeometry *shape, gboolean is_upright, double at,
                    double low, double high);

double slow_spans_length (const GArray *spans);
double slow_spans_common (const GArray *a, const GArray *b);

/* (transfer full) */
GEOSGeometry *slow_box (double left, double bottom, double right, double top);

/* The area; 0 of what is no polygon. */
double slow_area (const GEOSGeometry *shape);

G_END_DECLS

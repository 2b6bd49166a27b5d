/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "slow-spans.h"

/* m: what lies nearer together is one stretch. */
#define NEAR 1e-8

static GEOSGeometry *
line_of (gboolean is_upright, double at, double low, double high)
{
  GEOSCoordSequence *sequence = GEOSCoordSeq_create (2, 2);

  GEOSCoordSeq_setXY (sequence, 0, is_upright ? at : low,
                      is_upright ? low : at);
  GEOSCoordSeq_setXY (sequence, 1, is_upright ? at : high,
                      is_upright ? high : at);
  return GEOSGeom_createLineString (sequence);
}

static void
add_span (GArray *spans, gboolean is_upright, const GEOSGeometry *line)
{
  const GEOSCoordSequence *sequence = GEOSGeom_getCoordSeq (line);
  unsigned int n = 0;
  double x[2], y[2];
  SlowSpan span;

  GEOSCoordSeq_getSize (sequence, &n);
  GEOSCoordSeq_getXY (sequence, 0, &x[0], &y[0]);
  GEOSCoordSeq_getXY (sequence, n - 1, &x[1], &y[1]);
  span.low = is_upright ? MIN (y[0], y[1]) : MIN (x[0], x[1]);
  span.high = is_upright ? MAX (y[0], y[1]) : MAX (x[0], x[1]);
  g_array_append_val (spans, span);
}

static int
compare_spans (gconstpointer a, gconstpointer b)
{
  const SlowSpan *one = a, *other = b;

  return (one->low > other->low) - (one->low < other->low);
}

static void
join_neighbours (GArray *spans)
{
  guint n = 0;

  for (guint i = 0; i < spans->len; i++)
    {
      const SlowSpan span = g_array_index (spans, SlowSpan, i);

      if (n > 0
          && span.low - g_array_index (spans, SlowSpan, n - 1).high < NEAR)
        g_array_index (spans, SlowSpan, n - 1).high = span.high;
      else
        g_array_index (spans, SlowSpan, n++) = span;
    }
  g_array_set_size (spans, n);
}

GArray *
slow_spans (const GEOSGeometry *shape, gboolean is_upright, double at,
            double low, double high)
{
  GArray *spans = g_array_new (FALSE, FALSE, sizeof (SlowSpan));
  GEOSGeometry *line = line_of (is_upright, at, low, high);
  GEOSGeometry *on = GEOSIntersection (shape, line);

  for (int i = 0; i < GEOSGetNumGeometries (on); i++)
    {
      const GEOSGeometry *part = GEOSGetGeometryN (on, i);

      if (GEOSGeomTypeId (part) == GEOS_LINESTRING && !GEOSisEmpty (part))
        add_span (spans, is_upright, part);
    }
  g_array_sort (spans, compare_spans);
  join_neighbours (spans);
  GEOSGeom_destroy (on);
  GEOSGeom_destroy (line);
  return spans;
}

double
slow_spans_length (const GArray *spans)
{
  double length = 0;

  for (guint i = 0; i < spans->len; i++)
    length += g_array_index (spans, SlowSpan, i).high
              - g_array_index (spans, SlowSpan, i).low;
  return length;
}

double
slow_spans_common (const GArray *a, const GArray *b)
{
  double length = 0;

  for (guint i = 0; i < a->len; i++)
    for (guint k = 0; k < b->len; k++)
      {
        const SlowSpan *one = &g_array_index (a, SlowSpan, i);
        const SlowSpan *other = &g_array_index (b, SlowSpan, k);

        length += MAX (0, MIN (one->high, other->high)
                              - MAX (one->low, other->low));
      }
  return length;
}

GEOSGeometry *
slow_box (double left, double bottom, double right, double top)
{
  GEOSCoordSequence *sequence = GEOSCoordSeq_create (5, 2);
  const double x[] = { left, right, right, left, left };
  const double y[] = { bottom, bottom, top, top, bottom };

  for (unsigned int i = 0; i < 5; i++)
    GEOSCoordSeq_setXY (sequence, i, x[i], y[i]);
  return GEOSGeom_createPolygon (GEOSGeom_createLinearRing (sequence), NULL,
                                 0);
}

double
slow_area (const GEOSGeometry *shape)
{
  double area = 0;

  g_assert_nonnull (shape);
  GEOSArea (shape, &area);
  return area;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "geos-shape.h"

#include <math.h>
#include <stdarg.h>

static void
fail (const char *format, ...)
{
  va_list arguments;
  va_start (arguments, format);
  g_autofree char *text = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  g_error ("GEOS: %s", text);
}

static void
ignore (const char *format, ...)
{
}

GEOSContextHandle_t
geos_shape_context (void)
{
  static GEOSContextHandle_t context;
  if (context == NULL)
    {
      context = GEOS_init_r ();
      GEOSContext_setErrorHandler_r (context, fail);
      GEOSContext_setNoticeHandler_r (context, ignore);
    }
  return context;
}

void
geos_shape_free (GeosShape *shape)
{
  GEOSGeom_destroy_r (geos_shape_context (), shape);
}

/* A ring of the points, without those that fell together; NULL when they
 * bound nothing. */
static GeosShape *
ring_new (const double *xy, gsize n)
{
  GEOSContextHandle_t geos = geos_shape_context ();
  g_autoptr (GArray) kept = g_array_new (FALSE, FALSE, 2 * sizeof (double));
  for (gsize i = 0; i < n; i++)
    {
      const double *last = kept->len ? &((double *) (gpointer)
                                           kept->data)[2 * (kept->len - 1)]
                                     : NULL;
      if (last == NULL || last[0] < xy[2 * i] || last[0] > xy[2 * i]
          || last[1] < xy[2 * i + 1] || last[1] > xy[2 * i + 1])
        g_array_append_vals (kept, &xy[2 * i], 1);
    }
  g_array_append_vals (kept, xy, 1);
  if (kept->len < 4)
    return NULL;
  GEOSCoordSequence *points = GEOSCoordSeq_copyFromBuffer_r (
      geos, (const double *) (gpointer) kept->data, kept->len, FALSE, FALSE);
  return GEOSGeom_createPolygon_r (
      geos, GEOSGeom_createLinearRing_r (geos, points), NULL, 0);
}

/* Flat, arcs that nearly touch may cross: GEOS then makes several polygons of
 * the ring. */
static GeosShape *
made_valid (GeosShape *ring)
{
  GEOSContextHandle_t geos = geos_shape_context ();
  if (GEOSisValid_r (geos, ring) == 1)
    return ring;
  GeosShape *valid = GEOSMakeValid_r (geos, ring);
  geos_shape_free (ring);
  return valid;
}

static void
add_point (GArray *xy, double x, double y)
{
  g_array_append_val (xy, x);
  g_array_append_val (xy, y);
}

/* Points on the arc from one angle to the other, the last one left out. Where
 * it turns round in x or y, within a quarter's end, the place is a whole
 * number, as a cut sees it. */
static void
add_stretch (GArray *xy, const CwSide *arc, double from, double to,
             double deviation)
{
  double share = MIN (deviation / MAX (arc->rx, arc->ry), 1);
  double n = ceil (fabs (to - from) / (2 * acos (1 - share)));
  double quarters = from / G_PI_2;
  gboolean is_turn = fabs (quarters - rint (quarters)) < 1e-12;
  gboolean is_right_or_left = fmod (fabs (rint (quarters)), 2) < 0.5;
  for (double i = 0; i < n; i++)
    {
      double angle = from + (to - from) * i / n;
      double x = arc->cx + arc->rx * cos (angle);
      double y = arc->cy + arc->ry * sin (angle);
      if (i < 0.5 && is_turn && is_right_or_left)
        x = rint (x);
      if (i < 0.5 && is_turn && !is_right_or_left)
        y = rint (y);
      add_point (xy, x, y);
    }
}

static void
add_side (GArray *xy, const CwSide *side, double deviation)
{
  /* The corner is where the neighbours have it. */
  const double start_x = (double) side->start.x;
  const double start_y = (double) side->start.y;
  const guint first = xy->len;
  if (!side->is_arc)
    {
      add_point (xy, start_x, start_y);
      return;
    }
  double sense = side->to > side->from ? 1 : -1;
  double from = side->from;
  while ((side->to - from) * sense > 1e-12)
    {
      double quarter
          = (floor (sense * from / G_PI_2 + 1e-9) + 1) * sense * G_PI_2;
      double to = sense > 0 ? MIN (quarter, side->to) : MAX (quarter, side->to);
      add_stretch (xy, side, from, to, deviation);
      from = to;
    }
  if (xy->len == first)
    add_point (xy, start_x, start_y);
  g_array_index (xy, double, first) = start_x;
  g_array_index (xy, double, first + 1) = start_y;
}

/* Takes what is inside of an odd number of the rings so far. */
static void
add_ring (GeosShape **shape, const CwSide *sides, gsize n, double deviation)
{
  g_autoptr (GArray) xy = g_array_new (FALSE, FALSE, sizeof (double));
  for (gsize i = 0; i < n; i++)
    add_side (xy, &sides[i], deviation);
  GeosShape *ring
      = ring_new ((const double *) (gpointer) xy->data, xy->len / 2);
  if (ring == NULL)
    return;
  g_autoptr (GeosShape) valid = made_valid (ring);
  GeosShape *both
      = GEOSSymDifference_r (geos_shape_context (), *shape, valid);
  geos_shape_free (*shape);
  *shape = both;
}

/* The side on the way so far that starts at @point, or how many there are. */
static guint
start_at (const GArray *way, CwPoint point)
{
  guint i = 0;
  while (i < way->len
         && !cw_point_equal (g_array_index (way, CwSide, i).start, point))
    i++;
  return i;
}

/* A loop that comes by a corner twice is several rings that touch there. */
static void
add_loop (GeosShape **shape, const CwLoop *loop, double deviation)
{
  g_autoptr (GArray) way = g_array_new (FALSE, FALSE, sizeof (CwSide));
  for (gsize i = 0; i < loop->n_sides; i++)
    {
      guint first = start_at (way, loop->sides[i].start);
      if (first < way->len)
        {
          add_ring (shape, &g_array_index (way, CwSide, first),
                    way->len - first, deviation);
          g_array_set_size (way, first);
        }
      g_array_append_val (way, loop->sides[i]);
    }
  add_ring (shape, &g_array_index (way, CwSide, 0), way->len, deviation);
}

GeosShape *
geos_shape_new (const CwRegion *region, double deviation)
{
  GeosShape *shape = GEOSGeom_createEmptyPolygon_r (geos_shape_context ());
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      CwLoop loop = cw_region_loop (region, i);
      add_loop (&shape, &loop, deviation);
    }
  return shape;
}

GeosShape *
geos_shape_box (const CwBox *box)
{
  const double left = (double) box->left, right = (double) box->right;
  const double bottom = (double) box->bottom, top = (double) box->top;
  const double xy[] = { left, bottom, right, bottom, right, top, left, top };
  return ring_new (xy, 4);
}

GeosShape *
geos_shape_union (const GeosShape *a, const GeosShape *b)
{
  return GEOSUnion_r (geos_shape_context (), a, b);
}

GeosShape *
geos_shape_intersect (const GeosShape *a, const GeosShape *b)
{
  return GEOSIntersection_r (geos_shape_context (), a, b);
}

GeosShape *
geos_shape_subtract (const GeosShape *a, const GeosShape *b)
{
  return GEOSDifference_r (geos_shape_context (), a, b);
}

double
geos_shape_area (const GeosShape *shape)
{
  double area;
  g_assert_cmpint (GEOSArea_r (geos_shape_context (), shape, &area), ==, 1);
  return area / 1e18;
}

double
geos_shape_length (const GeosShape *shape)
{
  double length;
  g_assert_cmpint (GEOSLength_r (geos_shape_context (), shape, &length), ==,
                   1);
  return length / 1e9;
}

guint
geos_shape_n_parts (const GeosShape *shape, double least)
{
  GEOSContextHandle_t geos = geos_shape_context ();
  guint n = 0;
  for (int i = 0; i < GEOSGetNumGeometries_r (geos, shape); i++)
    if (geos_shape_area (GEOSGetGeometryN_r (geos, shape, i)) > least)
      n++;
  return n;
}

/* Parts when the rim is moved outward by @distance nm. */
static guint
n_parts_grown (const GeosShape *shape, double distance, double least)
{
  g_autoptr (GeosShape) grown = GEOSBufferWithStyle_r (
      geos_shape_context (), shape, distance, 1, GEOSBUF_CAP_FLAT,
      GEOSBUF_JOIN_MITRE, 2);
  return geos_shape_n_parts (grown, least);
}

gboolean
geos_shape_explains (const GeosShape *shape, guint n, double least,
                     double neck)
{
  guint now = geos_shape_n_parts (shape, least);
  guint fatter = n_parts_grown (shape, neck / 2, least);
  guint thinner = n_parts_grown (shape, -neck / 2, least);
  return n >= MIN (now, MIN (fatter, thinner))
         && n <= MAX (now, MAX (fatter, thinner));
}

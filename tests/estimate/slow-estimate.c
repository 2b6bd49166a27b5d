/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "slow-estimate.h"

#include <math.h>

/* Straight pieces that stand for a head's curve. */
#define N_HEAD 1200
/* m: how near a point lies to the line that it is on. */
#define NEAR 1e-7

typedef struct
{
  double x, y;
} Spot;

typedef struct
{
  CwOpeningSide kind;         /* 0: a door's sill */
  gboolean is_below;          /* under the opening, a door's too */
  GEOSGeometry *line;
  const GEOSPreparedGeometry *prepared;
  double meets;               /* m of it that meet cladding */
} SideLine;

typedef struct
{
  GEOSGeometry *outline, *unclad, *openings, *deducted;
  GArray *sides;              /* SideLine */
} Polygons;

static GEOSCoordSequence *
sequence_of (GArray *spots, gboolean closed)
{
  GEOSCoordSequence *sequence
      = GEOSCoordSeq_create (spots->len + closed, 2);

  for (guint i = 0; i < spots->len + closed; i++)
    {
      const Spot *spot = &g_array_index (spots, Spot, i % spots->len);

      GEOSCoordSeq_setXY (sequence, i, spot->x, spot->y);
    }
  return sequence;
}

static GEOSGeometry *
polygon_of (GArray *spots)
{
  return GEOSGeom_createPolygon (
      GEOSGeom_createLinearRing (sequence_of (spots, TRUE)), NULL, 0);
}

static GArray *
spots_new (void)
{
  return g_array_new (FALSE, FALSE, sizeof (Spot));
}

static void
add_spot (GArray *spots, double x, double y)
{
  g_array_append_vals (spots, &(Spot) { x, y }, 1);
}

/* Height of the head over the springing line at @x from the middle. */
static double
head_height (CwArchHead head, double span, double rise, double x)
{
  double half = span / 2, radius;

  switch (head)
    {
    case CW_ARCH_SEMI_ELLIPTICAL:
      return rise * sqrt (MAX (0, 1 - x * x / (half * half)));
    case CW_ARCH_POINTED:
      radius = (rise * rise + half * half) / span;
      return sqrt (MAX (0, radius * radius
                               - (fabs (x) + radius - half)
                                     * (fabs (x) + radius - half)));
    default:
      radius = (half * half + rise * rise) / (2 * rise);
      return sqrt (MAX (0, radius * radius - x * x)) - (radius - rise);
    }
}

/* From the right springing to the left one, denser where the curve is steep. */
static void
add_head (GArray *spots, const CwOpening *opening)
{
  double span = opening->width / 1e9, rise = opening->rise / 1e9;
  double middle = opening->x / 1e9 + span / 2;
  double springing = (opening->y + opening->height) / 1e9;

  for (guint i = 0; i <= N_HEAD; i++)
    {
      double x = span / 2 * cos (G_PI * i / N_HEAD);

      add_spot (spots, middle + x,
                i % N_HEAD == 0
                    ? springing
                    : springing
                          + head_height (opening->head, span, rise, x));
    }
}

/* The four sides, anticlockwise from the lower left. */
static void
add_opening_sides (Polygons *polygons, const CwOpening *opening,
                   GArray *outline)
{
  double left = opening->x / 1e9, bottom = opening->y / 1e9;
  double right = (opening->x + opening->width) / 1e9;
  double springing = (opening->y + opening->height) / 1e9;
  gboolean is_door = opening->node.type == &cw_door_type;
  const CwOpeningSide kinds[]
      = { is_door ? 0 : CW_OPENING_SIDE_SILL, CW_OPENING_SIDE_JAMB,
          CW_OPENING_SIDE_HEAD, CW_OPENING_SIDE_JAMB };

  for (guint i = 0; i < 4; i++)
    {
      g_autoptr (GArray) line = spots_new ();
      SideLine side = { kinds[i], i == 0 };

      if (i == 0)
        add_spot (line, left, bottom), add_spot (line, right, bottom);
      else if (i == 1)
        add_spot (line, right, bottom), add_spot (line, right, springing);
      else if (i == 3)
        add_spot (line, left, springing), add_spot (line, left, bottom);
      else if (opening->node.type == &cw_arch_type)
        add_head (line, opening);
      else
        add_spot (line, right, springing), add_spot (line, left, springing);
      side.line = GEOSGeom_createLineString (sequence_of (line, FALSE));
      side.prepared = GEOSPrepare (side.line);
      g_array_append_val (polygons->sides, side);
      g_array_append_vals (outline, line->data, line->len - 1);
    }
}

/* @into joined with @what, both used up. */
static GEOSGeometry *
joined (GEOSGeometry *into, GEOSGeometry *what)
{
  GEOSGeometry *both = GEOSUnion (into, what);

  GEOSGeom_destroy (into);
  GEOSGeom_destroy (what);
  return both;
}

static double
area_of (const GEOSGeometry *geometry)
{
  double area = 0;

  g_assert_nonnull (geometry);
  g_assert_cmpint (GEOSArea (geometry, &area), ==, 1);
  return area;
}

/* Area of @operation on two geometries. */
static double
area_by (GEOSGeometry *(*operation) (const GEOSGeometry *,
                                     const GEOSGeometry *),
         const GEOSGeometry *a, const GEOSGeometry *b)
{
  GEOSGeometry *result = operation (a, b);
  double area = area_of (result);

  GEOSGeom_destroy (result);
  return area;
}

static void
add_opening (Polygons *polygons, const CwOpening *opening, double limit)
{
  g_autoptr (GArray) spots = spots_new ();
  GEOSGeometry *polygon;

  add_opening_sides (polygons, opening, spots);
  polygon = polygon_of (spots);
  if (area_by (GEOSIntersection, polygon, polygons->outline) > limit + 1e-9)
    polygons->deducted
        = joined (polygons->deducted, GEOSGeom_clone (polygon));
  polygons->openings = joined (polygons->openings, polygon);
}

static GEOSGeometry *
polygon_of_corners (const CwList *corners)
{
  g_autoptr (GArray) spots = spots_new ();

  for (gsize i = 0; i < cw_list_length (corners); i++)
    {
      const CwCornerNode *corner = cw_list_at (corners, i);

      add_spot (spots, corner->x / 1e9, corner->y / 1e9);
    }
  return polygon_of (spots);
}

static Polygons
polygons_of (const CwElevation *elevation, double limit)
{
  Polygons polygons = {
    .outline = polygon_of_corners (
        ((const CwOutline *) elevation->outline)->corners),
    .unclad = GEOSGeom_createEmptyPolygon (),
    .openings = GEOSGeom_createEmptyPolygon (),
    .deducted = GEOSGeom_createEmptyPolygon (),
    .sides = g_array_new (FALSE, FALSE, sizeof (SideLine)),
  };

  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    {
      const CwNode *item = cw_list_at (elevation->items, i);

      if (cw_node_is_opening (item))
        add_opening (&polygons, (const CwOpening *) item, limit);
      else if (item->type == &cw_unclad_type)
        polygons.unclad
            = joined (polygons.unclad, polygon_of_corners (
                                           ((const CwUnclad *) item)->corners));
    }
  return polygons;
}

static void
polygons_clear (Polygons *polygons)
{
  for (guint i = 0; i < polygons->sides->len; i++)
    {
      const SideLine *side = &g_array_index (polygons->sides, SideLine, i);

      GEOSPreparedGeom_destroy (side->prepared);
      GEOSGeom_destroy (side->line);
    }
  g_array_unref (polygons->sides);
  GEOSGeom_destroy (polygons->outline);
  GEOSGeom_destroy (polygons->unclad);
  GEOSGeom_destroy (polygons->openings);
  GEOSGeom_destroy (polygons->deducted);
}

static void
estimate_areas (SlowEstimate *estimate, const Polygons *polygons)
{
  GEOSGeometry *unclad_left
      = GEOSDifference (polygons->unclad, polygons->openings);
  GEOSGeometry *clad
      = GEOSDifference (polygons->outline, polygons->unclad);

  estimate->gross = area_of (polygons->outline);
  estimate->openings
      = area_by (GEOSIntersection, polygons->outline, polygons->openings);
  estimate->unclad
      = area_by (GEOSIntersection, polygons->outline, unclad_left);
  estimate->net = estimate->gross - estimate->openings - estimate->unclad;
  estimate->through = area_by (GEOSDifference, clad, polygons->deducted);
  estimate->half
      = area_of (clad)
        - area_by (GEOSIntersection, clad, polygons->openings) / 2;
  GEOSGeom_destroy (unclad_left);
  GEOSGeom_destroy (clad);
}

/* Which sides the middle of a piece of that length lies on, as a mask of
 * 1 << kind. */
static guint
kinds_at (const Polygons *polygons, double x, double y, double length,
          gboolean *shared)
{
  GEOSGeometry *point = GEOSGeom_createPointFromXY (x, y);
  guint kinds = 0, n = 0;

  for (guint i = 0; i < polygons->sides->len; i++)
    {
      SideLine *side = &g_array_index (polygons->sides, SideLine, i);

      if (GEOSPreparedDistanceWithin (side->prepared, point, NEAR) != 1)
        continue;
      kinds |= 1u << side->kind;
      n++;
      side->meets += length;
    }
  GEOSGeom_destroy (point);
  *shared = *shared || n > 1;
  return kinds;
}

static void
add_length (SlowEstimate *estimate, guint kinds, double length)
{
  if (kinds & (1u << CW_OPENING_SIDE_HEAD))
    estimate->head += length;
  else if (kinds & (1u << CW_OPENING_SIDE_JAMB))
    estimate->jamb += length;
  else if (kinds & (1u << CW_OPENING_SIDE_SILL))
    estimate->sill += length;
  if (kinds & (kinds - 1))
    estimate->doubtful = TRUE;
}

static void
measure_line (SlowEstimate *estimate, const Polygons *polygons,
              const GEOSGeometry *line)
{
  const GEOSCoordSequence *sequence = GEOSGeom_getCoordSeq (line);
  unsigned int n = 0;

  GEOSCoordSeq_getSize (sequence, &n);
  for (unsigned int i = 0; i + 1 < n; i++)
    {
      Spot a, b;
      double length;

      GEOSCoordSeq_getXY (sequence, i, &a.x, &a.y);
      GEOSCoordSeq_getXY (sequence, i + 1, &b.x, &b.y);
      length = hypot (b.x - a.x, b.y - a.y);
      add_length (estimate,
                  kinds_at (polygons, (a.x + b.x) / 2, (a.y + b.y) / 2,
                            length, &estimate->shared),
                  length);
    }
}

/* The boundary of all openings together inside the outline. */
static void
estimate_sides (SlowEstimate *estimate, const Polygons *polygons)
{
  GEOSGeometry *rim = GEOSBoundary (polygons->openings);
  GEOSGeometry *edge = GEOSBoundary (polygons->outline);
  GEOSGeometry *inside = GEOSIntersection (rim, polygons->outline);
  GEOSGeometry *lines = GEOSDifference (inside, edge);

  for (int i = 0; i < GEOSGetNumGeometries (lines); i++)
    {
      const GEOSGeometry *line = GEOSGetGeometryN (lines, i);

      if (GEOSGeomTypeId (line) == GEOS_LINESTRING)
        measure_line (estimate, polygons, line);
    }
  GEOSGeom_destroy (rim);
  GEOSGeom_destroy (edge);
  GEOSGeom_destroy (inside);
  GEOSGeom_destroy (lines);
}

/* Two over an opening whose head or a jamb meets cladding, two under it. */
static void
count_corners (SlowEstimate *estimate, const Polygons *polygons)
{
  for (guint i = 0; i < polygons->sides->len; i += 4)
    {
      gboolean above = FALSE, below = FALSE;

      for (guint k = i; k < i + 4; k++)
        {
          const SideLine *side
              = &g_array_index (polygons->sides, SideLine, k);

          if (side->meets > NEAR && side->is_below)
            below = TRUE;
          else if (side->meets > NEAR)
            above = TRUE;
        }
      estimate->n_corners += 2 * above + 2 * below;
    }
}

static void
estimate_edges (SlowEstimate *estimate, const CwElevation *elevation)
{
  const CwList *corners = ((const CwOutline *) elevation->outline)->corners;
  gsize n = cw_list_length (corners);

  for (gsize i = 0; i < n; i++)
    {
      const CwCornerNode *from = cw_list_at (corners, i);
      const CwCornerNode *to = cw_list_at (corners, (i + 1) % n);

      estimate->edges[from->edge]
          += hypot ((to->x - from->x) / 1e9, (to->y - from->y) / 1e9);
    }
}

SlowEstimate
slow_estimate (const CwElevation *elevation, double limit)
{
  SlowEstimate estimate = { 0 };
  Polygons polygons = polygons_of (elevation, limit);

  estimate_areas (&estimate, &polygons);
  estimate_sides (&estimate, &polygons);
  count_corners (&estimate, &polygons);
  estimate_edges (&estimate, elevation);
  polygons_clear (&polygons);
  return estimate;
}

GEOSGeometry *
slow_net (const CwElevation *elevation)
{
  Polygons polygons = polygons_of (elevation, 0);
  GEOSGeometry *clad
      = GEOSDifference (polygons.outline, polygons.unclad);
  GEOSGeometry *net = GEOSDifference (clad, polygons.openings);

  GEOSGeom_destroy (clad);
  polygons_clear (&polygons);
  return net;
}

GEOSGeometry *
slow_outline (const CwElevation *elevation)
{
  return polygon_of_corners (
      ((const CwOutline *) elevation->outline)->corners);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "slow-panels.h"

#include <math.h>

#include "slow-spans.h"

/* m: beside a line. */
#define HAIR 1e-9
/* m, m²: what is nothing. */
#define NEAR 1e-7
#define LEAST_HELD 1e-3
#define N_ROUND 2000

typedef struct
{
  const CwElevation *elevation;
  GEOSGeometry *net;
  double width, height;             /* of the wall */
  double length, across, joint;     /* of a panel */
  double edge, spacing;             /* of fasteners */
  GArray *studs;                    /* double */
  GPtrArray *holes;                 /* GEOSGeometry */
  SlowPanels *panels;
} Grid;

static GEOSGeometry *
round_hole (double x, double y, double radius)
{
  GEOSCoordSequence *sequence = GEOSCoordSeq_create (N_ROUND + 1, 2);

  for (unsigned int i = 0; i <= N_ROUND; i++)
    {
      const double angle = 2 * G_PI * (i % N_ROUND) / N_ROUND;

      GEOSCoordSeq_setXY (sequence, i, x + radius * cos (angle),
                          y + radius * sin (angle));
    }
  return GEOSGeom_createPolygon (GEOSGeom_createLinearRing (sequence), NULL,
                                 0);
}

static GEOSGeometry *
hole_of (const CwStubOut *stub_out)
{
  const double x = stub_out->x / 1e9, y = stub_out->y / 1e9;
  const double more = stub_out->clearance / 1e9;
  const double across = stub_out->width / 1e9 / 2 + more;
  const double up = stub_out->height / 1e9 / 2 + more;

  return stub_out->shape == CW_SHAPE_ROUND
             ? round_hole (x, y, across)
             : slow_box (x - across, y - up, x + across, y + up);
}

static GPtrArray *
holes_of (const CwElevation *elevation)
{
  GPtrArray *holes
      = g_ptr_array_new_with_free_func ((GDestroyNotify) GEOSGeom_destroy);

  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    {
      const CwNode *item = cw_list_at (elevation->items, i);

      if (item->type == &cw_stub_out_type)
        g_ptr_array_add (holes, hole_of ((const CwStubOut *) item));
    }
  return holes;
}

static double
length_of (const GEOSGeometry *lines)
{
  double length = 0;

  GEOSLength (lines, &length);
  return length;
}

double
slow_stub_outs (const CwElevation *elevation)
{
  g_autoptr (GPtrArray) holes = holes_of (elevation);
  double length = 0;

  for (guint i = 0; i < holes->len; i++)
    length += length_of (holes->pdata[i]);
  return length;
}

static void
add_stud (Grid *grid, double x)
{
  if (x < -HAIR || x > grid->width + HAIR)
    return;
  for (guint i = 0; i < grid->studs->len; i++)
    if (fabs (g_array_index (grid->studs, double, i) - x) < HAIR / 2)
      return;
  g_array_append_val (grid->studs, x);
}

static void
add_studs (Grid *grid, const CwStuds *studs)
{
  const CwList *items = grid->elevation->items;

  for (gint64 x = 0; x / 1e9 <= grid->width + HAIR; x += studs->spacing)
    add_stud (grid, x / 1e9);
  add_stud (grid, grid->width);
  for (gsize i = 0; i < cw_list_length (items); i++)
    {
      const CwNode *item = cw_list_at (items, i);
      const CwOpening *opening = (const CwOpening *) item;

      if (!cw_node_is_opening (item))
        continue;
      add_stud (grid, opening->x / 1e9);
      add_stud (grid, (opening->x + opening->width) / 1e9);
    }
}

typedef struct
{
  double left, bottom, right, top;
} Extent;

static Extent
extent_of (const GEOSGeometry *shape)
{
  Extent extent;

  GEOSGeom_getXMin (shape, &extent.left);
  GEOSGeom_getYMin (shape, &extent.bottom);
  GEOSGeom_getXMax (shape, &extent.right);
  GEOSGeom_getYMax (shape, &extent.top);
  return extent;
}

static guint
fasteners_on_spans (const Grid *grid, const GArray *spans)
{
  guint n = 0;

  for (guint i = 0; i < spans->len; i++)
    {
      const SlowSpan *span = &g_array_index (spans, SlowSpan, i);
      const double between = span->high - span->low - 2 * grid->edge;

      /* The very tip of a piece. */
      if (span->high - span->low < LEAST_HELD)
        continue;
      n += (guint) MAX (2, ceil (between / grid->spacing - 1e-6) + 1);
    }
  return n;
}

/* Beside a jamb it is the side with more wall that is fastened. */
static void
fasten_at (Grid *grid, const GEOSGeometry *part, const Extent *extent,
           double stud)
{
  const double x
      = CLAMP (stud, extent->left + HAIR, extent->right - HAIR);
  g_autoptr (GArray) left
      = slow_spans (part, TRUE, MAX (x - HAIR, extent->left + HAIR),
                    extent->bottom, extent->top);
  g_autoptr (GArray) right
      = slow_spans (part, TRUE, MIN (x + HAIR, extent->right - HAIR),
                    extent->bottom, extent->top);
  const double more = slow_spans_length (left) - slow_spans_length (right);
  const guint on_left = fasteners_on_spans (grid, left);
  const guint on_right = fasteners_on_spans (grid, right);

  if (fabs (more) < NEAR)
    grid->panels->n_fasteners += MAX (on_left, on_right);
  else
    grid->panels->n_fasteners += more > 0 ? on_left : on_right;
}

static void
fasten (Grid *grid, const GEOSGeometry *part, const Extent *extent)
{
  for (guint i = 0; i < grid->studs->len; i++)
    {
      const double x = g_array_index (grid->studs, double, i);

      if (x > extent->left - grid->joint - HAIR / 2
          && x < extent->right + grid->joint + HAIR / 2)
        fasten_at (grid, part, extent, x);
    }
}

static gboolean
is_on_blank (const Extent *extent, double ax, double ay, double bx, double by)
{
  return (fabs (ax - extent->left) < NEAR && fabs (bx - extent->left) < NEAR)
         || (fabs (ax - extent->right) < NEAR
             && fabs (bx - extent->right) < NEAR)
         || (fabs (ay - extent->bottom) < NEAR
             && fabs (by - extent->bottom) < NEAR)
         || (fabs (ay - extent->top) < NEAR && fabs (by - extent->top) < NEAR);
}

/* The ring's length that does not bound the blank. */
static double
cuts_of_ring (const GEOSGeometry *ring, const Extent *extent)
{
  const GEOSCoordSequence *sequence = GEOSGeom_getCoordSeq (ring);
  unsigned int n = 0;
  double length = 0;

  GEOSCoordSeq_getSize (sequence, &n);
  for (unsigned int i = 0; i + 1 < n; i++)
    {
      double ax, ay, bx, by;

      GEOSCoordSeq_getXY (sequence, i, &ax, &ay);
      GEOSCoordSeq_getXY (sequence, i + 1, &bx, &by);
      if (!is_on_blank (extent, ax, ay, bx, by))
        length += hypot (bx - ax, by - ay);
    }
  return length;
}

static double
cuts_of_part (const GEOSGeometry *part, const Extent *extent)
{
  double length = cuts_of_ring (GEOSGetExteriorRing (part), extent);

  for (int i = 0; i < GEOSGetNumInteriorRings (part); i++)
    length += cuts_of_ring (GEOSGetInteriorRingN (part, i), extent);
  return length;
}

/* TRUE when a hole goes through @part; its cuts are added. */
static gboolean
cut_holes (Grid *grid, const GEOSGeometry *part)
{
  gboolean is_holed = FALSE;

  for (guint i = 0; i < grid->holes->len; i++)
    {
      GEOSGeometry *common = GEOSIntersection (grid->holes->pdata[i], part);
      GEOSGeometry *rim = GEOSBoundary (grid->holes->pdata[i]);
      GEOSGeometry *inside = GEOSIntersection (rim, part);

      is_holed = is_holed || slow_area (common) > NEAR * NEAR;
      grid->panels->own_cuts += length_of (inside);
      GEOSGeom_destroy (inside);
      GEOSGeom_destroy (rim);
      GEOSGeom_destroy (common);
    }
  return is_holed;
}

static void
add_part (Grid *grid, const GEOSGeometry *part)
{
  const Extent extent = extent_of (part);
  const double area = slow_area (part);
  const double whole = grid->length * grid->across;
  gboolean is_holed;

  if (area < NEAR * NEAR)
    return;
  is_holed = cut_holes (grid, part);
  grid->panels->placed += area;
  grid->panels->own_cuts += cuts_of_part (part, &extent);
  if (!is_holed && fabs (area - whole) < HAIR)
    grid->panels->n_whole++;
  else
    grid->panels->n_cut++;
  fasten (grid, part, &extent);
}

static void
add_cell (Grid *grid, double left, double bottom)
{
  GEOSGeometry *cell = slow_box (left, bottom, left + grid->length,
                                 bottom + grid->across);
  GEOSGeometry *parts = GEOSIntersection (grid->net, cell);

  for (int i = 0; i < GEOSGetNumGeometries (parts); i++)
    {
      const GEOSGeometry *part = GEOSGetGeometryN (parts, i);

      if (GEOSGeomTypeId (part) == GEOS_POLYGON && !GEOSisEmpty (part))
        add_part (grid, part);
    }
  GEOSGeom_destroy (parts);
  GEOSGeom_destroy (cell);
}

/* What stands on both sides of the joint that begins at @at. */
static double
joint_at (const Grid *grid, gboolean is_upright, double at, double low,
          double high)
{
  g_autoptr (GArray) before
      = slow_spans (grid->net, is_upright, at - HAIR, low, high);
  g_autoptr (GArray) after = slow_spans (
      grid->net, is_upright, at + grid->joint + HAIR, low, high);

  return slow_spans_common (before, after);
}

static gboolean
is_in_joint (const Grid *grid, double x)
{
  return fmod (x, grid->length + grid->joint) > grid->length - HAIR
         && x < grid->width - HAIR;
}

static void
look_for_shifts (Grid *grid, double bottom, double top)
{
  GEOSGeometry *band = slow_box (-1, bottom, grid->width + 1, top);
  GEOSGeometry *parts = GEOSIntersection (grid->net, band);

  for (int i = 0; i < GEOSGetNumGeometries (parts); i++)
    {
      const GEOSGeometry *part = GEOSGetGeometryN (parts, i);
      const Extent extent = extent_of (part);

      if (GEOSGeomTypeId (part) == GEOS_POLYGON
          && (is_in_joint (grid, extent.left)
              || is_in_joint (grid, extent.right)))
        grid->panels->shifted = TRUE;
    }
  GEOSGeom_destroy (parts);
  GEOSGeom_destroy (band);
}

static void
add_course (Grid *grid, double bottom)
{
  const double top = MIN (bottom + grid->across, grid->height);

  look_for_shifts (grid, bottom, top);
  for (double left = 0; left < grid->width;
       left += grid->length + grid->joint)
    {
      add_cell (grid, left, bottom);
      if (left + grid->length + grid->joint < grid->width)
        grid->panels->head
            += joint_at (grid, TRUE, left + grid->length, bottom, top);
    }
  if (bottom + grid->across + grid->joint < grid->height)
    grid->panels->bed
        += joint_at (grid, FALSE, bottom + grid->across, 0, grid->width);
}

static void
measure_wall (Grid *grid)
{
  GEOSGeometry *outline = slow_outline (grid->elevation);
  const Extent extent = extent_of (outline);

  grid->width = extent.right;
  grid->height = extent.top;
  GEOSGeom_destroy (outline);
}

SlowPanels
slow_panels (const CwElevation *elevation, const CwBuildup *buildup)
{
  const CwPanel *panel = cw_list_at (buildup->panels, 0);
  const CwFastener *fastener = (const CwFastener *) buildup->fastener;
  SlowPanels panels = { 0 };
  g_autoptr (GArray) studs = g_array_new (FALSE, FALSE, sizeof (double));
  g_autoptr (GPtrArray) holes = holes_of (elevation);
  Grid grid = { .elevation = elevation,
                .net = slow_net (elevation),
                .length = panel->length / 1e9,
                .across = panel->height / 1e9,
                .joint = panel->joint / 1e9,
                .edge = fastener->edge / 1e9,
                .spacing = fastener->spacing / 1e9,
                .studs = studs,
                .holes = holes,
                .panels = &panels };

  measure_wall (&grid);
  add_studs (&grid, (const CwStuds *) buildup->studs);
  for (double bottom = 0; bottom < grid.height;
       bottom += grid.across + grid.joint)
    add_course (&grid, bottom);
  GEOSGeom_destroy (grid.net);
  return panels;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "slow-layers.h"

#include <math.h>

#include "slow-spans.h"

/* m: beside a line. */
#define HAIR 1e-9
/* Fields of a wall, either way, that are tried for control joints. */
#define MOST_FIELDS 40

const CwBuildup *
slow_buildup (const CwProject *project)
{
  return cw_list_at (project->buildups, 0);
}

static double
decimal (CwDecimal value)
{
  return (double) value / 1e6;
}

static double
more_by (double amount, CwDecimal percent)
{
  return amount + amount * decimal (percent) / 100;
}

static double
bands_of (const CwElevation *elevation)
{
  double area = 0;

  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    {
      const CwNode *item = cw_list_at (elevation->items, i);
      const CwBand *band = (const CwBand *) item;

      if (item->type == &cw_band_type)
        area += band->width / 1e9
                * (band->height / 1e9 + 2 * band->projection / 1e9);
    }
  return area;
}

/* The strip that begins at @bottom: as long as the wall is wide in it, and
 * round the right end where the outside corner stands. */
static double
strip_length (const GEOSGeometry *outline, const CwBarrier *barrier,
              double bottom, double corner_top)
{
  GEOSGeometry *band = slow_box (-100, bottom, 1000,
                                 bottom + barrier->roll_width / 1e9);
  GEOSGeometry *part = GEOSIntersection (outline, band);
  double left, right;

  GEOSGeom_getXMin (part, &left);
  GEOSGeom_getXMax (part, &right);
  GEOSGeom_destroy (part);
  GEOSGeom_destroy (band);
  return right - left
         + (bottom < corner_top - HAIR ? barrier->wrap / 1e9 : 0);
}

static double
barrier_of (const CwElevation *elevation, const CwBarrier *barrier,
            double corner_top)
{
  GEOSGeometry *outline = slow_outline (elevation);
  const double step = (barrier->roll_width - barrier->lap) / 1e9;
  double height, length = 0;
  int n;

  GEOSGeom_getYMax (outline, &height);
  n = MAX (1, (int) ceil ((height - barrier->lap / 1e9) / step - HAIR));
  for (int i = 0; i < n; i++)
    length += strip_length (outline, barrier, i * step, corner_top);
  GEOSGeom_destroy (outline);
  return length;
}

static gboolean
fields_are_small (const CwLimits *limits, double width, double height)
{
  const double most = 1 + HAIR;

  return MAX (width, height) <= limits->control_side / 1e9 * most
         && width * height <= decimal (limits->control_area) * most
         && MAX (width, height)
                <= MIN (width, height) * decimal (limits->control_ratio)
                       * most;
}

/* Every number of columns and rows is tried. */
static void
best_fields (const CwLimits *limits, double width, double height,
             int *n_columns, int *n_rows)
{
  double best = G_MAXDOUBLE;

  for (int rows = 1; rows <= MOST_FIELDS; rows++)
    for (int columns = 1; columns <= MOST_FIELDS; columns++)
      {
        const double length
            = (columns - 1) * height + (rows - 1) * width;

        if (length < best - HAIR
            && fields_are_small (limits, width / columns, height / rows))
          {
            best = length;
            *n_columns = columns;
            *n_rows = rows;
          }
      }
  g_assert_cmpfloat (best, <, G_MAXDOUBLE);
}

static double
line_on (const GEOSGeometry *net, gboolean is_upright, double at)
{
  /* To whole nm, as a line of the drawing stands; with wall on both sides. */
  const double line = round (at * 1e9) / 1e9;
  g_autoptr (GArray) before
      = slow_spans (net, is_upright, line - HAIR, -100, 1000);
  g_autoptr (GArray) after
      = slow_spans (net, is_upright, line + HAIR, -100, 1000);

  return slow_spans_common (before, after);
}

static double
control_of (const CwElevation *elevation, const CwLimits *limits)
{
  GEOSGeometry *net = slow_net (elevation);
  GEOSGeometry *outline = slow_outline (elevation);
  double width, height, length = 0;
  int columns = 1, rows = 1;

  GEOSGeom_getXMax (outline, &width);
  GEOSGeom_getYMax (outline, &height);
  best_fields (limits, width, height, &columns, &rows);
  for (int i = 1; i < columns; i++)
    length += line_on (net, TRUE, width * i / columns);
  for (int i = 1; i < rows; i++)
    length += line_on (net, FALSE, height * i / rows);
  GEOSGeom_destroy (outline);
  GEOSGeom_destroy (net);
  return length;
}

static double
starter_of (const CwElevation *elevation)
{
  GEOSGeometry *net = slow_net (elevation);
  g_autoptr (GArray) spans = slow_spans (net, FALSE, HAIR, -100, 1000);
  const double length = slow_spans_length (spans);

  GEOSGeom_destroy (net);
  return length;
}

static void
add_wet_layers (SlowLayers *layers, const CwBuildup *buildup)
{
  const CwPanel *panel = cw_list_at (buildup->panels, 0);
  const CwJointMortar *mortar = (const CwJointMortar *) buildup->joint_mortar;
  const CwBaseCoat *coat = (const CwBaseCoat *) buildup->base_coat;
  const CwFinish *finish = (const CwFinish *) buildup->finish;
  const double thickness = panel->thickness / 1e9;
  const double joints = layers->panels.bed + layers->panels.head;

  layers->mortar
      = layers->mortared * thickness * (panel->joint / 1e9) * 1000;
  layers->mortar_water = more_by (layers->mortar, mortar->waste)
                         / decimal (mortar->yield) * decimal (mortar->water);
  layers->base_coat = layers->coated * decimal (coat->use);
  layers->coat_water = more_by (layers->base_coat, coat->waste)
                       / decimal (coat->bag) * decimal (coat->water);
  layers->finish = layers->coated * decimal (finish->use);
  layers->wetting = 2 * joints * thickness * decimal (mortar->wetting)
                    + layers->coated * decimal (coat->wetting);
}

SlowLayers
slow_layers (const CwProject *project, const CwElevation *elevation)
{
  const CwBuildup *buildup = slow_buildup (project);
  const CwMesh *mesh = (const CwMesh *) buildup->mesh;
  SlowLayers layers = { .wall = slow_estimate (elevation, 0),
                        .panels = slow_panels (elevation, buildup),
                        .stub_outs = slow_stub_outs (elevation),
                        .bands = bands_of (elevation) };
  const double sides
      = layers.wall.head + layers.wall.jamb + layers.wall.sill;
  const double corner = layers.wall.edges[CW_EDGE_OUTSIDE_CORNER];

  /* All openings of a random elevation have one depth. */
  layers.reveals = sides * 0.09;
  layers.coated = layers.wall.net + layers.reveals + layers.bands;
  layers.mortared = layers.panels.bed + layers.panels.head + sides;
  layers.barrier = barrier_of (
      elevation, (const CwBarrier *) buildup->barrier, corner);
  layers.mesh = (layers.wall.net + layers.bands) * (mesh->roll_width / 1e9)
                / ((mesh->roll_width - mesh->lap) / 1e9);
  layers.mesh_edges = sides + layers.stub_outs;
  layers.sealant = sides + layers.stub_outs
                   + layers.wall.edges[CW_EDGE_ABUTMENT];
  layers.corner = corner + layers.wall.jamb + layers.wall.sill;
  layers.drip = layers.wall.head;
  layers.starter = starter_of (elevation);
  layers.control
      = control_of (elevation, (const CwLimits *) project->limits);
  add_wet_layers (&layers, buildup);
  return layers;
}

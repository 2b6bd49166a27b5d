/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where coats and mesh lie: what is measured by the rule, reveals, bands, and
 * the pieces at the corners of openings.
 */
#include "cw-trace-private.h"

#include <math.h>

/* What of openings up to @limit m² is measured beyond the @faces, by half. */
static void
trace_half_openings (CwTrace *trace, const CwRegion *faces, double limit)
{
  g_autoptr (CwRegion) unopened
      = cw_estimate_less_openings_over (trace->wall, limit);
  CwRegion *openings = cw_region_subtract (unopened, faces);

  cw_trace_region (trace, openings, cw_region_area (openings) / 2);
}

/* Without the reveals that a rule may add. */
void
cw_trace_measured_faces (CwTrace *trace)
{
  const CwMeasure *measure = trace->wall->measure;
  const double limit = cw_estimate_through_limit (measure);
  const double half_limit = cw_estimate_half_limit (measure);
  CwRegion *faces
      = limit > 0 ? cw_estimate_less_openings_over (trace->wall, limit)
                  : cw_region_ref (trace->wall->net);

  if (half_limit > 0)
    trace_half_openings (trace, faces, half_limit);
  cw_trace_region (trace, faces, cw_region_area (faces));
}

/* @all: else those that IS 1200 measures. */
static void
trace_reveals (CwTrace *trace, gboolean all)
{
  const CwWall *wall = trace->wall;
  g_autoptr (CwRegion) opened = cw_estimate_opened_outline (wall);

  for (gsize i = 0; i < cw_region_n_loops (opened); i++)
    {
      CwLoop loop = cw_region_loop (opened, i);

      for (gsize j = 0; j < loop.n_sides; j++)
        {
          CwOpeningSide side;
          guint index;
          const CwOpening *opening;

          if (!cw_estimate_opening_of_tag (loop.sides[j].tag, &index, &side)
              || (!all && !cw_estimate_is1200_takes_reveals (wall, index)))
            continue;
          opening = g_array_index (wall->openings, CwWallOpening, index)
                        .opening;
          if (side == CW_OPENING_SIDE_SILL
              && opening->node.type == &cw_door_type)
            continue;
          cw_trace_side (trace, &loop.sides[j], cw_loop_end (&loop, j),
                         cw_length_in_m (opening->reveal));
        }
    }
}

void
cw_trace_reveals (CwTrace *trace)
{
  trace_reveals (trace, TRUE);
}

void
cw_trace_measured (CwTrace *trace)
{
  cw_trace_measured_faces (trace);
  if (trace->wall->measure->rule == CW_MEASURE_IS1200)
    trace_reveals (trace, FALSE);
}

/* The face with the two returns that are seen edge on. */
void
cw_trace_band_faces (CwTrace *trace)
{
  for (guint i = 0; i < trace->wall->bands->len; i++)
    {
      const CwBand *band = trace->wall->bands->pdata[i];
      CwBox box = { band->x, band->y, band->x + band->width,
                    band->y + band->height };

      cw_trace_region (trace, cw_region_new_box (&box, 0),
                       cw_length_in_m (band->width)
                           * (cw_length_in_m (band->height)
                              + 2 * cw_length_in_m (band->projection)));
    }
}

/* A rectangle across the corner's diagonal, its long side against the
 * corner: outward is @right and @up of it, ±1. */
static void
trace_corner (CwTrace *trace, CwPoint corner, int right, int up)
{
  const CwMesh *mesh = (const CwMesh *) trace->wall->buildup->mesh;
  double half = (double) mesh->corner_height / 2 * M_SQRT1_2;
  double out = (double) mesh->corner_width * M_SQRT1_2;
  CwLength x1 = corner.x + llround (right * half);
  CwLength y1 = corner.y - llround (up * half);
  CwLength x2 = corner.x - llround (right * half);
  CwLength y2 = corner.y + llround (up * half);
  CwLength dx = llround (right * out), dy = llround (up * out);
  CwSide sides[] = {
    cw_side_straight (cw_point (x1, y1), 0),
    cw_side_straight (cw_point (x1 + dx, y1 + dy), 0),
    cw_side_straight (cw_point (x2 + dx, y2 + dy), 0),
    cw_side_straight (cw_point (x2, y2), 0),
  };

  cw_trace_region (trace, cw_region_new_loop (sides, G_N_ELEMENTS (sides)),
                   1);
}

static void
trace_opening_corners (CwTrace *trace, const CwOpening *opening,
                       guint n_corners)
{
  CwLength right = opening->x + opening->width;
  CwLength top = opening->y + opening->height;

  if (n_corners >= 2)
    {
      trace_corner (trace, cw_point (opening->x, top), -1, 1);
      trace_corner (trace, cw_point (right, top), 1, 1);
    }
  if (n_corners >= 4)
    {
      trace_corner (trace, cw_point (opening->x, opening->y), -1, -1);
      trace_corner (trace, cw_point (right, opening->y), 1, -1);
    }
}

void
cw_trace_mesh_corners (CwTrace *trace)
{
  const GArray *sides = trace->takeoff->figures->sides;

  for (guint i = 0; i < sides->len; i++)
    trace_opening_corners (
        trace,
        g_array_index (trace->wall->openings, CwWallOpening, i).opening,
        g_array_index (sides, CwOpeningSides, i).n_corners);
}

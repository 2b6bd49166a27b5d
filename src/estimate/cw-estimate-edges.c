/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The outline's sides by kind, and decorative bands.
 */
#include "cw-estimate-private.h"

static const char *const edge_keys[CW_N_EDGES] = {
  [CW_EDGE_BASE] = "edge.base",
  [CW_EDGE_EAVE] = "edge.eave",
  [CW_EDGE_RAKE] = "edge.rake",
  [CW_EDGE_OUTSIDE_CORNER] = "edge.outside-corner",
  [CW_EDGE_INSIDE_CORNER] = "edge.inside-corner",
  [CW_EDGE_ABUTMENT] = "edge.abutment",
  [CW_EDGE_JOINT] = "edge.joint",
};

void
cw_estimate_edges (CwWallEstimate *estimate)
{
  CwWallFigures *figures = estimate->figures;

  for (guint edge = 0; edge < CW_N_EDGES; edge++)
    {
      figures->edges[edge]
          = cw_region_length_of (estimate->wall->outline, edge);
      cw_quantity_step (cw_quantity_add (estimate->quantities, edge_keys[edge],
                                         figures->edges[edge]),
                        N_ ("length of the outline's sides of this kind"));
    }
}

void
cw_estimate_bands (CwWallEstimate *estimate)
{
  const GPtrArray *bands = estimate->wall->bands;
  double length = 0, faces = 0, returns = 0;

  for (guint i = 0; i < bands->len; i++)
    {
      const CwBand *band = bands->pdata[i];
      double width = cw_length_in_m (band->width);

      length += width;
      faces += width * cw_length_in_m (band->height);
      returns += 2 * width * cw_length_in_m (band->projection);
    }
  estimate->figures->bands = faces + returns;
  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "band.length", length),
      N_ ("{0} bands along the wall"), { bands->len, "" });
  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "band.area", faces + returns),
      N_ ("faces {0} and two returns each {1}"), { faces, "m²" },
      { returns, "m²" });
}

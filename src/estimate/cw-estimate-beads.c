/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Beads at corners, base and heads.
 */
#include "cw-estimate-private.h"

void
cw_estimate_beads (CwWallEstimate *estimate)
{
  CwWallFigures *figures = estimate->figures;
  double corners = figures->edges[CW_EDGE_OUTSIDE_CORNER];
  double base = cw_region_length_of (estimate->wall->net, CW_EDGE_BASE);

  figures->beads[CW_BEAD_CORNER] = corners + figures->jamb + figures->sill;
  figures->beads[CW_BEAD_STARTER] = base;
  figures->beads[CW_BEAD_DRIP] = figures->head;
  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "bead.corner",
                       figures->beads[CW_BEAD_CORNER]),
      N_ ("outside corners {0}, jambs {1} and sills {2}"),
      { corners, "m" }, { figures->jamb, "m" }, { figures->sill, "m" });
  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "bead.starter", base),
      N_ ("base {0} less openings and unclad areas that stand on it {1}"),
      { figures->edges[CW_EDGE_BASE], "m" },
      { figures->edges[CW_EDGE_BASE] - base, "m" });
  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "bead.drip", figures->head),
      N_ ("heads of openings"));
}

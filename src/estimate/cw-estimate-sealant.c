/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Sealant round openings and stub-outs and along abutments.
 */
#include "cw-estimate-private.h"

/* Millilitres in a joint; a cubic metre is a million of them. */
static double
joint_volume (double length, const CwSealant *sealant)
{
  return length * cw_length_in_m (sealant->width)
         * cw_length_in_m (sealant->depth) * 1e6;
}

void
cw_estimate_sealant (CwWallEstimate *estimate)
{
  const CwSealant *sealant
      = (const CwSealant *) estimate->wall->buildup->sealant;
  CwWallFigures *figures = estimate->figures;
  double openings = figures->head + figures->jamb + figures->sill;
  double abutments = figures->edges[CW_EDGE_ABUTMENT];
  double length = openings + figures->stub_outs + abutments;

  if (sealant == NULL)
    return;
  figures->sealant = joint_volume (length, sealant);
  cw_quantity_step (cw_quantity_add (estimate->quantities, "sealant.length",
                                     length),
                    N_ ("openings {0}, stub-outs {1}, abutments {2}; {3} "
                        "wide and {4} deep"),
                    { openings, "m" }, { figures->stub_outs, "m" },
                    { abutments, "m" },
                    { cw_estimate_mm (sealant->width), "mm" },
                    { cw_estimate_mm (sealant->depth), "mm" });
}

static double
cartridge (const CwNode *layer)
{
  return cw_decimal_to_double (((const CwSealant *) layer)->cartridge);
}

static CwDecimal
sealant_waste (const CwNode *layer)
{
  return ((const CwSealant *) layer)->waste;
}

void
cw_estimate_sealant_packages (CwProjectEstimate *estimate)
{
  static const CwPackaging packaging = {
    .key = "sealant.cartridges",
    .slot = CW_BUILDUP_SEALANT,
    .figure = G_STRUCT_OFFSET (CwWallFigures, sealant),
    .order_unit = N_ ("cartridge"),
    .sentence = N_ ("{0} and {1} waste, {2} a cartridge: {3} cartridges"),
    .unit = "mL",
    .size = cartridge,
    .waste = sealant_waste,
  };

  cw_estimate_add_packages (estimate, &packaging);
}

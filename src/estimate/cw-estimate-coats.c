/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Base coat and finish: mass by the area that they cover.
 */
#include "cw-estimate-private.h"

/* Reveals count once, whether or not the measuring rule has added some. */
double
cw_estimate_coated_area (const CwWallFigures *figures)
{
  return figures->measured - figures->measured_reveals + figures->reveals
         + figures->bands;
}

static double
add_mass (CwWallEstimate *estimate, const char *key, CwDecimal use)
{
  const CwWallFigures *figures = estimate->figures;
  double area = cw_estimate_coated_area (figures);
  double mass = area * cw_decimal_to_double (use);

  cw_quantity_step (cw_quantity_add (estimate->quantities, key, mass),
                    N_ ("measured {0}, reveals {1} and bands {2}: {3} by "
                        "{4}"),
                    { figures->measured - figures->measured_reveals, "m²" },
                    { figures->reveals, "m²" }, { figures->bands, "m²" },
                    { area, "m²" }, { cw_decimal_to_double (use), "kg/m²" });
  return mass;
}

static void
add_base_coat_water (CwWallEstimate *estimate, const CwBaseCoat *coat)
{
  double waste = cw_decimal_to_double (coat->waste);
  double water = cw_decimal_to_double (coat->water);
  double bags = cw_estimate_with_waste (estimate->figures->base_coat,
                                        coat->waste)
                / cw_decimal_to_double (coat->bag);

  cw_quantity_step (cw_quantity_add (estimate->quantities, "basecoat.water",
                                     bags * water),
                    N_ ("{0} and {1} waste are {2} bags, {3} of water each"),
                    { estimate->figures->base_coat, "kg" }, { waste, "%" },
                    { bags, "" }, { water, "L" });
}

void
cw_estimate_coats (CwWallEstimate *estimate)
{
  const CwBuildup *buildup = estimate->wall->buildup;
  const CwBaseCoat *coat = (const CwBaseCoat *) buildup->base_coat;
  const CwFinish *finish = (const CwFinish *) buildup->finish;

  if (coat)
    {
      estimate->figures->base_coat
          = add_mass (estimate, "basecoat.mass", coat->use);
      add_base_coat_water (estimate, coat);
    }
  if (finish)
    estimate->figures->finish
        = add_mass (estimate, "finish.mass", finish->use);
}

static double
coat_bag (const CwNode *layer)
{
  return cw_decimal_to_double (((const CwBaseCoat *) layer)->bag);
}

static CwDecimal
coat_waste (const CwNode *layer)
{
  return ((const CwBaseCoat *) layer)->waste;
}

static double
finish_pail (const CwNode *layer)
{
  return cw_decimal_to_double (((const CwFinish *) layer)->pail);
}

static CwDecimal
finish_waste (const CwNode *layer)
{
  return ((const CwFinish *) layer)->waste;
}

void
cw_estimate_coat_packages (CwProjectEstimate *estimate)
{
  static const CwPackaging bags = {
    .key = "basecoat.bags",
    .slot = CW_BUILDUP_BASE_COAT,
    .figure = G_STRUCT_OFFSET (CwWallFigures, base_coat),
    .order_unit = N_ ("bag"),
    .sentence = N_ ("{0} and {1} waste, {2} a bag: {3} bags"),
    .unit = "kg",
    .size = coat_bag,
    .waste = coat_waste,
    .mass = coat_bag,
  };
  static const CwPackaging pails = {
    .key = "finish.pails",
    .slot = CW_BUILDUP_FINISH,
    .figure = G_STRUCT_OFFSET (CwWallFigures, finish),
    .order_unit = N_ ("pail"),
    .sentence = N_ ("{0} and {1} waste, {2} a pail: {3} pails"),
    .unit = "kg",
    .size = finish_pail,
    .waste = finish_waste,
    .mass = finish_pail,
  };

  cw_estimate_add_packages (estimate, &bags);
  cw_estimate_add_packages (estimate, &pails);
}

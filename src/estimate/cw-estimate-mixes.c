/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Mixes a day, and water.
 *
 * A mix is no more than the crew lays before it stiffens: pot life by laying
 * rate, in whole bags where that is one at least.
 */
#include "cw-estimate-private.h"

#include <math.h>

typedef struct
{
  const char *key;
  double bags_an_hour;        /* that the crew lays */
  gint64 pot_life;            /* min */
  const CwLabour *labour;
} Mixing;

static double
bags_a_mix (double laid)
{
  return laid >= 1 ? floor (laid + 1e-9) : laid;
}

static void
add_mixes (CwWallEstimate *estimate, const Mixing *mixing)
{
  double laid = mixing->bags_an_hour * (double) mixing->pot_life / 60;
  double mix = bags_a_mix (laid);
  double hours = cw_decimal_to_double (mixing->labour->day);
  double n = mix > 0 ? ceil (mixing->bags_an_hour * hours / mix - 1e-9) : 0;

  if (n > 0)
    cw_quantity_step (
        cw_quantity_add (estimate->quantities, mixing->key, n),
        N_ ("{0} bags an hour, pot life {1} min: {2} bags are laid in it, "
            "{3} bags a mix; {4} a day"),
        { mixing->bags_an_hour, "" }, { (double) mixing->pot_life, "" },
        { laid, "" }, { mix, "" }, { hours, "h" });
}

static void
add_mortar_mixes (CwWallEstimate *estimate, const CwLabour *labour)
{
  const CwBuildup *buildup = estimate->wall->buildup;
  const CwJointMortar *mortar = (const CwJointMortar *) buildup->joint_mortar;
  const CwPanel *panel = cw_list_at (buildup->panels, 0);
  double litres = cw_estimate_with_waste (
      cw_decimal_to_double (labour->joints)
          * cw_length_in_m (panel->thickness) * cw_length_in_m (panel->joint)
          * 1000,
      mortar->waste);

  add_mixes (estimate,
             &(Mixing) { "mortar.mixes",
                         litres / cw_decimal_to_double (mortar->yield),
                         mortar->pot_life, labour });
}

static void
add_coat_mixes (CwWallEstimate *estimate, const CwLabour *labour)
{
  const CwBaseCoat *coat
      = (const CwBaseCoat *) estimate->wall->buildup->base_coat;
  double kilograms = cw_estimate_with_waste (
      cw_decimal_to_double (labour->base_coat)
          * cw_decimal_to_double (coat->use),
      coat->waste);

  add_mixes (estimate, &(Mixing) { "basecoat.mixes",
                                   kilograms / cw_decimal_to_double (coat->bag),
                                   coat->pot_life, labour });
}

static void
add_all_water (CwWallEstimate *estimate, double wetting)
{
  const GPtrArray *lines = estimate->quantities;
  double mortar = cw_quantities_amount (lines, "mortar.water");
  double coat = cw_quantities_amount (lines, "basecoat.water");

  cw_quantity_step (cw_quantity_add (estimate->quantities, "water.total",
                                     mortar + coat + wetting),
                    N_ ("for joint mortar {0}, base coat {1} and wetting "
                        "{2}"),
                    { mortar, "L" }, { coat, "L" }, { wetting, "L" });
}

static void
add_wetting (CwWallEstimate *estimate)
{
  const CwBuildup *buildup = estimate->wall->buildup;
  const CwJointMortar *mortar = (const CwJointMortar *) buildup->joint_mortar;
  const CwBaseCoat *coat = (const CwBaseCoat *) buildup->base_coat;
  const CwPanel *panel = cw_list_at (buildup->panels, 0);
  const CwWallFigures *figures = estimate->figures;
  double faces = mortar ? 2 * (figures->bed_joints + figures->head_joints)
                              * cw_length_in_m (panel->thickness)
                        : 0;
  double wall = coat ? cw_estimate_coated_area (figures) : 0;
  double on_faces = mortar ? cw_decimal_to_double (mortar->wetting) : 0;
  double on_wall = coat ? cw_decimal_to_double (coat->wetting) : 0;
  double water = faces * on_faces + wall * on_wall;

  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "water.wetting", water),
      N_ ("both faces of joints {0} by {1}, wall {2} by {3}"),
      { faces, "m²" }, { on_faces, "L/m²" }, { wall, "m²" },
      { on_wall, "L/m²" });
  add_all_water (estimate, water);
}

void
cw_estimate_mixes (CwWallEstimate *estimate)
{
  const CwBuildup *buildup = estimate->wall->buildup;
  const CwLabour *labour = (const CwLabour *) buildup->labour;

  if (buildup->joint_mortar || buildup->base_coat)
    add_wetting (estimate);
  if (labour && buildup->joint_mortar)
    add_mortar_mixes (estimate, labour);
  if (labour && buildup->base_coat)
    add_coat_mixes (estimate, labour);
}

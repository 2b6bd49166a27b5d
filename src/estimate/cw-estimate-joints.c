/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Joints between panels and the mortar in them.
 */
#include "cw-estimate-private.h"

#include <math.h>

/* Joints may lean along a rake. */
static double
joint_length (const CwJoint *joint)
{
  return hypot (cw_length_in_m (joint->to.x - joint->from.x),
                cw_length_in_m (joint->to.y - joint->from.y));
}

void
cw_estimate_joints (CwWallEstimate *estimate)
{
  CwWallFigures *figures = estimate->figures;
  const GArray *joints = estimate->layout->joints;

  for (guint i = 0; i < joints->len; i++)
    {
      const CwJoint *joint = &g_array_index (joints, CwJoint, i);

      if (joint->is_bed)
        figures->bed_joints += joint_length (joint);
      else
        figures->head_joints += joint_length (joint);
    }
  cw_quantity_step (cw_quantity_add (estimate->quantities, "joint.bed",
                                     figures->bed_joints),
                    N_ ("level joints where two pieces meet"));
  cw_quantity_step (cw_quantity_add (estimate->quantities, "joint.head",
                                     figures->head_joints),
                    N_ ("upright joints where two pieces meet"));
}

static const CwJointMortar *
mortar_of (const CwNode *layer)
{
  return (const CwJointMortar *) layer;
}

static double
bag_yield (const CwNode *layer)
{
  return cw_decimal_to_double (mortar_of (layer)->yield);
}

static double
bag_mass (const CwNode *layer)
{
  return cw_decimal_to_double (mortar_of (layer)->bag);
}

static CwDecimal
mortar_waste (const CwNode *layer)
{
  return mortar_of (layer)->waste;
}

static void
add_volume (CwWallEstimate *estimate, const CwPanel *panel)
{
  CwWallFigures *figures = estimate->figures;
  double edges = figures->head + figures->jamb + figures->sill;
  double joints = figures->bed_joints + figures->head_joints;

  /* A cubic metre is 1000 litres. */
  figures->mortar = (joints + edges) * cw_length_in_m (panel->thickness)
                    * cw_length_in_m (panel->joint) * 1000;
  cw_quantity_step (cw_quantity_add (estimate->quantities, "mortar.volume",
                                     figures->mortar),
                    N_ ("bed joints {0}, head joints {1} and edges at "
                        "openings {2}, {3} thick and {4} wide"),
                    { figures->bed_joints, "m" },
                    { figures->head_joints, "m" }, { edges, "m" },
                    { cw_estimate_mm (panel->thickness), "mm" },
                    { cw_estimate_mm (panel->joint), "mm" });
}

void
cw_estimate_mortar (CwWallEstimate *estimate)
{
  const CwBuildup *buildup = estimate->wall->buildup;
  const CwNode *layer = buildup->joint_mortar;
  double bags, water;

  if (layer == NULL)
    return;
  add_volume (estimate, cw_list_at (buildup->panels, 0));
  bags = cw_estimate_with_waste (estimate->figures->mortar,
                                 mortar_waste (layer))
         / bag_yield (layer);
  water = cw_decimal_to_double (mortar_of (layer)->water);
  cw_quantity_step (cw_quantity_add (estimate->quantities, "mortar.water",
                                     bags * water),
                    N_ ("{0} and {1} waste are {2} bags, {3} of water each"),
                    { estimate->figures->mortar, "L" },
                    { cw_decimal_to_double (mortar_waste (layer)), "%" },
                    { bags, "" }, { water, "L" });
}

void
cw_estimate_mortar_packages (CwProjectEstimate *estimate)
{
  static const CwPackaging packaging = {
    .key = "mortar.bags",
    .slot = CW_BUILDUP_JOINT_MORTAR,
    .figure = G_STRUCT_OFFSET (CwWallFigures, mortar),
    .order_unit = N_ ("bag"),
    .sentence = N_ ("{0} and {1} waste, {2} a bag: {3} bags"),
    .unit = "L",
    .size = bag_yield,
    .waste = mortar_waste,
    .mass = bag_mass,
  };

  cw_estimate_add_packages (estimate, &packaging);
}

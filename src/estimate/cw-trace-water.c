/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where water goes: into the joints and over the wall, L by L.
 */
#include "cw-trace-private.h"

/* From @first on, the measured amount becomes L. */
static void
pour (CwTrace *trace, guint first, double litres_each)
{
  for (guint i = first; i < trace->items->len; i++)
    g_array_index (trace->items, CwTraceItem, i).share *= litres_each;
}

/* L of mixing water for a metre of joint. */
static double
mixed_in_joint (const CwBuildup *buildup)
{
  const CwPanel *panel = cw_list_at (buildup->panels, 0);
  const CwJointMortar *mortar = (const CwJointMortar *) buildup->joint_mortar;
  const double litres = cw_length_in_m (panel->thickness)
                        * cw_length_in_m (panel->joint) * 1000;

  return cw_estimate_with_waste (litres, mortar->waste)
         / cw_decimal_to_double (mortar->yield)
         * cw_decimal_to_double (mortar->water);
}

static void
pour_into_joints (CwTrace *trace, const CwBuildup *buildup,
                  gboolean with_mixing)
{
  const CwPanel *panel = cw_list_at (buildup->panels, 0);
  const CwJointMortar *mortar = (const CwJointMortar *) buildup->joint_mortar;
  const double mixed = with_mixing ? mixed_in_joint (buildup) : 0;
  guint first = trace->items->len;

  cw_trace_add (trace, CW_SHOWS_BED_JOINTS, 0);
  cw_trace_add (trace, CW_SHOWS_HEAD_JOINTS, 0);
  pour (trace, first,
        mixed
            + 2 * cw_length_in_m (panel->thickness)
                  * cw_decimal_to_double (mortar->wetting));
  first = trace->items->len;
  if (with_mixing)
    cw_trace_opening_sides (trace, CW_TRACE_ALL_SIDES);
  pour (trace, first, mixed);
}

static void
pour_over_wall (CwTrace *trace, const CwBaseCoat *coat, gboolean with_mixing)
{
  const double mixed
      = cw_estimate_with_waste (cw_decimal_to_double (coat->use), coat->waste)
        / cw_decimal_to_double (coat->bag)
        * cw_decimal_to_double (coat->water);
  const guint first = trace->items->len;

  cw_trace_add (trace, CW_SHOWS_COATED, 0);
  pour (trace, first,
        cw_decimal_to_double (coat->wetting) + (with_mixing ? mixed : 0));
}

void
cw_trace_water (CwTrace *trace, guint with_mixing)
{
  const CwBuildup *buildup = trace->wall->buildup;

  if (buildup && buildup->joint_mortar)
    pour_into_joints (trace, buildup, with_mixing != 0);
  if (buildup && buildup->base_coat)
    pour_over_wall (trace, (const CwBaseCoat *) buildup->base_coat,
                    with_mixing != 0);
}

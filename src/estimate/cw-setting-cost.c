/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a wall costs when it is set out in one of the ways there are.
 */
#include <math.h>

#include "cw-estimate-private.h"
#include "cw-setting-private.h"

CwBuildup *
cw_setting_choice_apply (const CwSettingChoice *choice,
                         const CwBuildup *buildup)
{
  CwNode *setting_out, *changed;

  g_return_val_if_fail (choice != NULL && buildup != NULL, NULL);

  setting_out = cw_node_copy (buildup->setting_out);
  cw_node_put (setting_out, "start", choice->start);
  cw_node_put (setting_out, "offset", choice->offset);
  cw_node_put (setting_out, "base", choice->base);
  cw_node_put (setting_out, "bond", choice->bond);
  cw_node_put (setting_out, "stagger", choice->stagger);
  changed = cw_node_copy (&buildup->node);
  cw_node_set_child (changed, CW_BUILDUP_SETTING_OUT, setting_out);
  cw_node_unref (setting_out);
  return (CwBuildup *) changed;
}

static double
price_of (CwDecimal price, double need, double package)
{
  return package > 0 ? cw_decimal_to_double (price) * need / package : 0;
}

static double
cost_of_layers (const CwBuildup *buildup, const CwWallFigures *figures)
{
  const CwFastener *fastener = (const CwFastener *) buildup->fastener;
  const CwJointMortar *mortar = (const CwJointMortar *) buildup->joint_mortar;
  double cost = 0;

  if (fastener)
    cost += price_of (fastener->price, figures->fasteners,
                      (double) fastener->per_box);
  if (mortar)
    cost += price_of (mortar->price,
                      cw_estimate_with_waste (figures->mortar, mortar->waste),
                      cw_decimal_to_double (mortar->yield));
  return cost;
}

static double
cost_of_panels (const CwBuildup *buildup, const CwPanelMix *mix)
{
  double cost = 0;

  for (guint i = 0; i < mix->plans->len; i++)
    {
      const CwPanel *panel = cw_list_at (buildup->panels, i);

      cost += ((const CwPanelPlan *) mix->plans->pdata[i])->n_panels
              * cw_decimal_to_double (panel->price);
    }
  return cost;
}

/* The steps of the estimate that depend on where the panels go. The edges
 * at openings are the same for every choice. */
static void
take_figures (CwSettingChoice *choice, const CwLayout *layout,
              const CwPanelMix *mix)
{
  g_autoptr (GPtrArray) quantities
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_quantity_free);
  CwWallFigures figures = { 0 };
  CwWallEstimate estimate = { .wall = layout->wall,
                              .layout = layout,
                              .mix = mix,
                              .figures = &figures,
                              .quantities = quantities };
  const CwBuildup *buildup = layout->wall->buildup;

  choice->n_panels = mix->n_panels;
  choice->n_least = mix->least;
  cw_estimate_saw (&estimate);
  cw_estimate_joints (&estimate);
  cw_estimate_mortar (&estimate);
  cw_estimate_fasteners (&estimate);
  choice->saw = cw_quantities_amount (quantities, "saw.length")
                + cw_quantities_amount (quantities, "saw.curve");
  choice->cost = cost_of_panels (buildup, mix)
                 + cost_of_layers (buildup, &figures);
}

gboolean
cw_setting_choice_measure (CwSettingChoice *choice, const CwWall *wall,
                           CwCutEffort effort, GCancellable *cancellable)
{
  g_autoptr (CwBuildup) buildup
      = cw_setting_choice_apply (choice, wall->buildup);
  g_autoptr (CwWall) changed = cw_wall_with_buildup (wall, buildup);
  g_autoptr (CwLayout) layout = cw_layout_new (changed);
  g_autoptr (CwPanelMix) mix
      = cw_estimate_panel_mix (layout, effort, NULL, cancellable);

  if (mix == NULL)
    return FALSE;
  choice->n_troubles = layout->troubles->len;
  take_figures (choice, layout, mix);
  return TRUE;
}

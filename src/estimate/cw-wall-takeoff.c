/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One wall's takeoff.
 */
#include "cw-estimate-private.h"

static CwWallFigures *
figures_new (void)
{
  CwWallFigures *figures = g_new0 (CwWallFigures, 1);

  figures->sides = g_array_new (FALSE, TRUE, sizeof (CwOpeningSides));
  return figures;
}

static void
figures_free (CwWallFigures *figures)
{
  g_array_unref (figures->sides);
  g_free (figures);
}

static void
estimate_shape (CwWallEstimate *estimate)
{
  const CwWall *wall = estimate->wall;

  for (guint i = 0; i < wall->stub_outs->len; i++)
    {
      g_autoptr (CwRegion) cut
          = cw_stub_out_shape (wall->stub_outs->pdata[i], TRUE);

      estimate->figures->stub_outs += cw_region_length (cut);
    }
  cw_estimate_openings (estimate);
  cw_estimate_wall (estimate);
  cw_estimate_edges (estimate);
}

static void
estimate_layers (CwWallEstimate *estimate)
{
  cw_estimate_panels (estimate);
  cw_estimate_saw (estimate);
  cw_estimate_joints (estimate);
  cw_estimate_mortar (estimate);
  cw_estimate_fasteners (estimate);
  cw_estimate_barrier (estimate);
  cw_estimate_coats (estimate);
  cw_estimate_mesh (estimate);
  cw_estimate_sealant (estimate);
  cw_estimate_beads (estimate);
  cw_estimate_control_joints (estimate);
}

static void
estimate_all (CwWallEstimate *estimate)
{
  cw_estimate_opening_count (estimate);
  cw_estimate_bands (estimate);
  if (estimate->wall->outline)
    estimate_shape (estimate);
  if (estimate->wall->outline && estimate->wall->buildup)
    estimate_layers (estimate);
  cw_quantities_sort (estimate->quantities);
}

/* Offcuts that travel further than the wall are the project's. */
static GPtrArray *
plans_of (const CwLayout *layout, CwCutEffort effort, const GPtrArray *former,
          GCancellable *cancellable)
{
  const CwBuildup *buildup = layout->wall->buildup;
  const gsize n = buildup ? cw_list_length (buildup->panels) : 0;
  const CwPanelWalls walls = { layout, 0, 1 };
  g_autoptr (GPtrArray) plans = g_ptr_array_new_with_free_func (
      (GDestroyNotify) cw_panel_plan_unref);

  for (guint i = 0; i < n; i++)
    {
      const CwSettingOut *setting_out
          = (const CwSettingOut *) buildup->setting_out;
      CwPanelPlan *plan = cw_panel_plan_new (
          &walls, 1, i, MIN (setting_out->offcuts, CW_OFFCUTS_ELEVATION),
          effort, former && i < former->len ? former->pdata[i] : NULL, cancellable);

      if (plan == NULL)
        return NULL;
      g_ptr_array_add (plans, plan);
    }
  return g_steal_pointer (&plans);
}

/* (transfer full): @layout and @plans are taken over. */
static CwWallTakeoff *
takeoff_of_layout (CwLayout *layout, GPtrArray *plans)
{
  CwWallTakeoff *takeoff = g_new0 (CwWallTakeoff, 1);

  g_atomic_ref_count_init (&takeoff->count);
  takeoff->wall = cw_wall_ref (layout->wall);
  takeoff->layout = layout;
  takeoff->plans = plans;
  takeoff->figures = figures_new ();
  takeoff->quantities
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_quantity_free);
  estimate_all (&(CwWallEstimate) { takeoff->wall, layout, plans,
                                    takeoff->figures, takeoff->quantities });
  return takeoff;
}

CwWallTakeoff *
cw_wall_takeoff_renew (const CwWall *wall, const CwWallTakeoff *former)
{
  CwLayout *layout = cw_layout_new (wall);

  return takeoff_of_layout (layout, plans_of (layout, CW_CUT_EFFORT_FIRST,
                                              former ? former->plans : NULL,
                                              NULL));
}

CwWallTakeoff *
cw_wall_takeoff_new (const CwWall *wall)
{
  g_return_val_if_fail (wall != NULL, NULL);

  return cw_wall_takeoff_renew (wall, NULL);
}

CwWallTakeoff *
cw_wall_takeoff_improve (const CwWallTakeoff *takeoff, CwCutEffort effort,
                         GCancellable *cancellable)
{
  GPtrArray *plans;

  if (cw_panel_plans_are_settled (takeoff->plans, effort))
    return cw_wall_takeoff_ref (takeoff);
  plans = plans_of (takeoff->layout, effort, takeoff->plans, cancellable);
  return plans ? takeoff_of_layout (cw_layout_ref (takeoff->layout), plans)
               : NULL;
}

CwWallTakeoff *
cw_wall_takeoff_ref (const CwWallTakeoff *takeoff)
{
  g_return_val_if_fail (takeoff != NULL, NULL);

  g_atomic_ref_count_inc (&((CwWallTakeoff *) takeoff)->count);
  return (CwWallTakeoff *) takeoff;
}

void
cw_wall_takeoff_unref (CwWallTakeoff *takeoff)
{
  g_return_if_fail (takeoff != NULL);

  if (!g_atomic_ref_count_dec (&takeoff->count))
    return;
  g_ptr_array_unref (takeoff->quantities);
  g_ptr_array_unref (takeoff->plans);
  figures_free (takeoff->figures);
  cw_layout_unref (takeoff->layout);
  cw_wall_unref (takeoff->wall);
  g_free (takeoff);
}

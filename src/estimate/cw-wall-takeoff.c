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
  cw_estimate_labour (estimate);
  cw_estimate_backer_rod (estimate);
  cw_estimate_mixes (estimate);
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

CwPanelMix *
cw_estimate_panel_mix (const CwLayout *layout, CwCutEffort effort,
                       const CwPanelMix *former, GCancellable *cancellable)
{
  const CwBuildup *buildup = layout->wall->buildup;
  const CwPanelWalls walls = { layout, 0, 1 };

  if (buildup == NULL)
    return NULL;
  return cw_panel_mix_new (
      &walls, 1,
      MIN (((const CwSettingOut *) buildup->setting_out)->offcuts,
           CW_OFFCUTS_ELEVATION),
      effort, former, cancellable);
}

/* (transfer full): @layout and @mix are taken over. */
static CwWallTakeoff *
takeoff_of_layout (CwLayout *layout, CwPanelMix *mix)
{
  CwWallTakeoff *takeoff = g_new0 (CwWallTakeoff, 1);

  g_atomic_ref_count_init (&takeoff->count);
  takeoff->wall = cw_wall_ref (layout->wall);
  takeoff->layout = layout;
  takeoff->mix = mix;
  takeoff->plans = mix ? g_ptr_array_ref (mix->plans) : g_ptr_array_new ();
  takeoff->figures = figures_new ();
  takeoff->quantities
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_quantity_free);
  estimate_all (&(CwWallEstimate) { takeoff->wall, layout, mix,
                                    takeoff->figures, takeoff->quantities });
  return takeoff;
}

CwWallTakeoff *
cw_wall_takeoff_renew (const CwWall *wall, const CwWallTakeoff *former)
{
  CwLayout *layout = cw_layout_new (wall);

  return takeoff_of_layout (
      layout, cw_estimate_panel_mix (layout, CW_CUT_EFFORT_FIRST,
                                     former ? former->mix : NULL, NULL));
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
  CwPanelMix *mix;

  if (takeoff->mix == NULL || cw_panel_mix_is_settled (takeoff->mix, effort))
    return cw_wall_takeoff_ref (takeoff);
  mix = cw_estimate_panel_mix (takeoff->layout, effort, takeoff->mix,
                               cancellable);
  return mix ? takeoff_of_layout (cw_layout_ref (takeoff->layout), mix)
             : NULL;
}

CwWallTakeoff *
cw_wall_takeoff_with_mix (const CwWallTakeoff *takeoff, CwPanelMix *mix)
{
  if (mix != takeoff->mix)
    return takeoff_of_layout (cw_layout_ref (takeoff->layout), mix);
  g_clear_pointer (&mix, cw_panel_mix_unref);
  return cw_wall_takeoff_ref (takeoff);
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
  g_clear_pointer (&takeoff->mix, cw_panel_mix_unref);
  figures_free (takeoff->figures);
  cw_layout_unref (takeoff->layout);
  cw_wall_unref (takeoff->wall);
  g_free (takeoff);
}

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
  figures->stock = g_array_new (FALSE, TRUE, sizeof (double));
  return figures;
}

static void
figures_free (CwWallFigures *figures)
{
  g_array_unref (figures->sides);
  g_array_unref (figures->stock);
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

CwWallTakeoff *
cw_wall_takeoff_new (const CwWall *wall)
{
  CwWallTakeoff *takeoff;

  g_return_val_if_fail (wall != NULL, NULL);

  takeoff = g_new0 (CwWallTakeoff, 1);
  g_atomic_ref_count_init (&takeoff->count);
  takeoff->wall = cw_wall_ref (wall);
  takeoff->layout = cw_layout_new (wall);
  takeoff->figures = figures_new ();
  takeoff->quantities
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_quantity_free);
  estimate_all (&(CwWallEstimate) { wall, takeoff->layout, takeoff->figures,
                                    takeoff->quantities });
  return takeoff;
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
  figures_free (takeoff->figures);
  cw_layout_unref (takeoff->layout);
  cw_wall_unref (takeoff->wall);
  g_free (takeoff);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-estimate-private.h"

/* The walls of @former by their elevations. */
static GHashTable *
walls_by_elevation (const CwTakeoff *former)
{
  GHashTable *walls = g_hash_table_new (NULL, NULL);

  for (guint i = 0; former && i < former->walls->len; i++)
    {
      CwWallTakeoff *wall = former->walls->pdata[i];

      g_hash_table_insert (walls, (gpointer) wall->wall->elevation, wall);
    }
  return walls;
}

static const CwWallTakeoff *
wall_of_same_id (const CwTakeoff *former, const CwElevation *elevation)
{
  return former && elevation->id ? cw_takeoff_wall (former, elevation->id)
                                 : NULL;
}

static CwWallTakeoff *
wall_renewed (GHashTable *walls, const CwTakeoff *former,
              const CwProject *project, const CwElevation *elevation)
{
  const CwWallTakeoff *known = g_hash_table_lookup (walls, elevation);
  g_autoptr (CwWall) wall
      = cw_wall_renew (known ? known->wall : NULL, project, elevation);

  return known && cw_wall_same (known->wall, wall)
             ? cw_wall_takeoff_ref (known)
             : cw_wall_takeoff_renew (wall,
                                      wall_of_same_id (former, elevation));
}

/* FALSE when cancelled. */
static gboolean
add_walls (CwTakeoff *takeoff, const CwTakeoff *former,
           GCancellable *cancellable)
{
  g_autoptr (GHashTable) known = walls_by_elevation (former);
  const CwList *elevations = takeoff->project->elevations;

  for (gsize i = 0; i < cw_list_length (elevations); i++)
    {
      if (g_cancellable_is_cancelled (cancellable))
        return FALSE;
      g_ptr_array_add (takeoff->walls,
                       wall_renewed (known, former, takeoff->project,
                                     cw_list_at (elevations, i)));
    }
  return TRUE;
}

static void
add_project_lines (CwTakeoff *takeoff)
{
  CwProjectEstimate estimate
      = { .takeoff = takeoff,
          .quantities = takeoff->quantities,
          .cost = takeoff->cost };

  cw_estimate_join_walls (&estimate);
  cw_estimate_panel_order (&estimate);
  cw_estimate_project_saw (&estimate);
  cw_estimate_mortar_packages (&estimate);
  cw_estimate_fastener_packages (&estimate);
  cw_estimate_barrier_packages (&estimate);
  cw_estimate_coat_packages (&estimate);
  cw_estimate_mesh_packages (&estimate);
  cw_estimate_mesh_piece_packages (&estimate);
  cw_estimate_sealant_packages (&estimate);
  cw_estimate_rod_packages (&estimate);
  cw_estimate_bead_packages (&estimate);
  cw_estimate_delivery (&estimate);
  cw_estimate_project_labour (&estimate);
  cw_estimate_cost (&estimate);
  cw_estimate_alternates (&estimate);
  cw_quantities_sort (takeoff->quantities);
}

CwTakeoff *
cw_takeoff_begin (const CwProject *project, CwCutEffort effort)
{
  CwTakeoff *takeoff = g_new0 (CwTakeoff, 1);

  g_atomic_ref_count_init (&takeoff->count);
  takeoff->effort = effort;
  takeoff->project = cw_node_ref (project);
  takeoff->walls = g_ptr_array_new_with_free_func (
      (GDestroyNotify) cw_wall_takeoff_unref);
  takeoff->quantities
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_quantity_free);
  return takeoff;
}

gboolean
cw_takeoff_add_project (CwTakeoff *takeoff, const CwTakeoff *former,
             GCancellable *cancellable)
{
  takeoff->cost = cw_cost_new (takeoff->project);
  takeoff->stocks = cw_panel_stocks_new (takeoff, former, cancellable);
  if (takeoff->stocks == NULL)
    return FALSE;
  takeoff->alternates = cw_alternates_new (takeoff, former, cancellable);
  if (takeoff->alternates == NULL)
    return FALSE;
  add_project_lines (takeoff);
  return TRUE;
}

CwTakeoff *
cw_takeoff_new (const CwProject *project, const CwTakeoff *former,
                GCancellable *cancellable)
{
  g_autoptr (CwTakeoff) takeoff = NULL;

  g_return_val_if_fail (project != NULL, NULL);

  takeoff = cw_takeoff_begin (project, CW_CUT_EFFORT_FIRST);
  if (!add_walls (takeoff, former, cancellable)
      || !cw_takeoff_add_project (takeoff, former, cancellable))
    return NULL;
  return g_steal_pointer (&takeoff);
}

static gboolean
improve_walls (CwTakeoff *takeoff, const CwTakeoff *former,
               GCancellable *cancellable)
{
  for (guint i = 0; i < former->walls->len; i++)
    {
      CwWallTakeoff *wall = cw_wall_takeoff_improve (
          former->walls->pdata[i], takeoff->effort, cancellable);

      if (wall == NULL)
        return FALSE;
      g_ptr_array_add (takeoff->walls, wall);
    }
  return TRUE;
}

gboolean
cw_takeoff_is_settled (const CwTakeoff *takeoff, CwCutEffort effort)
{
  g_return_val_if_fail (takeoff != NULL, FALSE);

  if (takeoff->effort >= effort)
    return TRUE;
  for (guint i = 0; i < takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = takeoff->walls->pdata[i];

      if (wall->mix && !cw_panel_mix_is_settled (wall->mix, effort))
        return FALSE;
    }
  for (guint i = 0; i < takeoff->stocks->len; i++)
    if (!cw_panel_mixes_are_settled (
            ((CwPanelStock *) takeoff->stocks->pdata[i])->mixes, effort))
      return FALSE;
  for (guint i = 0; i < takeoff->alternates->len; i++)
    if (!cw_takeoff_is_settled (
            ((CwAlternateTakeoff *) takeoff->alternates->pdata[i])->takeoff,
            effort))
      return FALSE;
  return TRUE;
}

static CwTakeoff *
search_long (const CwTakeoff *takeoff, GCancellable *cancellable)
{
  g_autoptr (CwTakeoff) settled
      = cw_takeoff_improve (takeoff, CW_CUT_EFFORT_LIVE, cancellable);
  CwTakeoff *better
      = settled ? cw_takeoff_search (settled, NULL, NULL, cancellable) : NULL;

  if (g_cancellable_is_cancelled (cancellable))
    g_clear_pointer (&better, cw_takeoff_unref);
  return better;
}

CwTakeoff *
cw_takeoff_improve (const CwTakeoff *takeoff, CwCutEffort effort,
                    GCancellable *cancellable)
{
  g_autoptr (CwTakeoff) improved = NULL;

  g_return_val_if_fail (takeoff != NULL, NULL);

  if (cw_takeoff_is_settled (takeoff, effort))
    return cw_takeoff_ref (takeoff);
  if (effort == CW_CUT_EFFORT_LONG)
    return search_long (takeoff, cancellable);
  improved = cw_takeoff_begin (takeoff->project, effort);
  if (!improve_walls (improved, takeoff, cancellable)
      || !cw_takeoff_add_project (improved, takeoff, cancellable))
    return NULL;
  return g_steal_pointer (&improved);
}

CwTakeoff *
cw_takeoff_ref (const CwTakeoff *takeoff)
{
  g_return_val_if_fail (takeoff != NULL, NULL);

  g_atomic_ref_count_inc (&((CwTakeoff *) takeoff)->count);
  return (CwTakeoff *) takeoff;
}

void
cw_takeoff_unref (CwTakeoff *takeoff)
{
  g_return_if_fail (takeoff != NULL);

  if (!g_atomic_ref_count_dec (&takeoff->count))
    return;
  g_ptr_array_unref (takeoff->quantities);
  g_clear_pointer (&takeoff->cost, cw_cost_free);
  g_clear_pointer (&takeoff->alternates, g_ptr_array_unref);
  g_clear_pointer (&takeoff->stocks, g_ptr_array_unref);
  g_ptr_array_unref (takeoff->walls);
  cw_node_unref (takeoff->project);
  g_free (takeoff);
}

const CwWallTakeoff *
cw_takeoff_wall (const CwTakeoff *takeoff, const char *elevation_id)
{
  g_return_val_if_fail (takeoff != NULL && elevation_id != NULL, NULL);

  for (guint i = 0; i < takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = takeoff->walls->pdata[i];

      if (g_strcmp0 (wall->wall->elevation->id, elevation_id) == 0)
        return wall;
    }
  return NULL;
}

const CwQuantity *
cw_takeoff_quantity (const CwTakeoff *takeoff, const char *scope,
                     const char *key)
{
  const CwWallTakeoff *wall;

  g_return_val_if_fail (takeoff != NULL && key != NULL, NULL);

  if (scope == NULL || g_str_equal (scope, "project"))
    return cw_quantities_find (takeoff->quantities, key, NULL);
  wall = cw_takeoff_wall (takeoff, scope);
  return wall ? cw_quantities_find (wall->quantities, key, NULL) : NULL;
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Alternates: the same project with another buildup, worked out beside it.
 * An elevation that did not change keeps its node in the alternate too, so
 * that an edit of one wall works out one wall of each.
 */
#include "cw-estimate-private.h"

static void
alternate_free (gpointer data)
{
  CwAlternateTakeoff *alternate = data;

  g_clear_pointer (&alternate->takeoff, cw_takeoff_unref);
  g_free (alternate);
}

static gboolean
is_complete (const CwProject *project, const CwAlternate *alternate)
{
  return cw_project_buildup (project, alternate->buildup)
         && cw_project_buildup (project, alternate->by);
}

static const CwAlternateTakeoff *
former_of (const CwTakeoff *former, const CwAlternate *alternate)
{
  for (guint i = 0; former && i < former->alternates->len; i++)
    {
      const CwAlternateTakeoff *known = former->alternates->pdata[i];

      if (known->alternate == alternate)
        return known;
    }
  return NULL;
}

/* The elevation with the alternate's buildup. (transfer full) */
static CwNode *
replaced (const CwElevation *elevation, const CwAlternate *alternate)
{
  int field = cw_node_type_field (&cw_elevation_type, "buildup");

  return g_strcmp0 (elevation->buildup, alternate->buildup) == 0
             ? cw_node_with_text (&elevation->node, (guint) field,
                                  alternate->by)
             : cw_node_ref (&elevation->node);
}

/* (transfer full): what the former alternate made of the same elevation. */
static CwNode *
replaced_before (const CwTakeoff *former, const CwAlternateTakeoff *known,
                 gsize index, const CwElevation *elevation)
{
  if (known == NULL
      || index >= cw_list_length (former->project->elevations)
      || cw_list_at (former->project->elevations, index) != elevation)
    return NULL;
  return cw_node_ref (
      cw_list_at (known->takeoff->project->elevations, index));
}

static CwProject *
alternate_project (const CwProject *project, const CwAlternate *alternate,
                   const CwTakeoff *former)
{
  const CwAlternateTakeoff *known = former_of (former, alternate);
  g_autoptr (GPtrArray) nodes
      = g_ptr_array_new_with_free_func (cw_node_unref);
  g_autoptr (CwList) elevations = NULL;
  g_autoptr (CwList) none = cw_list_new (NULL, 0);
  CwNode *changed = cw_node_copy (&project->node);

  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    {
      const CwElevation *elevation = cw_list_at (project->elevations, i);
      CwNode *node = replaced_before (former, known, i, elevation);

      g_ptr_array_add (nodes, node ? node : replaced (elevation, alternate));
    }
  elevations = cw_list_new ((CwNode *const *) nodes->pdata, nodes->len);
  cw_node_set_list (changed, CW_PROJECT_ELEVATIONS, elevations);
  cw_node_set_list (changed, CW_PROJECT_ALTERNATES, none);
  cw_node_freeze (changed);
  return (CwProject *) changed;
}

static CwTakeoff *
takeoff_of (const CwTakeoff *takeoff, const CwAlternate *alternate,
            const CwTakeoff *former, GCancellable *cancellable)
{
  const CwAlternateTakeoff *known = former_of (former, alternate);
  g_autoptr (CwProject) project
      = alternate_project (takeoff->project, alternate, former);
  g_autoptr (CwTakeoff) first = cw_takeoff_new (
      project, known ? known->takeoff : NULL, cancellable);

  return first ? cw_takeoff_improve (first, takeoff->effort, cancellable)
               : NULL;
}

GPtrArray *
cw_alternates_new (const CwTakeoff *takeoff, const CwTakeoff *former,
                   GCancellable *cancellable)
{
  const CwProject *project = takeoff->project;
  g_autoptr (GPtrArray) alternates
      = g_ptr_array_new_with_free_func (alternate_free);

  for (gsize i = 0; i < cw_list_length (project->alternates); i++)
    {
      CwAlternateTakeoff *added;
      const CwAlternate *alternate = cw_list_at (project->alternates, i);

      if (!is_complete (project, alternate))
        continue;
      added = g_new0 (CwAlternateTakeoff, 1);
      added->alternate = alternate;
      g_ptr_array_add (alternates, added);
      added->takeoff = takeoff_of (takeoff, alternate, former, cancellable);
      if (added->takeoff == NULL)
        return NULL;
    }
  return g_steal_pointer (&alternates);
}

/* The signed difference of the bid, and what else differs. */
static void
add_alternate (CwProjectEstimate *estimate, const CwAlternateTakeoff *it)
{
  const char *name = *it->alternate->name ? it->alternate->name
                                          : cw_alternate_type.label;
  const CwMoney bid = it->takeoff->cost->bid;
  const CwMoney bid_now = estimate->cost->bid;
  const GPtrArray *by = it->takeoff->quantities;
  const GPtrArray *now = estimate->quantities;
  CwQuantity *line
      = cw_estimate_add_money (estimate, "cost.alternate", name,
                               bid - bid_now);

  cw_quantity_step (line, N_ ("the bid would be {0} in place of {1}"),
                    { cw_money_to_double (bid), line->unit },
                    { cw_money_to_double (bid_now), line->unit });
  cw_quantity_step (line,
                    N_ ("panels to order {0} in place of {1}, hours of labour "
                        "{2} in place of {3}, mass delivered {4} in place of "
                        "{5}"),
                    { cw_quantities_amount (by, "panel.order"), "" },
                    { cw_quantities_amount (now, "panel.order"), "" },
                    { cw_quantities_amount (by, "labour.hours"), "h" },
                    { cw_quantities_amount (now, "labour.hours"), "h" },
                    { cw_quantities_amount (by, "mass.total"), "kg" },
                    { cw_quantities_amount (now, "mass.total"), "kg" });
}

void
cw_estimate_alternates (CwProjectEstimate *estimate)
{
  const GPtrArray *alternates = estimate->takeoff->alternates;

  for (guint i = 0; i < alternates->len; i++)
    add_alternate (estimate, alternates->pdata[i]);
}

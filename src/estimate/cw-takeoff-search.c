/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The long search for plans of fewer panels: one plan after the other, walls
 * first, then what several walls share. Whatever is found before a stop is
 * put together to a takeoff.
 */
#include "cw-estimate-private.h"

typedef struct
{
  const CwTakeoff *takeoff;
  CwTakeoffProgress progress;
  gpointer data;
  GCancellable *cancellable;
  double done, all;           /* blanks of the plans that are searched */
  guint n_panels;             /* of the project, by the best plans so far */
  const CwPanelPlan *plan;    /* at hand */
  guint times;                /* it is carried out in the project */
  double share;               /* of its search, and */
  guint n_cut;                /* its panels so far, at best */
} Search;

/* How often the project carries out @plan; 0: another one is used instead. */
static guint
times_used (const CwTakeoff *takeoff, const CwPanelPlan *plan)
{
  guint times = 0;

  for (guint i = 0; i < takeoff->stocks->len; i++)
    {
      const CwPanelStock *stock = takeoff->stocks->pdata[i];

      for (guint j = 0; j < stock->shares->len; j++)
        {
          const CwPanelShare *share
              = &g_array_index (stock->shares, CwPanelShare, j);

          times += share->plan == plan ? share->times : 0;
        }
    }
  return times;
}

static guint
panels_of (const CwTakeoff *takeoff)
{
  guint n = 0;

  for (guint i = 0; i < takeoff->stocks->len; i++)
    n += ((const CwPanelStock *) takeoff->stocks->pdata[i])->n_panels;
  return n;
}

static double
weight_of (const CwPanelPlan *plan)
{
  return cw_panel_plan_is_settled (plan, CW_CUT_EFFORT_LONG)
             ? 0
             : plan->blanks->len;
}

static double
weight_of_all (const GPtrArray *plans)
{
  double weight = 0;

  for (guint i = 0; i < plans->len; i++)
    weight += weight_of (plans->pdata[i]);
  return weight;
}

static double
weight_of_takeoff (const CwTakeoff *takeoff)
{
  double weight = 0;

  for (guint i = 0; i < takeoff->walls->len; i++)
    weight += weight_of_all (
        ((const CwWallTakeoff *) takeoff->walls->pdata[i])->plans);
  for (guint i = 0; i < takeoff->stocks->len; i++)
    weight += weight_of_all (
        ((const CwPanelStock *) takeoff->stocks->pdata[i])->pools);
  return weight;
}

static guint
saved (const Search *search, guint n_cut)
{
  const guint former = search->plan->cut->panels->len;

  return n_cut < former ? (former - n_cut) * search->times : 0;
}

/* A plan is looked for in several rounds, each from its beginning. */
static void
tell (guint n_cut, double share, gpointer data)
{
  Search *search = data;

  search->share = MAX (search->share, share);
  search->n_cut = MIN (search->n_cut, n_cut);
  search->progress (
      search->n_panels - saved (search, search->n_cut),
      (search->done + search->share * weight_of (search->plan))
          / MAX (search->all, 1),
      search->data);
}

/* (transfer full) */
static CwPanelPlan *
search_plan (Search *search, const CwPanelPlan *plan)
{
  CwPanelPlan *better;

  search->plan = plan;
  if (plan->cut == NULL || g_cancellable_is_cancelled (search->cancellable))
    return cw_panel_plan_ref (plan);
  search->times = times_used (search->takeoff, plan);
  search->share = 0;
  search->n_cut = plan->cut->panels->len;
  better = cw_panel_plan_improve (plan, search->progress ? tell : NULL,
                                  search, search->cancellable);
  search->n_panels -= saved (search, better->cut->panels->len);
  search->done += weight_of (plan);
  return better;
}

/* (transfer full) (element-type CwPanelPlan) */
static GPtrArray *
search_plans (Search *search, const GPtrArray *plans)
{
  GPtrArray *better = g_ptr_array_new_with_free_func (
      (GDestroyNotify) cw_panel_plan_unref);

  for (guint i = 0; i < plans->len; i++)
    g_ptr_array_add (better, search_plan (search, plans->pdata[i]));
  return better;
}

static void
search_walls (Search *search, CwTakeoff *better)
{
  const GPtrArray *walls = search->takeoff->walls;

  for (guint i = 0; i < walls->len; i++)
    {
      const CwWallTakeoff *wall = walls->pdata[i];

      g_ptr_array_add (better->walls,
                       cw_wall_takeoff_with_plans (
                           wall, search_plans (search, wall->plans)));
    }
}

static void
pools_free (gpointer data)
{
  CwPanelStock *stock = data;

  g_ptr_array_unref (stock->pools);
  g_free (stock);
}

/* Only what a later planning takes over: the plans over several walls.
 * (transfer full) (element-type CwPanelStock) */
static GPtrArray *
search_pools (Search *search)
{
  const GPtrArray *stocks = search->takeoff->stocks;
  GPtrArray *better = g_ptr_array_new_with_free_func (pools_free);

  for (guint i = 0; i < stocks->len; i++)
    {
      CwPanelStock *stock = g_new0 (CwPanelStock, 1);

      stock->pools = search_plans (
          search, ((const CwPanelStock *) stocks->pdata[i])->pools);
      g_ptr_array_add (better, stock);
    }
  return better;
}

CwTakeoff *
cw_takeoff_search (const CwTakeoff *takeoff, CwTakeoffProgress progress,
                   gpointer data, GCancellable *cancellable)
{
  g_autoptr (CwTakeoff) better = NULL;
  g_autoptr (GPtrArray) pools = NULL;
  Search search = { .takeoff = takeoff,
                    .progress = progress,
                    .data = data,
                    .cancellable = cancellable };

  g_return_val_if_fail (takeoff != NULL, NULL);
  g_return_val_if_fail (cw_takeoff_is_settled (takeoff, CW_CUT_EFFORT_LIVE),
                        NULL);

  if (cw_takeoff_is_settled (takeoff, CW_CUT_EFFORT_LONG))
    return cw_takeoff_ref (takeoff);
  search.all = weight_of_takeoff (takeoff);
  search.n_panels = panels_of (takeoff);
  better = cw_takeoff_begin (takeoff->project, CW_CUT_EFFORT_LIVE);
  search_walls (&search, better);
  pools = search_pools (&search);
  cw_takeoff_add_project (better, &(CwTakeoff) { .stocks = pools }, NULL);
  if (!g_cancellable_is_cancelled (cancellable))
    better->effort = CW_CUT_EFFORT_LONG;
  return g_steal_pointer (&better);
}

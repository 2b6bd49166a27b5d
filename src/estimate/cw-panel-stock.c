/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The panels of the whole project: where offcuts travel between walls, all
 * walls of a buildup are planned together, and again by wall where that comes
 * out better.
 */
#include "cw-cut-bound.h"
#include "cw-estimate-private.h"

/* So many sawn pieces are planned together: far more than a house has, and
 * few enough that every edit of a large job is answered at once. */
#define MOST_POOLED 2000

/* One kind of panel being planned. */
typedef struct
{
  CwPanelStock *stock;
  GArray *walls;              /* const CwWallTakeoff *, of the buildup */
  const CwPanelStock *former; /* (nullable) */
  CwCutEffort effort;
  GCancellable *cancellable;
} Stocking;

static const CwPanelPlan *
own_plan (const Stocking *stocking, const CwWallTakeoff *wall)
{
  return wall->plans->pdata[stocking->stock->panel];
}

static void
add_share (const Stocking *stocking, const CwPanelShare *share)
{
  CwPanelStock *stock = stocking->stock;

  if (share->plan->n_panels == 0)
    return;
  g_array_append_vals (stock->shares, share, 1);
  stock->n_whole += share->plan->n_whole * share->times;
  stock->n_sawn += share->plan->pieces->len * share->times;
  stock->n_panels += share->plan->n_panels * share->times;
}

/* The walls planned together, and as if each kept its offcuts. */
typedef struct
{
  GArray *walls;              /* CwPanelWalls */
  GPtrArray *own;             /* const CwPanelPlan * of each */
  guint n_sawn;
  guint n_panels;             /* by their own plans */
} Pool;

static Pool
pool_begin (void)
{
  return (Pool) { g_array_new (FALSE, FALSE, sizeof (CwPanelWalls)),
                  g_ptr_array_new (), 0, 0 };
}

static void
pool_clear (Pool *pool)
{
  g_array_unref (pool->walls);
  g_ptr_array_unref (pool->own);
}

static void
add_own_shares (const Stocking *stocking, const Pool *pool, guint times)
{
  for (guint i = 0; i < pool->walls->len; i++)
    {
      const CwPanelWalls *walls
          = &g_array_index (pool->walls, CwPanelWalls, i);

      add_share (stocking, &(CwPanelShare) { pool->own->pdata[i],
                                             walls->n * times, walls->first,
                                             1 });
    }
}

static const CwPanelPlan *
former_pool (const Stocking *stocking)
{
  const guint index = stocking->stock->pools->len;

  return stocking->former && index < stocking->former->pools->len
             ? stocking->former->pools->pdata[index]
             : NULL;
}

static gboolean
is_one_wall (const Pool *pool)
{
  return pool->walls->len == 1
         && g_array_index (pool->walls, CwPanelWalls, 0).n == 1;
}

/* Empties the pool into the stock, for @times as many walls, where it holds
 * @step of each. FALSE when cancelled. */
static gboolean
close_pool (const Stocking *stocking, Pool *pool, guint times, guint step)
{
  CwPanelPlan *plan = NULL;

  if (pool->walls->len > 0 && !is_one_wall (pool))
    {
      plan = cw_panel_plan_new (
          &g_array_index (pool->walls, CwPanelWalls, 0), pool->walls->len,
          stocking->stock->panel, CW_OFFCUTS_PROJECT, stocking->effort,
          former_pool (stocking), stocking->cancellable);
      if (plan == NULL)
        return FALSE;
      g_ptr_array_add (stocking->stock->pools, plan);
    }
  if (plan && plan->n_panels <= pool->n_panels)
    add_share (stocking, &(CwPanelShare) { plan, times, 0, step });
  else
    add_own_shares (stocking, pool, times);
  g_array_set_size (pool->walls, 0);
  g_ptr_array_set_size (pool->own, 0);
  pool->n_sawn = pool->n_panels = 0;
  return TRUE;
}

static void
pool_walls (Pool *pool, const CwWallTakeoff *wall, const CwPanelPlan *own,
            guint first, guint n)
{
  const CwPanelWalls walls = { wall->layout, first, n };

  g_array_append_val (pool->walls, walls);
  g_ptr_array_add (pool->own, (gpointer) own);
  pool->n_sawn += own->pieces->len * n;
  pool->n_panels += own->n_panels * n;
}

/* Walls alike that fill pools by themselves: one is planned for all of them.
 * FALSE when cancelled. */
static gboolean
repeat_pool (const Stocking *stocking, const CwWallTakeoff *wall,
             guint at_once, guint times)
{
  Pool pool = pool_begin ();
  gboolean is_done;

  pool_walls (&pool, wall, own_plan (stocking, wall), 0, at_once);
  is_done = close_pool (stocking, &pool, times, at_once);
  pool_clear (&pool);
  return is_done;
}

/* All the walls that the elevation stands for. FALSE when cancelled. */
static gboolean
pool_elevation (const Stocking *stocking, Pool *pool,
                const CwWallTakeoff *wall)
{
  const CwPanelPlan *own = own_plan (stocking, wall);
  const guint count = (guint) wall->wall->elevation->count;
  const guint at_once = MAX (1, MOST_POOLED / MAX (1, own->pieces->len));
  const guint times = count > at_once ? count / at_once : 0;
  const guint rest = count - times * at_once;

  if (times > 0 && !repeat_pool (stocking, wall, at_once, times))
    return FALSE;
  if (rest == 0)
    return TRUE;
  if (pool->n_sawn + own->pieces->len * rest > MOST_POOLED
      && !close_pool (stocking, pool, 1, 0))
    return FALSE;
  pool_walls (pool, wall, own, times * at_once, rest);
  return TRUE;
}

static gboolean
pool_all (const Stocking *stocking)
{
  Pool pool = pool_begin ();
  gboolean is_done = TRUE;

  for (guint i = 0; i < stocking->walls->len && is_done; i++)
    is_done = pool_elevation (
        stocking, &pool,
        g_array_index (stocking->walls, const CwWallTakeoff *, i));
  is_done = is_done && close_pool (stocking, &pool, 1, 0);
  pool_clear (&pool);
  return is_done;
}

static void
add_sizes (GArray *sizes, const CwPanelShare *share, const CwCutRules *rules)
{
  for (guint i = 0; i < share->plan->blanks->len; i++)
    {
      const CwCutBlank *blank
          = &g_array_index (share->plan->blanks, CwCutBlank, i);
      const CwCutSize size
          = { MIN (blank->width, rules->length) + rules->kerf,
              MIN (blank->height, rules->height) + rules->kerf };

      g_array_append_val (sizes, size);
    }
}

static void
add_rests (GArray *sizes, const CwPanelShare *share, CwLength kerf)
{
  for (guint i = 0; i < share->plan->rests->len; i++)
    {
      const CwPanelRest *rest
          = &g_array_index (share->plan->rests, CwPanelRest, i);
      const CwCutSize size = { rest->width + kerf, rest->height + kerf };

      g_array_append_val (sizes, size);
    }
}

static void
fill_times (GArray *times, guint n, guint of_share)
{
  while (times->len < n)
    g_array_append_val (times, of_share);
}

/* The bound of plans that several pools make up: over all pieces at once. */
static guint
least_of_all (const Stocking *stocking, const CwCutRules *rules)
{
  const CwPanelStock *stock = stocking->stock;
  g_autoptr (GArray) sizes = g_array_new (FALSE, FALSE, sizeof (CwCutSize));
  g_autoptr (GArray) times = g_array_new (FALSE, FALSE, sizeof (guint));
  g_autoptr (GArray) rests = g_array_new (FALSE, FALSE, sizeof (CwCutSize));
  g_autoptr (GArray) rest_times = g_array_new (FALSE, FALSE, sizeof (guint));

  for (guint i = 0; i < stock->shares->len; i++)
    {
      const CwPanelShare *share
          = &g_array_index (stock->shares, CwPanelShare, i);

      add_sizes (sizes, share, rules);
      fill_times (times, sizes->len, share->times);
      add_rests (rests, share, rules->kerf);
      fill_times (rest_times, rests->len, share->times);
    }
  const CwCutTask task
      = { .blanks = (const CwCutSize *) sizes->data,
          .times = (const guint *) times->data,
          .n_blanks = sizes->len,
          .rests = (const CwCutSize *) rests->data,
          .rest_times = (const guint *) rest_times->data,
          .n_rests = rests->len,
          .panel = { rules->length + rules->kerf,
                     rules->height + rules->kerf },
          .turn = rules->turn,
          .enough = stock->n_panels - stock->n_whole };

  return stock->n_whole + cw_cut_bound (&task, stocking->effort, stocking->cancellable);
}

static guint
least_of_shares (const CwPanelStock *stock)
{
  guint least = 0;

  for (guint i = 0; i < stock->shares->len; i++)
    {
      const CwPanelShare *share
          = &g_array_index (stock->shares, CwPanelShare, i);

      least += share->plan->least * share->times;
    }
  return least;
}

/* (nullable): the cuts of the first share that has any. */
static const CwCutPlan *
first_cuts (const GArray *shares)
{
  for (guint i = 0; i < shares->len; i++)
    if (g_array_index (shares, CwPanelShare, i).plan->cut)
      return g_array_index (shares, CwPanelShare, i).plan->cut;
  return NULL;
}

static gboolean
covers_all (const CwPanelPlan *plan, const CwPanelStock *stock)
{
  return plan->n_whole + plan->pieces->len == stock->n_whole + stock->n_sawn;
}

/* A plan that covers all pieces has the bound of all. */
static guint
least_of_pools (const Stocking *stocking)
{
  const CwPanelStock *stock = stocking->stock;
  const CwCutPlan *cuts = first_cuts (stock->shares);

  for (guint i = 0; i < stock->pools->len; i++)
    if (covers_all (stock->pools->pdata[i], stock))
      return ((const CwPanelPlan *) stock->pools->pdata[i])->least;
  return cuts && stock->shares->len + stock->pools->len > 1
             ? least_of_all (stocking, &cuts->rules)
             : least_of_shares (stock);
}

static gboolean
offcuts_travel (const CwBuildup *buildup)
{
  return ((const CwSettingOut *) buildup->setting_out)->offcuts
         == CW_OFFCUTS_PROJECT;
}

/* FALSE when cancelled. */
static gboolean
fill_stock (const Stocking *stocking)
{
  CwPanelStock *stock = stocking->stock;

  if (offcuts_travel (stock->buildup))
    {
      if (!pool_all (stocking))
        return FALSE;
      stock->least = least_of_pools (stocking);
      return TRUE;
    }
  for (guint i = 0; i < stocking->walls->len; i++)
    {
      const CwWallTakeoff *wall
          = g_array_index (stocking->walls, const CwWallTakeoff *, i);

      add_share (stocking,
                 &(CwPanelShare) { own_plan (stocking, wall),
                                   (guint) wall->wall->elevation->count, 0,
                                   1 });
    }
  stock->least = least_of_shares (stock);
  return TRUE;
}

static void
stock_free (gpointer data)
{
  CwPanelStock *stock = data;

  g_ptr_array_unref (stock->pools);
  g_array_unref (stock->shares);
  g_free (stock);
}

static CwPanelStock *
stock_new (const CwBuildup *buildup, guint panel)
{
  CwPanelStock *stock = g_new0 (CwPanelStock, 1);

  stock->buildup = buildup;
  stock->panel = panel;
  stock->pools
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_panel_plan_unref);
  stock->shares = g_array_new (FALSE, FALSE, sizeof (CwPanelShare));
  return stock;
}

/* (element-type const CwWallTakeoff *) */
static GArray *
walls_of (const CwTakeoff *takeoff, const CwBuildup *buildup)
{
  GArray *walls = g_array_new (FALSE, FALSE, sizeof (CwWallTakeoff *));

  for (guint i = 0; i < takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = takeoff->walls->pdata[i];

      if (wall->wall->buildup == buildup)
        g_array_append_val (walls, wall);
    }
  return walls;
}

GPtrArray *
cw_panel_stocks_new (const CwTakeoff *takeoff, const CwTakeoff *former,
                     GCancellable *cancellable)
{
  const CwList *buildups = takeoff->project->buildups;
  g_autoptr (GPtrArray) stocks = g_ptr_array_new_with_free_func (stock_free);

  for (gsize i = 0; i < cw_list_length (buildups); i++)
    {
      const CwBuildup *buildup = cw_list_at (buildups, i);
      g_autoptr (GArray) walls = walls_of (takeoff, buildup);

      for (guint j = 0; j < cw_list_length (buildup->panels); j++)
        {
          CwPanelStock *stock = stock_new (buildup, j);
          const Stocking stocking
              = { stock, walls,
                  former && stocks->len < former->stocks->len
                      ? former->stocks->pdata[stocks->len]
                      : NULL,
                  takeoff->effort, cancellable };

          g_ptr_array_add (stocks, stock);
          if (!fill_stock (&stocking))
            return NULL;
        }
    }
  return g_steal_pointer (&stocks);
}

gboolean
cw_panel_plans_are_settled (const GPtrArray *plans, CwCutEffort effort)
{
  for (guint i = 0; i < plans->len; i++)
    if (!cw_panel_plan_is_settled (plans->pdata[i], effort))
      return FALSE;
  return TRUE;
}

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
add_share (const Stocking *stocking, const CwPanelPlan *plan, guint first,
           guint times)
{
  CwPanelStock *stock = stocking->stock;

  if (plan->n_panels == 0)
    return;
  g_array_append_vals (stock->shares, &(CwPanelShare) { plan, first, times },
                       1);
  stock->n_whole += plan->n_whole * times;
  stock->n_sawn += plan->pieces->len * times;
  stock->n_panels += plan->n_panels * times;
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
add_own_shares (const Stocking *stocking, const Pool *pool)
{
  for (guint i = 0; i < pool->walls->len; i++)
    {
      const CwPanelWalls *walls
          = &g_array_index (pool->walls, CwPanelWalls, i);

      add_share (stocking, pool->own->pdata[i], walls->first, walls->n);
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

/* Empties the pool into the stock. FALSE when cancelled. */
static gboolean
close_pool (const Stocking *stocking, Pool *pool)
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
    add_share (stocking, plan, 0, 1);
  else
    add_own_shares (stocking, pool);
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

/* All the walls that the elevation stands for, some to a pool where they are
 * more than one pool holds. FALSE when cancelled. */
static gboolean
pool_elevation (const Stocking *stocking, Pool *pool,
                const CwWallTakeoff *wall)
{
  const CwPanelPlan *own = own_plan (stocking, wall);
  const guint count = (guint) wall->wall->elevation->count;
  const guint at_once = MAX (1, MOST_POOLED / MAX (1, own->pieces->len));

  for (guint first = 0; first < count; first += at_once)
    {
      const guint n = MIN (at_once, count - first);

      if (pool->n_sawn + own->pieces->len * n > MOST_POOLED
          && !close_pool (stocking, pool))
        return FALSE;
      pool_walls (pool, wall, own, first, n);
    }
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
  is_done = is_done && close_pool (stocking, &pool);
  pool_clear (&pool);
  return is_done;
}

/* The bound of plans that several pools make up: over all pieces at once. */
static guint
least_of_all (const Stocking *stocking, const CwCutRules *rules)
{
  GArray *sizes = g_array_new (FALSE, FALSE, sizeof (CwCutSize));
  guint least = stocking->stock->n_whole;

  for (guint i = 0; i < stocking->stock->shares->len; i++)
    {
      const CwPanelShare *share
          = &g_array_index (stocking->stock->shares, CwPanelShare, i);

      for (guint j = 0; j < share->times * share->plan->blanks->len; j++)
        {
          const CwCutBlank *blank
              = &g_array_index (share->plan->blanks, CwCutBlank,
                                j % share->plan->blanks->len);
          const CwCutSize size
              = { MIN (blank->width, rules->length) + rules->kerf,
                  MIN (blank->height, rules->height) + rules->kerf };

          g_array_append_val (sizes, size);
        }
    }
  least += cw_cut_bound (&g_array_index (sizes, CwCutSize, 0), sizes->len,
                         (CwCutSize) { rules->length + rules->kerf,
                                       rules->height + rules->kerf },
                         rules->turn,
                         stocking->stock->n_panels - stocking->stock->n_whole,
                         stocking->effort);
  g_array_unref (sizes);
  return least;
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

static guint
least_of_pools (const Stocking *stocking)
{
  const GPtrArray *pools = stocking->stock->pools;
  const CwPanelPlan *first = pools->len ? pools->pdata[0] : NULL;

  if (first == NULL)
    return least_of_shares (stocking->stock);
  return pools->len == 1 || first->cut == NULL
             ? first->least
             : least_of_all (stocking, &first->cut->rules);
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

      add_share (stocking, own_plan (stocking, wall), 0,
                 (guint) wall->wall->elevation->count);
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

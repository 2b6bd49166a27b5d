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

/* The panels of one buildup being planned. */
typedef struct
{
  const CwBuildup *buildup;
  CwPanelStock **stocks;      /* as its panels */
  GArray *walls;              /* const CwWallTakeoff *, of the buildup */
  const CwPanelStock *former; /* (nullable): of its first panel */
  CwCutEffort effort;
  GCancellable *cancellable;
} Stocking;

static void
add_share (CwPanelStock *stock, const CwPanelShare *share)
{
  if (share->plan->n_panels == 0)
    return;
  g_array_append_vals (stock->shares, share, 1);
  stock->n_whole += share->plan->n_whole * share->times;
  stock->n_sawn += share->plan->pieces->len * share->times;
  stock->n_panels += share->plan->n_panels * share->times;
}

/* The plan of each panel to the stock of its kind. */
static void
add_shares (const Stocking *stocking, const CwPanelMix *mix, guint times,
            guint first, guint step)
{
  for (guint i = 0; i < mix->plans->len; i++)
    add_share (stocking->stocks[i],
               &(CwPanelShare) { mix->plans->pdata[i], times, first, step });
}

/* The walls planned together, and as if each kept its offcuts. */
typedef struct
{
  GArray *walls;              /* CwPanelWalls */
  GPtrArray *own;             /* const CwPanelMix * of each */
  guint n_sawn;
  double cost;                /* by their own plans */
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

      add_shares (stocking, pool->own->pdata[i], walls->n * times,
                  walls->first, 1);
    }
}

static const CwPanelMix *
former_mix (const Stocking *stocking)
{
  const guint index = stocking->stocks[0]->mixes->len;

  return stocking->former && index < stocking->former->mixes->len
             ? stocking->former->mixes->pdata[index]
             : NULL;
}

static gboolean
is_one_wall (const Pool *pool)
{
  return pool->walls->len == 1
         && g_array_index (pool->walls, CwPanelWalls, 0).n == 1;
}

static void
keep_mix (const Stocking *stocking, CwPanelMix *mix)
{
  g_ptr_array_add (stocking->stocks[0]->mixes, mix);
  for (guint i = 0; i < mix->plans->len; i++)
    g_ptr_array_add (stocking->stocks[i]->pools,
                     cw_panel_plan_ref (mix->plans->pdata[i]));
}

/* Costs are sums of roundings. */
static gboolean
costs_no_more (const CwPanelMix *mix, const Pool *pool)
{
  return mix->cost <= pool->cost * (1 + 1e-9);
}

/* Empties the pool into the stocks, for @times as many walls, where it holds
 * @step of each. FALSE when cancelled. */
static gboolean
close_pool (const Stocking *stocking, Pool *pool, guint times, guint step)
{
  CwPanelMix *mix = NULL;

  if (pool->walls->len > 0 && !is_one_wall (pool))
    {
      mix = cw_panel_mix_new (
          &g_array_index (pool->walls, CwPanelWalls, 0), pool->walls->len,
          CW_OFFCUTS_PROJECT, stocking->effort, former_mix (stocking),
          stocking->cancellable);
      if (mix == NULL)
        return FALSE;
      keep_mix (stocking, mix);
    }
  if (mix && costs_no_more (mix, pool))
    add_shares (stocking, mix, times, 0, step);
  else
    add_own_shares (stocking, pool, times);
  g_array_set_size (pool->walls, 0);
  g_ptr_array_set_size (pool->own, 0);
  pool->n_sawn = 0;
  pool->cost = 0;
  return TRUE;
}

static guint
n_sawn_of (const CwPanelMix *mix)
{
  return mix->base->pieces->len;
}

static void
pool_walls (Pool *pool, const CwWallTakeoff *wall, guint first, guint n)
{
  const CwPanelWalls walls = { wall->layout, first, n };

  g_array_append_val (pool->walls, walls);
  g_ptr_array_add (pool->own, wall->mix);
  pool->n_sawn += n_sawn_of (wall->mix) * n;
  pool->cost += wall->mix->cost * n;
}

/* Walls alike that fill pools by themselves: one is planned for all of them.
 * FALSE when cancelled. */
static gboolean
repeat_pool (const Stocking *stocking, const CwWallTakeoff *wall,
             guint at_once, guint times)
{
  Pool pool = pool_begin ();
  gboolean is_done;

  pool_walls (&pool, wall, 0, at_once);
  is_done = close_pool (stocking, &pool, times, at_once);
  pool_clear (&pool);
  return is_done;
}

/* All the walls that the elevation stands for. FALSE when cancelled. */
static gboolean
pool_elevation (const Stocking *stocking, Pool *pool,
                const CwWallTakeoff *wall)
{
  const guint n_sawn = n_sawn_of (wall->mix);
  const guint count = (guint) wall->wall->elevation->count;
  const guint at_once = MAX (1, MOST_POOLED / MAX (1, n_sawn));
  const guint times = count > at_once ? count / at_once : 0;
  const guint rest = count - times * at_once;

  if (times > 0 && !repeat_pool (stocking, wall, at_once, times))
    return FALSE;
  if (rest == 0)
    return TRUE;
  if (pool->n_sawn + n_sawn * rest > MOST_POOLED
      && !close_pool (stocking, pool, 1, 0))
    return FALSE;
  pool_walls (pool, wall, times * at_once, rest);
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

/* All that is to be bounded, of all the shares. */
typedef struct
{
  GArray *sizes, *rests;      /* CwCutSize */
  GArray *times, *rest_times; /* guint */
  guint n_whole, n_panels;
} Whole;

static Whole
whole_begin (void)
{
  return (Whole) { g_array_new (FALSE, FALSE, sizeof (CwCutSize)),
                   g_array_new (FALSE, FALSE, sizeof (CwCutSize)),
                   g_array_new (FALSE, FALSE, sizeof (guint)),
                   g_array_new (FALSE, FALSE, sizeof (guint)), 0, 0 };
}

static void
whole_clear (Whole *whole)
{
  g_array_unref (whole->sizes);
  g_array_unref (whole->rests);
  g_array_unref (whole->times);
  g_array_unref (whole->rest_times);
}

static void
whole_add (Whole *whole, const CwPanelStock *stock, const CwCutRules *rules)
{
  for (guint i = 0; i < stock->shares->len; i++)
    {
      const CwPanelShare *share
          = &g_array_index (stock->shares, CwPanelShare, i);

      add_sizes (whole->sizes, share, rules);
      fill_times (whole->times, whole->sizes->len, share->times);
      add_rests (whole->rests, share, rules->kerf);
      fill_times (whole->rest_times, whole->rests->len, share->times);
    }
  whole->n_whole += stock->n_whole;
  whole->n_panels += stock->n_panels;
}

static guint
n_kinds (const Stocking *stocking)
{
  return (guint) cw_list_length (stocking->buildup->panels);
}

/* As long as the longest of the buildup's panels, as high as the highest. */
static CwCutRules
largest_panel (const Stocking *stocking)
{
  CwCutRules largest, rules;

  cw_panel_rules (stocking->buildup, 0, &largest);
  for (guint i = 1; i < n_kinds (stocking); i++)
    if (cw_panel_rules (stocking->buildup, i, &rules))
      {
        largest.length = MAX (largest.length, rules.length);
        largest.height = MAX (largest.height, rules.height);
      }
  return largest;
}

/* The bound of plans that several pools make up: over all pieces at once. */
static guint
least_of_all (const Stocking *stocking)
{
  const CwCutRules rules = largest_panel (stocking);
  Whole whole = whole_begin ();
  guint least;

  for (guint i = 0; i < n_kinds (stocking); i++)
    whole_add (&whole, stocking->stocks[i], &rules);
  const CwCutTask task
      = { .blanks = (const CwCutSize *) whole.sizes->data,
          .times = (const guint *) whole.times->data,
          .n_blanks = whole.sizes->len,
          .rests = (const CwCutSize *) whole.rests->data,
          .rest_times = (const guint *) whole.rest_times->data,
          .n_rests = whole.rests->len,
          .panel = { rules.length + rules.kerf, rules.height + rules.kerf },
          .turn = rules.turn,
          .enough = whole.n_panels - whole.n_whole };

  least = whole.n_whole
          + cw_cut_bound (&task, stocking->effort, stocking->cancellable);
  whole_clear (&whole);
  return least;
}

/* Where each wall keeps its offcuts. */
static guint
least_of_walls (const Stocking *stocking)
{
  guint least = 0;

  for (guint i = 0; i < stocking->walls->len; i++)
    {
      const CwWallTakeoff *wall
          = g_array_index (stocking->walls, const CwWallTakeoff *, i);

      least += wall->mix->least * (guint) wall->wall->elevation->count;
    }
  return least;
}

/* Walls that stand for themselves alone. */
static gboolean
is_single (const Stocking *stocking)
{
  return stocking->walls->len == 1
         && g_array_index (stocking->walls, const CwWallTakeoff *, 0)
                    ->wall->elevation->count
                == 1;
}

static guint
n_pieces_of (const Stocking *stocking)
{
  guint n = 0;

  for (guint i = 0; i < stocking->walls->len; i++)
    {
      const CwWallTakeoff *wall
          = g_array_index (stocking->walls, const CwWallTakeoff *, i);

      n += wall->layout->pieces->len * (guint) wall->wall->elevation->count;
    }
  return n;
}

/* A mix that covers all pieces has the bound of all. */
static guint
least_of_pools (const Stocking *stocking)
{
  const GPtrArray *mixes = stocking->stocks[0]->mixes;
  const guint n_pieces = n_pieces_of (stocking);

  for (guint i = 0; i < mixes->len; i++)
    {
      const CwPanelMix *mix = mixes->pdata[i];

      if (mix->base->n_whole + mix->base->pieces->len == n_pieces)
        return mix->least;
    }
  return is_single (stocking) ? least_of_walls (stocking)
                              : least_of_all (stocking);
}

static gboolean
offcuts_travel (const CwBuildup *buildup)
{
  return ((const CwSettingOut *) buildup->setting_out)->offcuts
         == CW_OFFCUTS_PROJECT;
}

/* FALSE when cancelled. */
static gboolean
fill_stocks (const Stocking *stocking)
{
  if (offcuts_travel (stocking->buildup))
    {
      if (!pool_all (stocking))
        return FALSE;
      stocking->stocks[0]->least = least_of_pools (stocking);
      return TRUE;
    }
  for (guint i = 0; i < stocking->walls->len; i++)
    {
      const CwWallTakeoff *wall
          = g_array_index (stocking->walls, const CwWallTakeoff *, i);

      add_shares (stocking, wall->mix,
                  (guint) wall->wall->elevation->count, 0, 1);
    }
  stocking->stocks[0]->least = least_of_walls (stocking);
  return TRUE;
}

static void
stock_free (gpointer data)
{
  CwPanelStock *stock = data;

  g_ptr_array_unref (stock->pools);
  g_ptr_array_unref (stock->mixes);
  g_array_unref (stock->shares);
  g_free (stock);
}

static CwPanelStock *
stock_new (const CwBuildup *buildup, guint panel)
{
  CwPanelStock *stock = g_new0 (CwPanelStock, 1);

  stock->buildup = buildup;
  stock->panel = panel;
  stock->mixes
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_panel_mix_unref);
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

/* FALSE when cancelled. */
static gboolean
add_stocks (GPtrArray *stocks, const CwTakeoff *takeoff,
            const CwBuildup *buildup, const CwTakeoff *former,
            GCancellable *cancellable)
{
  g_autoptr (GArray) walls = walls_of (takeoff, buildup);
  const guint first = stocks->len;

  for (guint i = 0; i < cw_list_length (buildup->panels); i++)
    g_ptr_array_add (stocks, stock_new (buildup, i));
  return fill_stocks (&(Stocking) {
      .buildup = buildup,
      .stocks = (CwPanelStock **) stocks->pdata + first,
      .walls = walls,
      .former = former && first < former->stocks->len
                    ? former->stocks->pdata[first]
                    : NULL,
      .effort = takeoff->effort,
      .cancellable = cancellable });
}

GPtrArray *
cw_panel_stocks_new (const CwTakeoff *takeoff, const CwTakeoff *former,
                     GCancellable *cancellable)
{
  const CwList *buildups = takeoff->project->buildups;
  g_autoptr (GPtrArray) stocks = g_ptr_array_new_with_free_func (stock_free);

  for (gsize i = 0; i < cw_list_length (buildups); i++)
    if (!add_stocks (stocks, takeoff, cw_list_at (buildups, i), former,
                     cancellable))
      return NULL;
  return g_steal_pointer (&stocks);
}

gboolean
cw_panel_mixes_are_settled (const GPtrArray *mixes, CwCutEffort effort)
{
  for (guint i = 0; i < mixes->len; i++)
    if (!cw_panel_mix_is_settled (mixes->pdata[i], effort))
      return FALSE;
  return TRUE;
}

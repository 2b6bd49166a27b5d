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
  const CwPanelPlan *plan;    /* at hand, of the first panel alone */
  double weight;              /* of it */
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
weight_of (const CwPanelMix *mix)
{
  return cw_panel_mix_is_settled (mix, CW_CUT_EFFORT_LONG)
             ? 0
             : mix->base->blanks->len;
}

static double
weight_of_takeoff (const CwTakeoff *takeoff)
{
  double weight = 0;

  for (guint i = 0; i < takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = takeoff->walls->pdata[i];

      weight += wall->mix ? weight_of (wall->mix) : 0;
    }
  for (guint i = 0; i < takeoff->stocks->len; i++)
    {
      const CwPanelStock *stock = takeoff->stocks->pdata[i];

      for (guint j = 0; j < stock->mixes->len; j++)
        weight += weight_of (stock->mixes->pdata[j]);
    }
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
      (search->done + search->share * search->weight)
          / MAX (search->all, 1),
      search->data);
}

static void
take_in_hand (Search *search, const CwPanelMix *mix)
{
  search->plan = mix->base;
  search->weight = weight_of (mix);
  search->times = times_used (search->takeoff, mix->base);
  search->share = 0;
  search->n_cut = mix->base->cut->panels->len;
}

/* (transfer full) */
static CwPanelMix *
search_mix (Search *search, const CwPanelMix *mix)
{
  CwPanelMix *better;

  if (mix->base->cut == NULL
      || g_cancellable_is_cancelled (search->cancellable))
    return cw_panel_mix_ref (mix);
  take_in_hand (search, mix);
  better = cw_panel_mix_improve (mix, search->progress ? tell : NULL, search,
                                 search->cancellable);
  search->n_panels -= saved (search, better->base->cut->panels->len);
  search->done += search->weight;
  return better;
}

static void
search_walls (Search *search, CwTakeoff *better)
{
  const GPtrArray *walls = search->takeoff->walls;

  for (guint i = 0; i < walls->len; i++)
    {
      const CwWallTakeoff *wall = walls->pdata[i];
      CwPanelMix *mix = wall->mix ? search_mix (search, wall->mix) : NULL;

      g_ptr_array_add (better->walls, cw_wall_takeoff_with_mix (wall, mix));
    }
}

static void
mixes_free (gpointer data)
{
  CwPanelStock *stock = data;

  g_ptr_array_unref (stock->mixes);
  g_free (stock);
}

/* Only what a later planning takes over: the mixes over several walls.
 * (transfer full) (element-type CwPanelStock) */
static GPtrArray *
search_stocks (Search *search)
{
  const GPtrArray *stocks = search->takeoff->stocks;
  GPtrArray *better = g_ptr_array_new_with_free_func (mixes_free);

  for (guint i = 0; i < stocks->len; i++)
    {
      const CwPanelStock *former = stocks->pdata[i];
      CwPanelStock *stock = g_new0 (CwPanelStock, 1);

      stock->mixes = g_ptr_array_new_with_free_func (
          (GDestroyNotify) cw_panel_mix_unref);
      for (guint j = 0; j < former->mixes->len; j++)
        g_ptr_array_add (stock->mixes,
                         search_mix (search, former->mixes->pdata[j]));
      g_ptr_array_add (better, stock);
    }
  return better;
}

CwTakeoff *
cw_takeoff_search (const CwTakeoff *takeoff, CwTakeoffProgress progress,
                   gpointer data, GCancellable *cancellable)
{
  g_autoptr (CwTakeoff) better = NULL;
  g_autoptr (GPtrArray) stocks = NULL;
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
  stocks = search_stocks (&search);
  cw_takeoff_add_project (better, &(CwTakeoff) { .stocks = stocks }, NULL);
  if (!g_cancellable_is_cancelled (cancellable))
    better->effort = CW_CUT_EFFORT_LONG;
  return g_steal_pointer (&better);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "panel-plan-checker.h"

#include <math.h>

#include "cw-cut-list.h"
#include "one-plan-checker.h"

CwTakeoff *
settled_takeoff (const CwProject *project, const CwTakeoff *former)
{
  g_autoptr (CwTakeoff) quick = cw_takeoff_new (project, former, NULL);

  return cw_takeoff_improve (quick, CW_CUT_EFFORT_LIVE, NULL);
}

static void
check_wall (const CwWallTakeoff *wall, guint *n_pieces)
{
  guint n_planned = 0;

  for (guint i = 0; i < wall->plans->len; i++)
    {
      const CwPanelPlan *plan = wall->plans->pdata[i];

      check_one_plan (plan);
      n_planned += plan->n_whole + plan->pieces->len;
    }
  g_assert_cmpuint (n_planned, ==, wall->layout->pieces->len);
  *n_pieces += n_planned * (guint) wall->wall->elevation->count;
}

/* Aborts when a piece of a wall comes out of a second panel. */
static void
check_names (GHashTable *names, const CwPanelShare *share)
{
  const CwPanelPlan *plan = share->plan;

  for (guint time = 0; time < share->times; time++)
    for (guint i = 0; i < plan->pieces->len; i++)
      {
        const CwPanelPiece *piece
            = &g_array_index (plan->pieces, CwPanelPiece, i);

        g_assert_true (g_hash_table_add (
            names,
            g_strdup_printf ("%p %u %u", plan->layouts->pdata[piece->wall],
                             share->first + time * share->step
                                 + piece->copy,
                             piece->piece)));
      }
}

/* Every piece of every wall is in one share, once for each wall alike. */
static void
check_stock (const CwPanelStock *stock, guint *n_pieces)
{
  g_autoptr (GHashTable) names
      = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  guint n_panels = 0;

  for (guint i = 0; i < stock->shares->len; i++)
    {
      const CwPanelShare *share
          = &g_array_index (stock->shares, CwPanelShare, i);

      check_one_plan (share->plan);
      n_panels += share->plan->n_panels * share->times;
      *n_pieces += (share->plan->n_whole + share->plan->pieces->len)
                   * share->times;
      check_names (names, share);
    }
  g_assert_cmpuint (stock->n_panels, ==, n_panels);
}

/* The bound of a buildup's panels is with its first stock. */
static void
check_bounds (const CwTakeoff *takeoff)
{
  for (guint i = 0; i < takeoff->stocks->len;)
    {
      const CwPanelStock *first = takeoff->stocks->pdata[i];
      guint n_panels = 0;

      for (; i < takeoff->stocks->len; i++)
        {
          const CwPanelStock *stock = takeoff->stocks->pdata[i];

          if (stock->buildup != first->buildup)
            break;
          g_assert_true (stock == first || stock->least == 0);
          n_panels += stock->n_panels;
        }
      g_assert_cmpuint (first->least, <=, n_panels);
    }
}

static guint
n_listed (const GArray *pieces)
{
  guint n = 0;

  for (guint i = 0; i < pieces->len; i++)
    n += g_array_index (pieces, CwCutListPiece, i).n;
  return n;
}

/* The cut list leaves out no panel that is sawn and no sawn piece. */
static void
check_cut_list (const CwTakeoff *takeoff)
{
  g_autoptr (CwCutList) list = cw_cut_list_new (takeoff, NULL);
  guint n_panels = 0, n_pieces = 0, n_sawn = 0, n_cut = 0;

  for (guint i = 0; i < list->panels->len; i++)
    {
      const CwCutListPanel *panel = list->panels->pdata[i];

      n_panels += panel->n;
      n_pieces += n_listed (panel->pieces);
    }
  for (guint i = 0; i < takeoff->stocks->len; i++)
    {
      const CwPanelStock *stock = takeoff->stocks->pdata[i];

      n_cut += stock->n_panels - stock->n_whole;
      n_sawn += stock->n_sawn;
    }
  g_assert_cmpuint (n_panels, ==, n_cut);
  g_assert_cmpuint (n_pieces, ==, n_sawn);
}

void
check_panel_plans (const CwTakeoff *takeoff)
{
  guint on_walls = 0, in_stocks = 0;

  for (guint i = 0; i < takeoff->walls->len; i++)
    check_wall (takeoff->walls->pdata[i], &on_walls);
  for (guint i = 0; i < takeoff->stocks->len; i++)
    check_stock (takeoff->stocks->pdata[i], &in_stocks);
  g_assert_cmpuint (on_walls, ==, in_stocks);
  check_bounds (takeoff);
  check_cut_list (takeoff);
}

static guint
panel_figure (const CwTakeoff *takeoff, const char *key)
{
  const CwQuantity *quantity = cw_takeoff_quantity (takeoff, NULL, key);

  g_assert_nonnull (quantity);
  return (guint) lround (quantity->amount);
}

guint
panels_used (const CwTakeoff *takeoff)
{
  return panel_figure (takeoff, "panel.stock");
}

guint
panels_needed (const CwTakeoff *takeoff)
{
  return panel_figure (takeoff, "panel.least");
}

void
assert_plan_near_bound (const CwTakeoff *takeoff, const char *name)
{
  const guint n = panels_used (takeoff), bound = panels_needed (takeoff);

  g_test_message ("%s: %u panels, at least %u", name, n, bound);
  g_assert_cmpuint (bound, <=, n);
  g_assert_true (n - bound <= 1 || (n - bound) * 100 <= n);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-lp-bound.h"

#include <glpk.h>
#include <math.h>
#include <string.h>

#include "cw-cut-prices.h"
#include "cw-linear.h"

typedef struct
{
  const CwCutSizes *sizes;
  const CwCutSizes *rests;
  CwCutPrices *prices;
  guint bound, enough;
  glp_prob *master;          /* row 1 + s: the blanks of size s */
  double *dual;              /* what the master program says */
  double *centre;            /* prices that gave the best quotient so far */
  double best_quotient;
  gint64 *price;             /* those tried, whole */
  guint *times;              /* the panel worth most at them */
  guint8 *is_seen;            /* sizes on the panels of this step */
  int *rows;                 /* room for one column */
  double *values;
} Pricing;

static void
add_column (Pricing *pricing)
{
  int n = 0;
  for (guint i = 0; i < pricing->sizes->n; i++)
    if (pricing->times[i] > 0)
      {
        pricing->rows[++n] = (int) i + 1;
        pricing->values[n] = pricing->times[i];
      }
  const int column = glp_add_cols (pricing->master, 1);
  glp_set_col_bnds (pricing->master, column, GLP_LO, 0, 0);
  glp_set_obj_coef (pricing->master, column, 1);
  glp_set_mat_col (pricing->master, column, n, pricing->rows,
                   pricing->values);
}

/* To begin with each blank may have a panel to itself. */
static void
state_master (Pricing *pricing)
{
  const guint n = pricing->sizes->n;
  pricing->master = glp_create_prob ();
  glp_set_obj_dir (pricing->master, GLP_MIN);
  glp_add_rows (pricing->master, (int) n);
  for (guint i = 0; i < n; i++)
    glp_set_row_bnds (pricing->master, (int) i + 1, GLP_LO,
                      pricing->sizes->counts[i], 0);
  for (guint i = 0; i < n; i++)
    {
      pricing->times[i] = 1;
      add_column (pricing);
      pricing->times[i] = 0;
    }
  glp_adv_basis (pricing->master, 0);
}

/* Far more than such a program takes: keeps a cycle from going on. */
#define MOST_STEPS 20000

/* FALSE when the solver gives up; what is proven stays. */
static gboolean
solve_master (Pricing *pricing)
{
  glp_smcp how;
  glp_init_smcp (&how);
  how.msg_lev = GLP_MSG_OFF;
  how.it_lim = MOST_STEPS;
  if (glp_simplex (pricing->master, &how) != 0
      || glp_get_status (pricing->master) != GLP_OPT)
    return FALSE;
  for (guint i = 0; i < pricing->sizes->n; i++)
    pricing->dual[i] = glp_get_row_dual (pricing->master, (int) i + 1);
  return TRUE;
}

/* @share: how much of the centre is mixed in: prices that jump about less
 * get to the end in fewer steps (Wentges 1997). */
static void
try_prices (Pricing *pricing, double share)
{
  for (guint i = 0; i < pricing->sizes->n; i++)
    {
      const double mixed = share * pricing->centre[i]
                           + (1 - share) * pricing->dual[i];
      pricing->price[i] = (gint64) floor (CLAMP (mixed, 0, 1)
                                          * (double) CW_CUT_PRICE_MOST);
    }
}

/* What may come out of the rests instead; FALSE when too large to count. */
static gboolean
worth_of_rests (const Pricing *pricing, guint64 *sum)
{
  *sum = 0;
  for (guint i = 0; pricing->rests && i < pricing->rests->n; i++)
    if (!g_uint64_checked_add (
            sum, *sum,
            pricing->rests->counts[i]
                * (guint64) cw_cut_prices_worth (pricing->prices,
                                                 pricing->rests->sizes[i])))
      return FALSE;
  return TRUE;
}

/* All blanks at prices that make no panel worth more than @most. */
static void
note_bound (Pricing *pricing, gint64 most)
{
  const CwCutSizes *sizes = pricing->sizes;
  guint64 sum = 0, of_rests;
  for (guint i = 0; i < sizes->n; i++)
    if (!g_uint64_checked_add (
            &sum, sum,
            sizes->counts[i]
                * (guint64) cw_cut_prices_raised (pricing->prices, i)))
      return;
  if (!worth_of_rests (pricing, &of_rests) || of_rests >= sum)
    return;
  sum -= of_rests;
  const double quotient = (double) sum / (double) most;
  if (quotient <= pricing->best_quotient)
    return;
  pricing->best_quotient = quotient;
  for (guint i = 0; i < sizes->n; i++)
    pricing->centre[i]
        = (double) cw_cut_prices_raised (pricing->prices, i) / (double) most;
  const guint64 whole = (guint64) most;
  const guint bound = (guint) (sum / whole + (sum % whole != 0));
  pricing->bound = MAX (pricing->bound, bound);
}

/* Whether the master program can use the panel found. */
static gboolean
is_wanted (const Pricing *pricing)
{
  double worth = 0;
  for (guint i = 0; i < pricing->sizes->n; i++)
    worth += pricing->times[i] * pricing->dual[i];
  return worth > 1 + 1e-7;
}

static gboolean
add_wanted (Pricing *pricing, guint index)
{
  if (!cw_cut_prices_list (pricing->prices, index, pricing->times))
    return FALSE;
  for (guint i = 0; i < pricing->sizes->n; i++)
    pricing->is_seen[i] |= pricing->times[i] > 0;
  if (!is_wanted (pricing))
    return FALSE;
  add_column (pricing);
  return TRUE;
}

/* The panel worth most at the prices tried, and for every size that has not
 * been seen on one yet one with it in the corner: the table gives them all at
 * once. FALSE when the master program can use none. */
static gboolean
step (Pricing *pricing, double share)
{
  try_prices (pricing, share);
  const gint64 most
      = cw_cut_prices_fill (pricing->prices, pricing->price);
  if (most <= 0)
    return FALSE;
  note_bound (pricing, most);
  memset (pricing->is_seen, 0, pricing->sizes->n);
  gboolean is_any_wanted = add_wanted (pricing, CW_CUT_PRICES_ANY);
  for (guint i = 0; i < pricing->sizes->n; i++)
    if (!pricing->is_seen[i] && add_wanted (pricing, i))
      is_any_wanted = TRUE;
  return is_any_wanted;
}

/* The master program's optimum is above any bound that prices can prove. */
static gboolean
can_rise (const Pricing *pricing)
{
  return pricing->bound < pricing->enough
         && ceil (glp_get_obj_val (pricing->master) - 1e-6)
                > pricing->bound;
}

#define SHARE_OF_CENTRE 0.6

/* A step of the simplex method goes over the whole program, some 1 ns for
 * each place of it: it counts as so many sums. */
static guint64
effort_spent (const Pricing *pricing, guint n_fills)
{
  return n_fills * cw_cut_prices_effort (pricing->prices)
         + (guint64) glp_get_it_cnt (pricing->master)
               * (guint64) glp_get_num_cols (pricing->master)
               * pricing->sizes->n / 2;
}

static void
generate (Pricing *pricing, guint64 effort, GCancellable *cancellable)
{
  guint n_fills = 1;
  while (effort_spent (pricing, n_fills) <= effort
         && !g_cancellable_is_cancelled (cancellable)
         && solve_master (pricing) && can_rise (pricing))
    {
      n_fills++;
      if (step (pricing, SHARE_OF_CENTRE))
        continue;
      n_fills++;
      if (!step (pricing, 0))
        return;
    }
}

static void
start_centre (Pricing *pricing, CwCutSize panel)
{
  for (guint i = 0; i < pricing->sizes->n; i++)
    {
      const CwCutSize size = pricing->sizes->sizes[i];
      pricing->centre[i] = (double) size.width * (double) size.height
                           / ((double) panel.width * (double) panel.height);
    }
}

guint
cw_cut_lp_bound (const CwCutSizes *sizes, const CwCutSizes *rests,
                 CwCutSize panel, gboolean turn, guint known, guint enough, guint64 effort,
                 GCancellable *cancellable)
{
  if (sizes->n == 0 || known >= enough)
    return known;
  g_autoptr (CwCutPrices) prices = cw_cut_prices_new (sizes, panel, turn);
  g_autofree double *dual = g_new0 (double, sizes->n);
  g_autofree double *centre = g_new0 (double, sizes->n);
  g_autofree gint64 *price = g_new0 (gint64, sizes->n);
  g_autofree guint *times = g_new0 (guint, sizes->n);
  g_autofree guint8 *is_seen = g_new0 (guint8, sizes->n);
  g_autofree int *rows = g_new (int, sizes->n + 1);
  g_autofree double *values = g_new (double, sizes->n + 1);
  Pricing pricing = { .sizes = sizes, .rests = rests, .prices = prices, .bound = known,
                      .enough = enough, .dual = dual, .centre = centre,
                      .price = price, .times = times,
                      .is_seen = is_seen, .rows = rows,
                      .values = values };

  cw_linear_begin ();
  start_centre (&pricing, panel);
  state_master (&pricing);
  generate (&pricing, effort, cancellable);
  glp_delete_prob (pricing.master);
  cw_linear_end ();
  return pricing.bound;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cost.h"

/* m², exact by NIST SP 811, appendix B (from memory). */
#define SQUARE_FOOT 0.09290304

static void
line_free (gpointer data)
{
  CwCostLine *line = data;

  g_free (line->name);
  g_free (line);
}

CwCost *
cw_cost_new (const CwProject *project)
{
  CwCost *cost = g_new0 (CwCost, 1);
  const CwBid *bid = (const CwBid *) project->bid;

  cost->currency = cw_currency (project->currency, (CwHalf) bid->half);
  cost->lines = g_ptr_array_new_with_free_func (line_free);
  return cost;
}

void
cw_cost_free (CwCost *cost)
{
  g_return_if_fail (cost != NULL);

  g_ptr_array_unref (cost->lines);
  g_free (cost);
}

void
cw_cost_add (CwCost *cost, const CwCostLine *line)
{
  g_return_if_fail (cost != NULL && line != NULL);

  CwCostLine *added = g_memdup2 (line, sizeof *line);
  const CwDecimal amount = cw_money_amount (line->amount);

  added->name = g_strdup (line->name);
  added->money = cw_money_of (amount, line->price, &cost->currency);
  cost->sums[line->kind] += added->money;
  cost->n_unpriced += amount != 0 && line->price == 0;
  g_ptr_array_add (cost->lines, added);
}

static CwMoney
taxed_lines (const CwCost *cost)
{
  CwMoney sum = 0;

  for (guint i = 0; i < cost->lines->len; i++)
    {
      const CwCostLine *line = cost->lines->pdata[i];

      sum += line->taxed ? line->money : 0;
    }
  return sum;
}

void
cw_cost_finish (CwCost *cost, const CwBid *bid, double area)
{
  g_return_if_fail (cost != NULL && bid != NULL);

  const CwCurrency *currency = &cost->currency;
  CwMoney sum = 0;

  for (guint i = 0; i < CW_N_COSTS; i++)
    sum += cost->sums[i];
  cost->contingency = cw_money_percent (sum, bid->contingency, currency);
  sum += cost->contingency;
  cost->overhead = cw_money_percent (sum, bid->overhead, currency);
  sum += cost->overhead;
  cost->profit = bid->profit_on == CW_PROFIT_ON_PRICE
                     ? cw_money_margin (sum, bid->profit, currency)
                     : cw_money_percent (sum, bid->profit, currency);
  sum += cost->profit;
  cost->tax = cw_money_percent (
      bid->tax_on == CW_TAX_ON_PRICE ? sum : taxed_lines (cost), bid->tax,
      currency);
  sum += cost->tax;
  cost->bid = cw_money_round_up (sum, bid->rounding);
  cost->rounding = cost->bid - sum;
  cost->per_area
      = cw_money_per (cost->bid, cw_money_amount (area), currency);
  cost->per_square_foot = cw_money_per (
      cost->bid, cw_money_amount (area / SQUARE_FOOT), currency);
}

CwMoney
cw_cost_at_step (const CwCost *cost, CwCostKind kind, CwTradeStep step)
{
  CwMoney sum = 0;

  g_return_val_if_fail (cost != NULL, 0);

  for (guint i = 0; i < cost->lines->len; i++)
    {
      const CwCostLine *line = cost->lines->pdata[i];

      if (line->kind == kind && line->step == step)
        sum += line->money;
    }
  return sum;
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the project costs, line by line, and the way from there to the bid.
 * Every line is rounded once to the currency's smallest unit; all sums are of
 * rounded lines, so that what is printed adds up.
 *
 *   material + labour + equipment ─► + contingency ─► + overhead ─► + profit
 *   ─► + tax ─► rounded up ─► the bid
 */
#pragma once

#include "cw-project.h"
#include "cw-quantity.h"

G_BEGIN_DECLS

typedef struct
{
  CwCostKind kind;
  CwTradeStep step;
  char *name;
  const char *key;            /* (nullable): of the quantity that is priced */
  double amount;
  const char *unit;           /* of the amount: a quantity's or an order unit, N_() */
  CwDecimal price;            /* of one */
  CwMoney money;
  gboolean taxed;
} CwCostLine;

typedef struct
{
  CwCurrency currency;
  GPtrArray *lines;           /* CwCostLine, in the order of the work */
  CwMoney sums[CW_N_COSTS];
  CwMoney contingency, overhead, profit, tax, rounding, bid;
  CwMoney per_area;           /* of the bid, for a square metre of net wall */
  CwMoney per_square_foot;
  guint n_unpriced;           /* lines that have an amount and no price */
} CwCost;

CwCost *cw_cost_new (const CwProject *project);
void cw_cost_free (CwCost *cost);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwCost, cw_cost_free)

/* @line's money is worked out here; @name is copied. */
void cw_cost_add (CwCost *cost, const CwCostLine *line);

/* What is put on top: from the lines to the bid. @area: m² of net wall. */
void cw_cost_finish (CwCost *cost, const CwBid *bid, double area);

/* The sum of the lines of one kind at one step. */
CwMoney cw_cost_at_step (const CwCost *cost, CwCostKind kind,
                         CwTradeStep step);

G_END_DECLS

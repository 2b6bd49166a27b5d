/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The way from what is ordered and worked to the bid, for the slow estimator:
 * whole cents throughout, each line rounded by itself.
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

typedef struct
{
  gint64 material, labour, equipment;     /* cents */
  gint64 contingency, overhead, profit, tax, bid, unit;
} SlowCost;

/* A half cent goes up. @amount to six places, @price in millionths. */
gint64 slow_cents (double amount, CwDecimal price);

/* From the three sums; @taxed: cents of the lines that are. @area: m². */
void slow_cost_finish (SlowCost *cost, const CwBid *bid, gint64 taxed,
                       double area);

G_END_DECLS

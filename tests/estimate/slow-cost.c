/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "slow-cost.h"

#include <math.h>

typedef __int128 Wide;

/* @of over @by, a half away from zero; @by is over 0. */
static gint64
rounded (Wide of, Wide by)
{
  const Wide whole = of < 0 ? -of : of;
  const Wide n = (2 * whole + by) / (2 * by);

  return (gint64) (of < 0 ? -n : n);
}

gint64
slow_cents (double amount, CwDecimal price)
{
  /* Millionths by millionths to hundredths. */
  return rounded ((Wide) llround (amount * 1e6) * price,
                  (Wide) 10000000000);
}

static gint64
percent (gint64 of, CwDecimal percent)
{
  return rounded ((Wide) of * percent, (Wide) 100000000);
}

/* So that it is @share of the sum. */
static gint64
margin (gint64 cost, CwDecimal share)
{
  return rounded ((Wide) cost * share, (Wide) 100000000 - share);
}

static gint64
round_up (gint64 money, CwDecimal step)
{
  const gint64 cents = step / 10000;

  return cents > 0 ? (money + cents - 1) / cents * cents : money;
}

void
slow_cost_finish (SlowCost *cost, const CwBid *bid, gint64 taxed, double area)
{
  gint64 sum = cost->material + cost->labour + cost->equipment;

  cost->contingency = percent (sum, bid->contingency);
  sum += cost->contingency;
  cost->overhead = percent (sum, bid->overhead);
  sum += cost->overhead;
  cost->profit = bid->profit_on == CW_PROFIT_ON_PRICE
                     ? margin (sum, bid->profit)
                     : percent (sum, bid->profit);
  sum += cost->profit;
  cost->tax = percent (bid->tax_on == CW_TAX_ON_PRICE ? sum : taxed,
                       bid->tax);
  sum += cost->tax;
  cost->bid = round_up (sum, bid->rounding);
  cost->unit = rounded ((Wide) cost->bid * 1000000,
                        (Wide) llround (area * 1e6));
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-takeoff-change.h"

#include <math.h>

static double
amount_of (const CwTakeoff *takeoff, const char *key)
{
  const CwQuantity *quantity = cw_takeoff_quantity (takeoff, NULL, key);

  return quantity ? quantity->amount : 0;
}

static double
more_of (const CwTakeoff *before, const CwTakeoff *after, const char *key)
{
  return amount_of (after, key) - amount_of (before, key);
}

CwTakeoffChange
cw_takeoff_change (const CwTakeoff *before, const CwTakeoff *after)
{
  g_return_val_if_fail (before != NULL && after != NULL,
                        (CwTakeoffChange) { 0 });

  return (CwTakeoffChange) {
    .panels = llround (more_of (before, after, "panel.stock")),
    .saw = more_of (before, after, "saw.length")
           + more_of (before, after, "saw.curve"),
    .money = more_of (before, after, "cost.bid"),
    .has_money = amount_of (before, "cost.bid") > 0
                 || amount_of (after, "cost.bid") > 0,
  };
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-takeoff-change.h"

#include <math.h>

#include "cw-estimate-private.h"

static double
more_of (const CwTakeoff *before, const CwTakeoff *after, const char *key)
{
  return cw_quantities_amount (after->quantities, key)
         - cw_quantities_amount (before->quantities, key);
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
    .has_money = cw_quantities_amount (before->quantities, "cost.bid") > 0
                 || cw_quantities_amount (after->quantities, "cost.bid") > 0,
  };
}

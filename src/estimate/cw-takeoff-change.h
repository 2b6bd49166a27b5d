/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What one takeoff of a project has more than another: the marginal cost of
 * whatever lies between the two.
 */
#pragma once

#include "cw-takeoff.h"

G_BEGIN_DECLS

typedef struct
{
  gint64 panels;              /* that the cut plans use */
  double saw;                 /* m of cuts, straight and curved */
  double money;               /* of the bid, in the project's money */
  gboolean has_money;         /* FALSE: nothing has a price */
} CwTakeoffChange;

/* Both looked for equally long, or what a longer look found counts too. */
CwTakeoffChange cw_takeoff_change (const CwTakeoff *before,
                                   const CwTakeoff *after);

G_END_DECLS

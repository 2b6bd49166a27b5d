/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The takeoff as RFC 4180 CSV.
 */
#pragma once

#include "cw-takeoff.h"

G_BEGIN_DECLS

/* Columns key,scope,quantity,unit,order_quantity,order_unit,steps; numbers
 * with a point and up to 17 significant digits, never fewer than they need;
 * lines end in CR LF. (transfer full) */
char *cw_takeoff_to_csv (const CwTakeoff *takeoff);

G_END_DECLS

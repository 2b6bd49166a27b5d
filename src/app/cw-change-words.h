/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a change costs, in words.
 */
#pragma once

#include "cw-money.h"
#include "cw-takeoff-change.h"
#include "cw-text-style.h"

G_BEGIN_DECLS

/* "+1 panel, −2.3 m of cuts, +41.20 USD": what is 0 as it would be written is
 * left out, money too where nothing has a price; "no change" when nothing is
 * left. (transfer full) */
char *cw_change_words (const CwTakeoffChange *change,
                       const CwTextStyle *style, const CwCurrency *currency);

G_END_DECLS

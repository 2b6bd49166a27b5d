/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A price as it is read and typed.
 */
#pragma once

#include "cw-money.h"

G_BEGIN_DECLS

/* With the places of its currency, "31.50", or all it has beyond them:
 * "0.0375". (transfer full) */
char *cw_price_text (CwDecimal price, const char *currency,
                     const CwTextStyle *style);

/* Without grouping, as an entry holds it. (transfer full) */
char *cw_price_entry_text (CwDecimal price, const char *currency,
                           const CwTextStyle *style);

G_END_DECLS

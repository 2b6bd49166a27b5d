/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Amounts of the estimate as the window shows them.
 */
#pragma once

#include "cw-quantity.h"

G_BEGIN_DECLS

/* The number alone, in the reader's units. @unit: (out) (optional): static,
 * "" for counts. (transfer full) */
char *cw_amount_text (const CwTextStyle *style, double value,
                      const char *unit, const char **shown_unit);

/* The number and its unit. (transfer full) */
char *cw_amount_text_with_unit (const CwTextStyle *style, double value,
                                const char *unit);

/* "order 12 boxes"; NULL when nothing is ordered of it. (transfer full) */
char *cw_amount_order_text (const CwTextStyle *style,
                            const CwQuantity *quantity);

G_END_DECLS

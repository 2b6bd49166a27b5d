/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One line of the quantities: what, how the last edit changed it, how much,
 * and what is ordered of it.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-quantity.h"

G_BEGIN_DECLS

#define CW_TYPE_QUANTITY_ROW (cw_quantity_row_get_type ())
G_DECLARE_FINAL_TYPE (CwQuantityRow, cw_quantity_row, CW, QUANTITY_ROW,
                      GtkListBoxRow)

/* @variant: (nullable) */
GtkWidget *cw_quantity_row_new (const CwQuantityType *type,
                                const char *variant);
const CwQuantityType *cw_quantity_row_type (CwQuantityRow *row);
const char *cw_quantity_row_variant (CwQuantityRow *row);   /* borrowed */

/* @tell_change: what was shown before is of the same thing, so that a change
 * stands beside the figure for a while. A line of nothing is hidden. */
void cw_quantity_row_show (CwQuantityRow *row, const CwQuantity *quantity,
                           const CwTextStyle *style, gboolean tell_change);

/* How the amount came about, in words; borrowed. */
const char *cw_quantity_row_steps (CwQuantityRow *row);

/* What is shown, for tests; borrowed. */
const char *cw_quantity_row_figure (CwQuantityRow *row);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One item of the price book, to be typed or changed.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-price-book.h"
#include "cw-text-style.h"

G_BEGIN_DECLS

/* What is wrong with @item where it would go, (transfer full), or NULL when it
 * was taken. */
typedef char *(*CwPriceItemFunc) (const CwPriceItem *item, gpointer data);

/* @item: what to begin with. @free_data is called when the dialog is gone. */
void cw_price_item_dialog_open (GtkWindow *parent, const char *title,
                                const CwPriceItem *item,
                                const CwTextStyle *style,
                                CwPriceItemFunc taken, gpointer data,
                                GDestroyNotify free_data);

G_END_DECLS

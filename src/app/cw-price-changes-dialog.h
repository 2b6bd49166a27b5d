/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Changes of prices as a table with ticks: which are to be taken.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-price-book.h"
#include "cw-text-style.h"

G_BEGIN_DECLS

/* @taken: one for each change. */
typedef void (*CwPriceChangesFunc) (const GPtrArray *changes,
                                    const gboolean *taken, gpointer data);

/* @changes: (transfer full). @free_data is called when the dialog is gone. */
void cw_price_changes_dialog_open (GtkWindow *parent, const char *title,
                                   GPtrArray *changes,
                                   const CwTextStyle *style,
                                   CwPriceChangesFunc taken, gpointer data,
                                   GDestroyNotify free_data);

G_END_DECLS

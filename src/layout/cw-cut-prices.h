/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How much can one panel be worth, when every blank cut from it has a price
 * and any number may be cut of each? Worked out exactly for all rectangles
 * that straight cuts can lead to, the smaller ones first: a rectangle is
 * worth the dearest blank that fits on it, or what the two parts of a cut are
 * worth together (Gilmore and Gomory, Multistage cutting stock problems of two
 * and more dimensions, Operations Research 13, 1965).
 *
 * Prices are whole numbers, and so are all sums: nothing is rounded.
 *
 * Lengths that are too fine for a table are first counted in coarser units,
 * blanks rounded down, so that whatever fits on a panel still does. Then a
 * panel may come out worth more than it can be, never less.
 */
#pragma once

#include "cw-cut-sizes.h"

G_BEGIN_DECLS

typedef struct CwCutPrices CwCutPrices;

CwCutPrices *cw_cut_prices_new (const CwCutSizes *sizes, CwCutSize panel,
                                gboolean turn);
void cw_cut_prices_free (CwCutPrices *prices);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwCutPrices, cw_cut_prices_free)

/* Sums that have to be compared to fill the table once, about 1 ns each. */
guint64 cw_cut_prices_effort (const CwCutPrices *prices);

/* The greatest price that keeps sums within gint64. */
#define CW_CUT_PRICE_MOST (G_GINT64_CONSTANT (1) << 32)

/*
 * cw_cut_prices_fill:
 * @price: of each size, 0 … CW_CUT_PRICE_MOST
 *
 * Returns: the most that a panel is worth
 */
gint64 cw_cut_prices_fill (CwCutPrices *prices, const gint64 *price);

/* What is to be had from a blank of size @index if it were cut further, at
 * least its price. With it as its price a panel is worth no more. */
gint64 cw_cut_prices_raised (const CwCutPrices *prices, guint index);

/* The most that a rectangle within the panel is worth, with the kerf added. */
gint64 cw_cut_prices_worth (const CwCutPrices *prices, CwCutSize rectangle);

/*
 * cw_cut_prices_list:
 * @index: a size that is to be cut from the panel's corner, or
 *   CW_CUT_PRICES_ANY
 * @times: (out): how often each size is cut from a panel that is worth as much
 *   as any that begins so
 *
 * Returns: FALSE when that size is too fine to count
 */
#define CW_CUT_PRICES_ANY G_MAXUINT
gboolean cw_cut_prices_list (const CwCutPrices *prices, guint index,
                             guint *times);

G_END_DECLS

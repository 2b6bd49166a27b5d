/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The user's price book in a window: searched, edited, and taken to and from
 * the job's project. Every change is written at once.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-job.h"

G_BEGIN_DECLS

#define CW_TYPE_PRICES_WINDOW (cw_prices_window_get_type ())
G_DECLARE_FINAL_TYPE (CwPricesWindow, cw_prices_window, CW, PRICES_WINDOW,
                      GtkWindow)

CwPricesWindow *cw_prices_window_new (GtkWindow *parent, CwJob *job);

/* As it is shown, borrowed; NULL when it cannot be read. */
const GPtrArray *cw_prices_window_book (CwPricesWindow *window);

G_END_DECLS

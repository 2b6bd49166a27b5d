/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What greets in an empty project: ways to begin, and projects opened lately.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

GtkWidget *cw_start_page_new (void);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A button with a list of all steps, the latest on top, to go back or forward
 * to any of them.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-document.h"

G_BEGIN_DECLS

/* Fills the popover of @button whenever it opens; the rows call
 * "win.go-to-state". */
void cw_history_button_follow (GtkMenuButton *button, CwDocument *document);

G_END_DECLS

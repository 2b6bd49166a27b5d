/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Asks how often and how far apart the selection is to be repeated.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-job.h"

G_BEGIN_DECLS

void cw_repeat_dialog_show (GtkWindow *parent, CwJob *job);

G_END_DECLS

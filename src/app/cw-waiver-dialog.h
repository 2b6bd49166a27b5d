/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The form that asks why a check is let pass.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-checks.h"
#include "cw-job.h"

G_BEGIN_DECLS

/* @check need not outlive the call. */
void cw_waiver_dialog_show (GtkWindow *parent, CwJob *job,
                            const CwCheck *check);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The quantities of the shown wall or of the whole project, by trade step,
 * following every change. While newer ones are being worked out the last good
 * ones stay, a little dimmed.
 *
 * Signal "lit" (pointer to a CwQuantityType or NULL, its variant or NULL): a
 * line was chosen.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-job.h"

G_BEGIN_DECLS

#define CW_TYPE_QUANTITIES (cw_quantities_get_type ())
G_DECLARE_FINAL_TYPE (CwQuantities, cw_quantities, CW, QUANTITIES, GtkWidget)

void cw_quantities_set_job (CwQuantities *quantities, CwJob *job);

/* The figure that stands in the line of @key, for tests; NULL when there is
 * no such line. Borrowed. */
const char *cw_quantities_figure (CwQuantities *quantities, const char *key);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The inspector: every attribute of what is selected; with nothing selected,
 * of the shown elevation, its buildup and the project.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-job.h"

G_BEGIN_DECLS

#define CW_TYPE_INSPECTOR (cw_inspector_get_type ())
G_DECLARE_FINAL_TYPE (CwInspector, cw_inspector, CW, INSPECTOR, GtkWidget)

GtkWidget *cw_inspector_new (void);
void cw_inspector_set_job (CwInspector *inspector, CwJob *job);

/* (nullable): the row of a field in the first group that has it, for tests. */
GtkWidget *cw_inspector_row (CwInspector *inspector, const char *field);

G_END_DECLS

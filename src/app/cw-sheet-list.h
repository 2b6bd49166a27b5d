/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The plan sheets of a project with their scales and what is wrong with their
 * files.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-job.h"

G_BEGIN_DECLS

#define CW_TYPE_SHEET_LIST (cw_sheet_list_get_type ())
G_DECLARE_FINAL_TYPE (CwSheetList, cw_sheet_list, CW, SHEET_LIST, GtkWidget)

void cw_sheet_list_set_job (CwSheetList *list, CwJob *job);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One check in the list, with a button that waives it or takes the waiver
 * back. Signal "waive": that button was pressed.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-checks.h"

G_BEGIN_DECLS

#define CW_TYPE_CHECK_ROW (cw_check_row_get_type ())
G_DECLARE_FINAL_TYPE (CwCheckRow, cw_check_row, CW, CHECK_ROW, GtkListBoxRow)

/* @check is borrowed and must outlive the row. */
GtkWidget *cw_check_row_new (const CwCheck *check, const CwProject *project);
const CwCheck *cw_check_row_check (CwCheckRow *row);

G_END_DECLS

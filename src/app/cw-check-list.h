/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The checks, as a list grouped by severity. Choosing one shows its wall and
 * selects what it is about. Signal "chosen": a CwCheck, or NULL when none is.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-checker.h"

G_BEGIN_DECLS

#define CW_TYPE_CHECK_LIST (cw_check_list_get_type ())
G_DECLARE_FINAL_TYPE (CwCheckList, cw_check_list, CW, CHECK_LIST, GtkWidget)

void cw_check_list_set_job (CwCheckList *list, CwJob *job,
                            CwChecker *checker);

/* Its row, or NULL; for tests. */
GtkListBoxRow *cw_check_list_row (CwCheckList *list, const char *code);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The checks, as a list; choosing one shows its wall.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-job.h"

G_BEGIN_DECLS

#define CW_TYPE_CHECK_LIST (cw_check_list_get_type ())
G_DECLARE_FINAL_TYPE (CwCheckList, cw_check_list, CW, CHECK_LIST, GtkWidget)

void cw_check_list_set_job (CwCheckList *list, CwJob *job);

G_END_DECLS

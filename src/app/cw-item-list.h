/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is on the shown wall, as a list: the drawing for who reads instead of
 * looking. What is chosen in it is selected on the board, and the other way
 * round.
 */
#pragma once

#include "cw-job.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define CW_TYPE_ITEM_LIST (cw_item_list_get_type ())
G_DECLARE_FINAL_TYPE (CwItemList, cw_item_list, CW, ITEM_LIST, GtkWidget)

void cw_item_list_set_job (CwItemList *list, CwJob *job);

/* Unfolds it and brings the keyboard there. */
void cw_item_list_enter (CwItemList *list);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The schedule of openings: the project's marks with their sizes and how many
 * of each are placed. A row dragged onto the board, or activated, places one
 * more.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-job.h"

G_BEGIN_DECLS

#define CW_TYPE_MARK_LIST (cw_mark_list_get_type ())
G_DECLARE_FINAL_TYPE (CwMarkList, cw_mark_list, CW, MARK_LIST, GtkWidget)

void cw_mark_list_set_job (CwMarkList *list, CwJob *job);

G_END_DECLS

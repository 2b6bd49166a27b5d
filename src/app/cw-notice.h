/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A line at the foot of the window: something is being done, or was done.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define CW_TYPE_NOTICE (cw_notice_get_type ())
G_DECLARE_FINAL_TYPE (CwNotice, cw_notice, CW, NOTICE, GtkWidget)

/* At work, until the next call; its button cancels @cancellable. */
void cw_notice_work (CwNotice *notice, const char *words,
                     GCancellable *cancellable);

/* How far the work is, 0 … 1, with other words. @enough: (nullable): a second
 * button cancels it, so that the work ends with what it has. */
void cw_notice_share (CwNotice *notice, const char *words, double share,
                      GCancellable *enough);

/* Done: goes away by itself. @file: (nullable): offered to be opened. */
void cw_notice_done (CwNotice *notice, const char *words, GFile *file);

void cw_notice_hide (CwNotice *notice);

G_END_DECLS

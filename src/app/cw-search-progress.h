/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How far a search on another thread is, told on the main thread as fast as
 * that can listen.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

typedef struct CwSearchProgress CwSearchProgress;

typedef void (*CwSearchTold) (gpointer data);

/* @told: called with @data on the main thread after each change that is not
 * overtaken by the next, until cw_search_progress_end(). */
CwSearchProgress *cw_search_progress_new (CwSearchTold told, gpointer data);
CwSearchProgress *cw_search_progress_ref (CwSearchProgress *progress);
void cw_search_progress_unref (CwSearchProgress *progress);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwSearchProgress, cw_search_progress_unref)

/* On the main thread: nothing more is told. */
void cw_search_progress_end (CwSearchProgress *progress);

/* On any thread; a CwTakeoffProgress with the progress as its data. */
void cw_search_progress_set (guint n_panels, double share, gpointer progress);
void cw_search_progress_get (CwSearchProgress *progress, guint *n_panels,
                             double *share);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Writing a job's takeoff to a file, on another thread.
 */
#pragma once

#include "cw-job.h"

G_BEGIN_DECLS

typedef enum { CW_EXPORT_PDF, CW_EXPORT_CSV } CwExportKind;

/* @n_panels, @share: see cw_takeoff_search(). On the main thread. */
typedef void (*CwExportProgress) (guint n_panels, double share,
                                  gpointer data);

/*
 * cw_export_async:
 * @progress: (nullable): called with @data while fewer panels are looked for
 * @enough: (nullable): cancelled, the search ends with what it has
 *
 * Of the job as it is now, whether or not the figures on screen are up to
 * date. Where the job's estimator searches for fewer panels when idle, the
 * search is brought to its end first, so that what is written depends on the
 * project alone; the estimator then shows the takeoff that was written.
 * The file is whole or as it was before.
 */
void cw_export_async (CwJob *job, CwExportKind kind, GFile *file,
                      CwExportProgress progress, GCancellable *enough,
                      GCancellable *cancellable, GAsyncReadyCallback done,
                      gpointer data);
/* @stopped_early: (out) (optional): the search had not ended. */
gboolean cw_export_finish (GAsyncResult *result, gboolean *stopped_early,
                           GError **error);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Writing a job's takeoff to a file, on another thread.
 */
#pragma once

#include "cw-job.h"

G_BEGIN_DECLS

typedef enum { CW_EXPORT_PDF, CW_EXPORT_CSV } CwExportKind;

/* Of the job as it is now, whether or not the figures on screen are up to
 * date. The file is whole or as it was before. */
void cw_export_async (CwJob *job, CwExportKind kind, GFile *file,
                      GCancellable *cancellable, GAsyncReadyCallback done,
                      gpointer data);
gboolean cw_export_finish (GAsyncResult *result, GError **error);

G_END_DECLS

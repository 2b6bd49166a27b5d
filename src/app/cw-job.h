/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The job on the desk: a document with its file, its sheets and its takeoff.
 * One for each window.
 *
 * Signals: "file-changed" (another file, or saved or unsaved now);
 * "style-changed" (the project's units are others).
 */
#pragma once

#include "cw-document.h"
#include "cw-estimator.h"
#include "cw-sheet-store.h"

G_BEGIN_DECLS

#define CW_TYPE_JOB (cw_job_get_type ())
G_DECLARE_FINAL_TYPE (CwJob, cw_job, CW, JOB, GObject)

/* An empty project in the units of the locale. */
CwJob *cw_job_new (void);

/* Reads on another thread. */
void cw_job_open_async (GFile *file, GCancellable *cancellable,
                        GAsyncReadyCallback done, gpointer data);
/* (transfer full) (nullable) */
CwJob *cw_job_open_finish (GAsyncResult *result, GError **error);

/* Lets the job forget its file, so that saving asks for a name; sheets are
 * still found. For examples. */
void cw_job_detach (CwJob *job);

CwDocument *cw_job_document (CwJob *job);
CwEstimator *cw_job_estimator (CwJob *job);
CwSheetStore *cw_job_sheets (CwJob *job);
const CwTextStyle *cw_job_style (CwJob *job);
const CwTakeoff *cw_job_takeoff (CwJob *job);      /* borrowed, nullable */
GFile *cw_job_file (CwJob *job);                   /* NULL: never saved */
GFile *cw_job_folder (CwJob *job);                 /* NULL likewise */

/* For titles and proposed file names, without suffix. (transfer full) */
char *cw_job_name (CwJob *job);

/* Nothing in it, never saved: may be replaced without a question. */
gboolean cw_job_is_untouched (CwJob *job);

/*
 * cw_job_save_async:
 * @file: (nullable): another file than the job's
 * @over_changes: write even if another program changed the file meanwhile
 *
 * Writes on another thread what the document is now; it may be edited
 * meanwhile. Sheets' paths follow the file's folder.
 */
void cw_job_save_async (CwJob *job, GFile *file, gboolean over_changes,
                        GAsyncReadyCallback done, gpointer data);
gboolean cw_job_save_finish (CwJob *job, GAsyncResult *result,
                             GError **error);

/* How the job's file would name a sheet @file: relative when there is a
 * folder to be relative to. (transfer full) */
char *cw_job_sheet_path (CwJob *job, GFile *file);
GFile *cw_job_sheet_file (CwJob *job, const char *path);

G_END_DECLS

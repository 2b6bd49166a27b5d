/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-export.h"

#include <string.h>

#include "cw-i18n.h"
#include "cw-table-csv.h"
#include "cw-takeoff-pdf.h"
#include "cw-thread.h"

typedef struct
{
  CwExportKind kind;
  GFile *file;
  char *project_name;       /* (nullable): of its file */
  CwProject *project;
  CwTakeoff *former;        /* (nullable) */
  CwTextStyle style;
} Export;

static void
export_free (Export *export)
{
  g_object_unref (export->file);
  g_free (export->project_name);
  cw_node_unref (export->project);
  g_clear_pointer (&export->former, cw_takeoff_unref);
  g_free (export);
}

static GBytes *
make_bytes (const Export *export, const CwTakeoff *takeoff,
            GCancellable *cancellable, GError **error)
{
  if (export->kind == CW_EXPORT_CSV)
    {
      char *text = cw_takeoff_to_csv (takeoff);
      return g_bytes_new_take (text, strlen (text));
    }
  CwTakeoffPdfOptions options;
  cw_takeoff_pdf_options_init (&options, export->project);
  options.style = export->style;
  options.file_name = export->project_name;
  return cw_takeoff_to_pdf (takeoff, &options, cancellable, error);
}

/* Under another name first, so that a full disk leaves the former file. */
static gboolean
write_bytes (GFile *file, GBytes *bytes, GCancellable *cancellable,
             GError **error)
{
  gsize n;
  const char *data = g_bytes_get_data (bytes, &n);
  g_autofree char *path = g_file_get_path (file);
  if (g_cancellable_set_error_if_cancelled (cancellable, error))
    return FALSE;
  if (path)
    return g_file_set_contents_full (
        path, data, (gssize) n,
        G_FILE_SET_CONTENTS_CONSISTENT | G_FILE_SET_CONTENTS_DURABLE, 0666,
        error);
  return g_file_replace_contents (file, data, n, NULL, FALSE,
                                  G_FILE_CREATE_NONE, NULL, cancellable,
                                  error);
}

static void
export_in_thread (GTask *task, gpointer source, gpointer data,
                  GCancellable *cancellable)
{
  Export *export = data;
  GError *error = NULL;
  g_autoptr (CwTakeoff) quick
      = cw_takeoff_new (export->project, export->former, cancellable);
  g_autoptr (CwTakeoff) takeoff
      = quick ? cw_takeoff_improve (quick, CW_CUT_EFFORT_LIVE, cancellable)
              : NULL;
  g_autoptr (GBytes) bytes
      = takeoff ? make_bytes (export, takeoff, cancellable, &error) : NULL;
  if (bytes && write_bytes (export->file, bytes, cancellable, &error))
    g_task_return_boolean (task, TRUE);
  else if (error)
    g_task_return_error (task, error);
  else
    g_task_return_new_error (task, G_IO_ERROR, G_IO_ERROR_CANCELLED,
                             _("It was given up."));
}

void
cw_export_async (CwJob *job, CwExportKind kind, GFile *file,
                 GCancellable *cancellable, GAsyncReadyCallback done,
                 gpointer data)
{
  g_return_if_fail (CW_IS_JOB (job));
  g_return_if_fail (G_IS_FILE (file));
  const CwTakeoff *takeoff = cw_job_takeoff (job);
  Export *export = g_new0 (Export, 1);
  export->kind = kind;
  export->file = g_object_ref (file);
  export->project
      = cw_node_ref (cw_document_project (cw_job_document (job)));
  export->former = takeoff ? cw_takeoff_ref (takeoff) : NULL;
  export->style = *cw_job_style (job);
  if (cw_job_file (job))
    export->project_name = g_file_get_basename (cw_job_file (job));
  cw_thread_run (job, export_in_thread, export, (GDestroyNotify) export_free,
                 cancellable, done, data);
}

gboolean
cw_export_finish (GAsyncResult *result, GError **error)
{
  return g_task_propagate_boolean (G_TASK (result), error);
}

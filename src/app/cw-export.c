/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-export.h"

#include <string.h>

#include "cw-i18n.h"
#include "cw-search-progress.h"
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
  gboolean searches;
  CwSearchProgress *search;
  GCancellable *enough;     /* ends the search alone */
  CwTakeoff *takeoff;       /* (nullable): that was written */
  CwExportProgress progress;
  GAsyncReadyCallback done;
  gpointer data;
} Export;

static void
export_free (Export *export)
{
  g_object_unref (export->file);
  g_free (export->project_name);
  cw_node_unref (export->project);
  g_clear_pointer (&export->former, cw_takeoff_unref);
  g_clear_pointer (&export->takeoff, cw_takeoff_unref);
  g_clear_object (&export->enough);
  cw_search_progress_unref (export->search);
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
end_search (GCancellable *cancellable, GCancellable *enough)
{
  g_cancellable_cancel (enough);
}

/* (transfer full) (nullable): NULL when cancelled */
static CwTakeoff *
search_long (Export *export, const CwTakeoff *live, GCancellable *cancellable)
{
  gulong id = cancellable
                  ? g_cancellable_connect (cancellable,
                                           G_CALLBACK (end_search),
                                           export->enough, NULL)
                  : 0;
  CwTakeoff *takeoff = cw_takeoff_search (live, cw_search_progress_set,
                                          export->search, export->enough);
  g_cancellable_disconnect (cancellable, id);
  return takeoff;
}

/* (transfer full) (nullable): NULL when cancelled */
static CwTakeoff *
work_out (Export *export, GCancellable *cancellable)
{
  g_autoptr (CwTakeoff) quick
      = cw_takeoff_new (export->project, export->former, cancellable);
  CwTakeoff *live
      = quick ? cw_takeoff_improve (quick, CW_CUT_EFFORT_LIVE, cancellable)
              : NULL;
  if (!live || !export->searches)
    return live;
  CwTakeoff *best = search_long (export, live, cancellable);
  cw_takeoff_unref (live);
  return best;
}

static void
export_in_thread (GTask *task, gpointer source, gpointer data,
                  GCancellable *cancellable)
{
  Export *export = data;
  GError *error = NULL;
  export->takeoff = work_out (export, cancellable);
  g_autoptr (GBytes) bytes
      = export->takeoff
            ? make_bytes (export, export->takeoff, cancellable, &error)
            : NULL;
  if (bytes && write_bytes (export->file, bytes, cancellable, &error))
    g_task_return_boolean (task, TRUE);
  else if (error)
    g_task_return_error (task, error);
  else
    g_task_return_new_error (task, G_IO_ERROR, G_IO_ERROR_CANCELLED,
                             _("It was given up."));
}

static void
told (gpointer data)
{
  Export *export = data;
  guint n_panels;
  double share;
  cw_search_progress_get (export->search, &n_panels, &share);
  if (export->progress)
    export->progress (n_panels, share, export->data);
}

static void
ended (GObject *job, GAsyncResult *result, gpointer data)
{
  Export *export = data;
  cw_search_progress_end (export->search);
  cw_estimator_release (cw_job_estimator (CW_JOB (job)), export->takeoff);
  export->done (job, result, export->data);
}

void
cw_export_async (CwJob *job, CwExportKind kind, GFile *file,
                 CwExportProgress progress, GCancellable *enough,
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
  export->searches = cw_estimator_get_searches (cw_job_estimator (job));
  export->search = cw_search_progress_new (told, export);
  export->enough = enough ? g_object_ref (enough) : g_cancellable_new ();
  export->progress = progress;
  export->done = done;
  export->data = data;
  cw_estimator_hold (cw_job_estimator (job));
  cw_thread_run (job, export_in_thread, export, (GDestroyNotify) export_free,
                 cancellable, ended, export);
}

gboolean
cw_export_finish (GAsyncResult *result, gboolean *stopped_early,
                  GError **error)
{
  const Export *export = g_task_get_task_data (G_TASK (result));
  if (stopped_early)
    *stopped_early = export->searches && export->takeoff
                     && !cw_takeoff_is_settled (export->takeoff,
                                                CW_CUT_EFFORT_LONG);
  return g_task_propagate_boolean (G_TASK (result), error);
}

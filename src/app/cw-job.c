/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-job.h"

#include "cw-edits.h"
#include "cw-i18n.h"
#include "cw-project-file.h"
#include "cw-relative-path.h"
#include "cw-thread.h"

struct _CwJob
{
  GObject parent;
  CwDocument *document;
  CwEstimator *estimator;
  CwSheetStore *sheets;
  CwTextStyle style;
  GFile *file;            /* NULL: never saved */
  GPtrArray *folders;     /* GFile: where relative sheets may be, newest last */
  char *etag;
};

G_DEFINE_FINAL_TYPE (CwJob, cw_job, G_TYPE_OBJECT)

enum { FILE_CHANGED, STYLE_CHANGED, N_SIGNALS };
static guint signals[N_SIGNALS];

CwDocument *
cw_job_document (CwJob *job)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  return job->document;
}

CwEstimator *
cw_job_estimator (CwJob *job)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  return job->estimator;
}

CwSheetStore *
cw_job_sheets (CwJob *job)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  return job->sheets;
}

const CwTextStyle *
cw_job_style (CwJob *job)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  return &job->style;
}

const CwTakeoff *
cw_job_takeoff (CwJob *job)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  return cw_estimator_takeoff (job->estimator);
}

GFile *
cw_job_file (CwJob *job)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  return job->file;
}

GFile *
cw_job_folder (CwJob *job)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  return job->folders->len ? job->folders->pdata[job->folders->len - 1] : NULL;
}

static char *
file_stem (GFile *file)
{
  char *name = g_file_get_basename (file);
  if (g_str_has_suffix (name, ".cladwright"))
    name[strlen (name) - strlen (".cladwright")] = '\0';
  return name;
}

char *
cw_job_name (CwJob *job)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  if (job->file)
    return file_stem (job->file);
  const CwInfo *info
      = (const CwInfo *) cw_document_project (job->document)->info;
  return g_strdup (*info->name ? info->name : _("New project"));
}

gboolean
cw_job_is_untouched (CwJob *job)
{
  g_return_val_if_fail (CW_IS_JOB (job), FALSE);
  return !job->file && cw_document_is_saved (job->document)
         && !cw_document_can_undo (job->document)
         && !cw_document_can_redo (job->document)
         && cw_list_length (cw_document_project (job->document)->elevations)
                == 0;
}

char *
cw_job_sheet_path (CwJob *job, GFile *file)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  GFile *folder = cw_job_folder (job);
  if (folder)
    return cw_relative_path (folder, file);
  char *path = g_file_get_path (file);
  return path ? path : g_file_get_uri (file);
}

GFile *
cw_job_sheet_file (CwJob *job, const char *path)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  /* After saving elsewhere, undo brings back paths of the former folder. */
  for (guint i = job->folders->len; i-- > 0;)
    {
      g_autoptr (GFile) file
          = g_file_resolve_relative_path (job->folders->pdata[i], path);
      if (i == 0 || g_file_query_exists (file, NULL))
        return g_steal_pointer (&file);
    }
  return g_file_new_for_path (path);
}

static GFile *
resolve_sheet (const char *path, gpointer data)
{
  return cw_job_sheet_file (data, path);
}

static void
set_file (CwJob *job, GFile *file)
{
  g_autoptr (GFile) folder = g_file_get_parent (file);
  GFile *former = cw_job_folder (job);
  if (folder && (!former || !g_file_equal (folder, former)))
    g_ptr_array_add (job->folders, g_object_ref (folder));
  g_set_object (&job->file, file);
}

void
cw_job_detach (CwJob *job)
{
  g_return_if_fail (CW_IS_JOB (job));
  g_clear_object (&job->file);
  g_clear_pointer (&job->etag, g_free);
  g_signal_emit (job, signals[FILE_CHANGED], 0);
}

static void
emit_file_changed (CwJob *job)
{
  g_signal_emit (job, signals[FILE_CHANGED], 0);
}

static void
document_changed (CwJob *job)
{
  const CwProject *project = cw_document_project (job->document);
  cw_estimator_set_project (job->estimator, project);
  if ((CwUnits) project->units != job->style.units)
    {
      job->style = cw_text_style_for_locale ((CwUnits) project->units);
      g_signal_emit (job, signals[STYLE_CHANGED], 0);
    }
}

static CwJob *
job_for_project (const CwProject *project, GFile *file)
{
  CwJob *job = g_object_new (CW_TYPE_JOB, NULL);
  job->document = cw_document_new (project);
  cw_document_mark_saved (job->document, project);
  job->style = cw_text_style_for_locale ((CwUnits) project->units);
  if (file)
    set_file (job, file);
  if (cw_list_length (project->elevations) > 0)
    cw_document_show_elevation (job->document,
                                cw_node_id (cw_list_at (project->elevations,
                                                        0)));
  g_signal_connect_swapped (job->document, "changed",
                            G_CALLBACK (document_changed), job);
  g_signal_connect_swapped (job->document, "saved-changed",
                            G_CALLBACK (emit_file_changed), job);
  job->sheets = cw_sheet_store_new (job->document, resolve_sheet, job);
  cw_estimator_set_project (job->estimator, project);
  return job;
}

/* Countries that build in feet and inches say so in the locale's measuring
 * system; the environment names it for the rest of the program too. */
static CwUnits
units_of_locale (void)
{
  const char *name = g_getenv ("LC_ALL");
  if (!name || !*name)
    name = g_getenv ("LC_MEASUREMENT");
  if (!name || !*name)
    name = g_getenv ("LANG");
  return name && strstr (name, "_US") ? CW_UNITS_US : CW_UNITS_METRIC;
}

CwJob *
cw_job_new (void)
{
  CwProject *project = cw_project_new_default (units_of_locale ());
  CwJob *job = job_for_project (project, NULL);
  cw_node_unref (project);
  return job;
}

/* Opening and saving happen on a thread; what they need and give. */
typedef struct
{
  GFile *file;
  CwProject *project;
  char *etag;
} Transfer;

static void
transfer_free (Transfer *transfer)
{
  g_object_unref (transfer->file);
  g_clear_pointer (&transfer->project, cw_node_unref);
  g_free (transfer->etag);
  g_free (transfer);
}

static void
open_in_thread (GTask *task, gpointer source, gpointer data,
                GCancellable *cancellable)
{
  Transfer *transfer = data;
  GError *error = NULL;
  transfer->project
      = cw_project_load (transfer->file, &transfer->etag, &error);
  if (transfer->project)
    g_task_return_boolean (task, TRUE);
  else
    g_task_return_error (task, error);
}

void
cw_job_open_async (GFile *file, GCancellable *cancellable,
                   GAsyncReadyCallback done, gpointer data)
{
  Transfer *transfer = g_new0 (Transfer, 1);
  transfer->file = g_object_ref (file);
  cw_thread_run (NULL, open_in_thread, transfer,
                 (GDestroyNotify) transfer_free, cancellable, done, data);
}

CwJob *
cw_job_open_finish (GAsyncResult *result, GError **error)
{
  if (!g_task_propagate_boolean (G_TASK (result), error))
    return NULL;
  Transfer *transfer = g_task_get_task_data (G_TASK (result));
  CwJob *job = job_for_project (transfer->project, transfer->file);
  job->etag = g_steal_pointer (&transfer->etag);
  return job;
}

static void
save_in_thread (GTask *task, gpointer source, gpointer data,
                GCancellable *cancellable)
{
  Transfer *transfer = data;
  GError *error = NULL;
  if (cw_project_save (transfer->project, transfer->file, &transfer->etag,
                       &error))
    g_task_return_boolean (task, TRUE);
  else
    g_task_return_error (task, error);
}

/* From one folder to the other. */
typedef struct
{
  CwJob *job;
  GFile *folder;
} Rebase;

static char *
rebase_path (const char *path, gpointer data)
{
  Rebase *rebase = data;
  g_autoptr (GFile) file = cw_job_sheet_file (rebase->job, path);
  return cw_relative_path (rebase->folder, file);
}

/* The document's paths follow before the file is written, so that what is on
 * disk is a state of the document. */
static void
rebase_sheets (CwJob *job, GFile *file)
{
  g_autoptr (GFile) folder = g_file_get_parent (file);
  GFile *former = cw_job_folder (job);
  if (!folder || (former && g_file_equal (folder, former)))
    return;
  Rebase rebase = { job, folder };
  CwProject *next = cw_edit_rewrite_sheets (
      cw_document_project (job->document), rebase_path, &rebase);
  g_ptr_array_add (job->folders, g_object_ref (folder));
  cw_document_edit (job->document, next, _("Save in another folder"), NULL);
  cw_node_unref (next);
}

void
cw_job_save_async (CwJob *job, GFile *file, gboolean over_changes,
                   GAsyncReadyCallback done, gpointer data)
{
  g_return_if_fail (CW_IS_JOB (job));
  g_return_if_fail (file != NULL || job->file != NULL);
  if (!file)
    file = job->file;
  rebase_sheets (job, file);
  cw_document_seal (job->document);

  Transfer *transfer = g_new0 (Transfer, 1);
  transfer->file = g_object_ref (file);
  transfer->project = cw_node_ref (cw_document_project (job->document));
  if (!over_changes && job->file && g_file_equal (file, job->file))
    transfer->etag = g_strdup (job->etag);
  cw_thread_run (job, save_in_thread, transfer,
                 (GDestroyNotify) transfer_free, NULL, done, data);
}

gboolean
cw_job_save_finish (CwJob *job, GAsyncResult *result, GError **error)
{
  g_return_val_if_fail (CW_IS_JOB (job), FALSE);
  if (!g_task_propagate_boolean (G_TASK (result), error))
    return FALSE;
  Transfer *transfer = g_task_get_task_data (G_TASK (result));
  set_file (job, transfer->file);
  g_free (job->etag);
  job->etag = g_steal_pointer (&transfer->etag);
  cw_document_mark_saved (job->document, transfer->project);
  g_signal_emit (job, signals[FILE_CHANGED], 0);
  return TRUE;
}

static void
cw_job_finalize (GObject *object)
{
  CwJob *job = CW_JOB (object);
  g_signal_handlers_disconnect_by_data (job->document, job);
  g_clear_object (&job->sheets);
  cw_estimator_give_up (job->estimator);
  g_clear_object (&job->estimator);
  g_clear_object (&job->document);
  g_clear_object (&job->file);
  g_ptr_array_unref (job->folders);
  g_free (job->etag);
  G_OBJECT_CLASS (cw_job_parent_class)->finalize (object);
}

static void
cw_job_class_init (CwJobClass *class)
{
  G_OBJECT_CLASS (class)->finalize = cw_job_finalize;
  signals[FILE_CHANGED]
      = g_signal_new ("file-changed", CW_TYPE_JOB, G_SIGNAL_RUN_LAST, 0, NULL,
                      NULL, NULL, G_TYPE_NONE, 0);
  signals[STYLE_CHANGED]
      = g_signal_new ("style-changed", CW_TYPE_JOB, G_SIGNAL_RUN_LAST, 0,
                      NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
cw_job_init (CwJob *job)
{
  job->estimator = cw_estimator_new ();
  job->folders = g_ptr_array_new_with_free_func (g_object_unref);
}

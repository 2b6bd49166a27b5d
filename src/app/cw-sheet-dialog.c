/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-dialog.h"

#include "cw-dialogs.h"
#include "cw-edit.h"
#include "cw-edits.h"
#include "cw-form-dialog.h"
#include "cw-i18n.h"
#include "cw-page-chooser.h"
#include "cw-scale-chooser.h"
#include "cw-thread.h"

typedef struct
{
  GtkWindow *parent;          /* weak */
  CwJob *job;
  GFile *file;
  CwSheetAddedFunc done;
  gpointer data;
  char *sha256;
  CwFormDialog *dialog;
  GtkWidget *name, *pages, *scale;
} Adding;

static void
adding_free (Adding *adding)
{
  g_clear_weak_pointer (&adding->parent);
  g_object_unref (adding->job);
  g_object_unref (adding->file);
  g_free (adding->sha256);
  g_free (adding);
}

static CwProject *
with_sheet (Adding *adding, double mm_per_point, char **id)
{
  const CwProject *project
      = cw_document_project (cw_job_document (adding->job));
  g_autofree char *path = cw_job_sheet_path (adding->job, adding->file);
  CwSheetEntry entry = {
    .name = gtk_editable_get_text (GTK_EDITABLE (adding->name)),
    .file = path,
    .sha256 = adding->sha256,
    .page = cw_page_chooser_page (CW_PAGE_CHOOSER (adding->pages)),
  };
  g_autoptr (CwProject) next = cw_edit_add_sheet (project, &entry, id);
  if (mm_per_point <= 0)
    return g_steal_pointer (&next);
  return cw_edit_set_scale (next, cw_project_sheet (next, *id), mm_per_point);
}

static void
taken (Adding *adding)
{
  double mm_per_point;
  if (!cw_scale_chooser_get (CW_SCALE_CHOOSER (adding->scale), &mm_per_point))
    return;
  g_autofree char *id = NULL;
  g_autoptr (CwProject) next = with_sheet (adding, mm_per_point, &id);
  CwSheetAddedFunc done = adding->done;
  gpointer data = adding->data;
  cw_document_edit (cw_job_document (adding->job), next,
                    _("Add a plan sheet"), NULL);
  gtk_window_destroy (GTK_WINDOW (adding->dialog));
  done (id, mm_per_point <= 0, data);
}

/* The file's name without what follows the last point. (transfer full) */
static char *
proposed_name (GFile *file)
{
  char *name = g_file_get_basename (file);
  char *point = strrchr (name, '.');
  if (point && point != name)
    *point = '\0';
  return name;
}

static void
ask (Adding *adding, CwSheetSource *source)
{
  g_autofree char *name = proposed_name (adding->file);
  adding->dialog = cw_form_dialog_new (adding->parent, _("Add a plan sheet"),
                                       _("_Add"));
  g_object_set_data_full (G_OBJECT (adding->dialog), "adding", adding,
                          (GDestroyNotify) adding_free);
  gtk_window_set_default_size (GTK_WINDOW (adding->dialog), 660, -1);
  adding->pages = cw_page_chooser_new (source);
  adding->name = gtk_entry_new ();
  gtk_editable_set_text (GTK_EDITABLE (adding->name), name);
  gtk_entry_set_activates_default (GTK_ENTRY (adding->name), TRUE);
  adding->scale = cw_scale_chooser_new (cw_job_style (adding->job)->units);
  cw_form_dialog_add (adding->dialog, _("Page"), adding->pages);
  cw_form_dialog_add (adding->dialog, _("Name"), adding->name);
  cw_form_dialog_add (adding->dialog, _("Scale"), adding->scale);
  g_signal_connect_swapped (adding->dialog, "taken", G_CALLBACK (taken),
                            adding);
  gtk_window_present (GTK_WINDOW (adding->dialog));
}

static void
open_in_thread (GTask *task, gpointer source, gpointer data,
                GCancellable *cancellable)
{
  Adding *adding = data;
  GError *error = NULL;
  CwSheetSource *opened = cw_sheet_source_open (adding->file, &error);
  if (opened)
    adding->sha256 = cw_sheet_source_sha256 (adding->file, cancellable, NULL);
  if (opened)
    g_task_return_pointer (task, opened, g_object_unref);
  else
    g_task_return_error (task, error);
}

static void
opened (GObject *object, GAsyncResult *result, gpointer data)
{
  Adding *adding = data;
  g_autoptr (GError) error = NULL;
  g_autoptr (CwSheetSource) source
      = g_task_propagate_pointer (G_TASK (result), &error);
  if (source && adding->parent)
    {
      ask (adding, source);
      return;
    }
  if (adding->parent)
    cw_dialogs_tell (adding->parent, _("This cannot be used as a plan sheet"),
                     error->message);
  adding_free (adding);
}

void
cw_sheet_dialog_add (GtkWindow *parent, CwJob *job, GFile *file,
                     CwSheetAddedFunc done, gpointer data)
{
  g_return_if_fail (CW_IS_JOB (job));
  g_return_if_fail (G_IS_FILE (file));
  Adding *adding = g_new0 (Adding, 1);
  g_set_weak_pointer (&adding->parent, parent);
  adding->job = g_object_ref (job);
  adding->file = g_object_ref (file);
  adding->done = done;
  adding->data = data;
  cw_thread_run (job, open_in_thread, adding, NULL, NULL, opened, adding);
}

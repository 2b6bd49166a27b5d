/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Files in and out of the window, and what is asked before it closes.
 */
#include "cw-window-private.h"

#include "cw-dialogs.h"
#include "cw-export.h"
#include "cw-file-error.h"
#include "cw-recent.h"
#include "cw-search-words.h"

static CwApplication *
application_of (CwWindow *window)
{
  return CW_APPLICATION (gtk_window_get_application (GTK_WINDOW (window)));
}

static void
open_chosen (GFile *file, gpointer data)
{
  g_autoptr (CwWindow) window = data;
  if (file)
    cw_application_open_file (application_of (window), file,
                              GTK_WINDOW (window));
}

static void
open_project (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  cw_dialogs_open_file (GTK_WINDOW (window), _("Open a project"),
                        CW_FILES_PROJECT, cw_job_folder (window->job),
                        open_chosen, g_object_ref (window));
}

static void
open_example (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  cw_application_open_example (application_of (data), GTK_WINDOW (data));
}

/* What is typed and not given yet belongs to what is saved. */
static void
leave_entries (CwWindow *window)
{
  gtk_window_set_focus (GTK_WINDOW (window), NULL);
}

static void ask_for_name (CwWindow *window);
static void start_saving (CwWindow *window, GFile *file, gboolean over);

static void
answered_changed (guint answer, gpointer data)
{
  g_autoptr (CwWindow) window = data;
  if (answer == 0)
    ask_for_name (window);
  else if (answer == 1)
    start_saving (window, NULL, TRUE);
  else
    window->closing = FALSE;
}

static void
tell_changed (CwWindow *window)
{
  cw_dialogs_ask (GTK_WINDOW (window),
                  _("Another program has changed this file"),
                  _("Since it was opened or saved here, it has been written "
                    "by something else. Save under another name to keep "
                    "both."),
                  (const char *const[]) { _("_Save as…"), _("_Replace it"),
                                          _("_Cancel"), NULL },
                  answered_changed, g_object_ref (window));
}

static void
saving_failed (CwWindow *window, const GError *error)
{
  if (g_error_matches (error, CW_FILE_ERROR, CW_FILE_ERROR_CHANGED))
    {
      tell_changed (window);
      return;
    }
  window->closing = FALSE;
  cw_dialogs_tell (GTK_WINDOW (window), _("The project was not saved"),
                   error->message);
}

static void
saved (GObject *object, GAsyncResult *result, gpointer data)
{
  g_autoptr (CwWindow) window = data;
  g_autoptr (GError) error = NULL;
  if (!cw_job_save_finish (CW_JOB (object), result, &error))
    {
      saving_failed (window, error);
      return;
    }
  cw_recent_add (cw_job_file (CW_JOB (object)));
  if (window->closing)
    {
      window->closing = FALSE;
      gtk_window_close (GTK_WINDOW (window));
    }
}

static void
start_saving (CwWindow *window, GFile *file, gboolean over)
{
  cw_job_save_async (window->job, file, over, saved, g_object_ref (window));
}

/* (transfer full) */
static GFile *
with_suffix (GFile *file, const char *suffix)
{
  g_autofree char *name = g_file_get_basename (file);
  if (g_str_has_suffix (name, suffix))
    return g_object_ref (file);
  g_autoptr (GFile) folder = g_file_get_parent (file);
  g_autofree char *whole = g_strconcat (name, suffix, NULL);
  return g_file_get_child (folder, whole);
}

static void
name_chosen (GFile *file, gpointer data)
{
  g_autoptr (CwWindow) window = data;
  if (!file)
    {
      window->closing = FALSE;
      return;
    }
  g_autoptr (GFile) whole = with_suffix (file, ".cladwright");
  start_saving (window, whole, TRUE);
}

static void
ask_for_name (CwWindow *window)
{
  g_autofree char *name = cw_job_name (window->job);
  g_autofree char *whole = g_strconcat (name, ".cladwright", NULL);
  cw_dialogs_save_file (GTK_WINDOW (window), _("Save the project"),
                        CW_FILES_PROJECT, cw_job_folder (window->job), whole,
                        name_chosen, g_object_ref (window));
}

void
cw_window_save (CwWindow *window)
{
  leave_entries (window);
  if (cw_job_file (window->job))
    start_saving (window, NULL, FALSE);
  else
    ask_for_name (window);
}

static void
save (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  cw_window_save (data);
}

static void
save_as (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  leave_entries (data);
  ask_for_name (data);
}

static void
answered_closing (guint answer, gpointer data)
{
  g_autoptr (CwWindow) window = data;
  if (answer == 0)
    {
      window->closing = TRUE;
      cw_window_save (window);
    }
  else if (answer == 1)
    {
      window->may_close = TRUE;
      gtk_window_close (GTK_WINDOW (window));
    }
}

static gboolean
close_requested (CwWindow *window)
{
  leave_entries (window);
  if (window->may_close
      || cw_document_is_saved (cw_window_document (window)))
    return FALSE;
  g_autofree char *name = cw_job_name (window->job);
  g_autofree char *message
      = g_strdup_printf (_("Save the changes to “%s”?"), name);
  cw_dialogs_ask (GTK_WINDOW (window), message,
                  _("What is not saved is lost when the window closes."),
                  (const char *const[]) { _("_Save"), _("Close _without"),
                                          _("_Cancel"), NULL },
                  answered_closing, g_object_ref (window));
  return TRUE;
}

/* One file on its way out. */
typedef struct
{
  CwWindow *window;
  CwExportKind kind;
  GFile *file;
  GCancellable *enough;
} Writing;

static void
writing_free (Writing *writing)
{
  g_object_unref (writing->window);
  g_clear_object (&writing->file);
  g_clear_object (&writing->enough);
  g_free (writing);
}

static void
searched (guint n_panels, double share, gpointer data)
{
  Writing *writing = data;
  g_autofree char *words = cw_search_words (
      n_panels, share, cw_job_style (writing->window->job));
  cw_notice_share (writing->window->notice, words, share, writing->enough);
}

static void
written (GObject *object, GAsyncResult *result, gpointer data)
{
  Writing *writing = data;
  CwNotice *notice = writing->window->notice;
  g_autoptr (GError) error = NULL;
  g_autofree char *name = g_file_get_basename (writing->file);
  gboolean stopped_early;
  if (cw_export_finish (result, &stopped_early, &error))
    {
      g_autofree char *words = g_strdup_printf (
          stopped_early ? _("%s is written, with the plan found so far.")
                        : _("%s is written."),
          name);
      cw_notice_done (notice, words, writing->file);
    }
  else
    {
      g_autofree char *message
          = g_strdup_printf (_("“%s” was not written"), name);
      cw_notice_hide (notice);
      if (!g_error_matches (error, G_IO_ERROR, G_IO_ERROR_CANCELLED))
        cw_dialogs_tell (GTK_WINDOW (writing->window), message,
                         error->message);
    }
  writing_free (writing);
}

static void
target_chosen (GFile *file, gpointer data)
{
  Writing *writing = data;
  if (!file)
    {
      writing_free (writing);
      return;
    }
  writing->file = with_suffix (
      file, writing->kind == CW_EXPORT_PDF ? ".pdf" : ".csv");
  g_autofree char *name = g_file_get_basename (writing->file);
  g_autofree char *words = g_strdup_printf (_("Writing %s"), name);
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  cw_notice_work (writing->window->notice, words, cancellable);
  writing->enough = g_cancellable_new ();
  cw_export_async (writing->window->job, writing->kind, writing->file,
                   searched, writing->enough, cancellable, written, writing);
}

static void
export (CwWindow *window, CwExportKind kind, const char *suffix)
{
  g_autofree char *name = cw_job_name (window->job);
  g_autofree char *whole = g_strconcat (name, suffix, NULL);
  Writing *writing = g_new0 (Writing, 1);
  leave_entries (window);
  writing->window = g_object_ref (window);
  writing->kind = kind;
  cw_dialogs_save_file (GTK_WINDOW (window), _("Write the takeoff"),
                        kind == CW_EXPORT_PDF ? CW_FILES_PDF : CW_FILES_CSV,
                        cw_job_folder (window->job), whole, target_chosen,
                        writing);
}

static void
export_pdf (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  export (data, CW_EXPORT_PDF, ".pdf");
}

static void
export_csv (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  export (data, CW_EXPORT_CSV, ".csv");
}

void
cw_window_add_file_actions (CwWindow *window)
{
  static const GActionEntry entries[] = {
    { "open", open_project, NULL, NULL, NULL },
    { "open-example", open_example, NULL, NULL, NULL },
    { "save", save, NULL, NULL, NULL },
    { "save-as", save_as, NULL, NULL, NULL },
    { "export-pdf", export_pdf, NULL, NULL, NULL },
    { "export-csv", export_csv, NULL, NULL, NULL },
  };
  g_action_map_add_action_entries (G_ACTION_MAP (window), entries,
                                   G_N_ELEMENTS (entries), window);
  g_signal_connect (window, "close-request", G_CALLBACK (close_requested),
                    NULL);
}

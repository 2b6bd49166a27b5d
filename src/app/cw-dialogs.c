/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-dialogs.h"

#include "cw-i18n.h"

#if GTK_CHECK_VERSION(4, 10, 0) && GDK_VERSION_MAX_ALLOWED >= GDK_VERSION_4_10
#error "Use GtkFileDialog and GtkAlertDialog in this file."
#endif

static int prepared_answer = -1;
static GFile *prepared_file;

void
cw_dialogs_answer_next (int answer)
{
  prepared_answer = answer;
}

void
cw_dialogs_choose_next (GFile *file)
{
  g_set_object (&prepared_file, file);
}

static GtkFileFilter *
new_filter (const char *name, const char *const *suffixes)
{
  GtkFileFilter *filter = gtk_file_filter_new ();
  gtk_file_filter_set_name (filter, name);
  for (; *suffixes; suffixes++)
    gtk_file_filter_add_suffix (filter, *suffixes);
  return filter;
}

static GtkFileFilter *
filter_for (CwFilesKind kind)
{
  switch (kind)
    {
    case CW_FILES_PROJECT:
      return new_filter (_("Cladwright projects"),
                         (const char *[]) { "cladwright", NULL });
    case CW_FILES_SHEET:
      return new_filter (_("Plan sheets: PDF and images"),
                         (const char *[]) { "pdf", "png", "jpg", "jpeg",
                                            "tif", "tiff", NULL });
    case CW_FILES_PDF:
      return new_filter (_("PDF"), (const char *[]) { "pdf", NULL });
    case CW_FILES_CSV:
    default:
      return new_filter (_("Tables (CSV)"), (const char *[]) { "csv", NULL });
    }
}

typedef struct
{
  CwFileFunc done;
  gpointer data;
} FileQuestion;

static void
file_chosen (GtkNativeDialog *dialog, int response, FileQuestion *question)
{
  g_autoptr (GFile) file = NULL;
  if (response == GTK_RESPONSE_ACCEPT)
    file = gtk_file_chooser_get_file (GTK_FILE_CHOOSER (dialog));
  question->done (file, question->data);
  g_free (question);
  g_object_unref (dialog);
}

/* As late as a real answer would come: never within the question. */
typedef struct
{
  CwFileFunc file_done;
  CwAnswerFunc done;
  gpointer data;
  GFile *file;
  guint answer;
} Prepared;

static void
give_prepared (gpointer data)
{
  Prepared *prepared = data;
  if (prepared->file_done)
    prepared->file_done (prepared->file, prepared->data);
  else if (prepared->done)
    prepared->done (prepared->answer, prepared->data);
  g_clear_object (&prepared->file);
  g_free (prepared);
}

static gboolean
chosen_by_test (CwFileFunc done, gpointer data)
{
  if (!prepared_file)
    return FALSE;
  Prepared *prepared = g_new0 (Prepared, 1);
  prepared->file_done = done;
  prepared->data = data;
  prepared->file = g_steal_pointer (&prepared_file);
  g_idle_add_once (give_prepared, prepared);
  return TRUE;
}

static gboolean
answered_by_test (CwAnswerFunc done, gpointer data)
{
  if (prepared_answer < 0)
    return FALSE;
  Prepared *prepared = g_new0 (Prepared, 1);
  prepared->done = done;
  prepared->data = data;
  prepared->answer = (guint) prepared_answer;
  prepared_answer = -1;
  g_idle_add_once (give_prepared, prepared);
  return TRUE;
}

static void
ask_for_file (GtkWindow *parent, const char *title, CwFilesKind kind,
              GtkFileChooserAction action, GFile *folder, const char *name,
              CwFileFunc done, gpointer data)
{
  if (chosen_by_test (done, data))
    return;
  gboolean saves = action == GTK_FILE_CHOOSER_ACTION_SAVE;
  GtkFileChooserNative *dialog = gtk_file_chooser_native_new (
      title, parent, action, saves ? _("_Save") : _("_Open"), _("_Cancel"));
  GtkFileChooser *chooser = GTK_FILE_CHOOSER (dialog);
  g_autoptr (GtkFileFilter) filter = filter_for (kind);
  gtk_file_chooser_add_filter (chooser, filter);
  if (folder)
    gtk_file_chooser_set_current_folder (chooser, folder, NULL);
  if (name)
    gtk_file_chooser_set_current_name (chooser, name);

  FileQuestion *question = g_new (FileQuestion, 1);
  *question = (FileQuestion) { done, data };
  g_signal_connect (dialog, "response", G_CALLBACK (file_chosen), question);
  gtk_native_dialog_set_modal (GTK_NATIVE_DIALOG (dialog), TRUE);
  gtk_native_dialog_show (GTK_NATIVE_DIALOG (dialog));
}

void
cw_dialogs_open_file (GtkWindow *parent, const char *title, CwFilesKind kind,
                      GFile *folder, CwFileFunc done, gpointer data)
{
  ask_for_file (parent, title, kind, GTK_FILE_CHOOSER_ACTION_OPEN, folder,
                NULL, done, data);
}

void
cw_dialogs_save_file (GtkWindow *parent, const char *title, CwFilesKind kind,
                      GFile *folder, const char *name, CwFileFunc done,
                      gpointer data)
{
  ask_for_file (parent, title, kind, GTK_FILE_CHOOSER_ACTION_SAVE, folder,
                name, done, data);
}

typedef struct
{
  CwAnswerFunc done;
  gpointer data;
  guint n_answers;
} Question;

static void
answered (GtkDialog *dialog, int response, Question *question)
{
  guint answer = response >= 0 ? (guint) response : question->n_answers - 1;
  gtk_window_destroy (GTK_WINDOW (dialog));
  if (question->done)
    question->done (answer, question->data);
  g_free (question);
}

static guint
add_answers (GtkDialog *dialog, const char *const *answers)
{
  guint n = g_strv_length ((char **) answers);
  for (guint i = n; i-- > 0;)
    {
      GtkWidget *button = gtk_dialog_add_button (dialog, answers[i], (int) i);
      if (i == 0)
        gtk_widget_add_css_class (button, "cw-first");
    }
  gtk_dialog_set_default_response (dialog, 0);
  return n;
}

void
cw_dialogs_ask (GtkWindow *parent, const char *message, const char *detail,
                const char *const *answers, CwAnswerFunc done, gpointer data)
{
  if (answered_by_test (done, data))
    return;
  GtkWidget *dialog = gtk_message_dialog_new (
      parent, GTK_DIALOG_MODAL | GTK_DIALOG_DESTROY_WITH_PARENT
                  | GTK_DIALOG_USE_HEADER_BAR,
      GTK_MESSAGE_OTHER, GTK_BUTTONS_NONE, "%s", message);
  if (detail)
    gtk_message_dialog_format_secondary_text (GTK_MESSAGE_DIALOG (dialog),
                                              "%s", detail);
  Question *question = g_new (Question, 1);
  *question = (Question) { done, data,
                           add_answers (GTK_DIALOG (dialog), answers) };
  g_signal_connect (dialog, "response", G_CALLBACK (answered), question);
  gtk_window_present (GTK_WINDOW (dialog));
}

void
cw_dialogs_tell (GtkWindow *parent, const char *message, const char *detail)
{
  cw_dialogs_ask (parent, message, detail,
                  (const char *const[]) { _("_Close"), NULL }, NULL, NULL);
}

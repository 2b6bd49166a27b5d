/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-waiver-dialog.h"

#include "cw-form-dialog.h"
#include "cw-i18n.h"
#include "cw-today.h"
#include "cw-waiver-edits.h"

typedef struct
{
  CwFormDialog *dialog;   /* borrowed */
  CwJob *job;
  CwCheck check;          /* what a waiver needs of it, copied */
  GtkWidget *reason, *by;
} Waiving;

static void
waiving_free (gpointer data)
{
  Waiving *waiving = data;
  g_object_unref (waiving->job);
  g_free (waiving->check.elevation_id);
  g_free (waiving->check.item);
  g_free (waiving->check.figures);
  g_free (waiving);
}

static void
taken (Waiving *waiving)
{
  CwDocument *document = cw_job_document (waiving->job);
  g_autofree char *reason
      = g_strstrip (g_strdup (gtk_editable_get_text (
          GTK_EDITABLE (waiving->reason))));
  g_autofree char *date = cw_today ();
  if (!*reason)
    {
      cw_form_dialog_set_trouble (waiving->dialog,
                                  _("Say why: the reason is printed."));
      return;
    }
  g_autoptr (CwProject) next = cw_edit_waive (
      cw_document_project (document), &waiving->check, reason,
      gtk_editable_get_text (GTK_EDITABLE (waiving->by)), date);
  cw_document_edit (document, next, _("Waive a check"), NULL);
  gtk_window_destroy (GTK_WINDOW (waiving->dialog));
}

static Waiving *
waiving_new (CwFormDialog *dialog, CwJob *job, const CwCheck *check)
{
  const CwInfo *info
      = (const CwInfo *) cw_document_project (cw_job_document (job))->info;
  Waiving *waiving = g_new0 (Waiving, 1);
  waiving->dialog = dialog;
  waiving->job = g_object_ref (job);
  waiving->check.type = check->type;
  waiving->check.elevation_id = g_strdup (check->elevation_id);
  waiving->check.item = g_strdup (check->item);
  waiving->check.figures = g_strdup (check->figures);
  waiving->reason = gtk_entry_new ();
  waiving->by = gtk_entry_new ();
  gtk_editable_set_text (GTK_EDITABLE (waiving->by), info->estimator);
  gtk_entry_set_activates_default (GTK_ENTRY (waiving->reason), TRUE);
  gtk_entry_set_activates_default (GTK_ENTRY (waiving->by), TRUE);
  return waiving;
}

void
cw_waiver_dialog_show (GtkWindow *parent, CwJob *job, const CwCheck *check)
{
  g_return_if_fail (CW_IS_JOB (job) && check != NULL);
  CwFormDialog *dialog
      = cw_form_dialog_new (parent, _("Waive a check"), _("_Waive"));
  Waiving *waiving = waiving_new (dialog, job, check);
  g_autofree char *words
      = g_strdup_printf ("%s: %s", _(check->type->title), check->text);
  cw_form_dialog_add_words (dialog, words);
  cw_form_dialog_add (dialog, _("Reason"), waiving->reason);
  cw_form_dialog_add (dialog, _("By"), waiving->by);
  if (check->type->severity == CW_CHECK_ERROR)
    cw_form_dialog_add_words (
        dialog, _("The figures stay as they are; the papers keep the error "
                  "and the reason."));
  g_object_set_data_full (G_OBJECT (dialog), "waiving", waiving,
                          waiving_free);
  g_signal_connect_swapped (dialog, "taken", G_CALLBACK (taken), waiving);
  gtk_window_present (GTK_WINDOW (dialog));
  gtk_widget_grab_focus (waiving->reason);
}

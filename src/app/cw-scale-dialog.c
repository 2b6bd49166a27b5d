/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-scale-dialog.h"

#include <math.h>
#include <string.h>

#include "cw-edit.h"
#include "cw-field-text.h"
#include "cw-form-dialog.h"
#include "cw-i18n.h"
#include "cw-length.h"
#include "cw-scale-chooser.h"
#include "cw-scale-text.h"

typedef struct
{
  CwFormDialog *dialog;
  CwJob *job;
  char *sheet_id;
  GtkWidget *field;         /* CwScaleChooser or GtkEntry */
  GtkWidget *shown;         /* GtkLabel: the scale that follows */
  GtkWidget *stated;        /* GtkCheckButton: a stated scale that is near */
  double points[4];
  CwScaleFunc then;
  gpointer data;
} Asking;

static void
asking_free (Asking *asking)
{
  g_object_unref (asking->job);
  g_free (asking->sheet_id);
  g_free (asking);
}

static Asking *
asking_new (GtkWindow *parent, CwJob *job, const char *sheet_id)
{
  Asking *asking = g_new0 (Asking, 1);
  asking->job = g_object_ref (job);
  asking->sheet_id = g_strdup (sheet_id);
  asking->dialog
      = cw_form_dialog_new (parent, _("Scale of the sheet"), _("_Set scale"));
  g_object_set_data_full (G_OBJECT (asking->dialog), "asking", asking,
                          (GDestroyNotify) asking_free);
  return asking;
}

static void
set_scale (Asking *asking, double mm_per_point)
{
  CwDocument *document = cw_job_document (asking->job);
  const CwProject *project = cw_document_project (document);
  const CwSheet *sheet = cw_project_sheet (project, asking->sheet_id);
  if (!sheet)
    return;
  g_autoptr (CwProject) next
      = cw_edit_set_scale (project, sheet, mm_per_point);
  cw_document_edit (document, next, _("Set the scale of a sheet"), NULL);
}

static void
stated (Asking *asking)
{
  double mm_per_point;
  if (!cw_scale_chooser_get (CW_SCALE_CHOOSER (asking->field), &mm_per_point))
    return;
  if (mm_per_point > 0)
    set_scale (asking, mm_per_point);
  else
    asking->then (asking->data);
  gtk_window_destroy (GTK_WINDOW (asking->dialog));
}

void
cw_scale_dialog_state (GtkWindow *parent, CwJob *job, const char *sheet_id,
                       CwScaleFunc measure, gpointer data)
{
  g_return_if_fail (CW_IS_JOB (job));
  Asking *asking = asking_new (parent, job, sheet_id);
  asking->then = measure;
  asking->data = data;
  asking->field = cw_scale_chooser_new (cw_job_style (job)->units);
  cw_form_dialog_add_words (
      asking->dialog,
      _("A sheet may have been printed larger or smaller than its note says. "
        "Check a length that the sheet states before you rely on it."));
  cw_form_dialog_add (asking->dialog, _("Scale"), asking->field);
  g_signal_connect_swapped (asking->dialog, "taken", G_CALLBACK (stated),
                            asking);
  gtk_window_present (GTK_WINDOW (asking->dialog));
}

/* The scale that the typed length gives, or why it gives none. */
static gboolean
read_measured (Asking *asking, double *mm_per_point, GError **error)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (asking->field));
  CwLength length;
  if (!cw_length_parse (text, cw_job_style (asking->job), &length, error))
    return FALSE;
  if (length > 0
      && cw_sheet_scale_measure (asking->points[0], asking->points[1],
                                 asking->points[2], asking->points[3], length,
                                 mm_per_point))
    {
      const CwStatedScale *near
          = cw_scale_near (*mm_per_point, cw_job_style (asking->job)->units);
      if (near
          && gtk_check_button_get_active (GTK_CHECK_BUTTON (asking->stated)))
        *mm_per_point = cw_sheet_scale_from_ratio (near->ratio);
      return TRUE;
    }
  g_set_error_literal (error, G_IO_ERROR, G_IO_ERROR_INVALID_DATA,
                       _("Nothing follows from that. Take two points that "
                         "are farther apart, and their true length."));
  return FALSE;
}

static void
measured (Asking *asking)
{
  g_autoptr (GError) error = NULL;
  double mm_per_point;
  if (read_measured (asking, &mm_per_point, &error))
    {
      set_scale (asking, mm_per_point);
      asking->then (asking->data);
      gtk_window_destroy (GTK_WINDOW (asking->dialog));
      return;
    }
  g_autofree char *trouble = cw_field_text_pointed (
      gtk_editable_get_text (GTK_EDITABLE (asking->field)), error);
  cw_form_dialog_set_trouble (asking->dialog, trouble);
}

/* What a hand misses by a pixel is often a scale that the sheet states. */
static void
offer_stated (Asking *asking, double mm_per_point)
{
  const CwTextStyle *style = cw_job_style (asking->job);
  const CwStatedScale *near = cw_scale_near (mm_per_point, style->units);
  gtk_widget_set_visible (asking->stated, near != NULL);
  if (!near)
    return;
  double away = mm_per_point / cw_sheet_scale_from_ratio (near->ratio) - 1;
  g_autofree char *percent
      = cw_text_style_number (style, fabs (away) * 100, 1);
  g_autofree char *label
      = g_strdup_printf (_("Take %s, which is %s %% away"), near->label,
                         percent);
  gtk_check_button_set_label (GTK_CHECK_BUTTON (asking->stated), label);
}

static void
show_follows (Asking *asking)
{
  double mm_per_point;
  if (!read_measured (asking, &mm_per_point, NULL))
    {
      gtk_label_set_text (GTK_LABEL (asking->shown), "");
      gtk_widget_set_visible (asking->stated, FALSE);
      return;
    }
  g_autofree char *scale
      = cw_scale_text_of (mm_per_point, cw_job_style (asking->job)->units);
  g_autofree char *text = g_strdup_printf (_("Scale: %s"), scale);
  gtk_label_set_text (GTK_LABEL (asking->shown), text);
}

static void
length_typed (Asking *asking)
{
  double mm_per_point;
  cw_form_dialog_set_trouble (asking->dialog, NULL);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (asking->stated), FALSE);
  if (read_measured (asking, &mm_per_point, NULL))
    offer_stated (asking, mm_per_point);
  show_follows (asking);
}

void
cw_scale_dialog_measured (GtkWindow *parent, CwJob *job, const char *sheet_id,
                          const double points[4], CwScaleFunc done,
                          gpointer data)
{
  g_return_if_fail (CW_IS_JOB (job));
  Asking *asking = asking_new (parent, job, sheet_id);
  memcpy (asking->points, points, sizeof asking->points);
  asking->then = done;
  asking->data = data;
  asking->field = gtk_entry_new ();
  gtk_entry_set_activates_default (GTK_ENTRY (asking->field), TRUE);
  asking->stated = gtk_check_button_new_with_label (_("Take the stated scale"));
  gtk_widget_set_visible (asking->stated, FALSE);
  cw_form_dialog_add (asking->dialog,
                      _("True length between the two points"), asking->field);
  asking->shown = cw_form_dialog_add_words (asking->dialog, "");
  cw_form_dialog_append (asking->dialog, asking->stated);
  g_signal_connect_swapped (asking->field, "changed",
                            G_CALLBACK (length_typed), asking);
  g_signal_connect_swapped (asking->stated, "toggled",
                            G_CALLBACK (show_follows), asking);
  g_signal_connect_swapped (asking->dialog, "taken", G_CALLBACK (measured),
                            asking);
  gtk_window_present (GTK_WINDOW (asking->dialog));
  gtk_widget_grab_focus (asking->field);
}

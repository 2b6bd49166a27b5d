/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-repeat-dialog.h"

#include "cw-edit-arrange.h"
#include "cw-field-text.h"
#include "cw-form-dialog.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"
#include "cw-length.h"

typedef struct
{
  CwFormDialog *dialog;
  CwJob *job;
  GtkWidget *copies, *across, *up, *whole;
} Asking;

static void
asking_free (Asking *asking)
{
  g_object_unref (asking->job);
  g_free (asking);
}

static gboolean
read_length (Asking *asking, GtkWidget *entry, CwLength *length)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (entry));
  g_autoptr (GError) error = NULL;
  if (cw_length_parse (text, cw_job_style (asking->job), length, &error))
    return TRUE;
  g_autofree char *trouble = cw_field_text_pointed (text, error);
  cw_form_dialog_set_trouble (asking->dialog, trouble);
  gtk_widget_grab_focus (entry);
  return FALSE;
}

static void
repeat (Asking *asking, CwPoint way)
{
  CwDocument *document = cw_job_document (asking->job);
  const CwProject *project = cw_document_project (document);
  const CwElevation *elevation = cw_document_elevation (document);
  guint n = (guint) gtk_spin_button_get_value_as_int (
      GTK_SPIN_BUTTON (asking->copies));
  gboolean whole
      = gtk_check_button_get_active (GTK_CHECK_BUTTON (asking->whole));
  g_auto (GStrv) ids = NULL;
  if (!elevation)
    return;
  g_autoptr (CwProject) next
      = cw_edit_repeat (project, elevation, cw_document_selection (document),
                        n, way, whole, &ids);
  if (!cw_edit_is_in_bounds (next, (const char *const *) ids))
    {
      cw_form_dialog_set_trouble (
          asking->dialog, _("The last of them would lie too far away; choose "
                            "a shorter way or fewer copies"));
      return;
    }
  cw_document_seal (document);
  cw_document_edit (document, next, _("Repeat"), NULL);
  gtk_window_close (GTK_WINDOW (asking->dialog));
}

static void
taken (Asking *asking)
{
  CwPoint way;
  cw_form_dialog_set_trouble (asking->dialog, NULL);
  if (!read_length (asking, asking->across, &way.x)
      || !read_length (asking, asking->up, &way.y))
    return;
  if (way.x == 0 && way.y == 0)
    cw_form_dialog_set_trouble (
        asking->dialog, _("Copies on one spot would hide each other: say how "
                          "far apart they are"));
  else
    repeat (asking, way);
}

/* A little more than the selection is wide. */
static char *
likely_way (CwJob *job)
{
  CwDocument *document = cw_job_document (job);
  const CwProject *project = cw_document_project (document);
  const CwElevation *elevation = cw_document_elevation (document);
  CwLength step
      = project->units == CW_UNITS_US ? CW_INCHES (6) : CW_MM (100);
  CwBox box = { 0, 0, 0, 0 };
  if (elevation)
    cw_edit_bounds (project, elevation, cw_document_selection (document),
                    &box);
  CwLength way = (cw_box_width (&box) / step + 2) * step;
  return cw_length_format (way, cw_job_style (job));
}

static GtkWidget *
length_entry (const char *text)
{
  GtkWidget *entry = gtk_entry_new ();
  cw_widget_keep_direction (entry);
  gtk_editable_set_text (GTK_EDITABLE (entry), text);
  gtk_entry_set_activates_default (GTK_ENTRY (entry), TRUE);
  return entry;
}

void
cw_repeat_dialog_show (GtkWindow *parent, CwJob *job)
{
  g_return_if_fail (CW_IS_JOB (job));
  Asking *asking = g_new0 (Asking, 1);
  g_autofree char *way = likely_way (job);
  asking->job = g_object_ref (job);
  asking->dialog = cw_form_dialog_new (parent, _("Repeat"), _("_Repeat"));
  g_object_set_data_full (G_OBJECT (asking->dialog), "asking", asking,
                          (GDestroyNotify) asking_free);
  asking->copies = gtk_spin_button_new_with_range (1, CW_REPEAT_MOST, 1);
  asking->across = length_entry (way);
  asking->up = length_entry ("0");
  asking->whole = gtk_check_button_new_with_mnemonic (
      _("The way is from the first to the _last"));
  cw_form_dialog_add (asking->dialog, _("Copies"), asking->copies);
  cw_form_dialog_add (asking->dialog, _("To the right, each"),
                      asking->across);
  cw_form_dialog_add (asking->dialog, _("Up, each"), asking->up);
  cw_form_dialog_append (asking->dialog, asking->whole);
  g_signal_connect_swapped (asking->dialog, "taken", G_CALLBACK (taken),
                            asking);
  gtk_window_present (GTK_WINDOW (asking->dialog));
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-house-dialog.h"

#include "cw-edit-arrange.h"
#include "cw-field-text.h"
#include "cw-form-dialog.h"
#include "cw-house-edits.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"
#include "cw-typed-way.h"

enum { KIND_HOUSE, KIND_WALLS };

/* What no wall is longer than, and no roof steeper: slips of the keyboard. */
#define MOST CW_MM (1000000)
#define STEEPEST 10.0

typedef struct
{
  CwFormDialog *dialog;
  CwJob *job;
  GtkWidget *kind, *length, *width, *height, *pitch, *n_walls;
  CwHouseDialogDone done;
  gpointer data;
} Asking;

static void
asking_free (Asking *asking)
{
  g_object_unref (asking->job);
  g_free (asking);
}

static gboolean
refuse (Asking *asking, GtkWidget *field, const char *trouble)
{
  cw_form_dialog_set_trouble (asking->dialog, trouble);
  gtk_widget_grab_focus (field);
  return FALSE;
}

static gboolean
read_length (Asking *asking, GtkWidget *entry, CwLength *length)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (entry));
  g_autoptr (GError) error = NULL;
  if (!cw_length_parse (text, cw_job_style (asking->job), length, &error))
    {
      g_autofree char *trouble = cw_field_text_pointed (text, error);
      return refuse (asking, entry, trouble);
    }
  if (*length <= 0)
    return refuse (asking, entry, _("A length must be more than 0"));
  if (*length > MOST)
    return refuse (asking, entry,
                   _("No wall is so long: look at the unit that is typed"));
  return TRUE;
}

/* "6:12", "26.57°"; nothing is no gable. */
static gboolean
read_pitch (Asking *asking, double *pitch)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (asking->pitch));
  g_autofree char *stripped = g_strstrip (g_strdup (text));
  g_autoptr (GError) error = NULL;
  CwTypedWay way;
  *pitch = 0;
  if (*stripped == '\0')
    return TRUE;
  if (!cw_typed_way (text, cw_job_style (asking->job), &way, &error))
    {
      g_autofree char *trouble = cw_field_text_pointed (text, error);
      return refuse (asking, asking->pitch, trouble);
    }
  if (!way.has_slope || way.has_length
      || way.rise_share > STEEPEST * way.run_share)
    return refuse (asking, asking->pitch,
                   _("Type a pitch as 6:12 or an angle as 26.57°"));
  *pitch = way.rise_share / way.run_share;
  return TRUE;
}

static gboolean
is_house (Asking *asking)
{
  return gtk_drop_down_get_selected (GTK_DROP_DOWN (asking->kind))
         == KIND_HOUSE;
}

static gboolean
read_house (Asking *asking, CwHouse *house)
{
  house->is_house = is_house (asking);
  house->n_walls = (guint) gtk_spin_button_get_value_as_int (
      GTK_SPIN_BUTTON (asking->n_walls));
  return read_length (asking, asking->length, &house->length)
         && (!house->is_house
             || read_length (asking, asking->width, &house->width))
         && read_length (asking, asking->height, &house->height)
         && (!house->is_house || read_pitch (asking, &house->pitch));
}

static void
taken (Asking *asking)
{
  CwDocument *document = cw_job_document (asking->job);
  CwHouse house = { 0 };
  g_autofree char *id = NULL;
  cw_form_dialog_set_trouble (asking->dialog, NULL);
  if (!read_house (asking, &house))
    return;
  g_autoptr (CwProject) next
      = cw_edit_add_house (cw_document_project (document), &house, &id);
  cw_document_seal (document);
  cw_document_edit (document, next, _("Walls from typed sizes"), NULL);
  cw_document_show_elevation (document, id);
  asking->done (asking->data);
  gtk_window_close (GTK_WINDOW (asking->dialog));
}

static void
kind_changed (Asking *asking)
{
  gboolean house = is_house (asking);
  gtk_widget_set_sensitive (asking->width, house);
  gtk_widget_set_sensitive (asking->pitch, house);
  gtk_widget_set_sensitive (asking->n_walls, !house);
}

static GtkWidget *
new_entry (const char *example)
{
  GtkWidget *entry = gtk_entry_new ();
  cw_widget_keep_direction (entry);
  gtk_entry_set_activates_default (GTK_ENTRY (entry), TRUE);
  gtk_entry_set_placeholder_text (GTK_ENTRY (entry), example);
  return entry;
}

/* (transfer full): as it could be typed. */
static GtkWidget *
new_length (Asking *asking, CwLength us, CwLength metric)
{
  const CwTextStyle *style = cw_job_style (asking->job);
  g_autofree char *example
      = cw_length_format (style->units == CW_UNITS_US ? us : metric, style);
  return new_entry (example);
}

static void
add_fields (Asking *asking)
{
  const char *const kinds[]
      = { [KIND_HOUSE] = _("A rectangular house"),
          [KIND_WALLS] = _("Walls of one size"), NULL };
  asking->kind = gtk_drop_down_new_from_strings (kinds);
  asking->length = new_length (asking, CW_INCHES (384), CW_MM (9600));
  asking->width = new_length (asking, CW_INCHES (288), CW_MM (7200));
  asking->height = new_length (asking, CW_INCHES (108), CW_MM (2700));
  asking->pitch = new_entry (_("6:12, or nothing for no gable"));
  asking->n_walls
      = gtk_spin_button_new_with_range (1, CW_HOUSE_MOST_WALLS, 1);
  cw_form_dialog_add (asking->dialog, _("What is to be clad"), asking->kind);
  cw_form_dialog_add (asking->dialog, _("Length"), asking->length);
  cw_form_dialog_add (asking->dialog, _("Width, along the gable ends"),
                      asking->width);
  cw_form_dialog_add (asking->dialog, _("Height to the eaves"),
                      asking->height);
  cw_form_dialog_add (asking->dialog, _("Pitch of the gables"),
                      asking->pitch);
  cw_form_dialog_add (asking->dialog, _("How many walls"), asking->n_walls);
}

void
cw_house_dialog_show (GtkWindow *parent, CwJob *job, CwHouseDialogDone done,
                      gpointer data)
{
  g_return_if_fail (CW_IS_JOB (job));
  g_return_if_fail (done != NULL);
  Asking *asking = g_new0 (Asking, 1);
  asking->job = g_object_ref (job);
  asking->done = done;
  asking->data = data;
  asking->dialog = cw_form_dialog_new (parent, _("Walls from typed sizes"),
                                       _("_Make the walls"));
  g_object_set_data_full (G_OBJECT (asking->dialog), "asking", asking,
                          (GDestroyNotify) asking_free);
  add_fields (asking);
  g_signal_connect_swapped (asking->kind, "notify::selected",
                            G_CALLBACK (kind_changed), asking);
  kind_changed (asking);
  g_signal_connect_swapped (asking->dialog, "taken", G_CALLBACK (taken),
                            asking);
  gtk_window_present (GTK_WINDOW (asking->dialog));
  gtk_widget_grab_focus (asking->length);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-form-dialog.h"

#include "cw-i18n.h"
#include "cw-panel-head.h"

struct _CwFormDialog
{
  GtkWindow parent;
  GtkWidget *box, *take, *trouble;
};

G_DEFINE_FINAL_TYPE (CwFormDialog, cw_form_dialog, GTK_TYPE_WINDOW)

static guint taken_signal;

static void
take (CwFormDialog *dialog)
{
  g_signal_emit (dialog, taken_signal, 0);
}

static gboolean
give_up (GtkWidget *widget, GVariant *args, gpointer data)
{
  gtk_window_close (GTK_WINDOW (widget));
  return TRUE;
}

void
cw_form_dialog_append (CwFormDialog *dialog, GtkWidget *field)
{
  g_return_if_fail (CW_IS_FORM_DIALOG (dialog));
  gtk_box_append (GTK_BOX (dialog->box), field);
}

GtkWidget *
cw_form_dialog_add_words (CwFormDialog *dialog, const char *words)
{
  g_return_val_if_fail (CW_IS_FORM_DIALOG (dialog), NULL);
  GtkWidget *label = gtk_label_new (words);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 54);
  gtk_box_append (GTK_BOX (dialog->box), label);
  return label;
}

void
cw_form_dialog_add (CwFormDialog *dialog, const char *label, GtkWidget *field)
{
  g_return_if_fail (CW_IS_FORM_DIALOG (dialog));
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 3);
  GtkWidget *name = gtk_label_new (label);
  gtk_label_set_xalign (GTK_LABEL (name), 0);
  gtk_widget_add_css_class (name, "cw-dim");
  gtk_box_append (GTK_BOX (box), name);
  gtk_box_append (GTK_BOX (box), field);
  gtk_box_append (GTK_BOX (dialog->box), box);
  cw_widget_set_name (field, label);
}

void
cw_form_dialog_set_trouble (CwFormDialog *dialog, const char *trouble)
{
  g_return_if_fail (CW_IS_FORM_DIALOG (dialog));
  gtk_label_set_text (GTK_LABEL (dialog->trouble), trouble ? trouble : "");
  gtk_widget_set_visible (dialog->trouble, trouble != NULL);
}

static void
cw_form_dialog_class_init (CwFormDialogClass *class)
{
  taken_signal = g_signal_new ("taken", CW_TYPE_FORM_DIALOG,
                               G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                               G_TYPE_NONE, 0);
  gtk_widget_class_add_binding (GTK_WIDGET_CLASS (class), GDK_KEY_Escape, 0,
                                give_up, NULL);
}

static void
add_header (CwFormDialog *dialog)
{
  GtkWidget *bar = gtk_header_bar_new ();
  GtkWidget *cancel = gtk_button_new_with_mnemonic (_("_Cancel"));
  gtk_header_bar_set_show_title_buttons (GTK_HEADER_BAR (bar), FALSE);
  gtk_header_bar_pack_start (GTK_HEADER_BAR (bar), cancel);
  g_signal_connect_swapped (cancel, "clicked", G_CALLBACK (gtk_window_close),
                            dialog);
  dialog->take = gtk_button_new ();
  gtk_button_set_use_underline (GTK_BUTTON (dialog->take), TRUE);
  gtk_widget_add_css_class (dialog->take, "cw-first");
  g_signal_connect_swapped (dialog->take, "clicked", G_CALLBACK (take),
                            dialog);
  gtk_header_bar_pack_end (GTK_HEADER_BAR (bar), dialog->take);
  gtk_window_set_titlebar (GTK_WINDOW (dialog), bar);
}

static void
cw_form_dialog_init (CwFormDialog *dialog)
{
  add_header (dialog);
  GtkWidget *whole = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);
  gtk_widget_add_css_class (whole, "cw-form");
  dialog->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);
  gtk_widget_set_vexpand (dialog->box, TRUE);
  gtk_box_append (GTK_BOX (whole), dialog->box);
  dialog->trouble = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (dialog->trouble), 0);
  gtk_label_set_wrap (GTK_LABEL (dialog->trouble), TRUE);
  gtk_widget_add_css_class (dialog->trouble, "cw-trouble");
  gtk_widget_set_visible (dialog->trouble, FALSE);
  gtk_box_append (GTK_BOX (whole), dialog->trouble);
  gtk_window_set_child (GTK_WINDOW (dialog), whole);
}

CwFormDialog *
cw_form_dialog_new (GtkWindow *parent, const char *title, const char *take)
{
  CwFormDialog *dialog
      = g_object_new (CW_TYPE_FORM_DIALOG, "title", title, "modal", TRUE,
                      "transient-for", parent, "destroy-with-parent", TRUE,
                      "default-width", 420, NULL);
  gtk_button_set_label (GTK_BUTTON (dialog->take), take);
  gtk_window_set_default_widget (GTK_WINDOW (dialog), dialog->take);
  return dialog;
}

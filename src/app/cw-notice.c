/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-notice.h"

#include "cw-i18n.h"
#include "cw-panel-head.h"

#define SHOWN_SECONDS 12
#define PULSE_MS 120

struct _CwNotice
{
  GtkWidget parent;
  GtkWidget *revealer, *words, *progress, *enough_button, *button;
  GCancellable *work, *enough;
  GFile *file;
  guint going, pulse;
};

G_DEFINE_FINAL_TYPE (CwNotice, cw_notice, GTK_TYPE_WIDGET)

static void
forget (CwNotice *notice)
{
  g_clear_handle_id (&notice->going, g_source_remove);
  g_clear_handle_id (&notice->pulse, g_source_remove);
  g_clear_object (&notice->work);
  g_clear_object (&notice->enough);
  g_clear_object (&notice->file);
}

void
cw_notice_hide (CwNotice *notice)
{
  g_return_if_fail (CW_IS_NOTICE (notice));
  forget (notice);
  gtk_revealer_set_reveal_child (GTK_REVEALER (notice->revealer), FALSE);
}

static gboolean
go (gpointer data)
{
  CwNotice *notice = data;
  notice->going = 0;
  cw_notice_hide (notice);
  return G_SOURCE_REMOVE;
}

static gboolean
pulse (gpointer data)
{
  gtk_progress_bar_pulse (GTK_PROGRESS_BAR (CW_NOTICE (data)->progress));
  return G_SOURCE_CONTINUE;
}

static void
show (CwNotice *notice, const char *words, const char *button)
{
  gtk_label_set_text (GTK_LABEL (notice->words), words);
  gtk_button_set_label (GTK_BUTTON (notice->button), button);
  gtk_widget_set_visible (notice->progress, notice->work != NULL);
  gtk_widget_set_visible (notice->enough_button, notice->enough != NULL);
  gtk_revealer_set_reveal_child (GTK_REVEALER (notice->revealer), TRUE);
}

void
cw_notice_work (CwNotice *notice, const char *words,
                GCancellable *cancellable)
{
  g_return_if_fail (CW_IS_NOTICE (notice));
  forget (notice);
  notice->work = g_object_ref (cancellable);
  notice->pulse = g_timeout_add (PULSE_MS, pulse, notice);
  show (notice, words, _("_Cancel"));
}

void
cw_notice_share (CwNotice *notice, const char *words, double share,
                 GCancellable *enough)
{
  g_return_if_fail (CW_IS_NOTICE (notice));
  if (!notice->work)
    return;
  g_clear_handle_id (&notice->pulse, g_source_remove);
  g_set_object (&notice->enough, enough);
  gtk_progress_bar_set_fraction (GTK_PROGRESS_BAR (notice->progress), share);
  show (notice, words, _("_Cancel"));
}

void
cw_notice_done (CwNotice *notice, const char *words, GFile *file)
{
  g_return_if_fail (CW_IS_NOTICE (notice));
  forget (notice);
  g_set_object (&notice->file, file);
  notice->going = g_timeout_add_seconds (SHOWN_SECONDS, go, notice);
  show (notice, words, file ? _("_Open it") : _("_Close"));
}

static void
enough_pressed (CwNotice *notice)
{
  if (notice->enough)
    g_cancellable_cancel (notice->enough);
}

static void
pressed (CwNotice *notice)
{
  if (notice->work)
    g_cancellable_cancel (notice->work);
  if (notice->file)
    {
      g_autofree char *uri = g_file_get_uri (notice->file);
      gtk_show_uri (GTK_WINDOW (gtk_widget_get_root (GTK_WIDGET (notice))),
                    uri, GDK_CURRENT_TIME);
    }
  cw_notice_hide (notice);
}

static void
cw_notice_dispose (GObject *object)
{
  CwNotice *notice = CW_NOTICE (object);
  forget (notice);
  g_clear_pointer (&notice->revealer, gtk_widget_unparent);
  G_OBJECT_CLASS (cw_notice_parent_class)->dispose (object);
}

static void
cw_notice_class_init (CwNoticeClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_notice_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (class),
                                        GTK_ACCESSIBLE_ROLE_STATUS);
}

static void
cw_notice_init (CwNotice *notice)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);
  gtk_widget_add_css_class (box, "cw-notice");
  notice->words = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (notice->words), 0);
  gtk_label_set_wrap (GTK_LABEL (notice->words), TRUE);
  gtk_widget_set_hexpand (notice->words, TRUE);
  notice->progress = gtk_progress_bar_new ();
  gtk_widget_set_valign (notice->progress, GTK_ALIGN_CENTER);
  cw_widget_set_name (notice->progress, _("Progress"));
  notice->button = gtk_button_new_with_mnemonic (_("_Close"));
  gtk_widget_add_css_class (notice->button, "cw-framed");
  g_signal_connect_swapped (notice->button, "clicked", G_CALLBACK (pressed),
                            notice);
  notice->enough_button
      = gtk_button_new_with_mnemonic (_("_Use the plan found so far"));
  gtk_widget_add_css_class (notice->enough_button, "cw-framed");
  gtk_widget_set_visible (notice->enough_button, FALSE);
  g_signal_connect_swapped (notice->enough_button, "clicked",
                            G_CALLBACK (enough_pressed), notice);
  gtk_box_append (GTK_BOX (box), notice->words);
  gtk_box_append (GTK_BOX (box), notice->progress);
  gtk_box_append (GTK_BOX (box), notice->enough_button);
  gtk_box_append (GTK_BOX (box), notice->button);
  notice->revealer = gtk_revealer_new ();
  gtk_revealer_set_transition_type (GTK_REVEALER (notice->revealer),
                                    GTK_REVEALER_TRANSITION_TYPE_SLIDE_UP);
  gtk_revealer_set_child (GTK_REVEALER (notice->revealer), box);
  gtk_widget_set_parent (notice->revealer, GTK_WIDGET (notice));
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-late-button.h"

/* Held by the button, and by each click that is not answered yet. */
typedef struct
{
  CwLateFunc pressed;
  GWeakRef owner;
  gpointer data;
} LateWork;

static void
late_work_clear (gpointer memory)
{
  LateWork *work = memory;
  g_weak_ref_clear (&work->owner);
  g_free (work->data);
}

static void
late_work_unref (gpointer work)
{
  g_rc_box_release_full (work, late_work_clear);
}

static gboolean
do_late_work (gpointer data)
{
  LateWork *work = data;
  g_autoptr (GObject) owner = g_weak_ref_get (&work->owner);
  if (owner)
    work->pressed (owner, work->data);
  return G_SOURCE_REMOVE;
}

static void
clicked (GtkButton *button, gpointer work)
{
  g_idle_add_full (G_PRIORITY_DEFAULT, do_late_work, g_rc_box_acquire (work),
                   late_work_unref);
}

static void
late_work_closure_gone (gpointer work, GClosure *closure)
{
  late_work_unref (work);
}

GtkWidget *
cw_framed_button_new (const char *label)
{
  GtkWidget *button = gtk_button_new_with_label (label);
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  gtk_widget_add_css_class (button, "cw-framed");
  return button;
}

GtkWidget *
cw_late_button_new (const char *label, CwLateFunc pressed, GObject *owner,
                    gpointer data)
{
  g_return_val_if_fail (G_IS_OBJECT (owner), NULL);
  LateWork *work = g_rc_box_new0 (LateWork);
  work->pressed = pressed;
  work->data = data;
  g_weak_ref_init (&work->owner, owner);
  GtkWidget *button = cw_framed_button_new (label);
  g_signal_connect_data (button, "clicked", G_CALLBACK (clicked), work,
                         late_work_closure_gone, 0);
  return button;
}

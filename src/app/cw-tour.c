/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-tour.h"

#include "cw-i18n.h"
#include "cw-panel-head.h"
#include "cw-settings.h"

#define TOUR "cw-tour"

typedef struct
{
  GArray *stops;          /* CwTourStop */
  guint at;
  GtkWidget *note;        /* (nullable): the popover that is shown */
} Tour;

gboolean
cw_tour_was_seen (void)
{
  return cw_settings_get_flag ("tour-seen", FALSE);
}

static void
take_note_away (Tour *tour)
{
  if (tour->note)
    gtk_widget_unparent (tour->note);
  g_clear_weak_pointer (&tour->note);
}

static void
tour_free (gpointer data)
{
  Tour *tour = data;
  take_note_away (tour);
  g_array_unref (tour->stops);
  g_free (tour);
}

static void
end (GtkWidget *window)
{
  cw_settings_set_flag ("tour-seen", TRUE);
  g_object_set_data (G_OBJECT (window), TOUR, NULL);
}

static void show (GtkWidget *window);

/* Not under the very button that was clicked: it goes with its note. */
static gboolean
go_on (gpointer data)
{
  Tour *tour = g_object_get_data (G_OBJECT (data), TOUR);
  if (tour)
    {
      tour->at++;
      show (data);
    }
  return G_SOURCE_REMOVE;
}

static gboolean
end_later (gpointer data)
{
  end (data);
  return G_SOURCE_REMOVE;
}

static void
later (GtkWidget *window, GSourceFunc what)
{
  g_idle_add_full (G_PRIORITY_DEFAULT_IDLE, what, g_object_ref (window),
                   g_object_unref);
}

static void
next_clicked (GtkWidget *window)
{
  later (window, go_on);
}

static void
end_clicked (GtkWidget *window)
{
  later (window, end_later);
}

static gboolean
key_pressed (GtkWidget *window, guint key)
{
  if (key != GDK_KEY_Escape)
    return FALSE;
  later (window, end_later);
  return TRUE;
}

static GtkWidget *
new_text (const char *text, const char *style)
{
  GtkWidget *label = gtk_label_new (text);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 36);
  if (style)
    gtk_widget_add_css_class (label, style);
  return label;
}

static GtkWidget *
new_button (GtkWidget *window, const char *text, GCallback clicked)
{
  GtkWidget *button = gtk_button_new_with_mnemonic (text);
  g_signal_connect_object (button, "clicked", clicked, window,
                           G_CONNECT_SWAPPED);
  return button;
}

/* Returns the button that goes on. */
static GtkWidget *
add_foot (GtkWidget *box, GtkWidget *window, const Tour *tour)
{
  gboolean is_last = tour->at + 1 == tour->stops->len;
  GtkWidget *foot = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  /* Translators: of the notes of the tour: this one, all. */
  g_autofree char *count = g_strdup_printf (_("%u of %u"), tour->at + 1,
                                            tour->stops->len);
  GtkWidget *place = new_text (count, "cw-dim");
  GtkWidget *next = new_button (
      window, is_last ? _("_Done") : _("_Next"),
      is_last ? G_CALLBACK (end_clicked) : G_CALLBACK (next_clicked));
  gtk_widget_set_hexpand (place, TRUE);
  gtk_box_append (GTK_BOX (foot), place);
  if (!is_last)
    gtk_box_append (GTK_BOX (foot),
                    new_button (window, _("_End the tour"),
                                G_CALLBACK (end_clicked)));
  gtk_widget_add_css_class (next, "cw-first");
  gtk_box_append (GTK_BOX (foot), next);
  gtk_box_append (GTK_BOX (box), foot);
  return next;
}

static void
listen_to_keys (GtkWidget *note, GtkWidget *window)
{
  GtkEventController *keys = gtk_event_controller_key_new ();
  gtk_event_controller_set_propagation_phase (keys, GTK_PHASE_CAPTURE);
  g_signal_connect_object (keys, "key-pressed", G_CALLBACK (key_pressed),
                           window, G_CONNECT_SWAPPED);
  gtk_widget_add_controller (note, keys);
}

static void
point_inside (GtkWidget *note, GtkWidget *beside)
{
  const GdkRectangle middle = { gtk_widget_get_width (beside) / 2,
                                gtk_widget_get_height (beside) / 3, 1, 1 };
  gtk_popover_set_pointing_to (GTK_POPOVER (note), &middle);
}

/* Returns the button that goes on. */
static GtkWidget *
make_note (GtkWidget *window, Tour *tour, const CwTourStop *stop)
{
  GtkWidget *note = gtk_popover_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  gtk_box_append (GTK_BOX (box), new_text (stop->title, "cw-heading"));
  gtk_box_append (GTK_BOX (box), new_text (stop->words, NULL));
  GtkWidget *next = add_foot (box, window, tour);
  gtk_popover_set_child (GTK_POPOVER (note), box);
  /* The window behind it stays at hand. */
  gtk_popover_set_autohide (GTK_POPOVER (note), FALSE);
  gtk_popover_set_position (GTK_POPOVER (note), stop->side);
  gtk_widget_add_css_class (note, "cw-tour");
  cw_widget_set_name (note, stop->title);
  gtk_accessible_update_property (GTK_ACCESSIBLE (note),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                  stop->words, -1);
  listen_to_keys (note, window);
  gtk_widget_set_parent (note, stop->beside);
  if (stop->inside)
    point_inside (note, stop->beside);
  g_set_weak_pointer (&tour->note, note);
  return next;
}

static void
show (GtkWidget *window)
{
  Tour *tour = g_object_get_data (G_OBJECT (window), TOUR);
  take_note_away (tour);
  while (tour->at < tour->stops->len
         && !gtk_widget_get_mapped (
             g_array_index (tour->stops, CwTourStop, tour->at).beside))
    tour->at++;
  if (tour->at >= tour->stops->len)
    {
      end (window);
      return;
    }
  GtkWidget *next = make_note (
      window, tour, &g_array_index (tour->stops, CwTourStop, tour->at));
  gtk_popover_popup (GTK_POPOVER (tour->note));
  gtk_widget_grab_focus (next);
}

/* A note must not outlive what it stands beside; nothing was dismissed. */
static void
window_gone (GtkWidget *window)
{
  g_object_set_data (G_OBJECT (window), TOUR, NULL);
}

void
cw_tour_start (GtkWindow *window, const CwTourStop *stops, guint n)
{
  g_return_if_fail (GTK_IS_WINDOW (window));
  g_return_if_fail (n == 0 || stops != NULL);
  if (g_object_get_data (G_OBJECT (window), TOUR))
    return;
  Tour *tour = g_new0 (Tour, 1);
  tour->stops = g_array_new (FALSE, FALSE, sizeof (CwTourStop));
  g_array_append_vals (tour->stops, stops, n);
  g_object_set_data_full (G_OBJECT (window), TOUR, tour, tour_free);
  g_signal_handlers_disconnect_by_func (window, window_gone, NULL);
  g_signal_connect (window, "unmap", G_CALLBACK (window_gone), NULL);
  show (GTK_WIDGET (window));
}

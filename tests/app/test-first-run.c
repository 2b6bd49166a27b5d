/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What somebody meets who begins: ways to begin, walls from typed sizes, and
 * the short tour.
 */
#include "cw-dialogs.h"
#include "cw-form-dialog.h"
#include "cw-settings.h"
#include "window-cases.h"

static void
note_way (GtkWidget *widget, gpointer data)
{
  g_autofree char *all = *(char **) data;
  const char *action
      = GTK_IS_BUTTON (widget)
            ? gtk_actionable_get_action_name (GTK_ACTIONABLE (widget))
            : NULL;
  *(char **) data = g_strdup_printf (
      "%s%s", all, gtk_widget_has_css_class (widget, "cw-way") ? action : "");
}

static void
ways_to_begin (void)
{
  CwWindow *window = case_empty_window ();
  char *ways = g_strdup ("");
  case_walk (GTK_WIDGET (window), note_way, &ways);
  g_assert_cmpstr (ways, ==,
                   "win.add-sheet" "win.type-sizes" "win.open-example"
                   "win.open");
  g_free (ways);
  case_close (GTK_WINDOW (window));
}

typedef struct
{
  GtkWidget *entries[8];
  guint n;
} Entries;

static void
note_entry (GtkWidget *widget, gpointer data)
{
  Entries *entries = data;
  if (GTK_IS_ENTRY (widget) && entries->n < G_N_ELEMENTS (entries->entries))
    entries->entries[entries->n++] = widget;
}

/* Fills the form in and takes it: length, width, height, pitch. */
static void
type_house (CwWindow *window, const char *const texts[4])
{
  Entries entries = { .n = 0 };
  g_action_group_activate_action (G_ACTION_GROUP (window), "type-sizes",
                                  NULL);
  case_settle ();
  GtkWindow *dialog = case_open_window (CW_TYPE_FORM_DIALOG);
  g_assert_nonnull (dialog);
  case_walk (GTK_WIDGET (dialog), note_entry, &entries);
  g_assert_cmpuint (entries.n, ==, 4);
  for (guint i = 0; i < 4; i++)
    gtk_editable_set_text (GTK_EDITABLE (entries.entries[i]), texts[i]);
  g_signal_emit_by_name (dialog, "taken");
  case_settle ();
}

static guint
n_walls (CwWindow *window)
{
  CwDocument *document = cw_job_document (cw_window_job (window));
  return (guint) cw_list_length (
      cw_document_project (document)->elevations);
}

static gboolean
tour_note (gpointer data)
{
  for (GtkWidget *focus = gtk_window_get_focus (GTK_WINDOW (data)); focus;
       focus = gtk_widget_get_parent (focus))
    if (gtk_widget_has_css_class (focus, "cw-tour"))
      return TRUE;
  return FALSE;
}

static gboolean
no_tour_note (gpointer data)
{
  return !tour_note (data);
}

static void
throw_away (CwWindow *window)
{
  cw_dialogs_answer_next (1);
  case_close (GTK_WINDOW (window));
}

/* Four walls, one step of undo. */
static void
house_from_sizes (void)
{
  static const char *const house[4] = { "10 m", "8 m", "3 m", "6:12" };
  CwWindow *window = case_empty_window ();
  CwJob *job = cw_window_job (window);
  type_house (window, house);
  g_assert_cmpuint (n_walls (window), ==, 4);
  g_assert_null (case_open_window (CW_TYPE_FORM_DIALOG));
  case_wait_for_takeoff (job);
  cw_document_undo (cw_job_document (job));
  g_assert_cmpuint (n_walls (window), ==, 0);
  cw_document_redo (cw_job_document (job));
  case_wait_for_takeoff (job);
  throw_away (window);
}

/* The form stays, tells what is wrong, and nothing is made. */
static void
bad_sizes_are_told (void)
{
  static const char *const wrong[][4] = {
    { "10 m", "8 m", "", "6:12" },
    { "0", "8 m", "3 m", "" },
    { "10 m", "8 m", "3 m", "3600" },
    { "10 m", "8 m", "-3 m", "" },
    { "2000 m", "8 m", "3 m", "" },
  };
  CwWindow *window = case_empty_window ();
  for (gsize i = 0; i < G_N_ELEMENTS (wrong); i++)
    {
      type_house (window, wrong[i]);
      g_assert_cmpuint (n_walls (window), ==, 0);
      GtkWindow *dialog = case_open_window (CW_TYPE_FORM_DIALOG);
      g_assert_nonnull (dialog);
      case_close (dialog);
    }
  case_close (GTK_WINDOW (window));
}

static void
press (CwWindow *window)
{
  GtkWidget *focus = gtk_window_get_focus (GTK_WINDOW (window));
  g_assert_true (GTK_IS_BUTTON (focus));
  g_signal_emit_by_name (focus, "clicked");
  case_settle ();
}

/* By the keyboard's focus from note to note, then never again unasked. */
static void
tour_is_gone_for_good (void)
{
  static const char *const house[4] = { "10 m", "8 m", "3 m", "" };
  cw_settings_set_flag ("tour-seen", FALSE);
  CwWindow *window = case_empty_window ();
  type_house (window, house);
  case_wait (tour_note, window);
  for (guint i = 0; i < 4; i++)
    {
      press (window);
      g_assert_true (tour_note (window));
      g_assert_false (cw_settings_get_flag ("tour-seen", FALSE));
    }
  press (window);
  case_wait (no_tour_note, window);
  g_assert_true (cw_settings_get_flag ("tour-seen", FALSE));
  case_wait_for_takeoff (cw_window_job (window));
  throw_away (window);

  CwWindow *next = case_empty_window ();
  type_house (next, house);
  g_usleep (500000);
  case_settle ();
  g_assert_false (tour_note (next));
  g_action_group_activate_action (G_ACTION_GROUP (next), "tour", NULL);
  case_wait (tour_note, next);
  case_wait_for_takeoff (cw_window_job (next));
  /* Closed in the middle of it. */
  throw_away (next);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  if (!case_start_toolkit ())
    return 0;
  case_application ();
  g_test_add_func ("/first-run/ways-to-begin", ways_to_begin);
  g_test_add_func ("/first-run/house-from-sizes", house_from_sizes);
  g_test_add_func ("/first-run/bad-sizes-are-told", bad_sizes_are_told);
  g_test_add_func ("/first-run/tour-is-gone-for-good",
                   tour_is_gone_for_good);
  return g_test_run ();
}

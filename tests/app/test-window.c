/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "cw-dialogs.h"
#include "cw-field-row.h"
#include "cw-inspector.h"
#include "cw-quantities.h"
#include "cw-project-file.h"
#include "window-cases.h"

typedef CaseDesk Desk;

static void
lay (Desk *desk, gconstpointer data)
{
  case_desk_lay (desk);
}

static void
clear (Desk *desk, gconstpointer data)
{
  case_desk_clear (desk);
}

static const char *
figure (Desk *desk, const char *key)
{
  return cw_quantities_figure (
      case_find (GTK_WIDGET (desk->window), CW_TYPE_QUANTITIES), key);
}

/* Fennel House, south: 32 ft × 9 ft. */
static void
shows_quantities (Desk *desk, gconstpointer data)
{
  g_assert_cmpstr (figure (desk, "wall.gross"), ==, "288.0");
}

static GtkWidget *
entry_of (Desk *desk, const char *field)
{
  GtkWidget *row = cw_inspector_row (
      case_find (GTK_WIDGET (desk->window), CW_TYPE_INSPECTOR), field);
  g_assert_nonnull (row);
  return case_find (row, GTK_TYPE_ENTRY);
}

static void
type (Desk *desk, const char *field, const char *text)
{
  GtkWidget *entry = entry_of (desk, field);
  gtk_editable_set_text (GTK_EDITABLE (entry), text);
  g_signal_emit_by_name (entry, "activate");
  case_wait_for_takeoff (desk->job);
  case_settle ();
}

static void
quantities_follow_the_inspector (Desk *desk, gconstpointer data)
{
  g_autofree char *before = g_strdup (figure (desk, "opening.area"));
  CwDocument *document = cw_job_document (desk->job);
  cw_document_select (document, (const char *const[]) { "o1", NULL });
  case_settle ();
  type (desk, "width", "8'");
  g_assert_cmpstr (figure (desk, "opening.area"), !=, before);
  case_desk_act (desk, "undo");
  case_wait_for_takeoff (desk->job);
  case_settle ();
  g_assert_cmpstr (figure (desk, "opening.area"), ==, before);
}

static void
bad_text_is_told_and_changes_nothing (Desk *desk, gconstpointer data)
{
  CwDocument *document = cw_job_document (desk->job);
  const CwProject *before = cw_document_project (document);
  cw_document_select (document, (const char *const[]) { "o1", NULL });
  case_settle ();
  type (desk, "width", "8x");
  g_assert_true (cw_document_project (document) == before);
  g_assert_true (
      gtk_widget_has_css_class (entry_of (desk, "width"), "cw-wrong"));
}

static gboolean
is_saved (gpointer job)
{
  return cw_document_is_saved (cw_job_document (job));
}

static void
save_as_and_reopen (Desk *desk, gconstpointer data)
{
  g_autoptr (GFile) target = g_file_get_child (desk->folder, "other");
  g_autoptr (GFile) whole = g_file_get_child (desk->folder, "other.cladwright");
  g_autoptr (GError) error = NULL;
  case_rename_first (desk->job, "Seaward");
  cw_dialogs_choose_next (target);
  case_desk_act (desk, "save-as");
  case_wait (is_saved, desk->job);
  g_assert_true (g_file_equal (cw_job_file (desk->job), whole));
  g_autoptr (CwJob) again = case_open (whole, &error);
  g_assert_no_error (error);
  g_assert_cmpstr (case_first_name (again), ==, "Seaward");
  case_wait_for_takeoff (again);
}

static gboolean
exists (gpointer file)
{
  return g_file_query_exists (file, NULL);
}

static void
exported (Desk *desk, const char *action, const char *name,
          const char *beginning)
{
  g_autoptr (GFile) file = g_file_get_child (desk->folder, name);
  g_autofree char *bytes = NULL;
  cw_dialogs_choose_next (file);
  case_desk_act (desk, action);
  case_wait (exists, file);
  case_settle ();
  g_assert_true (
      g_file_load_contents (file, NULL, &bytes, NULL, NULL, NULL));
  g_assert_true (g_str_has_prefix (bytes, beginning));
}

static void
exports (Desk *desk, gconstpointer data)
{
  exported (desk, "export-pdf", "takeoff.pdf", "%PDF-");
  exported (desk, "export-csv", "takeoff.csv", "key,scope,quantity,");
}

static void
walls_come_and_go (Desk *desk, gconstpointer data)
{
  CwDocument *document = cw_job_document (desk->job);
  const CwProject *before = cw_document_project (document);
  gsize n = cw_list_length (before->elevations);
  case_desk_act (desk, "duplicate-wall");
  g_assert_cmpuint (
      cw_list_length (cw_document_project (document)->elevations), ==, n + 1);
  g_assert_cmpstr (cw_document_elevation_id (document), !=, "south");
  case_desk_act (desk, "remove-wall");
  case_desk_act (desk, "undo");
  case_desk_act (desk, "undo");
  g_assert_true (cw_document_project (document) == before);
  g_assert_cmpstr (cw_document_elevation_id (document), ==, "south");
}

/* A wall that was begun and not drawn is taken before another is made. */
static void
begun_wall_is_taken_again (Desk *desk, gconstpointer data)
{
  CwDocument *document = cw_job_document (desk->job);
  case_desk_act (desk, "add-wall");
  const CwProject *once = cw_document_project (document);
  case_desk_act (desk, "add-wall");
  g_assert_true (cw_document_project (document) == once);
  g_assert_true (cw_board_get_tool (cw_walls_place_board (
                     cw_window_walls (desk->window)))
                 == CW_TOOL_WALL);
}

static void
typed_wall (void)
{
  CwWindow *window = case_empty_window ();
  CwJob *job = cw_window_job (window);
  g_autoptr (GError) error = NULL;
  g_action_group_activate_action (G_ACTION_GROUP (window), "type-wall", NULL);
  case_settle ();
  g_assert_true (cw_board_enter_text (
      cw_walls_place_board (cw_window_walls (window)), "4800 x 2400",
      &error));
  g_assert_no_error (error);
  case_wait_for_takeoff (job);
  case_settle ();
  g_assert_cmpstr (
      cw_quantities_figure (
          case_find (GTK_WIDGET (window), CW_TYPE_QUANTITIES), "wall.gross"),
      ==, "11.52");
  cw_dialogs_answer_next (1);
  case_close (GTK_WINDOW (window));
}

static void
look_for_bound (GtkWidget *widget, gpointer data)
{
  guint *found = data;
  if (GTK_IS_LABEL (widget) && gtk_widget_get_visible (widget)
      && g_pattern_match_simple ("* panels, at least * are needed",
                                 gtk_label_get_text (GTK_LABEL (widget))))
    (*found)++;
}

/* Beside the panels used it says how few might do. */
static void
shows_panels_needed (Desk *desk, gconstpointer data)
{
  GtkWidget *quantities
      = case_find (GTK_WIDGET (desk->window), CW_TYPE_QUANTITIES);
  guint found = 0;
  case_walk (quantities, look_for_bound, &found);
  g_assert_cmpuint (found, ==, 1);
  g_assert_cmpstr (figure (desk, "panel.stock"), !=, "");
  g_assert_cmpstr (figure (desk, "panel.least"), !=, "");
}

/* Giving up keeps the window; saving writes, then closes it. */
static void
closing_asks (Desk *desk, gconstpointer data)
{
  g_autoptr (GFile) file = g_object_ref (cw_job_file (desk->job));
  g_autoptr (GError) error = NULL;
  case_rename_first (desk->job, "Seaward");
  cw_dialogs_answer_next (2);
  gtk_window_close (GTK_WINDOW (desk->window));
  case_settle ();
  g_assert_true (gtk_widget_get_visible (GTK_WIDGET (desk->window)));
  g_assert_false (is_saved (desk->job));

  cw_dialogs_answer_next (0);
  case_close (GTK_WINDOW (g_steal_pointer (&desk->window)));
  g_autoptr (CwJob) again = case_open (file, &error);
  g_assert_no_error (error);
  g_assert_cmpstr (case_first_name (again), ==, "Seaward");
  case_wait_for_takeoff (again);
}

static void
light_and_dark (Desk *desk, gconstpointer data)
{
  static const char *const looks[] = { "dark", "light", "system" };
  for (gsize i = 0; i < G_N_ELEMENTS (looks); i++)
    {
      g_action_group_change_action_state (
          G_ACTION_GROUP (case_application ()), "look",
          g_variant_new_string (looks[i]));
      case_settle ();
      g_assert_true (gtk_widget_get_mapped (GTK_WIDGET (desk->window)));
    }
}

static void
add (const char *path, void (*test) (Desk *, gconstpointer))
{
  g_test_add (path, Desk, NULL, lay, test, clear);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  if (!case_start_toolkit ())
    return 0;
  case_application ();
  add ("/window/shows-quantities", shows_quantities);
  add ("/window/shows-panels-needed", shows_panels_needed);
  add ("/window/quantities-follow-the-inspector",
       quantities_follow_the_inspector);
  add ("/window/bad-text-is-told-and-changes-nothing",
       bad_text_is_told_and_changes_nothing);
  add ("/window/save-as-and-reopen", save_as_and_reopen);
  add ("/window/exports", exports);
  add ("/window/walls-come-and-go", walls_come_and_go);
  add ("/window/begun-wall-is-taken-again", begun_wall_is_taken_again);
  g_test_add_func ("/window/typed-wall", typed_wall);
  add ("/window/closing-asks", closing_asks);
  add ("/window/light-and-dark", light_and_dark);
  return g_test_run ();
}

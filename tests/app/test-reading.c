/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading the board in the window: what is shown and remembered, what rests
 * under the pointer, and the list of what is on the wall.
 */
#include <string.h>

#include "cw-board-frame.h"
#include "cw-hover-label.h"
#include "cw-inspector.h"
#include "cw-item-list.h"
#include "cw-settings.h"
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

static gboolean
state_of (CwWindow *window, const char *action)
{
  g_autoptr (GVariant) state
      = g_action_group_get_action_state (G_ACTION_GROUP (window), action);
  return g_variant_get_boolean (state);
}

static void
layers_are_remembered (Desk *desk, gconstpointer data)
{
  g_assert_true (state_of (desk->window, "show-studs"));
  g_assert_false (state_of (desk->window, "show-mesh"));
  case_desk_act (desk, "show-studs");
  case_desk_act (desk, "show-mesh");
  case_desk_act (desk, "as-printed");
  g_assert_false (state_of (desk->window, "show-studs"));
  cw_settings_reload ();
  CwWindow *next = case_empty_window ();
  g_assert_false (state_of (next, "show-studs"));
  g_assert_true (state_of (next, "show-mesh"));
  g_assert_false (state_of (next, "as-printed"));
  case_close (GTK_WINDOW (next));
  case_desk_act (desk, "show-studs");
  case_desk_act (desk, "show-mesh");
}

static GtkListBox *
rows_of (Desk *desk)
{
  CwItemList *list
      = case_find (GTK_WIDGET (desk->window), CW_TYPE_ITEM_LIST);
  return case_find (GTK_WIDGET (list), GTK_TYPE_LIST_BOX);
}

/* (transfer full): what a row says in its two lines. */
static char *
row_words (Desk *desk, int index)
{
  GtkListBoxRow *row
      = gtk_list_box_get_row_at_index (rows_of (desk), index);
  g_assert_nonnull (row);
  GtkWidget *lines = gtk_list_box_row_get_child (row);
  return g_strdup_printf (
      "%s: %s",
      gtk_label_get_text (GTK_LABEL (gtk_widget_get_first_child (lines))),
      gtk_label_get_text (GTK_LABEL (gtk_widget_get_last_child (lines))));
}

static void
lists_what_is_on_the_wall (Desk *desk, gconstpointer data)
{
  CwDocument *document = cw_job_document (desk->job);
  const CwElevation *south = cw_project_elevation (
      cw_document_project (document), cw_document_elevation_id (document));
  int n = (int) cw_list_length (south->items);
  case_desk_act (desk, "list-items");
  g_autofree char *wall = row_words (desk, 0);
  g_autofree char *first = row_words (desk, 1);
  g_assert_cmpstr (wall, ==, "South: 32′ 0″ × 9′ 0″");
  g_assert_nonnull (strstr (first, " × "));
  g_assert_nonnull (gtk_list_box_get_row_at_index (rows_of (desk), n));
  g_assert_null (gtk_list_box_get_row_at_index (rows_of (desk), n + 1));
  GtkWidget *focus = gtk_window_get_focus (GTK_WINDOW (desk->window));
  g_assert_true (GTK_IS_LIST_BOX_ROW (focus));
}

static void
list_and_board_choose_alike (Desk *desk, gconstpointer data)
{
  CwDocument *document = cw_job_document (desk->job);
  case_desk_act (desk, "list-items");
  cw_document_select (document, (const char *const[]) { "o2", NULL });
  case_settle ();
  g_autoptr (GList) chosen
      = gtk_list_box_get_selected_rows (rows_of (desk));
  g_assert_cmpuint (g_list_length (chosen), ==, 1);
  g_assert_cmpstr (g_object_get_data (chosen->data, "cw-id"), ==, "o2");
  gtk_list_box_unselect_all (rows_of (desk));
  gtk_list_box_select_row (
      rows_of (desk), gtk_list_box_get_row_at_index (rows_of (desk), 1));
  case_settle ();
  const char *const *ids = cw_document_selection (document);
  g_assert_cmpuint (g_strv_length ((char **) ids), ==, 1);
  g_assert_cmpstr (
      ids[0], ==,
      g_object_get_data (
          G_OBJECT (gtk_list_box_get_row_at_index (rows_of (desk), 1)),
          "cw-id"));
}

/* An edit changes the row that tells of it. */
static void
list_follows_edits (Desk *desk, gconstpointer data)
{
  CwDocument *document = cw_job_document (desk->job);
  case_desk_act (desk, "list-items");
  g_autofree char *before = row_words (desk, 1);
  const char *id = g_object_get_data (
      G_OBJECT (gtk_list_box_get_row_at_index (rows_of (desk), 1)), "cw-id");
  cw_document_select (document, (const char *const[]) { id, NULL });
  case_desk_act (desk, "remove-chosen");
  case_wait_for_takeoff (desk->job);
  case_settle ();
  g_autofree char *after = row_words (desk, 1);
  g_assert_cmpstr (before, !=, after);
}

static gboolean
says_something (gpointer label)
{
  return cw_hover_label_words (label) != NULL;
}

/* As the crosshair rests on a piece of a panel. */
static void
tells_what_rests_under (Desk *desk, gconstpointer data)
{
  CwBoard *board = cw_walls_place_board (cw_window_walls (desk->window));
  CwHoverLabel *label
      = case_find (GTK_WIDGET (desk->window), CW_TYPE_HOVER_LABEL);
  cw_board_crosshair_to (board, cw_point (CW_INCHES (20), CW_INCHES (10)));
  case_wait (says_something, label);
  g_assert_true (
      g_str_has_prefix (cw_hover_label_words (label), "Piece 1-1"));
  cw_board_crosshair_to (board, cw_point (CW_INCHES (-60), CW_INCHES (10)));
  g_assert_null (cw_hover_label_words (label));
}

static void
note_wrong_way (GtkWidget *widget, gpointer data)
{
  guint *n = data;
  if (GTK_IS_ENTRY (widget) && gtk_widget_has_css_class (widget, "cw-figure"))
    {
      GtkEditable *text = gtk_editable_get_delegate (GTK_EDITABLE (widget));
      g_assert_cmpint (gtk_widget_get_direction (GTK_WIDGET (text)), ==,
                       GTK_TEXT_DIR_LTR);
      (*n)++;
    }
}

static double
left_of (GtkWidget *widget, CwWindow *window)
{
  graphene_rect_t box;
  g_assert_true (
      gtk_widget_compute_bounds (widget, GTK_WIDGET (window), &box));
  return box.origin.x;
}

/* Where one reads from the right the panels change sides; the drawing and
 * sizes do not turn. */
static void
mirrored_panels (void)
{
  gtk_widget_set_default_direction (GTK_TEXT_DIR_RTL);
  Desk desk = { NULL };
  lay (&desk, NULL);
  GtkWidget *window = GTK_WIDGET (desk.window);
  GtkWidget *frame = case_find (window, CW_TYPE_BOARD_FRAME);
  CwBoard *board = cw_walls_place_board (cw_window_walls (desk.window));
  double x0, x1, y;
  guint n = 0;
  g_assert_cmpfloat (
      left_of (case_find (window, CW_TYPE_ITEM_LIST), desk.window), >,
      left_of (frame, desk.window));
  g_assert_cmpfloat (
      left_of (case_find (window, CW_TYPE_INSPECTOR), desk.window), <,
      left_of (frame, desk.window));
  cw_board_to_widget (board, cw_point (0, 0), &x0, &y);
  cw_board_to_widget (board, cw_point (CW_MM (1000), 0), &x1, &y);
  g_assert_cmpfloat (x0, <, x1);
  g_assert_cmpint (gtk_widget_get_direction (frame), ==, GTK_TEXT_DIR_LTR);
  cw_document_select (cw_job_document (desk.job),
                      (const char *const[]) { "o1", NULL });
  case_settle ();
  case_walk (case_find (window, CW_TYPE_INSPECTOR), note_wrong_way, &n);
  g_assert_cmpuint (n, >=, 4);
  clear (&desk, NULL);
  gtk_widget_set_default_direction (GTK_TEXT_DIR_LTR);
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
  add ("/reading/layers-are-remembered", layers_are_remembered);
  add ("/reading/lists-what-is-on-the-wall", lists_what_is_on_the_wall);
  add ("/reading/list-and-board-choose-alike", list_and_board_choose_alike);
  add ("/reading/list-follows-edits", list_follows_edits);
  add ("/reading/tells-what-rests-under", tells_what_rests_under);
  g_test_add_func ("/reading/mirrored-panels", mirrored_panels);
  return g_test_run ();
}

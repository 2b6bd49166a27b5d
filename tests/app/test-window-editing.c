/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Editing in the window: what the menus do, the repeat dialog, the list of
 * steps, the schedule of openings, attributes of many at once.
 */
#include <string.h>

#include "cw-dialogs.h"
#include "cw-field-row.h"
#include "cw-form-dialog.h"
#include "cw-inspector.h"
#include "cw-mark-list.h"
#include "cw-window-private.h"
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

static CwDocument *
document_of (Desk *desk)
{
  return cw_job_document (desk->job);
}

static const CwProject *
project_of (Desk *desk)
{
  return cw_document_project (document_of (desk));
}

static void
choose (Desk *desk, const char *const *ids)
{
  cw_document_select (document_of (desk), ids);
  case_settle ();
}

static void
act (Desk *desk, const char *action, GVariant *target)
{
  g_action_group_activate_action (G_ACTION_GROUP (desk->window), action,
                                  target);
  case_settle ();
}

static gboolean
may (Desk *desk, const char *action)
{
  return g_action_group_get_action_enabled (G_ACTION_GROUP (desk->window),
                                            action);
}

static CwLength
field_of (Desk *desk, const char *id, const char *field)
{
  const CwNode *node = cw_node_find (&project_of (desk)->node, id);
  g_assert_nonnull (node);
  return cw_node_get (node,
                      (guint) cw_node_type_field (node->type, field));
}

static gsize
n_items (Desk *desk)
{
  return cw_list_length (
      cw_document_elevation (document_of (desk))->items);
}

static const char *
undo_name (Desk *desk)
{
  return cw_document_undo_name (document_of (desk));
}

/* ------------------------------------------------------------------ menus */

/* Only what there is something for. */
static void
menus_offer_what_can_be (Desk *desk, gconstpointer data)
{
  choose (desk, (const char *const[]) { NULL });
  g_assert_false (may (desk, "copy"));
  g_assert_false (may (desk, "repeat"));
  g_assert_true (may (desk, "choose-all"));
  choose (desk, (const char *const[]) { "o1", NULL });
  g_assert_true (may (desk, "copy"));
  g_assert_true (may (desk, "repeat"));
  g_assert_false (may (desk, "align"));
  choose (desk, (const char *const[]) { "o1", "o2", NULL });
  g_assert_true (may (desk, "align"));
  g_assert_false (may (desk, "distribute"));
  choose (desk, (const char *const[]) { "o1", "o2", "o3", NULL });
  g_assert_true (may (desk, "distribute"));
}

static void
menu_aligns_in_one_step (Desk *desk, gconstpointer data)
{
  const CwProject *before = project_of (desk);
  choose (desk, (const char *const[]) { "o1", "o2", "o3", NULL });
  act (desk, "align", g_variant_new_string ("left"));
  g_assert_cmpint (field_of (desk, "o2", "x"), ==,
                   field_of (desk, "o1", "x"));
  g_assert_cmpint (field_of (desk, "o3", "x"), ==,
                   field_of (desk, "o1", "x"));
  g_assert_cmpstr (undo_name (desk), ==, "Align");
  act (desk, "undo", NULL);
  g_assert_true (project_of (desk) == before);
}

static void
menu_selects_alike (Desk *desk, gconstpointer data)
{
  choose (desk, (const char *const[]) { "o1", NULL });
  act (desk, "choose-kind", NULL);
  g_assert_cmpuint (
      g_strv_length ((char **) cw_document_selection (document_of (desk))), >,
      1);
  act (desk, "choose-all", NULL);
  g_assert_cmpuint (
      g_strv_length ((char **) cw_document_selection (document_of (desk))),
      ==, n_items (desk));
}

static void
menu_deletes (Desk *desk, gconstpointer data)
{
  const gsize n = n_items (desk);
  choose (desk, (const char *const[]) { "o1", "o2", NULL });
  act (desk, "remove-chosen", NULL);
  g_assert_cmpuint (n_items (desk), ==, n - 2);
  g_assert_null (cw_document_selection (document_of (desk))[0]);
}

static gboolean
is_menu_seen (gpointer window)
{
  return gtk_widget_get_mapped (((CwWindow *) window)->board_menu);
}

static gboolean
is_menu_gone (gpointer window)
{
  return !is_menu_seen (window);
}

static void
want_menu (Desk *desk, CwPoint at)
{
  CwBoard *board = cw_window_board (desk->window);
  double x, y;
  cw_board_to_widget (board, at, &x, &y);
  g_signal_emit_by_name (board, "menu-wanted", x, y);
  case_wait (is_menu_seen, desk->window);
  gtk_popover_popdown (GTK_POPOVER (desk->window->board_menu));
  case_wait (is_menu_gone, desk->window);
}

static void
menu_opens_and_gives_focus_back (Desk *desk, gconstpointer data)
{
  choose (desk, (const char *const[]) { "o1", NULL });
  want_menu (desk, cw_point (CW_MM (1500), CW_MM (1400)));
  g_assert_true (gtk_widget_is_focus (
      GTK_WIDGET (cw_window_board (desk->window))));
}

/* -------------------------------------------------------------- the dialog */

static void
entries_of (GtkWidget *widget, gpointer data)
{
  if (GTK_IS_ENTRY (widget))
    g_ptr_array_add (data, widget);
}

/* Copies, then the ways across and up. */
static GtkWindow *
open_repeat (Desk *desk, double copies, const char *across, const char *up)
{
  g_autoptr (GPtrArray) entries = g_ptr_array_new ();
  GtkWindow *dialog;
  act (desk, "repeat", NULL);
  dialog = case_open_window (CW_TYPE_FORM_DIALOG);
  g_assert_nonnull (dialog);
  case_walk (GTK_WIDGET (dialog), entries_of, entries);
  g_assert_cmpuint (entries->len, ==, 2);
  gtk_spin_button_set_value (
      case_find (GTK_WIDGET (dialog), GTK_TYPE_SPIN_BUTTON), copies);
  gtk_editable_set_text (entries->pdata[0], across);
  gtk_editable_set_text (entries->pdata[1], up);
  return dialog;
}

static void
take (GtkWindow *dialog)
{
  g_signal_emit_by_name (dialog, "taken");
  case_settle ();
}

static gboolean
is_closed (gpointer data)
{
  return case_open_window (CW_TYPE_FORM_DIALOG) == NULL;
}

static void
dialog_repeats (Desk *desk, gconstpointer data)
{
  const CwProject *before = project_of (desk);
  const gsize n = n_items (desk);
  const CwLength x = field_of (desk, "o1", "x");
  choose (desk, (const char *const[]) { "o1", NULL });
  take (open_repeat (desk, 2, "1'", "0"));
  case_wait (is_closed, NULL);
  g_assert_cmpuint (n_items (desk), ==, n + 2);
  for (gsize i = 0; i < 2; i++)
    {
      const CwOpening *copy = cw_list_at (
          cw_document_elevation (document_of (desk))->items, n + i);
      g_assert_cmpint (copy->x, ==,
                       x + (CwLength) (i + 1) * 12 * CW_NM_PER_INCH);
    }
  g_assert_cmpstr (undo_name (desk), ==, "Repeat");
  act (desk, "undo", NULL);
  g_assert_true (project_of (desk) == before);
}

/* Nothing is done, and the dialog stays, until it can be. */
static void
dialog_refuses (Desk *desk, gconstpointer data)
{
  const CwProject *before = project_of (desk);
  GtkWindow *dialog;
  choose (desk, (const char *const[]) { "o1", NULL });
  dialog = open_repeat (desk, 2, "0", "0");
  take (dialog);
  g_assert_true (case_open_window (CW_TYPE_FORM_DIALOG) == dialog);
  g_assert_true (project_of (desk) == before);
  gtk_window_close (dialog);
  case_wait (is_closed, NULL);
  dialog = open_repeat (desk, 2, "8x", "0");
  take (dialog);
  g_assert_true (project_of (desk) == before);
  gtk_window_close (dialog);
  case_wait (is_closed, NULL);
}

/* ------------------------------------------------------- the list of steps */

/* The first state is 0, which is as if nothing were kept. */
static void
note_step (GtkWidget *widget, gpointer data)
{
  GPtrArray *rows = data;
  if (GTK_IS_LIST_BOX_ROW (widget)
      && g_object_get_data (G_OBJECT (widget), "state"))
    g_ptr_array_add (rows, widget);
}

static GtkWidget *
history_popover (Desk *desk)
{
  GtkMenuButton *button = GTK_MENU_BUTTON (desk->window->history_button);
  gtk_menu_button_popup (button);
  case_settle ();
  return GTK_WIDGET (gtk_menu_button_get_popover (button));
}

static void
history_names_steps_and_goes_there (Desk *desk, gconstpointer data)
{
  g_autoptr (GPtrArray) rows = g_ptr_array_new ();
  const CwProject *before = project_of (desk), *aligned;
  GtkWidget *popover;
  choose (desk, (const char *const[]) { "o1", "o2", NULL });
  act (desk, "align", g_variant_new_string ("bottom"));
  aligned = project_of (desk);
  act (desk, "remove-chosen", NULL);
  popover = history_popover (desk);
  case_walk (popover, note_step, rows);
  g_assert_cmpuint (rows->len, ==, 2);
  g_assert_cmpstr (gtk_label_get_text (GTK_LABEL (gtk_list_box_row_get_child (
                       GTK_LIST_BOX_ROW (rows->pdata[0])))),
                   ==, "Delete");
  g_assert_cmpstr (gtk_label_get_text (GTK_LABEL (gtk_list_box_row_get_child (
                       GTK_LIST_BOX_ROW (rows->pdata[1])))),
                   ==, "Align");
  g_signal_emit_by_name (case_find (popover, GTK_TYPE_LIST_BOX),
                         "row-activated", rows->pdata[1]);
  case_settle ();
  g_assert_true (project_of (desk) == aligned);
  act (desk, "go-to-state", g_variant_new_int32 (0));
  g_assert_true (project_of (desk) == before);
  act (desk, "go-to-state", g_variant_new_int32 (2));
  g_assert_true (cw_document_can_undo (document_of (desk)));
  g_assert_false (cw_document_can_redo (document_of (desk)));
}

/* ------------------------------------------------ the schedule of openings */

static void
schedule_places_openings (Desk *desk, gconstpointer data)
{
  const CwProject *before = project_of (desk);
  const CwMark *mark = cw_list_at (before->marks, 0);
  GtkWidget *list = case_find (GTK_WIDGET (desk->window), CW_TYPE_MARK_LIST);
  GtkWidget *box = case_find (list, GTK_TYPE_LIST_BOX);
  const gsize n = n_items (desk);
  const CwOpening *placed;
  g_assert_nonnull (mark);
  g_signal_emit_by_name (
      box, "row-activated",
      gtk_list_box_get_row_at_index (GTK_LIST_BOX (box), 0));
  case_settle ();
  g_assert_cmpuint (n_items (desk), ==, n + 1);
  placed = cw_list_at (cw_document_elevation (document_of (desk))->items, n);
  g_assert_cmpstr (placed->mark, ==, mark->id);
  g_assert_true (
      cw_document_is_selected (document_of (desk), placed->id));
  act (desk, "undo", NULL);
  g_assert_true (project_of (desk) == before);
}

/* ----------------------------------------------------- attributes of many */

static GtkWidget *
entry_of (Desk *desk, const char *field)
{
  GtkWidget *row = cw_inspector_row (
      case_find (GTK_WIDGET (desk->window), CW_TYPE_INSPECTOR), field);
  g_assert_nonnull (row);
  return case_find (row, GTK_TYPE_ENTRY);
}

static void
many_have_mixed_values_set_at_once (Desk *desk, gconstpointer data)
{
  static const char *const ids[] = { "o1", "o2", "o3", NULL };
  const CwProject *before = project_of (desk);
  GtkWidget *entry;
  choose (desk, ids);
  entry = entry_of (desk, "x");
  g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (entry)), ==, "");
  g_assert_nonnull (gtk_entry_get_placeholder_text (GTK_ENTRY (entry)));
  gtk_editable_set_text (GTK_EDITABLE (entry), "5'");
  g_signal_emit_by_name (entry, "activate");
  case_settle ();
  for (guint i = 0; ids[i]; i++)
    g_assert_cmpint (field_of (desk, ids[i], "x"), ==,
                     60 * CW_NM_PER_INCH);
  act (desk, "undo", NULL);
  g_assert_true (project_of (desk) == before);
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
  add ("/editing/menus-offer-what-can-be", menus_offer_what_can_be);
  add ("/editing/menu-aligns-in-one-step", menu_aligns_in_one_step);
  add ("/editing/menu-selects-alike", menu_selects_alike);
  add ("/editing/menu-deletes", menu_deletes);
  add ("/editing/menu-opens", menu_opens_and_gives_focus_back);
  add ("/editing/dialog-repeats", dialog_repeats);
  add ("/editing/dialog-refuses", dialog_refuses);
  add ("/editing/history-names-steps-and-goes-there",
       history_names_steps_and_goes_there);
  add ("/editing/schedule-places-openings", schedule_places_openings);
  add ("/editing/many-have-mixed-values-set-at-once",
       many_have_mixed_values_set_at_once);
  return g_test_run ();
}

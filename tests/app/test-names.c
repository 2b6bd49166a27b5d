/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walks every window and fails on a control that says nothing to a screen
 * reader or cannot be reached by keyboard.
 */
#include <string.h>

#include "cw-dialogs.h"
#include "cw-form-dialog.h"
#include "cw-inspector.h"
#include "cw-scale-dialog.h"
#include "cw-sheet-dialog.h"
#include "window-cases.h"

/* What somebody works with; labels and boxes are only looked at. */
static gboolean
is_control (GtkWidget *widget)
{
  return GTK_IS_BUTTON (widget) || GTK_IS_MENU_BUTTON (widget)
         || GTK_IS_ENTRY (widget) || GTK_IS_DROP_DOWN (widget)
         || GTK_IS_SWITCH (widget) || GTK_IS_CHECK_BUTTON (widget)
         || GTK_IS_LIST_BOX (widget) || GTK_IS_LIST_BOX_ROW (widget)
         || GTK_IS_FLOW_BOX (widget) || GTK_IS_FLOW_BOX_CHILD (widget)
         || GTK_IS_EXPANDER (widget) || GTK_IS_PROGRESS_BAR (widget)
         || GTK_IS_GRID_VIEW (widget) || GTK_IS_LIST_VIEW (widget)
         || CW_IS_BOARD (widget);
}

/* The toolkit's own insides: their owner is named for them. */
static gboolean
is_inside (GtkWidget *widget)
{
  for (GtkWidget *owner = gtk_widget_get_parent (widget); owner;
       owner = gtk_widget_get_parent (owner))
    if (GTK_IS_DROP_DOWN (owner) || GTK_IS_MENU_BUTTON (owner)
        || GTK_IS_POPOVER (owner) || GTK_IS_WINDOW_CONTROLS (owner)
        || GTK_IS_ENTRY (owner))
      return TRUE;
  return FALSE;
}

static void
note_label (GtkWidget *widget, gpointer data)
{
  gboolean *says = data;
  if (GTK_IS_LABEL (widget)
      && *gtk_label_get_text (GTK_LABEL (widget)) != '\0')
    *says = TRUE;
}

/* Text inside names a button, a row or an expander. */
static gboolean
has_text (GtkWidget *widget)
{
  gboolean says = FALSE;
  if (GTK_IS_ENTRY (widget) || GTK_IS_DROP_DOWN (widget)
      || GTK_IS_LIST_BOX (widget) || GTK_IS_FLOW_BOX (widget)
      || GTK_IS_GRID_VIEW (widget) || GTK_IS_LIST_VIEW (widget))
    return FALSE;
  case_walk (widget, note_label, &says);
  return says;
}

/* The property is set to something: a difference from "" is told as text. */
static gboolean
has_name (GtkWidget *widget)
{
  g_autofree char *difference = gtk_test_accessible_check_property (
      GTK_ACCESSIBLE (widget), GTK_ACCESSIBLE_PROPERTY_LABEL, "");
  return gtk_test_accessible_has_property (GTK_ACCESSIBLE (widget),
                                           GTK_ACCESSIBLE_PROPERTY_LABEL)
         && difference != NULL;
}

typedef struct
{
  guint n_controls;
  GString *unnamed;
} Walk;

/* (transfer full): where the widget stands, for the message. */
static char *
place_of (GtkWidget *widget)
{
  GString *place = g_string_new (NULL);
  for (; widget; widget = gtk_widget_get_parent (widget))
    g_string_append_printf (place, "%s < ", G_OBJECT_TYPE_NAME (widget));
  return g_string_free (place, FALSE);
}

static void
look_at (GtkWidget *widget, gpointer data)
{
  Walk *walk = data;
  if (!is_control (widget) || is_inside (widget))
    return;
  walk->n_controls++;
  if (has_name (widget) || has_text (widget))
    return;
  g_autofree char *place = place_of (widget);
  g_string_append_printf (walk->unnamed, "\n%s", place);
}

static void
assert_named (GtkWidget *root, guint least)
{
  Walk walk = { 0, g_string_new (NULL) };
  case_walk (root, look_at, &walk);
  g_test_message ("%u controls", walk.n_controls);
  g_assert_cmpstr (walk.unnamed->str, ==, "");
  g_assert_cmpuint (walk.n_controls, >=, least);
  g_string_free (walk.unnamed, TRUE);
}

/* The walk itself has to be able to fail. */
static void
unnamed_is_found (void)
{
  Walk walk = { 0, g_string_new (NULL) };
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  g_object_ref_sink (box);
  gtk_box_append (GTK_BOX (box), gtk_entry_new ());
  gtk_box_append (GTK_BOX (box), gtk_button_new_with_label ("Named"));
  gtk_box_append (GTK_BOX (box),
                  gtk_button_new_from_icon_name ("cw-add-symbolic"));
  case_walk (box, look_at, &walk);
  g_assert_cmpuint (walk.n_controls, ==, 3);
  g_assert_nonnull (strstr (walk.unnamed->str, "GtkEntry < GtkBox"));
  g_assert_nonnull (strstr (walk.unnamed->str, "GtkButton < GtkBox"));
  g_assert_null (strstr (strstr (walk.unnamed->str, "GtkButton") + 1,
                         "GtkButton"));
  g_string_free (walk.unnamed, TRUE);
  g_object_unref (box);
}

static void
start_page (void)
{
  CwWindow *window = case_empty_window ();
  assert_named (GTK_WIDGET (window), 30);
  case_close (GTK_WINDOW (window));
}

static void
open_expander (GtkWidget *widget, gpointer data)
{
  if (GTK_IS_EXPANDER (widget))
    gtk_expander_set_expanded (GTK_EXPANDER (widget), TRUE);
}

static void
whole_window (void)
{
  g_autoptr (GFile) folder = case_folder ();
  CwWindow *window = case_demo_window (folder);
  case_walk (GTK_WIDGET (window), open_expander, NULL);
  case_settle ();
  assert_named (GTK_WIDGET (window), 150);
  case_close (GTK_WINDOW (window));
}

/* An inspector for each kind of thing that can be selected. */
static void
every_selection (void)
{
  static const char *const ids[] = { "o1", "o2", "o5", "p1", "t1" };
  g_autoptr (GFile) folder = case_folder ();
  CwWindow *window = case_demo_window (folder);
  CwDocument *document = cw_job_document (cw_window_job (window));
  GtkWidget *inspector
      = case_find (GTK_WIDGET (window), CW_TYPE_INSPECTOR);
  for (gsize i = 0; i < G_N_ELEMENTS (ids); i++)
    {
      if (g_str_equal (ids[i], "o5"))
        cw_document_show_elevation (document, "east");
      cw_document_select (document, (const char *const[]) { ids[i], NULL });
      case_settle ();
      assert_named (inspector, 4);
    }
  case_close (GTK_WINDOW (window));
}

static GtkWindow *
dialog_of (CwWindow *window)
{
  GListModel *all = gtk_window_get_toplevels ();
  for (guint i = 0; i < g_list_model_get_n_items (all); i++)
    {
      g_autoptr (GtkWindow) other = g_list_model_get_item (all, i);
      if (gtk_window_get_transient_for (other) == GTK_WINDOW (window)
          && !GTK_IS_SHORTCUTS_WINDOW (other))
        return other;
    }
  return NULL;
}

static gboolean
has_dialog (gpointer window)
{
  return dialog_of (window) != NULL;
}

static void
nothing_done (gpointer data)
{
}

static void
never_added (const char *id, gboolean measure, gpointer data)
{
  g_assert_not_reached ();
}

static void
look_at_dialog (CwWindow *window, guint least)
{
  case_wait (has_dialog, window);
  case_settle ();
  GtkWindow *dialog = dialog_of (window);
  assert_named (GTK_WIDGET (dialog), least);
  case_close (dialog);
}

static void
dialogs (void)
{
  const double points[] = { 0, 0, 0, 441 };
  g_autoptr (GFile) folder = case_folder ();
  CwWindow *window = case_demo_window (folder);
  CwJob *job = cw_window_job (window);
  g_autoptr (GFile) sheet
      = g_file_resolve_relative_path (folder, "sheets/fennel-house.pdf");
  cw_scale_dialog_state (GTK_WINDOW (window), job, "s1", nothing_done, NULL);
  look_at_dialog (window, 4);
  cw_scale_dialog_measured (GTK_WINDOW (window), job, "s1", points,
                            nothing_done, NULL);
  look_at_dialog (window, 4);
  cw_sheet_dialog_add (GTK_WINDOW (window), job, sheet, never_added, NULL);
  look_at_dialog (window, 7);
  case_close (GTK_WINDOW (window));
}

static void
work_windows (void)
{
  g_autoptr (GFile) folder = case_folder ();
  CwWindow *window = case_demo_window (folder);
  for (const char *const *action
       = (const char *const[]) { "buildups", "prices", NULL };
       *action; action++)
    {
      g_action_group_activate_action (G_ACTION_GROUP (window), *action, NULL);
      case_settle ();
      look_at_dialog (window, 6);
    }
  case_close (GTK_WINDOW (window));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  if (!case_start_toolkit ())
    return 0;
  case_application ();
  g_test_add_func ("/names/unnamed-is-found", unnamed_is_found);
  g_test_add_func ("/names/start-page", start_page);
  g_test_add_func ("/names/whole-window", whole_window);
  g_test_add_func ("/names/every-selection", every_selection);
  g_test_add_func ("/names/dialogs", dialogs);
  g_test_add_func ("/names/work-windows", work_windows);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walks every window and fails on a control that says nothing to a screen
 * reader or cannot be reached by keyboard.
 */
#include <string.h>

#include "cw-buildups-window.h"
#include "cw-checker.h"
#include "cw-dialogs.h"
#include "cw-form-dialog.h"
#include "cw-house-dialog.h"
#include "cw-inspector.h"
#include "cw-library-dialog.h"
#include "cw-price-changes-dialog.h"
#include "cw-price-item-dialog.h"
#include "cw-prices-window.h"
#include "cw-repeat-dialog.h"
#include "cw-scale-dialog.h"
#include "cw-settings.h"
#include "cw-sheet-dialog.h"
#include "cw-waiver-dialog.h"
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
         || GTK_IS_COLUMN_VIEW (widget) || GTK_IS_SPIN_BUTTON (widget)
         || GTK_IS_TEXT_VIEW (widget) || GTK_IS_SCALE (widget)
         || GTK_IS_SEARCH_ENTRY (widget) || GTK_IS_STACK_SWITCHER (widget) || CW_IS_BOARD (widget);
}

/* The toolkit's own insides: their owner is named for them. */
static gboolean
is_inside (GtkWidget *widget)
{
  for (GtkWidget *owner = gtk_widget_get_parent (widget); owner;
       owner = gtk_widget_get_parent (owner))
    if (GTK_IS_DROP_DOWN (owner) || GTK_IS_MENU_BUTTON (owner)
        || (GTK_IS_POPOVER (owner)
            && !gtk_widget_has_css_class (owner, "cw-tour"))
        || GTK_IS_WINDOW_CONTROLS (owner) || GTK_IS_ENTRY (owner)
        || GTK_IS_SPIN_BUTTON (owner) || GTK_IS_COLUMN_VIEW (owner)
        || GTK_IS_SEARCH_ENTRY (owner) || GTK_IS_SWITCH (owner))
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
      || GTK_IS_GRID_VIEW (widget) || GTK_IS_LIST_VIEW (widget)
      || GTK_IS_COLUMN_VIEW (widget) || GTK_IS_SPIN_BUTTON (widget)
      || GTK_IS_TEXT_VIEW (widget) || GTK_IS_SCALE (widget)
      || GTK_IS_SEARCH_ENTRY (widget))
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
  GString *unnamed, *unreached, *foreign;
} Walk;

/* What only holds others is entered through them. */
static gboolean
is_holder (GtkWidget *widget)
{
  return GTK_IS_PROGRESS_BAR (widget) || GTK_IS_LIST_BOX (widget)
         || GTK_IS_FLOW_BOX (widget) || GTK_IS_STACK_SWITCHER (widget)
         || GTK_IS_GRID_VIEW (widget) || GTK_IS_LIST_VIEW (widget)
         || GTK_IS_COLUMN_VIEW (widget);
}

static void
note_focusable (GtkWidget *widget, gpointer data)
{
  gboolean *reached = data;
  *reached = *reached || gtk_widget_get_focusable (widget);
}

/* A row for reading alone is passed over on purpose. */
static gboolean
can_be_reached (GtkWidget *widget)
{
  gboolean reached = FALSE;
  if (is_holder (widget) || !gtk_widget_get_mapped (widget)
      || !gtk_widget_is_sensitive (widget)
      || (GTK_IS_LIST_BOX_ROW (widget)
          && !gtk_list_box_row_get_selectable (GTK_LIST_BOX_ROW (widget))
          && !gtk_list_box_row_get_activatable (GTK_LIST_BOX_ROW (widget))))
    return TRUE;
  case_walk (widget, note_focusable, &reached);
  for (; reached && widget; widget = gtk_widget_get_parent (widget))
    reached = gtk_widget_get_can_focus (widget);
  return reached;
}

/* (transfer full): where the widget stands, for the message. */
static char *
place_of (GtkWidget *widget)
{
  GString *place = g_string_new (NULL);
  for (; widget; widget = gtk_widget_get_parent (widget))
    g_string_append_printf (place, "%s < ", G_OBJECT_TYPE_NAME (widget));
  return g_string_free (place, FALSE);
}

static Walk
walk_new (void)
{
  return (Walk) { 0, g_string_new (NULL), g_string_new (NULL),
                  g_string_new (NULL) };
}

static void
walk_clear (Walk *walk)
{
  g_string_free (walk->unnamed, TRUE);
  g_string_free (walk->unreached, TRUE);
  g_string_free (walk->foreign, TRUE);
}

/* Pictures are our own: another desktop may lack any other. */
static void
look_at_picture (GtkWidget *widget, Walk *walk)
{
  const char *icon = gtk_image_get_icon_name (GTK_IMAGE (widget));
  if (icon
      && (!g_str_has_prefix (icon, "cw-")
          || !gtk_icon_theme_has_icon (
              gtk_icon_theme_get_for_display (gdk_display_get_default ()),
              icon)))
    {
      g_autofree char *place = place_of (widget);
      g_string_append_printf (walk->foreign, "\n%s: %s", icon, place);
    }
}

static void
look_at (GtkWidget *widget, gpointer data)
{
  Walk *walk = data;
  if (GTK_IS_IMAGE (widget) && gtk_widget_get_visible (widget)
      && !is_inside (widget))
    look_at_picture (widget, walk);
  if (!is_control (widget) || is_inside (widget))
    return;
  walk->n_controls++;
  g_autofree char *place = place_of (widget);
  if (!has_name (widget) && !has_text (widget))
    g_string_append_printf (walk->unnamed, "\n%s", place);
  if (!can_be_reached (widget))
    g_string_append_printf (walk->unreached, "\n%s", place);
}

static void
assert_named (GtkWidget *root, guint least)
{
  Walk walk = walk_new ();
  case_walk (root, look_at, &walk);
  g_test_message ("%u controls", walk.n_controls);
  g_assert_cmpstr (walk.unnamed->str, ==, "");
  g_assert_cmpstr (walk.unreached->str, ==, "");
  g_assert_cmpstr (walk.foreign->str, ==, "");
  g_assert_cmpuint (walk.n_controls, >=, least);
  walk_clear (&walk);
}

/* The walk itself has to be able to fail. */
static void
unnamed_is_found (void)
{
  Walk walk = walk_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  g_object_ref_sink (box);
  gtk_box_append (GTK_BOX (box), gtk_entry_new ());
  gtk_box_append (GTK_BOX (box), gtk_button_new_with_label ("Named"));
  gtk_box_append (GTK_BOX (box),
                  gtk_button_new_from_icon_name ("list-add-symbolic"));
  case_walk (box, look_at, &walk);
  g_assert_cmpuint (walk.n_controls, ==, 3);
  g_assert_true (
      g_str_has_prefix (walk.foreign->str, "\nlist-add-symbolic: GtkImage"));
  g_assert_nonnull (strstr (walk.unnamed->str, "GtkEntry < GtkBox"));
  g_assert_nonnull (strstr (walk.unnamed->str, "GtkButton < GtkBox"));
  g_assert_null (strstr (strstr (walk.unnamed->str, "GtkButton") + 1,
                         "GtkButton"));
  walk_clear (&walk);
  g_object_unref (box);
}

/* And for what the keyboard cannot come to. */
static void
unreached_is_found (void)
{
  Walk walk = walk_new ();
  GtkWidget *window = gtk_window_new ();
  GtkWidget *button = gtk_button_new_with_label ("By mouse alone");
  gtk_widget_set_focusable (button, FALSE);
  gtk_window_set_child (GTK_WINDOW (window), button);
  gtk_window_present (GTK_WINDOW (window));
  case_settle ();
  case_walk (window, look_at, &walk);
  g_assert_cmpstr (walk.unnamed->str, ==, "");
  g_assert_nonnull (strstr (walk.unreached->str, "GtkButton < GtkWindow"));
  walk_clear (&walk);
  gtk_window_destroy (GTK_WINDOW (window));
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

static char *
never_taken (const CwPriceItem *item, gpointer data)
{
  g_assert_not_reached ();
}

static void
never_changed (const GPtrArray *changes, const gboolean *taken, gpointer data)
{
  g_assert_not_reached ();
}

static void
never_chosen (const CwBuildup *buildup, gpointer data)
{
  g_assert_not_reached ();
}

static void
more_dialogs (void)
{
  g_autoptr (GFile) folder = case_folder ();
  CwWindow *window = case_demo_window (folder);
  CwJob *job = cw_window_job (window);
  CwDocument *document = cw_job_document (job);
  const CwPriceItem item = { .kind = (char *) "panel",
                             .name = (char *) "Panel A",
                             .unit = (char *) "panel",
                             .currency = (char *) "USD",
                             .date = (char *) "2026-01-01",
                             .note = (char *) "" };
  cw_document_select (document, (const char *const[]) { "o1", NULL });
  cw_repeat_dialog_show (GTK_WINDOW (window), job);
  look_at_dialog (window, 6);
  cw_house_dialog_show (GTK_WINDOW (window), job, nothing_done, NULL);
  look_at_dialog (window, 8);
  cw_library_dialog_open (GTK_WINDOW (window), CW_UNITS_US, never_chosen,
                          NULL, NULL);
  look_at_dialog (window, 3);
  cw_price_item_dialog_open (GTK_WINDOW (window), "Item", &item,
                             cw_job_style (job), never_taken, NULL, NULL);
  look_at_dialog (window, 8);
  case_close (GTK_WINDOW (window));
}

static void
price_changes (void)
{
  g_autoptr (GFile) folder = case_folder ();
  g_autoptr (GPtrArray) book = g_ptr_array_new ();
  CwWindow *window = case_demo_window (folder);
  CwJob *job = cw_window_job (window);
  GPtrArray *changes = cw_price_changes_to_book (
      cw_document_project (cw_job_document (job)), book, "2026-01-01");
  g_assert_cmpuint (changes->len, >, 5);
  cw_price_changes_dialog_open (GTK_WINDOW (window), "Prices", changes,
                                cw_job_style (job), never_changed, NULL,
                                NULL);
  look_at_dialog (window, 8);
  case_close (GTK_WINDOW (window));
}

static gboolean
has_checks (gpointer checker)
{
  return cw_checker_checks (checker)->len > 0;
}

static void
waiver (void)
{
  g_autoptr (GFile) folder = case_folder ();
  CwWindow *window = case_demo_window (folder);
  CwJob *job = cw_window_job (window);
  g_autoptr (CwChecker) checker = cw_checker_new (job);
  case_wait (has_checks, checker);
  cw_waiver_dialog_show (GTK_WINDOW (window), job,
                         cw_checker_checks (checker)->pdata[0]);
  look_at_dialog (window, 4);
  case_close (GTK_WINDOW (window));
}

/* Panels, the best setting out, the list of what is on a wall, the tour. */
static void
places_and_panes (void)
{
  static const char *const actions[]
      = { "list-items", "best-setting-out", "tour" };
  g_autoptr (GFile) folder = case_folder ();
  CwWindow *window = case_demo_window (folder);
  for (gsize i = 0; i < G_N_ELEMENTS (actions); i++)
    {
      g_action_group_activate_action (G_ACTION_GROUP (window), actions[i],
                                      NULL);
      case_settle ();
      assert_named (GTK_WIDGET (window), 150);
    }
  cw_window_go_to_panels (window);
  case_settle ();
  assert_named (GTK_WIDGET (window), 150);
  case_close (GTK_WINDOW (window));
}

/* A dialog or window that comes new has to be walked here as well. */
static void
none_is_left_out (void)
{
  static const char *const walked[]
      = { "house-dialog", "library-dialog", "price-changes-dialog",
          "price-item-dialog", "repeat-dialog", "scale-dialog",
          "sheet-dialog", "waiver-dialog", "buildups-window",
          "prices-window" };
  g_autofree char *folder = g_build_filename (
      g_getenv ("CW_SOURCE_ROOT"), "src", "app", NULL);
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;
  guint n = 0;
  g_assert_nonnull (dir);
  while ((name = g_dir_read_name (dir)))
    if (g_str_has_suffix (name, "-dialog.h")
        || g_str_has_suffix (name, "-window.h"))
      {
        g_autofree char *stem = g_strndup (name + 3, strlen (name) - 5);
        if (g_str_equal (stem, "form-dialog")
            || g_str_equal (stem, "window"))
          continue;
        g_test_message ("%s", stem);
        gboolean found = FALSE;
        for (gsize i = 0; i < G_N_ELEMENTS (walked); i++)
          found = found || g_str_equal (walked[i], stem);
        g_assert_true (found);
        n++;
      }
  g_assert_cmpuint (n, ==, G_N_ELEMENTS (walked));
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
  g_test_add_func ("/names/unreached-is-found", unreached_is_found);
  g_test_add_func ("/names/start-page", start_page);
  g_test_add_func ("/names/whole-window", whole_window);
  g_test_add_func ("/names/every-selection", every_selection);
  g_test_add_func ("/names/dialogs", dialogs);
  g_test_add_func ("/names/work-windows", work_windows);
  g_test_add_func ("/names/more-dialogs", more_dialogs);
  g_test_add_func ("/names/price-changes", price_changes);
  g_test_add_func ("/names/waiver", waiver);
  g_test_add_func ("/names/places-and-panes", places_and_panes);
  g_test_add_func ("/names/none-is-left-out", none_is_left_out);
  return g_test_run ();
}

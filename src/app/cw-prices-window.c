/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-prices-window.h"

#include <string.h>

#include "cw-dialogs.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"
#include "cw-price-book-file.h"
#include "cw-price-changes-dialog.h"
#include "cw-price-item-dialog.h"
#include "cw-price-text.h"
#include "cw-today.h"

struct _CwPricesWindow
{
  GtkWindow parent;
  CwJob *job;
  GFile *file;
  char *etag;
  GPtrArray *book;          /* CwPriceItem; NULL: it cannot be read */
  GtkWidget *search, *box, *trouble;
  GSimpleActionGroup *actions;
};

G_DEFINE_FINAL_TYPE (CwPricesWindow, cw_prices_window, GTK_TYPE_WINDOW)

const GPtrArray *
cw_prices_window_book (CwPricesWindow *window)
{
  g_return_val_if_fail (CW_IS_PRICES_WINDOW (window), NULL);
  return window->book;
}

static const CwProject *
project_of (CwPricesWindow *window)
{
  return cw_document_project (cw_job_document (window->job));
}

static GtkWidget *
new_line (const char *text, gboolean is_small)
{
  GtkWidget *label = gtk_label_new (text);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  if (is_small)
    {
      gtk_widget_add_css_class (label, "cw-dim");
      gtk_widget_add_css_class (label, "cw-small");
    }
  return label;
}

/* "2026-11-25, by the pallet". (transfer full) */
static char *
below_text (const CwPriceItem *item)
{
  return *item->date && *item->note
             ? g_strdup_printf ("%s, %s", item->date, item->note)
             : g_strconcat (item->date, item->note, NULL);
}

static GtkWidget *
new_row (CwPricesWindow *window, const CwPriceItem *item)
{
  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *grid = gtk_grid_new ();
  g_autofree char *number = cw_price_text (item->price, item->currency,
                                           cw_job_style (window->job));
  g_autofree char *price = g_strdup_printf ("%s %s / %s", number,
                                            item->currency, item->unit);
  g_autofree char *below = below_text (item);
  g_autofree char *spoken = g_strdup_printf ("%s: %s", item->name, price);
  GtkWidget *name = new_line (item->name, FALSE);
  GtkWidget *figure = new_line (price, FALSE);
  gtk_widget_set_hexpand (name, TRUE);
  gtk_widget_add_css_class (figure, "cw-figure");
  gtk_grid_set_column_spacing (GTK_GRID (grid), 12);
  gtk_grid_attach (GTK_GRID (grid), name, 0, 0, 1, 1);
  gtk_grid_attach (GTK_GRID (grid), figure, 1, 0, 1, 1);
  if (*below)
    gtk_grid_attach (GTK_GRID (grid), new_line (below, TRUE), 0, 1, 2, 1);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), grid);
  cw_widget_set_name (row, spoken);
  return row;
}

static gboolean
is_found (GtkListBoxRow *row, gpointer data)
{
  CwPricesWindow *window = data;
  const CwPriceItem *item = g_ptr_array_index (
      window->book, (guint) gtk_list_box_row_get_index (row));
  g_autofree char *wanted = g_utf8_casefold (
      gtk_editable_get_text (GTK_EDITABLE (window->search)), -1);
  g_autofree char *all
      = g_strdup_printf ("%s %s %s", item->kind, item->name, item->note);
  g_autofree char *folded = g_utf8_casefold (all, -1);
  return strstr (folded, wanted) != NULL;
}

static void
enable (CwPricesWindow *window, const char *name, gboolean enabled)
{
  g_simple_action_set_enabled (
      G_SIMPLE_ACTION (g_action_map_lookup_action (
          G_ACTION_MAP (window->actions), name)),
      enabled);
}

static void
enable_all (CwPricesWindow *window)
{
  gboolean chosen = gtk_list_box_get_selected_row (
                        GTK_LIST_BOX (window->box))
                    != NULL;
  enable (window, "add", window->book != NULL);
  enable (window, "edit", chosen);
  enable (window, "remove", chosen);
  enable (window, "to-project", window->book && window->book->len > 0);
  enable (window, "from-project", window->book != NULL);
}

static void
refresh (CwPricesWindow *window)
{
  GtkWidget *row;
  while ((row = GTK_WIDGET (gtk_list_box_get_row_at_index (
              GTK_LIST_BOX (window->box), 0))))
    gtk_list_box_remove (GTK_LIST_BOX (window->box), row);
  for (guint i = 0; window->book && i < window->book->len; i++)
    gtk_list_box_append (GTK_LIST_BOX (window->box),
                         new_row (window, window->book->pdata[i]));
  enable_all (window);
}

/* Takes @book, unless it cannot be written: what is wrong, (transfer full),
 * and all is as before. */
static char *
keep (CwPricesWindow *window, GPtrArray *book)
{
  g_autoptr (GPtrArray) next = book;
  g_autoptr (GError) error = NULL;
  if (!cw_price_book_save (next, window->file, &window->etag, &error))
    return g_strdup (error->message);
  g_ptr_array_unref (window->book);
  window->book = g_steal_pointer (&next);
  refresh (window);
  return NULL;
}

/* One item being typed; @former: the one that it takes the place of. */
typedef struct
{
  CwPricesWindow *window;
  char *kind, *name;          /* of the former; NULL: a new one */
} Editing;

static void
editing_free (Editing *editing)
{
  g_object_unref (editing->window);
  g_free (editing->kind);
  g_free (editing->name);
  g_free (editing);
}

static char *
item_typed (const CwPriceItem *item, gpointer data)
{
  Editing *editing = data;
  g_autoptr (GPtrArray) next = cw_price_book_copy (editing->window->book);
  int place = editing->name ? cw_price_book_find (next, editing->kind,
                                                  editing->name)
                            : -1;
  int same = cw_price_book_find (next, item->kind, item->name);
  if (same >= 0 && same != place)
    return g_strdup (_("An item of this kind and name is in the book. Change "
                       "that one, or give this one another name."));
  if (place >= 0)
    g_ptr_array_remove_index (next, (guint) place);
  g_ptr_array_insert (next, place >= 0 ? place : -1,
                      cw_price_item_copy (item));
  return keep (editing->window, g_steal_pointer (&next));
}

static void
add (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwPricesWindow *window = data;
  Editing *editing = g_new0 (Editing, 1);
  g_autofree char *date = cw_today ();
  CwPriceItem item = { (char *) "panel", (char *) "", (char *) "panel", 0,
                       project_of (window)->currency, date, (char *) "" };
  editing->window = g_object_ref (window);
  cw_price_item_dialog_open (GTK_WINDOW (window), _("Add a price"), &item,
                             cw_job_style (window->job), item_typed, editing,
                             (GDestroyNotify) editing_free);
}

static const CwPriceItem *
chosen_item (CwPricesWindow *window)
{
  GtkListBoxRow *row
      = gtk_list_box_get_selected_row (GTK_LIST_BOX (window->box));
  return row ? g_ptr_array_index (window->book,
                                  (guint) gtk_list_box_row_get_index (row))
             : NULL;
}

static void
edit (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwPricesWindow *window = data;
  const CwPriceItem *item = chosen_item (window);
  if (!item)
    return;
  Editing *editing = g_new0 (Editing, 1);
  editing->window = g_object_ref (window);
  editing->kind = g_strdup (item->kind);
  editing->name = g_strdup (item->name);
  cw_price_item_dialog_open (GTK_WINDOW (window), _("Change a price"), item,
                             cw_job_style (window->job), item_typed, editing,
                             (GDestroyNotify) editing_free);
}

/* Takes @trouble. */
static void
tell (CwPricesWindow *window, char *trouble)
{
  g_autofree char *words = trouble;
  if (words)
    cw_dialogs_tell (GTK_WINDOW (window),
                     _("The price book was not written"), words);
}

static void
remove_item (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwPricesWindow *window = data;
  const CwPriceItem *item = chosen_item (window);
  if (!item)
    return;
  g_autoptr (GPtrArray) next = cw_price_book_copy (window->book);
  g_ptr_array_remove_index (
      next, (guint) cw_price_book_find (next, item->kind, item->name));
  tell (window, keep (window, g_steal_pointer (&next)));
}

static void
apply_to_project (const GPtrArray *changes, const gboolean *taken,
                  gpointer data)
{
  CwPricesWindow *window = data;
  g_autoptr (CwProject) next
      = cw_price_changes_apply (project_of (window), changes, taken);
  cw_document_edit (cw_job_document (window->job), next,
                    _("Take prices from the price book"), NULL);
}

static void
to_project (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwPricesWindow *window = data;
  GPtrArray *changes
      = cw_price_changes_to_project (project_of (window), window->book);
  if (changes->len > 0)
    {
      cw_price_changes_dialog_open (
          GTK_WINDOW (window), _("Prices for the project"), changes,
          cw_job_style (window->job), apply_to_project,
          g_object_ref (window), g_object_unref);
      return;
    }
  g_ptr_array_unref (changes);
  cw_dialogs_tell (GTK_WINDOW (window), _("Nothing to change"),
                   _("The book has no other price for what the project’s "
                     "buildups are made of. An item is found by its kind "
                     "and its name."));
}

static void
apply_to_book (const GPtrArray *changes, const gboolean *taken, gpointer data)
{
  CwPricesWindow *window = data;
  tell (window,
        keep (window, cw_price_book_take (window->book, changes, taken)));
}

static void
from_project (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwPricesWindow *window = data;
  g_autofree char *date = cw_today ();
  GPtrArray *changes
      = cw_price_changes_to_book (project_of (window), window->book, date);
  if (changes->len > 0)
    {
      cw_price_changes_dialog_open (
          GTK_WINDOW (window), _("Prices for the book"), changes,
          cw_job_style (window->job), apply_to_book, g_object_ref (window),
          g_object_unref);
      return;
    }
  g_ptr_array_unref (changes);
  cw_dialogs_tell (GTK_WINDOW (window), _("Nothing to change"),
                   _("The book has all prices that the project has."));
}

static void
load (CwPricesWindow *window)
{
  g_autoptr (GError) error = NULL;
  window->file = cw_price_book_file ();
  window->book = cw_price_book_load (window->file, &window->etag, &error);
  if (error)
    {
      g_autofree char *path = g_file_get_parse_name (window->file);
      g_autofree char *words = g_strdup_printf (
          _("The price book cannot be read. %s. The file is left as it is: "
            "mend it or move it away, then open this window again. It is %s"),
          error->message, path);
      gtk_label_set_text (GTK_LABEL (window->trouble), words);
    }
  gtk_widget_set_visible (window->trouble, error != NULL);
}

static void
cw_prices_window_dispose (GObject *object)
{
  CwPricesWindow *window = CW_PRICES_WINDOW (object);
  if (window->box)
    g_signal_handlers_disconnect_by_data (window->box, window);
  window->box = NULL;
  g_clear_object (&window->actions);
  g_clear_object (&window->file);
  G_OBJECT_CLASS (cw_prices_window_parent_class)->dispose (object);
  g_clear_object (&window->job);
}

static void
cw_prices_window_finalize (GObject *object)
{
  CwPricesWindow *window = CW_PRICES_WINDOW (object);
  g_clear_pointer (&window->book, g_ptr_array_unref);
  g_free (window->etag);
  G_OBJECT_CLASS (cw_prices_window_parent_class)->finalize (object);
}

static void
cw_prices_window_class_init (CwPricesWindowClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_prices_window_dispose;
  G_OBJECT_CLASS (class)->finalize = cw_prices_window_finalize;
  gtk_widget_class_add_binding_action (GTK_WIDGET_CLASS (class),
                                       GDK_KEY_Escape, 0, "window.close",
                                       NULL);
  gtk_widget_class_add_binding_action (GTK_WIDGET_CLASS (class),
                                       GDK_KEY_Insert, 0, "prices.add",
                                       NULL);
}

static void
cw_prices_window_init (CwPricesWindow *window)
{
  gtk_window_set_title (GTK_WINDOW (window), _("Price book"));
  gtk_window_set_default_size (GTK_WINDOW (window), 660, 600);
}

static void
add_button (GtkWidget *line, const char *label, const char *action)
{
  GtkWidget *button = gtk_button_new_with_mnemonic (label);
  gtk_widget_add_css_class (button, "cw-framed");
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), action);
  gtk_flow_box_append (GTK_FLOW_BOX (line), button);
  gtk_widget_set_focusable (gtk_widget_get_parent (button), FALSE);
}

static GtkWidget *
new_buttons (void)
{
  GtkWidget *line = gtk_flow_box_new ();
  gtk_flow_box_set_selection_mode (GTK_FLOW_BOX (line), GTK_SELECTION_NONE);
  cw_widget_set_name (line, _("What can be done"));
  gtk_flow_box_set_max_children_per_line (GTK_FLOW_BOX (line), 5);
  add_button (line, _("_Add…"), "prices.add");
  add_button (line, _("_Change…"), "prices.edit");
  add_button (line, _("_Remove"), "prices.remove");
  add_button (line, _("Update the _project…"), "prices.to-project");
  add_button (line, _("Take the project’s prices…"), "prices.from-project");
  return line;
}

static GtkWidget *
new_list (CwPricesWindow *window)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();
  GtkWidget *nothing = new_line (
      _("No price here yet. Add one, or take those of the project."), FALSE);
  gtk_widget_add_css_class (nothing, "cw-dim");
  gtk_widget_set_margin_start (nothing, 12);
  gtk_widget_set_margin_end (nothing, 12);
  window->box = gtk_list_box_new ();
  cw_widget_set_name (window->box, _("Prices"));
  gtk_list_box_set_placeholder (GTK_LIST_BOX (window->box), nothing);
  gtk_list_box_set_activate_on_single_click (GTK_LIST_BOX (window->box),
                                             FALSE);
  gtk_list_box_set_filter_func (GTK_LIST_BOX (window->box), is_found, window,
                                NULL);
  g_signal_connect_swapped (window->box, "selected-rows-changed",
                            G_CALLBACK (enable_all), window);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller),
                                  GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller),
                                 window->box);
  gtk_widget_set_vexpand (scroller, TRUE);
  return scroller;
}

static void
row_activated (CwPricesWindow *window)
{
  edit (NULL, NULL, window);
}

static void
build (CwPricesWindow *window)
{
  GtkWidget *whole = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);
  gtk_widget_add_css_class (whole, "cw-form");
  gtk_window_set_titlebar (GTK_WINDOW (window), gtk_header_bar_new ());
  window->search = gtk_search_entry_new ();
  cw_widget_set_name (window->search, _("Search the price book"));
  window->trouble = new_line ("", FALSE);
  gtk_widget_add_css_class (window->trouble, "cw-trouble");
  gtk_box_append (GTK_BOX (whole), window->search);
  gtk_box_append (GTK_BOX (whole), window->trouble);
  gtk_box_append (GTK_BOX (whole), new_list (window));
  gtk_box_append (GTK_BOX (whole), new_buttons ());
  gtk_window_set_child (GTK_WINDOW (window), whole);
  g_signal_connect_swapped (window->search, "search-changed",
                            G_CALLBACK (gtk_list_box_invalidate_filter),
                            window->box);
  g_signal_connect_swapped (window->search, "stop-search",
                            G_CALLBACK (gtk_window_close), window);
  g_signal_connect_swapped (window->box, "row-activated",
                            G_CALLBACK (row_activated), window);
}

static void
add_actions (CwPricesWindow *window)
{
  static const GActionEntry entries[] = {
    { "add", add, NULL, NULL, NULL },
    { "edit", edit, NULL, NULL, NULL },
    { "remove", remove_item, NULL, NULL, NULL },
    { "to-project", to_project, NULL, NULL, NULL },
    { "from-project", from_project, NULL, NULL, NULL },
  };
  window->actions = g_simple_action_group_new ();
  g_action_map_add_action_entries (G_ACTION_MAP (window->actions), entries,
                                   G_N_ELEMENTS (entries), window);
  gtk_widget_insert_action_group (GTK_WIDGET (window), "prices",
                                  G_ACTION_GROUP (window->actions));
}

CwPricesWindow *
cw_prices_window_new (GtkWindow *parent, CwJob *job)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  CwPricesWindow *window = g_object_new (
      CW_TYPE_PRICES_WINDOW, "transient-for", parent, "application",
      gtk_window_get_application (parent), "destroy-with-parent", TRUE, NULL);
  window->job = g_object_ref (job);
  add_actions (window);
  build (window);
  load (window);
  refresh (window);
  return window;
}

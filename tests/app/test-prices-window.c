/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The price book's window: typed, searched, taken to the project and back,
 * and never written over when it cannot be read.
 */
#include <glib/gstdio.h>
#include <string.h>

#include "cw-dialogs.h"
#include "cw-form-dialog.h"
#include "cw-price-book-file.h"
#include "cw-price-text.h"
#include "cw-prices-window.h"
#include "window-cases.h"

typedef struct
{
  CaseDesk base;
  GFile *file;
  CwPricesWindow *prices;     /* borrowed */
} Desk;

static void
write_book (Desk *desk, const char *text)
{
  g_autoptr (GFile) folder = g_file_get_parent (desk->file);
  g_autofree char *path = g_file_get_path (desk->file);
  g_file_make_directory_with_parents (folder, NULL, NULL);
  if (text)
    g_assert_true (g_file_set_contents (path, text, -1, NULL));
  else
    g_unlink (path);
}

static void
lay (Desk *desk, gconstpointer text)
{
  desk->file = cw_price_book_file ();
  write_book (desk, text);
  case_desk_lay (&desk->base);
  case_desk_act (&desk->base, "prices");
  desk->prices = CW_PRICES_WINDOW (case_open_window (CW_TYPE_PRICES_WINDOW));
  g_assert_nonnull (desk->prices);
}

static void
clear (Desk *desk, gconstpointer data)
{
  case_wait_for_takeoff (desk->base.job);
  case_desk_clear (&desk->base);
  write_book (desk, NULL);
  g_object_unref (desk->file);
}

static void
act (Desk *desk, const char *action)
{
  gtk_widget_activate_action (GTK_WIDGET (desk->prices), action, NULL);
  case_settle ();
}

static void
collect_entry (GtkWidget *widget, gpointer data)
{
  if (GTK_IS_ENTRY (widget))
    g_ptr_array_add (data, widget);
}

/* Into the dialog's entries from above: name, price. Takes it. */
static void
type_item (const char *name, const char *price)
{
  GtkWindow *dialog = case_open_window (CW_TYPE_FORM_DIALOG);
  g_assert_nonnull (dialog);
  g_autoptr (GPtrArray) entries = g_ptr_array_new ();
  case_walk (GTK_WIDGET (dialog), collect_entry, entries);
  g_assert_cmpuint (entries->len, ==, 6);
  gtk_editable_set_text (GTK_EDITABLE (entries->pdata[0]), name);
  gtk_editable_set_text (GTK_EDITABLE (entries->pdata[1]), price);
  g_signal_emit_by_name (dialog, "taken");
  case_settle ();
}

static GPtrArray *
book_on_disk (Desk *desk)
{
  g_autoptr (GError) error = NULL;
  GPtrArray *book = cw_price_book_load (desk->file, NULL, &error);
  g_assert_no_error (error);
  return book;
}

static void
typed_is_kept (Desk *desk, gconstpointer data)
{
  act (desk, "prices.add");
  type_item ("Panel A", "x");
  g_assert_nonnull (case_open_window (CW_TYPE_FORM_DIALOG));
  type_item ("Panel A", "31.25");
  g_assert_null (case_open_window (CW_TYPE_FORM_DIALOG));
  g_autoptr (GPtrArray) book = book_on_disk (desk);
  g_assert_cmpuint (book->len, ==, 1);
  const CwPriceItem *item = book->pdata[0];
  g_assert_cmpstr (item->name, ==, "Panel A");
  g_assert_cmpint (item->price, ==, CW_DECIMAL (31) + 250000);
  /* Once in the book. */
  act (desk, "prices.add");
  type_item ("Panel A", "33");
  g_assert_nonnull (case_open_window (CW_TYPE_FORM_DIALOG));
  g_assert_cmpuint (cw_prices_window_book (desk->prices)->len, ==, 1);
  gtk_window_destroy (case_open_window (CW_TYPE_FORM_DIALOG));
}

static const CwPanel *
first_panel (Desk *desk)
{
  const CwProject *project
      = cw_document_project (cw_job_document (desk->base.job));
  const CwBuildup *buildup = cw_list_at (project->buildups, 0);
  return cw_list_at (buildup->panels, 0);
}

static void
goes_to_the_project (Desk *desk, gconstpointer data)
{
  g_autofree char *name = g_strdup (first_panel (desk)->name);
  const CwDecimal before = first_panel (desk)->price;
  g_assert_cmpint (before, !=, CW_DECIMAL (77));
  act (desk, "prices.add");
  type_item (name, "77");
  act (desk, "prices.to-project");
  GtkWindow *dialog = case_open_window (CW_TYPE_FORM_DIALOG);
  g_assert_nonnull (dialog);
  g_signal_emit_by_name (dialog, "taken");
  case_settle ();
  g_assert_cmpint (first_panel (desk)->price, ==, CW_DECIMAL (77));
  cw_document_undo (cw_job_document (desk->base.job));
  g_assert_cmpint (first_panel (desk)->price, ==, before);
}

static void
comes_from_the_project (Desk *desk, gconstpointer data)
{
  act (desk, "prices.from-project");
  GtkWindow *dialog = case_open_window (CW_TYPE_FORM_DIALOG);
  g_assert_nonnull (dialog);
  g_signal_emit_by_name (dialog, "taken");
  case_settle ();
  g_autoptr (GPtrArray) book = book_on_disk (desk);
  g_assert_cmpuint (book->len, >, 0);
  int index = cw_price_book_find (book, "panel", first_panel (desk)->name);
  g_assert_cmpint (index, >=, 0);
  g_assert_cmpint (((const CwPriceItem *) book->pdata[index])->price, ==,
                   first_panel (desk)->price);
}

static void
assert_price (CwDecimal price, const char *currency, const char *text)
{
  const CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  g_autofree char *shown = cw_price_text (price, currency, &style);
  g_assert_cmpstr (shown, ==, text);
}

/* ISO 4217's minor units (from memory). */
static void
has_the_currencys_digits (void)
{
  assert_price (CW_DECIMAL (31) + 500000, "EUR", "31.50");
  assert_price (CW_DECIMAL (31), "USD", "31.00");
  assert_price (37500, "USD", "0.0375");
  assert_price (CW_DECIMAL (3100), "JPY", "3100");
  assert_price (CW_DECIMAL (3) + 250000, "KWD", "3.250");
}

#define BAD "<price-book xmlns=\"urn:cladwright:price-book:1\" format=\"1\">"

static void
bad_book_stays (Desk *desk, gconstpointer text)
{
  g_autofree char *path = g_file_get_path (desk->file);
  g_autofree char *still = NULL;
  g_assert_null (cw_prices_window_book (desk->prices));
  act (desk, "prices.add");
  g_assert_null (case_open_window (CW_TYPE_FORM_DIALOG));
  act (desk, "prices.from-project");
  g_assert_null (case_open_window (CW_TYPE_FORM_DIALOG));
  g_assert_true (g_file_get_contents (path, &still, NULL, NULL));
  g_assert_cmpstr (still, ==, text);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  if (!case_start_toolkit ())
    return 0;
  case_application ();
#define ADD(name, text, test)                                                 \
  g_test_add ("/prices-window/" name, Desk, text, lay, test, clear)
  ADD ("typed-is-kept", NULL, typed_is_kept);
  ADD ("goes-to-the-project", NULL, goes_to_the_project);
  ADD ("comes-from-the-project", NULL, comes_from_the_project);
  ADD ("bad-book-stays", BAD, bad_book_stays);
  g_test_add_func ("/prices-window/has-the-currencys-digits",
                   has_the_currencys_digits);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The price book on disk: read as written, refused with a line, never lost.
 */
#include <glib/gstdio.h>
#include <string.h>

#include "cw-price-book-file.h"

#define HEAD                                                                  \
  "<price-book xmlns=\"urn:cladwright:price-book:1\" format=\"1\">\n"
#define ITEM                                                                  \
  "<item kind=\"mesh\" name=\"M\" unit=\"roll\" price=\"12.5\" "              \
  "currency=\"EUR\"/>\n"

typedef struct
{
  char *folder;
  GFile *file;
} Shelf;

static void
make_shelf (Shelf *shelf, gconstpointer data)
{
  shelf->folder = g_dir_make_tmp ("cw-price-book-XXXXXX", NULL);
  shelf->file = g_file_new_build_filename (shelf->folder, "book.xml", NULL);
}

static void
clear_shelf (Shelf *shelf, gconstpointer data)
{
  g_autofree char *path = g_file_get_path (shelf->file);
  g_autofree char *backup = g_strconcat (path, "~", NULL);
  g_unlink (backup);
  g_unlink (path);
  g_assert_cmpint (g_rmdir (shelf->folder), ==, 0);
  g_object_unref (shelf->file);
  g_free (shelf->folder);
}

static GPtrArray *
new_book (void)
{
  GPtrArray *book = cw_price_book_new ();
  CwPriceItem item
      = { (char *) "panel",   (char *) "50 × 600 & \"2400\"",
          (char *) "panel",   CW_DECIMAL (31) + 250000,
          (char *) "EUR",     (char *) "2026-11-25",
          (char *) "<by pallet>" };
  g_ptr_array_add (book, cw_price_item_copy (&item));
  return book;
}

static void
test_round_trip (Shelf *shelf, gconstpointer data)
{
  g_autoptr (GPtrArray) book = new_book ();
  g_autoptr (GError) error = NULL;
  g_autofree char *etag = NULL;
  g_assert_true (cw_price_book_save (book, shelf->file, &etag, &error));
  g_assert_no_error (error);
  g_autoptr (GPtrArray) again
      = cw_price_book_load (shelf->file, NULL, &error);
  g_assert_no_error (error);
  g_autoptr (GBytes) first = cw_price_book_to_xml (book);
  g_autoptr (GBytes) second = cw_price_book_to_xml (again);
  g_assert_true (g_bytes_equal (first, second));
  const CwPriceItem *item = again->pdata[0];
  g_assert_cmpint (item->price, ==, CW_DECIMAL (31) + 250000);
  g_assert_cmpstr (item->note, ==, "<by pallet>");
}

static void
test_not_there (Shelf *shelf, gconstpointer data)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GPtrArray) book = cw_price_book_load (shelf->file, NULL, &error);
  g_assert_no_error (error);
  g_assert_cmpuint (book->len, ==, 0);
}

/* Another program's change is not written over. */
static void
test_changed (Shelf *shelf, gconstpointer data)
{
  g_autoptr (GPtrArray) book = new_book ();
  g_autoptr (GError) error = NULL;
  g_autofree char *etag = NULL;
  g_autofree char *path = g_file_get_path (shelf->file);
  g_assert_true (cw_price_book_save (book, shelf->file, &etag, &error));
  g_assert_true (g_file_set_contents (path, HEAD "</price-book>", -1, NULL));
  g_assert_false (cw_price_book_save (book, shelf->file, &etag, &error));
  g_assert_error (error, CW_FILE_ERROR, CW_FILE_ERROR_CHANGED);
}

static const struct
{
  const char *text;
  guint line;
} broken[] = {
  { HEAD ITEM "<item kind=\"mesh\"/>\n</price-book>", 3 },
  { HEAD ITEM ITEM "</price-book>", 3 },
  { HEAD "<item kind=\"mesh\" name=\"M\" unit=\"roll\" price=\"1,5\" "
         "currency=\"EUR\"/></price-book>",
    2 },
  { HEAD "<item kind=\"mesh\" name=\"M\" unit=\"roll\" price=\"-1\" "
         "currency=\"EUR\"/></price-book>",
    2 },
  { HEAD "<item kind=\"mesh\" name=\"M\" unit=\"roll\" price=\"1\" "
         "currency=\"euro\"/></price-book>",
    2 },
  { HEAD "\n<shelf/></price-book>", 3 },
  { HEAD "\n<item", 3 },
};

static void
test_broken (Shelf *shelf, gconstpointer data)
{
  g_autofree char *path = g_file_get_path (shelf->file);
  for (guint i = 0; i < G_N_ELEMENTS (broken); i++)
    {
      g_autoptr (GError) error = NULL;
      g_autofree char *still = NULL;
      g_assert_true (g_file_set_contents (path, broken[i].text, -1, NULL));
      g_assert_null (cw_price_book_load (shelf->file, NULL, &error));
      g_assert_nonnull (error);
      g_test_message ("%s", error->message);
      g_assert_cmpuint (cw_file_error_line (error), ==, broken[i].line);
      g_assert_true (g_file_get_contents (path, &still, NULL, NULL));
      g_assert_cmpstr (still, ==, broken[i].text);
    }
}

/* As xmllint sees it, and so anybody else's tool. */
static void
test_schema (Shelf *shelf, gconstpointer data)
{
  g_autoptr (GPtrArray) book = new_book ();
  g_autoptr (GError) error = NULL;
  g_autofree char *path = g_file_get_path (shelf->file);
  g_autofree char *schema
      = g_build_filename (g_getenv ("CW_SOURCE_ROOT"), "data", "schema",
                          "price-book-1.rng", NULL);
  const char *argv[]
      = { "xmllint", "--noout", "--relaxng", schema, path, NULL };
  int status;
  g_assert_true (cw_price_book_save (book, shelf->file, NULL, &error));
  g_assert_true (g_spawn_sync (NULL, (char **) argv, NULL,
                               G_SPAWN_SEARCH_PATH
                                   | G_SPAWN_STDERR_TO_DEV_NULL,
                               NULL, NULL, NULL, NULL, &status, &error));
  g_assert_true (g_spawn_check_wait_status (status, &error));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
#define ADD(name, test)                                                       \
  g_test_add ("/price-book-file/" name, Shelf, NULL, make_shelf, test,        \
              clear_shelf)
  ADD ("round-trip", test_round_trip);
  ADD ("not-there", test_not_there);
  ADD ("changed", test_changed);
  ADD ("broken", test_broken);
  ADD ("schema", test_schema);
  return g_test_run ();
}

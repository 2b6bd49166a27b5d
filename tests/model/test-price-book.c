/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The price book against a project, both ways.
 */
#include "cw-price-book.h"

static GPtrArray *
book_of (const char *kind, const char *name, const char *unit, gint64 price,
         const char *currency)
{
  GPtrArray *book = cw_price_book_new ();
  CwPriceItem item = { (char *) kind, (char *) name, (char *) unit,
                       CW_DECIMAL (price), (char *) currency,
                       (char *) "2026-11-25", (char *) "by the pallet" };
  g_ptr_array_add (book, cw_price_item_copy (&item));
  return book;
}

/* Two buildups that share their layers, as copies of a project may. */
static CwProject *
new_project (void)
{
  g_autoptr (CwProject) project = cw_project_new_default (CW_UNITS_METRIC);
  const CwNode *first = cw_list_at (project->buildups, 0);
  g_autoptr (CwNode) second = cw_node_copy (first);
  cw_node_put_text (second, "id", "b2");
  g_autoptr (CwList) both = cw_list_append (project->buildups, second);
  CwNode *next = cw_node_copy (&project->node);
  cw_node_set_list (next, CW_PROJECT_BUILDUPS, both);
  cw_node_freeze (next);
  return (CwProject *) next;
}

static CwDecimal
panel_price (const CwProject *project, gsize buildup)
{
  const CwBuildup *node = cw_list_at (project->buildups, buildup);
  return ((const CwPanel *) cw_list_at (node->panels, 0))->price;
}

static const char *
panel_name (const CwProject *project)
{
  const CwBuildup *node = cw_list_at (project->buildups, 0);
  return ((const CwPanel *) cw_list_at (node->panels, 0))->name;
}

static void
test_names (void)
{
  g_autoptr (CwNode) mesh = cw_node_new (&cw_mesh_type);
  g_autofree char *by_sizes = cw_product_name (mesh);
  g_assert_cmpstr (by_sizes, ==, "mesh 1000 × 50000 mm");
  cw_node_put_text (mesh, "name", "Glass mesh");
  g_autofree char *own = cw_product_name (mesh);
  g_assert_cmpstr (own, ==, "Glass mesh");
  g_assert_cmpstr (cw_product_unit ("mesh"), ==, "roll");
}

/* All layers that have a price can be in the book, and have a name there. */
static void
test_types (void)
{
  const CwNodeType *const *types = cw_product_types ();
  guint n = 0;
  for (; types[n]; n++)
    {
      g_autoptr (CwNode) layer = cw_node_new (types[n]);
      g_autofree char *name = cw_product_name (layer);
      g_assert_cmpstr (name, !=, "");
    }
  g_assert_cmpuint (n, >=, 8);
}

/* One line for a product that stands in two buildups; taken, both have it. */
static void
test_to_project (void)
{
  g_autoptr (CwProject) project = new_project ();
  g_autoptr (GPtrArray) book
      = book_of ("panel", panel_name (project), "panel", 31, "EUR");
  g_autoptr (GPtrArray) changes = cw_price_changes_to_project (project, book);
  g_assert_cmpuint (changes->len, ==, 1);
  const CwPriceChange *change = changes->pdata[0];
  g_assert_cmpint (change->from, ==, 0);
  g_assert_cmpint (change->to, ==, CW_DECIMAL (31));
  g_assert_cmpstr (change->date, ==, "2026-11-25");
  g_assert_cmpint (change->fit, ==, CW_PRICE_FITS);

  g_autoptr (CwProject) left
      = cw_price_changes_apply (project, changes, (gboolean[]) { FALSE });
  g_assert_true (left == project);
  g_autoptr (CwProject) next
      = cw_price_changes_apply (project, changes, (gboolean[]) { TRUE });
  g_assert_cmpint (panel_price (next, 0), ==, CW_DECIMAL (31));
  g_assert_cmpint (panel_price (next, 1), ==, CW_DECIMAL (31));
  g_autoptr (GPtrArray) none = cw_price_changes_to_project (next, book);
  g_assert_cmpuint (none->len, ==, 0);
}

static void
assert_not_taken (const char *unit, const char *currency, CwPriceFit fit)
{
  g_autoptr (CwProject) project = new_project ();
  g_autoptr (GPtrArray) book
      = book_of ("panel", panel_name (project), unit, 31, currency);
  g_autoptr (GPtrArray) changes = cw_price_changes_to_project (project, book);
  g_assert_cmpuint (changes->len, ==, 1);
  g_assert_cmpint (((CwPriceChange *) changes->pdata[0])->fit, ==, fit);
  g_autoptr (CwProject) next
      = cw_price_changes_apply (project, changes, (gboolean[]) { TRUE });
  g_assert_true (next == project);
}

/* Shown, so that it is not missed, and never taken. */
static void
test_does_not_fit (void)
{
  assert_not_taken ("panel", "USD", CW_PRICE_OTHER_CURRENCY);
  assert_not_taken ("pallet", "EUR", CW_PRICE_OTHER_UNIT);
}

static void
test_other_kind (void)
{
  g_autoptr (CwProject) project = new_project ();
  g_autoptr (GPtrArray) book
      = book_of ("mesh", panel_name (project), "panel", 31, "EUR");
  g_autoptr (GPtrArray) changes = cw_price_changes_to_project (project, book);
  g_assert_cmpuint (changes->len, ==, 0);
}

/* There and back: the book then has nothing to change. */
static void
test_to_book (void)
{
  g_autoptr (CwProject) project = new_project ();
  g_autoptr (GPtrArray) source
      = book_of ("panel", panel_name (project), "panel", 31, "EUR");
  g_autoptr (GPtrArray) first = cw_price_changes_to_project (project, source);
  g_autoptr (CwProject) priced
      = cw_price_changes_apply (project, first, (gboolean[]) { TRUE });

  g_autoptr (GPtrArray) book
      = book_of ("panel", panel_name (project), "panel", 29, "EUR");
  g_autoptr (GPtrArray) changes
      = cw_price_changes_to_book (priced, book, "2026-12-01");
  g_assert_cmpuint (changes->len, ==, 1);
  g_autoptr (GPtrArray) next
      = cw_price_book_take (book, changes, (gboolean[]) { TRUE });
  const CwPriceItem *item = next->pdata[0];
  g_assert_cmpuint (next->len, ==, 1);
  g_assert_cmpint (item->price, ==, CW_DECIMAL (31));
  g_assert_cmpstr (item->date, ==, "2026-12-01");
  g_assert_cmpstr (item->note, ==, "by the pallet");
  g_assert_cmpint (((CwPriceItem *) book->pdata[0])->price, ==,
                   CW_DECIMAL (29));
  g_autoptr (GPtrArray) none
      = cw_price_changes_to_book (priced, next, "2026-12-02");
  g_assert_cmpuint (none->len, ==, 0);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/price-book/names", test_names);
  g_test_add_func ("/price-book/types", test_types);
  g_test_add_func ("/price-book/to-project", test_to_project);
  g_test_add_func ("/price-book/does-not-fit", test_does_not_fit);
  g_test_add_func ("/price-book/other-kind", test_other_kind);
  g_test_add_func ("/price-book/to-book", test_to_book);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-table-csv.h"

#include <math.h>
#include <string.h>

#include "cw-csv-rows.h"
#include "project-cases.h"

static CwTakeoff *
takeoff_of (const char *name)
{
  g_autofree char *path = g_test_build_filename (G_TEST_DIST, "data", "files",
                                                 "good", name, NULL);
  g_autoptr (GBytes) bytes = project_case_bytes (path);
  g_autoptr (GError) error = NULL;
  g_autoptr (CwProject) project = cw_project_from_xml (bytes, &error);
  g_assert_no_error (error);
  return cw_takeoff_new (project, NULL, NULL);
}

static GPtrArray *
rows_of (const CwTakeoff *takeoff)
{
  g_autofree char *csv = cw_takeoff_to_csv (takeoff);
  return cw_csv_rows (csv);
}

static void
test_header (void)
{
  g_autoptr (CwTakeoff) takeoff = takeoff_of ("small.cladwright");
  g_autofree char *csv = cw_takeoff_to_csv (takeoff);
  g_assert_true (g_str_has_prefix (
      csv, "key,scope,quantity,unit,order_quantity,order_unit,steps\r\n"));
}

static void
assert_number (const char *text, double value)
{
  if (isnan (value))
    {
      g_assert_cmpstr (text, ==, "");
      return;
    }
  char *end;
  double back = g_ascii_strtod (text, &end);
  g_assert_true (*text != '\0' && *end == '\0');
  g_assert_cmpmem (&back, sizeof back, &value, sizeof value);
}

/* Checks one scope's rows from @row on; returns the row after them. */
static guint
check_scope (GPtrArray *rows, guint row, const char *scope,
             const GPtrArray *quantities)
{
  for (guint i = 0; i < quantities->len; i++, row++)
    {
      const CwQuantity *quantity = quantities->pdata[i];
      g_assert_true (
          g_str_has_prefix (cw_csv_field (rows, row, 0), quantity->type->key));
      g_assert_cmpstr (cw_csv_field (rows, row, 1), ==, scope);
      assert_number (cw_csv_field (rows, row, 2), quantity->amount);
      g_assert_cmpstr (cw_csv_field (rows, row, 3), ==, quantity->unit);
      assert_number (cw_csv_field (rows, row, 4), quantity->order_amount);
      g_autofree char *steps = cw_quantity_steps_plain (quantity);
      g_assert_cmpstr (cw_csv_field (rows, row, 6), ==, steps);
    }
  return row;
}

/* Every quantity of every elevation, then of the project, to the last bit. */
static void
test_rows (void)
{
  g_autoptr (CwTakeoff) takeoff = takeoff_of ("example.cladwright");
  g_autoptr (GPtrArray) rows = rows_of (takeoff);
  guint row = 1;
  for (guint i = 0; i < takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = takeoff->walls->pdata[i];
      row = check_scope (rows, row, wall->wall->elevation->id,
                         wall->quantities);
    }
  row = check_scope (rows, row, "project", takeoff->quantities);
  g_assert_cmpuint (row, ==, rows->len);
}

static guint
place_of_type (const char *key)
{
  gsize length = strcspn (key, "/");
  for (guint i = 0; i < cw_n_quantity_types; i++)
    if (strlen (cw_quantity_types[i].key) == length
        && strncmp (cw_quantity_types[i].key, key, length) == 0)
      return i;
  g_error ("No quantity is called %s", key);
}

/* Within a scope in the order of the table of quantities, and each row told
 * apart from all others. */
static void
test_order (void)
{
  g_autoptr (CwTakeoff) takeoff = takeoff_of ("example.cladwright");
  g_autoptr (GPtrArray) rows = rows_of (takeoff);
  g_autoptr (GHashTable) seen
      = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  for (guint i = 1; i < rows->len; i++)
    {
      const char *key = cw_csv_field (rows, i, 0);
      const char *scope = cw_csv_field (rows, i, 1);
      g_assert_true (
          g_hash_table_add (seen, g_strconcat (scope, " ", key, NULL)));
      if (i > 1 && g_str_equal (scope, cw_csv_field (rows, i - 1, 1)))
        g_assert_cmpuint (place_of_type (key), >=,
                          place_of_type (cw_csv_field (rows, i - 1, 0)));
    }
}

/* The small project's south wall by hand: 9 × 2.7 m with a window of
 * 1.2 × 1.4, a door of 0.9 × 2.1 that leaves the wall at its foot, a
 * segmental arch and an unclad triangle of 9 × 0.6 / 2. */
static void
test_figures (void)
{
  g_autoptr (CwTakeoff) takeoff = takeoff_of ("small.cladwright");
  g_autoptr (GPtrArray) rows = rows_of (takeoff);
  GPtrArray *gross = cw_csv_find (rows, "wall.gross", "e1");
  g_assert_nonnull (gross);
  g_assert_cmpstr (gross->pdata[2], ==, "24.3");
  g_assert_cmpstr (gross->pdata[3], ==, "m²");
  GPtrArray *total = cw_csv_find (rows, "wall.gross", "project");
  g_assert_cmpstr (total->pdata[2], ==, "24.3");
}

/* Signs that need quotes come back as they were. */
static void
test_quoting (void)
{
  CwQuantityType type = *cw_quantity_type ("opening.count");
  g_autoptr (CwTakeoff) takeoff = takeoff_of ("small.cladwright");
  CwQuantity *quantity = takeoff->quantities->pdata[0];
  const CwQuantityType *former = quantity->type;
  char *variant = quantity->variant;
  quantity->type = &type;
  quantity->variant = (char *)"mark \"W,1\"\r\nnew";
  g_autoptr (GPtrArray) rows = rows_of (takeoff);
  quantity->type = former;
  quantity->variant = variant;
  g_assert_nonnull (
      cw_csv_find (rows, "opening.count/mark \"W,1\"\r\nnew", "project"));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/table-csv/header", test_header);
  g_test_add_func ("/table-csv/rows", test_rows);
  g_test_add_func ("/table-csv/order", test_order);
  g_test_add_func ("/table-csv/figures", test_figures);
  g_test_add_func ("/table-csv/quoting", test_quoting);
  return g_test_run ();
}

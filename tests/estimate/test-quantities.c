/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Figures of small projects against tables.
 */
#include "cw-case-table.h"
#include "estimate-cases.h"

static CwTakeoff *
takeoff_of (const char *walls, const char *settings)
{
  g_autoptr (CwProject) project
      = case_project (walls, g_str_equal (settings, "-") ? "" : settings);

  return cw_takeoff_new (project, NULL, NULL);
}

static void
test_row (gconstpointer data)
{
  const CwCase *row = data;
  g_autoptr (CwTakeoff) takeoff
      = takeoff_of (row->columns[1], row->columns[2]);
  double amount = case_amount (takeoff, NULL, row->columns[3]);
  double expected = g_ascii_strtod (row->columns[4], NULL);
  double tolerance = g_ascii_strtod (row->columns[5], NULL);

  g_test_message ("line %u, %s: %.12g, expected %s", row->line,
                  row->columns[6], amount, row->columns[4]);
  case_assert_near (amount, expected, tolerance);
}

/* Both faces of a wall: one that the clause deducts from and the other. */
static void
test_two_faces (gconstpointer data)
{
  const CwCase *row = data;
  g_autoptr (CwTakeoff) front
      = takeoff_of (row->columns[1], "measure.rule=is1200");
  g_autoptr (CwTakeoff) back = takeoff_of (
      row->columns[1], "measure.rule=through measure.limit=3");

  case_assert_near (case_amount (front, NULL, "wall.measured")
                        + case_amount (back, NULL, "wall.measured"),
                    g_ascii_strtod (row->columns[2], NULL), 1e-9);
}

/* E-22, derived: panels 24 × 96 × 2 in, joint 1/16 in; a long and a short
 * edge take 15.0 cubic inches. */
static void
test_mortar_by_the_joint (void)
{
  g_autoptr (CwTakeoff) takeoff = takeoff_of (
      "9x6", "panel.length=2438.4 panel.height=609.6 panel.thickness=50.8 "
             "panel.joint=1.5875");
  double joints = case_amount (takeoff, NULL, "joint.bed")
                  + case_amount (takeoff, NULL, "joint.head");
  double litres = case_amount (takeoff, NULL, "mortar.volume");

  g_assert_cmpfloat (joints, >, 50);
  case_assert_near (litres / joints * (120 * 0.0254) / (0.254 * 0.254 * 0.254),
                    15.0, 1e-9);
}

/* Four by ten panels with their joints: known by arithmetic. */
static void
test_whole_panels (void)
{
  g_autoptr (CwTakeoff) takeoff = takeoff_of (
      "9.609x6.027 *2", "panel.spare=3 panel.per-pallet=20 "
                        "panel.pallet-length=2400 panel.pallet-width=1200");

  case_assert_near (case_amount (takeoff, NULL, "panel.whole"), 80, 1e-12);
  case_assert_near (case_amount (takeoff, NULL, "panel.rasped"), 0, 1e-12);
  case_assert_near (case_amount (takeoff, NULL, "panel.cut"), 0, 1e-12);
  case_assert_near (case_amount (takeoff, NULL, "panel.stock"), 80, 1e-12);
  case_assert_near (case_amount (takeoff, NULL, "panel.order"), 83, 1e-12);
  case_assert_near (case_amount (takeoff, NULL, "panel.waste"), 0, 1e-9);
  case_assert_near (case_amount (takeoff, NULL, "saw.length"), 0, 1e-12);
  case_assert_near (case_amount (takeoff, NULL, "pallet.count"), 5, 1e-12);
  case_assert_near (case_amount (takeoff, NULL, "staging.area"), 14.4, 1e-9);
  g_assert_cmpfloat (case_amount (takeoff, NULL, "mass.total"), >, 83 * 43);
}

/* A panel is sawn to half its length: the cut is as long as it is high. */
static void
test_saw (void)
{
  g_autoptr (CwTakeoff) takeoff = takeoff_of ("3.603x0.6", "-");

  case_assert_near (case_amount (takeoff, NULL, "panel.cut"), 1, 1e-12);
  case_assert_near (case_amount (takeoff, NULL, "saw.length"), 0.6, 1e-9);
  case_assert_near (case_amount (takeoff, NULL, "saw.curve"), 0, 1e-12);
  case_assert_near (case_amount (takeoff, NULL, "panel.waste"), 25, 1e-9);
  case_assert_near (case_amount (takeoff, NULL, "joint.head"), 0.6, 1e-9);
}

static void
add_table (const char *name, guint n_columns, const char *path,
           GTestDataFunc test)
{
  /* The rows live as long as the program, which runs them after main's
   * set-up. */
  static GPtrArray *tables = NULL;
  GPtrArray *table = cw_case_table_load (name, n_columns);

  if (tables == NULL)
    tables = g_ptr_array_new ();
  g_ptr_array_add (tables, table);
  for (guint i = 0; i < table->len; i++)
    {
      const CwCase *row = table->pdata[i];
      g_autofree char *test_path
          = g_strdup_printf ("/estimate/%s/%s/line-%u", path,
                             g_str_equal (row->columns[0], "-")
                                 ? "derived"
                                 : row->columns[0],
                             row->line);

      g_test_add_data_func (test_path, row, test);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  add_table ("estimate/quantities.tsv", 7, "quantities", test_row);
  add_table ("estimate/is1200-two-faces.tsv", 4, "two-faces",
             test_two_faces);
  g_test_add_func ("/estimate/mortar/E-22", test_mortar_by_the_joint);
  g_test_add_func ("/estimate/panels/whole", test_whole_panels);
  g_test_add_func ("/estimate/panels/saw", test_saw);
  return g_test_run ();
}

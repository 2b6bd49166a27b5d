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

/* In mm; panels of 2400 × 600, kerf 4. */
static const struct
{
  const char *name, *wall, *settings;
  double plan, notches, rasped, curves;
} sawn[] = {
  /* 1198 + 4 + 1198: one cut parts both. */
  { "one-cut-for-two", "3.601x0.6 *2", "", 600, 0, 0, 0 },
  { "two-cuts-for-two", "3.501x0.6 *2", "", 1200, 0, 0, 0 },
  /* A panel, and 297 mm of one over it. */
  { "ripped", "2.4x0.9", "setting-out.offcuts=none", 2400, 0, 0, 0 },
  /* A window of 1000 × 300 from the top of one panel: two jambs and the
   * sill; its blank is the panel. */
  { "notched", "2.4x0.6 window:1x0.3@0.7,0.3", "", 0, 1600, 0, 0 },
  /* At the panel's corner: a jamb and the sill. */
  { "notched-at-the-corner", "2.4x0.6 window:1x0.3@0,0.3", "", 0, 1300, 0, 0 },
  { "hole", "2.4x0.6 stub:0.1@1.2,0.3", "", 0, 0, 0, 100 * G_PI },
  { "rasped", "2.38x0.6", "", 0, 0, 600, 0 },
};

static void
test_sawn (gconstpointer data)
{
  const guint i = GPOINTER_TO_UINT (data);
  g_autoptr (CwTakeoff) takeoff
      = takeoff_of (sawn[i].wall, sawn[i].settings);
  const CwQuantity *straight
      = cw_takeoff_quantity (takeoff, NULL, "saw.length");
  const CwStepWords *ways = &g_array_index (straight->steps, CwStepWords, 0);

  case_assert_near (ways->places[0].value, sawn[i].plan / 1000, 1e-9);
  case_assert_near (ways->places[1].value, sawn[i].notches / 1000, 1e-9);
  case_assert_near (ways[1].places[0].value, sawn[i].rasped / 1000, 1e-9);
  case_assert_near (straight->amount,
                    (sawn[i].plan + sawn[i].notches) / 1000, 1e-9);
  case_assert_near (case_amount (takeoff, NULL, "saw.curve"),
                    sawn[i].curves / 1000, 1e-9);
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
  for (guint i = 0; i < G_N_ELEMENTS (sawn); i++)
    {
      g_autofree char *path
          = g_strconcat ("/estimate/saw/", sawn[i].name, NULL);

      g_test_add_data_func (path, GUINT_TO_POINTER (i), test_sawn);
    }
  return g_test_run ();
}

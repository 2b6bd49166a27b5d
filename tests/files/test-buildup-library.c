/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The buildups that come with the program: valid, canonical, complete, and in
 * agreement with what is published. And buildups that come out of a file.
 */
#include "cw-buildup-library.h"
#include "cw-checks.h"
#include "estimate-cases.h"
#include "project-cases.h"

#include <glib/gstdio.h>

/* Fills a name's parts: material, units, thickness in mm, barrier. */
static void
check_name (const CwLibraryBuildup *entry)
{
  const CwBuildup *buildup = entry->buildup;
  const CwPanel *panel = cw_list_at (buildup->panels, 0);
  const CwStuds *studs = (const CwStuds *) buildup->studs;
  g_autofree char *expected = g_strdup_printf (
      "%s-%s-%u-%sbarrier",
      studs->material == CW_STUDS_WOOD ? "wood" : "steel",
      entry->units == CW_UNITS_US ? "us" : "metric",
      panel->thickness < CW_MM (60) ? 50u : 75u, buildup->barrier ? "" : "no-");
  g_assert_cmpstr (entry->name, ==, expected);
}

static void
test_combinations (void)
{
  g_autoptr (GPtrArray) library = cw_buildup_library ();
  /* Wood and steel, US and metric, two thicknesses, with and without. */
  g_assert_cmpuint (library->len, ==, 2 * 2 * 2 * 2);
  for (guint i = 0; i < library->len; i++)
    {
      const CwLibraryBuildup *entry = library->pdata[i];
      check_name (entry);
      if (i > 0)
        g_assert_cmpstr (
            ((const CwLibraryBuildup *) library->pdata[i - 1])->name, <,
            entry->name);
    }
}

static char *
path_of (const CwLibraryBuildup *entry)
{
  g_autofree char *file = g_strconcat (entry->name, ".cladwright", NULL);
  return g_build_filename (g_getenv ("CW_SOURCE_ROOT"), "data", "buildups",
                           file, NULL);
}

/* The very files of data/buildups, as the program itself would write them. */
static void
test_files (void)
{
  g_autoptr (GPtrArray) library = cw_buildup_library ();
  for (guint i = 0; i < library->len; i++)
    {
      g_autofree char *path = path_of (library->pdata[i]);
      g_autoptr (GFile) file = g_file_new_for_path (path);
      g_autoptr (GError) error = NULL;
      g_assert_true (project_case_is_valid (path));
      g_autoptr (CwProject) project = cw_project_load (file, NULL, &error);
      g_assert_no_error (error);
      g_autoptr (GBytes) there = project_case_bytes (path);
      g_autoptr (GBytes) written = cw_project_to_xml (project);
      project_case_assert_same (there, written);
      g_assert_cmpuint (cw_list_length (project->buildups), ==, 1);
      g_assert_cmpuint (cw_list_length (project->elevations), ==, 0);
      g_assert_true (cw_node_equal (
          cw_list_at (project->buildups, 0),
          ((const CwLibraryBuildup *) library->pdata[i])->buildup));
    }
}

static void
check_us (const CwBuildup *buildup)
{
  const CwPanel *panel = cw_list_at (buildup->panels, 0);
  const CwMesh *mesh = (const CwMesh *) buildup->mesh;
  const CwBarrier *barrier = (const CwBarrier *) buildup->barrier;
  /* E-20, derived: 24 x 96 x 2 in at 37 pcf is 98.67 lb, 44.75 kg. */
  double e20 = 44.75 * (double) panel->thickness / CW_INCHES (2);
  g_assert_cmpfloat_with_epsilon (cw_decimal_to_double (panel->mass), e20,
                                  0.01);
  /* C-01, UFGS 07240: at least 60 mm, given as 2.5 in. */
  g_assert_cmpint (mesh->lap, ==, CW_INCHES (5) / 2);
  /* C-05, ASTM C1397 practice, unsure: 9 by 12 in. */
  g_assert_cmpint (mesh->corner_width, ==, CW_INCHES (9));
  g_assert_cmpint (mesh->corner_height, ==, CW_INCHES (12));
  if (!barrier)
    return;
  /* B-01 and B-02, IRC R703.2 (2015). */
  g_assert_cmpint (barrier->lap, ==, CW_INCHES (2));
  g_assert_cmpint (barrier->end_lap, ==, CW_INCHES (6));
}

static void
check_metric (const CwBuildup *buildup)
{
  const CwPanel *panel = cw_list_at (buildup->panels, 0);
  const CwMesh *mesh = (const CwMesh *) buildup->mesh;
  double volume = cw_length_in_m (panel->length)
                  * cw_length_in_m (panel->height)
                  * cw_length_in_m (panel->thickness);
  /* E-11, ASTM C1386 from memory: a nominal density of 600 kg/m³. */
  g_assert_cmpfloat_with_epsilon (
      cw_decimal_to_double (panel->mass) / volume, 600, 0.01);
  /* C-03, European practice, weakly sourced; C-05, unsure. */
  g_assert_cmpint (mesh->lap, ==, CW_MM (100));
  g_assert_cmpint (mesh->corner_width, ==, CW_MM (200));
  g_assert_cmpint (mesh->corner_height, ==, CW_MM (300));
}

/* J-01, ASTM C1193 practice: half the width, 6 to 13 mm. */
static void
check_sealant (const CwSealant *sealant)
{
  CwLength depth = CLAMP (sealant->width / 2, CW_MM (6), CW_MM (13));
  g_assert_cmpint (sealant->depth, ==, depth);
}

/* J-03, published: UFGS 07240 p. 21, 25 % larger than the joint. What a
 * buildup starts with. */
static void
test_rod (void)
{
  g_autoptr (CwNode) rod = cw_node_new (&cw_backer_rod_type);
  g_autoptr (CwNode) sealant = cw_node_new (&cw_sealant_type);
  g_assert_cmpint (((const CwBackerRod *) rod)->diameter * 4, ==,
                   ((const CwSealant *) sealant)->width * 5);
}

static void
test_published (void)
{
  g_autoptr (GPtrArray) library = cw_buildup_library ();
  for (guint i = 0; i < library->len; i++)
    {
      const CwLibraryBuildup *entry = library->pdata[i];
      check_sealant ((const CwSealant *) entry->buildup->sealant);
      if (entry->units == CW_UNITS_US)
        check_us (entry->buildup);
      else
        check_metric (entry->buildup);
    }
}

/* Derived: a fastener must get through the panel, and a staggered joint that
 * is to stand on a stud must find one. */
static void
test_sensible (void)
{
  g_autoptr (GPtrArray) library = cw_buildup_library ();
  for (guint i = 0; i < library->len; i++)
    {
      const CwBuildup *buildup
          = ((const CwLibraryBuildup *) library->pdata[i])->buildup;
      const CwPanel *panel = cw_list_at (buildup->panels, 0);
      const CwSettingOut *setting
          = (const CwSettingOut *) buildup->setting_out;
      const CwStuds *studs = (const CwStuds *) buildup->studs;
      g_assert_cmpint (((const CwFastener *) buildup->fastener)->length, >,
                       panel->thickness);
      g_assert_cmpint (panel->length % studs->spacing, ==, 0);
      g_assert_cmpint (setting->stagger % studs->spacing, ==, 0);
      g_assert_true (setting->joints_on_studs);
      g_assert_nonnull (buildup->joint_mortar);
      g_assert_nonnull (buildup->base_coat);
      g_assert_nonnull (buildup->finish);
    }
}

/* The estimator enters a wage and what a panel costs. */
static void
price (CwNode *buildup)
{
  g_autoptr (CwNode) labour
      = cw_node_copy (cw_node_child (buildup, CW_BUILDUP_LABOUR));
  g_autoptr (CwNode) panel
      = cw_node_copy (cw_list_at (cw_node_list (buildup, CW_BUILDUP_PANELS),
                                  0));
  g_autoptr (CwList) panels = NULL;

  cw_node_put (labour, "wage", CW_DECIMAL (40));
  cw_node_put (panel, "price", CW_DECIMAL (30));
  panels = cw_list_new (&panel, 1);
  cw_node_set_child (buildup, CW_BUILDUP_LABOUR, labour);
  cw_node_set_list (buildup, CW_BUILDUP_PANELS, panels);
}

/* One wall of four courses with openings, corners and a stub-out, in a new
 * project that begins with that buildup. */
static CwProject *
project_with (const CwLibraryBuildup *entry)
{
  const gboolean is_us = entry->units == CW_UNITS_US;
  g_autofree char *wall = g_strconcat (
      is_us ? "4.8768x2.447925" : "4.8x2.409",
      " corners window:0.9x0.9/0.1@0.9,0.8 door:0.8x2.1/0.1@3.5,0 "
      "stub:0.06@2.9,0.3",
      NULL);
  g_autoptr (CwProject) drawn = case_project (wall, "");
  g_autoptr (CwProject) begun = cw_project_new_default (entry->units);
  g_autoptr (CwNode) buildup
      = cw_node_copy ((const CwNode *) entry->buildup);
  g_autoptr (CwList) buildups = NULL;
  CwNode *project = cw_node_copy (&begun->node);

  cw_node_put_text (buildup, "id", "b1");
  price (buildup);
  buildups = cw_list_new (&buildup, 1);
  cw_node_set_list (project, CW_PROJECT_BUILDUPS, buildups);
  cw_node_set_list (project, CW_PROJECT_ELEVATIONS, drawn->elevations);
  cw_node_freeze (project);
  return (CwProject *) project;
}

/* Of what such a wall has nothing, whatever it is built of. */
static gboolean
is_lacking (const char *key, const CwLibraryBuildup *entry)
{
  static const char *const lacking[]
      = { "unclad.area",    "edge.rake",  "edge.inside-corner",
          "edge.abutment",  "edge.joint", "band.length",
          "band.area",      "saw.curve",  "panel.whole",
          "panel.rasped",   "joint.control",  "cost.equipment",
          "cost.contingency", "cost.overhead", "cost.profit",
          "cost.tax",       "cost.alternate" };
  const gboolean is_us = entry->units == CW_UNITS_US;

  if (g_str_has_prefix (key, "barrier."))
    return entry->buildup->barrier == NULL;
  if (g_str_equal (key, "cost.unit-foot") || g_str_equal (key, "cost.unit"))
    return g_str_equal (key, "cost.unit-foot") != is_us;
  for (guint i = 0; i < G_N_ELEMENTS (lacking); i++)
    if (g_str_equal (key, lacking[i]))
      return TRUE;
  return FALSE;
}

/* With its joints on studs a panel as long as the studs' module is rasped by
 * the joint's width: few are whole, but none is all sawn. */
static void
assert_laid (const CwTakeoff *takeoff)
{
  g_assert_cmpfloat (case_amount (takeoff, NULL, "panel.whole")
                         + case_amount (takeoff, NULL, "panel.rasped"),
                     >, 0);
}

static void
assert_counted (const CwTakeoff *takeoff, const CwLibraryBuildup *entry)
{
  for (guint i = 0; i < cw_n_quantity_types; i++)
    {
      const char *key = cw_quantity_types[i].key;
      gboolean is_there = FALSE;

      if (is_lacking (key, entry))
        continue;
      for (guint j = 0; j < takeoff->quantities->len && !is_there; j++)
        {
          const CwQuantity *quantity = takeoff->quantities->pdata[j];
          is_there = g_str_equal (quantity->type->key, key)
                     && (quantity->is_money || quantity->amount > 0);
        }
      if (!is_there)
        g_error ("%s: nothing of %s", entry->name, key);
    }
}

/* A panel is heavier than one person should lift: that alone is told of. */
static void
assert_sound (const CwTakeoff *takeoff, const CwLibraryBuildup *entry)
{
  const CwTextStyle style = cw_text_style_plain (entry->units);
  g_autoptr (GPtrArray) checks = cw_checks_find (takeoff, &style, NULL);

  for (guint i = 0; i < checks->len; i++)
    {
      const CwCheck *check = checks->pdata[i];
      if (check->type->severity != CW_CHECK_NOTE
          && !g_str_equal (check->type->code, "panel-mass"))
        g_error ("%s: %s: %s", entry->name, check->type->code, check->text);
    }
}

/* Whoever begins with one of them has every quantity at once. */
static void
test_whole (void)
{
  g_autoptr (GPtrArray) library = cw_buildup_library ();
  for (guint i = 0; i < library->len; i++)
    {
      const CwLibraryBuildup *entry = library->pdata[i];
      g_autoptr (CwProject) project = project_with (entry);
      g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
      assert_counted (takeoff, entry);
      assert_laid (takeoff);
      assert_sound (takeoff, entry);
    }
}

/* J-03, UFGS 07240 p. 21: a backer rod 25 % wider than the joint. */
static void
test_backer_rods (void)
{
  g_autoptr (GPtrArray) library = cw_buildup_library ();
  for (guint i = 0; i < library->len; i++)
    {
      const CwBuildup *buildup
          = ((const CwLibraryBuildup *) library->pdata[i])->buildup;
      g_assert_cmpint (
          ((const CwBackerRod *) buildup->backer_rod)->diameter * 4, ==,
          ((const CwSealant *) buildup->sealant)->width * 5);
    }
}

static void
test_load (void)
{
  g_autoptr (GPtrArray) library = cw_buildup_library ();
  g_autofree char *path = path_of (library->pdata[0]);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autofree char *currency = NULL;
  g_autoptr (GError) error = NULL;
  g_autoptr (CwList) buildups = cw_buildups_load (file, &currency, &error);
  g_assert_no_error (error);
  g_assert_cmpuint (cw_list_length (buildups), ==, 1);
  g_assert_cmpstr (currency, ==, "EUR");
}

static void
test_load_without_any (void)
{
  static const char text[]
      = "<project xmlns=\"urn:cladwright:project:1\" format=\"1\"/>";
  g_autofree char *folder = g_dir_make_tmp ("cw-buildups-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "a.cladwright", NULL);
  g_assert_true (g_file_set_contents (path, text, -1, NULL));
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GError) error = NULL;
  g_assert_null (cw_buildups_load (file, NULL, &error));
  g_assert_error (error, CW_FILE_ERROR, CW_FILE_ERROR_SENSE);
  g_file_delete (file, NULL, NULL);
  g_assert_cmpint (g_rmdir (folder), ==, 0);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/buildup-library/combinations", test_combinations);
  g_test_add_func ("/buildup-library/files", test_files);
  g_test_add_func ("/buildup-library/published", test_published);
  g_test_add_func ("/buildup-library/rod/J-03", test_rod);
  g_test_add_func ("/buildup-library/sensible", test_sensible);
  g_test_add_func ("/buildup-library/whole", test_whole);
  g_test_add_func ("/buildup-library/backer-rods", test_backer_rods);
  g_test_add_func ("/buildup-library/load", test_load);
  g_test_add_func ("/buildup-library/load-without-any",
                   test_load_without_any);
  return g_test_run ();
}

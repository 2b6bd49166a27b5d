/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The best setting out: walls whose best is known by hand, the demo house,
 * and that the table is the same each time and can be stopped.
 */
#include "cw-project-file.h"
#include "cw-setting-search.h"
#include "estimate-cases.h"

static const CwSettingAllowed all_allowed
    = { CW_SETTING_ALL_STARTS, CW_SETTING_ALL_BONDS, TRUE, TRUE };
static const CwSettingAllowed none_allowed = { 0, 0, FALSE, FALSE };

static CwWall *
first_wall (const CwProject *project)
{
  return cw_wall_new (project, cw_list_at (project->elevations, 0));
}

static CwWall *
wall_of (const char *walls, const char *settings)
{
  g_autoptr (CwProject) project = case_project (walls, settings);
  return first_wall (project);
}

static const CwSettingChoice *
choice_at (const GArray *choices, guint index)
{
  g_assert_cmpuint (index, <, choices->len);
  return &g_array_index (choices, CwSettingChoice, index);
}

static const CwSettingChoice *
find_plain (const GArray *choices)
{
  for (guint i = 0; i < choices->len; i++)
    {
      const CwSettingChoice *choice = choice_at (choices, i);
      if (choice->start == CW_START_LEFT && choice->bond == CW_BOND_STACKED
          && choice->offset == 0 && choice->base == 0)
        return choice;
    }
  g_assert_not_reached ();
}

static const CwSettingChoice *
find_present (const GArray *choices)
{
  const CwSettingChoice *present = NULL;
  for (guint i = 0; i < choices->len; i++)
    if (choice_at (choices, i)->is_present)
      {
        g_assert_null (present);
        present = choice_at (choices, i);
      }
  g_assert_nonnull (present);
  return present;
}

/*
 * One course of 600, a slit of 300 through it, panels of 2400, kerf 4:
 *
 *   0            2300  2600              5000
 *   |   2300      |     |     2400        |
 *
 * Plain from the left the row of panels has its joint at 2400 … 2403 and at
 * 4803 … 4806: pieces 2300, 2203 and 194, and as 2203 + 4 + 194 = 2401 they
 * take three panels. From both corners the right one is whole: two panels and
 * one cut of 600.
 */
static void
test_slit (void)
{
  g_autoptr (CwWall) wall
      = wall_of ("5x0.6 window:0.3x0.6@2.3,0", "panel.price=10");
  g_autoptr (GArray) choices
      = cw_setting_search (wall, &all_allowed, NULL, NULL, NULL);
  const CwSettingChoice *best = choice_at (choices, 0);
  const CwSettingChoice *plain = find_plain (choices);
  g_assert_true (plain == find_present (choices));
  g_assert_cmpuint (plain->n_panels, ==, 3);
  g_assert_cmpfloat_with_epsilon (plain->saw, 1.8, 1e-12);
  g_assert_cmpfloat_with_epsilon (plain->cost, 30, 1e-9);
  g_assert_cmpuint (best->n_panels, ==, 2);
  g_assert_cmpint (best->start, ==, CW_START_BOTH);
  g_assert_cmpfloat_with_epsilon (best->saw, 0.6, 1e-12);
  g_assert_cmpfloat_with_epsilon (best->cost, 20, 1e-9);
}

/* Whole panels: nothing does better, and what is as good changes nothing. */
static void
test_whole_panels_stay (void)
{
  g_autoptr (CwWall) wall = wall_of ("9.609x2.409", "");
  g_autoptr (GArray) choices
      = cw_setting_search (wall, &all_allowed, NULL, NULL, NULL);
  const CwSettingChoice *best = choice_at (choices, 0);
  g_assert_true (best->is_present);
  g_assert_cmpuint (best->n_panels, ==, 16);
  g_assert_cmpuint (best->n_least, ==, 16);
  g_assert_cmpfloat (best->saw, <=, 0);
}

/* 2 fasteners a stud at least; mortar as the estimate has it. */
static void
test_cost_is_the_estimate_s (void)
{
  g_autoptr (CwProject) project = case_project (
      "5x2.4 window:1x1", "panel.price=46.5 fastener.price=62 "
                          "fastener.per-box=500 joint-mortar.price=18.4");
  g_autoptr (CwWall) wall = first_wall (project);
  g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
  g_autoptr (GArray) choices
      = cw_setting_search (wall, &none_allowed, NULL, NULL, NULL);
  const CwSettingChoice *only = choice_at (choices, 0);
  const CwJointMortar *mortar
      = (const CwJointMortar *) wall->buildup->joint_mortar;
  const CwPanel *panel = cw_list_at (wall->buildup->panels, 0);
  const double joints = case_amount (takeoff, "project", "joint.bed")
                        + case_amount (takeoff, "project", "joint.head");
  const double litres = joints * cw_length_in_m (panel->thickness)
                        * cw_length_in_m (panel->joint) * 1000;
  const double waste = cw_decimal_to_double (mortar->waste) / 100;
  const double bags
      = litres * (1 + waste) / cw_decimal_to_double (mortar->yield);
  const double boxes
      = case_amount (takeoff, "project", "fastener.count") / 500;
  g_assert_cmpuint (choices->len, ==, 1);
  g_assert_cmpfloat_with_epsilon (
      only->cost, only->n_panels * 46.5 + boxes * 62 + bags * 18.4, 1e-9);
  g_assert_cmpfloat_with_epsilon (
      only->saw,
      case_amount (takeoff, "project", "saw.length")
          + case_amount (takeoff, "project", "saw.curve"),
      1e-9);
}

static void
test_nothing_allowed (void)
{
  g_autoptr (CwWall) wall = wall_of ("7x2.4 window:1x1", "");
  g_autoptr (GArray) choices
      = cw_setting_search (wall, &none_allowed, NULL, NULL, NULL);
  g_assert_cmpuint (choices->len, ==, 1);
  g_assert_true (choice_at (choices, 0)->is_present);
}

static void
test_only_what_is_allowed (void)
{
  const CwSettingAllowed allowed
      = { 1u << CW_START_RIGHT, 1u << CW_BOND_STAGGER, FALSE, FALSE };
  g_autoptr (CwWall) wall = wall_of ("7x2.4 window:1x1", "");
  g_autoptr (GArray) choices
      = cw_setting_search (wall, &allowed, NULL, NULL, NULL);
  g_assert_cmpuint (choices->len, >, 1);
  for (guint i = 0; i < choices->len; i++)
    {
      const CwSettingChoice *choice = choice_at (choices, i);
      g_assert_cmpint (choice->start, !=, CW_START_BOTH);
      g_assert_cmpint (choice->bond, !=, CW_BOND_OFFCUT);
      g_assert_cmpint (choice->offset, ==, 0);
      g_assert_cmpint (choice->base, ==, 0);
    }
}

static void
test_no_wall (void)
{
  g_autoptr (CwWall) wall = wall_of ("7x2.4", "panel.length=0");
  g_autoptr (GArray) choices
      = cw_setting_search (wall, &all_allowed, NULL, NULL, NULL);
  g_assert_cmpuint (choices->len, ==, 0);
}

typedef struct
{
  GCancellable *cancellable;
  guint n_calls, n_done, n_all, stop_at;
} Watch;

static void
watch_progress (guint n_done, guint n_all, gpointer data)
{
  Watch *watch = data;
  g_assert_cmpuint (n_done, >, watch->n_done);
  g_assert_cmpuint (n_done, <=, n_all);
  watch->n_calls++;
  watch->n_done = n_done;
  watch->n_all = n_all;
  if (n_done == watch->stop_at)
    g_cancellable_cancel (watch->cancellable);
}

static void
test_progress (void)
{
  g_autoptr (CwWall) wall = wall_of ("7x2.4 window:1x1", "");
  Watch watch = { 0 };
  g_autoptr (GArray) choices = cw_setting_search (
      wall, &all_allowed, watch_progress, &watch, NULL);
  g_assert_cmpuint (watch.n_calls, >, choices->len);
  g_assert_cmpuint (watch.n_done, ==, watch.n_all);
}

static void
test_cancel (void)
{
  g_autoptr (CwWall) wall = wall_of ("7x2.4 window:1x1", "");
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  Watch watch = { .cancellable = cancellable, .stop_at = 5 };
  g_autoptr (GArray) some = cw_setting_search (
      wall, &all_allowed, watch_progress, &watch, cancellable);
  g_assert_cmpuint (watch.n_calls, ==, 5);
  g_assert_cmpuint (some->len, >=, 1);
  g_assert_cmpuint (some->len, <=, 5);
  g_autoptr (GArray) none
      = cw_setting_search (wall, &all_allowed, NULL, NULL, cancellable);
  g_assert_cmpuint (none->len, ==, 0);
}

static void
assert_same_choice (const CwSettingChoice *a, const CwSettingChoice *b)
{
  g_assert_cmpint (a->start, ==, b->start);
  g_assert_cmpint (a->bond, ==, b->bond);
  g_assert_cmpint (a->offset, ==, b->offset);
  g_assert_cmpint (a->base, ==, b->base);
  g_assert_cmpint (a->stagger, ==, b->stagger);
  g_assert_cmpuint (a->n_panels, ==, b->n_panels);
  g_assert_cmpuint (a->n_least, ==, b->n_least);
  g_assert_cmpuint (a->n_troubles, ==, b->n_troubles);
  g_assert_cmpmem (&a->saw, sizeof a->saw, &b->saw, sizeof b->saw);
  g_assert_cmpmem (&a->cost, sizeof a->cost, &b->cost, sizeof b->cost);
}

static CwProject *
demo_project (void)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *path
      = g_build_filename (g_getenv ("CW_SOURCE_ROOT"), "data", "demo",
                          "fennel-house.cladwright", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  CwProject *project = cw_project_load (file, NULL, &error);
  g_assert_no_error (error);
  return project;
}

static void
assert_deterministic (const CwWall *wall, const GArray *choices)
{
  g_autoptr (GArray) again
      = cw_setting_search (wall, &all_allowed, NULL, NULL, NULL);
  g_assert_cmpuint (again->len, ==, choices->len);
  for (guint i = 0; i < choices->len; i++)
    assert_same_choice (choice_at (again, i), choice_at (choices, i));
}

/* Taking the choice gives the wall that the table promised. */
static void
assert_can_be_taken (const CwWall *wall, const CwSettingChoice *choice)
{
  g_autoptr (CwBuildup) buildup
      = cw_setting_choice_apply (choice, wall->buildup);
  g_autoptr (CwWall) changed = cw_wall_with_buildup (wall, buildup);
  g_autoptr (CwLayout) layout = cw_layout_new (changed);
  g_autoptr (GArray) table
      = cw_setting_search (changed, &none_allowed, NULL, NULL, NULL);
  g_assert_cmpuint (layout->troubles->len, ==, choice->n_troubles);
  g_assert_cmpuint (table->len, ==, 1);
  assert_same_choice (choice_at (table, 0), choice);
}

/* On no wall of the demo is the best worse than plain panels stacked from
 * the left, and on some it is better. */
static void
test_demo (void)
{
  g_autoptr (CwProject) project = demo_project ();
  guint best_panels = 0, plain_panels = 0;
  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    {
      g_autoptr (CwWall) wall
          = cw_wall_new (project, cw_list_at (project->elevations, i));
      g_autoptr (GArray) choices
          = cw_setting_search (wall, &all_allowed, NULL, NULL, NULL);
      const CwSettingChoice *best = choice_at (choices, 0);
      const CwSettingChoice *plain = find_plain (choices);
      const CwSettingChoice *present = find_present (choices);
      g_test_message ("%s: best %u panels (at least %u), %.1f m, %.2f, "
                      "%u troubles; plain %u, %.1f m, %.2f, %u; present %u, "
                      "%.1f m, %.2f, %u",
                      wall->elevation->name, best->n_panels, best->n_least,
                      best->saw, best->cost, best->n_troubles,
                      plain->n_panels, plain->saw, plain->cost,
                      plain->n_troubles, present->n_panels, present->saw,
                      present->cost, present->n_troubles);
      g_assert_cmpuint (best->n_panels, <=, plain->n_panels);
      g_assert_cmpfloat (best->cost, <=, plain->cost);
      g_assert_cmpfloat (best->cost, <=, present->cost);
      assert_can_be_taken (wall, best);
      if (i == 0)
        assert_deterministic (wall, choices);
      best_panels += best->n_panels;
      plain_panels += plain->n_panels;
    }
  g_assert_cmpuint (best_panels, <, plain_panels);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/setting-search/slit", test_slit);
  g_test_add_func ("/setting-search/whole-panels-stay",
                   test_whole_panels_stay);
  g_test_add_func ("/setting-search/cost-is-the-estimate-s",
                   test_cost_is_the_estimate_s);
  g_test_add_func ("/setting-search/nothing-allowed", test_nothing_allowed);
  g_test_add_func ("/setting-search/only-what-is-allowed",
                   test_only_what_is_allowed);
  g_test_add_func ("/setting-search/no-wall", test_no_wall);
  g_test_add_func ("/setting-search/progress", test_progress);
  g_test_add_func ("/setting-search/cancel", test_cancel);
  g_test_add_func ("/setting-search/demo", test_demo);
  return g_test_run ();
}

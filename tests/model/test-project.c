/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model-cases.h"

/* Every default of the core example of the file format. */
static void
test_defaults_are_the_examples (void)
{
  g_autoptr (CwProject) project = cw_project_new_default (CW_UNITS_US);
  const CwBuildup *buildup = cw_project_buildup (project, "b1");
  const CwStuds *studs = (const CwStuds *) buildup->studs;
  const CwPanel *panel = cw_list_at (buildup->panels, 0);
  const CwSettingOut *out = (const CwSettingOut *) buildup->setting_out;
  const CwJointMortar *mortar
      = (const CwJointMortar *) buildup->joint_mortar;
  const CwFinish *finish = (const CwFinish *) buildup->finish;

  g_assert_cmpint (studs->spacing, ==, 406400000);
  g_assert_cmpint (studs->at_jambs, ==, 1);
  g_assert_cmpint (panel->length, ==, CW_MM (2400));
  g_assert_cmpint (panel->kerf, ==, CW_MM (4));
  g_assert_cmpint (panel->mass, ==, CW_DECIMAL (43));
  g_assert_cmpint (out->least_stagger, ==, CW_MM (200));
  g_assert_cmpint (out->offcuts, ==, CW_OFFCUTS_PROJECT);
  g_assert_cmpint (out->turn, ==, 0);
  g_assert_cmpint (mortar->water, ==, 5500000);
  g_assert_cmpint (mortar->pot_life, ==, 240);
  g_assert_cmpint (finish->use, ==, 2400000);
  g_assert_cmpint (panel->price, ==, 0);
  g_assert_cmpint (((CwMeasure *) project->measure)->rule, ==,
                   CW_MEASURE_NET);
}

static void
test_default_by_units (void)
{
  g_autoptr (CwProject) us = cw_project_new_default (CW_UNITS_US);
  g_autoptr (CwProject) metric = cw_project_new_default (CW_UNITS_METRIC);
  const CwBuildup *buildup = cw_project_buildup (metric, "b1");

  g_assert_cmpint (us->units, ==, CW_UNITS_US);
  g_assert_cmpint (metric->units, ==, CW_UNITS_METRIC);
  g_assert_true (us->node.frozen && metric->node.frozen);
  g_assert_cmpint (((CwStuds *) buildup->studs)->spacing, ==, CW_MM (600));
  g_assert_cmpuint (cw_list_length (metric->elevations), ==, 0);
  for (guint slot = 0; slot < cw_buildup_type.n_slots; slot++)
    if (!cw_buildup_type.slots[slot].is_list)
      g_assert_nonnull (cw_node_child (&buildup->node, slot));
}

static void
test_look_up (void)
{
  g_autoptr (CwProject) project = case_project (3, 1);

  g_assert_true (cw_project_elevation (project, "e2")
                 == cw_list_at (project->elevations, 1));
  g_assert_null (cw_project_elevation (project, "e4"));
  g_assert_null (cw_project_elevation (project, "b1"));
  g_assert_null (cw_project_elevation (project, ""));
  g_assert_null (cw_project_elevation (project, NULL));
  g_assert_null (cw_project_sheet (project, "s1"));
  g_assert_null (cw_project_mark (project, "w1"));
}

static void
assert_free_id (const CwProject *project, const char *stem,
                const char *expected)
{
  g_autofree char *id = cw_project_free_id (project, stem);

  g_assert_cmpstr (id, ==, expected);
  g_assert_null (cw_node_find (&project->node, id));
}

static void
test_free_id (void)
{
  g_autoptr (CwProject) project = case_project (3, 2);
  g_autoptr (CwNode) odd = case_window ("o007x", 0, 0);
  g_autoptr (CwProject) with_odd = case_project_with_item (project, odd);
  g_autoptr (CwNode) seventh = case_window ("o7", 0, 0);
  g_autoptr (CwProject) with_seventh
      = case_project_with_item (with_odd, seventh);

  assert_free_id (project, "e", "e4");
  assert_free_id (project, "b", "b2");
  assert_free_id (project, "s", "s1");
  assert_free_id (project, "e3-o", "e3-o3");
  assert_free_id (with_odd, "o", "o1");
  assert_free_id (with_seventh, "o", "o8");
}

static CwProject *
project_with_mark (const CwNode *mark)
{
  g_autoptr (CwProject) project = case_project (1, 1);
  g_autoptr (CwList) marks = cw_list_append (project->marks, mark);
  CwNode *copy = cw_node_copy (&project->node);

  cw_node_set_list (copy, CW_PROJECT_MARKS, marks);
  return (CwProject *) copy;
}

static CwNode *
mark_w1 (void)
{
  CwNode *mark = cw_node_new (&cw_mark_type);

  cw_node_put_text (mark, "id", "w1");
  cw_node_put (mark, "width", CW_MM (1200));
  cw_node_put (mark, "height", CW_MM (1400));
  cw_node_put (mark, "reveal", CW_MM (90));
  return mark;
}

static void
test_mark_gives (void)
{
  g_autoptr (CwNode) mark = mark_w1 ();
  g_autoptr (CwProject) project = project_with_mark (mark);
  g_autoptr (CwNode) window = cw_node_new (&cw_window_type);
  g_autoptr (CwOpening) resolved = NULL;

  cw_node_put_text (window, "mark", "w1");
  cw_node_put (window, "x", CW_MM (300));
  cw_node_put (window, "height", CW_MM (1000));
  resolved = cw_project_resolve_opening (project, (CwOpening *) window);
  g_assert_cmpint (resolved->width, ==, CW_MM (1200));
  g_assert_cmpint (resolved->height, ==, CW_MM (1000));
  g_assert_cmpint (resolved->reveal, ==, CW_MM (90));
  g_assert_cmpint (resolved->x, ==, CW_MM (300));
  g_assert_true (resolved->node.frozen);
  g_assert_cmpint (((CwOpening *) window)->reveal, ==, 0);
}

/* What a mark leaves out it does not give: the opening's default stands. */
static void
test_mark_gives_what_it_states (void)
{
  g_autoptr (CwNode) mark = cw_node_new (&cw_mark_type);
  g_autoptr (CwProject) project = NULL;
  g_autoptr (CwNode) door = cw_node_new (&cw_door_type);
  g_autoptr (CwOpening) resolved = NULL;

  cw_node_put_text (mark, "id", "d1");
  project = project_with_mark (mark);
  cw_node_put_text (door, "mark", "d1");
  resolved = cw_project_resolve_opening (project, (CwOpening *) door);
  g_assert_cmpint (resolved->width, ==, CW_MM (900));
  g_assert_false (cw_node_states (&resolved->node, 4));
}

static void
test_mark_gives_an_arch (void)
{
  g_autoptr (CwNode) mark = mark_w1 ();
  g_autoptr (CwProject) project = NULL;
  g_autoptr (CwNode) arch = cw_node_new (&cw_arch_type);
  g_autoptr (CwOpening) resolved = NULL;

  cw_node_put (mark, "rise", CW_MM (600));
  cw_node_put (mark, "head", CW_ARCH_SEMICIRCULAR);
  project = project_with_mark (mark);
  cw_node_put_text (arch, "mark", "w1");
  resolved = cw_project_resolve_opening (project, (CwOpening *) arch);
  g_assert_cmpint (resolved->rise, ==, CW_MM (600));
  g_assert_cmpint (resolved->head, ==, CW_ARCH_SEMICIRCULAR);
  g_assert_cmpint (cw_opening_kind (resolved), ==, CW_OPENING_ARCH);
}

static void
test_without_mark (void)
{
  g_autoptr (CwProject) project = case_project (1, 1);
  const CwOpening *window
      = (const CwOpening *) cw_node_find (&project->node, "e1-o1");
  g_autoptr (CwOpening) resolved
      = cw_project_resolve_opening (project, window);

  g_assert_true (resolved == window);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/model/project/defaults-are-the-examples",
                   test_defaults_are_the_examples);
  g_test_add_func ("/model/project/default-by-units", test_default_by_units);
  g_test_add_func ("/model/project/look-up", test_look_up);
  g_test_add_func ("/model/project/free-id", test_free_id);
  g_test_add_func ("/model/project/mark-gives", test_mark_gives);
  g_test_add_func ("/model/project/mark-gives-what-it-states",
                   test_mark_gives_what_it_states);
  g_test_add_func ("/model/project/mark-gives-an-arch",
                   test_mark_gives_an_arch);
  g_test_add_func ("/model/project/without-mark", test_without_mark);
  return g_test_run ();
}

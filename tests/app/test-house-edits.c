/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls from typed sizes.
 */
#include "cw-house-edits.h"
#include "cw-wall.h"

static double
area_of (const CwProject *project, guint index)
{
  g_autoptr (CwWall) wall
      = cw_wall_new (project, cw_list_at (project->elevations, index));
  g_assert_nonnull (wall->outline);
  return cw_region_area (wall->outline);
}

static const char *
name_of (const CwProject *project, guint index)
{
  return ((const CwElevation *) cw_list_at (project->elevations, index))
      ->name;
}

/* 10 × 8 m, 3 m to the eaves, 6:12: the gables rise 2 m; by hand 30 m² front
 * and back, 24 + 8 m² each end. */
static void
house (void)
{
  const CwHouse house = { .is_house = TRUE, .length = CW_MM (10000),
                          .width = CW_MM (8000), .height = CW_MM (3000),
                          .pitch = 0.5 };
  g_autoptr (CwProject) empty = cw_project_new_default (CW_UNITS_METRIC);
  g_autofree char *id = NULL;
  g_autoptr (CwProject) project = cw_edit_add_house (empty, &house, &id);
  const double areas[] = { 30, 32, 30, 32 };
  const char *const names[] = { "Front", "Right end", "Back", "Left end" };
  g_assert_cmpint (cw_house_rise (&house, CW_UNITS_METRIC), ==, CW_MM (2000));
  g_assert_cmpuint (cw_list_length (project->elevations), ==, 4);
  for (guint i = 0; i < 4; i++)
    {
      g_assert_cmpfloat_with_epsilon (area_of (project, i), areas[i], 1e-9);
      g_assert_cmpstr (name_of (project, i), ==, names[i]);
    }
  g_assert_cmpstr (id, ==, cw_node_id (cw_list_at (project->elevations, 0)));
  g_assert_cmpuint (cw_list_length (empty->elevations), ==, 0);
}

/* Rakes and eaves are told apart, corners are outside ones. */
static void
edges (void)
{
  const CwHouse house = { .is_house = TRUE, .length = CW_INCHES (384),
                          .width = CW_INCHES (288),
                          .height = CW_INCHES (108), .pitch = 0.5 };
  g_autoptr (CwProject) empty = cw_project_new_default (CW_UNITS_US);
  g_autofree char *id = NULL;
  g_autoptr (CwProject) project = cw_edit_add_house (empty, &house, &id);
  g_autoptr (CwWall) end
      = cw_wall_new (project, cw_list_at (project->elevations, 1));
  const CwEdge expected[] = { CW_EDGE_BASE, CW_EDGE_OUTSIDE_CORNER,
                              CW_EDGE_RAKE, CW_EDGE_RAKE,
                              CW_EDGE_OUTSIDE_CORNER };
  CwLoop loop = cw_region_loop (end->outline, 0);
  g_assert_cmpuint (loop.n_sides, ==, G_N_ELEMENTS (expected));
  for (gsize i = 0; i < loop.n_sides; i++)
    g_assert_cmpuint (loop.sides[i].tag, ==, expected[i]);
}

/* 26.57° is not 6:12: the rise is a length that can be shown. */
static void
rise_to_the_step (void)
{
  CwHouse house = { .is_house = TRUE, .width = CW_MM (7777),
                    .pitch = 0.50003 };
  g_assert_cmpint (cw_house_rise (&house, CW_UNITS_METRIC) % CW_MM (1), ==,
                   0);
  g_assert_cmpint (
      cw_house_rise (&house, CW_UNITS_US) % (CW_NM_PER_INCH / 16), ==, 0);
  house.pitch = 0;
  g_assert_cmpint (cw_house_rise (&house, CW_UNITS_US), ==, 0);
}

static void
walls_of_one_size (void)
{
  const CwHouse house = { .length = CW_MM (6000), .height = CW_MM (2500),
                          .n_walls = 3, .pitch = 1 };
  g_autoptr (CwProject) empty = cw_project_new_default (CW_UNITS_METRIC);
  g_autofree char *id = NULL;
  g_autofree char *next_id = NULL;
  g_autoptr (CwProject) project = cw_edit_add_house (empty, &house, &id);
  g_autoptr (CwProject) more = cw_edit_add_house (project, &house, &next_id);
  g_assert_cmpuint (cw_list_length (project->elevations), ==, 3);
  for (guint i = 0; i < 3; i++)
    g_assert_cmpfloat_with_epsilon (area_of (project, i), 15, 1e-9);
  g_assert_cmpstr (name_of (project, 2), ==, "Wall 3");
  g_assert_cmpstr (name_of (more, 5), ==, "Wall 6");
  g_assert_cmpstr (id, !=, next_id);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/house-edits/house", house);
  g_test_add_func ("/house-edits/edges", edges);
  g_test_add_func ("/house-edits/rise-to-the-step", rise_to_the_step);
  g_test_add_func ("/house-edits/walls-of-one-size", walls_of_one_size);
  return g_test_run ();
}

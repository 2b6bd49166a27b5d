/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "app-cases.h"
#include "cw-edits.h"
#include "cw-field-edit.h"

typedef struct
{
  CwJob *job;
  const CwProject *project;
} House;

static void
build (House *house, gconstpointer data)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *path
      = g_build_filename (g_getenv ("CW_SOURCE_ROOT"), "data", "demo",
                          "fennel-house.cladwright", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  house->job = case_open (file, &error);
  g_assert_no_error (error);
  house->project = cw_document_project (cw_job_document (house->job));
}

static void
take_down (House *house, gconstpointer data)
{
  case_wait_for_takeoff (house->job);
  g_object_unref (house->job);
}

static void
add_puts_on_the_sheet (House *house, gconstpointer data)
{
  g_autofree char *id = NULL;
  CwSheetPlace place = { "s1", 12.5, 100 };
  g_autoptr (CwProject) next
      = cw_edit_add_elevation (house->project, "Porch", &place, &id);
  const CwElevation *added = cw_project_elevation (next, id);
  g_assert_nonnull (added);
  g_assert_null (cw_project_elevation (house->project, id));
  g_assert_cmpstr (added->sheet, ==, "s1");
  g_assert_cmpint (added->at_x, ==, 12500000);
  g_assert_cmpstr (added->buildup, ==, "b1");
  g_assert_true (cw_list_at (next->elevations, 0)
                 == cw_list_at (house->project->elevations, 0));
}

static void
count_ids (const CwNode *node, GHashTable *ids)
{
  if (cw_node_id (node))
    g_assert_true (g_hash_table_add (ids, (gpointer) cw_node_id (node)));
  for (guint slot = 0; slot < node->type->n_slots; slot++)
    if (node->type->slots[slot].is_list)
      for (gsize i = 0; i < cw_list_length (cw_node_list (node, slot)); i++)
        count_ids (cw_list_at (cw_node_list (node, slot), i), ids);
}

static void
duplicate_has_ids_of_its_own (House *house, gconstpointer data)
{
  g_autofree char *id = NULL;
  g_autoptr (GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);
  g_autoptr (CwProject) next = cw_edit_duplicate_elevation (
      house->project, "south", "South again", &id);
  const CwElevation *from = cw_project_elevation (next, "south");
  const CwElevation *copy = cw_project_elevation (next, id);
  count_ids (&next->node, ids);
  g_assert_cmpuint (cw_list_length (copy->items), ==,
                    cw_list_length (from->items));
  g_assert_true (copy->outline == from->outline);
  g_assert_true (cw_list_at (next->elevations, 1) == copy);
}

static void
move_stops_at_the_ends (House *house, gconstpointer data)
{
  gsize last = cw_list_length (house->project->elevations) - 1;
  g_autoptr (CwProject) up
      = cw_edit_move_elevation (house->project, "south", -1);
  g_autoptr (CwProject) down
      = cw_edit_move_elevation (house->project, "south", 99);
  g_assert_true (up == house->project);
  g_assert_cmpstr (cw_node_id (cw_list_at (down->elevations, last)), ==,
                   "south");
  g_assert_cmpuint (cw_list_length (down->elevations), ==, last + 1);
}

static void
without_sheet_walls_stay (House *house, gconstpointer data)
{
  g_autoptr (CwProject) next = cw_edit_remove_sheet (house->project, "s1");
  const CwElevation *south = cw_project_elevation (next, "south");
  g_assert_cmpuint (cw_list_length (next->sheets), ==, 0);
  g_assert_cmpstr (south->sheet, ==, "");
  g_assert_cmpint (south->at_x, ==, 0);
  g_assert_nonnull (south->outline);
}

static void
varied_buildup_is_of_one_wall (House *house, gconstpointer data)
{
  g_autoptr (CwProject) next
      = cw_edit_vary_buildup (house->project, "south", "Thicker");
  const CwElevation *south = cw_project_elevation (next, "south");
  const CwBuildup *varied = cw_project_buildup (next, south->buildup);
  g_assert_cmpstr (varied->name, ==, "Thicker");
  g_assert_cmpstr (cw_project_elevation (next, "east")->buildup, ==, "b1");
  const CwBuildup *former = cw_project_buildup (next, "b1");
  g_assert_true (cw_node_equal (varied->fastener, former->fastener));
  /* A change of one must not find the other's layer. */
  g_assert_true (varied->fastener != former->fastener);
  g_assert_true (cw_list_at (varied->panels, 0)
                 != cw_list_at (former->panels, 0));
}

static char *
shout (const char *file, gpointer data)
{
  return g_ascii_strup (file, -1);
}

static char *
leave (const char *file, gpointer data)
{
  return g_strdup (file);
}

static void
rewriting_paths (House *house, gconstpointer data)
{
  g_autoptr (CwProject) same
      = cw_edit_rewrite_sheets (house->project, leave, NULL);
  g_autoptr (CwProject) loud
      = cw_edit_rewrite_sheets (house->project, shout, NULL);
  g_assert_true (same == house->project);
  g_assert_cmpstr (cw_project_sheet (loud, "s1")->file, ==,
                   "SHEETS/FENNEL-HOUSE.PDF");
}

static GPtrArray *
paths_to (const char *first, ...)
{
  GPtrArray *paths
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_node_path_free);
  va_list ids;
  va_start (ids, first);
  for (const char *id = first; id; id = va_arg (ids, const char *))
    g_ptr_array_add (paths, cw_node_path_new (id));
  va_end (ids);
  return paths;
}

static CwProject *
set_length (House *house, const GPtrArray *paths, const char *field,
            CwLength length, GError **error)
{
  CwFieldChange change = { .field = field, .kind = CW_SET_NUMBER,
                           .number = length,
                           .style = cw_job_style (house->job) };
  return cw_field_edit (house->project, paths, &change, error);
}

static const CwOpening *
opening (const CwProject *project, const char *id)
{
  return (const CwOpening *) cw_node_find (&project->node, id);
}

static void
field_of_many (House *house, gconstpointer data)
{
  g_autoptr (GPtrArray) paths = paths_to ("o1", "o3", "o4", NULL);
  g_autoptr (CwProject) next
      = set_length (house, paths, "y", CW_MM (900), NULL);
  g_assert_cmpint (opening (next, "o1")->y, ==, CW_MM (900));
  g_assert_cmpint (opening (next, "o3")->y, ==, CW_MM (900));
  g_assert_cmpint (opening (next, "o4")->y, ==, CW_MM (900));
  g_assert_true (cw_project_elevation (next, "east")
                 == cw_project_elevation (house->project, "east"));
}

static void
field_back_to_its_mark (House *house, gconstpointer data)
{
  g_autoptr (GPtrArray) paths = paths_to ("o1", NULL);
  g_autoptr (CwProject) wide
      = set_length (house, paths, "width", CW_MM (2000), NULL);
  g_autoptr (CwOpening) broken
      = cw_project_resolve_opening (wide, opening (wide, "o1"));
  g_assert_cmpint (broken->width, ==, CW_MM (2000));
  CwFieldChange back = { .field = "width", .kind = CW_SET_NOTHING,
                         .style = cw_job_style (house->job) };
  g_autoptr (CwProject) again = cw_field_edit (wide, paths, &back, NULL);
  g_autoptr (CwOpening) followed
      = cw_project_resolve_opening (again, opening (again, "o1"));
  g_assert_cmpint (followed->width, ==, cw_project_mark (again, "w1")->width);
}

static void
same_value_is_no_edit (House *house, gconstpointer data)
{
  g_autoptr (GPtrArray) paths = paths_to ("o1", NULL);
  g_autoptr (CwProject) next = set_length (
      house, paths, "x", opening (house->project, "o1")->x, NULL);
  g_assert_true (next == house->project);
}

/* A segmental head rises at most half its width. */
static void
impossible_rise_is_refused (House *house, gconstpointer data)
{
  g_autoptr (GPtrArray) paths = paths_to ("o5", NULL);
  g_autoptr (GError) error = NULL;
  g_assert_null (set_length (house, paths, "rise", CW_MM (1500), &error));
  g_assert_nonnull (error);
  g_assert_nonnull (strstr (error->message, "rises"));
}

/* The gable's right corner pulled over its left one. */
static void
crossing_outline_is_refused (House *house, gconstpointer data)
{
  g_autoptr (CwNodePath) east = cw_node_path_new ("east");
  g_autoptr (CwNodePath) loop
      = cw_node_path_down (east, CW_ELEVATION_OUTLINE, -1);
  g_autoptr (GPtrArray) paths
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_node_path_free);
  g_autoptr (GError) error = NULL;
  g_ptr_array_add (paths, cw_node_path_down (loop, CW_OUTLINE_CORNERS, 2));
  g_assert_null (set_length (house, paths, "x", CW_MM (-3000), &error));
  g_assert_nonnull (error);
}

static void
add (const char *path, void (*test) (House *, gconstpointer))
{
  g_test_add (path, House, NULL, build, test, take_down);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  add ("/edits/add-puts-on-the-sheet", add_puts_on_the_sheet);
  add ("/edits/duplicate-has-ids-of-its-own", duplicate_has_ids_of_its_own);
  add ("/edits/move-stops-at-the-ends", move_stops_at_the_ends);
  add ("/edits/without-sheet-walls-stay", without_sheet_walls_stay);
  add ("/edits/varied-buildup-is-of-one-wall",
       varied_buildup_is_of_one_wall);
  add ("/edits/rewriting-paths", rewriting_paths);
  add ("/field-edit/of-many", field_of_many);
  add ("/field-edit/back-to-its-mark", field_back_to_its_mark);
  add ("/field-edit/same-value-is-no-edit", same_value_is_no_edit);
  add ("/field-edit/impossible-rise-is-refused", impossible_rise_is_refused);
  add ("/field-edit/crossing-outline-is-refused",
       crossing_outline_is_refused);
  return g_test_run ();
}

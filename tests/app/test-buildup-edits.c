/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of buildups and their layers.
 */
#include <string.h>

#include "app-cases.h"
#include "cw-buildup-edits.h"
#include "cw-buildup-library.h"
#include "cw-field-edit.h"

/* The default project with two walls of its buildup b1. */
static CwProject *
new_project (void)
{
  g_autoptr (CwProject) project = cw_project_new_default (CW_UNITS_METRIC);
  CwNode *walls[2];
  for (guint i = 0; i < 2; i++)
    {
      walls[i] = cw_node_new (&cw_elevation_type);
      cw_node_put_text (walls[i], "id", i ? "e2" : "e1");
      cw_node_put_text (walls[i], "buildup", "b1");
    }
  g_autoptr (CwList) list = cw_list_new (walls, 2);
  CwNode *next = cw_node_copy (&project->node);
  cw_node_set_list (next, CW_PROJECT_ELEVATIONS, list);
  cw_node_unref (walls[0]);
  cw_node_unref (walls[1]);
  cw_node_freeze (next);
  return (CwProject *) next;
}

/* That it opens again as it is: ids once, references to what is there. */
static void
assert_sound (const CwProject *project)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) xml = cw_project_to_xml (project);
  g_autoptr (CwProject) again = cw_project_from_xml (xml, &error);
  g_assert_no_error (error);
  g_assert_true (cw_node_equal (project, again));
}

static void
test_users (void)
{
  g_autoptr (CwProject) project = new_project ();
  g_autoptr (GPtrArray) users = cw_buildup_users (project, "b1");
  g_autoptr (GPtrArray) none = cw_buildup_users (project, "b2");
  g_assert_cmpuint (users->len, ==, 2);
  g_assert_cmpuint (none->len, ==, 0);
}

/* Taken twice, it is there twice, with ids and names that tell them apart. */
static void
test_add (void)
{
  g_autoptr (CwProject) project = new_project ();
  g_autoptr (GPtrArray) library = cw_buildup_library ();
  const CwBuildup *generic
      = ((const CwLibraryBuildup *) library->pdata[0])->buildup;
  g_autofree char *first = NULL, *second = NULL;
  g_autoptr (CwProject) one = cw_buildup_add (project, generic, &first);
  g_autoptr (CwProject) two = cw_buildup_add (one, generic, &second);
  g_assert_cmpstr (first, !=, second);
  g_assert_cmpstr (cw_project_buildup (two, first)->name, ==, generic->name);
  g_assert_cmpstr (cw_project_buildup (two, second)->name, !=,
                   generic->name);
  g_assert_true (cw_node_equal (cw_project_buildup (two, second)->mesh,
                                generic->mesh));
  assert_sound (two);
}

static CwProject *
with_field (const CwProject *project, const char *id, guint slot, int index,
            const char *field, gint64 value)
{
  g_autoptr (GPtrArray) paths
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_node_path_free);
  g_autoptr (CwNodePath) base = cw_node_path_new (id);
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  CwFieldChange change = { field, CW_SET_NUMBER, value, NULL, &style };
  g_autoptr (GError) error = NULL;
  g_ptr_array_add (paths, cw_node_path_down (base, slot, index));
  CwProject *next = cw_field_edit (project, paths, &change, &error);
  g_assert_no_error (error);
  return next;
}

static CwLength
fastener_spacing (const CwProject *project, const char *id)
{
  return ((const CwFastener *) cw_project_buildup (project, id)->fastener)
      ->spacing;
}

/* What is changed in one is not changed in the other, whichever it is. */
static void
test_duplicate_is_apart (void)
{
  g_autoptr (CwProject) project = new_project ();
  g_autofree char *id = NULL;
  g_autoptr (CwProject) two = cw_buildup_duplicate (project, "b1", &id);
  g_autoptr (CwProject) changed = with_field (
      two, id, CW_BUILDUP_FASTENER, -1, "spacing", CW_MM (250));
  g_assert_cmpint (fastener_spacing (changed, "b1"), ==, CW_MM (300));
  g_assert_cmpint (fastener_spacing (changed, id), ==, CW_MM (250));
  assert_sound (changed);
}

static void
test_remove (void)
{
  g_autoptr (CwProject) project = new_project ();
  g_autofree char *id = NULL;
  g_autoptr (CwProject) two = cw_buildup_duplicate (project, "b1", &id);
  g_autoptr (CwProject) unused = cw_buildup_remove (two, id, NULL);
  g_autoptr (CwProject) moved = cw_buildup_remove (two, "b1", id);
  g_assert_true (cw_node_equal (unused, project));
  g_assert_null (cw_project_buildup (moved, "b1"));
  g_assert_cmpstr (cw_project_elevation (moved, "e1")->buildup, ==, id);
  g_assert_cmpstr (cw_project_elevation (moved, "e2")->buildup, ==, id);
  assert_sound (moved);
}

/* Every layer that may be left out, taken out and put back. */
static void
test_layers (void)
{
  g_autoptr (CwProject) project = new_project ();
  guint n = 0;
  for (guint slot = 0; slot < cw_buildup_type.n_slots; slot++)
    {
      const CwSlot *place = &cw_buildup_type.slots[slot];
      if (place->always || place->is_list)
        continue;
      g_autoptr (CwProject) without
          = cw_buildup_remove_layer (project, "b1", slot);
      g_autoptr (CwProject) with
          = cw_buildup_add_layer (without, "b1", slot);
      const CwBuildup *less = cw_project_buildup (without, "b1");
      const CwBuildup *more = cw_project_buildup (with, "b1");
      g_assert_null (cw_node_child (&less->node, slot));
      g_assert_true (cw_node_child (&more->node, slot)->type
                     == place->types[0]);
      assert_sound (without);
      assert_sound (with);
      n++;
    }
  g_assert_cmpuint (n, >=, 7);
}

static CwLength
panel_length (const CwProject *project, gsize index)
{
  const CwPanel *panel
      = cw_list_at (cw_project_buildup (project, "b1")->panels, index);
  return panel->length;
}

static void
test_panels (void)
{
  g_autoptr (CwProject) project = new_project ();
  g_autoptr (CwProject) two
      = cw_buildup_add_item (project, "b1", CW_BUILDUP_PANELS, 0);
  g_autoptr (CwProject) changed = with_field (
      two, "b1", CW_BUILDUP_PANELS, 1, "length", CW_MM (3000));
  g_assert_cmpint (panel_length (changed, 0), ==, CW_MM (2400));
  g_assert_cmpint (panel_length (changed, 1), ==, CW_MM (3000));
  g_autoptr (CwProject) moved
      = cw_buildup_move_item (changed, "b1", CW_BUILDUP_PANELS, 1, -1);
  g_assert_cmpint (panel_length (moved, 0), ==, CW_MM (3000));
  g_autoptr (CwProject) one
      = cw_buildup_remove_item (moved, "b1", CW_BUILDUP_PANELS, 0);
  g_assert_cmpint (panel_length (one, 0), ==, CW_MM (2400));
  g_autoptr (CwProject) same
      = cw_buildup_remove_item (one, "b1", CW_BUILDUP_PANELS, 0);
  g_assert_true (same == one);
  assert_sound (moved);
}

static void
test_alone (void)
{
  g_autoptr (CwProject) project = new_project ();
  g_autoptr (CwProject) alone = cw_buildup_alone (project, "b1");
  g_assert_cmpuint (cw_list_length (alone->buildups), ==, 1);
  g_assert_cmpuint (cw_list_length (alone->elevations), ==, 0);
  g_assert_true (cw_node_equal (cw_list_at (alone->buildups, 0),
                                cw_project_buildup (project, "b1")));
  g_assert_cmpstr (alone->currency, ==, project->currency);
  assert_sound (alone);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/buildup-edits/users", test_users);
  g_test_add_func ("/buildup-edits/add", test_add);
  g_test_add_func ("/buildup-edits/duplicate-is-apart",
                   test_duplicate_is_apart);
  g_test_add_func ("/buildup-edits/remove", test_remove);
  g_test_add_func ("/buildup-edits/layers", test_layers);
  g_test_add_func ("/buildup-edits/panels", test_panels);
  g_test_add_func ("/buildup-edits/alone", test_alone);
  return g_test_run ();
}

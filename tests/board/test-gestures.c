/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hundreds of random gestures. Whatever a hand does: every outline is one
 * that can be a wall, every item has a size and an id of its own, undo all
 * the way gives the very first project, and redo the very last.
 */
#include <string.h>

#include "board-cases.h"

#include "cw-choose.h"
#include "cw-clip.h"
#include "cw-edit-arrange.h"
#include "cw-edit-corners.h"
#include "cw-edit-marks.h"

#define GESTURES 60

static const char *const texts[] = {
  "1200", "900 x 2100", "6000x3000", "1000 x 2000 x 300", "0", "-5", "x",
  "12' 6\"", "3 m", "99 km", "1/0", "4 x 4", "",
  "6:12", "3000 x 6:12", "2000 26.57°", "45 deg",
};

static double
somewhere (void)
{
  return g_test_rand_double_range (-2000, 9000);
}

static void
type (Hand *hand)
{
  const char *text = texts[g_test_rand_int_range (0, G_N_ELEMENTS (texts))];
  g_autoptr (GError) error = NULL;

  if (!cw_tool_enter_text (hand->tool, text, &error))
    g_assert_nonnull (error);
  cw_tool_refresh (hand->tool);
}

static void
change_history (Hand *hand)
{
  if (g_test_rand_bit ())
    cw_document_undo (hand->document);
  else
    cw_document_redo (hand->document);
  cw_tool_refresh (hand->tool);
}

static void
press_key (Hand *hand)
{
  switch (g_test_rand_int_range (0, 4))
    {
    case 0:
      cw_tool_finish (hand->tool);
      break;
    case 1:
      cw_tool_cancel (hand->tool);
      break;
    case 2:
      cw_tool_delete (hand->tool);
      break;
    default:
      cw_tool_nudge (hand->tool, CW_MM (g_test_rand_int_range (-50, 50)),
                     CW_MM (g_test_rand_int_range (-50, 50)));
    }
  cw_tool_refresh (hand->tool);
}

static CwProject *
paste_again (const CwProject *project, const CwElevation *elevation,
             const char *const *ids)
{
  g_autoptr (CwProject) clip = cw_clip_new (project, elevation, ids);
  g_auto (GStrv) made = NULL;

  return clip ? cw_edit_paste (project, elevation, clip,
                               cw_point (CW_MM (50), CW_MM (-30)), &made)
              : NULL;
}

static CwProject *
change_corners (const CwProject *project, const CwElevation *elevation)
{
  guint side = (guint) g_test_rand_int_range (0, 3);
  CwPoint at = { CW_MM (g_test_rand_int_range (-500, 7000)),
                 CW_MM (g_test_rand_int_range (-500, 4000)) };

  if (elevation->outline == NULL)
    return NULL;
  side %= (guint) cw_list_length (
      ((const CwOutline *) elevation->outline)->corners);
  switch (g_test_rand_int_range (0, 3))
    {
    case 0:
      return cw_edit_insert_corner (project, elevation->id, side, at, NULL);
    case 1:
      return cw_edit_remove_corner (project, elevation->id, side, NULL);
    default:
      return cw_edit_bow_side (project, elevation->id, side, at.x / 10, NULL);
    }
}

static CwProject *
change_selected (const CwProject *project, const CwElevation *elevation,
                 const char *const *ids)
{
  g_auto (GStrv) made = NULL;
  g_autofree char *mark = NULL;
  CwPoint way = { CW_MM (g_test_rand_int_range (-900, 900)), CW_MM (7) };

  switch (g_test_rand_int_range (0, 9))
    {
    case 0:
      return cw_edit_align (project, elevation, ids,
                            (CwAlign) g_test_rand_int_range (0, 6));
    case 1:
      return cw_edit_distribute (project, elevation, ids,
                                 g_test_rand_bit ());
    case 2:
      return cw_edit_mirror (project, elevation, ids);
    case 3:
      return cw_edit_mirror_elevation (project, elevation);
    case 4:
      return cw_edit_repeat (project, elevation, ids, 2, way,
                             g_test_rand_bit (), &made);
    case 5:
      return paste_again (project, elevation, ids);
    case 6:
      return cw_edit_make_mark (project, elevation, ids, &mark);
    case 7:
      return cw_edit_break_away (project, elevation, ids);
    default:
      return change_corners (project, elevation);
    }
}

/* What the menus do, to all of a wall or to what is selected. */
static void
arrange (Hand *hand)
{
  const CwProject *project = cw_document_project (hand->document);
  const char *id = cw_document_elevation_id (hand->document);
  const CwElevation *elevation
      = id ? cw_project_elevation (project, id) : NULL;
  g_autoptr (CwProject) next = NULL;
  g_auto (GStrv) all = NULL;

  if (elevation == NULL || cw_list_length (elevation->items) > 40)
    return;
  all = cw_choose_all (elevation);
  if (g_test_rand_bit ())
    cw_document_select (hand->document, (const char *const *) all);
  next = change_selected (project, elevation,
                          cw_document_selection (hand->document));
  if (next)
    cw_document_edit (hand->document, next, "Arrange", NULL);
  cw_tool_refresh (hand->tool);
}

static void
gesture (Hand *hand)
{
  hand->hold = (CwHold) g_test_rand_int_range (0, 8);
  hand->mm_per_pixel = g_test_rand_double_range (0.5, 20);
  switch (g_test_rand_int_range (0, 12))
    {
    case 10:
    case 11:
      arrange (hand);
      break;
    case 0:
      cw_tool_next_form (hand->tool);
      hand_take (hand, (CwToolKind) g_test_rand_int_range (0, CW_N_TOOLS));
      break;
    case 1:
      type (hand);
      break;
    case 2:
      press_key (hand);
      break;
    case 3:
      change_history (hand);
      break;
    case 4:
    case 5:
    case 6:
      hand_drag (hand, somewhere (), somewhere (), somewhere (),
                 somewhere ());
      break;
    default:
      hand_click (hand, somewhere (), somewhere ());
    }
}

static void
assert_item (const CwNode *item, GHashTable *ids)
{
  g_assert_nonnull (cw_node_id (item));
  g_assert_true (g_hash_table_add (ids, (gpointer) cw_node_id (item)));
  if (item->type == &cw_unclad_type)
    {
      g_autoptr (CwRegion) shape = cw_unclad_shape ((const CwUnclad *) item);

      g_assert_nonnull (shape);
      return;
    }
  if (item->type == &cw_dimension_type)
    return;
  g_assert_cmpint (case_get (item, "width"), >, 0);
  g_assert_cmpint (case_get (item, "height"), >, 0);
}

static void
assert_elevation (const CwElevation *elevation, GHashTable *ids)
{
  g_assert_true (g_hash_table_add (ids, elevation->id));
  if (elevation->outline)
    {
      g_autoptr (CwRegion) shape
          = cw_outline_shape ((const CwOutline *) elevation->outline);

      g_assert_nonnull (shape);
    }
  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    assert_item (cw_list_at (elevation->items, i), ids);
}

static void
assert_sound (const CwProject *project)
{
  g_autoptr (GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);

  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    assert_elevation (cw_list_at (project->elevations, i), ids);
}

static void
assert_history (CwDocument *document, const CwProject *first)
{
  const CwProject *last;

  while (cw_document_can_redo (document))
    cw_document_redo (document);
  last = cw_document_project (document);
  while (cw_document_can_undo (document))
    cw_document_undo (document);
  g_assert_true (cw_document_project (document) == first);
  while (cw_document_can_redo (document))
    cw_document_redo (document);
  g_assert_true (cw_document_project (document) == last);
}

static void
run (CwDocument *document)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_SELECT, document);
  const CwProject *first = cw_document_project (document);

  for (guint i = 0; i < GESTURES; i++)
    {
      g_autoptr (CwDisplayList) list = NULL;

      gesture (&hand);
      assert_sound (cw_document_project (document));
      list = cw_tool_overlay (hand.tool, hand.mm_per_pixel * 1e6);
      g_assert_nonnull (list);
      g_assert_cmpstr (cw_tool_hint (hand.tool), !=, "");
    }
  assert_history (document, first);
}

static void
test_on_wall (void)
{
  for (guint i = 0; i < 40; i++)
    run (case_wall ());
}

static void
test_on_sheet (void)
{
  for (guint i = 0; i < 20; i++)
    run (case_wall_on_sheet ());
}

static void
test_from_nothing (void)
{
  for (guint i = 0; i < 20; i++)
    run (case_empty (i % 2 ? CW_UNITS_US : CW_UNITS_METRIC));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/gestures/on-wall", test_on_wall);
  g_test_add_func ("/board/gestures/on-sheet", test_on_sheet);
  g_test_add_func ("/board/gestures/from-nothing", test_from_nothing);
  return g_test_run ();
}

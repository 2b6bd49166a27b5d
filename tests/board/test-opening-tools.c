/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The tools that place something on a wall: window, door, arch, unclad area,
 * band and stub-out.
 */
#include <string.h>

#include "board-cases.h"

static Hand
begin (CwToolKind kind)
{
  return hand_new (kind, case_wall ());
}

static const CwElevation *
wall (Hand *hand)
{
  return case_elevation (hand->document, "e1");
}

static guint
n_items (Hand *hand)
{
  return (guint) cw_list_length (wall (hand)->items);
}

static void
test_window_drag (void)
{
  g_auto (Hand) hand = begin (CW_TOOL_WINDOW);

  hand_drag (&hand, 3501, 1102, 4702, 2099);
  case_assert_box (hand.document, "o2", 3500, 1100, 1200, 1000);
  g_assert_true (case_item (hand.document, "o2")->type == &cw_window_type);
  case_assert_selected (hand.document, "o2");
  g_assert_true (cw_tool_take_done (hand.tool));
}

/* From whichever corner it is dragged. */
static void
test_window_drag_back (void)
{
  g_auto (Hand) hand = begin (CW_TOOL_WINDOW);

  hand_drag (&hand, 4700, 2100, 3500, 1100);
  case_assert_box (hand.document, "o2", 3500, 1100, 1200, 1000);
}

static void
test_window_clicks (void)
{
  g_auto (Hand) hand = begin (CW_TOOL_WINDOW);

  hand_click (&hand, 3500, 1100);
  g_assert_cmpuint (n_items (&hand), ==, 4);
  hand_click (&hand, 4700, 2100);
  case_assert_box (hand.document, "o2", 3500, 1100, 1200, 1000);
}

/* The size is what is typed, to the side of the corner that is pointed to. */
static void
test_window_typed (void)
{
  g_auto (Hand) hand = begin (CW_TOOL_WINDOW);

  hand_click (&hand, 4700, 2100);
  hand_move (&hand, 4000, 1500);
  hand_type (&hand, "1230 x 1111");
  case_assert_box (hand.document, "o2", 3470, 989, 1230, 1111);
  hand_click (&hand, 3400, 100);
  hand_type (&hand, "300×200");
  case_assert_box (hand.document, "o3", 3400, 100, 300, 200);
}

static void
test_window_wrong (void)
{
  g_auto (Hand) hand = begin (CW_TOOL_WINDOW);

  hand_click (&hand, 3500, 1100);
  g_assert_cmpuint (hand_type_wrong (&hand, "1200"), ==, 4);
  g_assert_cmpuint (hand_type_wrong (&hand, "1200 x x"), >=, 6);
  hand_type_wrong (&hand, "1200 x -1");
  g_assert_cmpuint (n_items (&hand), ==, 4);
  g_assert_true (cw_tool_cancel (hand.tool));
  g_assert_false (cw_tool_cancel (hand.tool));
}

/* Two clicks on one spot do not make a window of no size. */
static void
test_window_nothing (void)
{
  g_auto (Hand) hand = begin (CW_TOOL_WINDOW);

  hand_click (&hand, 3500, 1100);
  hand_click (&hand, 3502, 1101);
  g_assert_cmpuint (n_items (&hand), ==, 4);
  g_assert_false (cw_document_can_undo (hand.document));
}

static void
test_stay_on (void)
{
  g_auto (Hand) hand = begin (CW_TOOL_WINDOW);

  hand.hold = CW_HOLD_ADD;
  hand_drag (&hand, 3500, 1100, 4000, 2100);
  g_assert_false (cw_tool_take_done (hand.tool));
  hand_drag (&hand, 4100, 1100, 4300, 2100);
  g_assert_cmpuint (n_items (&hand), ==, 6);
}

static void
test_door (void)
{
  g_auto (Hand) hand = begin (CW_TOOL_DOOR);

  hand_drag (&hand, 3000, 300, 3900, 2100);
  case_assert_box (hand.document, "o2", 3000, 0, 900, 2100);
  hand_click (&hand, 4100, 500);
  hand_type (&hand, "915 x 2040");
  case_assert_box (hand.document, "o3", 4100, 0, 915, 2040);
}

/* Held free, a door stands where it is drawn. */
static void
test_door_free (void)
{
  g_auto (Hand) hand = begin (CW_TOOL_DOOR);

  hand.hold = CW_HOLD_FREE;
  hand_drag (&hand, 3000, 300, 3900, 2100);
  case_assert_box (hand.document, "o2", 3000, 300, 900, 1800);
}

static void
assert_arch (Hand *hand, const char *id, int height, int rise,
             CwArchHead head)
{
  const CwNode *arch = case_item (hand->document, id);

  g_assert_true (arch->type == &cw_arch_type);
  g_assert_cmpint (case_get (arch, "height"), ==, CW_MM (height));
  g_assert_cmpint (case_get (arch, "rise"), ==, CW_MM (rise));
  g_assert_cmpint (case_get (arch, "head"), ==, head);
}

/* Dragged up to its crown: what stands below the springing is the rest. */
static void
test_arch (void)
{
  g_auto (Hand) hand = begin (CW_TOOL_ARCH);

  hand_drag (&hand, 3000, 300, 4000, 2300);
  assert_arch (&hand, "o2", 1800, 200, CW_ARCH_SEGMENTAL);
  hand_click (&hand, 4100, 300);
  hand_type (&hand, "800 x 2000 x 400");
  assert_arch (&hand, "o3", 1600, 400, CW_ARCH_SEMICIRCULAR);
  hand_click (&hand, 2300, 300);
  hand_type (&hand, "600 x 2000 x 500");
  assert_arch (&hand, "o4", 1500, 500, CW_ARCH_POINTED);
  hand_click (&hand, 5000, 300);
  hand_type_wrong (&hand, "600 x 500 x 500");
}

static void
test_unclad (void)
{
  g_auto (Hand) hand = begin (CW_TOOL_UNCLAD);
  const CwUnclad *unclad;
  const CwCornerNode *corner;

  hand_drag (&hand, 3000, 200, 4000, 700);
  unclad = (const CwUnclad *) case_item (hand.document, "u2");
  g_assert_cmpuint (cw_list_length (unclad->corners), ==, 4);
  corner = cw_list_at (unclad->corners, 0);
  g_assert_cmpint (corner->x, ==, CW_MM (3000));
  corner = cw_list_at (unclad->corners, 2);
  g_assert_cmpint (corner->x, ==, CW_MM (4000));
  g_assert_cmpint (corner->y, ==, CW_MM (700));
}

static void
test_band (void)
{
  g_auto (Hand) hand = begin (CW_TOOL_BAND);

  hand_click (&hand, 2500, 300);
  hand_type (&hand, "2500 x 140");
  case_assert_box (hand.document, "t2", 2500, 300, 2500, 140);
}

static void
test_stub_out_drag (void)
{
  g_auto (Hand) hand = begin (CW_TOOL_STUB_OUT);

  hand_drag (&hand, 3500, 300, 3560, 380);
  case_assert_box (hand.document, "p2", 3500, 300, 200, 200);
  g_assert_cmpint (case_get (case_item (hand.document, "p2"), "shape"), ==,
                   CW_SHAPE_ROUND);
}

static void
test_stub_out_clicks (void)
{
  g_auto (Hand) hand = begin (CW_TOOL_STUB_OUT);

  hand_click (&hand, 3500, 300);
  hand_click (&hand, 3500, 375);
  case_assert_box (hand.document, "p2", 3500, 300, 150, 150);
}

static void
test_stub_out_typed (void)
{
  g_auto (Hand) hand = begin (CW_TOOL_STUB_OUT);

  hand_click (&hand, 3500, 300);
  hand_type (&hand, "114");
  case_assert_box (hand.document, "p2", 3500, 300, 114, 114);
  hand_click (&hand, 4000, 300);
  hand_type (&hand, "90 x 60");
  case_assert_box (hand.document, "p3", 4000, 300, 90, 60);
  g_assert_cmpint (case_get (case_item (hand.document, "p3"), "shape"), ==,
                   CW_SHAPE_RECTANGULAR);
}

/* Without a wall there is nothing to place things on, and the tool says so. */
static void
test_no_wall (gconstpointer data)
{
  CwToolKind kind = (CwToolKind) GPOINTER_TO_INT (data);
  g_auto (Hand) hand = hand_new (kind, case_empty (CW_UNITS_METRIC));

  hand_drag (&hand, 0, 0, 900, 900);
  hand_type_wrong (&hand, "900 x 900");
  g_assert_false (cw_document_can_undo (hand.document));
  g_assert_nonnull (strstr (cw_tool_hint (hand.tool), "outline first"));
}

/* What stood in the wall is the same object afterwards, and undo gives the
 * very same project. */
static void
test_identity (gconstpointer data)
{
  CwToolKind kind = (CwToolKind) GPOINTER_TO_INT (data);
  g_auto (Hand) hand = begin (kind);
  const CwProject *before = cw_document_project (hand.document);
  const CwNode *window = case_item (hand.document, "o1");
  const CwNode *buildup = cw_list_at (before->buildups, 0);

  hand_drag (&hand, 3500, 300, 4300, 1400);
  g_assert_cmpuint (n_items (&hand), ==, 5);
  g_assert_true (case_item (hand.document, "o1") == window);
  g_assert_true (cw_list_at (cw_document_project (hand.document)->buildups, 0)
                 == buildup);
  cw_document_undo (hand.document);
  g_assert_true (cw_document_project (hand.document) == before);
  g_assert_false (cw_document_can_undo (hand.document));
}

static void
test_given_up (gconstpointer data)
{
  CwToolKind kind = (CwToolKind) GPOINTER_TO_INT (data);
  g_auto (Hand) hand = begin (kind);
  const CwProject *before = cw_document_project (hand.document);

  hand_press (&hand, 3500, 300);
  hand_move (&hand, 4300, 1400);
  g_assert_true (cw_tool_cancel (hand.tool));
  hand_release (&hand, 4300, 1400);
  g_assert_true (cw_document_project (hand.document) == before);
}

static void
add_for_each (void)
{
  for (int kind = CW_TOOL_WINDOW; kind <= CW_TOOL_BAND; kind++)
    {
      const char *name = cw_tool_infos[kind].name;
      gpointer data = GINT_TO_POINTER (kind);
      g_autofree char *bare
          = g_strdup_printf ("/board/opening-tools/no-wall/%s", name);
      g_autofree char *same
          = g_strdup_printf ("/board/opening-tools/identity/%s", name);
      g_autofree char *given_up
          = g_strdup_printf ("/board/opening-tools/given-up/%s", name);

      g_test_add_data_func (bare, data, test_no_wall);
      g_test_add_data_func (same, data, test_identity);
      g_test_add_data_func (given_up, data, test_given_up);
    }
}

/* Every head in turn, each one that can stand. */
static void
test_all_heads (void)
{
  guint seen = 0;

  for (guint form = 1; form <= 5; form++)
    {
      g_auto (Hand) hand = hand_new (CW_TOOL_ARCH, case_wall ());
      const CwNode *arch;

      for (guint i = 0; i < form; i++)
        cw_tool_next_form (hand.tool);
      hand_drag (&hand, 3000, 300, 4000, 2500);
      arch = cw_node_find (
          &cw_document_project (hand.document)->node,
          cw_document_selection (hand.document)[0]);
      g_assert_true (arch->type == &cw_arch_type);
      g_assert_true (cw_arch_is_possible (
          (CwArchHead) case_get (arch, "head"), case_get (arch, "width"),
          case_get (arch, "rise")));
      g_assert_cmpint (case_get (arch, "height") + case_get (arch, "rise"),
                       ==, CW_MM (2200));
      seen |= 1u << case_get (arch, "head");
    }
  g_assert_cmpuint (seen, ==, 31);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/opening-tools/window/drag", test_window_drag);
  g_test_add_func ("/board/opening-tools/window/drag-back",
                   test_window_drag_back);
  g_test_add_func ("/board/opening-tools/window/clicks", test_window_clicks);
  g_test_add_func ("/board/opening-tools/window/typed", test_window_typed);
  g_test_add_func ("/board/opening-tools/window/wrong", test_window_wrong);
  g_test_add_func ("/board/opening-tools/window/nothing",
                   test_window_nothing);
  g_test_add_func ("/board/opening-tools/window/stay-on", test_stay_on);
  g_test_add_func ("/board/opening-tools/door/base", test_door);
  g_test_add_func ("/board/opening-tools/door/free", test_door_free);
  g_test_add_func ("/board/opening-tools/arch", test_arch);
  g_test_add_func ("/board/opening-tools/unclad", test_unclad);
  g_test_add_func ("/board/opening-tools/band", test_band);
  g_test_add_func ("/board/opening-tools/stub-out/drag", test_stub_out_drag);
  g_test_add_func ("/board/opening-tools/stub-out/clicks",
                   test_stub_out_clicks);
  g_test_add_func ("/board/opening-tools/stub-out/typed",
                   test_stub_out_typed);
  add_for_each ();
  g_test_add_func ("/board/opening-tools/all-heads", test_all_heads);
  return g_test_run ();
}

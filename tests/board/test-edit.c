/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits are pure: the former project stays as it is, and whatever is not
 * concerned is the same object in the next one.
 */
#include "board-cases.h"

#include "cw-edge-guess.h"
#include "cw-edit.h"
#include "cw-hit.h"

static const CwProject *
project_of (CwDocument *document)
{
  return cw_document_project (document);
}

static const CwNode *
find (const CwProject *project, const char *id)
{
  return cw_node_find (&project->node, id);
}

static void
test_move (void)
{
  const char *const ids[] = { "o1", NULL };
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = project_of (document);
  const CwNode *window = find (before, "o1");
  g_autoptr (CwProject) after
      = cw_edit_move (before, case_elevation (document, "e1"), ids,
                      CW_MM (10), CW_MM (-7));

  g_assert_true (find (before, "o1") == window);
  g_assert_cmpint (case_get (window, "x"), ==, CW_MM (1000));
  g_assert_cmpint (case_get (find (after, "o1"), "x"), ==, CW_MM (1010));
  g_assert_cmpint (case_get (find (after, "o1"), "y"), ==, CW_MM (893));
  g_assert_true (find (after, "p1") == find (before, "p1"));
  g_assert_true (find (after, "u1") == find (before, "u1"));
  g_assert_true (cw_list_at (after->buildups, 0)
                 == cw_list_at (before->buildups, 0));
  g_assert_true (((const CwElevation *) find (after, "e1"))->outline
                 == ((const CwElevation *) find (before, "e1"))->outline);
}

/* Nothing to do is the very same project. */
static void
test_nothing (void)
{
  const char *const window[] = { "o1", NULL };
  const char *const stranger[] = { "o9", NULL };
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = project_of (document);
  const CwElevation *wall = case_elevation (document, "e1");
  g_autoptr (CwProject) unmoved = cw_edit_move (before, wall, window, 0, 0);
  g_autoptr (CwProject) unknown
      = cw_edit_move (before, wall, stranger, CW_MM (1), 0);
  g_autoptr (CwProject) kept = cw_edit_remove (before, wall, stranger);

  g_assert_true (unmoved == before);
  g_assert_true (unknown == before);
  g_assert_true (kept == before);
}

static void
test_remove (void)
{
  const char *const ids[] = { "p1", "t1", NULL };
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = project_of (document);
  g_autoptr (CwProject) after = cw_edit_remove (
      before, case_elevation (document, "e1"), ids);

  g_assert_null (find (after, "p1"));
  g_assert_null (find (after, "t1"));
  g_assert_true (find (after, "o1") == find (before, "o1"));
  g_assert_nonnull (find (before, "p1"));
}

static void
test_remove_outline (void)
{
  const char *const ids[] = { "e1", NULL };
  g_autoptr (CwDocument) document = case_wall ();
  g_autoptr (CwProject) after = cw_edit_remove (
      project_of (document), case_elevation (document, "e1"), ids);
  const CwElevation *wall = (const CwElevation *) find (after, "e1");

  g_assert_null (wall->outline);
  g_assert_cmpuint (cw_list_length (wall->items), ==, 4);
}

static void
assert_filled (const char *id, CwBox box)
{
  g_autoptr (CwDocument) document = case_wall ();
  const CwNode *item = case_item (document, id);
  g_autoptr (CwNode) by = cw_edit_fill (project_of (document), item, &box);
  g_autoptr (CwProject) after
      = cw_edit_replace (project_of (document), item, by);
  g_autoptr (CwWall) wall
      = cw_wall_new (after, (const CwElevation *) find (after, "e1"));
  CwBox filled;

  g_assert_true (cw_hit_bounds (wall, id, &filled));
  g_assert_cmpmem (&filled, sizeof filled, &box, sizeof box);
}

static void
test_fill (void)
{
  assert_filled ("o1", case_box (900, 800, 1950, 2200));
  assert_filled ("t1", case_box (100, 2500, 5900, 2610));
  assert_filled ("p1", case_box (4400, 500, 4600, 700));
}

/* An arch is filled by its crown; its rise stays as it was where it can. */
static void
test_fill_arch (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_ARCH, case_wall ());
  CwBox taller = case_box (3000, 300, 4000, 2600);
  CwBox narrow = case_box (3000, 300, 3300, 2600);
  const CwNode *arch;
  g_autoptr (CwNode) by = NULL;
  g_autoptr (CwNode) squeezed = NULL;

  hand_click (&hand, 3000, 300);
  hand_type (&hand, "1000 x 2000 x 300");
  arch = case_item (hand.document, "o2");
  by = cw_edit_fill (project_of (hand.document), arch, &taller);
  g_assert_cmpint (case_get (by, "rise"), ==, CW_MM (300));
  g_assert_cmpint (case_get (by, "height"), ==, CW_MM (2000));
  squeezed = cw_edit_fill (project_of (hand.document), arch, &narrow);
  g_assert_cmpint (case_get (squeezed, "rise"), <=, CW_MM (150));
  g_assert_cmpint (case_get (squeezed, "rise")
                       + case_get (squeezed, "height"),
                   ==, CW_MM (2300));
}

/* Rules of the program's own: there is no source for them. */
static void
test_head (void)
{
  g_assert_cmpint (cw_edit_head_for (CW_MM (1000), CW_MM (500)), ==,
                   CW_ARCH_SEMICIRCULAR);
  g_assert_cmpint (cw_edit_head_for (CW_MM (1000), CW_MM (499)), ==,
                   CW_ARCH_SEGMENTAL);
  g_assert_cmpint (cw_edit_head_for (CW_MM (1000), CW_MM (501)), ==,
                   CW_ARCH_POINTED);
}

static void
test_sound (void)
{
  CwBox plain = case_box (0, 0, 100, 100);
  CwBox flat = case_box (0, 0, 100, 0);
  CwBox turned = case_box (100, 0, 0, 100);
  CwBox far = case_box (0, 0, 10000001, 100);

  g_assert_true (cw_edit_box_is_sound (&plain));
  g_assert_false (cw_edit_box_is_sound (&flat));
  g_assert_false (cw_edit_box_is_sound (&turned));
  g_assert_false (cw_edit_box_is_sound (&far));
}

/* A step in the base: what starts on a roof is sealed like an abutment. */
static void
test_edges_of_step (void)
{
  const CwEdge expected[] = { CW_EDGE_BASE, CW_EDGE_ABUTMENT,
                              CW_EDGE_ABUTMENT, CW_EDGE_OUTSIDE_CORNER,
                              CW_EDGE_EAVE, CW_EDGE_OUTSIDE_CORNER };
  CwCorner corners[] = {
    { .at = { 0, 0 } },
    { .at = { CW_MM (3000), 0 } },
    { .at = { CW_MM (3000), CW_MM (800) } },
    { .at = { CW_MM (6000), CW_MM (800) } },
    { .at = { CW_MM (6000), CW_MM (3000) } },
    { .at = { 0, CW_MM (3000) } },
  };

  cw_edge_guess (corners, G_N_ELEMENTS (corners));
  for (gsize i = 0; i < G_N_ELEMENTS (corners); i++)
    g_assert_cmpint (corners[i].tag, ==, expected[i]);
}

static void
test_edges_of_slope (void)
{
  CwCorner corners[] = {
    { .at = { 0, 0 } },
    { .at = { CW_MM (6000), CW_MM (400) } },
    { .at = { CW_MM (6000), CW_MM (3000) } },
    { .at = { 0, CW_MM (3000) } },
  };

  cw_edge_guess (corners, G_N_ELEMENTS (corners));
  g_assert_cmpint (corners[0].tag, ==, CW_EDGE_BASE);
  g_assert_cmpint (corners[1].tag, ==, CW_EDGE_OUTSIDE_CORNER);
  g_assert_cmpint (corners[2].tag, ==, CW_EDGE_EAVE);
}

/* The sense is turned, and each side keeps its bow. */
static void
test_edges_turned (void)
{
  CwCorner corners[] = {
    { .at = { 0, 0 } },
    { .at = { 0, CW_MM (3000) }, .sagitta = CW_MM (500) },
    { .at = { CW_MM (6000), CW_MM (3000) } },
    { .at = { CW_MM (6000), 0 } },
  };

  cw_edge_guess (corners, G_N_ELEMENTS (corners));
  g_assert_cmpint (corners[1].at.x, ==, CW_MM (6000));
  g_assert_cmpint (corners[2].at.y, ==, CW_MM (3000));
  g_assert_cmpint (corners[2].sagitta, ==, CW_MM (500));
  g_assert_cmpint (corners[2].tag, ==, CW_EDGE_RAKE);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/edit/move", test_move);
  g_test_add_func ("/board/edit/nothing", test_nothing);
  g_test_add_func ("/board/edit/remove/items", test_remove);
  g_test_add_func ("/board/edit/remove/outline", test_remove_outline);
  g_test_add_func ("/board/edit/fill/items", test_fill);
  g_test_add_func ("/board/edit/fill/arch", test_fill_arch);
  g_test_add_func ("/board/edit/head", test_head);
  g_test_add_func ("/board/edit/sound", test_sound);
  g_test_add_func ("/board/edges/step", test_edges_of_step);
  g_test_add_func ("/board/edges/slope", test_edges_of_slope);
  g_test_add_func ("/board/edges/turned", test_edges_turned);
  return g_test_run ();
}

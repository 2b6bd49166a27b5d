/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What lies at a point, what lies in a box, and the handles.
 */
#include "board-cases.h"

#include "cw-handles.h"
#include "cw-hit.h"

static CwWall *
wall_of (CwDocument *document)
{
  return cw_wall_new (cw_document_project (document),
                      case_elevation (document, "e1"));
}

static void
assert_hit (const CwWall *wall, double x, double y, int reach,
            const char *id)
{
  const CwNode *hit
      = cw_hit_at (wall, cw_point ((CwLength) (x * 1e6), (CwLength) (y * 1e6)),
                   CW_MM (reach));

  g_assert_cmpstr (hit ? cw_node_id (hit) : NULL, ==, id);
}

static void
test_each (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  g_autoptr (CwWall) wall = wall_of (document);

  assert_hit (wall, 1500, 1500, 0, "o1");
  assert_hit (wall, 4500, 640, 0, "p1");
  assert_hit (wall, 3000, 2700, 0, "t1");
  assert_hit (wall, 5400, 1700, 0, "u1");
  assert_hit (wall, 3000, 100, 0, "e1");
  assert_hit (wall, -10, 100, 0, NULL);
}

/* A small thing is hit from as far as it can be seen to be meant; a window
 * is not made larger. */
static void
test_reach (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  g_autoptr (CwWall) wall = wall_of (document);

  assert_hit (wall, 4580, 600, 0, "e1");
  assert_hit (wall, 4580, 600, 100, "p1");
  assert_hit (wall, 4610, 600, 100, "e1");
  assert_hit (wall, 990, 1500, 100, "e1");
}

/* Round is round: the corner of a stub-out's box is wall. */
static void
test_round (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  g_autoptr (CwWall) wall = wall_of (document);

  assert_hit (wall, 4545, 645, 0, "e1");
  assert_hit (wall, 4530, 630, 0, "p1");
}

static void
test_on_top (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WINDOW, case_wall ());
  g_autoptr (CwWall) wall = NULL;

  hand_drag (&hand, 1500, 1500, 2500, 2000);
  wall = wall_of (hand.document);
  assert_hit (wall, 1700, 1700, 0, "o2");
  assert_hit (wall, 1200, 1700, 0, "o1");
}

/* Beside a semicircular head is wall. */
static void
test_arch (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_ARCH, case_wall ());
  g_autoptr (CwWall) wall = NULL;

  hand_click (&hand, 3000, 300);
  hand_type (&hand, "1000 x 2000 x 500");
  wall = wall_of (hand.document);
  assert_hit (wall, 3500, 2290, 0, "o2");
  assert_hit (wall, 3020, 2280, 0, "e1");
  assert_hit (wall, 3020, 1790, 0, "o2");
}

static void
test_within (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  g_autoptr (CwWall) wall = wall_of (document);
  CwBox all = case_box (0, 0, 6000, 3000);
  CwBox exact = case_box (1000, 900, 2200, 2300);
  CwBox less = case_box (1001, 900, 2200, 2300);
  g_autoptr (GPtrArray) every = cw_hit_within (wall, &all);
  g_autoptr (GPtrArray) one = cw_hit_within (wall, &exact);
  g_autoptr (GPtrArray) none = cw_hit_within (wall, &less);

  g_assert_cmpuint (every->len, ==, 4);
  g_assert_cmpuint (one->len, ==, 1);
  g_assert_cmpuint (none->len, ==, 0);
}

static void
test_bounds (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  g_autoptr (CwWall) wall = wall_of (document);
  CwBox box;

  g_assert_true (cw_hit_bounds (wall, "p1", &box));
  g_assert_cmpint (box.left, ==, CW_MM (4450));
  g_assert_cmpint (box.top, ==, CW_MM (650));
  g_assert_true (cw_hit_bounds (wall, "e1", &box));
  g_assert_cmpint (box.right, ==, CW_MM (6000));
  g_assert_false (cw_hit_bounds (wall, "o7", &box));
}

static void
test_handles (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  g_autoptr (CwWall) wall = wall_of (document);
  g_autoptr (GArray) window = cw_handles (wall, "o1");
  g_autoptr (GArray) outline = cw_handles (wall, "e1");
  g_autoptr (GArray) unclad = cw_handles (wall, "u1");
  g_autoptr (GArray) nothing = cw_handles (wall, "o7");
  CwHandle handle;

  g_assert_cmpuint (window->len, ==, 8);
  g_assert_cmpuint (outline->len, ==, 4);
  g_assert_cmpuint (unclad->len, ==, 4);
  g_assert_cmpuint (nothing->len, ==, 0);
  g_assert_true (cw_handles_pick (window,
                                  cw_point (CW_MM (2210), CW_MM (1610)),
                                  CW_MM (40), &handle));
  g_assert_cmpint (handle.kind, ==, CW_HANDLE_RIGHT);
  g_assert_true (cw_handles_pick (outline,
                                  cw_point (CW_MM (6010), CW_MM (3010)),
                                  CW_MM (40), &handle));
  g_assert_cmpint (handle.kind, ==, CW_HANDLE_CORNER);
  g_assert_cmpuint (handle.corner, ==, 2);
  g_assert_false (cw_handles_pick (window,
                                   cw_point (CW_MM (1500), CW_MM (1300)),
                                   CW_MM (40), &handle));
}

static void
assert_dragged (CwHandleKind kind, int x, int y, int left, int bottom,
                int right, int top)
{
  CwBox box = case_box (0, 0, 1000, 500);
  CwBox expected = case_box (left, bottom, right, top);
  CwBox dragged
      = cw_handle_drag (&box, kind, cw_point (CW_MM (x), CW_MM (y)));

  g_assert_cmpmem (&dragged, sizeof dragged, &expected, sizeof expected);
}

static void
test_drag (void)
{
  assert_dragged (CW_HANDLE_LEFT, -50, 900, -50, 0, 1000, 500);
  assert_dragged (CW_HANDLE_RIGHT | CW_HANDLE_TOP, 1200, 700, 0, 0, 1200,
                  700);
  assert_dragged (CW_HANDLE_BOTTOM, 9, 100, 0, 100, 1000, 500);
  assert_dragged (CW_HANDLE_TOP, 9, -100, 0, 0, 1000, 1);
  assert_dragged (CW_HANDLE_LEFT, 2000, 0, 999, 0, 1000, 500);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/hit/each", test_each);
  g_test_add_func ("/board/hit/reach", test_reach);
  g_test_add_func ("/board/hit/round", test_round);
  g_test_add_func ("/board/hit/on-top", test_on_top);
  g_test_add_func ("/board/hit/arch", test_arch);
  g_test_add_func ("/board/hit/within", test_within);
  g_test_add_func ("/board/hit/bounds", test_bounds);
  g_test_add_func ("/board/handles/pick", test_handles);
  g_test_add_func ("/board/handles/drag", test_drag);
  return g_test_run ();
}

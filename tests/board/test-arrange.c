/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Putting things in order is exact, undone by doing the reverse, and leaves
 * alone what is not concerned.
 */
#include "board-cases.h"

#include "cw-edit-arrange.h"
#include "cw-hit.h"

static const CwProject *
project_of (CwDocument *document)
{
  return cw_document_project (document);
}

static const CwElevation *
wall_of (const CwProject *project)
{
  return cw_project_elevation (project, "e1");
}

static CwBox
box_of (const CwProject *project, const char *id)
{
  g_autoptr (CwWall) wall = cw_wall_new (project, wall_of (project));
  CwBox box;

  g_assert_true (cw_hit_bounds (wall, id, &box));
  return box;
}

static void
assert_place (const CwProject *project, const char *id, int left, int bottom)
{
  CwBox box = box_of (project, id);

  g_assert_cmpint (box.left, ==, CW_MM (left));
  g_assert_cmpint (box.bottom, ==, CW_MM (bottom));
}

static void
assert_aligned (CwAlign how, int left, int bottom)
{
  const char *const ids[] = { "o1", "t1", NULL };
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = project_of (document);
  g_autoptr (CwProject) after
      = cw_edit_align (before, wall_of (before), ids, how);

  assert_place (after, "t1", left, bottom);
  g_assert_true (cw_node_find (&after->node, "o1")
                 == cw_node_find (&before->node, "o1"));
  g_assert_true (cw_node_find (&after->node, "u1")
                 == cw_node_find (&before->node, "u1"));
}

/* The window stands at 1000 … 2200, 900 … 2300; the band is 3000 x 150. */
static void
test_align (void)
{
  assert_aligned (CW_ALIGN_LEFT, 1000, 2600);
  assert_aligned (CW_ALIGN_RIGHT, -800, 2600);
  assert_aligned (CW_ALIGN_CENTRE, 100, 2600);
  assert_aligned (CW_ALIGN_BOTTOM, 2500, 900);
  assert_aligned (CW_ALIGN_TOP, 2500, 2150);
  assert_aligned (CW_ALIGN_MIDDLE, 2500, 1525);
}

static void
test_align_alone (void)
{
  const char *const ids[] = { "o1", NULL };
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = project_of (document);
  g_autoptr (CwProject) after
      = cw_edit_align (before, wall_of (before), ids, CW_ALIGN_LEFT);

  g_assert_true (after == before);
}

/* Four windows of random places: gaps differ by a nanometre at most, the
 * outermost stay. */
static void
test_distribute (void)
{
  for (guint run = 0; run < 200; run++)
    {
      gboolean upright = run % 2;
      g_autoptr (CwDocument) document = case_wall ();
      g_auto (GStrv) more = NULL;
      const char *const one[] = { "o1", NULL };
      g_autoptr (CwProject) four = cw_edit_repeat (
          project_of (document), wall_of (project_of (document)), one, 3,
          cw_point (g_test_rand_int_range (1, 900000001),
                    g_test_rand_int_range (1, 900000001)),
          FALSE, &more);
      const char *const ids[] = { more[1], "o1", more[2], more[0], NULL };
      const char *const inner[] = { more[0], NULL };
      g_autoptr (CwProject) uneven
          = cw_edit_move (four, wall_of (four), inner, 123456, 98765);
      g_autoptr (CwProject) even
          = cw_edit_distribute (uneven, wall_of (uneven), ids, upright);
      CwBox a = box_of (even, "o1"), b = box_of (even, more[0]);
      CwBox c = box_of (even, more[1]), d = box_of (even, more[2]);
      CwLength first = upright ? b.bottom - a.top : b.left - a.right;
      CwLength second = upright ? c.bottom - b.top : c.left - b.right;
      CwLength third = upright ? d.bottom - c.top : d.left - c.right;

      g_assert_cmpint (ABS (first - second), <=, 1);
      g_assert_cmpint (ABS (second - third), <=, 1);
      g_assert_true (cw_node_find (&even->node, more[2])
                     == cw_node_find (&uneven->node, more[2]));
    }
}

static void
test_distribute_few (void)
{
  const char *const ids[] = { "o1", "t1", NULL };
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = project_of (document);
  g_autoptr (CwProject) after
      = cw_edit_distribute (before, wall_of (before), ids, FALSE);

  g_assert_true (after == before);
}

/* About the middle of 1000 … 5800 both keep their distance from the ends. */
static void
test_mirror (void)
{
  const char *const ids[] = { "o1", "u1", "p1", NULL };
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = project_of (document);
  g_autoptr (CwProject) after
      = cw_edit_mirror (before, wall_of (before), ids);
  g_autoptr (CwProject) back = cw_edit_mirror (after, wall_of (after), ids);

  assert_place (after, "o1", 4600, 900);
  assert_place (after, "u1", 1000, 1500);
  assert_place (after, "p1", 2250, 550);
  g_assert_true (cw_node_find (&after->node, "t1")
                 == cw_node_find (&before->node, "t1"));
  g_assert_true (cw_node_equal (cw_node_find (&back->node, "o1"),
                                cw_node_find (&before->node, "o1")));
  assert_place (back, "u1", 5000, 1500);
}

static void
test_mirror_symmetrical (void)
{
  const char *const ids[] = { "o1", NULL };
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = project_of (document);
  g_autoptr (CwProject) after
      = cw_edit_mirror (before, wall_of (before), ids);

  g_assert_true (after == before);
}

/* A wall that is higher on its left and bowed there. */
static CwProject *
lean_wall (CwDocument *document)
{
  const CwCorner corners[] = {
    { { 0, 0 }, 0, CW_EDGE_BASE },
    { { CW_MM (6000), 0 }, 0, CW_EDGE_OUTSIDE_CORNER },
    { { CW_MM (6000), CW_MM (2500) }, CW_MM (120), CW_EDGE_RAKE },
    { { 0, CW_MM (4000) }, 0, CW_EDGE_ABUTMENT },
  };

  return cw_edit_set_corners (project_of (document),
                              wall_of (project_of (document)), corners,
                              G_N_ELEMENTS (corners));
}

static void
test_mirror_elevation (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  g_autoptr (CwProject) before = lean_wall (document);
  g_autoptr (CwProject) after
      = cw_edit_mirror_elevation (before, wall_of (before));
  g_autoptr (CwProject) back
      = cw_edit_mirror_elevation (after, wall_of (after));
  g_autoptr (CwWall) one = cw_wall_new (before, wall_of (before));
  g_autoptr (CwWall) other = cw_wall_new (after, wall_of (after));
  g_autoptr (GArray) corners = cw_corners_from_list (
      ((const CwOutline *) wall_of (after)->outline)->corners);

  g_assert_nonnull (other->outline);
  g_assert_cmpfloat_with_epsilon (cw_region_area (one->net),
                                  cw_region_area (other->net), 1e-9);
  assert_place (after, "o1", 3800, 900);
  for (guint i = 0; i < corners->len; i++)
    {
      const CwCorner *corner = &g_array_index (corners, CwCorner, i);

      g_assert_true ((corner->tag == CW_EDGE_RAKE)
                     == (corner->sagitta != 0));
      if (corner->tag == CW_EDGE_ABUTMENT)
        g_assert_cmpint (corner->at.x, ==, CW_MM (6000));
    }
  g_assert_true (cw_node_equal (
      ((const CwElevation *) wall_of (back))->outline,
      ((const CwElevation *) wall_of (before))->outline));
}

static void
test_repeat (void)
{
  const char *const ids[] = { "o1", "p1", NULL };
  g_auto (GStrv) made = NULL;
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = project_of (document);
  g_autoptr (CwProject) after
      = cw_edit_repeat (before, wall_of (before), ids, 3,
                        cw_point (CW_MM (1500), 0), FALSE, &made);

  g_assert_cmpuint (g_strv_length (made), ==, 6);
  assert_place (after, made[0], 2500, 900);
  assert_place (after, made[2], 4000, 900);
  assert_place (after, made[4], 5500, 900);
  assert_place (after, made[5], 4450 + 4500, 550);
  g_assert_cmpuint (cw_list_length (wall_of (after)->items), ==, 10);
}

/* Seven equal steps of what does not divide by seven end on the point. */
static void
test_repeat_to (void)
{
  const char *const ids[] = { "o1", NULL };
  g_auto (GStrv) made = NULL;
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = project_of (document);
  g_autoptr (CwProject) after
      = cw_edit_repeat (before, wall_of (before), ids, 7,
                        cw_point (CW_MM (3000), 0), TRUE, &made);
  CwLength last = CW_MM (1000);

  assert_place (after, made[6], 4000, 900);
  for (guint i = 0; i < 7; i++)
    {
      CwBox box = box_of (after, made[i]);

      g_assert_cmpint (ABS (box.left - last - CW_MM (3000) / 7), <=, 1);
      last = box.left;
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/arrange/align", test_align);
  g_test_add_func ("/board/arrange/align-alone", test_align_alone);
  g_test_add_func ("/board/arrange/distribute", test_distribute);
  g_test_add_func ("/board/arrange/distribute-few", test_distribute_few);
  g_test_add_func ("/board/arrange/mirror", test_mirror);
  g_test_add_func ("/board/arrange/mirror-symmetrical",
                   test_mirror_symmetrical);
  g_test_add_func ("/board/arrange/mirror-elevation", test_mirror_elevation);
  g_test_add_func ("/board/arrange/repeat", test_repeat);
  g_test_add_func ("/board/arrange/repeat-to", test_repeat_to);
  return g_test_run ();
}

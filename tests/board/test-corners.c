/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Corners put in and taken away, sides bowed and made straight again.
 */
#include "board-cases.h"

#include <math.h>

#include "cw-edit-corners.h"

static double
area_of (const CwProject *project)
{
  g_autoptr (CwWall) wall
      = cw_wall_new (project, cw_project_elevation (project, "e1"));

  g_assert_nonnull (wall->outline);
  return cw_region_area (wall->outline);
}

static void
test_insert_and_remove (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = cw_document_project (document);
  g_autoptr (CwProject) more = cw_edit_insert_corner (
      before, "e1", 2, cw_point (CW_MM (3000), CW_MM (3000)), NULL);
  g_autoptr (CwProject) less = cw_edit_remove_corner (more, "e1", 3, NULL);
  g_autoptr (GArray) corners = cw_edit_corners (more, "e1");
  g_autoptr (GArray) back = cw_edit_corners (less, "e1");
  g_autoptr (GArray) former = cw_edit_corners (before, "e1");

  g_assert_cmpuint (corners->len, ==, 5);
  g_assert_cmpint (g_array_index (corners, CwCorner, 3).at.x, ==,
                   CW_MM (3000));
  g_assert_cmpuint (g_array_index (corners, CwCorner, 3).tag, ==,
                    g_array_index (corners, CwCorner, 2).tag);
  g_assert_cmpmem (back->data, back->len * sizeof (CwCorner), former->data,
                   former->len * sizeof (CwCorner));
}

static void
test_refusals (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = cw_document_project (document);
  g_autofree char *crossed = NULL, *high = NULL;

  g_assert_null (cw_edit_insert_corner (
      before, "e1", 0, cw_point (CW_MM (3000), CW_MM (5000)), &crossed));
  g_assert_cmpstr (crossed, !=, NULL);
  g_assert_null (
      cw_edit_bow_side (before, "e1", 2, CW_MM (3001), &high));
  g_assert_cmpstr (high, !=, NULL);
}

/* Half a circle on 6 m adds pi r² / 2 (from memory: the area of a circle). */
static void
test_bow (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = cw_document_project (document);
  g_autoptr (CwProject) bowed
      = cw_edit_bow_side (before, "e1", 2, CW_MM (3000), NULL);
  g_autoptr (CwProject) straight
      = cw_edit_bow_side (bowed, "e1", 2, 0, NULL);

  g_assert_cmpfloat_with_epsilon (area_of (bowed),
                                  18 + G_PI * 9 / 2, 1e-6);
  g_assert_cmpfloat_with_epsilon (area_of (straight), 18, 1e-12);
}

/* A corner anywhere on the curve leaves the area as it is. */
static void
test_insert_on_bow (void)
{
  for (guint i = 0; i < 100; i++)
    {
      g_autoptr (CwDocument) document = case_wall ();
      CwLength bow = g_test_rand_int_range (10, 1500);
      CwPoint on;
      g_autoptr (CwProject) bowed
          = cw_edit_bow_side (cw_document_project (document), "e1", 2,
                              CW_MM (bow), NULL);
      g_autoptr (GArray) corners = cw_edit_corners (bowed, "e1");
      CwPoint near = { CW_MM (g_test_rand_int_range (500, 5500)),
                       CW_MM (3000) };
      g_autoptr (CwProject) split = NULL;

      g_assert_cmpint (cw_corners_side_at (corners, near, CW_MM (2000), &on),
                       ==, 2);
      split = cw_edit_insert_corner (bowed, "e1", 2, on, NULL);
      g_assert_nonnull (split);
      g_assert_cmpfloat_with_epsilon (area_of (split), area_of (bowed),
                                      1e-5);
    }
}

/* Known bows: half a circle, a chord's worth, nothing, either side. */
static void
test_bow_through (void)
{
  CwPoint from = { 0, 0 }, to = { CW_MM (2000), 0 };

  g_assert_cmpint (cw_bow_through (from, cw_point (CW_MM (1000), CW_MM (-1000)), to),
                   ==, CW_MM (1000));
  g_assert_cmpint (cw_bow_through (from, cw_point (CW_MM (1000), CW_MM (300)), to),
                   ==, CW_MM (-300));
  g_assert_cmpint (cw_bow_through (from, cw_point (CW_MM (700), 0), to), ==,
                   0);
  /* 0.6, 0.8 on the unit circle about the middle. */
  g_assert_cmpint (cw_bow_through (from, cw_point (CW_MM (1600), CW_MM (800)), to),
                   ==, CW_MM (-1000));
}

static void
test_side_at (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  g_autoptr (GArray) corners
      = cw_edit_corners (cw_document_project (document), "e1");
  CwPoint on;

  g_assert_cmpint (cw_corners_side_at (corners,
                                       cw_point (CW_MM (1234), CW_MM (7)),
                                       CW_MM (20), &on),
                   ==, 0);
  g_assert_cmpint (on.x, ==, CW_MM (1234));
  g_assert_cmpint (on.y, ==, 0);
  g_assert_cmpint (cw_corners_side_at (corners,
                                       cw_point (CW_MM (3000), CW_MM (1500)),
                                       CW_MM (20), &on),
                   ==, -1);
}

static void
test_unclad (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = cw_document_project (document);
  g_autoptr (CwProject) bowed
      = cw_edit_bow_side (before, "u1", 2, CW_MM (100), NULL);
  g_autoptr (GArray) corners = cw_edit_corners (bowed, "u1");

  g_assert_cmpint (g_array_index (corners, CwCorner, 2).sagitta, ==,
                   CW_MM (100));
  g_assert_null (cw_edit_corners (before, "o1"));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/corners/insert-and-remove",
                   test_insert_and_remove);
  g_test_add_func ("/board/corners/refusals", test_refusals);
  g_test_add_func ("/board/corners/bow", test_bow);
  g_test_add_func ("/board/corners/insert-on-bow", test_insert_on_bow);
  g_test_add_func ("/board/corners/bow-through", test_bow_through);
  g_test_add_func ("/board/corners/side-at", test_side_at);
  g_test_add_func ("/board/corners/unclad", test_unclad);
  return g_test_run ();
}

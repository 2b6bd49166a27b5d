/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is copied can be pasted anywhere, with its marks, under new ids.
 */
#include "board-cases.h"

#include "cw-clip.h"
#include "cw-edit-marks.h"

static const CwElevation *
wall_of (const CwProject *project)
{
  return cw_project_elevation (project, "e1");
}

static const char *const window_and_pipe[] = { "o1", "p1", NULL };

static void
test_paste (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = cw_document_project (document);
  g_autoptr (CwProject) clip
      = cw_clip_new (before, wall_of (before), window_and_pipe);
  g_auto (GStrv) ids = NULL;
  g_autoptr (CwProject) after
      = cw_edit_paste (before, wall_of (before), clip,
                       cw_point (CW_MM (700), CW_MM (-50)), &ids);
  const CwNode *window = cw_node_find (&after->node, ids[0]);
  CwBox box;

  g_assert_true (cw_clip_is_one (clip));
  g_assert_cmpuint (g_strv_length (ids), ==, 2);
  g_assert_cmpint (case_get (window, "x"), ==, CW_MM (1700));
  g_assert_cmpint (case_get (window, "y"), ==, CW_MM (850));
  g_assert_true (cw_node_find (&after->node, "o1")
                 == cw_node_find (&before->node, "o1"));
  g_assert_true (cw_clip_bounds (clip, &box));
  g_assert_cmpint (box.left, ==, CW_MM (1000));
  g_assert_cmpint (box.right, ==, CW_MM (4550));
}

static void
test_nothing_to_copy (void)
{
  const char *const outline[] = { "e1", NULL };
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *project = cw_document_project (document);

  g_assert_null (cw_clip_new (project, wall_of (project), outline));
  g_assert_false (cw_clip_is_one (project));
}

/* Into the same project the mark is found again; into another it comes
 * along, once. */
static void
test_marks_come_along (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  g_autoptr (CwDocument) other_document = case_wall ();
  const CwProject *bare = cw_document_project (document);
  const CwProject *other = cw_document_project (other_document);
  g_autofree char *mark = NULL;
  g_autoptr (CwProject) marked
      = cw_edit_make_mark (bare, wall_of (bare), window_and_pipe, &mark);
  g_autoptr (CwProject) clip
      = cw_clip_new (marked, wall_of (marked), window_and_pipe);
  g_auto (GStrv) here = NULL, there = NULL, again = NULL;
  g_autoptr (CwProject) same = cw_edit_paste (
      marked, wall_of (marked), clip, cw_point (0, 0), &here);
  g_autoptr (CwProject) once = cw_edit_paste (
      other, wall_of (other), clip, cw_point (0, 0), &there);
  g_autoptr (CwProject) twice = cw_edit_paste (once, wall_of (once), clip,
                                               cw_point (0, 0), &again);
  const CwMark *taken;

  g_assert_cmpuint (cw_list_length (same->marks), ==, 1);
  g_assert_cmpuint (cw_project_count_mark (same, mark), ==, 2);
  g_assert_cmpuint (cw_list_length (twice->marks), ==, 1);
  taken = cw_list_at (twice->marks, 0);
  g_assert_cmpuint (cw_project_count_mark (twice, taken->id), ==, 2);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/clip/paste", test_paste);
  g_test_add_func ("/board/clip/nothing-to-copy", test_nothing_to_copy);
  g_test_add_func ("/board/clip/marks-come-along", test_marks_come_along);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One mark gives its size to all that have it; an opening may break away, and
 * come back.
 */
#include "board-cases.h"

#include "cw-choose.h"
#include "cw-edit-arrange.h"
#include "cw-edit-marks.h"

static const CwElevation *
wall_of (const CwProject *project)
{
  return cw_project_elevation (project, "e1");
}

/* The window o1 and two more like it, all of a new mark. */
static CwProject *
three_marked (CwDocument *document, char ***ids, char **mark)
{
  const CwProject *first = cw_document_project (document);
  const char *const one[] = { "o1", NULL };
  g_auto (GStrv) more = NULL;
  g_autoptr (GStrvBuilder) all = g_strv_builder_new ();
  g_autoptr (CwProject) three
      = cw_edit_repeat (first, wall_of (first), one, 2,
                        cw_point (CW_MM (1300), 0), FALSE, &more);

  g_strv_builder_add (all, "o1");
  g_strv_builder_addv (all, (const char **) more);
  *ids = g_strv_builder_end (all);
  return cw_edit_make_mark (three, wall_of (three),
                            (const char *const *) *ids, mark);
}

static CwLength
width_of (const CwProject *project, const char *id)
{
  g_autoptr (CwOpening) resolved = cw_project_resolve_opening (
      project, (const CwOpening *) cw_node_find (&project->node, id));

  return resolved->width;
}

static CwProject *
with_mark_width (const CwProject *project, const char *mark, CwLength width)
{
  const CwMark *former = cw_project_mark (project, mark);
  int field = cw_node_type_field (&cw_mark_type, "width");
  g_autoptr (CwNode) by = cw_node_with (&former->node, (guint) field, width);

  return cw_edit_replace (project, &former->node, by);
}

static void
test_all_follow (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  g_auto (GStrv) ids = NULL;
  g_autofree char *mark = NULL;
  g_autoptr (CwProject) marked = three_marked (document, &ids, &mark);
  g_autoptr (CwProject) wider
      = with_mark_width (marked, mark, CW_MM (1250));

  g_assert_cmpstr (cw_project_mark (marked, mark)->name, ==, "W1");
  g_assert_cmpuint (cw_project_count_mark (marked, mark), ==, 3);
  for (guint i = 0; i < 3; i++)
    {
      g_assert_cmpint (width_of (marked, ids[i]), ==, CW_MM (1200));
      g_assert_cmpint (width_of (wider, ids[i]), ==, CW_MM (1250));
    }
}

static void
test_break_away (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  g_auto (GStrv) ids = NULL;
  g_autofree char *mark = NULL;
  g_autoptr (CwProject) marked = three_marked (document, &ids, &mark);
  const char *const second[] = { ids[1], NULL };
  g_autoptr (CwProject) away
      = cw_edit_break_away (marked, wall_of (marked), second);
  g_autoptr (CwProject) again
      = cw_edit_break_away (away, wall_of (away), second);
  g_autoptr (CwProject) wider = with_mark_width (away, mark, CW_MM (1250));
  g_autoptr (CwProject) back
      = cw_edit_follow_mark (wider, wall_of (wider), second, mark);

  g_assert_cmpint (width_of (wider, ids[1]), ==, CW_MM (1200));
  g_assert_cmpint (width_of (wider, ids[2]), ==, CW_MM (1250));
  g_assert_cmpuint (cw_project_count_mark (wider, mark), ==, 2);
  g_assert_true (again == away);
  g_assert_cmpint (width_of (back, ids[1]), ==, CW_MM (1250));
}

static void
test_other_kinds_stay (void)
{
  const char *const ids[] = { "p1", "t1", NULL };
  g_autoptr (CwDocument) document = case_wall ();
  const CwProject *before = cw_document_project (document);
  g_autofree char *mark = NULL;
  g_autoptr (CwProject) after
      = cw_edit_make_mark (before, wall_of (before), ids, &mark);

  g_assert_true (after == before);
  g_assert_null (mark);
}

static void
test_common_mark (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  g_auto (GStrv) ids = NULL;
  g_autofree char *mark = NULL;
  g_autoptr (CwProject) marked = three_marked (document, &ids, &mark);
  const char *const last[] = { ids[2], NULL };
  g_autofree char *other = NULL;
  g_autoptr (CwProject) two
      = cw_edit_make_mark (marked, wall_of (marked), last, &other);

  g_assert_true (
      cw_edit_common_mark (marked, (const char *const *) ids)
      == cw_project_mark (marked, mark));
  g_assert_null (cw_edit_common_mark (two, (const char *const *) ids));
  g_assert_cmpstr (cw_project_mark (two, other)->name, ==, "W2");
}

static void
test_choose (void)
{
  const char *const one[] = { "o1", NULL };
  g_autoptr (CwDocument) document = case_wall ();
  g_auto (GStrv) ids = NULL;
  g_autofree char *mark = NULL;
  g_autoptr (CwProject) marked = three_marked (document, &ids, &mark);
  const char *const last[] = { ids[2], NULL };
  g_autoptr (CwProject) away
      = cw_edit_break_away (marked, wall_of (marked), last);
  g_auto (GStrv) all = cw_choose_all (wall_of (away));
  g_auto (GStrv) windows = cw_choose_kind (wall_of (away), one);
  g_auto (GStrv) of_mark = cw_choose_mark (wall_of (away), one);
  g_auto (GStrv) of_none = cw_choose_mark (wall_of (away), last);

  g_assert_cmpuint (g_strv_length (all), ==, 6);
  g_assert_cmpuint (g_strv_length (windows), ==, 3);
  g_assert_cmpuint (g_strv_length (of_mark), ==, 2);
  g_assert_cmpuint (g_strv_length (of_none), ==, 0);
}

/* From the schedule: it states nothing that its mark gives. */
static void
test_place (void)
{
  g_autoptr (CwDocument) document = case_wall ();
  g_auto (GStrv) ids = NULL;
  g_autofree char *mark = NULL, *made = NULL;
  g_autoptr (CwProject) marked = three_marked (document, &ids, &mark);
  g_autoptr (CwProject) placed = cw_edit_place_mark (
      marked, wall_of (marked), cw_project_mark (marked, mark),
      cw_point (CW_MM (700), CW_MM (-40)), &made);
  g_autoptr (CwProject) wider
      = with_mark_width (placed, mark, CW_MM (950));
  const CwNode *opening = cw_node_find (&placed->node, made);

  g_assert_cmpint (case_get (opening, "x"), ==, CW_MM (700));
  g_assert_cmpint (case_get (opening, "y"), ==, CW_MM (-40));
  g_assert_true (opening->type == &cw_window_type);
  g_assert_cmpint (width_of (placed, made), ==, width_of (placed, ids[0]));
  g_assert_cmpint (width_of (wider, made), ==, CW_MM (950));
  g_assert_cmpuint (cw_project_count_mark (placed, mark), ==, 4);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/marks/all-follow", test_all_follow);
  g_test_add_func ("/board/marks/break-away", test_break_away);
  g_test_add_func ("/board/marks/other-kinds-stay", test_other_kinds_stay);
  g_test_add_func ("/board/marks/common-mark", test_common_mark);
  g_test_add_func ("/board/marks/place", test_place);
  g_test_add_func ("/board/marks/choose", test_choose);
  return g_test_run ();
}

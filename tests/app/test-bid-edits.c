/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lists behind a bid grow and shrink; undo takes it back.
 */
#include "cw-bid-edits.h"
#include "cw-document.h"

static void
check_list (guint slot, const CwNodeType *type)
{
  g_autoptr (CwProject) project = cw_project_new_default (CW_UNITS_US);
  g_autoptr (CwProject) one = cw_edit_add_to_list (project, slot);
  g_autoptr (CwProject) two = cw_edit_add_to_list (one, slot);
  g_autoptr (CwProject) left = cw_edit_remove_from_list (two, slot, 0);
  const CwList *list = cw_node_list (&two->node, slot);

  g_assert_cmpuint (cw_list_length (list), ==, 2);
  g_assert_true (((CwNode *) cw_list_at (list, 0))->type == type);
  g_assert_cmpuint (cw_list_length (cw_node_list (&left->node, slot)), ==, 1);
  g_assert_true (cw_list_at (cw_node_list (&left->node, slot), 0)
                 == cw_list_at (list, 1));
  /* All the rest is shared. */
  g_assert_true (two->buildups == project->buildups);
  g_assert_true (two->bid == project->bid);
}

static void
test_lists (void)
{
  check_list (CW_PROJECT_EQUIPMENT, &cw_equipment_type);
  check_list (CW_PROJECT_OWN_LINES, &cw_own_line_type);
  check_list (CW_PROJECT_ALTERNATES, &cw_alternate_type);
}

static void
test_undo (void)
{
  g_autoptr (CwProject) project = cw_project_new_default (CW_UNITS_US);
  g_autoptr (CwDocument) document = cw_document_new (project);
  g_autoptr (CwProject) next
      = cw_edit_add_to_list (project, CW_PROJECT_OWN_LINES);

  cw_document_edit (document, next, "Add an own line", NULL);
  g_assert_true (cw_document_project (document) == next);
  cw_document_undo (document);
  g_assert_true (cw_document_project (document) == project);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/app/bid-edits/lists", test_lists);
  g_test_add_func ("/app/bid-edits/undo", test_undo);
  return g_test_run ();
}

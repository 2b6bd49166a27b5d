/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-document.h"
#include "model-cases.h"

/* Counts what a document emits. */
typedef struct
{
  guint changed, selection, saved;
} Heard;

static void
count_up (guint *counter)
{
  (*counter)++;
}

static CwDocument *
document_heard (guint n_elevations, Heard *heard)
{
  g_autoptr (CwProject) project = case_project (n_elevations, 3);
  CwDocument *document = cw_document_new (project);

  *heard = (Heard) { 0, 0, 0 };
  g_signal_connect_swapped (document, "changed", G_CALLBACK (count_up),
                            &heard->changed);
  g_signal_connect_swapped (document, "selection-changed",
                            G_CALLBACK (count_up), &heard->selection);
  g_signal_connect_swapped (document, "saved-changed", G_CALLBACK (count_up),
                            &heard->saved);
  return document;
}

static void
assert_heard (Heard *heard, guint changed, guint selection, guint saved)
{
  g_assert_cmpuint (heard->changed, ==, changed);
  g_assert_cmpuint (heard->selection, ==, selection);
  g_assert_cmpuint (heard->saved, ==, saved);
  *heard = (Heard) { 0, 0, 0 };
}

/* Moves a window of the present project to @x mm. */
static void
move (CwDocument *document, const char *id, int x, const char *merge)
{
  const CwProject *project = cw_document_project (document);
  const CwNode *window = cw_node_find (&project->node, id);
  g_autoptr (CwNode) moved = cw_node_with (window, 2, CW_MM (x));
  g_autoptr (CwProject) next
      = (CwProject *) cw_node_replace (&project->node, window, moved);

  cw_document_edit (document, next, "Move", merge);
}

static gint64
x_of (CwDocument *document, const char *id)
{
  const CwNode *window
      = cw_node_find (&cw_document_project (document)->node, id);

  return ((const CwOpening *) window)->x / CW_NM_PER_MM;
}

static void
test_undo_redo (void)
{
  Heard heard;
  g_autoptr (CwDocument) document = document_heard (2, &heard);
  const CwProject *first = cw_document_project (document);
  const CwProject *second;

  g_assert_false (cw_document_can_undo (document));
  g_assert_null (cw_document_undo_name (document));
  move (document, "e1-o1", 700, NULL);
  assert_heard (&heard, 1, 0, 1);
  second = cw_document_project (document);
  g_assert_true (second != first);
  g_assert_cmpstr (cw_document_undo_name (document), ==, "Move");
  g_assert_null (cw_document_redo_name (document));

  cw_document_undo (document);
  assert_heard (&heard, 1, 0, 1);
  g_assert_true (cw_document_project (document) == first);
  g_assert_cmpstr (cw_document_redo_name (document), ==, "Move");
  cw_document_undo (document);
  assert_heard (&heard, 0, 0, 0);

  cw_document_redo (document);
  assert_heard (&heard, 1, 0, 1);
  g_assert_true (cw_document_project (document) == second);
  cw_document_redo (document);
  assert_heard (&heard, 0, 0, 0);
}

static void
test_edit_drops_redo (void)
{
  Heard heard;
  g_autoptr (CwDocument) document = document_heard (1, &heard);
  const CwProject *first = cw_document_project (document);

  move (document, "e1-o1", 700, NULL);
  cw_document_undo (document);
  move (document, "e1-o1", 800, NULL);
  g_assert_false (cw_document_can_redo (document));
  cw_document_undo (document);
  g_assert_true (cw_document_project (document) == first);
}

static void
test_same_project_is_no_edit (void)
{
  Heard heard;
  g_autoptr (CwDocument) document = document_heard (1, &heard);

  cw_document_edit (document, cw_document_project (document), "Nothing",
                    NULL);
  assert_heard (&heard, 0, 0, 0);
  g_assert_false (cw_document_can_undo (document));
}

static void
test_merge (void)
{
  Heard heard;
  g_autoptr (CwDocument) document = document_heard (1, &heard);
  const CwProject *first = cw_document_project (document);

  for (int x = 501; x <= 600; x++)
    move (document, "e1-o1", x, "drag e1-o1");
  assert_heard (&heard, 100, 0, 1);
  cw_document_undo (document);
  g_assert_true (cw_document_project (document) == first);
  g_assert_false (cw_document_can_undo (document));
  cw_document_redo (document);
  g_assert_cmpint (x_of (document, "e1-o1"), ==, 600);
}

static void
test_merge_ends (void)
{
  Heard heard;
  g_autoptr (CwDocument) document = document_heard (1, &heard);

  move (document, "e1-o1", 510, "drag");
  cw_document_seal (document);
  move (document, "e1-o1", 520, "drag");
  move (document, "e1-o1", 530, "another");
  move (document, "e1-o1", 540, NULL);
  move (document, "e1-o1", 550, NULL);
  for (int x = 540; x >= 510; x -= 10)
    {
      cw_document_undo (document);
      g_assert_cmpint (x_of (document, "e1-o1"), ==, x);
    }
  cw_document_undo (document);
  g_assert_cmpint (x_of (document, "e1-o1"), ==, 500);
  g_assert_false (cw_document_can_undo (document));
}

/* After undo the same key starts a step of its own. */
static void
test_merge_not_over_undo (void)
{
  Heard heard;
  g_autoptr (CwDocument) document = document_heard (1, &heard);

  move (document, "e1-o1", 510, "drag");
  cw_document_seal (document);
  move (document, "e1-o1", 520, "drag");
  cw_document_undo (document);
  move (document, "e1-o1", 530, "drag");
  cw_document_undo (document);
  g_assert_cmpint (x_of (document, "e1-o1"), ==, 510);
}

static void
test_merge_back_to_start (void)
{
  Heard heard;
  g_autoptr (CwDocument) document = document_heard (1, &heard);
  const CwProject *first = cw_document_project (document);
  g_autoptr (CwProject) kept = cw_node_ref (first);

  move (document, "e1-o1", 510, "drag");
  cw_document_edit (document, kept, "Move", "drag");
  g_assert_true (cw_document_project (document) == first);
  g_assert_false (cw_document_can_undo (document));
  g_assert_true (cw_document_is_saved (document));
  move (document, "e1-o1", 520, "drag");
  cw_document_undo (document);
  g_assert_true (cw_document_project (document) == first);
}

/* Where a run of merged edits began, until it ends. */
static void
test_run_base (void)
{
  Heard heard;
  g_autoptr (CwDocument) document = document_heard (1, &heard);
  const CwProject *first = cw_document_project (document);

  g_assert_null (cw_document_run_base (document));
  move (document, "e1-o1", 510, "drag");
  move (document, "e1-o1", 520, "drag");
  g_assert_true (cw_document_run_base (document) == first);
  cw_document_seal (document);
  g_assert_null (cw_document_run_base (document));
  const CwProject *second = cw_document_project (document);
  move (document, "e1-o1", 530, "drag");
  g_assert_true (cw_document_run_base (document) == second);
  move (document, "e1-o1", 540, NULL);
  g_assert_null (cw_document_run_base (document));
  cw_document_undo (document);
  g_assert_null (cw_document_run_base (document));
}

static void
select_one (CwDocument *document, const char *id)
{
  const char *ids[] = { id, NULL };

  cw_document_select (document, ids);
}

static void
assert_selected (CwDocument *document, const char *id)
{
  const char *const *selection = cw_document_selection (document);

  g_assert_cmpstr (selection[0], ==, id);
  if (id)
    {
      g_assert_null (selection[1]);
      g_assert_true (cw_document_is_selected (document, id));
    }
}

static void
test_selection_comes_back (void)
{
  Heard heard;
  g_autoptr (CwDocument) document = document_heard (2, &heard);

  cw_document_show_elevation (document, "e1");
  select_one (document, "e1-o1");
  assert_heard (&heard, 0, 2, 0);
  move (document, "e1-o1", 700, NULL);
  assert_selected (document, "e1-o1");
  cw_document_show_elevation (document, "e2");
  select_one (document, "e2-o3");
  assert_heard (&heard, 1, 2, 1);

  cw_document_undo (document);
  assert_heard (&heard, 1, 1, 1);
  assert_selected (document, "e1-o1");
  g_assert_false (cw_document_is_selected (document, "e2-o3"));
  g_assert_cmpstr (cw_document_elevation_id (document), ==, "e1");
  cw_document_redo (document);
  assert_selected (document, "e2-o3");
  g_assert_cmpstr (cw_document_elevation_id (document), ==, "e2");
}

static void
test_select_the_same (void)
{
  Heard heard;
  g_autoptr (CwDocument) document = document_heard (1, &heard);

  select_one (document, "e1-o1");
  select_one (document, "e1-o1");
  cw_document_select (document, cw_document_selection (document));
  assert_heard (&heard, 0, 1, 0);
  cw_document_select (document, NULL);
  assert_heard (&heard, 0, 1, 0);
  assert_selected (document, NULL);
}

static void
delete (CwDocument *document, const char *id)
{
  const CwProject *project = cw_document_project (document);
  g_autoptr (CwProject) next = (CwProject *) cw_node_replace (
      &project->node, cw_node_find (&project->node, id), NULL);

  cw_document_edit (document, next, "Delete", NULL);
}

static void
test_deleted_is_not_selected (void)
{
  Heard heard;
  g_autoptr (CwDocument) document = document_heard (2, &heard);
  const char *both[] = { "e2-o2", "e1-o1", NULL };

  cw_document_show_elevation (document, "e2");
  cw_document_select (document, both);
  delete (document, "e2");
  assert_selected (document, "e1-o1");
  g_assert_null (cw_document_elevation_id (document));
  cw_document_undo (document);
  g_assert_cmpstr (cw_document_elevation_id (document), ==, "e2");
  g_assert_true (g_strv_equal (cw_document_selection (document), both));
}

static void
test_saved_mark (void)
{
  Heard heard;
  g_autoptr (CwDocument) document = document_heard (1, &heard);

  g_assert_true (cw_document_is_saved (document));
  move (document, "e1-o1", 510, "drag");
  move (document, "e1-o1", 520, "drag");
  cw_document_mark_saved (document, cw_document_project (document));
  assert_heard (&heard, 2, 0, 2);
  move (document, "e1-o1", 530, "drag");
  g_assert_false (cw_document_is_saved (document));
  cw_document_undo (document);
  g_assert_true (cw_document_is_saved (document));
  g_assert_cmpint (x_of (document, "e1-o1"), ==, 520);
  cw_document_undo (document);
  g_assert_false (cw_document_is_saved (document));
  cw_document_redo (document);
  g_assert_true (cw_document_is_saved (document));
  cw_document_mark_saved (document, NULL);
  g_assert_false (cw_document_is_saved (document));
}

/* A save that ends after a further edit marks what was written. */
static void
test_saved_while_editing (void)
{
  Heard heard;
  g_autoptr (CwDocument) document = document_heard (1, &heard);
  g_autoptr (CwProject) written = NULL;

  move (document, "e1-o1", 510, NULL);
  written = cw_node_ref (cw_document_project (document));
  move (document, "e1-o1", 520, NULL);
  cw_document_mark_saved (document, written);
  g_assert_false (cw_document_is_saved (document));
  cw_document_undo (document);
  g_assert_true (cw_document_is_saved (document));
}

static void
test_steps_are_limited (void)
{
  Heard heard;
  g_autoptr (CwDocument) document = document_heard (1, &heard);
  guint undone = 0;

  for (int i = 1; i <= CW_DOCUMENT_STEPS_MOST + 100; i++)
    move (document, "e1-o1", 500 + i, NULL);
  for (; cw_document_can_undo (document); undone++)
    cw_document_undo (document);
  g_assert_cmpuint (undone, ==, CW_DOCUMENT_STEPS_MOST);
  g_assert_cmpint (x_of (document, "e1-o1"), ==, 600);
}

/* One of the edits that people make, by chance. */
static CwProject *
random_edit (const CwProject *project)
{
  const CwNode *elevation
      = cw_list_at (project->elevations, (gsize) g_test_rand_int_range (0, 4));
  const CwList *items = cw_node_list (elevation, CW_ELEVATION_ITEMS);
  gsize n = cw_list_length (items);
  g_autofree char *id = cw_project_free_id (project, "o");
  g_autoptr (CwNode) window = case_window (id, 1, 1);
  g_autoptr (CwList) more = cw_list_append (items, window);
  g_autoptr (CwNode) by = NULL;
  const CwNode *old;

  if (n == 0 || g_test_rand_int_range (0, 3) == 0)
    {
      by = cw_node_copy (elevation);
      cw_node_set_list (by, CW_ELEVATION_ITEMS, more);
      return (CwProject *) cw_node_replace (&project->node, elevation, by);
    }
  old = cw_list_at (items, (gsize) g_test_rand_int_range (0, (int) n));
  if (g_test_rand_int_range (0, 3) > 0)
    by = cw_node_with (old, 2, g_test_rand_int ());
  return (CwProject *) cw_node_replace (&project->node, old, by);
}

/* Every edit is undone to the very same pointer, back to the first, and every
 * undo redone to the very same pointer; no node of a former project has
 * changed. */
static void
test_random_edits (void)
{
  g_autoptr (CwProject) first = case_project (4, 3);
  g_autoptr (CwProject) untouched = case_project (4, 3);
  g_autoptr (CwDocument) document = cw_document_new (first);
  g_autoptr (GPtrArray) states = g_ptr_array_new ();
  guint n = g_getenv ("CW_LONG") ? CW_DOCUMENT_STEPS_MOST : 500;

  for (guint i = 0; i < n; i++)
    {
      g_autoptr (CwProject) next
          = random_edit (cw_document_project (document));

      g_ptr_array_add (states, (gpointer) cw_document_project (document));
      cw_document_edit (document, next, "Edit", NULL);
    }
  g_ptr_array_add (states, (gpointer) cw_document_project (document));
  for (guint i = n; i-- > 0;)
    {
      cw_document_undo (document);
      g_assert_true (cw_document_project (document)
                     == g_ptr_array_index (states, i));
    }
  g_assert_true (cw_document_project (document) == first);
  g_assert_true (cw_node_equal (first, untouched));
  for (guint i = 1; i <= n; i++)
    {
      cw_document_redo (document);
      g_assert_true (cw_document_project (document)
                     == g_ptr_array_index (states, i));
    }
}

/* Undo, redo and edits in any order agree with a plain list of states. */
static void
test_random_walk (void)
{
  g_autoptr (CwProject) first = case_project (4, 3);
  g_autoptr (CwDocument) document = cw_document_new (first);
  g_autoptr (GPtrArray) states
      = g_ptr_array_new_with_free_func (cw_node_unref);
  guint at = 0;

  g_ptr_array_add (states, cw_node_ref (first));
  for (guint i = 0; i < 1000; i++)
    {
      int dice = g_test_rand_int_range (0, 10);

      if (dice < 3 && at > 0)
        {
          cw_document_undo (document);
          at--;
        }
      else if (dice < 5 && at + 1 < states->len)
        {
          cw_document_redo (document);
          at++;
        }
      else
        {
          CwProject *next = random_edit (cw_document_project (document));

          cw_document_edit (document, next, "Edit", NULL);
          g_ptr_array_set_size (states, (int) ++at);
          g_ptr_array_add (states, next);
        }
      g_assert_true (cw_document_project (document)
                     == g_ptr_array_index (states, at));
      g_assert_cmpint (cw_document_can_undo (document), ==, at > 0);
      g_assert_cmpint (cw_document_can_redo (document), ==,
                       at + 1 < states->len);
    }
}

/* Nobody else holds on to what a document held. */
static void
test_finalize (void)
{
  g_autoptr (CwProject) project = case_project (2, 2);
  CwDocument *document = cw_document_new (project);

  move (document, "e1-o1", 510, NULL);
  move (document, "e1-o1", 520, NULL);
  cw_document_undo (document);
  g_object_add_weak_pointer (G_OBJECT (document), (gpointer *) &document);
  g_object_unref (document);
  g_assert_null (document);
  g_assert_true (g_atomic_ref_count_compare (&project->node.count, 1));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/model/document/undo-redo", test_undo_redo);
  g_test_add_func ("/model/document/edit-drops-redo", test_edit_drops_redo);
  g_test_add_func ("/model/document/same-project-is-no-edit",
                   test_same_project_is_no_edit);
  g_test_add_func ("/model/document/merge", test_merge);
  g_test_add_func ("/model/document/merge-ends", test_merge_ends);
  g_test_add_func ("/model/document/merge-not-over-undo",
                   test_merge_not_over_undo);
  g_test_add_func ("/model/document/merge-back-to-start",
                   test_merge_back_to_start);
  g_test_add_func ("/model/document/run-base", test_run_base);
  g_test_add_func ("/model/document/selection-comes-back",
                   test_selection_comes_back);
  g_test_add_func ("/model/document/select-the-same", test_select_the_same);
  g_test_add_func ("/model/document/deleted-is-not-selected",
                   test_deleted_is_not_selected);
  g_test_add_func ("/model/document/saved-mark", test_saved_mark);
  g_test_add_func ("/model/document/saved-while-editing",
                   test_saved_while_editing);
  g_test_add_func ("/model/document/steps-are-limited",
                   test_steps_are_limited);
  g_test_add_func ("/model/document/random-edits", test_random_edits);
  g_test_add_func ("/model/document/random-walk", test_random_walk);
  g_test_add_func ("/model/document/finalize", test_finalize);
  return g_test_run ();
}

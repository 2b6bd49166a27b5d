/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-node.h"
#include "model-cases.h"

static void
test_new_is_default (void)
{
  for (const CwNodeType *const *type = cw_node_types; *type; type++)
    {
      g_autoptr (CwNode) node = cw_node_new (*type);

      g_assert_false (node->frozen);
      for (guint i = 0; i < (*type)->n_fields; i++)
        {
          g_assert_false (cw_node_states (node, i));
          if (cw_field_is_text (&(*type)->fields[i]))
            g_assert_cmpstr (cw_node_get_text (node, i), ==, "");
          else
            g_assert_cmpint (cw_node_get (node, i), ==,
                             (*type)->fields[i].fallback);
        }
    }
}

static void
test_always_there (void)
{
  g_autoptr (CwNode) node = cw_node_new (&cw_buildup_type);
  const CwBuildup *buildup = (const CwBuildup *) node;

  g_assert_true (buildup->studs->type == &cw_studs_type);
  g_assert_true (buildup->setting_out->type == &cw_setting_out_type);
  g_assert_cmpuint (cw_list_length (buildup->panels), ==, 1);
  g_assert_null (buildup->fastener);
  g_assert_null (buildup->sealant);
}

static void
test_set_and_unset (void)
{
  g_autoptr (CwNode) node = cw_node_new (&cw_panel_type);
  guint joint = (guint) cw_node_type_field (&cw_panel_type, "joint");
  guint name = (guint) cw_node_type_field (&cw_panel_type, "name");

  cw_node_set (node, joint, CW_MM (2));
  cw_node_set_text (node, name, "Panel");
  g_assert_cmpint (((CwPanel *) node)->joint, ==, CW_MM (2));
  g_assert_cmpstr (((CwPanel *) node)->name, ==, "Panel");
  g_assert_true (cw_node_states (node, joint) && cw_node_states (node, name));

  cw_node_unset (node, joint);
  cw_node_unset (node, name);
  g_assert_cmpint (((CwPanel *) node)->joint, ==, CW_MM (3));
  g_assert_cmpstr (((CwPanel *) node)->name, ==, "");
  g_assert_false (cw_node_states (node, joint)
                  || cw_node_states (node, name));
}

static void
test_with_leaves_the_former (void)
{
  g_autoptr (CwNode) node = case_window ("o1", 100, 200);
  guint x = (guint) cw_node_type_field (node->type, "x");
  guint mark = (guint) cw_node_type_field (node->type, "mark");
  g_autoptr (CwNode) moved = cw_node_with (node, x, CW_MM (150));
  g_autoptr (CwNode) marked = cw_node_with_text (node, mark, "w1");
  g_autoptr (CwNode) unmarked = cw_node_without (marked, mark);

  g_assert_cmpint (cw_node_get (node, x), ==, CW_MM (100));
  g_assert_cmpint (cw_node_get (moved, x), ==, CW_MM (150));
  g_assert_true (moved->frozen && marked->frozen && unmarked->frozen);
  g_assert_cmpstr (cw_node_get_text (marked, mark), ==, "w1");
  g_assert_true (cw_node_equal (unmarked, node));
}

/* Stating a default is not the same as leaving it out. */
static void
test_equal_minds_stated (void)
{
  g_autoptr (CwNode) left_out = cw_node_new (&cw_studs_type);
  g_autoptr (CwNode) stated = cw_node_new (&cw_studs_type);

  g_assert_true (cw_node_equal (left_out, stated));
  cw_node_put (stated, "first", 0);
  g_assert_false (cw_node_equal (left_out, stated));
}

static void
test_equal_minds_children (void)
{
  g_autoptr (CwProject) one = case_project (3, 2);
  g_autoptr (CwProject) same = case_project (3, 2);
  g_autoptr (CwNode) window = case_window ("e2-o1", 501, 500);
  g_autoptr (CwNode) other = cw_node_replace (
      &same->node, cw_node_find (&same->node, "e2-o1"), window);

  g_assert_true (cw_node_equal (one, same));
  g_assert_false (cw_node_equal (one, other));
  g_assert_false (cw_node_equal (one, NULL));
  g_assert_true (cw_node_equal (NULL, NULL));
}

static void
set_frozen (void)
{
  g_autoptr (CwNode) node = case_window ("o1", 0, 0);
  g_autoptr (CwNode) held = cw_node_ref (node);

  cw_node_put (held, "x", 1);
}

static void
set_in_a_list (void)
{
  CwNode *node = case_window ("o1", 0, 0);
  g_autoptr (CwList) list = cw_list_new (&node, 1);

  cw_node_put_text (node, "id", "o2");
}

static void
set_in_a_parent (void)
{
  CwNode *studs = cw_node_new (&cw_studs_type);
  g_autoptr (CwNode) buildup = cw_node_new (&cw_buildup_type);

  cw_node_set_child (buildup, CW_BUILDUP_STUDS, studs);
  cw_node_unset (studs, 0);
}

static void
put_unknown (void)
{
  g_autoptr (CwNode) node = cw_node_new (&cw_studs_type);

  cw_node_put (node, "no-such-attribute", 1);
}

static void
wrong_child (void)
{
  g_autoptr (CwNode) window = case_window ("o1", 0, 0);
  g_autoptr (CwNode) buildup = cw_node_new (&cw_buildup_type);

  cw_node_set_child (buildup, CW_BUILDUP_STUDS, window);
}

static void
test_aborts (gconstpointer data)
{
  void (*misuse) (void) = (void (*) (void)) data;

  if (g_test_subprocess ())
    {
      misuse ();
      return;
    }
  g_test_trap_subprocess (NULL, 0, 0);
  g_test_trap_assert_failed ();
}

static void
test_replace_shares_the_rest (void)
{
  g_autoptr (CwProject) before = case_project (5, 3);
  const CwNode *old = cw_node_find (&before->node, "e3-o2");
  g_autoptr (CwNode) by = cw_node_with (old, 2, CW_MM (1));
  g_autoptr (CwProject) after
      = (CwProject *) cw_node_replace (&before->node, old, by);
  const CwElevation *former = cw_list_at (before->elevations, 2);
  const CwElevation *changed = cw_list_at (after->elevations, 2);

  g_assert_true (after->node.frozen && changed->node.frozen);
  g_assert_true (cw_node_find (&after->node, "e3-o2") == by);
  g_assert_true (cw_node_find (&before->node, "e3-o2") == old);
  g_assert_true (after->buildups == before->buildups);
  g_assert_true (after->info == before->info);
  g_assert_true (changed != former && changed->outline == former->outline);
  for (gsize i = 0; i < 5; i++)
    g_assert_true ((cw_list_at (after->elevations, i)
                    == cw_list_at (before->elevations, i))
                   == (i != 2));
  for (gsize i = 0; i < 3; i++)
    g_assert_true ((cw_list_at (changed->items, i)
                    == cw_list_at (former->items, i))
                   == (i != 1));
}

static void
test_replace_removes (void)
{
  g_autoptr (CwProject) before = case_project (2, 3);
  const CwNode *old = cw_node_find (&before->node, "e2-o2");
  g_autoptr (CwProject) after
      = (CwProject *) cw_node_replace (&before->node, old, NULL);
  const CwElevation *changed = cw_list_at (after->elevations, 1);

  g_assert_null (cw_node_find (&after->node, "e2-o2"));
  g_assert_cmpuint (cw_list_length (changed->items), ==, 2);
  g_assert_nonnull (cw_node_find (&before->node, "e2-o2"));
}

static void
test_replace_single_child (void)
{
  g_autoptr (CwProject) before = case_project (1, 0);
  const CwBuildup *buildup = cw_project_buildup (before, "b1");
  g_autoptr (CwNode) price = cw_node_copy (buildup->fastener);
  g_autoptr (CwProject) priced = NULL;
  g_autoptr (CwProject) without = NULL;

  cw_node_put (price, "price", CW_DECIMAL (12));
  priced = (CwProject *) cw_node_replace (&before->node, buildup->fastener,
                                          price);
  g_assert_true (cw_project_buildup (priced, "b1")->fastener == price);
  without = (CwProject *) cw_node_replace (&priced->node, price, NULL);
  g_assert_null (cw_project_buildup (without, "b1")->fastener);
  g_assert_true (cw_project_buildup (without, "b1")->mesh == buildup->mesh);
}

static void
test_replace_nothing (void)
{
  g_autoptr (CwProject) project = case_project (2, 2);
  g_autoptr (CwNode) stranger = case_window ("o9", 0, 0);
  g_autoptr (CwNode) by = case_window ("o8", 0, 0);
  const CwNode *own = cw_node_find (&project->node, "e1-o1");
  g_autoptr (CwNode) absent
      = cw_node_replace (&project->node, stranger, by);
  g_autoptr (CwNode) same = cw_node_replace (&project->node, own, own);
  g_autoptr (CwNode) root
      = cw_node_replace (&project->node, &project->node, by);

  g_assert_true (absent == &project->node);
  g_assert_true (same == &project->node);
  g_assert_true (root == by);
}

static void
test_find (void)
{
  g_autoptr (CwProject) project = case_project (20, 5);

  g_assert_true (cw_node_find (&project->node, "e7")
                 == cw_list_at (project->elevations, 6));
  g_assert_cmpstr (
      cw_node_id (cw_node_find (&project->node, "e20-o5")), ==, "e20-o5");
  g_assert_true (cw_node_find (&project->node, "b1")->type
                 == &cw_buildup_type);
  g_assert_null (cw_node_find (&project->node, "e21"));
  g_assert_null (cw_node_find (&project->node, ""));
}

static void
test_list_edits (void)
{
  g_autoptr (CwNode) a = case_window ("a", 0, 0);
  g_autoptr (CwNode) b = case_window ("b", 0, 0);
  g_autoptr (CwNode) c = case_window ("c", 0, 0);
  g_autoptr (CwList) empty = cw_list_new (NULL, 0);
  g_autoptr (CwList) just_b = cw_list_append (empty, b);
  g_autoptr (CwList) a_b = cw_list_insert (just_b, 0, a);
  g_autoptr (CwList) a_c = cw_list_set (a_b, 1, c);
  g_autoptr (CwList) just_c = cw_list_remove (a_c, 0);

  g_assert_cmpuint (cw_list_length (empty), ==, 0);
  g_assert_true (cw_list_at (a_b, 0) == a && cw_list_at (a_b, 1) == b);
  g_assert_true (cw_list_at (a_c, 0) == a && cw_list_at (a_c, 1) == c);
  g_assert_true (cw_list_at (just_c, 0) == c);
  g_assert_cmpint (cw_list_index (a_b, b), ==, 1);
  g_assert_cmpint (cw_list_index (a_b, c), ==, -1);
  g_assert_true (a->frozen && b->frozen && c->frozen);
}

/* Twenty readers and makers of copies at once: counts must come out right.
 * With the thread sanitizer this also shows that nobody writes to a shared
 * node. */
static gpointer
read_a_lot (gpointer data)
{
  const CwProject *project = data;
  guint64 sum = 0;

  for (int i = 0; i < 200; i++)
    {
      const CwNode *old = cw_node_find (&project->node, "e3-o2");
      g_autoptr (CwNode) by = cw_node_with (old, 2, CW_MM (i));
      g_autoptr (CwNode) changed = cw_node_replace (&project->node, old, by);

      sum += cw_node_find (changed, "e3-o2") == by;
    }
  return GUINT_TO_POINTER (sum);
}

static void
test_many_threads (void)
{
  g_autoptr (CwProject) project = case_project (5, 3);
  GThread *threads[20];

  for (guint i = 0; i < G_N_ELEMENTS (threads); i++)
    threads[i] = g_thread_new ("reader", read_a_lot, project);
  for (guint i = 0; i < G_N_ELEMENTS (threads); i++)
    g_assert_cmpuint (GPOINTER_TO_UINT (g_thread_join (threads[i])), ==, 200);
  g_assert_true (g_atomic_ref_count_compare (&project->node.count, 1));
}

static void
add_misuse (const char *path, void (*misuse) (void))
{
  g_test_add_data_func (path, (gconstpointer) misuse, test_aborts);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/model/node/new-is-default", test_new_is_default);
  g_test_add_func ("/model/node/always-there", test_always_there);
  g_test_add_func ("/model/node/set-and-unset", test_set_and_unset);
  g_test_add_func ("/model/node/with-leaves-the-former",
                   test_with_leaves_the_former);
  g_test_add_func ("/model/node/equal-minds-stated", test_equal_minds_stated);
  g_test_add_func ("/model/node/equal-minds-children",
                   test_equal_minds_children);
  add_misuse ("/model/node/frozen-when-shared", set_frozen);
  add_misuse ("/model/node/frozen-in-a-list", set_in_a_list);
  add_misuse ("/model/node/frozen-in-a-parent", set_in_a_parent);
  add_misuse ("/model/node/unknown-attribute", put_unknown);
  add_misuse ("/model/node/wrong-child", wrong_child);
  g_test_add_func ("/model/node/replace-shares-the-rest",
                   test_replace_shares_the_rest);
  g_test_add_func ("/model/node/replace-removes", test_replace_removes);
  g_test_add_func ("/model/node/replace-single-child",
                   test_replace_single_child);
  g_test_add_func ("/model/node/replace-nothing", test_replace_nothing);
  g_test_add_func ("/model/node/find", test_find);
  g_test_add_func ("/model/node/list-edits", test_list_edits);
  g_test_add_func ("/model/node/many-threads", test_many_threads);
  return g_test_run ();
}

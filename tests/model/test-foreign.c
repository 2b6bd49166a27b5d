/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-foreign.h"
#include "cw-node.h"
#include "cw-project.h"

static CwForeign *
case_foreign (const char *value, guint before)
{
  CwForeign *foreign = cw_foreign_new ();

  cw_foreign_add_attribute (foreign, "x", "urn:example:x", "note", value);
  cw_foreign_add_element (foreign, before, "<x:a xmlns:x='urn:example:x'/>");
  return foreign;
}

static void
test_kept (void)
{
  g_autoptr (CwForeign) foreign = case_foreign ("v", 2);
  const CwForeignAttribute *attribute = cw_foreign_attribute (foreign, 0);
  const CwForeignElement *element = cw_foreign_element (foreign, 0);

  g_assert_cmpuint (cw_foreign_n_attributes (foreign), ==, 1);
  g_assert_cmpuint (cw_foreign_n_elements (foreign), ==, 1);
  g_assert_cmpstr (attribute->prefix, ==, "x");
  g_assert_cmpstr (attribute->uri, ==, "urn:example:x");
  g_assert_cmpstr (attribute->name, ==, "note");
  g_assert_cmpstr (attribute->value, ==, "v");
  g_assert_cmpuint (element->before, ==, 2);
  g_assert_cmpstr (element->xml, ==, "<x:a xmlns:x='urn:example:x'/>");
}

static void
test_equal (void)
{
  g_autoptr (CwForeign) a = case_foreign ("v", 2);
  g_autoptr (CwForeign) same = case_foreign ("v", 2);
  g_autoptr (CwForeign) value = case_foreign ("w", 2);
  g_autoptr (CwForeign) place = case_foreign ("v", 3);
  g_autoptr (CwForeign) more = case_foreign ("v", 2);

  cw_foreign_add_element (more, 4, "<b/>");
  g_assert_true (cw_foreign_equal (a, same));
  g_assert_false (cw_foreign_equal (a, value));
  g_assert_false (cw_foreign_equal (a, place));
  g_assert_false (cw_foreign_equal (a, more));
  g_assert_false (cw_foreign_equal (a, NULL));
  g_assert_true (cw_foreign_equal (NULL, NULL));
}

/* A changed copy carries the same foreign content; nodes that differ only in
 * it are not equal. */
static void
test_goes_with_nodes (void)
{
  g_autoptr (CwNode) node = cw_node_new (&cw_band_type);
  g_autoptr (CwNode) bare = cw_node_copy (node);
  g_autoptr (CwNode) changed = NULL;

  node->foreign = case_foreign ("v", 0);
  changed = cw_node_with (node, 2, CW_MM (5));
  g_assert_true (changed->foreign == node->foreign);
  g_assert_false (cw_node_equal (node, bare));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/model/foreign/kept", test_kept);
  g_test_add_func ("/model/foreign/equal", test_equal);
  g_test_add_func ("/model/foreign/goes-with-nodes", test_goes_with_nodes);
  return g_test_run ();
}

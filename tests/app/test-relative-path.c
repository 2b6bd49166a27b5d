/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-case-table.h"
#include "cw-relative-path.h"

/* Every row both ways: the path is as the table says, and from the folder it
 * leads to the file again. */
static void
table (void)
{
  g_autoptr (GPtrArray) cases
      = cw_case_table_load ("app/relative-paths.tsv", 3);
  for (guint i = 0; i < cases->len; i++)
    {
      const CwCase *row = cases->pdata[i];
      g_autoptr (GFile) folder = g_file_new_for_path (row->columns[0]);
      g_autoptr (GFile) file = g_file_new_for_path (row->columns[1]);
      g_autofree char *path = cw_relative_path (folder, file);
      g_autoptr (GFile) found = g_file_resolve_relative_path (folder, path);
      g_test_message ("line %u", row->line);
      g_assert_cmpstr (path, ==, row->columns[2]);
      g_assert_true (g_file_equal (found, file));
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/relative-path/table", table);
  return g_test_run ();
}

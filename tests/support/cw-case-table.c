/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-case-table.h"

#include <string.h>

static void
free_case (gpointer data)
{
  CwCase *row = data;
  g_strfreev (row->columns);
  g_free (row);
}

static CwCase *
new_case (const char *name, guint line, const char *text, guint n_columns)
{
  CwCase *row = g_new0 (CwCase, 1);
  row->line = line;
  row->columns = g_strsplit (text, "\t", -1);
  row->n_columns = g_strv_length (row->columns);
  if (row->n_columns < n_columns)
    g_error ("%s:%u: %u columns, not %u", name, line, row->n_columns,
             n_columns);
  return row;
}

GPtrArray *
cw_case_table_load (const char *name, guint n_columns)
{
  g_autofree char *path
      = g_test_build_filename (G_TEST_DIST, "data", name, NULL);
  g_autofree char *text = NULL;
  g_autoptr (GError) error = NULL;
  if (!g_file_get_contents (path, &text, NULL, &error))
    g_error ("%s", error->message);

  GPtrArray *table = g_ptr_array_new_with_free_func (free_case);
  g_auto (GStrv) lines = g_strsplit (text, "\n", -1);
  for (guint i = 0; lines[i] != NULL; i++)
    if (*lines[i] != '\0' && *lines[i] != '#')
      g_ptr_array_add (table, new_case (name, i + 1, lines[i], n_columns));
  g_assert_cmpuint (table->len, >, 0);
  return table;
}

char *
cw_case_quoted (const char *column)
{
  const char *open = "«", *close = "»";
  g_assert_true (g_str_has_prefix (column, open));
  g_assert_true (g_str_has_suffix (column, close));
  const char *start = column + strlen (open);
  return g_strndup (start, strlen (start) - strlen (close));
}

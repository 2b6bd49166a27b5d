/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "project-cases.h"

#include <string.h>

static int
compare_paths (gconstpointer a, gconstpointer b)
{
  return g_strcmp0 (*(char *const *)a, *(char *const *)b);
}

GPtrArray *
project_cases (const char *folder)
{
  g_autofree char *path
      = g_test_build_filename (G_TEST_DIST, "data", "files", folder, NULL);
  g_autoptr (GDir) dir = g_dir_open (path, 0, NULL);
  g_assert_nonnull (dir);
  GPtrArray *paths = g_ptr_array_new_with_free_func (g_free);
  const char *name;
  while ((name = g_dir_read_name (dir)))
    if (g_str_has_suffix (name, ".cladwright"))
      g_ptr_array_add (paths, g_build_filename (path, name, NULL));
  g_ptr_array_sort (paths, compare_paths);
  g_assert_cmpuint (paths->len, >, 0);
  return paths;
}

char *
project_case_beside (const char *path, const char *ending)
{
  g_autofree char *stem
      = g_strndup (path, strlen (path) - strlen (".cladwright"));
  g_autofree char *beside = g_strconcat (stem, ending, NULL);
  if (!g_file_test (beside, G_FILE_TEST_EXISTS))
    return NULL;
  return g_steal_pointer (&beside);
}

GBytes *
project_case_bytes (const char *path)
{
  char *data;
  gsize size;
  g_autoptr (GError) error = NULL;
  g_file_get_contents (path, &data, &size, &error);
  g_assert_no_error (error);
  return g_bytes_new_take (data, size);
}

gboolean
project_case_is_valid (const char *path)
{
  g_autofree char *schema = g_build_filename (
      g_getenv ("CW_SOURCE_ROOT"), "data", "schema", "project-1.rng", NULL);
  const char *arguments[]
      = { "xmllint", "--nonet", "--noout", "--relaxng", schema, path, NULL };
  int status;
  g_autoptr (GError) error = NULL;
  g_spawn_sync (NULL, (char **)arguments, NULL,
                G_SPAWN_SEARCH_PATH | G_SPAWN_STDERR_TO_DEV_NULL, NULL, NULL,
                NULL, NULL, &status, &error);
  g_assert_no_error (error);
  return g_spawn_check_wait_status (status, NULL);
}

void
project_case_assert_same (GBytes *a, GBytes *b)
{
  if (!g_bytes_equal (a, b))
    g_error ("These differ:\n%.*s\n---\n%.*s", (int)g_bytes_get_size (a),
             (const char *)g_bytes_get_data (a, NULL),
             (int)g_bytes_get_size (b),
             (const char *)g_bytes_get_data (b, NULL));
}

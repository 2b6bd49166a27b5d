/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-example.h"

#define NEST_MOST 4

/* The only project in @folder, or NULL. (transfer full) */
static char *
project_in (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;
  while (dir && (name = g_dir_read_name (dir)))
    if (g_str_has_suffix (name, ".cladwright"))
      return g_build_filename (folder, name, NULL);
  return NULL;
}

/* Upward from the program itself: the build folder lies in the tree. */
static char *
project_in_tree (void)
{
  g_autofree char *program = g_file_read_link ("/proc/self/exe", NULL);
  g_autofree char *folder = program ? g_path_get_dirname (program) : NULL;
  for (int i = 0; folder && i < NEST_MOST; i++)
    {
      g_autofree char *demo = g_build_filename (folder, "data", "demo", NULL);
      char *found = project_in (demo);
      if (found)
        return found;
      char *parent = g_path_get_dirname (folder);
      g_free (folder);
      folder = parent;
    }
  return NULL;
}

GFile *
cw_example_file (void)
{
  g_autofree char *path = project_in (CW_DATA_DIR "/demo");
  if (!path)
    path = project_in_tree ();
  return path ? g_file_new_for_path (path) : NULL;
}

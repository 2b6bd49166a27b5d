/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gstdio.h>

#include "cw-folder-remove.h"

static gboolean
remove_one (const char *path)
{
  if (g_file_test (path, G_FILE_TEST_IS_DIR)
      && !g_file_test (path, G_FILE_TEST_IS_SYMLINK))
    return cw_folder_remove (path);
  return g_unlink (path) == 0;
}

gboolean
cw_folder_remove (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;
  gboolean is_gone = TRUE;
  while (dir && (name = g_dir_read_name (dir)))
    {
      g_autofree char *path = g_build_filename (folder, name, NULL);
      is_gone = remove_one (path) && is_gone;
    }
  return g_rmdir (folder) == 0 && is_gone;
}

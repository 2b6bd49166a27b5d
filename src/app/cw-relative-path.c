/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-relative-path.h"

char *
cw_relative_path (GFile *folder, GFile *file)
{
  g_autoptr (GString) up = g_string_new (NULL);
  g_autoptr (GFile) base = g_object_ref (folder);
  while (base && g_file_has_parent (base, NULL))
    {
      g_autofree char *down = g_file_get_relative_path (base, file);
      if (down)
        return g_strconcat (up->str, down, NULL);
      g_string_append (up, "../");
      GFile *parent = g_file_get_parent (base);
      g_object_unref (base);
      base = parent;
    }
  char *path = g_file_get_path (file);
  return path ? path : g_file_get_uri (file);
}

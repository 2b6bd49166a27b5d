/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-settings.h"

#include <gio/gio.h>

#define GROUP "cladwright"

static GKeyFile *kept;

/* (transfer full) */
static char *
settings_path (void)
{
  return g_build_filename (g_get_user_config_dir (), "cladwright",
                           "settings.ini", NULL);
}

static GKeyFile *
settings (void)
{
  if (!kept)
    {
      g_autofree char *path = settings_path ();
      kept = g_key_file_new ();
      g_key_file_load_from_file (kept, path, G_KEY_FILE_KEEP_COMMENTS, NULL);
    }
  return kept;
}

static void
keep (void)
{
  g_autofree char *path = settings_path ();
  g_autofree char *folder = g_path_get_dirname (path);
  g_autoptr (GError) error = NULL;
  g_mkdir_with_parents (folder, 0700);
  if (!g_key_file_save_to_file (settings (), path, &error))
    g_debug ("Settings are not kept: %s", error->message);
}

gboolean
cw_settings_get_flag (const char *name, gboolean otherwise)
{
  g_autoptr (GError) error = NULL;
  gboolean value = g_key_file_get_boolean (settings (), GROUP, name, &error);
  return error ? otherwise : value;
}

void
cw_settings_set_flag (const char *name, gboolean value)
{
  g_key_file_set_boolean (settings (), GROUP, name, value);
  keep ();
}

char *
cw_settings_get_text (const char *name, const char *otherwise)
{
  char *value = g_key_file_get_string (settings (), GROUP, name, NULL);
  return value ? value : g_strdup (otherwise);
}

void
cw_settings_set_text (const char *name, const char *value)
{
  g_key_file_set_string (settings (), GROUP, name, value);
  keep ();
}

void
cw_settings_reload (void)
{
  g_clear_pointer (&kept, g_key_file_unref);
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is remembered from one start to the next.
 */
#include "cw-settings.h"

#include <glib/gstdio.h>

static void
nothing_said_yet (void)
{
  g_autofree char *text = cw_settings_get_text ("look", "system");
  g_assert_true (cw_settings_get_flag ("show-panels", TRUE));
  g_assert_false (cw_settings_get_flag ("show-panels", FALSE));
  g_assert_cmpstr (text, ==, "system");
}

static void
kept_over_a_start (void)
{
  cw_settings_set_flag ("show-panels", FALSE);
  cw_settings_set_flag ("show-mesh", TRUE);
  cw_settings_set_text ("look", "dark");
  cw_settings_reload ();
  g_autofree char *text = cw_settings_get_text ("look", "system");
  g_assert_false (cw_settings_get_flag ("show-panels", TRUE));
  g_assert_true (cw_settings_get_flag ("show-mesh", FALSE));
  g_assert_cmpstr (text, ==, "dark");
}

/* A file that is none, and a folder that takes none, stop nobody. */
static void
goes_on_without_a_file (void)
{
  g_autofree char *folder
      = g_build_filename (g_get_user_config_dir (), "cladwright", NULL);
  g_autofree char *path = g_build_filename (folder, "settings.ini", NULL);
  g_mkdir_with_parents (folder, 0700);
  g_assert_true (g_file_set_contents (path, "\xff[[nonsense", -1, NULL));
  cw_settings_reload ();
  g_assert_true (cw_settings_get_flag ("show-panels", TRUE));
  g_remove (path);
  g_assert_cmpint (g_mkdir (path, 0700), ==, 0);
  cw_settings_set_flag ("show-panels", FALSE);
  g_assert_false (cw_settings_get_flag ("show-panels", TRUE));
  g_rmdir (path);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/settings/nothing-said-yet", nothing_said_yet);
  g_test_add_func ("/settings/kept-over-a-start", kept_over_a_start);
  g_test_add_func ("/settings/goes-on-without-a-file",
                   goes_on_without_a_file);
  return g_test_run ();
}

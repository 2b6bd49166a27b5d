/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "takeoff-run.h"

#include "cw-folder-remove.h"

char *
takeoff_folder_new (void)
{
  g_autoptr (GError) error = NULL;
  char *folder = g_dir_make_tmp ("takeoff-XXXXXX", &error);
  g_assert_no_error (error);
  return folder;
}

void
takeoff_folder_free (char *folder)
{
  g_assert_true (cw_folder_remove (folder));
  g_free (folder);
}

char *
takeoff_data (const char *name)
{
  return g_test_build_filename (G_TEST_DIST, "data", name, NULL);
}

char *
takeoff_copy (const char *folder, const char *data, const char *name)
{
  g_autofree char *from = takeoff_data (data);
  char *to = g_build_filename (folder, name, NULL);
  g_autofree char *content = NULL;
  gsize size;
  g_autoptr (GError) error = NULL;
  g_file_get_contents (from, &content, &size, &error);
  g_assert_no_error (error);
  g_file_set_contents (to, content, (gssize)size, &error);
  g_assert_no_error (error);
  return to;
}

static GSubprocessLauncher *
new_launcher (const char *folder, const char *const *environment)
{
  GSubprocessLauncher *launcher = g_subprocess_launcher_new (
      G_SUBPROCESS_FLAGS_STDOUT_PIPE | G_SUBPROCESS_FLAGS_STDERR_PIPE);
  g_subprocess_launcher_set_cwd (launcher, folder);
  g_subprocess_launcher_unsetenv (launcher, "DISPLAY");
  g_subprocess_launcher_unsetenv (launcher, "WAYLAND_DISPLAY");
  for (; environment && *environment; environment++)
    {
      g_auto (GStrv) parts = g_strsplit (*environment, "=", 2);
      g_subprocess_launcher_setenv (launcher, parts[0], parts[1], TRUE);
    }
  return launcher;
}

static GStrv
full_command (const char *const *arguments)
{
  g_autoptr (GStrvBuilder) command = g_strv_builder_new ();
  g_autofree char *program
      = g_build_filename (g_getenv ("CW_BUILD_ROOT"), "src", "batch",
                          "cladwright-takeoff", NULL);
  g_strv_builder_add (command, program);
  g_strv_builder_addv (command, (const char **)arguments);
  return g_strv_builder_end (command);
}

/* The bytes with a nought behind, which GBytes does not promise. */
static char *
text_of (GBytes *bytes)
{
  gsize size;
  const char *data = g_bytes_get_data (bytes, &size);
  return g_strndup (size > 0 ? data : "", size);
}

TakeoffRun *
takeoff_run (const char *folder, const char *const *environment,
             const char *const *arguments)
{
  g_autoptr (GSubprocessLauncher) launcher
      = new_launcher (folder, environment);
  g_auto (GStrv) command = full_command (arguments);
  g_autoptr (GError) error = NULL;
  g_autoptr (GSubprocess) process = g_subprocess_launcher_spawnv (
      launcher, (const char *const *)command, &error);
  g_assert_no_error (error);
  g_autoptr (GBytes) out = NULL;
  g_autoptr (GBytes) err = NULL;
  g_subprocess_communicate (process, NULL, NULL, &out, &err, &error);
  g_assert_no_error (error);
  g_assert_true (g_subprocess_get_if_exited (process));

  TakeoffRun *run = g_new (TakeoffRun, 1);
  run->status = g_subprocess_get_exit_status (process);
  run->out = text_of (out);
  run->err = text_of (err);
  return run;
}

void
takeoff_run_free (TakeoffRun *run)
{
  g_free (run->out);
  g_free (run->err);
  g_free (run);
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The screen, the window manager and the program of a desk, and its end.
 */
#include <glib/gstdio.h>
#include <signal.h>
#include <string.h>
#include <sys/prctl.h>

#include "cw-desk-private.h"
#include "cw-folder-remove.h"

#define PATIENCE_SECONDS 20

static gboolean
has_tools (void)
{
  const char *const tools[]
      = { "Xvfb", "openbox", "xdotool", "import",
          "dbus-run-session" };
  for (guint i = 0; i < G_N_ELEMENTS (tools); i++)
    {
      g_autofree char *path = g_find_program_in_path (tools[i]);
      if (path)
        continue;
      g_autofree char *message = g_strdup_printf ("there is no %s", tools[i]);
      g_test_skip (message);
      return FALSE;
    }
  return TRUE;
}

static void
write_settings (const CwDesk *desk, const char *program, const char *settings)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *folder = g_build_filename (desk->home, program, NULL);
  g_autofree char *path = g_build_filename (folder, "settings.ini", NULL);
  g_assert_cmpint (g_mkdir_with_parents (folder, 0700), ==, 0);
  g_file_set_contents (path, settings, -1, &error);
  g_assert_no_error (error);
}

/* A home of the desk's own: no settings of the user's, nothing that blinks or
 * glides, which would never look still, and no tour, as after the first day. */
static void
settle_in (CwDesk *desk)
{
  desk->home = g_build_filename (desk->folder, "home", NULL);
  write_settings (desk, "gtk-4.0",
                  "[Settings]\ngtk-cursor-blink=false\n"
                  "gtk-enable-animations=false\n");
  write_settings (desk, "cladwright", "[cladwright]\ntour-seen=true\n");
}

static void
at_home (GSubprocessLauncher *launcher, const CwDesk *desk)
{
  const char *const homes[] = { "HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME",
                                "XDG_CACHE_HOME", "XDG_STATE_HOME",
                                "XDG_RUNTIME_DIR" };
  for (guint i = 0; i < G_N_ELEMENTS (homes); i++)
    g_subprocess_launcher_setenv (launcher, homes[i], desk->home, TRUE);
  /* The system's own data, which a sealed test hides: schemas, icons, types. */
  g_subprocess_launcher_setenv (launcher, "XDG_DATA_DIRS",
                                "/usr/local/share:/usr/share", TRUE);
}

/* A test that fails ends at once; nothing of its desk may outlive it. */
static void
die_with_parent (gpointer data)
{
  prctl (PR_SET_PDEATHSIG, SIGTERM);
}

/* What a test of its own sets for its process holds for the program too,
 * but a warning of the toolkit's about a bare screen must not end it. */
static GSubprocess *
launch (CwDesk *desk, GSubprocessFlags flags, const char *const *argv)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GSubprocessLauncher) launcher
      = g_subprocess_launcher_new (flags);
  if (desk->display)
    g_subprocess_launcher_setenv (launcher, "DISPLAY", desk->display, TRUE);
  g_subprocess_launcher_set_child_setup (launcher, die_with_parent, NULL,
                                         NULL);
  at_home (launcher, desk);
  g_subprocess_launcher_setenv (launcher, "GDK_BACKEND", "x11", TRUE);
  g_subprocess_launcher_unsetenv (launcher, "WAYLAND_DISPLAY");
  g_subprocess_launcher_unsetenv (launcher, "G_DEBUG");
  g_subprocess_launcher_setenv (launcher, "GTK_A11Y", "none", TRUE);
  GSubprocess *process
      = g_subprocess_launcher_spawnv (launcher, argv, &error);
  g_assert_no_error (error);
  return process;
}

/* Xvfb writes the number of the free display that it took. */
static void
start_screen (CwDesk *desk, int width, int height)
{
  g_autofree char *size = g_strdup_printf ("%dx%dx24", width, height);
  const char *const argv[]
      = { "Xvfb", "-displayfd", "1", "-screen", "0", size, "-nolisten",
          "tcp", NULL };
  char number[16] = "";
  desk->screen = launch (desk,
                         G_SUBPROCESS_FLAGS_STDOUT_PIPE
                             | G_SUBPROCESS_FLAGS_STDERR_SILENCE,
                         argv);
  GInputStream *out = g_subprocess_get_stdout_pipe (desk->screen);
  g_assert_cmpint (
      g_input_stream_read (out, number, sizeof number - 1, NULL, NULL), >, 0);
  g_strchomp (number);
  desk->display = g_strconcat (":", number, NULL);
}

CwDesk *
cw_desk_new (int width, int height)
{
  if (!has_tools ())
    return NULL;
  g_autoptr (GError) error = NULL;
  CwDesk *desk = g_new0 (CwDesk, 1);
  desk->folder = g_dir_make_tmp ("cladwright-desk-XXXXXX", &error);
  g_assert_no_error (error);
  settle_in (desk);
  start_screen (desk, width, height);
  const char *const manager[] = { "openbox", "--sm-disable", NULL };
  desk->manager = launch (desk,
                          G_SUBPROCESS_FLAGS_STDOUT_SILENCE
                              | G_SUBPROCESS_FLAGS_STDERR_SILENCE,
                          manager);
  return desk;
}

static void
end_process (GSubprocess **process)
{
  if (*process == NULL)
    return;
  g_subprocess_send_signal (*process, SIGTERM);
  g_subprocess_wait (*process, NULL, NULL);
  g_clear_object (process);
}

void
cw_desk_free (CwDesk *desk)
{
  if (desk == NULL)
    return;
  end_process (&desk->program);
  end_process (&desk->manager);
  end_process (&desk->screen);
  cw_folder_remove (desk->folder);
  g_free (desk->folder);
  g_free (desk->home);
  g_free (desk->display);
  g_free (desk);
}

const char *
cw_desk_folder (const CwDesk *desk)
{
  return desk->folder;
}

/* On a bus of its own: a program of the same name on the user's must not
 * answer. */
void
cw_desk_start (CwDesk *desk, const char *const *argv, const char *title)
{
  g_autoptr (GPtrArray) all = g_ptr_array_new ();
  g_ptr_array_add (all, (gpointer) "dbus-run-session");
  g_ptr_array_add (all, (gpointer) "--");
  for (guint i = 0; argv[i]; i++)
    g_ptr_array_add (all, (gpointer)argv[i]);
  g_ptr_array_add (all, NULL);
  end_process (&desk->program);
  desk->program = launch (desk,
                          G_SUBPROCESS_FLAGS_STDOUT_SILENCE
                              | G_SUBPROCESS_FLAGS_STDERR_SILENCE,
                          (const char *const *)all->pdata);
  cw_desk_await_window (desk, title);
}

gboolean
cw_desk_program_runs (const CwDesk *desk)
{
  return desk->program && g_subprocess_get_identifier (desk->program);
}

char *
cw_desk_run (CwDesk *desk, gboolean must, const char *const *argv)
{
  g_autoptr (GError) error = NULL;
  char *out = NULL;
  g_autoptr (GSubprocess) process = launch (
      desk,
      G_SUBPROCESS_FLAGS_STDOUT_PIPE | G_SUBPROCESS_FLAGS_STDERR_SILENCE,
      argv);
  g_subprocess_communicate_utf8 (process, NULL, NULL, &out, NULL, &error);
  g_assert_no_error (error);
  if (!g_subprocess_get_successful (process))
    {
      if (must)
        g_error ("%s %s failed", argv[0], argv[1]);
      g_clear_pointer (&out, g_free);
    }
  return out;
}

/* The newest window of that title, or NULL. */
static char *
find_window (CwDesk *desk, const char *title)
{
  const char *const argv[]
      = { "xdotool", "search", "--onlyvisible", "--name", title, NULL };
  g_autofree char *out = cw_desk_run (desk, FALSE, argv);
  if (out == NULL || *out == '\0')
    return NULL;
  g_strchomp (out);
  const char *last = strrchr (out, '\n');
  return g_strdup (last ? last + 1 : out);
}

static char *
await (CwDesk *desk, const char *title, gboolean there)
{
  const gint64 end
      = g_get_monotonic_time () + PATIENCE_SECONDS * G_USEC_PER_SEC;
  do
    {
      char *window = find_window (desk, title);
      if ((window != NULL) == there)
        return window;
      g_free (window);
      g_usleep (50000);
    }
  while (g_get_monotonic_time () < end);
  cw_desk_keep_picture (desk, "given-up");
  g_error (there ? "no window “%s” came" : "the window “%s” stays", title);
}

void
cw_desk_await_window (CwDesk *desk, const char *title)
{
  g_autofree char *window = await (desk, title, TRUE);
  const char *const argv[]
      = { "xdotool", "windowactivate", "--sync", window, NULL };
  g_free (cw_desk_run (desk, FALSE, argv));
}

void
cw_desk_await_no_window (CwDesk *desk, const char *title)
{
  g_free (await (desk, title, FALSE));
}

void
cw_desk_await_file (CwDesk *desk, const char *path)
{
  GStatBuf info = { .st_size = 0 };
  goffset former = -1;
  for (int i = 0; i < PATIENCE_SECONDS * 10; i++)
    {
      if (g_stat (path, &info) == 0 && info.st_size > 0
          && info.st_size == former)
        return;
      former = info.st_size;
      g_usleep (100000);
    }
  cw_desk_keep_picture (desk, "given-up");
  g_error ("%s was not written", path);
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Buildups through the real window, by the keyboard alone: one is taken from
 * the library, that is undone and done again, and it is written to a file and
 * taken from it. After each step the project is saved, and its file must have
 * it.
 */
#include <gio/gio.h>

#include "cw-buildup-library.h"
#include "cw-desk.h"

#define PATIENCE_MS 20000
#define STEP_MS 200

typedef struct
{
  CwDesk *desk;
  char *project, *buildup;
} Job;

static void
copy (const char *from, const char *to)
{
  g_autofree char *path = g_build_filename (g_getenv ("CW_SOURCE_ROOT"),
                                            "data", "demo", from, NULL);
  g_autoptr (GFile) source = g_file_new_for_path (path);
  g_autoptr (GFile) target = g_file_new_for_path (to);
  g_autoptr (GError) error = NULL;
  g_file_copy (source, target, G_FILE_COPY_NONE, NULL, NULL, NULL, &error);
  g_assert_no_error (error);
}

static void
start (Job *job)
{
  g_autofree char *program = g_build_filename (
      g_getenv ("CW_BUILD_ROOT"), "src", "app", "cladwright", NULL);
  const char *folder = cw_desk_folder (job->desk);
  job->project = g_build_filename (folder, "house.cladwright", NULL);
  job->buildup = g_build_filename (folder, "wall.cladwright", NULL);
  copy ("fennel-house.cladwright", job->project);
  const char *const argv[] = { program, job->project, NULL };
  cw_desk_start (job->desk, argv, "house");
}

static void
see (Job *job, const char *picture)
{
  cairo_surface_destroy (cw_desk_look (job->desk));
  cw_desk_keep_picture (job->desk, picture);
}

static void
keys (Job *job, const char *const *chords)
{
  for (; *chords; chords++)
    cw_desk_key (job->desk, *chords);
}

#define KEYS(job, ...) keys (job, (const char *const[]){ __VA_ARGS__, NULL })

/* The keyboard stands on the button that adds. */
static void
open_buildups (Job *job)
{
  cw_desk_key (job->desk, "ctrl+b");
  cw_desk_await_window (job->desk, "Buildups");
  see (job, "1-buildups");
}

static void
close_buildups (Job *job)
{
  cw_desk_key (job->desk, "ctrl+w");
  cw_desk_await_no_window (job->desk, "Buildups");
  cw_desk_await_window (job->desk, "house");
}

/* Saves, and waits until the file has @n buildups, the first with that
 * name. */
static void
assert_saved (Job *job, guint n, const char *name)
{
  g_autoptr (GFile) file = g_file_new_for_path (job->project);
  see (job, "saving");
  cw_desk_key (job->desk, "ctrl+s");
  for (int waited = 0; waited < PATIENCE_MS; waited += STEP_MS)
    {
      g_usleep (STEP_MS * 1000);
      g_autoptr (CwList) there = cw_buildups_load (file, NULL, NULL);
      if (there && cw_list_length (there) == n
          && g_str_equal (((CwBuildup *) cw_list_at (there, 0))->name, name))
        return;
    }
  g_error ("The project never had %u buildups, the first one %s", n, name);
}

static void
take_from_library (Job *job)
{
  open_buildups (job);
  KEYS (job, "Return");
  see (job, "2-menu");
  KEYS (job, "Return");
  cw_desk_await_window (job->desk, "Buildups of the library");
  see (job, "3-library");
  KEYS (job, "Return");
  cw_desk_await_no_window (job->desk, "Buildups of the library");
  cw_desk_await_window (job->desk, "Buildups");
  see (job, "4-taken");
  close_buildups (job);
}

static void
write_one (Job *job)
{
  open_buildups (job);
  KEYS (job, "Tab", "Return");
  see (job, "5-menu");
  KEYS (job, "Return");
  cw_desk_await_window (job->desk, "Write the buildup");
  KEYS (job, "ctrl+a");
  cw_desk_type (job->desk, job->buildup);
  KEYS (job, "Return");
  cw_desk_await_file (job->desk, job->buildup);
  cw_desk_await_no_window (job->desk, "Write the buildup");
  cw_desk_await_window (job->desk, "Buildups");
  close_buildups (job);
}

/* A slash opens the file chooser's place for a typed path. */
static void
take_from_file (Job *job)
{
  open_buildups (job);
  KEYS (job, "Return");
  see (job, "6-menu");
  KEYS (job, "Down", "Down", "Return");
  cw_desk_await_window (job->desk, "Take buildups");
  KEYS (job, "slash");
  cw_desk_type (job->desk, job->buildup + 1);
  KEYS (job, "Return");
  cw_desk_await_no_window (job->desk, "Take buildups");
  cw_desk_await_window (job->desk, "Buildups");
  see (job, "7-taken");
  close_buildups (job);
}

static void
test_buildups (void)
{
  static const char name[] = "50 mm panel on wood studs";
  g_autoptr (CwDesk) desk = cw_desk_new (1600, 1000);
  if (desk == NULL)
    return;
  Job job = { .desk = desk };
  start (&job);
  take_from_library (&job);
  assert_saved (&job, 2, name);
  cw_desk_key (desk, "ctrl+z");
  assert_saved (&job, 1, name);
  cw_desk_key (desk, "ctrl+shift+z");
  assert_saved (&job, 2, name);
  write_one (&job);
  take_from_file (&job);
  assert_saved (&job, 3, name);
  g_assert_true (cw_desk_program_runs (desk));
  g_free (job.project);
  g_free (job.buildup);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/whole/buildups", test_buildups);
  return g_test_run ();
}

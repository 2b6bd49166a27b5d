/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Opening and saving on a real disk: what stays, what is refused, and that
 * the file is never less than whole.
 */
#include <errno.h>
#include <glib/gstdio.h>
#include <signal.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include "cw-folder-remove.h"
#include "project-cases.h"

typedef struct
{
  char *folder;
  char *path;
  GFile *file;
  CwProject *project;
  CwProject *other; /* the same with another name */
} Fixture;

static CwProject *
project_named (const CwProject *project, const char *name)
{
  g_autoptr (CwNode) info = cw_node_with_text (project->info, 0, name);
  return (CwProject *)cw_node_replace (&project->node, project->info, info);
}

static void
set_up (Fixture *fixture, gconstpointer data)
{
  g_autoptr (GError) error = NULL;
  fixture->folder = g_dir_make_tmp ("cladwright-save-XXXXXX", &error);
  g_assert_no_error (error);
  fixture->path = g_build_filename (fixture->folder, "house.cladwright", NULL);
  fixture->file = g_file_new_for_path (fixture->path);
  g_autoptr (CwProject) plain = cw_project_new_default (CW_UNITS_METRIC);
  fixture->project = project_named (plain, "first");
  fixture->other = project_named (plain, "second");
}

static void
tear_down (Fixture *fixture, gconstpointer data)
{
  g_assert_true (cw_folder_remove (fixture->folder));
  g_free (fixture->folder);
  g_free (fixture->path);
  g_object_unref (fixture->file);
  cw_node_unref (fixture->project);
  cw_node_unref (fixture->other);
}

static void
save (const CwProject *project, GFile *file, char **etag)
{
  g_autoptr (GError) error = NULL;
  g_assert_true (cw_project_save (project, file, etag, &error));
  g_assert_no_error (error);
}

static void
assert_refused (const CwProject *project, GFile *file, char **etag,
                CwFileError code, const char *part)
{
  g_autoptr (GError) error = NULL;
  g_assert_false (cw_project_save (project, file, etag, &error));
  g_assert_error (error, CW_FILE_ERROR, (int)code);
  if (strstr (error->message, part) == NULL)
    g_error ("“%s” does not say “%s”", error->message, part);
}

static void
assert_holds (const char *path, const CwProject *project)
{
  g_autoptr (GBytes) expected = cw_project_to_xml (project);
  g_autoptr (GBytes) bytes = project_case_bytes (path);
  project_case_assert_same (bytes, expected);
}

static int
compare_names (gconstpointer a, gconstpointer b)
{
  return g_strcmp0 (*(char *const *)a, *(char *const *)b);
}

/* Nothing but the named files, in order. */
static void
assert_folder (const char *folder, const char *names)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  g_autoptr (GPtrArray) found = g_ptr_array_new_with_free_func (g_free);
  const char *name;
  while ((name = g_dir_read_name (dir)))
    g_ptr_array_add (found, g_strdup (name));
  g_ptr_array_sort (found, compare_names);
  g_ptr_array_add (found, NULL);
  g_autofree char *joined = g_strjoinv (" ", (char **)found->pdata);
  g_assert_cmpstr (joined, ==, names);
}

static void
test_new_file (Fixture *fixture, gconstpointer data)
{
  g_autofree char *etag = NULL;
  save (fixture->project, fixture->file, &etag);
  g_assert_nonnull (etag);
  assert_holds (fixture->path, fixture->project);
  assert_folder (fixture->folder, "house.cladwright");

  g_autofree char *loaded_etag = NULL;
  g_autoptr (GError) error = NULL;
  g_autoptr (CwProject) loaded
      = cw_project_load (fixture->file, &loaded_etag, &error);
  g_assert_no_error (error);
  g_assert_true (cw_node_equal (loaded, fixture->project));
  g_assert_cmpstr (loaded_etag, ==, etag);
}

static void
test_backup (Fixture *fixture, gconstpointer data)
{
  g_autofree char *etag = NULL;
  g_autofree char *backup = g_strconcat (fixture->path, "~", NULL);
  save (fixture->project, fixture->file, &etag);
  save (fixture->other, fixture->file, &etag);
  assert_holds (fixture->path, fixture->other);
  assert_holds (backup, fixture->project);
  save (fixture->project, fixture->file, &etag);
  assert_holds (backup, fixture->other);
  assert_folder (fixture->folder, "house.cladwright house.cladwright~");
}

static void
test_same_bytes_twice (Fixture *fixture, gconstpointer data)
{
  save (fixture->project, fixture->file, NULL);
  g_autoptr (GBytes) first = project_case_bytes (fixture->path);
  g_autoptr (CwProject) loaded = cw_project_load (fixture->file, NULL, NULL);
  save (loaded, fixture->file, NULL);
  g_autoptr (GBytes) second = project_case_bytes (fixture->path);
  project_case_assert_same (first, second);
}

static void
test_changed_outside (Fixture *fixture, gconstpointer data)
{
  g_autofree char *etag = NULL;
  save (fixture->project, fixture->file, &etag);
  g_autofree char *former = g_strdup (etag);
  g_assert_true (
      g_file_set_contents (fixture->path, "another's work", -1, NULL));

  assert_refused (fixture->other, fixture->file, &etag, CW_FILE_ERROR_CHANGED,
                  "another program has changed the file");
  g_assert_cmpstr (etag, ==, former);
  g_autoptr (GBytes) bytes = project_case_bytes (fixture->path);
  g_assert_cmpmem (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes),
                   "another's work", strlen ("another's work"));
  assert_folder (fixture->folder, "house.cladwright");

  /* Without a tag it is the user's word that it may be replaced. */
  save (fixture->other, fixture->file, NULL);
  assert_holds (fixture->path, fixture->other);
}

static void
test_deleted_outside (Fixture *fixture, gconstpointer data)
{
  g_autofree char *etag = NULL;
  save (fixture->project, fixture->file, &etag);
  g_assert_cmpint (g_unlink (fixture->path), ==, 0);
  save (fixture->other, fixture->file, &etag);
  assert_holds (fixture->path, fixture->other);
}

static void
test_link_is_followed (Fixture *fixture, gconstpointer data)
{
  g_autofree char *inner = g_build_filename (fixture->folder, "store", NULL);
  g_autofree char *target = g_build_filename (inner, "real.cladwright", NULL);
  g_autofree char *link = g_build_filename (fixture->folder, "link", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (link);
  g_assert_cmpint (g_mkdir (inner, 0700), ==, 0);
  g_assert_cmpint (symlink ("store/real.cladwright", link), ==, 0);

  /* To where nothing is yet, then to what is there. */
  save (fixture->project, file, NULL);
  assert_holds (target, fixture->project);
  save (fixture->other, file, NULL);
  assert_holds (target, fixture->other);
  g_assert_true (g_file_test (link, G_FILE_TEST_IS_SYMLINK));
  assert_folder (inner, "real.cladwright real.cladwright~");
}

static void
test_link_to_itself (Fixture *fixture, gconstpointer data)
{
  g_assert_cmpint (symlink ("house.cladwright", fixture->path), ==, 0);
  assert_refused (fixture->project, fixture->file, NULL, CW_FILE_ERROR_WRITE,
                  "Following the link");
}

static void
test_rights_are_kept (Fixture *fixture, gconstpointer data)
{
  struct stat info;
  save (fixture->project, fixture->file, NULL);
  g_assert_cmpint (g_chmod (fixture->path, 0666), ==, 0);
  save (fixture->other, fixture->file, NULL);
  g_assert_cmpint (stat (fixture->path, &info), ==, 0);
  g_assert_cmpuint (info.st_mode & 0777, ==, 0666);
}

static void
test_no_folder (Fixture *fixture, gconstpointer data)
{
  g_autofree char *path
      = g_build_filename (fixture->folder, "gone", "house", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  assert_refused (fixture->project, file, NULL, CW_FILE_ERROR_WRITE, path);
}

static void
test_folder_in_the_way (Fixture *fixture, gconstpointer data)
{
  g_assert_cmpint (g_mkdir (fixture->path, 0700), ==, 0);
  assert_refused (fixture->project, fixture->file, NULL, CW_FILE_ERROR_WRITE,
                  "no regular file");
}

static void
test_backup_fails (Fixture *fixture, gconstpointer data)
{
  g_autofree char *backup = g_strconcat (fixture->path, "~", NULL);
  g_autofree char *inner = g_build_filename (backup, "kept", NULL);
  save (fixture->project, fixture->file, NULL);
  g_assert_cmpint (g_mkdir (backup, 0700), ==, 0);
  g_assert_cmpint (g_mkdir (inner, 0700), ==, 0);
  assert_refused (fixture->other, fixture->file, NULL, CW_FILE_ERROR_WRITE,
                  "Writing the backup");
  assert_holds (fixture->path, fixture->project);
}

/* No room: writes fail beyond a limit, as on a full disk. */
static void
test_no_room (Fixture *fixture, gconstpointer data)
{
  struct rlimit former, small = { 0 };
  save (fixture->project, fixture->file, NULL);
  signal (SIGXFSZ, SIG_IGN);
  g_assert_cmpint (getrlimit (RLIMIT_FSIZE, &former), ==, 0);
  small = former;
  small.rlim_cur = 200;
  g_assert_cmpint (setrlimit (RLIMIT_FSIZE, &small), ==, 0);
  g_autoptr (GError) error = NULL;
  gboolean is_saved
      = cw_project_save (fixture->other, fixture->file, NULL, &error);
  g_assert_cmpint (setrlimit (RLIMIT_FSIZE, &former), ==, 0);
  g_assert_false (is_saved);
  g_assert_error (error, CW_FILE_ERROR, CW_FILE_ERROR_WRITE);
  assert_holds (fixture->path, fixture->project);
  assert_folder (fixture->folder, "house.cladwright");
}

/* What could not be opened again is not written. */
static void
test_senseless_project (Fixture *fixture, gconstpointer data)
{
  save (fixture->project, fixture->file, NULL);
  g_autoptr (CwNode) elevation = cw_node_new (&cw_elevation_type);
  cw_node_put_text (elevation, "id", "e1");
  cw_node_put_text (elevation, "sheet", "s1");
  g_autoptr (CwNode) project = cw_node_copy (&fixture->project->node);
  g_autoptr (CwList) list = cw_list_new (&elevation, 1);
  cw_node_set_list (project, CW_PROJECT_ELEVATIONS, list);
  assert_refused ((CwProject *)project, fixture->file, NULL,
                  CW_FILE_ERROR_SENSE, "has sheet=\"s1\"");
  assert_holds (fixture->path, fixture->project);
}

static void
assert_not_loaded (GFile *file, CwFileError code, const char *part)
{
  g_autoptr (GError) error = NULL;
  char *etag = NULL;
  g_assert_null (cw_project_load (file, &etag, &error));
  g_assert_error (error, CW_FILE_ERROR, (int)code);
  g_assert_null (etag);
  if (strstr (error->message, part) == NULL)
    g_error ("“%s” does not say “%s”", error->message, part);
}

static void
test_load_refusals (Fixture *fixture, gconstpointer data)
{
  assert_not_loaded (fixture->file, CW_FILE_ERROR_READ, fixture->path);
  g_autoptr (GFile) folder = g_file_new_for_path (fixture->folder);
  assert_not_loaded (folder, CW_FILE_ERROR_READ, "no regular file");

  /* Nobody ever writes to this pipe: opening it must not wait. */
  g_autofree char *pipe = g_build_filename (fixture->folder, "pipe", NULL);
  g_autoptr (GFile) pipe_file = g_file_new_for_path (pipe);
  g_assert_cmpint (mkfifo (pipe, 0600), ==, 0);
  assert_not_loaded (pipe_file, CW_FILE_ERROR_READ, "no regular file");

  g_assert_true (g_file_set_contents (fixture->path, "<project/>", -1, NULL));
  assert_not_loaded (fixture->file, CW_FILE_ERROR_GRAMMAR, "Line 1");
  g_assert_cmpint (truncate (fixture->path, CW_PROJECT_FILE_MOST + 1), ==, 0);
  assert_not_loaded (fixture->file, CW_FILE_ERROR_TOO_LARGE, "larger than");
}

#define ADD(path, test)                                                        \
  g_test_add ("/project-save/" path, Fixture, NULL, set_up, test, tear_down)

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  ADD ("new-file", test_new_file);
  ADD ("backup", test_backup);
  ADD ("same-bytes-twice", test_same_bytes_twice);
  ADD ("changed-outside", test_changed_outside);
  ADD ("deleted-outside", test_deleted_outside);
  ADD ("link", test_link_is_followed);
  ADD ("link/to-itself", test_link_to_itself);
  ADD ("rights", test_rights_are_kept);
  ADD ("no-folder", test_no_folder);
  ADD ("folder-in-the-way", test_folder_in_the_way);
  ADD ("backup-fails", test_backup_fails);
  ADD ("no-room", test_no_room);
  ADD ("senseless-project", test_senseless_project);
  ADD ("load/refusals", test_load_refusals);
  return g_test_run ();
}

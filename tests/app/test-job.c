/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <gio/gio.h>

#include "app-cases.h"
#include "cw-project-file.h"

typedef struct
{
  GFile *folder, *file;
  CwJob *job;
} Desk;

static void
lay (Desk *desk, gconstpointer data)
{
  g_autoptr (GError) error = NULL;
  desk->folder = case_folder ();
  desk->file = case_copy_demo (desk->folder);
  desk->job = case_open (desk->file, &error);
  g_assert_no_error (error);
}

static void
clear (Desk *desk, gconstpointer data)
{
  case_wait_for_takeoff (desk->job);
  g_assert_finalize_object (desk->job);
  g_object_unref (desk->file);
  g_object_unref (desk->folder);
}

static const CwProject *
project_of (CwJob *job)
{
  return cw_document_project (cw_job_document (job));
}

static void
new_is_untouched (void)
{
  g_autoptr (CwJob) job = cw_job_new ();
  g_assert_true (cw_job_is_untouched (job));
  g_assert_null (cw_job_file (job));
  g_assert_true (cw_document_is_saved (cw_job_document (job)));
  g_assert_cmpuint (cw_list_length (project_of (job)->elevations), ==, 0);
  case_wait_for_takeoff (job);
}

static void
open_shows_first_wall (Desk *desk, gconstpointer data)
{
  CwDocument *document = cw_job_document (desk->job);
  g_autofree char *name = cw_job_name (desk->job);
  g_assert_false (cw_job_is_untouched (desk->job));
  g_assert_cmpstr (name, ==, "fennel-house");
  g_assert_cmpstr (cw_document_elevation_id (document), ==, "south");
  g_assert_true (cw_job_style (desk->job)->units == CW_UNITS_US);
}

static void
undo_gives_back_the_same (Desk *desk, gconstpointer data)
{
  CwDocument *document = cw_job_document (desk->job);
  const CwProject *before = project_of (desk->job);
  case_rename_first (desk->job, "Seaward");
  g_assert_true (project_of (desk->job) != before);
  g_assert_false (cw_document_is_saved (document));
  cw_document_undo (document);
  g_assert_true (project_of (desk->job) == before);
  g_assert_true (cw_document_is_saved (document));
}

static void
reopened_is_equal (Desk *desk, gconstpointer data)
{
  g_autoptr (GError) error = NULL;
  case_rename_first (desk->job, "Seaward");
  g_assert_true (case_save (desk->job, NULL, FALSE, &error));
  g_assert_no_error (error);
  g_assert_true (cw_document_is_saved (cw_job_document (desk->job)));

  g_autoptr (CwJob) again = case_open (desk->file, &error);
  g_assert_no_error (error);
  g_assert_cmpstr (case_first_name (again), ==, "Seaward");
  g_assert_true (cw_node_equal (project_of (again), project_of (desk->job)));
  case_wait_for_takeoff (again);
}

static void
keep_result (GObject *source, GAsyncResult *result, gpointer data)
{
  *(GAsyncResult **) data = g_object_ref (result);
}

static gboolean
has_result (gpointer data)
{
  return *(GAsyncResult **) data != NULL;
}

/* What is edited while the file is being written is not on disk. */
static void
edit_while_saving (Desk *desk, gconstpointer data)
{
  CwDocument *document = cw_job_document (desk->job);
  g_autoptr (GAsyncResult) result = NULL;
  g_autoptr (GError) error = NULL;
  case_rename_first (desk->job, "Seaward");
  cw_job_save_async (desk->job, NULL, FALSE, keep_result, &result);
  case_rename_first (desk->job, "Landward");
  case_wait (has_result, &result);
  g_assert_true (cw_job_save_finish (desk->job, result, &error));
  g_assert_false (cw_document_is_saved (document));
  cw_document_undo (document);
  g_assert_cmpstr (case_first_name (desk->job), ==, "Seaward");
  g_assert_true (cw_document_is_saved (document));
}

static const CwSheet *
sheet_of (CwJob *job)
{
  return cw_list_at (project_of (job)->sheets, 0);
}

static void
save_elsewhere_keeps_sheets (Desk *desk, gconstpointer data)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GFile) sheet = cw_job_sheet_file (desk->job, "sheets/fennel-house.pdf");
  g_autoptr (GFile) below = g_file_get_child (desk->folder, "copies");
  g_autoptr (GFile) copy = g_file_get_child (below, "other.cladwright");
  g_assert_true (g_file_make_directory (below, NULL, NULL));
  g_assert_true (case_save (desk->job, copy, FALSE, &error));
  g_assert_no_error (error);
  g_assert_cmpstr (sheet_of (desk->job)->file, ==,
                   "../sheets/fennel-house.pdf");
  g_autoptr (GFile) found
      = cw_job_sheet_file (desk->job, sheet_of (desk->job)->file);
  g_assert_true (g_file_equal (found, sheet));

  g_autoptr (CwJob) again = case_open (copy, &error);
  g_assert_no_error (error);
  g_assert_true (cw_node_equal (project_of (again), project_of (desk->job)));
  case_wait_for_takeoff (again);
}

static void
other_program_is_noticed (Desk *desk, gconstpointer data)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *bytes = NULL;
  g_autofree char *path = g_file_get_path (desk->file);
  gsize length;
  g_assert_true (g_file_get_contents (path, &bytes, &length, NULL));
  /* A file's time is as fine as its file system's. */
  g_usleep (20000);
  g_assert_true (g_file_set_contents (path, bytes, (gssize) length, NULL));
  case_rename_first (desk->job, "Seaward");
  g_assert_false (case_save (desk->job, NULL, FALSE, &error));
  g_assert_error (error, CW_FILE_ERROR, CW_FILE_ERROR_CHANGED);
  g_assert_false (cw_document_is_saved (cw_job_document (desk->job)));
  g_clear_error (&error);
  g_assert_true (case_save (desk->job, NULL, TRUE, &error));
  g_assert_no_error (error);
}

static void
missing_file_is_told (void)
{
  g_autoptr (GFile) folder = case_folder ();
  g_autoptr (GFile) file = g_file_get_child (folder, "none.cladwright");
  g_autoptr (GError) error = NULL;
  g_assert_null (case_open (file, &error));
  g_assert_error (error, CW_FILE_ERROR, CW_FILE_ERROR_READ);
}

static void
detached_asks_for_a_name (Desk *desk, gconstpointer data)
{
  cw_job_detach (desk->job);
  g_assert_null (cw_job_file (desk->job));
  g_autoptr (GFile) sheet
      = cw_job_sheet_file (desk->job, "sheets/fennel-house.pdf");
  g_assert_true (g_file_query_exists (sheet, NULL));
}

static void
note_ready (CwSheetStore *store, const char *id, gboolean *ready)
{
  *ready = TRUE;
}

static gboolean
is_true (gpointer flag)
{
  return *(gboolean *) flag;
}

static void
sheets_are_opened (Desk *desk, gconstpointer data)
{
  CwSheetStore *store = cw_job_sheets (desk->job);
  gboolean ready = FALSE;
  if (!cw_sheet_store_source (store, "s1"))
    {
      gulong handler = g_signal_connect (store, "sheet-ready",
                                         G_CALLBACK (note_ready), &ready);
      case_wait (is_true, &ready);
      g_signal_handler_disconnect (store, handler);
    }
  g_assert_nonnull (cw_sheet_store_source (store, "s1"));
  g_assert_cmpstr (cw_sheet_store_problem (store, "s1"), ==, NULL);
}

static void
add (const char *path, void (*test) (Desk *, gconstpointer))
{
  g_test_add (path, Desk, NULL, lay, test, clear);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/job/new-is-untouched", new_is_untouched);
  g_test_add_func ("/job/missing-file-is-told", missing_file_is_told);
  add ("/job/open-shows-first-wall", open_shows_first_wall);
  add ("/job/undo-gives-back-the-same", undo_gives_back_the_same);
  add ("/job/reopened-is-equal", reopened_is_equal);
  add ("/job/edit-while-saving", edit_while_saving);
  add ("/job/save-elsewhere-keeps-sheets", save_elsewhere_keeps_sheets);
  add ("/job/other-program-is-noticed", other_program_is_noticed);
  add ("/job/detached-asks-for-a-name", detached_asks_for_a_name);
  add ("/job/sheets-are-opened", sheets_are_opened);
  return g_test_run ();
}

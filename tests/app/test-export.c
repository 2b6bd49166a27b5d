/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is written is what the window shows, and depends on the project alone.
 */
#include <string.h>

#include "app-cases.h"
#include "cw-export.h"
#include "cw-project-file.h"
#include "cw-table-csv.h"
#include "estimate-cases.h"

/* Something is left to be looked for when the live plans stand. */
static const char open_walls[]
    = "9.37x2.83 window:1.21x1.37@1.13,0.87 window:0.83x1.11@4.71,0.93; "
      "7.43x2.71 window:1.61x1.27@2.3,0.9";

typedef struct
{
  GFile *folder, *target;
  CwProject *project;
  CwJob *job;
  GCancellable *enough;
  gboolean stops;         /* at the first word of progress */
  guint n_told;
  gboolean is_written, stopped_early;
} Writing;

static void
lay (Writing *writing, gconstpointer data)
{
  g_autoptr (GError) error = NULL;
  writing->folder = case_folder ();
  writing->target = g_file_get_child (writing->folder, "takeoff.csv");
  writing->project = case_project (open_walls, "");
  g_autoptr (GFile) file
      = g_file_get_child (writing->folder, "open.cladwright");
  g_autofree char *path = g_file_get_path (file);
  g_autoptr (GBytes) bytes = cw_project_to_xml (writing->project);
  gsize size;
  const char *xml = g_bytes_get_data (bytes, &size);
  g_file_set_contents (path, xml, (gssize) size, &error);
  g_assert_no_error (error);
  writing->job = case_open (file, &error);
  g_assert_no_error (error);
  writing->enough = g_cancellable_new ();
}

static void
clear (Writing *writing, gconstpointer data)
{
  g_object_unref (writing->enough);
  g_object_unref (writing->job);
  cw_node_unref (writing->project);
  g_object_unref (writing->target);
  g_object_unref (writing->folder);
}

static void
told (guint n_panels, double share, gpointer data)
{
  Writing *writing = data;
  writing->n_told++;
  if (writing->stops)
    g_cancellable_cancel (writing->enough);
}

static void
written (GObject *job, GAsyncResult *result, gpointer data)
{
  Writing *writing = data;
  g_autoptr (GError) error = NULL;
  g_assert_true (
      cw_export_finish (result, &writing->stopped_early, &error));
  g_assert_no_error (error);
  writing->is_written = TRUE;
}

static gboolean
is_written (gpointer data)
{
  return ((Writing *) data)->is_written;
}

/* (transfer full) */
static char *
export_csv (Writing *writing)
{
  g_autoptr (GError) error = NULL;
  char *text;
  cw_export_async (writing->job, CW_EXPORT_CSV, writing->target, told,
                   writing->enough, NULL, written, writing);
  case_wait (is_written, writing);
  g_file_load_contents (writing->target, NULL, &text, NULL, NULL, &error);
  g_assert_no_error (error);
  return text;
}

static void
assert_window_shows (Writing *writing, const char *csv)
{
  g_autofree char *shown = cw_takeoff_to_csv (cw_job_takeoff (writing->job));
  g_assert_cmpstr (csv, ==, shown);
}

static void
searches_to_the_end (Writing *writing, gconstpointer data)
{
  case_wait_for_takeoff (writing->job);
  g_autofree char *csv = export_csv (writing);
  g_autoptr (CwTakeoff) quick = cw_takeoff_new (writing->project, NULL, NULL);
  g_autoptr (CwTakeoff) best
      = cw_takeoff_improve (quick, CW_CUT_EFFORT_LONG, NULL);
  g_autofree char *alone = cw_takeoff_to_csv (best);
  g_assert_cmpuint (writing->n_told, >, 0);
  g_assert_false (writing->stopped_early);
  g_assert_cmpstr (csv, ==, alone);
  assert_window_shows (writing, csv);
}

static void
ends_with_what_is_found (Writing *writing, gconstpointer data)
{
  case_wait_for_takeoff (writing->job);
  writing->stops = TRUE;
  g_autofree char *csv = export_csv (writing);
  g_assert_true (writing->stopped_early);
  assert_window_shows (writing, csv);
}

/* Switched off, what the window shows is written at once. */
static void
does_not_search (Writing *writing, gconstpointer data)
{
  cw_estimator_set_searches (cw_job_estimator (writing->job), FALSE);
  case_wait_for_takeoff (writing->job);
  g_autofree char *csv = export_csv (writing);
  g_assert_cmpuint (writing->n_told, ==, 0);
  g_assert_false (writing->stopped_early);
  assert_window_shows (writing, csv);
}

#define ADD(path, test)                                                       \
  g_test_add (path, Writing, NULL, lay, test, clear)

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  ADD ("/export/searches-to-the-end", searches_to_the_end);
  ADD ("/export/ends-with-what-is-found", ends_with_what_is_found);
  ADD ("/export/does-not-search", does_not_search);
  return g_test_run ();
}

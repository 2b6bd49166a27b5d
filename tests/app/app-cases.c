/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "app-cases.h"

#include <gio/gio.h>

#include "cw-edits.h"

#define PATIENCE_SECONDS 60

static gboolean
lose_patience (gpointer data)
{
  g_error ("The main loop ran for a minute and what was waited for never came");
  return G_SOURCE_REMOVE;
}

void
case_wait (CaseDoneFunc done, gpointer data)
{
  guint patience
      = g_timeout_add_seconds (PATIENCE_SECONDS, lose_patience, NULL);
  while (!done (data))
    g_main_context_iteration (NULL, TRUE);
  g_source_remove (patience);
}

static gboolean
is_up_to_date (gpointer job)
{
  return !cw_estimator_is_busy (cw_job_estimator (job));
}

void
case_wait_for_takeoff (CwJob *job)
{
  case_wait (is_up_to_date, job);
}

GFile *
case_folder (void)
{
  g_autofree char *path
      = g_build_filename (g_get_user_cache_dir (), "XXXXXX", NULL);
  g_mkdir_with_parents (g_get_user_cache_dir (), 0700);
  g_assert_nonnull (g_mkdtemp (path));
  return g_file_new_for_path (path);
}

static void
copy (const char *from, GFile *folder, const char *to)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *path = g_build_filename (g_getenv ("CW_SOURCE_ROOT"),
                                            "data", "demo", from, NULL);
  g_autoptr (GFile) source = g_file_new_for_path (path);
  g_autoptr (GFile) target = g_file_resolve_relative_path (folder, to);
  g_file_copy (source, target, G_FILE_COPY_NONE, NULL, NULL, NULL, &error);
  g_assert_no_error (error);
}

GFile *
case_copy_demo (GFile *folder)
{
  g_autoptr (GFile) sheets = g_file_get_child (folder, "sheets");
  g_file_make_directory (sheets, NULL, NULL);
  copy ("sheets/fennel-house.pdf", folder, "sheets/fennel-house.pdf");
  copy ("fennel-house.cladwright", folder, "fennel-house.cladwright");
  return g_file_get_child (folder, "fennel-house.cladwright");
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

CwJob *
case_open (GFile *file, GError **error)
{
  g_autoptr (GAsyncResult) result = NULL;
  cw_job_open_async (file, NULL, keep_result, &result);
  case_wait (has_result, &result);
  return cw_job_open_finish (result, error);
}

gboolean
case_save (CwJob *job, GFile *file, gboolean over, GError **error)
{
  g_autoptr (GAsyncResult) result = NULL;
  cw_job_save_async (job, file, over, keep_result, &result);
  case_wait (has_result, &result);
  return cw_job_save_finish (job, result, error);
}

static const CwElevation *
first (CwJob *job)
{
  return cw_list_at (
      cw_document_project (cw_job_document (job))->elevations, 0);
}

void
case_rename_first (CwJob *job, const char *name)
{
  CwDocument *document = cw_job_document (job);
  g_autoptr (CwProject) next = cw_edit_rename (cw_document_project (document),
                                               first (job)->id, name);
  cw_document_edit (document, next, "Rename", NULL);
}

const char *
case_first_name (CwJob *job)
{
  return first (job)->name;
}

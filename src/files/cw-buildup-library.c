/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-buildup-library.h"

#include <string.h>

#include "cw-file-error.h"
#include "cw-files-resources.h"
#include "cw-i18n.h"

#define FOLDER "/cladwright/buildups"

static void
library_buildup_free (CwLibraryBuildup *entry)
{
  g_free (entry->name);
  cw_node_unref (entry->buildup);
  g_free (entry);
}

static CwLibraryBuildup *
read_entry (const char *file)
{
  g_autofree char *path = g_build_path ("/", FOLDER, file, NULL);
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes
      = g_resources_lookup_data (path, G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);
  g_assert (bytes != NULL);
  g_autoptr (CwProject) project = cw_project_from_xml (bytes, &error);
  if (project == NULL)
    g_error ("The built-in buildup %s cannot be read: %s", file,
             error->message);

  CwLibraryBuildup *entry = g_new0 (CwLibraryBuildup, 1);
  entry->name = g_strndup (file, strcspn (file, "."));
  entry->units = (CwUnits) project->units;
  entry->buildup = cw_node_ref (cw_list_at (project->buildups, 0));
  return entry;
}

static int
compare_names (gconstpointer a, gconstpointer b)
{
  const CwLibraryBuildup *const *first = a, *const *second = b;
  return strcmp ((*first)->name, (*second)->name);
}

GPtrArray *
cw_buildup_library (void)
{
  cw_files_register_resource ();
  g_auto (GStrv) files = g_resources_enumerate_children (
      FOLDER, G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);
  g_assert (files != NULL);
  GPtrArray *library = g_ptr_array_new_with_free_func (
      (GDestroyNotify) library_buildup_free);
  for (char **file = files; *file; file++)
    g_ptr_array_add (library, read_entry (*file));
  g_ptr_array_sort (library, compare_names);
  return library;
}

CwList *
cw_buildups_load (GFile *file, char **currency, GError **error)
{
  g_return_val_if_fail (G_IS_FILE (file), NULL);
  g_autoptr (CwProject) project = cw_project_load (file, NULL, error);
  if (project == NULL)
    return NULL;
  if (cw_list_length (project->buildups) == 0)
    {
      cw_file_error_set (error, CW_FILE_ERROR_SENSE, 0,
                         _ ("There is no buildup in this file. Choose a "
                            "project with one, or a buildup that was written "
                            "to a file."));
      return NULL;
    }
  if (currency)
    *currency = g_strdup (project->currency);
  return cw_list_ref (project->buildups);
}

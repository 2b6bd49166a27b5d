/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "cw-batch.h"
#include "cw-i18n.h"

#define ENDING ".cladwright"

static gboolean
is_folder (const char *path)
{
  return g_file_test (path, G_FILE_TEST_IS_DIR);
}

/* The file for @project by a wish. (transfer full) */
static char *
output_for (const char *wish, const char *project, const char *ending)
{
  if (!is_folder (wish))
    return g_strdup (wish);
  g_autofree char *name = g_path_get_basename (project);
  if (g_str_has_suffix (name, ENDING))
    name[strlen (name) - strlen (ENDING)] = '\0';
  g_autofree char *file = g_strconcat (name, ending, NULL);
  return g_build_filename (wish, file, NULL);
}

static char *
check_wish (const char *option, const char *wish, guint n_projects)
{
  if (wish == NULL || n_projects == 1 || is_folder (wish))
    return NULL;
  return g_strdup_printf (
      _ ("With several projects %s must name a folder that is there, and %s "
         "is none"),
      option, wish);
}

/* The file that a path means, whatever way it is written. (transfer full) */
static char *
true_path (const char *path)
{
  char *real = cw_batch_real_path (path);
  return real ? real : g_canonicalize_filename (path, NULL);
}

/* Notes that @path is taken by @what. (transfer full): why it cannot be */
static char *
take_path (GHashTable *taken, const char *path, const char *what)
{
  if (path == NULL || g_str_equal (path, "-"))
    return NULL;
  char *full = true_path (path);
  const char *former = g_hash_table_lookup (taken, full);
  char *why = former ? g_strdup_printf (_ ("%s would be written over %s"), what,
                                        former)
                     : NULL;
  if (why)
    g_free (full);
  else
    g_hash_table_insert (taken, full, g_strdup (what));
  return why;
}

static char *
take_outputs (GHashTable *taken, const CwBatchOutputs *outputs,
              const char *project)
{
  g_autofree char *table = g_strdup_printf (_ ("the table of %s"), project);
  g_autofree char *paper = g_strdup_printf (_ ("the PDF of %s"), project);
  g_autofree char *checks
      = g_strdup_printf (_ ("the table of checks of %s"), project);
  char *why = take_path (taken, outputs->csv, table);
  if (!why)
    why = take_path (taken, outputs->pdf, paper);
  return why ? why : take_path (taken, outputs->checks, checks);
}

static gboolean
is_standard_output (const char *wish)
{
  return g_strcmp0 (wish, "-") == 0;
}

static char *
check_paths (const CwBatchWishes *wishes, const CwBatchOutputs *outputs)
{
  g_autoptr (GHashTable) taken
      = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_free);
  char *why = NULL;
  for (guint i = 0; wishes->projects[i] && !why; i++)
    {
      g_autofree char *what
          = g_strdup_printf (_ ("the project %s"), wishes->projects[i]);
      g_hash_table_insert (taken, true_path (wishes->projects[i]),
                           g_steal_pointer (&what));
    }
  for (guint i = 0; wishes->projects[i] && !why; i++)
    why = take_outputs (taken, &outputs[i], wishes->projects[i]);
  if (!why
      && is_standard_output (wishes->csv) + is_standard_output (wishes->pdf)
                 + is_standard_output (wishes->checks)
             > 1)
    why = g_strdup (_ ("Only one of --pdf, --csv and --checks can go to "
                       "standard output"));
  return why;
}

CwBatchOutputs *
cw_batch_outputs (const CwBatchWishes *wishes, char **why)
{
  guint n = g_strv_length ((char **)wishes->projects);
  *why = check_wish ("--pdf", wishes->pdf, n);
  if (*why == NULL)
    *why = check_wish ("--csv", wishes->csv, n);
  if (*why == NULL)
    *why = check_wish ("--checks", wishes->checks, n);
  if (*why != NULL)
    return NULL;

  CwBatchOutputs *outputs = g_new0 (CwBatchOutputs, n);
  for (guint i = 0; i < n; i++)
    {
      const char *project = wishes->projects[i];
      if (wishes->pdf)
        outputs[i].pdf = output_for (wishes->pdf, project, ".pdf");
      if (wishes->csv)
        outputs[i].csv = output_for (wishes->csv, project, ".csv");
      if (wishes->checks)
        outputs[i].checks
            = output_for (wishes->checks, project, ".checks.csv");
    }
  if (n == 1 && !wishes->pdf && !wishes->csv && !wishes->checks)
    outputs[0].csv = g_strdup ("-");
  *why = check_paths (wishes, outputs);
  if (*why == NULL)
    return outputs;
  cw_batch_outputs_free (outputs, n);
  return NULL;
}

void
cw_batch_outputs_free (CwBatchOutputs *outputs, gsize n)
{
  for (gsize i = 0; i < n; i++)
    {
      g_free (outputs[i].pdf);
      g_free (outputs[i].csv);
      g_free (outputs[i].checks);
    }
  g_free (outputs);
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The takeoff from the command line: no display, no state, any number of
 * projects.
 */
#pragma once

#include "cw-project-file.h"
#include "cw-takeoff.h"

G_BEGIN_DECLS

/* What the command line asks for; strings borrowed from it. */
typedef struct
{
  const char *pdf; /* (nullable): a file, a folder, or "-" */
  const char *csv; /* (nullable): likewise */
  const char *checks; /* (nullable): likewise */
  CwCutEffort effort;
  const char *const *projects;
} CwBatchWishes;

/* Where the tables of one project go. "-" is standard output. */
typedef struct
{
  char *pdf, *csv, *checks; /* (nullable) */
} CwBatchOutputs;

/*
 * cw_batch_outputs:
 * Makes out where each project's results go. With one project a wish names
 * the file; a folder, and it must be one for several projects, gets a file
 * named as the project. Without any wish one project's table goes to standard
 * output, and several are only checked. Nothing may be written twice, nor over a project.
 *
 * Returns: (transfer full) (nullable): one for each project; NULL when the
 *   wishes cannot be met, with a sentence for the user in @why
 */
CwBatchOutputs *cw_batch_outputs (const CwBatchWishes *wishes, char **why);
void cw_batch_outputs_free (CwBatchOutputs *outputs, gsize n);

/* Faults of drawing for which no figure would be true, each with its line out
 * of cw_project_xml_lines(), as CW_FILE_ERROR. (transfer full) (element-type GError) */
GPtrArray *cw_batch_faults (const CwProject *project, GHashTable *lines);

/* What should be looked at although there are figures, likewise: walls that
 * give none, rules of setting out that could not be kept. Of @checks
 * (element-type CwCheck). */
GPtrArray *cw_batch_warnings (const GPtrArray *checks, GHashTable *lines);

/* "PATH:LINE: sentence" on standard error. */
void cw_batch_print_error (const char *path, const GError *error);

/* Where the file of that name really is, links followed; NULL when there is
 * none. (transfer full) (nullable) */
char *cw_batch_real_path (const char *path);

/* Writes a file, whole or not at all as other programs may be reading it; a
 * link's target, not the link; a pipe or device as it is; or for "-" to
 * standard output. Returns: FALSE after the error was printed */
gboolean cw_batch_write (const char *path, const char *data, gsize size);

/* One project from its file to its results. Errors are printed as
 * "FILE:LINE: sentence". Returns: FALSE when there was one */
gboolean cw_batch_project (const char *path, CwCutEffort effort,
                           const CwBatchOutputs *outputs);

G_END_DECLS

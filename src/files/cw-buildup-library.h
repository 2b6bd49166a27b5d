/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Buildups to begin with, and buildups that travel from one project to
 * another. Each is a project document that holds a buildup and nothing else
 * of a project, so that it opens, is checked and is kept as any project is.
 */
#pragma once

#include "cw-project-file.h"

G_BEGIN_DECLS

typedef struct
{
  char *name;           /* "wood-us-50-barrier": of the file, without its end */
  CwUnits units;        /* that its sizes are sold in */
  CwBuildup *buildup;
} CwLibraryBuildup;

/*
 * cw_buildup_library:
 * The generic buildups that come with the program, sorted by name. They are
 * built into it; data/buildups holds the same files to read.
 *
 * Returns: (transfer full) (element-type CwLibraryBuildup)
 */
GPtrArray *cw_buildup_library (void);

/*
 * cw_buildups_load:
 * The buildups of a project file, whatever else is in it. A file without any
 * is refused with CW_FILE_ERROR_SENSE, all else as cw_project_load() does.
 * @currency: (out) (optional): that their prices are in
 *
 * Returns: (transfer full) (nullable)
 */
CwList *cw_buildups_load (GFile *file, char **currency, GError **error);

G_END_DECLS

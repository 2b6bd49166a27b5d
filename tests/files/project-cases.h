/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Project files of the tests: the folders good and broken, and random
 * projects.
 */
#pragma once

#include "cw-project-file.h"

G_BEGIN_DECLS

/* Paths of the *.cladwright files in tests/data/files/@folder, sorted; never
 * empty. (transfer full) */
GPtrArray *project_cases (const char *folder);

/* The file beside @path with another ending; NULL when there is none.
 * (transfer full) */
char *project_case_beside (const char *path, const char *ending);

/* The content of a file that must be there. (transfer full) */
GBytes *project_case_bytes (const char *path);

/* Whether xmllint finds that the file is valid by our schema. */
gboolean project_case_is_valid (const char *path);

/* A project that keeps every rule, with foreign content here and there, by
 * the test's random numbers. (transfer full) */
CwProject *project_case_random (void);

/* Fails with both texts when they differ. */
void project_case_assert_same (GBytes *a, GBytes *b);

G_END_DECLS

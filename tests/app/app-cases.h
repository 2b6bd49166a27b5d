/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the tests of the desktop share.
 */
#pragma once

#include "cw-job.h"

/* Runs the main loop until @done says so; the test fails after a minute. */
typedef gboolean (*CaseDoneFunc) (gpointer data);
void case_wait (CaseDoneFunc done, gpointer data);

/* Until the job's figures are of its present project. */
void case_wait_for_takeoff (CwJob *job);

/* A folder of its own, empty. (transfer full) */
GFile *case_folder (void);

/* The example project with its sheet, copied into @folder. (transfer full) */
GFile *case_copy_demo (GFile *folder);

/* The job, or NULL with @error. (transfer full) */
CwJob *case_open (GFile *file, GError **error);
gboolean case_save (CwJob *job, GFile *file, gboolean over, GError **error);

/* The first wall's name changed to @name, as one edit. */
void case_rename_first (CwJob *job, const char *name);
const char *case_first_name (CwJob *job);

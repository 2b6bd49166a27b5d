/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Runs the built program as a user would, in a folder of the test's own.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

typedef struct
{
  int status;       /* how it ended: 0, 1 or 2 */
  char *out, *err;  /* what it said, as bytes with a nought behind */
} TakeoffRun;

/* A folder that takeoff_folder_free() removes with all that is in it. */
char *takeoff_folder_new (void);
void takeoff_folder_free (char *folder);

/* "batch/crossing.cladwright" of tests/data, whole. (transfer full) */
char *takeoff_data (const char *name);

/* A copy of that file in @folder under another name. (transfer full) */
char *takeoff_copy (const char *folder, const char *data, const char *name);

/*
 * @folder: where it runs
 * @environment: (nullable): "NAME=value", ended by NULL, on top of the test's
 * @arguments: without the program's name, ended by NULL
 *
 * Without a display. The test fails when the program crashes.
 */
TakeoffRun *takeoff_run (const char *folder, const char *const *environment,
                         const char *const *arguments);
void takeoff_run_free (TakeoffRun *run);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (TakeoffRun, takeoff_run_free)

/* The same with nothing special about it. */
#define TAKEOFF_RUN(folder, ...)                                              \
  takeoff_run (folder, NULL, (const char *const[]){ __VA_ARGS__, NULL })

G_END_DECLS

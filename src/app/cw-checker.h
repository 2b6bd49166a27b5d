/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Keeps the checks of a job's takeoff, found on another thread a moment after
 * it: while something is dragged they follow a few times a second and cost no
 * frame. The next edit cancels what is being found; the last list stays until
 * a newer one is there. "changed" comes with it.
 */
#pragma once

#include "cw-checks.h"
#include "cw-job.h"

G_BEGIN_DECLS

#define CW_TYPE_CHECKER (cw_checker_get_type ())
G_DECLARE_FINAL_TYPE (CwChecker, cw_checker, CW, CHECKER, GObject)

CwChecker *cw_checker_new (CwJob *job);

/* (element-type CwCheck), never NULL, empty at first; borrowed until
 * "changed". */
GPtrArray *cw_checker_checks (CwChecker *checker);

/* "2 errors, 1 warning, 3 notes"; "" when there is nothing.
 * (transfer full) */
char *cw_checker_summary (CwChecker *checker);

/* They are of an older project or takeoff than the job's. */
gboolean cw_checker_is_busy (CwChecker *checker);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Keeps the checks of a job's takeoff, a moment after it: while something is
 * dragged they follow a few times a second and cost no frame. "changed" comes
 * after they were found anew.
 */
#pragma once

#include "cw-checks.h"
#include "cw-job.h"

G_BEGIN_DECLS

#define CW_TYPE_CHECKER (cw_checker_get_type ())
G_DECLARE_FINAL_TYPE (CwChecker, cw_checker, CW, CHECKER, GObject)

CwChecker *cw_checker_new (CwJob *job);

/* (element-type CwCheck), never NULL; borrowed until "changed". */
GPtrArray *cw_checker_checks (CwChecker *checker);

/* "2 errors, 1 warning, 3 notes"; "" when there is nothing.
 * (transfer full) */
char *cw_checker_summary (CwChecker *checker);

/* Finds them now. */
void cw_checker_look (CwChecker *checker);

G_END_DECLS

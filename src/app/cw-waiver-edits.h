/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Letting a check pass, and taking that back. Both return a new project,
 * (transfer full).
 */
#pragma once

#include "cw-checks.h"

G_BEGIN_DECLS

/* In place of an earlier waiver of the same check. @date: year-month-day. */
CwProject *cw_edit_waive (const CwProject *project, const CwCheck *check,
                          const char *reason, const char *by,
                          const char *date);
CwProject *cw_edit_take_waiver_back (const CwProject *project,
                                     const CwWaiver *waiver);

G_END_DECLS

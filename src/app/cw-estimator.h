/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Keeps a takeoff up to date: works on another thread, over a project that
 * nobody can change. The next project cancels the work on the former one;
 * "takeoff-changed" comes for the newest project only, and again when its cut
 * plans have been looked for longer, once the project stays for a moment.
 */
#pragma once

#include "cw-takeoff.h"

G_BEGIN_DECLS

#define CW_TYPE_ESTIMATOR (cw_estimator_get_type ())
G_DECLARE_FINAL_TYPE (CwEstimator, cw_estimator, CW, ESTIMATOR, GObject)

CwEstimator *cw_estimator_new (void);
void cw_estimator_set_project (CwEstimator *estimator,
                               const CwProject *project);

/* The last good takeoff, borrowed; NULL before there is one. */
const CwTakeoff *cw_estimator_takeoff (CwEstimator *estimator);

/* TRUE while the takeoff is of an older project than the one set, or its cut
 * plans are yet to be looked for.
 * Also the property "busy". */
gboolean cw_estimator_is_busy (CwEstimator *estimator);

G_END_DECLS

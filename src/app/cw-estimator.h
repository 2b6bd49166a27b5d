/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Keeps a takeoff up to date: works on another thread, over a project that
 * nobody can change. The next project cancels the work on the former one;
 * "takeoff-changed" comes for the newest project only, and again when its cut
 * plans have been looked for longer, once the project stays for a moment.
 *
 * When it stays on, the long search for fewer panels begins, on a thread that
 * gives way to others. The next project, and cw_estimator_stop(), end it;
 * what was found until then is kept. "search-changed" tells how far it is.
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

typedef enum
{
  CW_SEARCH_NONE,     /* not begun, or nothing left to find */
  CW_SEARCH_RUNNING,
  CW_SEARCH_STOPPED,  /* before its end */
} CwSearch;

/* @n_panels: (out) (optional): of the project, by the best plans so far
 * @share: (out) (optional): of the search done, 0 … 1; both while it runs */
CwSearch cw_estimator_search (CwEstimator *estimator, guint *n_panels,
                              double *share);

/* Whether to search at all; TRUE at first. Turning it off stops a search. */
void cw_estimator_set_searches (CwEstimator *estimator, gboolean searches);
gboolean cw_estimator_get_searches (CwEstimator *estimator);

/* Ends the search and keeps what it found. */
void cw_estimator_stop (CwEstimator *estimator);
/* After a stop. */
void cw_estimator_search_on (CwEstimator *estimator);

/* Nobody needs the figures any more: the work going on ends soon. */
void cw_estimator_give_up (CwEstimator *estimator);

/* While somebody else searches the same plans: ends ours until
 * cw_estimator_release(), which takes @found (nullable) over when it is of the
 * project set. */
void cw_estimator_hold (CwEstimator *estimator);
void cw_estimator_release (CwEstimator *estimator, const CwTakeoff *found);

G_END_DECLS

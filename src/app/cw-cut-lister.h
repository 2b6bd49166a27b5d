/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Keeps the cut list of a job's takeoff, worked out on another thread, while
 * somebody wants to see it.
 *
 * Signal: "changed".
 */
#pragma once

#include "cw-cut-list.h"
#include "cw-job.h"

G_BEGIN_DECLS

#define CW_TYPE_CUT_LISTER (cw_cut_lister_get_type ())
G_DECLARE_FINAL_TYPE (CwCutLister, cw_cut_lister, CW, CUT_LISTER, GObject)

CwCutLister *cw_cut_lister_new (CwJob *job);

/* Works from now on, or rests. */
void cw_cut_lister_set_wanted (CwCutLister *lister, gboolean wanted);

/* The last good one, borrowed; NULL before there is one. */
const CwCutList *cw_cut_lister_list (CwCutLister *lister);

/* The list is of an older takeoff than the job's. */
gboolean cw_cut_lister_is_stale (CwCutLister *lister);

G_END_DECLS

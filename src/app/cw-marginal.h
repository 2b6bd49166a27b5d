/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the edits going on (a drag, steps of the arrow keys) cost against the
 * project before them. Worked out on another thread, with the same effort for
 * both, so that the difference is of the move and not of the search.
 *
 * Signal "changed": there are other figures, or other edits.
 */
#pragma once

#include "cw-document.h"
#include "cw-takeoff-change.h"

G_BEGIN_DECLS

#define CW_TYPE_MARGINAL (cw_marginal_get_type ())
G_DECLARE_FINAL_TYPE (CwMarginal, cw_marginal, CW, MARGINAL, GObject)

CwMarginal *cw_marginal_new (CwDocument *document);

/* The last good figures of the edits going on; NULL while there are none, or
 * when no edits go on. Borrowed. */
const CwTakeoffChange *cw_marginal_figures (CwMarginal *marginal);
/* TRUE while newer ones are worked out. */
gboolean cw_marginal_is_stale (CwMarginal *marginal);

G_END_DECLS

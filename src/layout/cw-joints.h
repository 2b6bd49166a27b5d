/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Joints: the middle lines of the gaps where two pieces meet, as long as
 * there is a panel on both sides. Bed joints run through past the ends of
 * head joints, head joints stand between bed joints, so that on a plain wall
 * length times joint is the very area between the pieces.
 */
#pragma once

#include "cw-row.h"
#include "cw-set-out.h"

G_BEGIN_DECLS

/* The head joints between the @n stretches of one run. */
void cw_joints_of_run (const CwFrame *frame, const CwRow *row,
                       const CwStretch *stretches,
                       guint n, GArray *joints);

/* The bed joint between two courses that follow each other. */
void cw_joints_of_rows (const CwFrame *frame, const CwRow *below,
                        const CwRow *above, GArray *joints);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pieces as they lie on the panels that they are sawn out of.
 */
#pragma once

#include "cw-panel-plan.h"

G_BEGIN_DECLS

/* "A" … "Z", "A2" …: the piece's letter on its panel. (transfer full) */
char *cw_cut_letter (guint placement);

/* The piece of a placement as it lies on the panel, with its notches, curves
 * and holes; the panel's lower left corner is the origin. (transfer full) */
CwRegion *cw_cut_face (const CwPanelPlan *plan,
                       const CwCutPlacement *placement);

/* The layout and the piece that @blank is; both borrowed. */
const CwLayout *cw_cut_piece (const CwPanelPlan *plan, guint blank,
                              const CwPiece **piece);

G_END_DECLS

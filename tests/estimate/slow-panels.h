/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Panels for the slow estimator: a grid of panels stacked from the lower left
 * corner, each cut against the net wall.
 */
#pragma once

#include "slow-estimate.h"

G_BEGIN_DECLS

typedef struct
{
  guint n_whole, n_cut;
  double placed;                          /* m² */
  double bed, head;                       /* m of joints */
  guint n_fasteners;
  double own_cuts;                        /* m: notches, rakes, curves, holes */
  gboolean shifted;                       /* a length begins or ends in a joint
                                             of the grid: its panels are laid
                                             from there, and all this is off */
} SlowPanels;

/* Of a wall that stands on the origin, with a setting out without least
 * piece and rasp, stacked, from the left, notched. */
SlowPanels slow_panels (const CwElevation *elevation,
                        const CwBuildup *buildup);

/* m round the stub-outs. */
double slow_stub_outs (const CwElevation *elevation);

G_END_DECLS

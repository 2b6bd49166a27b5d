/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How a panel is sawn, as a display list: the panel to scale with its length
 * to the right, the pieces in it by their letters and names with their true
 * shape, the cuts numbered in the order of sawing, what is left hatched.
 *
 *             1          2
 *        ┌────┬──────────┬──────┐
 *        │    │    B     │//////│
 *   300 ─│ A  ├──────────③//////│
 *        │    │    C     │//////│
 *        └────┴──────────┴──────┘
 *        0   640       1840    2400
 *
 * Coordinates are the panel's, in millimetres from its lower left corner. All
 * figures are counted from that corner; a cut's is the near side of the kerf.
 */
#pragma once

#include "cw-cut-face.h"
#include "cw-display-list.h"

G_BEGIN_DECLS

/* What the picture takes with its figures, mm. */
typedef struct
{
  double left, bottom, right, top;
} CwCutRoom;

/*
 * cw_cut_drawing:
 * @panel: its place in the plan's cut panels
 * @with_names: the pieces' names beside their letters, where there is room;
 *   not for a picture that stands for several panels
 * @mm_per_unit: mm of panel for one point on paper
 * @room: (out) (nullable)
 *
 * The id of a piece is its name ("South-3-2"), of a cut "cut-1", of what is
 * left "rest-1". (transfer full)
 */
CwDisplayList *cw_cut_drawing (const CwPanelPlan *plan, guint panel,
                               gboolean with_names, const CwTextStyle *style,
                               double mm_per_unit, CwCutRoom *room);

G_END_DECLS

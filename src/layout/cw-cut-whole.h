/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * All that comes out of one panel, the pieces out of other pieces' waste
 * included, in the panel's own coordinates.
 */
#pragma once

#include "cw-panel-plan.h"
#include "cw-point.h"

G_BEGIN_DECLS

/* Of cuts that the plan makes before any piece gets its shape. */
#define CW_CUT_NO_HOST G_MAXUINT

typedef struct
{
  GArray *placements;        /* CwCutPlacement: those of the plan, then those
                                out of rests */
  GArray *cuts;              /* CwCut, in the order of sawing, likewise */
  GArray *hosts;             /* guint, for each cut: in the waste of which
                                placement it is, or CW_CUT_NO_HOST */
  GArray *rests;             /* CwBox: rests that blanks come out of */
} CwCutWhole;

/*
 * cw_cut_whole_new:
 * @panel: its place among the panels of the plan's cuts
 *
 * Rests are turned with their host; blanks in them may change width and
 * height with that, and are then marked turned.
 */
CwCutWhole *cw_cut_whole_new (const CwPanelPlan *plan, guint panel);
void cw_cut_whole_free (CwCutWhole *whole);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwCutWhole, cw_cut_whole_free)

G_END_DECLS

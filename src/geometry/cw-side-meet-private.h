/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the meeting of sides is made of, for the files that work it out.
 */
#pragma once

#include "cw-side-meet.h"

G_BEGIN_DECLS

typedef struct
{
  const CwSide *side;
  CwPoint end;
} CwRun;

/* Less than this, nm, on either side is neither a crossing nor a miss. */
#define CW_GRAZES 0.5

void cw_add_meet (GArray *meets, CwPoint at, double share_a, double share_b);

/* The share along the arc at the angle of (@x, @y) from its centre; FALSE
 * where the arc does not get there, to within @slack of it. */
gboolean cw_arc_share (const CwSide *side, double x, double y, double slack,
                       double *share);

/* Half a nanometre of the way along. */
double cw_arc_slack (const CwSide *side);

/* Where two arcs of different curves meet between their ends. @meet_at_end:
 * they share an end, so that one that only touches there is no news. */
void cw_arcs_meet (const CwRun *a, const CwRun *b, gboolean meet_at_end,
                   GArray *meets);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Making traces; this folder only.
 */
#pragma once

#include "cw-estimate-private.h"
#include "cw-trace.h"

G_BEGIN_DECLS

typedef struct
{
  const CwWallTakeoff *takeoff;
  const CwWall *wall;
  GArray *items;              /* CwTraceItem */
  const char *variant;        /* (nullable): of the line */
} CwTrace;

/* What a kind of line shows, added to @trace. */
void cw_trace_add (CwTrace *trace, CwShows shows, guint detail);

/* m, by the line's length; m² when @depth (m) is not 1. */
void cw_trace_side (CwTrace *trace, const CwSide *side, CwPoint end,
                    double depth);
void cw_trace_straight (CwTrace *trace, CwPoint from, CwPoint to);
/* Takes @region; nothing when it is empty. */
void cw_trace_region (CwTrace *trace, CwRegion *region, double share);

/* Where openings meet cladding; @sides: mask of 1 << CwOpeningSide. */
void cw_trace_opening_sides (CwTrace *trace, guint sides);
void cw_trace_stub_outs (CwTrace *trace);

/* Of the coats and the mesh, in cw-trace-coats.c. */
void cw_trace_measured_faces (CwTrace *trace);
void cw_trace_measured (CwTrace *trace);
void cw_trace_reveals (CwTrace *trace);
void cw_trace_band_faces (CwTrace *trace);
void cw_trace_mesh_corners (CwTrace *trace);

/* Straight or curved cuts that a piece has beside those of the plan. */
void cw_trace_saw_cuts (CwTrace *trace, guint is_curved);
/* Shares in L. @with_mixing: mixing water too. */
void cw_trace_water (CwTrace *trace, guint with_mixing);
/* What the task or trade step that the variant names is done on. */
void cw_trace_work (CwTrace *trace, guint detail);

#define CW_TRACE_ALL_SIDES                                                    \
  (1u << CW_OPENING_SIDE_HEAD | 1u << CW_OPENING_SIDE_JAMB                    \
   | 1u << CW_OPENING_SIDE_SILL)

G_END_DECLS

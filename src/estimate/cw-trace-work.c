/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a task of the crew is done on, and what a trade step is bought for.
 */
#include "cw-layout.h"
#include "cw-trace-private.h"

#define ALL_PIECES                                                            \
  (1u << CW_PIECE_WHOLE | 1u << CW_PIECE_RASPED | 1u << CW_PIECE_CUT)

/* By the variant of the line: tasks, then trade steps by their labels. */
static const struct
{
  const char *variant;
  CwShows shows;
  guint detail;
} works[] = {
  { "barrier", CW_SHOWS_BARRIER, 0 },
  { "sawing", CW_SHOWS_SAW_CUTS, 0 },
  { "sawing", CW_SHOWS_SAW_CUTS, 1 },
  { "panels", CW_SHOWS_PIECES, ALL_PIECES },
  { "joints", CW_SHOWS_MORTAR, 0 },
  { "base coat and mesh", CW_SHOWS_COATED, 0 },
  { "finish", CW_SHOWS_COATED, 0 },
  { "sealant", CW_SHOWS_SEALANT, 0 },
  { "beads", CW_SHOWS_CORNER_BEADS, 0 },
  { "beads", CW_SHOWS_STARTER, 0 },
  { "beads", CW_SHOWS_OPENING_SIDES, 1u << CW_OPENING_SIDE_HEAD },
  { "beads", CW_SHOWS_CONTROL_JOINTS, 0 },
  { "Barrier", CW_SHOWS_BARRIER, 0 },
  { "Panels", CW_SHOWS_PIECES, ALL_PIECES },
  { "Joints", CW_SHOWS_MORTAR, 0 },
  { "Fasteners", CW_SHOWS_FASTENERS, 0 },
  { "Coats", CW_SHOWS_COATED, 0 },
  { "Sealant", CW_SHOWS_SEALANT, 0 },
  { "Beads", CW_SHOWS_CORNER_BEADS, 0 },
  { "Beads", CW_SHOWS_STARTER, 0 },
  { "Beads", CW_SHOWS_OPENING_SIDES, 1u << CW_OPENING_SIDE_HEAD },
  { "Beads", CW_SHOWS_CONTROL_JOINTS, 0 },
};

void
cw_trace_work (CwTrace *trace, guint detail)
{
  for (guint i = 0; i < G_N_ELEMENTS (works); i++)
    if (g_strcmp0 (works[i].variant, trace->variant) == 0)
      cw_trace_add (trace, works[i].shows, works[i].detail);
}

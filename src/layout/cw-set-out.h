/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Setting out along one line: where panels end and joints stand between
 * them. Lengths on a line, nothing of walls; used for the panels along a
 * course and for the courses across a wall.
 *
 *   slot    the uncut panel; begins where the piece begins, or hangs over
 *           the start of the run when its first part is cut away
 *
 *   run.low                                             run.high
 *   |  piece  |joint|   piece = length   |joint|  piece  |
 *   ---slot---|     |--------slot--------|     |--------slot------
 */
#pragma once

#include "cw-frame.h"
#include "cw-layout.h"

G_BEGIN_DECLS

/* Where a joint may not begin: strictly between low and high. */
typedef struct
{
  CwLength low, high;
  CwTroubleKind kind;
} CwZone;

typedef struct
{
  CwLength length;          /* of a panel along the line, > 0 */
  CwLength joint;           /* between panels, >= 0 */
  CwLength least;           /* narrowest piece, >= 1 nm */
  CwLength least_low;       /* of the first and the last piece of a run, */
  CwLength least_high;      /* >= least: more where the wall tapers off */
  gboolean one_if_it_fits;  /* a run that a panel spans takes one panel */
  GArray *zones;            /* (nullable): CwZone, sorted by cw_zones_sort() */
  CwLength widest_zone;     /* set by cw_zones_sort() */
  const GArray *studs;      /* (nullable): CwLength; joints stand on these */
} CwSetOutRules;

/* One panel's place on the line. */
typedef struct
{
  CwLength low, high;
  CwLength slot;            /* where the uncut panel begins */
} CwStretch;

/* A rule broken: the joint that begins at `at`. */
typedef struct
{
  CwTroubleKind kind;
  CwLength at;
} CwSetOutTrouble;

/* Results of setting out a run; both arrays are appended to. */
typedef struct
{
  GArray *stretches;        /* CwStretch, in order */
  GArray *troubles;         /* CwSetOutTrouble */
} CwSetOut;

void cw_zones_sort (CwSetOutRules *rules);

/* The start of the slot at @at in an endless row of panels, one of which
 * begins at @origin; @at itself when a joint of the row is there. */
CwLength cw_set_out_slot (const CwSetOutRules *rules, CwLength origin,
                          CwLength at);

/*
 * cw_set_out_run:
 * @first_slot: where the first panel would begin, at most @run.low
 *
 * Lays panels from @run.low to @run.high. Each joint stands where the row of
 * uncut panels has it, or as near to that as the rules and a panel's length
 * allow, looking ahead to the end of the run. A rule that cannot be kept is
 * dropped for that joint, corners first, then stagger, studs and the least
 * piece, and becomes a trouble.
 */
void cw_set_out_run (const CwSetOutRules *rules, CwInterval run,
                     CwLength first_slot, CwSetOut *out);

/*
 * cw_set_out_both_corners:
 * @wall: the length of the wall, on which @run lies
 * @left: where a panel of the left corner's row begins
 * @right: where one of the right corner's does, counted from that corner
 *
 * As cw_set_out_run(), with panels laid from both corners toward the middle
 * of the wall and a closer where they meet:
 *
 *   0                        wall / 2                      wall
 *   |  panel  |j|  panel  |j| closer |j|  panel  |j|  panel  |
 */
void cw_set_out_both_corners (const CwSetOutRules *rules, CwInterval run,
                              CwLength wall, CwLength left, CwLength right,
                              CwSetOut *out);

/* Which of @stretches is the closer; they are not empty. */
guint cw_set_out_closer (const CwSetOutRules *rules, const GArray *stretches,
                         CwLength wall);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The level and upright lines of a part of a page, those that go on from each
 * other joined: what frames of openings are made of.
 */
#pragma once

#include "cw-drawn-lines.h"

G_BEGIN_DECLS

/* Points of the page that are one: the ends of lines that meet, lines that lie
 * on each other. 2 mm of wall at 1:48. */
#define CW_DRAWN_REACH 0.13

typedef struct
{
  double at;            /* y of a level run, x of an upright one */
  double begin, end;    /* along it, rising */
} CwDrawnRun;

/* (element-type CwDrawnRun): by @at, then @begin, rising */
typedef struct
{
  GArray *level;
  GArray *upright;
} CwDrawnRuns;

/* Of the lines that come into the box; whole, also beyond it.
 * (transfer full) */
CwDrawnRuns *cw_drawn_runs_new (const CwDrawnLines *lines, double left,
                                double top, double right, double bottom);
void cw_drawn_runs_free (CwDrawnRuns *runs);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwDrawnRuns, cw_drawn_runs_free)

G_END_DECLS

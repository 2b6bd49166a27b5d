/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How few panels can do at the very least, proven.
 */
#pragma once

#include "cw-cut-plan.h"
#include "cw-cut-search.h"

G_BEGIN_DECLS

/* What is to be bounded. */
typedef struct
{
  const CwCutSize *blanks;   /* with the kerf added */
  const guint *times;        /* (nullable): how often each is needed */
  guint n_blanks;
  CwCutSize panel;
  gboolean turn;             /* blanks may lie across the panel */
  guint enough;              /* panels of a known plan: no bound is above it */
  const CwCutSize *rests;    /* that blanks may come out of besides panels */
  const guint *rest_times;   /* (nullable): how often there is each */
  guint n_rests;
} CwCutTask;

/*
 * cw_cut_bound:
 * @effort: how many functions and prices are tried: the more, the closer the
 *   bound
 *
 * First the greatest of the bounds that pairs of dual feasible functions
 * give, one on the widths and one on the heights (Fekete and Schepers, New
 * classes of fast lower bounds for bin packing problems, Math. Program. 91,
 * 2001). Where blanks may be turned each counts the way that weighs less.
 * Where that falls short of a known plan, the bound by linear programming:
 * cw_cut_lp_bound().
 *
 * Rests. Whatever blanks come out of them, the others need as many panels as
 * they weigh; so what can come out of the rests at most is taken off what all
 * blanks weigh. Blanks that fit on a rectangle of a × b weigh together at
 * most F (a) × G (b), where F and G are the most that lengths can come to
 * under the two functions when they add up to a and to b: in a packing each
 * two blanks lie beside or above each other, and if every width and height
 * is replaced by its value they can be laid out again in the same order, so
 * that no row is longer than F (a) and no column higher than G (b). Nor can
 * more come out of them than all blanks weigh that fit on any of them. With
 * prices instead of weights it is what straight cuts can make of each rest.
 *
 * Returns: a number of panels that no plan can go below, by straight cuts
 *   that run right across
 */
guint cw_cut_bound (const CwCutTask *task, CwCutEffort effort,
                    GCancellable *cancellable);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How few panels can do at the very least, proven, whatever the cuts.
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
} CwCutTask;

/*
 * cw_cut_bound:
 * @effort: how many functions are tried: the more, the closer the bound
 *
 * The greatest of the bounds that pairs of dual feasible functions give, one
 * on the widths and one on the heights (Fekete and Schepers, New classes of
 * fast lower bounds for bin packing problems, Math. Program. 91, 2001). Where
 * blanks may be turned each counts the way that weighs less. Holds for any
 * way of cutting, straight through or not.
 *
 * Returns: a number of panels that no plan can go below
 */
guint cw_cut_bound (const CwCutTask *task, CwCutEffort effort);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a set covering knows of one panel; private to cw-cut-cover and
 * cw-cut-choose.
 */
#pragma once

#include "cw-cut-tree.h"

G_BEGIN_DECLS

typedef struct
{
  CwCutTree tree;
  guint kind;
  guint64 cost;
  guint n_sizes;
  guint *sizes;              /* the size of each blank on it, ascending */
} CwCutPattern;

/* Minimise the cost of patterns that yield @needed[s] blanks of each size. */
typedef struct
{
  const GPtrArray *patterns; /* CwCutPattern */
  const guint *needed;
  guint n_sizes;
} CwCutCovering;

G_END_DECLS

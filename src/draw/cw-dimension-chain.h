/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Chains of dimensions outside a wall.
 */
#pragma once

#include "cw-display-list.h"
#include "cw-text-style.h"

G_BEGIN_DECLS

typedef struct
{
  CwDisplayList *list;
  const CwTextStyle *style;
  double mm_per_unit;       /* mm of wall for one point on paper */
} CwChainDrawing;

/* A level chain along y = @at (mm), its extension lines from @from (mm). A
 * figure that does not fit between its ticks is left out: the next chain
 * outward has the sum. @places: CwLength, sorted, each once. */
void cw_dimension_chain_level (const CwChainDrawing *drawing,
                               const GArray *places, double at, double from);

/* The same, upright along x = @at. */
void cw_dimension_chain_upright (const CwChainDrawing *drawing,
                                 const GArray *places, double at,
                                 double from);

/* Sorts lengths and keeps each once. */
void cw_lengths_sort (GArray *lengths);

G_END_DECLS

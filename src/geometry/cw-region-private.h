/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Regions being made, for this folder only.
 */
#pragma once

#include "cw-region.h"

G_BEGIN_DECLS

struct CwRegion
{
  gatomicrefcount count;
  GArray *sides;      /* CwSide, loop after loop */
  GArray *firsts;     /* gsize: where each loop starts */
  GArray *boxes;      /* CwBox of each loop: most cuts pass most loops by */
};

/* A region without loops that loops may be added to. */
CwRegion *cw_region_begin (void);

/* Adds a loop as it runs; loops of one side, or of two without an arc, are
 * left out, as they bound nothing. */
void cw_region_add_loop (CwRegion *region, const CwSide *sides, gsize n);

/* Of a loop of a finished region or one being made. */
CwBox cw_region_loop_box (const CwRegion *region, gsize index);

/* Twice the signed area of the loop's chords, exactly, and the bows, m². */
double cw_loop_area (const CwLoop *loop);

G_END_DECLS

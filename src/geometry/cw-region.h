/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A region: an area bounded by loops of sides, immutable and counted. The
 * inside lies to the left of every side, so outer loops run anticlockwise
 * and holes clockwise. Loops may touch at points; they never cross.
 *
 * Storage is flat: all sides of all loops in one array, loop after loop,
 * with the index of each loop's first side in another.
 */
#pragma once

#include "cw-side.h"

G_BEGIN_DECLS

typedef struct CwRegion CwRegion;

typedef struct
{
  const CwSide *sides;
  gsize n_sides;
} CwLoop;

typedef enum
{
  CW_AXIS_X,   /* the line x = at (upright) */
  CW_AXIS_Y,   /* the line y = at (level) */
} CwAxis;

CwRegion *cw_region_new_empty (void);
CwRegion *cw_region_new_box (const CwBox *box, guint tag);

/* One loop, given either way round; it is turned to run anticlockwise.
 * The loop must be valid (cw_loop_check()). */
CwRegion *cw_region_new_loop (const CwSide *sides, gsize n_sides);

CwRegion *cw_region_ref (const CwRegion *region);
void cw_region_unref (CwRegion *region);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwRegion, cw_region_unref)

gsize cw_region_n_loops (const CwRegion *region);
CwLoop cw_region_loop (const CwRegion *region, gsize index);
gboolean cw_region_is_empty (const CwRegion *region);

/* Where the side after @index ends within its loop. */
static inline CwPoint
cw_loop_end (const CwLoop *loop, gsize index)
{
  return loop->sides[index + 1 < loop->n_sides ? index + 1 : 0].start;
}

/* m². The straight part in 128-bit integers, the bows by formula with
 * compensated summation. */
double cw_region_area (const CwRegion *region);

/* Sum of the lengths of all sides, metres. */
double cw_region_length (const CwRegion *region);

/* The same of the sides with @tag alone. */
double cw_region_length_of (const CwRegion *region, guint tag);

CwBox cw_region_box (const CwRegion *region);
gboolean cw_region_contains (const CwRegion *region, CwPoint point);

/* TRUE when the region is exactly its bounding box. */
gboolean cw_region_is_box (const CwRegion *region);

/*
 * cw_region_split:
 * @low: (out) (nullable): the part with the smaller coordinate
 * @high: (out) (nullable): the other part
 *
 * Cuts along the line @axis = @at. Sides made by the cut get @tag. Both parts
 * are whole regions; arcs stay arcs; area(low) + area(high) = area(region) up
 * to rounding of the last digit.
 */
void cw_region_split (const CwRegion *region, CwAxis axis, CwLength at,
                      guint tag, CwRegion **low, CwRegion **high);

/* The part inside @box. Returns: (transfer full), maybe empty */
CwRegion *cw_region_clip (const CwRegion *region, const CwBox *box, guint tag);

/* The connected parts, each an outer loop with its holes, from the left, then
 * from below. Returns: (transfer full) (element-type CwRegion) */
GPtrArray *cw_region_parts (const CwRegion *region);

/* Both take (transfer none) inputs and return new regions, arcs kept as arcs.
 * Regions with disjoint or nested boundaries take a short way; crossing
 * boundaries are joined with care for shared sides. */
CwRegion *cw_region_union (const CwRegion *const *regions, gsize n);
CwRegion *cw_region_subtract (const CwRegion *from, const CwRegion *what);
CwRegion *cw_region_intersect (const CwRegion *a, const CwRegion *b);

/* The same region mirrored about x = @at. */
CwRegion *cw_region_mirror (const CwRegion *region, CwLength at);
CwRegion *cw_region_move (const CwRegion *region, CwLength dx, CwLength dy);
/* The same region turned a quarter clockwise about the origin: what pointed
 * up points to the right. */
CwRegion *cw_region_turn (const CwRegion *region);

/* Places where the region crosses the line @axis = @at, sorted, in pairs of
 * entering and leaving, as whole nm along the line. For studs and rows.
 * Returns: (transfer full) (element-type CwLength) */
GArray *cw_region_spans (const CwRegion *region, CwAxis axis, CwLength at);

/*
 * Flattens @region: calls @add for every loop with points no further than
 * @deviation nm from the curve. For pictures, tests and spatial predicates.
 */
typedef void (*CwFlatLoopFunc) (const double *xy, gsize n_points,
                                gpointer data);
void cw_region_flatten (const CwRegion *region, double deviation,
                        CwFlatLoopFunc add, gpointer data);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A wall: one elevation with everything it depends on looked up: its buildup
 * and its openings with their marks filled in. What layout and estimate read.
 * Immutable and counted; equal inputs give an equal key, so results can be
 * kept by it.
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

typedef struct
{
  const CwOpening *opening;   /* resolved; its node type tells the kind */
  const CwOpening *drawn;     /* as it stands in the elevation */
  const CwMark *mark;         /* (nullable) */
  CwRegion *shape;            /* whole, not cut to the outline; tagged by CwOpeningSide */
} CwWallOpening;

typedef struct
{
  gatomicrefcount count;
  const CwElevation *elevation;
  const CwBuildup *buildup;   /* NULL when the elevation names none */
  const CwMeasure *measure;
  const CwLimits *limits;
  CwList *marks;              /* the project's, when the wall was made */
  CwRegion *outline;          /* NULL when there is none or it is invalid */
  GArray *openings;           /* CwWallOpening */
  GPtrArray *stub_outs;       /* const CwStubOut * */
  GPtrArray *unclads;         /* const CwUnclad *, valid ones */
  GPtrArray *bands;           /* const CwBand * */
  GPtrArray *dimensions;      /* const CwDimension * */
  CwRegion *opened;           /* openings joined, cut to the outline; tagged as `net` */
  CwRegion *unclad;           /* unclad areas joined, cut to the outline, less openings */
  CwRegion *net;              /* outline less openings less unclad areas; sides keep their tags, see below */
} CwWall;

/* Tags on the sides of `net`: an outline side has its CwEdge, an opening's
 * side CW_WALL_TAG_OPENING + CwOpeningSide, an unclad area's CW_WALL_TAG_UNCLAD. */
#define CW_WALL_TAG_OPENING 16
#define CW_WALL_TAG_UNCLAD 32
/* Of cw_stub_out_shape(); stub-outs are never taken out of `net`. */
#define CW_WALL_TAG_STUB_OUT 33

CwWall *cw_wall_new (const CwProject *project, const CwElevation *elevation);
CwWall *cw_wall_ref (const CwWall *wall);
void cw_wall_unref (CwWall *wall);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwWall, cw_wall_unref)

/*
 * cw_wall_renew:
 * @former: (nullable): the wall as it was
 *
 * A new reference to @former when it was made from the same elevation,
 * buildup, marks, measuring rule and limits as @project has now, by pointer, at
 * the cost of a few comparisons; else a new wall. (transfer full)
 */
CwWall *cw_wall_renew (const CwWall *former, const CwProject *project,
                       const CwElevation *elevation);

/* The same wall built up otherwise; everything else is shared.
 * (transfer full) */
CwWall *cw_wall_with_buildup (const CwWall *wall, const CwBuildup *buildup);

/* TRUE when both were made from the same elevation, buildup, marks,
 * measuring rule and limits (by pointer), so that whatever was worked out for one holds
 * for the other. */
gboolean cw_wall_same (const CwWall *a, const CwWall *b);

G_END_DECLS

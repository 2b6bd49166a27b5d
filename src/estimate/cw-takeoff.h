/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The takeoff: every quantity of a project, per elevation and in all, with
 * the steps that led to it. A pure function of the project; no file, clock,
 * locale or widget in it.
 */
#pragma once

#include <gio/gio.h>

#include "cw-layout.h"
#include "cw-quantity.h"

G_BEGIN_DECLS

/* Bare numbers from which the project's lines are joined; of the estimate. */
typedef struct CwWallFigures CwWallFigures;

/* One wall's figures: for one such wall, whatever its count. */
typedef struct
{
  gatomicrefcount count;
  CwWall *wall;
  CwLayout *layout;
  GPtrArray *quantities;      /* CwQuantity, in the order of the quantity table */
  CwWallFigures *figures;     /* private */
} CwWallTakeoff;

CwWallTakeoff *cw_wall_takeoff_new (const CwWall *wall);
CwWallTakeoff *cw_wall_takeoff_ref (const CwWallTakeoff *takeoff);
void cw_wall_takeoff_unref (CwWallTakeoff *takeoff);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwWallTakeoff, cw_wall_takeoff_unref)

typedef struct
{
  gatomicrefcount count;
  CwProject *project;
  GPtrArray *walls;           /* CwWallTakeoff, in the order of the elevations */
  GPtrArray *quantities;      /* CwQuantity of the whole project */
} CwTakeoff;

/*
 * cw_takeoff_new:
 * @former: (nullable): an earlier takeoff; walls that did not change are
 *   taken over from it, so that an edit of one wall works out one wall
 * @cancellable: (nullable): looked at between walls
 *
 * Returns: (transfer full) (nullable): NULL only when cancelled
 */
CwTakeoff *cw_takeoff_new (const CwProject *project, const CwTakeoff *former,
                           GCancellable *cancellable);
CwTakeoff *cw_takeoff_ref (const CwTakeoff *takeoff);
void cw_takeoff_unref (CwTakeoff *takeoff);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwTakeoff, cw_takeoff_unref)

/* Borrowed; NULL when there is none. @scope NULL or "project": the project. */
const CwWallTakeoff *cw_takeoff_wall (const CwTakeoff *takeoff,
                                      const char *elevation_id);
const CwQuantity *cw_takeoff_quantity (const CwTakeoff *takeoff,
                                       const char *scope, const char *key);

G_END_DECLS

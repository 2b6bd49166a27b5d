/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The takeoff: every quantity of a project, per elevation and in all, with
 * the steps that led to it. A pure function of the project; no file, clock,
 * locale or widget in it.
 */
#pragma once

#include <gio/gio.h>

#include "cw-cost.h"
#include "cw-panel-mix.h"
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
  CwPanelMix *mix;            /* (nullable): without buildup; offcuts stay on the wall */
  GPtrArray *plans;           /* CwPanelPlan, those of the mix */
  GPtrArray *quantities;      /* CwQuantity, in the order of the quantity table */
  CwWallFigures *figures;     /* private */
} CwWallTakeoff;

CwWallTakeoff *cw_wall_takeoff_new (const CwWall *wall);
CwWallTakeoff *cw_wall_takeoff_ref (const CwWallTakeoff *takeoff);
void cw_wall_takeoff_unref (CwWallTakeoff *takeoff);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwWallTakeoff, cw_wall_takeoff_unref)

/* A plan, and how often it is carried out: for walls alike, one after the
 * other. The copies of its pieces count on from @first, by @step each time. */
typedef struct
{
  const CwPanelPlan *plan;
  guint times, first, step;
} CwPanelShare;

/* The panels of one kind that the project uses. Where offcuts stay on the
 * wall, the walls' own plans; where they travel, plans over several walls. */
typedef struct
{
  const CwBuildup *buildup;
  guint panel;                /* its place in the buildup */
  GPtrArray *mixes;           /* CwPanelMix, over several walls each; of all the
                                 buildup's panels: its first stock has them */
  GPtrArray *pools;           /* CwPanelPlan, those of the mixes */
  GArray *shares;             /* CwPanelShare */
  guint n_whole, n_sawn;      /* pieces */
  guint n_panels;             /* that the shares use */
  guint least;                /* no plan can do with fewer, of all the buildup's
                                 panels: its first stock tells, others 0 */
} CwPanelStock;

typedef struct CwTakeoff CwTakeoff;

/* The project with one buildup in place of another. */
typedef struct
{
  const CwAlternate *alternate;   /* of the project */
  CwTakeoff *takeoff;
} CwAlternateTakeoff;

struct CwTakeoff
{
  gatomicrefcount count;
  CwCutEffort effort;         /* how long cut plans were looked for, at least */
  CwProject *project;
  GPtrArray *walls;           /* CwWallTakeoff, in the order of the elevations */
  GPtrArray *stocks;          /* CwPanelStock */
  GPtrArray *quantities;      /* CwQuantity of the whole project */
  CwCost *cost;
  GPtrArray *alternates;      /* CwAlternateTakeoff: those that name both buildups */
};

/*
 * cw_takeoff_new:
 * @former: (nullable): an earlier takeoff; walls that did not change are
 *   taken over from it, so that an edit of one wall works out one wall
 * @cancellable: (nullable): looked at between walls
 *
 * An answer within the time of a drag: cut plans are made at once, without a
 * search, unless @former has one for the same pieces.
 *
 * Returns: (transfer full) (nullable): NULL only when cancelled
 */
CwTakeoff *cw_takeoff_new (const CwProject *project, const CwTakeoff *former,
                           GCancellable *cancellable);

/*
 * cw_takeoff_improve:
 * @effort: how long to look for each plan
 *
 * The same takeoff with its cut plans looked for longer, and all that follows
 * from them. What is printed and exported is improved with
 * CW_CUT_EFFORT_LONG, unless somebody wants it sooner: it then depends on the
 * project alone, not on the edits that led to it.
 *
 * Returns: (transfer full) (nullable): @takeoff itself when it is settled;
 *   NULL only when cancelled
 */
CwTakeoff *cw_takeoff_improve (const CwTakeoff *takeoff, CwCutEffort effort,
                               GCancellable *cancellable);

/* Called now and then from the thread that searches: the panels of the
 * project by the best plans so far, and the share of the search done, 0 … 1. */
typedef void (*CwTakeoffProgress) (guint n_panels, double share,
                                   gpointer data);

/*
 * cw_takeoff_search:
 * @takeoff: settled with CW_CUT_EFFORT_LIVE
 * @progress: (nullable): called with @data
 * @cancellable: (nullable): looked at many times a second
 *
 * Improves with CW_CUT_EFFORT_LONG and never makes a plan worse. Where the
 * search ends depends on the project alone, also when an earlier one was
 * stopped.
 *
 * Returns: (transfer full): when cancelled, with what was found until then,
 *   which may be @takeoff itself; it is then settled no more than @takeoff
 */
CwTakeoff *cw_takeoff_search (const CwTakeoff *takeoff,
                              CwTakeoffProgress progress, gpointer data,
                              GCancellable *cancellable);

/* TRUE when looking on with @effort can bring nothing. */
gboolean cw_takeoff_is_settled (const CwTakeoff *takeoff, CwCutEffort effort);

CwTakeoff *cw_takeoff_ref (const CwTakeoff *takeoff);
void cw_takeoff_unref (CwTakeoff *takeoff);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwTakeoff, cw_takeoff_unref)

/* Borrowed; NULL when there is none. @scope NULL or "project": the project. */
const CwWallTakeoff *cw_takeoff_wall (const CwTakeoff *takeoff,
                                      const char *elevation_id);
const CwQuantity *cw_takeoff_quantity (const CwTakeoff *takeoff,
                                       const char *scope, const char *key);

G_END_DECLS

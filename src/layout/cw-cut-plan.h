/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The cut plan: which pieces come out of which panel, by which cuts in which
 * order, and how far that is from the least number of panels that could do.
 * A pure function of the blanks; the result is immutable and counted.
 *
 * The kerf. A saw cut takes one kerf of the panel. If every blank and every
 * panel is counted one kerf longer and one kerf higher, a cut takes nothing
 * and pieces simply lie beside each other: a panel of 2400 with a kerf of 4
 * holds two pieces of 1198, since 2 × (1198 + 4) = 2400 + 4.
 */
#pragma once

#include <gio/gio.h>

#include "cw-cut-tree.h"

G_BEGIN_DECLS

typedef struct
{
  CwLength width, height;    /* along the panel and across it */
  guint group;               /* offcuts do not travel between groups */
} CwCutBlank;

typedef struct
{
  CwLength length, height;   /* of the panel */
  CwLength kerf;
  gboolean turn;             /* a blank may lie across the panel */
} CwCutRules;

/* How long to look. Counted in places looked at, so that a plan does not
 * depend on the machine. */
typedef enum
{
  CW_CUT_EFFORT_FIRST,       /* no search: large blanks first, best place each */
  CW_CUT_EFFORT_LIVE,        /* some milliseconds a hundred blanks */
  CW_CUT_EFFORT_LONG,        /* some seconds a hundred blanks */
} CwCutEffort;

typedef struct
{
  guint blank;               /* its place in the array given */
  CwLength x, y;             /* lower left corner on the panel */
  CwLength width, height;    /* as it lies */
  gboolean turned;
} CwCutPlacement;

/* One straight cut, right across the part that is in hand. */
typedef struct
{
  gboolean upright;          /* across the panel; else along it */
  CwLength at;               /* near side of the kerf, from the panel's lower left */
  CwLength from, to;         /* where it begins and ends */
} CwCut;

typedef struct
{
  guint group;
  GArray *placements;        /* CwCutPlacement */
  GArray *cuts;              /* CwCut, in the order of sawing */
  CwCutTree tree;            /* the same as a tree; no nodes when uncut */
} CwCutPanel;

typedef struct
{
  gatomicrefcount count;
  CwCutRules rules;
  GPtrArray *panels;         /* CwCutPanel */
  guint least;               /* no plan can do with fewer panels */
} CwCutPlan;

/* Called with the panels of the best plan so far, all groups taken together,
 * and the share of the effort spent, 0 … 1. */
typedef void (*CwCutProgress) (guint n_panels, double share, gpointer data);

/*
 * cw_cut_plan_new:
 * @blanks: each at most a panel large; what is larger by rasping counts as a
 *   panel
 * @progress: (nullable): called now and then from the thread that searches
 *
 * Returns: (transfer full): the best plan found; when @cancellable is
 *   cancelled, the best until then
 */
CwCutPlan *cw_cut_plan_new (const CwCutBlank *blanks, guint n_blanks,
                            const CwCutRules *rules, CwCutEffort effort,
                            CwCutProgress progress, gpointer data,
                            GCancellable *cancellable);

/*
 * cw_cut_plan_improve:
 * @former: a plan of the same blanks
 *
 * Looks on from @former, first for a plan of one panel less.
 *
 * Returns: (transfer full): a plan of fewer panels, or with the same panels
 *   and perhaps a greater bound; when @cancellable is cancelled, the best
 *   until then
 */
CwCutPlan *cw_cut_plan_improve (const CwCutPlan *former,
                                const CwCutBlank *blanks, guint n_blanks,
                                CwCutEffort effort, CwCutProgress progress,
                                gpointer data, GCancellable *cancellable);

/* Without any panel yet. (transfer full) */
CwCutPlan *cw_cut_plan_new_empty (const CwCutRules *rules);

/* The same cuts with each blank called by its number in @names; those that
 * are not in the plan are not asked for. (transfer full) */
CwCutPlan *cw_cut_plan_renamed (const CwCutPlan *plan, const guint *names);

CwCutPlan *cw_cut_plan_ref (const CwCutPlan *plan);
void cw_cut_plan_unref (CwCutPlan *plan);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwCutPlan, cw_cut_plan_unref)

G_END_DECLS

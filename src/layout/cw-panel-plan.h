/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The panel plan: which piece of which wall comes out of which panel.
 *
 *   layouts ─┬─► pieces placed whole or rasped: a panel each
 *            └─► sawn pieces ──► their blanks ──► cut plan
 *
 * A blank is the smallest rectangle round a piece, along the panel. What is
 * then sawn out of a blank, a notch or what a rake or a curve cuts off, holds
 * rectangles: rests. Where that saves a panel, small blanks come out of
 * rests:
 *
 *   panel ──► blank ──► piece
 *               └─────► rest ──► blanks ──► …
 *
 * A pure function of the layouts; the result is immutable and counted.
 */
#pragma once

#include "cw-cut-plan.h"
#include "cw-layout.h"

G_BEGIN_DECLS

/* Walls set out alike: @n of them, the first of which is number @first. */
typedef struct
{
  const CwLayout *layout;
  guint first, n;
} CwPanelWalls;

/* Where a sawn piece goes. */
typedef struct
{
  guint wall;                /* its layout's place in the plan's layouts */
  guint copy;                /* which of the walls alike, from 0 */
  guint piece;               /* its place in the layout */
} CwPanelPiece;

/* A rectangle of the waste of a sawn piece. */
typedef struct
{
  guint host;                /* the piece: its place in the plan's pieces */
  CwLength x, y;             /* from the lower left of the host's blank, x
                                along the panel: on the wall x is to the right,
                                where panels stand it is up and y to the right */
  CwLength width, height;    /* along the panel and across it */
  CwCutPanel *cut;           /* (nullable): the blanks that come out of it and
                                the cuts, from its lower left; its group is the
                                host's */
} CwPanelRest;

typedef struct CwPanelPlan CwPanelPlan;
struct CwPanelPlan
{
  gatomicrefcount count;
  CwCutEffort effort;        /* how long was looked */
  GPtrArray *layouts;        /* CwLayout */
  GArray *pieces;            /* CwPanelPiece, the sawn ones */
  GArray *blanks;            /* CwCutBlank, one for each of them */
  GArray *rests;             /* CwPanelRest: those with room for a blank */
  CwCutPlan *cut;            /* of the blanks but those that come out of rests;
                                NULL when no piece is sawn */
  guint n_whole;             /* pieces that take a panel each */
  guint n_panels;            /* panels used, those included */
  guint least;               /* panels that no plan can go below */
  CwPanelPlan *firm;         /* (nullable): the plan before a search that was
                                stopped. The next one begins with it again:
                                where it ends does not depend on the stop */
};

/*
 * cw_panel_plan_new:
 * @walls: with the same panel and setting out
 * @panel: which of their buildup's panels is planned
 * @offcuts: how far offcuts travel
 * @former: (nullable): a plan whose cuts are taken over when the blanks are
 *   the same and it was looked for at least as long
 *
 * The walls, @panel, @offcuts and @effort decide on the plan, apart from what
 * a longer look at @former brought. From CW_CUT_EFFORT_LIVE on a plan never
 * takes more panels than one whose offcuts stay within their course.
 *
 * Rests are used from CW_CUT_EFFORT_LIVE on, and only by plans that need fewer
 * panels with them; `least` holds for all plans that may use them, at every
 * effort.
 *
 * Returns: (transfer full) (nullable): NULL when cancelled
 */
CwPanelPlan *cw_panel_plan_new (const CwPanelWalls *walls, guint n_walls,
                                guint panel, CwOffcuts offcuts,
                                CwCutEffort effort, const CwPanelPlan *former,
                                GCancellable *cancellable);

/*
 * cw_panel_plan_improve:
 * @progress: (nullable): called now and then from the thread that searches,
 *   with the panels that are cut so far: whole and rasped pieces not counted
 *
 * Looks long, beginning with the cuts of @plan.
 *
 * Returns: (transfer full): @plan, or one of fewer panels or a greater bound;
 *   when @cancellable is cancelled the best until then, which is settled no
 *   more than @plan
 */
CwPanelPlan *cw_panel_plan_improve (const CwPanelPlan *plan,
                                    CwCutProgress progress, gpointer data,
                                    GCancellable *cancellable);
/* Nothing planned: @n_whole pieces that take a panel each. (transfer full) */
CwPanelPlan *cw_panel_plan_new_empty (GPtrArray *layouts, guint n_whole);

/*
 * cw_panel_rules:
 * By which rules sawn pieces come out of a panel of the buildup, which must be
 * as thick as the first and have a size. The saw is one: its kerf is the
 * largest of those panels'.
 *
 * Returns: FALSE when sawn pieces cannot come out of it
 */
gboolean cw_panel_rules (const CwBuildup *buildup, guint panel,
                         CwCutRules *rules);

CwPanelPlan *cw_panel_plan_ref (const CwPanelPlan *plan);
void cw_panel_plan_unref (CwPanelPlan *plan);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwPanelPlan, cw_panel_plan_unref)

/* m of straight cuts by which the blanks come out of their panels: those of
 * the plan alone, without what is then sawn out of a blank. */
double cw_panel_plan_saw (const CwPanelPlan *plan);

/* TRUE when looking on with @effort can bring nothing. */
gboolean cw_panel_plan_is_settled (const CwPanelPlan *plan,
                                   CwCutEffort effort);

G_END_DECLS

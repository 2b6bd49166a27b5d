/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The panel plan where a buildup lists several panels: setting out goes by the
 * first, whole and rasped pieces are of the first, and sawn pieces come out of
 * whichever cost least together.
 *
 *   all on the first panel ──► each cut panel ──► the cheapest panel on
 *         (base)                                  which its blanks fit
 *   searches on each panel ──► good panels ────► the cheapest that yield all
 *
 * What it costs is money where every panel that may be used has a price, else
 * the area of the panels: then also their mass. A pure function of the
 * layouts; the result is immutable and counted.
 */
#pragma once

#include "cw-panel-plan.h"

G_BEGIN_DECLS

typedef struct
{
  gatomicrefcount count;
  CwPanelPlan *base;         /* with the first panel alone */
  GPtrArray *cuts;           /* (nullable): CwCutPlan, as the buildup's panels,
                                of the base's blanks; NULL: as the base */
  GPtrArray *plans;          /* CwPanelPlan, as the buildup's panels: each with
                                the pieces that come out of such panels, or of
                                rests of those pieces */
  CwCutEffort effort;        /* how long was looked */
  guint n_panels;            /* of all kinds */
  guint least;               /* panels that no plan can go below, were all as
                                long and as high as any of the buildup */
  double cost;               /* of the panels: money, or m² */
  double least_cost;         /* no plan costs less, by area */
} CwPanelMix;

/*
 * cw_panel_mix_new:
 * @walls: with the same buildup
 * @offcuts: how far offcuts travel
 * @former: (nullable): taken over where the blanks, panels and prices are the
 *   same and it was looked for at least as long
 *
 * A panel of the buildup may be used when it is as thick as the first and
 * has a size. The saw is one: its kerf is the largest of theirs.
 *
 * Returns: (transfer full) (nullable): NULL when cancelled. It never costs more
 *   than the base.
 */
CwPanelMix *cw_panel_mix_new (const CwPanelWalls *walls, guint n_walls,
                              CwOffcuts offcuts, CwCutEffort effort,
                              const CwPanelMix *former,
                              GCancellable *cancellable);

/*
 * cw_panel_mix_improve:
 * @progress: (nullable): see cw_panel_plan_improve(); tells of the base
 *
 * Looks long. Where a search ends does not depend on earlier ones that were
 * stopped.
 *
 * Returns: (transfer full): @mix, or one that costs no more; when @cancellable
 *   is cancelled the best until then, which is settled no more than @mix
 */
CwPanelMix *cw_panel_mix_improve (const CwPanelMix *mix,
                                  CwCutProgress progress, gpointer data,
                                  GCancellable *cancellable);
CwPanelMix *cw_panel_mix_ref (const CwPanelMix *mix);
void cw_panel_mix_unref (CwPanelMix *mix);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwPanelMix, cw_panel_mix_unref)

/* TRUE when looking on with @effort can bring nothing. */
gboolean cw_panel_mix_is_settled (const CwPanelMix *mix, CwCutEffort effort);

G_END_DECLS

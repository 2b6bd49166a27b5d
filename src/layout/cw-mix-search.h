/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The search for the cheapest panels of several kinds; private to the panel
 * mix.
 */
#pragma once

#include "cw-panel-plan.h"

G_BEGIN_DECLS

/* The panels of a buildup. */
typedef struct
{
  guint n;
  gboolean *is_usable;
  CwCutRules *rules;
  double *costs;
} CwMixKinds;

CwMixKinds *cw_mix_kinds_new (guint n);
void cw_mix_kinds_free (CwMixKinds *kinds);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwMixKinds, cw_mix_kinds_free)

gboolean cw_mix_kinds_equal (const CwMixKinds *a, const CwMixKinds *b);
gboolean cw_mix_kinds_are_several (const CwMixKinds *kinds);

/*
 * cw_mix_search:
 * @base: with the first kind alone; how long was looked for it says how long
 *   to look
 *
 * Which panels yield the base's blanks at the least cost; what comes out of
 * rests stays there. Of two choices that cost the same, the one of fewer
 * panels.
 *
 * Returns: (transfer full) (nullable) (element-type CwCutPlan): as the kinds;
 *   NULL when nothing is cheaper than the base
 */
GPtrArray *cw_mix_search (const CwPanelPlan *base, const CwMixKinds *kinds,
                          GCancellable *cancellable);

G_END_DECLS

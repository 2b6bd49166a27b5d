/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where the joints of a run may stand. A joint is well placed when it keeps
 * the rules itself and when those after it can keep them too, up to the end
 * of the run; so the places are worked out from the end backward:
 *
 *   places of the last joint     |---------| less zones, or the studs there
 *   of the one before it   |-----------------| a piece and a joint back
 *   ...                                                              run.high
 *   |______________________________________________________________________|
 */
#pragma once

#include "cw-set-out.h"

G_BEGIN_DECLS

/* Rules that are held, as a mask of trouble kinds. The least piece always
 * is. */
#define CW_HOLDS(kind) (1u << (kind))

/* Appends to @places (element-type CwInterval) what of @span the rules leave
 * for a joint to begin, whatever comes after it. */
void cw_joint_places_add (const CwSetOutRules *rules, CwInterval span,
                          guint held, GArray *places);

/* Sorted and disjoint; both ends belong to a place.
 * Returns: (transfer full) (element-type CwInterval) */
GArray *cw_joint_places (const CwSetOutRules *rules, CwInterval run,
                         guint held);

/*
 * cw_joint_place_near:
 * @back_first: a place before @wish is taken however near one after it is
 * @place: (out): the place of @places within @reach that is nearest to @wish
 *
 * Returns: FALSE when there is none
 */
gboolean cw_joint_place_near (const GArray *places, CwInterval reach,
                              CwLength wish, gboolean back_first,
                              CwLength *place);

/* TRUE when a joint that begins at @at breaks the rule. */
gboolean cw_joint_breaks (const CwSetOutRules *rules, CwTroubleKind kind,
                          CwLength at);

G_END_DECLS

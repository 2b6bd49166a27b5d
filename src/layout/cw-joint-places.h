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

/*
 * cw_joint_places:
 * Places are sorted and disjoint; both ends belong to a place.
 *
 * Returns: (transfer full) (element-type GArray): by how many joints follow
 *   one that begins there, its places (element-type CwInterval)
 */
GPtrArray *cw_joint_places (const CwSetOutRules *rules, CwInterval run,
                            guint held);

/* Where a joint is wished and how far from there it may be. */
typedef struct
{
  CwInterval reach;
  CwLength wish;
  gboolean back_first;      /* a place before the wish is taken however near
                               one after it is */
} CwJointWish;

/* @place: (out): the place of @places within reach that is nearest.
 * Returns: FALSE when there is none */
gboolean cw_joint_place_near (const GArray *places, const CwJointWish *wish,
                              CwLength *place);

/* The same among the places that at most @n_after joints follow. */
gboolean cw_joint_place_ahead (const GPtrArray *places, guint n_after,
                               const CwJointWish *wish, CwLength *place);

/* TRUE when a joint that begins at @at breaks the rule. */
gboolean cw_joint_breaks (const CwSetOutRules *rules, CwTroubleKind kind,
                          CwLength at);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What kind of edge each side of a freshly drawn outline is likely to be. The
 * rules are common practice and no more than a start; every guess stands in
 * the inspector to be changed.
 */
#pragma once

#include "cw-outline.h"

G_BEGIN_DECLS

/*
 * cw_edge_guess:
 * Turns a valid outline to run anticlockwise from its lowest left corner and
 * tags every side with a CwEdge:
 *
 *  - looking down and level: base when it is the lowest, or else abutment
 *    (a wall that starts on a roof), which is sealed and so the cautious one;
 *    with no level side at the lowest point, all that look down are base
 *    (ground that slopes);
 *  - looking up: eave when level, rake when sloping or bowed;
 *  - upright: outside corner; abutment between two sides that look down (a
 *    step of the base).
 */
void cw_edge_guess (CwCorner *corners, gsize n_corners);

G_END_DECLS

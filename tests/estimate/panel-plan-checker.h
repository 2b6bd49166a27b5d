/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Checks the panel plans of a takeoff from what they say alone.
 */
#pragma once

#include "cw-takeoff.h"

G_BEGIN_DECLS

/* The takeoff as it is printed: plans looked for at the live effort.
 * (transfer full) */
CwTakeoff *settled_takeoff (const CwProject *project,
                            const CwTakeoff *former);

/* Aborts unless every piece of every wall comes out of one panel, as
 * check_one_plan() sees it, the counts add up, and the cut list has them all. */
void check_panel_plans (const CwTakeoff *takeoff);

guint panels_used (const CwTakeoff *takeoff);
guint panels_needed (const CwTakeoff *takeoff);

/* The plan is off its bound by at most a panel or one in a hundred; tells
 * the figures of @name. */
void assert_plan_near_bound (const CwTakeoff *takeoff, const char *name);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Projects written in a line, for the tests of the estimate.
 *
 * Walls, separated by "; ": width x height in metres, then what is on it:
 *
 *   12.5x7 *2 corners window:1.5x1/0.2 door:0.9x2.1 arch:1.2x1+0.4:pointed
 *
 * "*2" is the count; "corners" makes its upright edges outside corners
 * (joints otherwise), "abutments" abutments; "installed" is the state of its
 * barrier. Openings stand side by side from the left, doors on the base, the
 * others 0.2 m over it; "/0.2" is the reveal, "@1,0.5" a place, "#w1" a mark.
 * "stub:0.06" is round, "band:5x0.15x0.025" has length, height, projection,
 * "unclad:2x1@0,0" a rectangle.
 *
 * Settings of the buildup and the project, separated by blanks:
 *
 *   barrier.lap=50.8 measure.rule=through measure.limit=2.5
 *
 * "mesh=none" takes a layer out of the buildup. The buildup starts as that of
 * a new metric project.
 */
#pragma once

#include "cw-takeoff.h"

G_BEGIN_DECLS

CwProject *case_project (const char *walls, const char *settings);

/* An elevation with that outline and these items. (transfer full) */
CwNode *case_elevation_of (const char *id, const CwCorner *corners, gsize n,
                           GPtrArray *items);

/* A project with these elevations, (element-type CwNode). (transfer full) */
CwProject *case_project_of (GPtrArray *elevations, const char *settings);

/* The amount or the order amount; the test fails when there is no such line. */
double case_amount (const CwTakeoff *takeoff, const char *scope,
                    const char *key);

/* |a - b| is at most @tolerance times the larger of 1 and |b|. */
#define case_assert_near(a, b, tolerance)                                     \
  g_assert_cmpfloat_with_epsilon (a, b, (tolerance) * MAX (1, ABS (b)))

G_END_DECLS

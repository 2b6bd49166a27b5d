/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A large job for the benchmarks: many walls, each 30 m × 12 m with 25
 * windows, no two alike.
 */
#pragma once

#include "estimate-cases.h"

G_BEGIN_DECLS

/* The first wall of it, e1. */
typedef enum { LARGE_JOB_EVEN, LARGE_JOB_WITH_BIG_WALL } LargeJobKind;

/* With a big wall: 200 m × 36 m, some 5 000 panels, with 60 windows, arches
 * and stub-outs. (transfer full) */
CwProject *large_job (guint n_walls, LargeJobKind kind);

G_END_DECLS

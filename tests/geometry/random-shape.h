/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls and openings by chance, many of them on a coarse grid, so that
 * corners, sides and cuts fall together as they do on real drawings.
 */
#pragma once

#include "cw-region.h"

G_BEGIN_DECLS

/* 1 nm, 1 mm, 1/16 in, 100 mm or 300 mm. */
CwLength random_grid (GRand *rand);

/* A multiple of @grid from @low to @high. */
CwLength random_length (GRand *rand, CwLength grid, CwLength low,
                        CwLength high);

/* A wall's outline of up to 12 × 9 m, some sides bowed. (transfer full) */
CwRegion *random_outline (GRand *rand, CwLength grid);

/* A window, arch, round hole or odd shape somewhere about such a wall. */
CwRegion *random_opening (GRand *rand, CwLength grid);

/* The joined openings of one wall: at most @most. */
CwRegion *random_openings (GRand *rand, CwLength grid, guint most);

/* An outline less openings. */
CwRegion *random_wall (GRand *rand, CwLength grid);

/* A text of the region to type into another test. */
char *random_shape_text (const CwRegion *region);

G_END_DECLS

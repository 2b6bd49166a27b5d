/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A sheet's scale in words.
 */
#pragma once

#include "cw-sheet-scale.h"

G_BEGIN_DECLS

/* The stated scale that it is within a thousandth, by preference in @units,
 * else the ratio: "1:75", "1/4\" = 1'-0\"". NULL without a scale.
 * (transfer full) */
char *cw_scale_text (const CwSheet *sheet, CwUnits units);

/* The same for millimetres of building per point. (transfer full) */
char *cw_scale_text_of (double mm_per_point, CwUnits units);

/* A stated scale that is @mm_per_point but for a hundredth, by preference in
 * @units, though not for a thousandth; NULL when there is none. Borrowed. */
const CwStatedScale *cw_scale_near (double mm_per_point, CwUnits units);

G_END_DECLS

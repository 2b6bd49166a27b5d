/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Cutting the sides of two regions where they meet, for this folder only.
 */
#pragma once

#include "cw-region.h"

G_BEGIN_DECLS

typedef struct
{
  CwSide side;
  CwPoint end;
  gboolean is_used;
} CwOverlayPart;

/*
 * Cuts all sides of both at each other. Every place is worked out once, and
 * places within a rounding of each other become one, so that the parts of
 * both start and end at the very same points.
 * @parts_a, @parts_b: (out) (transfer full) (element-type CwOverlayPart)
 */
void cw_overlay_cut (const CwRegion *a, const CwRegion *b, GArray **parts_a,
                     GArray **parts_b);

G_END_DECLS

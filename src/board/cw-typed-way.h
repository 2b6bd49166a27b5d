/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A way typed at the pointer, from one corner to the next:
 *
 *   3600             so far, the way the pointer points
 *   3600 x 900       so far along, so far up or down
 *   3600 x 6:12      so far along, with the rise of a roof pitch
 *   3600 26.57 deg   so far along the slope (also 26.57°, or 6:12)
 *   6:12             only the slope; how far is for the pointer to say
 *
 * Slopes are to the level, and go to the side where the pointer is.
 */
#pragma once

#include "cw-point.h"
#include "cw-text-error.h"
#include "cw-text-style.h"

G_BEGIN_DECLS

typedef struct
{
  gboolean has_length, has_rise, has_slope;
  CwLength length;      /* along the way, or along the level */
  CwLength rise;        /* with has_rise: @length is along the level */
  double run_share, rise_share;   /* of the slope: a unit vector, none < 0 */
} CwTypedWay;

gboolean cw_typed_way (const char *text, const CwTextStyle *style,
                       CwTypedWay *way, GError **error);

/*
 * cw_typed_way_end:
 * @towards: where the pointer is
 *
 * Where @way leads from @from; FALSE: it needs the pointer to point somewhere.
 */
gboolean cw_typed_way_end (const CwTypedWay *way, CwPoint from,
                           CwPoint towards, CwPoint *end);

/* @at brought to the slope through @from, by the nearest way. */
CwPoint cw_typed_way_onto (const CwTypedWay *way, CwPoint from, CwPoint at);

G_END_DECLS

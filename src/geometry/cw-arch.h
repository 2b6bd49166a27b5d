/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The heads of arched openings over a level springing line of width `width`
 * (the span): curves, areas and lengths.
 */
#pragma once

#include "cw-region.h"

G_BEGIN_DECLS

typedef enum
{
  CW_ARCH_SEMICIRCULAR,     /* rise = width / 2 */
  CW_ARCH_SEGMENTAL,        /* one circle, 0 < rise <= width / 2 */
  CW_ARCH_SEMI_ELLIPTICAL,  /* half an ellipse, any rise > 0 */
  CW_ARCH_POINTED,          /* two circles centred on the springing line, rise >= width / 2 */
  CW_ARCH_THREE_CENTRED,    /* two small circles and a large one, 0 < rise < width / 2 */
} CwArchHead;

/* A three-centred head is not fixed by span and rise alone. Ours is the
 * drawing-board one: set the half span less the rise off from the crown on the
 * line to the springing; the upright bisector of the rest gives both centres
 * (common practice, no source). */

/* Which sides of an opening's loop are which; the tags of cw_arch_region()
 * and cw_opening_region(). */
typedef enum
{
  CW_OPENING_SIDE_SILL = 1,
  CW_OPENING_SIDE_JAMB,
  CW_OPENING_SIDE_HEAD,
} CwOpeningSide;

/* Whether a head of that @rise can stand on @width. */
gboolean cw_arch_is_possible (CwArchHead head, CwLength width, CwLength rise);

/* The least and greatest rise that @head allows over @width. */
void cw_arch_rise_limits (CwArchHead head, CwLength width, CwLength *least,
                          CwLength *most);

/* Area between springing line and curve, m²; by formula. */
double cw_arch_area (CwArchHead head, CwLength width, CwLength rise);

/* Length of the curve, m. */
double cw_arch_length (CwArchHead head, CwLength width, CwLength rise);

/*
 * The whole opening: lower left corner at @corner, @width x @height under the
 * springing, the head above it. With @rise 0 it is a plain rectangle and
 * @head is ignored. Sides are tagged by CwOpeningSide.
 * Returns: (transfer full)
 */
CwRegion *cw_opening_region (CwPoint corner, CwLength width, CwLength height,
                             CwArchHead head, CwLength rise);

/* Height of the curve over the springing line at @x from the left springing,
 * in nm; for ordinates on a cut ticket. */
double cw_arch_ordinate (CwArchHead head, CwLength width, CwLength rise,
                         double x);

/* A round (width = height) or rectangular hole about its centre. */
CwRegion *cw_hole_region_round (CwPoint centre, CwLength diameter, guint tag);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An elevation as a display list, layer by layer.
 */
#pragma once

#include "cw-dimension.h"
#include "cw-display-list.h"
#include "cw-takeoff.h"

G_BEGIN_DECLS

typedef enum
{
  CW_LAYER_WALL = 1 << 0,         /* face, outline, unclad areas */
  CW_LAYER_OPENINGS = 1 << 1,     /* with their marks */
  CW_LAYER_STUB_OUTS = 1 << 2,
  CW_LAYER_STUDS = 1 << 3,
  CW_LAYER_PANELS = 1 << 4,       /* pieces and joints */
  CW_LAYER_NUMBERS = 1 << 5,
  CW_LAYER_DIMENSIONS = 1 << 6,   /* chained outside the wall, and drawn ones */
  CW_LAYER_LEVELS = 1 << 7,
  CW_LAYER_CHECKS = 1 << 8,       /* signs of what is to be looked at; the board draws them */
  CW_LAYER_BANDS = 1 << 11,
  CW_LAYER_ALL = 0x9ff,           /* of an elevation as papers show it */
  CW_LAYER_BARRIER = 1 << 9,      /* strips and laps under the panels */
  CW_LAYER_MESH = 1 << 10,        /* laps, edges and corner pieces over them */
} CwLayers;

/* @style: how lengths are written on dimensions. @mm_per_unit: millimetres of
 * wall for one point on paper, so that chains and ticks stand at a readable
 * distance. */
CwDisplayList *cw_elevation_drawing (const CwWallTakeoff *takeoff,
                                     CwLayers layers,
                                     const CwTextStyle *style,
                                     double mm_per_unit);

/* One drawn dimension alone, added to @list. */
void cw_draw_dimension (CwDisplayList *list, const CwDimension *dimension,
                        const CwTextStyle *style, double mm_per_unit);

/* Just what a quantity comes from, in CW_STYLE_LIT. */
CwDisplayList *cw_elevation_drawing_lit (const CwWallTakeoff *takeoff,
                                         const CwQuantityType *type,
                                         const char *variant);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Layers of an elevation that have a file of their own; this folder only.
 */
#pragma once

#include "cw-display-list.h"
#include "cw-takeoff.h"

G_BEGIN_DECLS

typedef struct
{
  CwDisplayList *list;
  const CwWallTakeoff *takeoff;
  const CwWall *wall;
  const CwLayout *layout;
  const CwTextStyle *style;
  double mm_per_unit;
} CwLayerDrawing;

void cw_draw_panels (const CwLayerDrawing *drawing);
void cw_draw_numbers (const CwLayerDrawing *drawing);
void cw_draw_barrier (const CwLayerDrawing *drawing);
void cw_draw_mesh (const CwLayerDrawing *drawing);
void cw_draw_dimensions (const CwLayerDrawing *drawing);
void cw_draw_drawn_dimensions (const CwLayerDrawing *drawing);
void cw_draw_levels (const CwLayerDrawing *drawing);

/* "3-2": course and piece. (transfer full) */
char *cw_draw_piece_id (const CwPiece *piece);
void cw_draw_piece (CwDisplayList *list, CwStyle style, const char *id,
                    const CwPiece *piece);

/* From the middle of @box outward, the first strip of @shape that is @needed
 * wide, or else the widest. */
CwBox cw_draw_shape_room (const CwRegion *shape, const CwBox *box,
                          CwLength needed);
/* A straight side lies on one of the edges of @box. */
gboolean cw_draw_lies_on (const CwBox *box, CwPoint from, CwPoint to);

G_END_DECLS

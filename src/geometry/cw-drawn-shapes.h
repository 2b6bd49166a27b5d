/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Frames of openings among the lines of a page: upright jambs of one height, a
 * sill or threshold between their feet, a level head or an arch between their
 * tops. What was found is a proposal, for a person to take or not.
 */
#pragma once

#include "cw-drawn-lines.h"

G_BEGIN_DECLS

typedef enum
{
  CW_DRAWN_HEAD_LEVEL,
  CW_DRAWN_HEAD_CIRCULAR,     /* a round or segmental arch */
  CW_DRAWN_HEAD_ELLIPTICAL,
} CwDrawnHead;

/* Points of the page, y downward. */
typedef struct
{
  double left, right;
  double top;           /* of the head, or of the crown */
  double springing;     /* where the arch begins; @top for a level head */
  double bottom;
  CwDrawnHead head;
  gboolean is_cornered; /* FALSE: the head's line goes on past the jambs, as
                           that of eaves does; less sure */
} CwDrawnShape;

typedef struct
{
  GArray *shapes;       /* (element-type CwDrawnShape): each in the next */
  guint likely;         /* of them; 0 when there are none */
} CwDrawnShapes;

/*
 * cw_drawn_shapes_around:
 * @mm_per_point: of the building, by the sheet's scale: what is too small or
 *   too large for a window or a door is left out
 *
 * The frames around a point, from the inner to the outer. The likely one is
 * the outer edge of the frame: neither a pane or leaf within nor the casing
 * about it, a board so wide that it is no part of the frame. Nor does a shape
 * whose head is no corner count, unless it is another ring of the frame.
 */
CwDrawnShapes *cw_drawn_shapes_around (const CwDrawnLines *lines, double x,
                                       double y, double mm_per_point);
void cw_drawn_shapes_free (CwDrawnShapes *shapes);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwDrawnShapes, cw_drawn_shapes_free)

/* All frames in a part of the page that are as large as @shape and have the
 * same head, none over another; @shape is among them if it lies there.
 * (transfer full) (element-type CwDrawnShape): from the left to the right */
GArray *cw_drawn_shapes_alike (const CwDrawnLines *lines,
                               const CwDrawnShape *shape, double left,
                               double top, double right, double bottom);

G_END_DECLS

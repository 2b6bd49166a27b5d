/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A drawing as a value: a flat list of shapes, each with a style and, where
 * it has one, the id of what it shows. Canvas, PDF, SVG and printer play the
 * same list, so what is seen is what is sent. Coordinates are the wall's, in
 * millimetres as doubles, y up; text keeps a size on paper.
 */
#pragma once

#include "cw-region.h"
#include "cw-style.h"

G_BEGIN_DECLS

typedef struct CwDisplayList CwDisplayList;

typedef enum
{
  CW_SHAPE_OP_PATH,     /* closed or open path, filled, hatched or stroked as its style says */
  CW_SHAPE_OP_TEXT,
} CwShapeOp;

typedef enum { CW_ANCHOR_CENTRE, CW_ANCHOR_LEFT, CW_ANCHOR_RIGHT } CwAnchor;

CwDisplayList *cw_display_list_new (void);
CwDisplayList *cw_display_list_ref (const CwDisplayList *list);
void cw_display_list_unref (CwDisplayList *list);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwDisplayList, cw_display_list_unref)

/* Building. @id (nullable) is copied. Begin, then lines and arcs, then end. */
void cw_display_list_begin (CwDisplayList *list, CwStyle style, const char *id);
void cw_display_list_move_to (CwDisplayList *list, double x, double y);
void cw_display_list_line_to (CwDisplayList *list, double x, double y);
/* An arc of the axis-parallel ellipse from angle @from to @to, from the
 * present point. */
void cw_display_list_arc (CwDisplayList *list, double cx, double cy, double rx,
                          double ry, double from, double to);
void cw_display_list_close (CwDisplayList *list);
void cw_display_list_end (CwDisplayList *list);

void cw_display_list_add_region (CwDisplayList *list, CwStyle style,
                                 const char *id, const CwRegion *region);
void cw_display_list_add_box (CwDisplayList *list, CwStyle style,
                              const char *id, const CwBox *box);
void cw_display_list_add_line (CwDisplayList *list, CwStyle style,
                               const char *id, CwPoint from, CwPoint to);
/* One side of a loop, as an open path that is stroked and never filled. */
void cw_display_list_add_side (CwDisplayList *list, CwStyle style,
                               const char *id, const CwSide *side,
                               CwPoint end);

/* @angle in radians, anticlockwise. @x, @y: the anchor along the line and the
 * middle of its height. */
void cw_display_list_add_text (CwDisplayList *list, CwStyle style,
                               const char *id, double x, double y,
                               double angle, CwAnchor anchor,
                               const char *text);
/* Centred text that is only shown where it fits into @room_width (along the
 * line) × @room_height mm of wall, made smaller down to what can be read. */
void cw_display_list_add_text_in (CwDisplayList *list, CwStyle style,
                                  const char *id, double x, double y,
                                  double angle, double room_width,
                                  double room_height, const char *text);
void cw_display_list_append (CwDisplayList *list, const CwDisplayList *other);

gsize cw_display_list_length (const CwDisplayList *list);

/* Bounds of everything but texts, in mm; FALSE when empty. */
gboolean cw_display_list_bounds (const CwDisplayList *list, double *left,
                                 double *bottom, double *right, double *top);

/* The golden text form: one line an item, numbers in mm to 3 places. */
char *cw_display_list_to_text (const CwDisplayList *list);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls to try the board on, and a hand that works its tools: millimetres
 * on the wall, exact.
 */
#pragma once

#include "cw-tool.h"

/* A project without an elevation. */
CwDocument *case_empty (CwUnits units);

/* The wall e1, 6000 x 3000 mm, from 0, 0, shown, with
 *   o1, a window 1200 x 1400 at 1000, 900
 *   p1, a round stub-out of 100 about 4500, 600
 *   t1, a band 3000 x 150 at 2500, 2600
 *   u1, an unclad area 800 x 500 at 5000, 1500. */
CwDocument *case_wall (void);

/* The same on a sheet of 1:50 with the wall's origin at 100, 400 points. */
CwDocument *case_wall_on_sheet (void);

/* A wall 60 x 9 m with 60 openings: 30 windows, 10 arches, 20 stub-outs. */
CwProject *case_long_wall (void);

const CwElevation *case_elevation (CwDocument *document, const char *id);
const CwNode *case_item (CwDocument *document, const char *id);
gint64 case_get (const CwNode *node, const char *field);

/* A box in whole millimetres. */
CwBox case_box (int left, int bottom, int right, int top);

/* The corners of an outline, or the place and size of an item, in whole
 * millimetres; the test fails otherwise. */
void case_assert_outline (CwDocument *document, const char *id, gsize n,
                          const int (*corners)[2]);
void case_assert_box (CwDocument *document, const char *id, int x, int y,
                      int width, int height);
void case_assert_selected (CwDocument *document, const char *id);

typedef struct
{
  CwDocument *document;
  CwTool *tool;
  double mm_per_pixel;
  CwHold hold;
  double x, y;          /* where it is, mm */
} Hand;

/* 5 mm a pixel; (transfer full) document */
Hand hand_new (CwToolKind kind, CwDocument *document);
void hand_clear (Hand *hand);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Hand, hand_clear)

void hand_take (Hand *hand, CwToolKind kind);
void hand_move (Hand *hand, double x, double y);
void hand_press (Hand *hand, double x, double y);
void hand_release (Hand *hand, double x, double y);
void hand_click (Hand *hand, double x, double y);
/* Presses, goes there in some steps, lets go. */
void hand_drag (Hand *hand, double x0, double y0, double x1, double y1);
void hand_type (Hand *hand, const char *text);
/* It is refused; returns the byte that the error points at. */
gsize hand_type_wrong (Hand *hand, const char *text);

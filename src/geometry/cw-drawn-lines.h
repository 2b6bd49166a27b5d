/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The lines that are drawn on a page, with an index of where they are.
 * Coordinates are points of the page, x to the right, y downward; curves are
 * chains of chords. A value: never changes once made, any thread may read it.
 */
#pragma once

#include <glib-object.h>

G_BEGIN_DECLS

typedef enum
{
  CW_DRAWN_PLAIN = 0,
  CW_DRAWN_BEGINS_INSIDE = 1 << 0,    /* its first end is inside a curve */
  CW_DRAWN_ENDS_INSIDE = 1 << 1,
} CwDrawnFlags;

typedef struct
{
  double x0, y0, x1, y1;
  CwDrawnFlags flags;
} CwDrawnLine;

typedef struct CwDrawnLines CwDrawnLines;

/* The most lines of a page that are kept; what comes after is left out, and
 * cw_drawn_lines_is_cut() says so. */
#define CW_DRAWN_LINES_MOST 400000

/*
 * cw_drawn_lines_new:
 * @lines: (element-type CwDrawnLine): copied; what is shorter than a
 *   hundredth of a point or not finite is left out, and of equals, whichever
 *   way they run, one is kept
 * (transfer full)
 */
CwDrawnLines *cw_drawn_lines_new (const GArray *lines);
CwDrawnLines *cw_drawn_lines_ref (const CwDrawnLines *lines);
void cw_drawn_lines_unref (CwDrawnLines *lines);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwDrawnLines, cw_drawn_lines_unref)

guint cw_drawn_lines_n (const CwDrawnLines *lines);
const CwDrawnLine *cw_drawn_lines_at (const CwDrawnLines *lines, guint i);
gboolean cw_drawn_lines_is_cut (const CwDrawnLines *lines);

/* The numbers of the lines that may come into a box: all that do, and some
 * beside it; each once, in rising order. @found: (element-type guint): emptied
 * first. */
void cw_drawn_lines_within (const CwDrawnLines *lines, double left,
                            double top, double right, double bottom,
                            GArray *found);

typedef enum
{
  CW_DRAWN_NOTHING,
  CW_DRAWN_END,           /* of a line, not of a curve's chord */
  CW_DRAWN_CROSSING,
  CW_DRAWN_RUN,           /* the nearest point along a line */
} CwDrawnKind;

typedef struct
{
  CwDrawnKind kind;
  double x, y;
  guint line;             /* the one that it is on */
} CwDrawnPoint;

/*
 * cw_drawn_lines_nearest:
 * @reach: points; to the circle of it
 *
 * The nearest end or crossing within reach; with none there, the nearest point
 * on a line.
 */
CwDrawnPoint cw_drawn_lines_nearest (const CwDrawnLines *lines, double x,
                                     double y, double reach);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hatches as lines that end where the shape ends. A clip would do the same
 * with less code, but cairo 1.16 writes to a constant of its own when a
 * recording with such a clip is played back into a damage of several boxes,
 * which ends the program (cairo_clip_t, "all clipped").
 */
#pragma once

#include <cairo.h>
#include <glib.h>

G_BEGIN_DECLS

typedef struct
{
  double slope;         /* 1: falling to the right, -1: rising, as y runs down */
  double x, y;          /* a place that a line runs through */
  double spacing;       /* between lines, along a level line */
  gboolean is_dotted;   /* dots along the lines instead of the lines */
} CwHatchLines;

/* Adds the hatch of @shape, a flat path, to the present path as far as the
 * clip's extents show it. What is inside is found by the winding rule. To be
 * stroked by the caller. */
void cw_hatch_trace (cairo_t *cr, const cairo_path_t *shape,
                     const CwHatchLines *lines);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The parts of SVG that cairo writes and that lines are read from: the data of
 * a path, absolute M, L, C and Z only, and a transform.
 */
#pragma once

#include <cairo.h>

#include "cw-drawn-lines.h"

G_BEGIN_DECLS

/*
 * cw_svg_path_read:
 * @data: the d attribute
 * @n: its length in bytes
 * @matrix: from the path's space to that of @lines
 * @lines: (element-type CwDrawnLine): appended to
 *
 * Curves become chords, no farther than 1/20 of a unit of @lines from it.
 * Stops at what it does not know, with the lines up to there.
 */
void cw_svg_path_read (const char *data, gsize n,
                       const cairo_matrix_t *matrix, GArray *lines);

/* "matrix(a,b,c,d,e,f)" or "translate(x,y)"; FALSE for anything else. */
gboolean cw_svg_transform_read (const char *text, cairo_matrix_t *matrix);

G_END_DECLS

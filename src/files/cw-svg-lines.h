/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The lines of a drawing that cairo wrote as SVG, read while it is written.
 * Letters, images and fills of white are no lines; what a clip hides is cut
 * off at the clip's box.
 */
#pragma once

#include <gio/gio.h>

#include "cw-drawn-lines.h"

G_BEGIN_DECLS

typedef struct CwSvgLines CwSvgLines;

/*
 * cw_svg_lines_new:
 * @scale: what the coordinates of the SVG are multiplied by
 * @width, @height: of the page, in the lines' units: what is outside is left
 *   out
 * @cancellable: (nullable)
 */
CwSvgLines *cw_svg_lines_new (double scale, double width, double height,
                              GCancellable *cancellable);
void cw_svg_lines_free (CwSvgLines *svg);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwSvgLines, cw_svg_lines_free)

/* FALSE when it is cancelled, damaged or too much: no more is wanted. */
gboolean cw_svg_lines_feed (CwSvgLines *svg, const char *bytes, gsize n);

/* (transfer full) (nullable) (element-type CwDrawnLine): NULL when a piece was
 * refused or the end is missing. */
GArray *cw_svg_lines_finish (CwSvgLines *svg);

G_END_DECLS

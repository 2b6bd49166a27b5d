/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Drawings and pictures for the tests of draw.
 */
#pragma once

#include "cw-elevation-drawing.h"
#include "cw-painter.h"
#include "estimate-cases.h"

G_BEGIN_DECLS

/* One wall as estimate-cases.h describes walls, but under a gable that rises
 * over the middle by @rise metres. (transfer full) */
CwTakeoff *draw_case_gable (const char *wall, double rise);

/* A gabled wall with everything that can be on one. (transfer full) */
CwTakeoff *draw_case_house (void);

const CwWallTakeoff *draw_case_wall (const CwTakeoff *takeoff);

/* @list on the palette's paper, the wall's origin @left and @up pixels from
 * the picture's lower left. (transfer full) */
cairo_surface_t *draw_case_picture (const CwDisplayList *list,
                                    CwPalette palette, double scale,
                                    int width, int height, double left,
                                    double up);

/* 0xRRGGBB of a pixel, counted from the upper left. */
guint32 draw_case_pixel (cairo_surface_t *picture, int x, int y);

/* How many different colours a part of @picture has. */
guint draw_case_n_colours (cairo_surface_t *picture, int x, int y, int width,
                           int height);

/* The colour as draw_case_pixel() tells it. */
guint32 draw_case_colour (const CwColour *colour);

/* What a paint leaves on an endless sheet, in its units; FALSE for nothing. */
gboolean draw_case_ink (const CwDisplayList *list, const CwPaint *paint,
                        double *width, double *height);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The pixels of a drawn sheet: the paper taken away, so that what lies under
 * the ink is seen, and cut into textures. Any thread may do this.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* Turns the pixels of an RGB24 surface into ink alone, premultiplied ARGB:
 * laid on white they look as before. @dark: light ink, for dark paper. */
void cw_sheet_pixels_finish (cairo_surface_t *surface, gboolean dark);

/* A copy of a part of such a surface, as ARGB32. (transfer full) */
cairo_surface_t *cw_sheet_pixels_cut (cairo_surface_t *surface, int x, int y,
                                      int width, int height);

/* The same pixels as a texture; keeps the surface. (transfer full) */
GdkTexture *cw_sheet_pixels_texture (cairo_surface_t *surface);

/* The same pixels as a node that draws them at 0, 0. (transfer full) */
GskRenderNode *cw_sheet_pixels_node (cairo_surface_t *surface);

G_END_DECLS

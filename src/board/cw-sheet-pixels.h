/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The pixels of a drawn sheet: fit to be shown, and cut into textures. Any
 * thread may do this.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* Makes an RGB24 surface's unused byte opaque; for the dark look, ink and
 * paper change places and neither is quite black or white. */
void cw_sheet_pixels_finish (cairo_surface_t *surface, gboolean dark);

/* A copy of a part of a finished surface. (transfer full) */
GdkTexture *cw_sheet_pixels_texture (cairo_surface_t *surface, int x, int y,
                                     int width, int height);

G_END_DECLS

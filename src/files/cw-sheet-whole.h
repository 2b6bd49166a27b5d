/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whether an image file is all there. Loaders fill what was cut off with grey
 * and say nothing, and a wall there would not be seen.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* @type: "png", "jpeg" or "tiff"; a TIFF's loader sees for itself. */
gboolean cw_sheet_image_is_whole (const guchar *data, gsize n,
                                  const char *type);

G_END_DECLS

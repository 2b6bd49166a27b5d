/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The pixels of a plan sheet that is an image.
 */
#pragma once

#include <cairo.h>
#include <glib.h>

G_BEGIN_DECLS

typedef struct
{
  cairo_surface_t *surface;   /* RGB24, upright by its EXIF orientation */
  double width, height;       /* points */
} CwSheetImage;

/*
 * @bytes: the whole file
 * @type: "png", "jpeg" or "tiff"
 * @error: domain CW_SHEET_ERROR, the message a clause to follow the file's
 *   name
 * Returns: (transfer full) (nullable)
 */
CwSheetImage *cw_sheet_image_load (GBytes *bytes, const char *type,
                                   GError **error);
void cw_sheet_image_free (CwSheetImage *image);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwSheetImage, cw_sheet_image_free)

G_END_DECLS

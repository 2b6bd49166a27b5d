/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The pages of a plan sheet's file: a PDF or an image. Sizes are in points of
 * the page as shown (crop box, the page's own turn applied). An image counts
 * 72 points an inch by its resolution, or one point a pixel when it has none.
 * Safe to use from one worker thread at a time.
 */
#pragma once

#include <cairo.h>
#include <gio/gio.h>

G_BEGIN_DECLS

#define CW_SHEET_ERROR (cw_sheet_error_quark ())
GQuark cw_sheet_error_quark (void);

typedef enum
{
  CW_SHEET_ERROR_READ,        /* cannot be read from disk */
  CW_SHEET_ERROR_KIND,        /* neither PDF, PNG, JPEG nor TIFF */
  CW_SHEET_ERROR_DAMAGED,     /* cut short, or not what it says it is */
  CW_SHEET_ERROR_PASSWORD,
  CW_SHEET_ERROR_TOO_LARGE,   /* more pages, points or pixels than can be held */
  CW_SHEET_ERROR_RENDER,
} CwSheetError;

/* The most pixels of an image; 30000 x 20000. */
#define CW_SHEET_PIXELS_MOST 600000000
/* The most pixels a side that are drawn at once. */
#define CW_SHEET_RENDER_MOST 16384

#define CW_TYPE_SHEET_SOURCE (cw_sheet_source_get_type ())
G_DECLARE_FINAL_TYPE (CwSheetSource, cw_sheet_source, CW, SHEET_SOURCE, GObject)

/* Tells the kind of the file by its bytes, not by its name. */
CwSheetSource *cw_sheet_source_open (GFile *file, GError **error);
guint cw_sheet_source_n_pages (CwSheetSource *source);

/* Size of page @page (from 1) after a further clockwise @turn of 0, 90, 180
 * or 270 degrees. 0 x 0 for a page that cannot be read. */
void cw_sheet_source_size (CwSheetSource *source, guint page, guint turn,
                           double *width, double *height);

/*
 * cw_sheet_source_render:
 * @scale: pixels a point
 * @x, @y, @width, @height: the wanted part in pixels at that scale, from the
 *   top left of the page as turned
 *
 * Returns: (transfer full) (nullable): an RGB24 image surface on white, also
 *   white beyond the page
 */
cairo_surface_t *cw_sheet_source_render (CwSheetSource *source, guint page,
                                         guint turn, double scale, int x,
                                         int y, int width, int height,
                                         GError **error);

/* SHA-256 of the file's bytes, lower-case hex. (transfer full) (nullable) */
char *cw_sheet_source_sha256 (GFile *file, GCancellable *cancellable,
                              GError **error);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The page is played on a surface of cairo that writes SVG, and the lines are
 * read out of that while it is written.
 */
#include "cw-sheet-lines.h"

#include <cairo-svg.h>

#include "cw-i18n.h"
#include "cw-sheet-source-private.h"
#include "cw-svg-lines.h"

/* cairo keeps coordinates to 1/256 of a unit; a page drawn so much larger
 * keeps them to 1/1024 of a point: 0.03 mm of wall at 1:100. Larger still,
 * and masks that are as large as the page would not fit into memory. */
#define ENLARGED 4

static cairo_status_t
feed (void *svg, const unsigned char *bytes, unsigned int n)
{
  return cw_svg_lines_feed (svg, (const char *) bytes, n)
             ? CAIRO_STATUS_SUCCESS
             : CAIRO_STATUS_WRITE_ERROR;
}

/* Returns: that of the page, or of the writing. */
static cairo_status_t
play (CwSheetSource *source, guint page, guint turn, double width,
      double height, CwSvgLines *svg)
{
  cairo_surface_t *surface = cairo_svg_surface_create_for_stream (
      feed, svg, width * ENLARGED, height * ENLARGED);
  cairo_t *cr = cairo_create (surface);
  cairo_status_t status;

  /* What it cannot write as shapes it would write as pixels: few of them. */
  cairo_surface_set_fallback_resolution (surface, 1, 1);
  cairo_scale (cr, ENLARGED, ENLARGED);
  cw_sheet_source_paint (source, cr, page, turn);
  status = cairo_status (cr);
  cairo_destroy (cr);
  cairo_surface_finish (surface);
  if (status == CAIRO_STATUS_SUCCESS)
    status = cairo_surface_status (surface);
  cairo_surface_destroy (surface);
  return status;
}

CwDrawnLines *
cw_sheet_source_lines (CwSheetSource *source, guint page, guint turn,
                       GCancellable *cancellable, GError **error)
{
  g_autoptr (CwSvgLines) svg = NULL;
  g_autoptr (GArray) lines = NULL;
  double width, height;

  g_return_val_if_fail (CW_IS_SHEET_SOURCE (source), NULL);

  cw_sheet_source_size (source, page, turn, &width, &height);
  svg = cw_svg_lines_new (1.0 / ENLARGED, width, height, cancellable);
  if (cw_sheet_source_is_vector (source) && width > 0)
    {
      if (play (source, page, turn, width, height, svg)
          == CAIRO_STATUS_SUCCESS)
        lines = cw_svg_lines_finish (svg);
      if (g_cancellable_set_error_if_cancelled (cancellable, error))
        return NULL;
      if (lines == NULL)
        {
          g_set_error_literal (
              error, CW_SHEET_ERROR, CW_SHEET_ERROR_RENDER,
              _ ("The lines of this page are too many, or damaged; there is "
                 "no snapping to them. Save the sheet anew with fewer of "
                 "them, or go on by eye."));
          return NULL;
        }
    }
  else
    lines = g_array_new (FALSE, FALSE, sizeof (CwDrawnLine));
  return cw_drawn_lines_new (lines);
}

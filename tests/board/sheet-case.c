/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheet-case.h"

#include <cairo-pdf.h>
#include <glib/gstdio.h>

static void
draw (const char *path)
{
  cairo_surface_t *surface = cairo_pdf_surface_create (
      path, SHEET_CASE_WIDTH, SHEET_CASE_HEIGHT);
  cairo_t *cr = cairo_create (surface);

  cairo_rectangle (cr, SHEET_CASE_BOX_X, SHEET_CASE_BOX_Y,
                   SHEET_CASE_BOX_WIDTH, SHEET_CASE_BOX_HEIGHT);
  cairo_fill (cr);
  cairo_destroy (cr);
  cairo_surface_finish (surface);
  g_assert_cmpint (cairo_surface_status (surface), ==, CAIRO_STATUS_SUCCESS);
  cairo_surface_destroy (surface);
}

CwSheetSource *
sheet_case_open (void)
{
  g_autofree char *folder = g_dir_make_tmp ("sheet-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "sheet.pdf", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GError) error = NULL;
  CwSheetSource *source;

  draw (path);
  source = cw_sheet_source_open (file, &error);
  g_assert_no_error (error);
  g_unlink (path);
  g_rmdir (folder);
  return source;
}

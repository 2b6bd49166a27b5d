/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The takeoff as a PDF: summary page, a page an elevation, the quantities.
 */
#pragma once

#include <gio/gio.h>

#include "cw-takeoff.h"

G_BEGIN_DECLS

#define CW_REPORT_ERROR (cw_report_error_quark ())
GQuark cw_report_error_quark (void);

typedef enum { CW_REPORT_ERROR_DRAWING } CwReportError;

typedef enum { CW_PAPER_BY_UNITS, CW_PAPER_A4, CW_PAPER_LETTER } CwPaper;

/* Called as each page begins, from the thread that draws. */
typedef void (*CwReportProgress) (guint page, guint n_pages, gpointer data);

typedef struct
{
  CwPaper paper;              /* A4 for metric projects, Letter for US ones by default */
  CwTextStyle style;          /* how numbers and lengths are written */
  const char *file_name;      /* (nullable): for the footer */
  CwReportProgress progress;  /* (nullable) */
  gpointer progress_data;
} CwTakeoffPdfOptions;

void cw_takeoff_pdf_options_init (CwTakeoffPdfOptions *options,
                                  const CwProject *project);

/* The whole PDF in memory; the same takeoff and options give the same bytes.
 * Errors: CW_REPORT_ERROR, or G_IO_ERROR_CANCELLED. May run on any thread.
 * (transfer full) (nullable) */
GBytes *cw_takeoff_to_pdf (const CwTakeoff *takeoff,
                           const CwTakeoffPdfOptions *options,
                           GCancellable *cancellable, GError **error);

/* The largest of the named scales (metric: ISO 5455, US: architects') at
 * which @width × @height mm of wall fit into @room_width × @room_height
 * points. @label: (out): static, "1:50" or 1/4" = 1'-0". Where the smallest
 * named scale is still too large, the ratio is the whole number that fits and
 * the label says that it is no named scale. Returns the ratio. */
double cw_named_scale_that_fits (CwUnits units, double width, double height,
                                 double room_width, double room_height,
                                 const char **label);

G_END_DECLS

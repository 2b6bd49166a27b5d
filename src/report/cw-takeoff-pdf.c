/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-takeoff-pdf.h"

#include <cairo-pdf.h>

#include "cw-checks.h"
#include "cw-i18n.h"
#include "cw-takeoff-papers.h"

G_DEFINE_QUARK (cw-report-error-quark, cw_report_error)

/* ISO 216 A4 and ANSI A, in points of 1/72 in. */
static const struct
{
  double width, height;
} papers_sizes[] = {
  [CW_PAPER_A4] = { 210 / 25.4 * 72, 297 / 25.4 * 72 },
  [CW_PAPER_LETTER] = { 612, 792 },
};

void
cw_takeoff_pdf_options_init (CwTakeoffPdfOptions *options,
                             const CwProject *project)
{
  g_return_if_fail (options != NULL && project != NULL);

  *options = (CwTakeoffPdfOptions) {
    .paper = CW_PAPER_BY_UNITS,
    .style = cw_text_style_for_locale ((CwUnits) project->units),
  };
}

static CwPaper
paper_of (const CwTakeoffPdfOptions *options)
{
  if (options->paper != CW_PAPER_BY_UNITS)
    return options->paper;
  return options->style.units == CW_UNITS_US ? CW_PAPER_LETTER : CW_PAPER_A4;
}

static cairo_status_t
append_bytes (void *bytes, const unsigned char *data, unsigned int length)
{
  g_byte_array_append (bytes, data, length);
  return CAIRO_STATUS_SUCCESS;
}

static const char *
title_of (const CwProject *project)
{
  const CwInfo *info = (const CwInfo *) project->info;
  return *info->name ? info->name : _("Project without a name");
}

/* The date of the papers is the project's own: the same project gives the
 * same bytes on any day. */
static void
set_metadata (cairo_surface_t *surface, const CwProject *project)
{
  const CwInfo *info = (const CwInfo *) project->info;
  g_autofree char *title = g_strdup_printf (
      C_ ("document title", "%s: takeoff"), title_of (project));
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_TITLE, title);
  if (*info->estimator)
    cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_AUTHOR,
                                    info->estimator);
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_SUBJECT,
                                  _("Takeoff of panel cladding"));
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_CREATOR,
                                  "Cladwright " CW_VERSION);
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_CREATE_DATE,
                                  info->date);
}

static void
write_papers (const CwPapers *papers)
{
  const GPtrArray *walls = papers->takeoff->walls;
  cw_papers_add_summary (papers);
  cw_papers_add_openings (papers);
  cw_papers_add_quantities (papers);
  cw_papers_add_bid (papers);
  for (guint i = 0; i < walls->len; i++)
    {
      if (cw_pages_is_stopped (papers->pages))
        return;
      cw_papers_add_elevation (papers, walls->pdata[i]);
    }
  cw_papers_add_cuts (papers);
  cw_papers_add_assumptions (papers);
  cw_pages_end (papers->pages);
}

/* "Fennel House · 2026-031 · revision A" */
static char *
running_head (const CwProject *project)
{
  const CwInfo *info = (const CwInfo *) project->info;
  GString *head = g_string_new (title_of (project));
  if (*info->number)
    g_string_append_printf (head, "  ·  %s", info->number);
  if (*info->revision)
    {
      g_string_append (head, "  ·  ");
      g_string_append_printf (head, _("revision %s"), info->revision);
    }
  return g_string_free (head, FALSE);
}

static CwPages *
pages_for (const CwTakeoff *takeoff, const CwTakeoffPdfOptions *options,
           GByteArray *bytes, GCancellable *cancellable)
{
  const CwPaper paper = paper_of (options);
  const double width = papers_sizes[paper].width;
  const double height = papers_sizes[paper].height;
  cairo_surface_t *surface = cairo_pdf_surface_create_for_stream (
      bytes ? append_bytes : NULL, bytes, width, height);
  CwPages *pages = cw_pages_new (surface, width, height);
  cairo_surface_destroy (surface);
  pages->title = title_of (takeoff->project);
  pages->file_name = options->file_name ? options->file_name : "";
  pages->cancellable = cancellable;
  pages->progress = options->progress;
  pages->progress_data = options->progress_data;
  g_free (pages->running);
  pages->running = running_head (takeoff->project);
  return pages;
}

/* How many pages there will be, and where each section begins. */
static CwPages *
try_papers (CwPapers papers, GCancellable *cancellable)
{
  papers.pages = pages_for (papers.takeoff, papers.options, NULL, cancellable);
  papers.pages->is_trial = TRUE;
  papers.pages->sections
      = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  write_papers (&papers);
  return papers.pages;
}

static gboolean
check_surface (cairo_surface_t *surface, GError **error)
{
  const cairo_status_t status = cairo_surface_status (surface);
  if (status == CAIRO_STATUS_SUCCESS)
    return TRUE;
  g_set_error (error, CW_REPORT_ERROR, CW_REPORT_ERROR_DRAWING,
               _("The PDF could not be drawn: %s. Nothing was written; try "
                 "again with fewer elevations at a time."),
               cairo_status_to_string (status));
  return FALSE;
}

GBytes *
cw_takeoff_to_pdf (const CwTakeoff *takeoff,
                   const CwTakeoffPdfOptions *options,
                   GCancellable *cancellable, GError **error)
{
  g_return_val_if_fail (takeoff != NULL && options != NULL, NULL);

  g_autoptr (GByteArray) bytes = g_byte_array_new ();
  g_autoptr (GPtrArray) checks
      = cw_checks_find (takeoff, &options->style, NULL);
  g_autoptr (CwCutList) cuts = cw_cut_list_new (takeoff, cancellable);
  g_autoptr (CwPages) pages
      = pages_for (takeoff, options, bytes, cancellable);
  const CwPapers papers = { takeoff, options, checks, cuts, pages };
  g_autoptr (CwPages) trial = try_papers (papers, cancellable);
  pages->n_pages = trial->number;
  pages->sections = g_hash_table_ref (trial->sections);
  set_metadata (pages->surface, takeoff->project);
  if (!cw_pages_is_stopped (trial))
    write_papers (&papers);
  cairo_surface_finish (pages->surface);
  if (g_cancellable_set_error_if_cancelled (cancellable, error)
      || !check_surface (pages->surface, error))
    return NULL;
  return g_byte_array_free_to_bytes (g_steal_pointer (&bytes));
}

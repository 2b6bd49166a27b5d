/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-page.h"

#include <cairo-pdf.h>

#include "cw-i18n.h"
#include "cw-page-text.h"

/* What has to be left of a page for a section to begin on it. */
#define LEAST_BEGINNING 240.0

CwPages *
cw_pages_new (cairo_surface_t *surface, double paper_width,
              double paper_height)
{
  CwPages *pages = g_new0 (CwPages, 1);
  pages->surface = cairo_surface_reference (surface);
  pages->cr = cairo_create (surface);
  pages->paper_width = paper_width;
  pages->paper_height = paper_height;
  pages->title = pages->file_name = "";
  pages->running = g_strdup ("");
  return pages;
}

void
cw_pages_free (CwPages *pages)
{
  cairo_destroy (pages->cr);
  cairo_surface_destroy (pages->surface);
  g_clear_pointer (&pages->sections, g_hash_table_unref);
  g_free (pages->section);
  g_free (pages->running);
  g_free (pages);
}

static char *
page_count (const CwPages *pages)
{
  return g_strdup_printf (_ ("Page %u of %u"), pages->number, pages->n_pages);
}

static void
draw_head_and_foot (const CwPages *pages)
{
  const double half = pages->width / 2 - CW_PAGE_STEP;
  const double middle = pages->left + pages->width / 2 + CW_PAGE_STEP;
  const double foot = pages->bottom + CW_PAGE_FOOT - 11;
  g_autofree char *count = page_count (pages);

  cw_page_show_line (pages, CW_TYPE_RUNNING, pages->running, pages->left,
                     CW_PAGE_MARGIN, half, CW_ALIGN_LEFT);
  cw_page_show_line (pages, CW_TYPE_RUNNING, pages->section, middle,
                     CW_PAGE_MARGIN, half, CW_ALIGN_RIGHT);
  cw_page_rule (pages, CW_PAGE_MARGIN + 14, 0.5);
  cw_page_rule (pages, foot - 4, 0.5);
  cw_page_show_line (pages, CW_TYPE_RUNNING, pages->file_name, pages->left,
                     foot, half, CW_ALIGN_LEFT);
  cw_page_show_line (pages, CW_TYPE_RUNNING, count, middle, foot, half,
                     CW_ALIGN_RIGHT);
}

/* Links lead to names: cairo 1.16 drops one to a page that is not written
 * yet. */
static void
add_destination (const CwPages *pages)
{
  g_autofree char *name = g_strdup_printf ("name='page-%u'", pages->number);
  cairo_tag_begin (pages->cr, CAIRO_TAG_DEST, name);
  cairo_tag_end (pages->cr, CAIRO_TAG_DEST);
}

static void
start_page (CwPages *pages)
{
  const double width
      = pages->is_turned ? pages->paper_height : pages->paper_width;
  const double height
      = pages->is_turned ? pages->paper_width : pages->paper_height;

  cw_pages_end (pages);
  pages->number++;
  cairo_pdf_surface_set_size (pages->surface, width, height);
  pages->left = CW_PAGE_MARGIN;
  pages->width = width - 2 * CW_PAGE_MARGIN;
  pages->top = pages->y = CW_PAGE_MARGIN + CW_PAGE_HEAD;
  pages->bottom = height - CW_PAGE_MARGIN - CW_PAGE_FOOT;
  if (pages->is_trial)
    return;
  draw_head_and_foot (pages);
  add_destination (pages);
  if (pages->progress)
    pages->progress (pages->number, pages->n_pages, pages->progress_data);
}

static void
add_to_outline (const CwPages *pages)
{
  char y[G_ASCII_DTOSTR_BUF_SIZE];
  g_ascii_formatd (y, sizeof y, "%.1f",
                   pages->y > pages->top ? pages->y : 0);
  g_autofree char *place
      = g_strdup_printf ("page=%u pos=[0 %s]", pages->number, y);
  cairo_pdf_surface_add_outline (pages->surface, CAIRO_PDF_OUTLINE_ROOT,
                                 pages->section, place,
                                 CAIRO_PDF_OUTLINE_FLAG_OPEN);
}

static void
note_section (const CwPages *pages, const char *id)
{
  if (!pages->is_trial)
    add_to_outline (pages);
  else if (id && pages->sections)
    g_hash_table_insert (pages->sections, g_strdup (id),
                         GUINT_TO_POINTER (pages->number));
}

void
cw_pages_begin (CwPages *pages, const char *section, const char *id,
                gboolean is_turned)
{
  pages->is_turned = is_turned;
  g_free (pages->section);
  pages->section = g_strdup (section);
  start_page (pages);
  note_section (pages, id);
}

void
cw_pages_begin_here (CwPages *pages, const char *section, const char *id)
{
  if (pages->y <= pages->top || cw_pages_left (pages) < LEAST_BEGINNING)
    {
      cw_pages_begin (pages, section, id, FALSE);
      return;
    }
  g_free (pages->section);
  pages->section = g_strdup (section);
  pages->y += 4 * CW_PAGE_STEP;
  note_section (pages, id);
}

/* What follows a drawing on its side are tables: they read better upright. */
void
cw_pages_continue (CwPages *pages)
{
  pages->is_turned = FALSE;
  start_page (pages);
}

void
cw_pages_end (CwPages *pages)
{
  if (pages->number > 0)
    cairo_show_page (pages->cr);
}

double
cw_pages_left (const CwPages *pages)
{
  return pages->bottom - pages->y;
}

void
cw_pages_need (CwPages *pages, double height)
{
  if (height > cw_pages_left (pages) && pages->y > pages->top)
    cw_pages_continue (pages);
}

guint
cw_pages_number_of (const CwPages *pages, const char *id)
{
  return pages->sections
             ? GPOINTER_TO_UINT (g_hash_table_lookup (pages->sections, id))
             : 0;
}

gboolean
cw_pages_is_stopped (const CwPages *pages)
{
  return g_cancellable_is_cancelled (pages->cancellable)
         || cairo_status (pages->cr) != CAIRO_STATUS_SUCCESS;
}

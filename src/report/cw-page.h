/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pages that fill from the top down: a place to write at, a running head with
 * the project and the section, a foot with "page x of y".
 *
 *    margin ┌──────────────────────────────┐
 *           │ project              section │  head
 *           │──────────────────────────────│
 *           │ body: at `y`, `left` … `width`  │
 *           │                              │
 *           │ file                  1 of 9 │  foot
 *           └──────────────────────────────┘
 *
 * Papers are made twice: the first time nothing is drawn, so that the second
 * time knows how many pages there are and where each section begins.
 */
#pragma once

#include <cairo.h>
#include <gio/gio.h>
#include <pango/pangocairo.h>

G_BEGIN_DECLS

#define CW_PAGE_MARGIN 36.0
#define CW_PAGE_HEAD 26.0     /* from the margin to the body */
#define CW_PAGE_FOOT 24.0     /* from the body to the margin */
#define CW_PAGE_STEP 6.0      /* every gap is a number of these */

typedef struct
{
  cairo_t *cr;
  cairo_surface_t *surface;   /* a PDF's */
  gboolean is_trial;          /* the first time: measure, draw nothing */
  double paper_width, paper_height;   /* of the paper upright, points */
  gboolean is_turned;         /* this page lies on its long side */
  double left, top, width, bottom;    /* the body */
  double y;                   /* where the next thing goes */
  guint number, n_pages;      /* from 1; n_pages is 0 in the trial */
  const char *title, *file_name;      /* project; foot; never NULL */
  char *running;              /* at the left of the head */
  char *section;
  GHashTable *sections;       /* id → page number, from the trial */
  GCancellable *cancellable;
  void (*progress) (guint number, guint n_pages, gpointer data);  /* (nullable) */
  gpointer progress_data;
} CwPages;

CwPages *cw_pages_new (cairo_surface_t *surface, double paper_width,
                       double paper_height);
void cw_pages_free (CwPages *pages);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwPages, cw_pages_free)

/* A new page whose running head says @section. @id (nullable): its name for
 * cw_pages_number_of() and for the outline. */
void cw_pages_begin (CwPages *pages, const char *section, const char *id,
                     gboolean is_turned);
/* The same, but lower on this page when a good part of it is left. */
void cw_pages_begin_here (CwPages *pages, const char *section,
                          const char *id);
/* A further page of the same section. */
void cw_pages_continue (CwPages *pages);
/* Shows the last page. */
void cw_pages_end (CwPages *pages);

/* Goes on to a further page unless @height points are left on this one. */
void cw_pages_need (CwPages *pages, double height);
double cw_pages_left (const CwPages *pages);

/* Where the section @id begins; 0 when not known (yet). */
guint cw_pages_number_of (const CwPages *pages, const char *id);

gboolean cw_pages_is_stopped (const CwPages *pages);

G_END_DECLS

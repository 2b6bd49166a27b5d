/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A PDF read back: its words with their boxes, its text, its ink.
 */
#pragma once

#include <cairo.h>
#include <poppler.h>

#include "cw-takeoff-pdf.h"

G_BEGIN_DECLS

/* Names of our own, as some versions of the library bring these themselves. */
typedef PopplerDocument PaperDocument;
typedef PopplerPage PaperPage;
G_DEFINE_AUTOPTR_CLEANUP_FUNC (PaperDocument, g_object_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (PaperPage, g_object_unref)

/* Plain signs, the papers of @takeoff read back. (transfer full) */
PopplerDocument *paper_read (const CwTakeoff *takeoff);
PopplerDocument *paper_read_styled (const CwTakeoff *takeoff,
                                    const CwTextStyle *style);

typedef struct
{
  char *text;
  PopplerRectangle box;     /* points, y down */
} PaperWord;

/* (element-type PaperWord) (transfer full) */
GPtrArray *paper_words (PopplerDocument *document, int page);

/* The words of pages @from … @to (exclusive) as a reader goes through them,
 * line by line across all columns, a blank after each. (transfer full) */
char *paper_text (PopplerDocument *document, int from, int to);

/* The first page with @text at the right of its running head from page @from
 * on; the number of pages when there is none. */
int paper_find_section (PopplerDocument *document, const char *text, int from);

/* The longest run of ink (nearly black) across or down the part of the page
 * from @top points on, in points. */
double paper_longest_run (PopplerDocument *document, int page,
                          gboolean upright, double top, double *place);

G_END_DECLS

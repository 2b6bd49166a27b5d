/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The parts of the takeoff, each written to its pages; this folder only.
 */
#pragma once

#include "cw-cut-list.h"
#include "cw-page-table.h"
#include "cw-takeoff-pdf.h"

G_BEGIN_DECLS

typedef struct
{
  const CwTakeoff *takeoff;
  const CwTakeoffPdfOptions *options;
  const GPtrArray *checks;    /* CwCheck */
  const CwCutList *cuts;      /* (nullable): NULL when cancelled */
  CwPages *pages;
} CwPapers;

/* Sections, each from a page of its own on. */
void cw_papers_add_summary (const CwPapers *papers);
void cw_papers_add_quantities (const CwPapers *papers);
void cw_papers_add_openings (const CwPapers *papers);
void cw_papers_add_cuts (const CwPapers *papers);
void cw_papers_add_bid (const CwPapers *papers);
void cw_papers_add_assumptions (const CwPapers *papers);
void cw_papers_add_elevation (const CwPapers *papers,
                              const CwWallTakeoff *wall);

/* Parts of the summary. */
void cw_papers_add_note_heading (const CwPapers *papers, const char *text);
void cw_papers_add_warnings (const CwPapers *papers);
void cw_papers_add_cover (const CwPapers *papers);
void cw_papers_add_cautions (const CwPapers *papers);

/* Parts of an elevation. */
void cw_papers_add_scale_bar (const CwPapers *papers, double points_per_mm,
                              const char *label);
void cw_papers_add_legend (const CwPapers *papers, const CwWallTakeoff *wall);
void cw_papers_add_wall_openings (const CwPapers *papers, const CwWall *wall);
void cw_papers_add_stub_outs (const CwPapers *papers, const CwWall *wall);
void cw_papers_add_pieces (const CwPapers *papers, const CwLayout *layout);
void cw_papers_add_wall_quantities (const CwPapers *papers,
                                    const CwWallTakeoff *wall);

/* Words; all (transfer full). */
char *cw_papers_amount (const CwPapers *papers, double amount,
                        const char *unit);
char *cw_papers_order (const CwPapers *papers, const CwQuantity *quantity);
char *cw_papers_label (const CwQuantity *quantity);
char *cw_papers_length (const CwPapers *papers, CwLength length);
char *cw_papers_dimension (const CwPapers *papers, CwLength length);
char *cw_papers_size (const CwPapers *papers, CwLength width,
                      CwLength height);
char *cw_papers_count (const CwPapers *papers, gint64 count);
const char *cw_papers_name (const CwElevation *elevation);

/* The label of a field's present choice. Borrowed, translated. */
const char *cw_papers_choice (gconstpointer node, const char *field);

/* A heading that stays with the table under it; nothing when it is empty. */
void cw_papers_add_titled_table (const CwPapers *papers, const char *title,
                                 const CwTable *table);

G_END_DECLS

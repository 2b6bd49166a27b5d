/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tables on pages: rows are kept whole, column heads stand again at the top
 * of every page, long text wraps inside its column.
 */
#pragma once

#include "cw-page-text.h"

G_BEGIN_DECLS

typedef struct
{
  const char *title;    /* N_() */
  double share;         /* of the width; shares need not add up to anything */
  CwAlign align;
  CwType type;
} CwTableColumn;

typedef struct CwTable CwTable;

/* @columns is borrowed for the table's life. */
CwTable *cw_table_new (const CwTableColumn *columns, guint n_columns);
void cw_table_free (CwTable *table);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwTable, cw_table_free)

guint cw_table_n_rows (const CwTable *table);

/* A line of its own over the rows that follow, kept with the first of them. */
void cw_table_add_group (CwTable *table, const char *text);

/* Cells fill rows from the left; the row after a full one begins by itself. */
void cw_table_add_cell (CwTable *table, const char *text);
void cw_table_take_cell (CwTable *table, char *text);

/* The page that the last cell's row leads to, when @page is not 0. */
void cw_table_link_row (CwTable *table, guint page);

void cw_pages_add_table (CwPages *pages, const CwTable *table);

/* The head and what stands with it at least: for headings over a table. */
double cw_table_first_height (const CwPages *pages, const CwTable *table);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The pieces of a course: the net wall within each panel's place.
 */
#pragma once

#include "cw-row.h"
#include "cw-set-out.h"

G_BEGIN_DECLS

/* As it lies in its course. */
typedef struct
{
  CwLength length, height;
} CwPanelSize;

/* Appends to @pieces those of one run: what of the run's parts lies within
 * each of the @n stretches. A panel that meets no side of the wall within its
 * place is its box; the others are cut out with their arcs. */
void cw_pieces_of_run (const CwFrame *frame, const CwRow *row,
                       const CwRowRun *run, const CwPanelSize *size,
                       const CwStretch *stretches, guint n, GArray *pieces);

/* GDestroyNotify for an array of CwPiece. */
void cw_piece_clear (gpointer piece);

G_END_DECLS

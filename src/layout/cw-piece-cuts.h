/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The cuts that make a piece of a panel, one by one.
 */
#pragma once

#include "cw-layout.h"

G_BEGIN_DECLS

typedef struct
{
  CwCutFlags kind;          /* one of them */
  gboolean is_rasped;       /* else sawn */
  CwPoint from, to;         /* its ends; of a hole, the corners of its box */
  double length;            /* m, of a curve or round a hole along the arc */
  double curved;            /* m of it along arcs */
} CwPieceCut;

/*
 * cw_piece_cuts:
 * The sides of @piece inside its panel, loop by loop: straight across or
 * along where they bound its blank, else of a notch; rakes and curves; then
 * the stub-outs' holes as far as they lie within the piece.
 *
 * Returns: (transfer full) (element-type CwPieceCut)
 */
GArray *cw_piece_cuts (const CwLayout *layout, const CwPiece *piece);

/* The piece as it is on the wall, holes for stub-outs cut out.
 * (transfer full) */
CwRegion *cw_piece_region (const CwLayout *layout, const CwPiece *piece);

/* kg, holes deducted: the panel's mass by area. */
double cw_piece_mass (const CwLayout *layout, const CwPiece *piece);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Setting out: where every panel goes on a wall, and the pieces that come of
 * it. A pure function of a CwWall; the result is immutable and counted.
 */
#pragma once

#include "cw-wall.h"

G_BEGIN_DECLS

typedef enum
{
  CW_PIECE_WHOLE,     /* a panel placed uncut */
  CW_PIECE_RASPED,    /* trimmed by at most the rasp limit */
  CW_PIECE_CUT,       /* sawn, notched, cut to a rake or a curve, holed */
} CwPieceKind;

/* Why a piece is cut; several may hold. */
typedef enum
{
  CW_CUT_LENGTH = 1 << 0,   /* sawn across */
  CW_CUT_HEIGHT = 1 << 1,   /* ripped along */
  CW_CUT_NOTCH = 1 << 2,
  CW_CUT_RAKE = 1 << 3,
  CW_CUT_CURVE = 1 << 4,
  CW_CUT_HOLE = 1 << 5,     /* a stub-out passes through */
} CwCutFlags;

typedef struct
{
  guint course;       /* from 1, upward (or from the start corner, upright runs) */
  guint number;       /* from 1 within the course, from the start corner */
  CwPieceKind kind;
  CwCutFlags cuts;
  guint panel;        /* which panel of the buildup */
  CwBox slot;         /* where the uncut panel would lie */
  CwBox box;          /* bounding box of the piece: its blank */
  CwRegion *shape;    /* (nullable): NULL when the piece is exactly its box */
  double area;        /* m², without holes for stub-outs */
} CwPiece;

typedef struct
{
  CwLength low, high;       /* its bottom and top (left and right, upright runs) */
  guint first_piece, n_pieces;
} CwCourse;

typedef struct
{
  gboolean is_bed;          /* between courses; else a head joint */
  CwPoint from, to;
} CwJoint;

typedef struct
{
  gatomicrefcount count;
  CwWall *wall;
  GArray *courses;          /* CwCourse */
  GArray *pieces;           /* CwPiece */
  GArray *joints;           /* CwJoint: every line where two pieces meet */
  GArray *studs;            /* CwLength: centre lines, sorted, ends and jambs included */
} CwLayout;

/* A layout for any wall: an empty one when it has no outline or buildup. */
CwLayout *cw_layout_new (const CwWall *wall);
CwLayout *cw_layout_ref (const CwLayout *layout);
void cw_layout_unref (CwLayout *layout);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwLayout, cw_layout_unref)

/* Of the wall's own setting out; 1 for one of its pieces. */
guint cw_layout_count (const CwLayout *layout, CwPieceKind kind);

/* Fasteners of one piece by the studs it crosses: by the rule
 * max(2, ceil((height there - 2 edge) / spacing) + 1). */
guint cw_layout_piece_fasteners (const CwLayout *layout, const CwPiece *piece);

/* The piece under a point, or NULL. */
const CwPiece *cw_layout_piece_at (const CwLayout *layout, CwPoint point);

/* "South-3-2": elevation, course, piece. (transfer full) */
char *cw_layout_piece_name (const CwLayout *layout, const CwPiece *piece);

G_END_DECLS

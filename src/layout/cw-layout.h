/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Setting out: where every panel goes on a wall, and the pieces that come of
 * it. A pure function of a CwWall; the result is immutable and counted.
 *
 *       |<-- along ------------------------->|
 *   ____|____________________________________|___
 *   ^   |  piece 1  |j|  piece 2  |j| piece 3 |     course 2
 *   |   |___________|_|___________|_|_________|___
 *  across  (bed joint, runs through)               ___
 *   |   |________________|j|___________|j|____|
 *   |   |  piece 1       | |  piece 2  | |  3 |     course 1
 *
 * Upright runs are the same picture on its side. Offset and start corner say
 * where panels begin in x, `base` where they begin in y, whichever way they
 * run; all are counted from the outline's bounding box. The pieces and the
 * joints between them cover the wall's net area exactly: what of it lies in
 * no course and no piece of a course lies in a strip one joint wide.
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
  CwCutFlags cuts;    /* which kinds there are; cw_piece_cuts() lists them */
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

/* A rule that could not be kept. The wall has a layout all the same. */
typedef enum
{
  CW_TROUBLE_NO_PANEL,        /* the buildup's panel has no size: empty layout */
  CW_TROUBLE_TOO_MANY,        /* more panels than any wall has: empty layout */
  CW_TROUBLE_LEAST_PIECE,     /* a piece narrower or lower than the least */
  CW_TROUBLE_LEAST_STAGGER,   /* a head joint too near one of the course before */
  CW_TROUBLE_OFF_STUD,        /* a joint, also between upright courses, that
                                 should be on a stud and is not */
  CW_TROUBLE_AT_CORNER,       /* a joint that meets an opening's corner */
} CwTroubleKind;

typedef struct
{
  CwTroubleKind kind;
  CwPoint place;            /* middle of the piece or of the joint */
  guint course;             /* from 1; 0 for the whole wall */
} CwLayoutTrouble;

typedef struct
{
  gatomicrefcount count;
  CwWall *wall;
  GArray *courses;          /* CwCourse */
  GArray *pieces;           /* CwPiece */
  GArray *joints;           /* CwJoint: every line where two pieces meet */
  GArray *studs;            /* CwLength: centre lines, sorted, ends and jambs included */
  GArray *troubles;         /* CwLayoutTrouble */
} CwLayout;

/* A layout for any wall: an empty one when it has no outline or buildup. */
CwLayout *cw_layout_new (const CwWall *wall);
CwLayout *cw_layout_ref (const CwLayout *layout);
void cw_layout_unref (CwLayout *layout);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwLayout, cw_layout_unref)

/* The wall's panels stand: their length runs up the wall. FALSE for the layout
 * of a wall without a buildup. */
gboolean cw_layout_stands (const CwLayout *layout);

/* Of the wall's own setting out; 1 for one of its pieces. */
guint cw_layout_count (const CwLayout *layout, CwPieceKind kind);

/*
 * cw_layout_piece_fasteners:
 * Fasteners of one piece, by the studs that hold it: for each,
 * max(2, ceil((height there - 2 edge) / spacing) + 1). A stud holds a piece
 * that it crosses, and one whose edge stands on it or across a joint's width
 * from it, as at the ends of the wall, at jambs and under head joints. Where
 * a jamb runs down the stud, "there" is beside the opening.
 *
 * Returns: 0 when the buildup has no fastener
 */
guint cw_layout_piece_fasteners (const CwLayout *layout, const CwPiece *piece);

/* Where they are driven: those at a stud evenly between the edge distances;
 * added to @points (element-type CwPoint). */
void cw_layout_piece_fastener_points (const CwLayout *layout,
                                      const CwPiece *piece, GArray *points);

/* The piece under a point, or NULL. */
const CwPiece *cw_layout_piece_at (const CwLayout *layout, CwPoint point);

/* "South-3-2": elevation, course, piece. (transfer full) */
char *cw_layout_piece_name (const CwLayout *layout, const CwPiece *piece);

G_END_DECLS

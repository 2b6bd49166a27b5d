/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The one table of colours, line styles, hatches and text sizes. Kinds are
 * told apart by line style, hatch and letter too, never by colour alone.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef enum
{
  CW_STYLE_WALL,              /* the net face, filled */
  CW_STYLE_OUTLINE,
  CW_STYLE_OPENING,
  CW_STYLE_OPENING_MARK,      /* its name, text */
  CW_STYLE_UNCLAD,
  CW_STYLE_BAND,
  CW_STYLE_STUB_OUT,
  CW_STYLE_STUD,
  CW_STYLE_PIECE_WHOLE,
  CW_STYLE_PIECE_RASPED,
  CW_STYLE_PIECE_CUT,
  CW_STYLE_PIECE_NUMBER,      /* text */
  CW_STYLE_JOINT_BED,
  CW_STYLE_JOINT_HEAD,
  CW_STYLE_DIMENSION,         /* lines and ticks */
  CW_STYLE_DIMENSION_TEXT,
  CW_STYLE_LEVEL,
  CW_STYLE_LEVEL_TEXT,
  CW_STYLE_SELECTION,
  CW_STYLE_HANDLE,
  CW_STYLE_GUIDE,             /* snapping */
  CW_STYLE_DRAFT,             /* what is being drawn */
  CW_STYLE_LIT,               /* what a chosen quantity comes from */
  CW_STYLE_TROUBLE,           /* what a check points at */
  CW_STYLE_TROUBLE_LETTER,    /* the sign of a check, text */
  CW_STYLE_BARRIER,           /* a strip */
  CW_STYLE_BARRIER_LAP,
  CW_STYLE_BARRIER_LETTER,    /* text */
  CW_STYLE_MESH_LAP,          /* of the field's strips */
  CW_STYLE_MESH_EDGE,
  CW_STYLE_MESH_CORNER,       /* a piece across a corner */
  CW_STYLE_GRID,
  CW_STYLE_CUT_STOCK,         /* the panel that is sawn: what is not covered is waste */
  CW_STYLE_CUT_REST,          /* what of it is left over */
  CW_STYLE_CUT_PIECE,         /* a piece in it */
  CW_STYLE_CUT_SHAPE,         /* notch, rake, curve, hole: sawn out of a blank */
  CW_STYLE_CUT_LETTER,        /* text */
  CW_STYLE_SAW,               /* straight cuts right across */
  CW_STYLE_SAW_MARK,          /* what their numbers stand in */
  CW_STYLE_SAW_NUMBER,        /* text */
  CW_N_STYLES,
} CwStyle;

typedef enum { CW_PALETTE_PAPER, CW_PALETTE_LIGHT, CW_PALETTE_DARK } CwPalette;

typedef struct
{
  double red, green, blue, alpha;
} CwColour;

typedef enum { CW_HATCH_NONE, CW_HATCH_RISING, CW_HATCH_FALLING, CW_HATCH_CROSS, CW_HATCH_DOTS } CwHatch;

typedef struct
{
  CwColour fill;              /* alpha 0: not filled */
  CwColour line;              /* of strokes and of text; alpha 0: none */
  double width;               /* of the line, points on paper (pixels on screen at scale 1) */
  double dash[4];             /* same unit; 0 ends */
  CwHatch hatch;              /* drawn in `line` over the fill */
  double text;                /* size in points; 0: not a text style */
  gboolean bold;
} CwStyleValues;

const CwStyleValues *cw_style_values (CwPalette palette, CwStyle style);
const char *cw_style_name (CwStyle style);   /* "piece-cut", for the golden form and SVG classes */

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How a page is cut into tiles: a level for each zoom it is looked at, so that
 * a pixel of a tile is a pixel of the window; and one coarse drawing of the
 * whole page. Plain arithmetic.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Pixels a side. */
#define CW_SHEET_TILE 512
/* A level is a millionth of a pixel a point. */
#define CW_SHEET_LEVEL_LOWEST 62500
#define CW_SHEET_LEVEL_HIGHEST 32000000
/* The level of the whole page at once. */
#define CW_SHEET_COARSE G_MININT

/* Size of the page, points. */
typedef struct
{
  double width, height;
} CwSheetGrid;

typedef struct
{
  int level;
  int column, row;
} CwSheetKey;

/* In pixels of a level. */
typedef struct
{
  int x, y, width, height;
} CwSheetArea;

/* From the first up to and without the last. */
typedef struct
{
  int first_column, last_column, first_row, last_row;
} CwSheetSpan;

/* Where the page's top left comes to lie in the window, and pixels a point
 * each way. */
typedef struct
{
  double x, y;
  double across, along;
  double width, height;     /* of the window */
  int scale_factor;
  gboolean moving;          /* in the middle of a zoom: draw nothing anew */
} CwSheetLookout;

/* Pixels a point. */
double cw_sheet_grid_scale (const CwSheetGrid *grid, int level);

/* The level that is shown as it was drawn, within limits; where the page is
 * stretched one way, that of the finer way. */
int cw_sheet_grid_level (const CwSheetLookout *lookout);

/* Where a tile lies; FALSE: beside the page. */
gboolean cw_sheet_grid_area (const CwSheetGrid *grid, const CwSheetKey *key,
                             CwSheetArea *area);

/* The tiles of @level that the window shows. */
CwSheetSpan cw_sheet_grid_span (const CwSheetGrid *grid, int level,
                                const CwSheetLookout *lookout);

/* How much larger or smaller a level is than another; 0: the same. */
double cw_sheet_level_distance (int level, int other);

/* How far a tile is from the middle of @span; squared, in half tiles. */
int cw_sheet_span_distance (const CwSheetSpan *span, const CwSheetKey *key);

/* The least area that holds both; an empty one holds nothing. */
CwSheetArea cw_sheet_area_joined (CwSheetArea a, CwSheetArea b);

G_END_DECLS

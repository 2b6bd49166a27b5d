/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-grid.h"

#include <math.h>

/* The longer side of the drawing that stands in for tiles. */
#define COARSE_PIXELS 1024.0

double
cw_sheet_grid_scale (const CwSheetGrid *grid, int level)
{
  if (level == CW_SHEET_COARSE)
    return COARSE_PIXELS / MAX (MAX (grid->width, grid->height), 1);
  return level / 1e6;
}

int
cw_sheet_grid_level (const CwSheetLookout *lookout)
{
  double pixels = MAX (lookout->across, lookout->along)
                  * lookout->scale_factor;

  return (int) lround (CLAMP (1e6 * pixels, CW_SHEET_LEVEL_LOWEST,
                              CW_SHEET_LEVEL_HIGHEST));
}

gboolean
cw_sheet_grid_area (const CwSheetGrid *grid, const CwSheetKey *key,
                    CwSheetArea *area)
{
  double scale = cw_sheet_grid_scale (grid, key->level);
  int wide = MAX ((int) ceil (grid->width * scale), 1);
  int high = MAX ((int) ceil (grid->height * scale), 1);
  int x = key->column * CW_SHEET_TILE, y = key->row * CW_SHEET_TILE;

  if (key->level == CW_SHEET_COARSE)
    *area = (CwSheetArea) { 0, 0, wide, high };
  else
    *area = (CwSheetArea) { x, y, MIN (CW_SHEET_TILE, wide - x),
                            MIN (CW_SHEET_TILE, high - y) };
  return area->x >= 0 && area->y >= 0 && area->width > 0 && area->height > 0;
}

static int
tile_at (double pixel, int n)
{
  return (int) CLAMP (floor (pixel / CW_SHEET_TILE), 0, n);
}

static int
tile_after (double pixel, int n)
{
  return (int) CLAMP (ceil (pixel / CW_SHEET_TILE), 0, n);
}

CwSheetSpan
cw_sheet_grid_span (const CwSheetGrid *grid, int level,
                    const CwSheetLookout *lookout)
{
  double scale = cw_sheet_grid_scale (grid, level);
  int columns = (int) ceil (ceil (grid->width * scale) / CW_SHEET_TILE);
  int rows = (int) ceil (ceil (grid->height * scale) / CW_SHEET_TILE);
  double across = scale / lookout->across, along = scale / lookout->along;

  return (CwSheetSpan) {
    tile_at (-lookout->x * across, columns),
    tile_after ((lookout->width - lookout->x) * across, columns),
    tile_at (-lookout->y * along, rows),
    tile_after ((lookout->height - lookout->y) * along, rows),
  };
}

double
cw_sheet_level_distance (int level, int other)
{
  return fabs (log ((double) level / (double) other));
}

int
cw_sheet_span_distance (const CwSheetSpan *span, const CwSheetKey *key)
{
  int across = 2 * key->column + 1 - span->first_column - span->last_column;
  int along = 2 * key->row + 1 - span->first_row - span->last_row;

  return across * across + along * along;
}

CwSheetArea
cw_sheet_area_joined (CwSheetArea a, CwSheetArea b)
{
  int x = MIN (a.x, b.x), y = MIN (a.y, b.y);

  if (a.width == 0)
    return b;
  return (CwSheetArea) { x, y, MAX (a.x + a.width, b.x + b.width) - x,
                         MAX (a.y + a.height, b.y + b.height) - y };
}

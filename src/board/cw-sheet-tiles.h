/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One page of a plan sheet in tiles, drawn on a worker thread for the zoom at
 * hand and kept within a budget of memory. What is not there yet is shown
 * from a coarser drawing of the page; no frame ever waits.
 *
 * Emits "ready" on the main thread whenever there is more to show.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-sheet-grid.h"
#include "cw-sheet-source.h"

G_BEGIN_DECLS

#define CW_SHEET_TILES_BUDGET (128u * 1024 * 1024)

#define CW_TYPE_SHEET_TILES (cw_sheet_tiles_get_type ())
G_DECLARE_FINAL_TYPE (CwSheetTiles, cw_sheet_tiles, CW, SHEET_TILES, GObject)

/* @dark: light lines on dark paper. */
CwSheetTiles *cw_sheet_tiles_new (CwSheetSource *source, guint page,
                                  guint turn, gboolean dark);

/* Ends all drawing; nothing is emitted any more. */
void cw_sheet_tiles_close (CwSheetTiles *tiles);

void cw_sheet_tiles_snapshot (CwSheetTiles *tiles, GtkSnapshot *snapshot,
                              const CwSheetLookout *lookout);

/* Size of the page, in points. */
void cw_sheet_tiles_size (CwSheetTiles *tiles, double *width, double *height);

/* Why the page cannot be drawn, or NULL; borrowed. */
const char *cw_sheet_tiles_trouble (CwSheetTiles *tiles);

/* Bytes held, and whether all that was asked for last is there; for tests. */
gsize cw_sheet_tiles_held (CwSheetTiles *tiles);
gboolean cw_sheet_tiles_is_complete (CwSheetTiles *tiles);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the drawing of tiles (cw-sheet-tiles.c) and the showing of them
 * (cw-sheet-tiles-show.c) share.
 */
#pragma once

#include "cw-sheet-tiles.h"

G_BEGIN_DECLS

typedef struct
{
  CwSheetKey key;
  cairo_surface_t *surface;     /* NULL: it could not be drawn */
  GdkTexture *texture;  /* (nullable): to be shown at another zoom */
  GskRenderNode *node;  /* (nullable): to be shown as it is */
  gsize bytes;
  guint64 frame;        /* when it was shown last */
} CwSheetTile;

struct _CwSheetTiles
{
  GObject parent_instance;

  CwSheetSource *source;
  guint page, turn;
  gboolean dark;
  CwSheetGrid grid;

  GHashTable *tiles;            /* Key → Tile */
  gsize held;
  guint64 frame;
  char *trouble;
  gboolean complete;

  GMutex lock;
  GArray *wanted;               /* Key, most wanted last */
  GArray *taken;                /* Key, by the worker and not yet back */
  gboolean working, closed;
};

/* These and no others are wanted now, the most wanted last; what is being
 * drawn already is not drawn twice. */
void cw_sheet_tiles_ask (CwSheetTiles *tiles, const GArray *wanted);

G_END_DECLS

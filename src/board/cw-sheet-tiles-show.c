/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A frame of the sheet: what is there, what stands in for what is not, what is
 * asked for, what is forgotten. All on the main thread.
 */
#include "cw-sheet-tiles-private.h"

#include <math.h>

#include "cw-sheet-pixels.h"

/* Tiles of more than eight times the zoom, or less than an eighth, do not
 * stand in for others. */
#define STAND_IN_DISTANCE 2.08

static gint
by_frame (gconstpointer a, gconstpointer b)
{
  const CwSheetTile *one = *(CwSheetTile *const *) a;
  const CwSheetTile *other = *(CwSheetTile *const *) b;

  return one->frame < other->frame ? -1 : one->frame > other->frame;
}

/* (transfer container) */
static GPtrArray *
tiles_held (CwSheetTiles *self)
{
  GPtrArray *all = g_ptr_array_sized_new (g_hash_table_size (self->tiles));
  GHashTableIter iter;
  gpointer tile;

  g_hash_table_iter_init (&iter, self->tiles);
  while (g_hash_table_iter_next (&iter, NULL, &tile))
    g_ptr_array_add (all, tile);
  return all;
}

/* Those that were shown longest ago go; never one of this frame's. */
static void
keep_to_budget (CwSheetTiles *self)
{
  g_autoptr (GPtrArray) all = NULL;

  if (self->held <= CW_SHEET_TILES_BUDGET)
    return;
  all = tiles_held (self);
  g_ptr_array_sort (all, by_frame);
  for (guint i = 0; i < all->len && self->held > CW_SHEET_TILES_BUDGET; i++)
    {
      CwSheetTile *tile = g_ptr_array_index (all, i);

      if (tile->frame >= self->frame || tile->key.level == CW_SHEET_COARSE)
        continue;
      self->held -= tile->bytes;
      g_hash_table_remove (self->tiles, &tile->key);
    }
}

/* Drawn for this very zoom. */
static gboolean
is_exact (const CwSheetTiles *self, int level, const CwSheetLookout *lookout)
{
  double scale = cw_sheet_grid_scale (&self->grid, level);

  return lookout->scale_factor == 1 && fabs (lookout->across / scale - 1) < 1e-5
         && fabs (lookout->along / scale - 1) < 1e-5;
}

/* On whole pixels where it is exact: nothing then has to be interpolated. */
static graphene_rect_t
tile_rect (const CwSheetTiles *self, const CwSheetKey *key,
           const CwSheetLookout *lookout)
{
  double scale = cw_sheet_grid_scale (&self->grid, key->level);
  CwSheetArea area = { 0, 0, 0, 0 };

  cw_sheet_grid_area (&self->grid, key, &area);
  if (is_exact (self, key->level, lookout))
    return GRAPHENE_RECT_INIT ((float) round (lookout->x + area.x),
                               (float) round (lookout->y + area.y),
                               (float) area.width, (float) area.height);
  return GRAPHENE_RECT_INIT (
      (float) (lookout->x + area.x / scale * lookout->across),
      (float) (lookout->y + area.y / scale * lookout->along),
      (float) (area.width / scale * lookout->across),
      (float) (area.height / scale * lookout->along));
}

static gboolean
is_in_window (const graphene_rect_t *rect, const CwSheetLookout *lookout)
{
  return rect->origin.x < lookout->width && rect->origin.y < lookout->height
         && rect->origin.x + rect->size.width > 0
         && rect->origin.y + rect->size.height > 0;
}

static void
show_exactly (CwSheetTile *tile, GtkSnapshot *snapshot,
              const graphene_rect_t *rect)
{
  if (tile->node == NULL)
    tile->node = cw_sheet_pixels_node (tile->surface);
  gtk_snapshot_save (snapshot);
  gtk_snapshot_translate (snapshot, &rect->origin);
  gtk_snapshot_append_node (snapshot, tile->node);
  gtk_snapshot_restore (snapshot);
}

static void
show_scaled (CwSheetTile *tile, GtkSnapshot *snapshot,
             const graphene_rect_t *rect)
{
  if (tile->texture == NULL)
    tile->texture = cw_sheet_pixels_texture (tile->surface);
  gtk_snapshot_append_texture (snapshot, tile->texture, rect);
}

/* A texture is turned into another form for every frame where the toolkit
 * paints with the processor: 3 ms a tile. Scaling a node, on the other hand,
 * paints all of it as large as it would be where the graphics card paints. */
static void
show_tile (CwSheetTiles *self, GtkSnapshot *snapshot, const CwSheetKey *key,
           const CwSheetLookout *lookout)
{
  CwSheetTile *tile = g_hash_table_lookup (self->tiles, key);
  graphene_rect_t rect = tile_rect (self, key, lookout);

  if (tile == NULL)
    return;
  tile->frame = self->frame;
  if (tile->surface == NULL || !is_in_window (&rect, lookout))
    return;
  if (is_exact (self, key->level, lookout))
    show_exactly (tile, snapshot, &rect);
  else
    show_scaled (tile, snapshot, &rect);
}

static gint
by_distance (gconstpointer a, gconstpointer b, gpointer span)
{
  return cw_sheet_span_distance (span, b) - cw_sheet_span_distance (span, a);
}

/* The tiles of @level that are not there yet, the middle of the window last. */
static void
collect_missing (CwSheetTiles *self, int level, CwSheetSpan *span,
                 GArray *missing)
{
  for (int row = span->first_row; row < span->last_row; row++)
    for (int column = span->first_column; column < span->last_column;
         column++)
      {
        CwSheetKey key = { level, column, row };

        if (!g_hash_table_contains (self->tiles, &key))
          g_array_append_val (missing, key);
      }
  g_array_sort_with_data (missing, by_distance, span);
}

static void
show_level (CwSheetTiles *self, GtkSnapshot *snapshot, int level,
            const CwSheetSpan *span, const CwSheetLookout *lookout)
{
  for (int row = span->first_row; row < span->last_row; row++)
    for (int column = span->first_column; column < span->last_column;
         column++)
      show_tile (self, snapshot, &(CwSheetKey) { level, column, row }, lookout);
}

static gboolean
has_all (CwSheetTiles *self, int level, const CwSheetSpan *span)
{
  for (int row = span->first_row; row < span->last_row; row++)
    for (int column = span->first_column; column < span->last_column;
         column++)
      if (!g_hash_table_contains (self->tiles,
                                  &(CwSheetKey) { level, column, row }))
        return FALSE;
  return TRUE;
}

/* The likest level of which the window can be filled. */
static int
find_stand_in (CwSheetTiles *self, int level, const CwSheetLookout *lookout)
{
  g_autoptr (GPtrArray) all = tiles_held (self);
  int best = CW_SHEET_COARSE;
  double nearest = STAND_IN_DISTANCE;

  for (guint i = 0; i < all->len; i++)
    {
      int other = ((CwSheetTile *) g_ptr_array_index (all, i))->key.level;
      double away = cw_sheet_level_distance (other, level);
      CwSheetSpan span;

      if (other == level || other == CW_SHEET_COARSE || away >= nearest)
        continue;
      span = cw_sheet_grid_span (&self->grid, other, lookout);
      if (!has_all (self, other, &span))
        continue;
      best = other;
      nearest = away;
    }
  return best;
}

/* Ink on ink would be bold, so that there is one stand-in for a tile, and
 * none beyond it. */
static void
show_stand_ins (CwSheetTiles *self, GtkSnapshot *snapshot, int level,
                const GArray *missing, const CwSheetLookout *lookout)
{
  int other = find_stand_in (self, level, lookout);
  CwSheetSpan span = { 0, 1, 0, 1 };

  if (other != CW_SHEET_COARSE)
    span = cw_sheet_grid_span (&self->grid, other, lookout);
  for (guint i = 0; i < missing->len; i++)
    {
      graphene_rect_t rect = tile_rect (
          self, &g_array_index (missing, CwSheetKey, i), lookout);

      gtk_snapshot_push_clip (snapshot, &rect);
      show_level (self, snapshot, other, &span, lookout);
      gtk_snapshot_pop (snapshot);
    }
}

void
cw_sheet_tiles_snapshot (CwSheetTiles *self, GtkSnapshot *snapshot,
                         const CwSheetLookout *lookout)
{
  int level = cw_sheet_grid_level (lookout);
  CwSheetSpan span = cw_sheet_grid_span (&self->grid, level, lookout);
  g_autoptr (GArray) missing = g_array_new (FALSE, FALSE, sizeof (CwSheetKey));
  CwSheetKey coarse = { CW_SHEET_COARSE, 0, 0 };

  self->frame++;
  collect_missing (self, level, &span, missing);
  show_stand_ins (self, snapshot, level, missing, lookout);
  if (!g_hash_table_contains (self->tiles, &coarse))
    g_array_append_val (missing, coarse);
  self->complete = missing->len == 0;
  show_level (self, snapshot, level, &span, lookout);
  keep_to_budget (self);
  if (lookout->moving)
    g_array_set_size (missing, 0);
  cw_sheet_tiles_ask (self, missing);
}

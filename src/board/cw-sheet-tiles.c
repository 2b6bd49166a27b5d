/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Threads: `wanted`, `taken`, `working` and `closed` are shared under the
 * lock; all else belongs to the main thread. Every frame says anew which
 * tiles it wants, so that nothing is drawn that is no longer looked at.
 *
 *   snapshot ── wanted ──▶ worker ── rendered ──▶ idle on main ── "ready"
 *
 * A sheet of many lines takes about as long to draw for one tile as for a
 * whole window, so neighbouring tiles are drawn together and then cut apart.
 */
#include "cw-sheet-tiles-private.h"

#include "cw-sheet-pixels.h"

/* Tiles on each side of the most wanted one that are drawn with it. */
#define TOGETHER 2

/* What the worker hands back. */
typedef struct
{
  CwSheetTiles *self;
  GArray *keys;         /* CwSheetKey */
  GPtrArray *tiles;     /* CwSheetTile, of those keys */
  char *trouble;
} Rendered;

enum
{
  READY,
  N_SIGNALS,
};

static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (CwSheetTiles, cw_sheet_tiles, G_TYPE_OBJECT)

static guint
key_hash (gconstpointer data)
{
  const CwSheetKey *key = data;

  return (guint) key->level * 1000003u ^ (guint) key->column * 8191u
         ^ (guint) key->row;
}

static gboolean
key_equal (gconstpointer a, gconstpointer b)
{
  const CwSheetKey *one = a, *other = b;

  return one->level == other->level && one->column == other->column
         && one->row == other->row;
}

static void
tile_free (gpointer data)
{
  CwSheetTile *tile = data;

  g_clear_pointer (&tile->surface, cairo_surface_destroy);
  g_clear_object (&tile->texture);
  g_clear_pointer (&tile->node, gsk_render_node_unref);
  g_free (tile);
}

static void
cw_sheet_tiles_finalize (GObject *object)
{
  CwSheetTiles *self = CW_SHEET_TILES (object);

  g_object_unref (self->source);
  g_hash_table_unref (self->tiles);
  g_array_unref (self->wanted);
  g_array_unref (self->taken);
  g_mutex_clear (&self->lock);
  g_free (self->trouble);
  G_OBJECT_CLASS (cw_sheet_tiles_parent_class)->finalize (object);
}

static void
cw_sheet_tiles_class_init (CwSheetTilesClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = cw_sheet_tiles_finalize;
  signals[READY]
      = g_signal_new ("ready", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST,
                      0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
cw_sheet_tiles_init (CwSheetTiles *self)
{
  self->tiles
      = g_hash_table_new_full (key_hash, key_equal, NULL, tile_free);
  self->wanted = g_array_new (FALSE, FALSE, sizeof (CwSheetKey));
  self->taken = g_array_new (FALSE, FALSE, sizeof (CwSheetKey));
  g_mutex_init (&self->lock);
}

CwSheetTiles *
cw_sheet_tiles_new (CwSheetSource *source, guint page, guint turn,
                    gboolean dark)
{
  CwSheetTiles *self;

  g_return_val_if_fail (CW_IS_SHEET_SOURCE (source), NULL);

  self = g_object_new (CW_TYPE_SHEET_TILES, NULL);
  self->source = g_object_ref (source);
  self->page = page;
  self->turn = turn;
  self->dark = dark;
  cw_sheet_source_size (source, page, turn, &self->grid.width,
                        &self->grid.height);
  return self;
}

void
cw_sheet_tiles_close (CwSheetTiles *self)
{
  g_return_if_fail (CW_IS_SHEET_TILES (self));

  g_mutex_lock (&self->lock);
  self->closed = TRUE;
  g_array_set_size (self->wanted, 0);
  g_mutex_unlock (&self->lock);
}

void
cw_sheet_tiles_size (CwSheetTiles *self, double *width, double *height)
{
  g_return_if_fail (CW_IS_SHEET_TILES (self));

  *width = self->grid.width;
  *height = self->grid.height;
}

const char *
cw_sheet_tiles_trouble (CwSheetTiles *self)
{
  g_return_val_if_fail (CW_IS_SHEET_TILES (self), NULL);

  return self->trouble;
}

gsize
cw_sheet_tiles_held (CwSheetTiles *self)
{
  g_return_val_if_fail (CW_IS_SHEET_TILES (self), 0);

  return self->held;
}

gboolean
cw_sheet_tiles_is_complete (CwSheetTiles *self)
{
  g_return_val_if_fail (CW_IS_SHEET_TILES (self), FALSE);

  return self->complete;
}

/* ------------------------------------------------------------ the worker */

static CwSheetTile *
cut_tile (cairo_surface_t *surface, const CwSheetArea *whole,
          const CwSheetKey *key, const CwSheetArea *area)
{
  CwSheetTile *tile = g_new0 (CwSheetTile, 1);

  tile->key = *key;
  if (surface == NULL)
    return tile;
  tile->surface = cw_sheet_pixels_cut (surface, area->x - whole->x,
                                       area->y - whole->y, area->width,
                                       area->height);
  tile->bytes = 4 * (gsize) area->width * (gsize) area->height;
  return tile;
}

static cairo_surface_t *
draw_area (CwSheetTiles *self, int level, const CwSheetArea *area,
           char **trouble)
{
  g_autoptr (GError) error = NULL;
  cairo_surface_t *surface = cw_sheet_source_render (
      self->source, self->page, self->turn,
      cw_sheet_grid_scale (&self->grid, level), area->x, area->y, area->width,
      area->height, &error);

  if (surface)
    cw_sheet_pixels_finish (surface, self->dark);
  else
    *trouble = g_strdup (error ? error->message : "");
  return surface;
}

static void
render (CwSheetTiles *self, Rendered *rendered)
{
  cairo_surface_t *surface;
  CwSheetArea whole = { 0, 0, 0, 0 }, area;
  const CwSheetKey *keys = (const CwSheetKey *) rendered->keys->data;

  for (guint i = 0; i < rendered->keys->len; i++)
    if (cw_sheet_grid_area (&self->grid, &keys[i], &area))
      whole = cw_sheet_area_joined (whole, area);
  if (whole.width == 0)
    return;
  surface = draw_area (self, keys[0].level, &whole, &rendered->trouble);
  for (guint i = 0; i < rendered->keys->len; i++)
    if (cw_sheet_grid_area (&self->grid, &keys[i], &area))
      g_ptr_array_add (rendered->tiles,
                       cut_tile (surface, &whole, &keys[i], &area));
  g_clear_pointer (&surface, cairo_surface_destroy);
}

static gboolean
is_near (const CwSheetKey *one, const CwSheetKey *other)
{
  return one->level == other->level
         && ABS (one->column - other->column) <= TOGETHER
         && ABS (one->row - other->row) <= TOGETHER;
}

/* The most wanted tile and those about it; FALSE: there is nothing to do. */
static gboolean
take_wanted (CwSheetTiles *self, GArray *keys)
{
  CwSheetKey first;

  g_mutex_lock (&self->lock);
  if (!self->closed && self->wanted->len > 0)
    {
      first = g_array_index (self->wanted, CwSheetKey, self->wanted->len - 1);
      for (guint i = self->wanted->len; i-- > 0;)
        {
          CwSheetKey key = g_array_index (self->wanted, CwSheetKey, i);

          if (!is_near (&first, &key))
            continue;
          g_array_append_val (keys, key);
          g_array_append_val (self->taken, key);
          g_array_remove_index (self->wanted, i);
        }
    }
  else
    self->working = FALSE;
  g_mutex_unlock (&self->lock);
  return keys->len > 0;
}

static Rendered *
rendered_new (CwSheetTiles *self)
{
  Rendered *rendered = g_new0 (Rendered, 1);

  rendered->self = g_object_ref (self);
  rendered->keys = g_array_new (FALSE, FALSE, sizeof (CwSheetKey));
  rendered->tiles = g_ptr_array_new_with_free_func (tile_free);
  return rendered;
}

/* On the main thread: the last reference must not go on the worker's. */
static void
rendered_free (Rendered *rendered)
{
  g_array_unref (rendered->keys);
  g_ptr_array_unref (rendered->tiles);
  g_free (rendered->trouble);
  g_object_unref (rendered->self);
  g_free (rendered);
}

static gboolean take_in (gpointer data);

static void
work (gpointer data, gpointer user_data)
{
  CwSheetTiles *self = data;
  Rendered *rendered = rendered_new (self);

  while (take_wanted (self, rendered->keys))
    {
      render (self, rendered);
      /* Before the next frame, or a busy board would never get any. */
      g_idle_add_full (G_PRIORITY_DEFAULT, take_in, rendered, NULL);
      rendered = rendered_new (self);
    }
  g_idle_add_once ((GSourceOnceFunc) rendered_free, rendered);
  g_idle_add_once ((GSourceOnceFunc) g_object_unref, self);
}

/* One thread for all sheets: a source is for one thread at a time. */
static GThreadPool *
pool (void)
{
  static GThreadPool *the_pool;

  if (the_pool == NULL)
    the_pool = g_thread_pool_new (work, NULL, 1, FALSE, NULL);
  return the_pool;
}

/* ------------------------------------------------- back on the main thread */

static void
add_tile (CwSheetTiles *self, CwSheetTile *tile)
{
  CwSheetTile *former = g_hash_table_lookup (self->tiles, &tile->key);

  if (former)
    self->held -= former->bytes;
  tile->frame = self->frame;
  self->held += tile->bytes;
  g_hash_table_replace (self->tiles, &tile->key, tile);
}

static gboolean
find_key (const GArray *keys, const CwSheetKey *key, guint *index)
{
  for (guint i = 0; i < keys->len; i++)
    if (key_equal (&g_array_index (keys, CwSheetKey, i), key))
      {
        *index = i;
        return TRUE;
      }
  return FALSE;
}

static void
give_back (CwSheetTiles *self, const GArray *keys)
{
  guint at;

  g_mutex_lock (&self->lock);
  for (guint i = 0; i < keys->len; i++)
    if (find_key (self->taken, &g_array_index (keys, CwSheetKey, i), &at))
      g_array_remove_index_fast (self->taken, at);
  g_mutex_unlock (&self->lock);
}

static gboolean
take_in (gpointer data)
{
  Rendered *rendered = data;
  CwSheetTiles *self = rendered->self;

  give_back (self, rendered->keys);
  if (!self->closed)
    {
      while (rendered->tiles->len > 0)
        add_tile (self, g_ptr_array_steal_index_fast (rendered->tiles, 0));
      if (rendered->trouble && self->trouble == NULL)
        self->trouble = g_steal_pointer (&rendered->trouble);
      g_signal_emit (self, signals[READY], 0);
    }
  rendered_free (rendered);
  return G_SOURCE_REMOVE;
}

void
cw_sheet_tiles_ask (CwSheetTiles *self, const GArray *wanted)
{
  gboolean begin;
  guint at;

  g_mutex_lock (&self->lock);
  g_array_set_size (self->wanted, 0);
  for (guint i = 0; i < wanted->len; i++)
    if (!find_key (self->taken, &g_array_index (wanted, CwSheetKey, i), &at))
      g_array_append_val (self->wanted, g_array_index (wanted, CwSheetKey, i));
  begin = self->wanted->len > 0 && !self->working && !self->closed;
  if (begin)
    self->working = TRUE;
  g_mutex_unlock (&self->lock);
  if (begin)
    g_thread_pool_push (pool (), g_object_ref (self), NULL);
}

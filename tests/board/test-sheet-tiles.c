/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-tiles.h"

#include "sheet-case.h"

#define WINDOW 400

static CwSheetTiles *
begin (gboolean dark)
{
  g_autoptr (CwSheetSource) source = sheet_case_open ();

  return cw_sheet_tiles_new (source, 1, 0, dark);
}

/* A window with point @x, @y of the page at its top left. */
static CwSheetLookout
lookout_at (double x, double y, double pixels_a_point)
{
  return (CwSheetLookout) { -x * pixels_a_point, -y * pixels_a_point,
                            pixels_a_point,      pixels_a_point,
                            WINDOW,              WINDOW,
                            1 };
}

/* (transfer full) (nullable) */
static GskRenderNode *
snap (CwSheetTiles *tiles, const CwSheetLookout *lookout)
{
  GtkSnapshot *snapshot = gtk_snapshot_new ();

  cw_sheet_tiles_snapshot (tiles, snapshot, lookout);
  return gtk_snapshot_free_to_node (snapshot);
}

/* What is seen of the ink, on white paper. */
static cairo_surface_t *
look (CwSheetTiles *tiles, const CwSheetLookout *lookout)
{
  cairo_surface_t *surface
      = cairo_image_surface_create (CAIRO_FORMAT_RGB24, WINDOW, WINDOW);
  cairo_t *cr = cairo_create (surface);
  GskRenderNode *node = snap (tiles, lookout);

  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_paint (cr);
  if (node)
    gsk_render_node_draw (node, cr);
  g_clear_pointer (&node, gsk_render_node_unref);
  cairo_destroy (cr);
  cairo_surface_flush (surface);
  return surface;
}

static guint32
pixel (cairo_surface_t *surface, int x, int y)
{
  const guchar *row = cairo_image_surface_get_data (surface)
                      + y * cairo_image_surface_get_stride (surface);

  return ((const guint32 *) (gconstpointer) row)[x] & 0xffffff;
}

static gboolean
give_up (gpointer data)
{
  g_error ("the tiles never came");
  return G_SOURCE_REMOVE;
}

/* Frame after frame, as often as there is more to see, until all is. */
static void
wait_until_complete (CwSheetTiles *tiles, const CwSheetLookout *lookout)
{
  guint timeout = g_timeout_add_seconds (60, give_up, NULL);

  for (;;)
    {
      GskRenderNode *node = snap (tiles, lookout);

      g_clear_pointer (&node, gsk_render_node_unref);
      if (cw_sheet_tiles_is_complete (tiles))
        break;
      g_main_context_iteration (NULL, TRUE);
    }
  g_source_remove (timeout);
}

static cairo_surface_t *
look_until_complete (CwSheetTiles *tiles, const CwSheetLookout *lookout)
{
  wait_until_complete (tiles, lookout);
  return look (tiles, lookout);
}

/* The box's edges lie on the pixels where the zoom puts them. */
static void
assert_sharp (CwSheetTiles *tiles, double zoom)
{
  double left = SHEET_CASE_BOX_X - 100 / zoom;
  double top = SHEET_CASE_BOX_Y - 100 / zoom;
  CwSheetLookout lookout = lookout_at (left, top, zoom);
  cairo_surface_t *surface = look_until_complete (tiles, &lookout);

  g_assert_cmphex (pixel (surface, 97, 150), ==, 0xffffff);
  g_assert_cmphex (pixel (surface, 103, 150), ==, 0x000000);
  g_assert_cmphex (pixel (surface, 110, 97), ==, 0xffffff);
  g_assert_cmphex (pixel (surface, 110, 103), ==, 0x000000);
  cairo_surface_destroy (surface);
}

static void
test_sharp (void)
{
  g_autoptr (CwSheetTiles) tiles = begin (FALSE);

  for (double zoom = 0.9; zoom < 20; zoom *= 1.6)
    assert_sharp (tiles, zoom);
  cw_sheet_tiles_close (tiles);
}

/* The first frame waits for nothing and shows nothing. */
static void
test_never_waits (void)
{
  g_autoptr (CwSheetTiles) tiles = begin (FALSE);
  CwSheetLookout lookout = lookout_at (0, 0, 1);

  g_assert_null (snap (tiles, &lookout));
  g_assert_false (cw_sheet_tiles_is_complete (tiles));
  cw_sheet_tiles_close (tiles);
}

/* In the middle of a zoom nothing is drawn that would be stale at once. */
static void
test_moving (void)
{
  g_autoptr (CwSheetTiles) tiles = begin (FALSE);
  CwSheetLookout lookout = lookout_at (0, 0, 1);
  gsize held;

  wait_until_complete (tiles, &lookout);
  held = cw_sheet_tiles_held (tiles);
  lookout = lookout_at (0, 0, 1.3);
  lookout.moving = TRUE;
  for (guint i = 0; i < 50; i++)
    {
      GskRenderNode *node = snap (tiles, &lookout);

      g_assert_nonnull (node);
      gsk_render_node_unref (node);
      g_usleep (2000);
      g_main_context_iteration (NULL, FALSE);
    }
  g_assert_cmpuint (cw_sheet_tiles_held (tiles), ==, held);
  cw_sheet_tiles_close (tiles);
}

/* Come nearer: what is at hand is shown until the finer tiles are there. */
static void
test_stands_in (void)
{
  g_autoptr (CwSheetTiles) tiles = begin (FALSE);
  CwSheetLookout whole = lookout_at (0, 0, 0.6);
  CwSheetLookout near = lookout_at (SHEET_CASE_BOX_X, SHEET_CASE_BOX_Y, 8);
  cairo_surface_t *surface = look_until_complete (tiles, &whole);

  cairo_surface_destroy (surface);
  surface = look (tiles, &near);
  g_assert_false (cw_sheet_tiles_is_complete (tiles));
  g_assert_cmphex (pixel (surface, 200, 200), ==, 0x000000);
  cairo_surface_destroy (surface);
  cw_sheet_tiles_close (tiles);
}

/* Ink is light and not glaring, and there is no paper: it is laid under. */
static void
test_dark (void)
{
  g_autoptr (CwSheetTiles) tiles = begin (TRUE);
  CwSheetLookout lookout = lookout_at (50, 70, 1);
  cairo_surface_t *surface = look_until_complete (tiles, &lookout);
  guint paper = pixel (surface, 10, 10) & 0xff;
  guint ink = pixel (surface, 80, 80) & 0xff;

  g_assert_cmpuint (paper, ==, 0xff);
  g_assert_cmpuint (ink, >, 0xc0);
  g_assert_cmpuint (ink, <, 0xf0);
  cairo_surface_destroy (surface);
  cw_sheet_tiles_close (tiles);
}

/* Over the whole sheet at a near zoom: 600 MB of pixels were they all kept. */
static void
test_budget (void)
{
  g_autoptr (CwSheetTiles) tiles = begin (FALSE);

  for (guint i = 0; i < 200; i++)
    {
      CwSheetLookout lookout
          = lookout_at (20.0 * (i % 20), 20.0 * (i / 20), 24);

      wait_until_complete (tiles, &lookout);
      g_assert_cmpuint (cw_sheet_tiles_held (tiles), <=,
                        CW_SHEET_TILES_BUDGET + 16 * 1024 * 1024);
    }
  g_assert_cmpuint (cw_sheet_tiles_held (tiles), >, 0);
  cw_sheet_tiles_close (tiles);
}

static void
count (guint *ready)
{
  ++*ready;
}

static gboolean
stop (gpointer loop)
{
  g_main_loop_quit (loop);
  return G_SOURCE_REMOVE;
}

/* Closed, it says nothing more, and goes without its worker. */
static void
test_closed (void)
{
  CwSheetTiles *tiles = begin (FALSE);
  g_autoptr (GMainLoop) loop = g_main_loop_new (NULL, FALSE);
  CwSheetLookout lookout = lookout_at (0, 0, 3);
  cairo_surface_t *surface = look (tiles, &lookout);
  guint ready = 0;

  cairo_surface_destroy (surface);
  g_signal_connect_swapped (tiles, "ready", G_CALLBACK (count), &ready);
  cw_sheet_tiles_close (tiles);
  g_object_add_weak_pointer (G_OBJECT (tiles), (gpointer *) &tiles);
  g_object_unref (tiles);
  g_timeout_add (300, stop, loop);
  g_main_loop_run (loop);
  g_assert_cmpuint (ready, ==, 0);
  g_assert_null (tiles);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  gtk_init_check (); /* render nodes need it, a display they do not */
  g_test_add_func ("/board/tiles/sharp", test_sharp);
  g_test_add_func ("/board/tiles/never-waits", test_never_waits);
  g_test_add_func ("/board/tiles/moving", test_moving);
  g_test_add_func ("/board/tiles/stands-in", test_stands_in);
  g_test_add_func ("/board/tiles/dark", test_dark);
  g_test_add_func ("/board/tiles/budget", test_budget);
  g_test_add_func ("/board/tiles/closed", test_closed);
  return g_test_run ();
}

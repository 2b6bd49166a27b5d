/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What stands still is drawn once: how often nodes are made is counted.
 */
#include "cw-picture.h"

#define WIDTH 800
#define HEIGHT 600

/* A wall of 60 x 9 m: far wider than the window at a near zoom. */
static CwPicture
picture_of_box (void)
{
  CwPicture picture = { NULL };
  CwDisplayList *list = cw_display_list_new ();
  CwBox box = { 0, 0, CW_MM (60000), CW_MM (9000) };

  cw_display_list_add_box (list, CW_STYLE_OUTLINE, "e1", &box);
  cw_picture_set_list (&picture, list);
  return picture;
}

static CwLookout
lookout_at (double x, double y, double mm_per_pixel)
{
  return (CwLookout) { .view = { x, y, mm_per_pixel * 1e6 },
                       .width = WIDTH,
                       .height = HEIGHT,
                       .palette = CW_PALETTE_LIGHT,
                       .text_scale = 1 };
}

/* How many nodes it took to show it. */
static guint
nodes_for (CwPicture *picture, const CwLookout *lookout)
{
  guint before = cw_picture_nodes_made;
  GtkSnapshot *snapshot = gtk_snapshot_new ();
  GskRenderNode *node;

  cw_picture_snapshot (picture, snapshot, lookout);
  node = gtk_snapshot_free_to_node (snapshot);
  g_clear_pointer (&node, gsk_render_node_unref);
  return cw_picture_nodes_made - before;
}

static void
test_pan (void)
{
  CwPicture picture = picture_of_box ();
  CwLookout lookout = lookout_at (0, 500, 10);
  guint made = nodes_for (&picture, &lookout);

  g_assert_cmpuint (made, ==, 1);
  made = 0;
  for (guint i = 0; i < 100; i++)
    {
      lookout.view.x -= 40;
      made += nodes_for (&picture, &lookout);
    }
  g_assert_cmpuint (made, <=, 22);
  g_assert_cmpuint (made, >, 0);
  cw_picture_clear (&picture);
}

/* All of it in one node: it is moved about and never made again. */
static void
test_pan_whole (void)
{
  CwPicture picture = picture_of_box ();
  CwLookout lookout = lookout_at (50, 500, 90);

  g_assert_cmpuint (nodes_for (&picture, &lookout), ==, 1);
  for (guint i = 0; i < 200; i++)
    {
      lookout.view.x += 13;
      lookout.view.y -= 7;
      g_assert_cmpuint (nodes_for (&picture, &lookout), ==, 0);
    }
  cw_picture_clear (&picture);
}

/* In the middle of a zoom the node at hand is scaled; then it is made anew. */
static void
test_zoom (void)
{
  CwPicture picture = picture_of_box ();
  CwLookout lookout = lookout_at (50, 500, 90);

  g_assert_cmpuint (nodes_for (&picture, &lookout), ==, 1);
  lookout.moving = TRUE;
  for (guint i = 0; i < 4; i++)
    {
      cw_view_zoom (&lookout.view, 1.2, 400, 300);
      g_assert_cmpuint (nodes_for (&picture, &lookout), ==, 0);
    }
  lookout.moving = FALSE;
  g_assert_cmpuint (nodes_for (&picture, &lookout), ==, 1);
  g_assert_cmpuint (nodes_for (&picture, &lookout), ==, 0);
  cw_picture_clear (&picture);
}

/* However near, no node is much larger than the window. */
static void
test_size (void)
{
  for (double mm = 100; mm > 0.05; mm /= 3)
    {
      CwPicture picture = picture_of_box ();
      CwLookout lookout = lookout_at (0, 300, mm);

      nodes_for (&picture, &lookout);
      g_assert_cmpfloat (picture.bounds.size.width, <=, 1.5 * WIDTH);
      g_assert_cmpfloat (picture.bounds.size.height, <=, 1.5 * HEIGHT);
      cw_picture_clear (&picture);
    }
}

static void
test_out_of_sight (void)
{
  CwPicture picture = picture_of_box ();
  CwLookout lookout = lookout_at (20000, 500, 10);

  g_assert_cmpuint (nodes_for (&picture, &lookout), ==, 0);
  lookout.view.x = 0;
  g_assert_cmpuint (nodes_for (&picture, &lookout), ==, 1);
  cw_picture_clear (&picture);
}

static void
test_new_list (void)
{
  CwPicture picture = picture_of_box ();
  CwLookout lookout = lookout_at (0, 500, 10);

  nodes_for (&picture, &lookout);
  cw_picture_set_list (&picture, cw_display_list_new ());
  g_assert_cmpuint (nodes_for (&picture, &lookout), ==, 0);
  cw_picture_clear (&picture);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  gtk_init_check (); /* render nodes need it, a display they do not */
  g_test_add_func ("/board/picture/pan/part", test_pan);
  g_test_add_func ("/board/picture/pan/whole", test_pan_whole);
  g_test_add_func ("/board/picture/zoom", test_zoom);
  g_test_add_func ("/board/picture/size", test_size);
  g_test_add_func ("/board/picture/out-of-sight", test_out_of_sight);
  g_test_add_func ("/board/picture/new-list", test_new_list);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-pixels.h"

#include <string.h>

/* What of a pixel is ink: the darkest of its parts says how much, and over
 * white the pixel comes out as it was. Premultiplied, as cairo has it. */
static guint32
ink_of (guint32 pixel)
{
  guint32 red = pixel >> 16 & 0xff, green = pixel >> 8 & 0xff;
  guint32 blue = pixel & 0xff;
  guint32 least = MIN (red, MIN (green, blue));

  return (255 - least) << 24 | (red - least) << 16 | (green - least) << 8
         | (blue - least);
}

/* The same ink, light on dark paper: black becomes 0xda. */
static guint32
light_ink_of (guint32 pixel)
{
  guint32 light = ~pixel & 0xffffff;
  guint32 dimmed = light - ((light >> 3) & 0x1f1f1f)
                   - ((light >> 6) & 0x030303);

  return (ink_of (pixel) & 0xff000000) | dimmed;
}

void
cw_sheet_pixels_finish (cairo_surface_t *surface, gboolean dark)
{
  int width = cairo_image_surface_get_width (surface);
  int height = cairo_image_surface_get_height (surface);
  int stride = cairo_image_surface_get_stride (surface);
  guchar *rows;

  cairo_surface_flush (surface);
  rows = cairo_image_surface_get_data (surface);
  for (int y = 0; y < height; y++)
    {
      guint32 *row = (guint32 *) (gpointer) (rows + (gsize) y * stride);

      for (int x = 0; x < width; x++)
        row[x] = dark ? light_ink_of (row[x]) : ink_of (row[x]);
    }
  cairo_surface_mark_dirty (surface);
}

cairo_surface_t *
cw_sheet_pixels_cut (cairo_surface_t *surface, int x, int y, int width,
                     int height)
{
  cairo_surface_t *cut
      = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, width, height);
  int from = cairo_image_surface_get_stride (surface);
  int to = cairo_image_surface_get_stride (cut);
  const guchar *source = cairo_image_surface_get_data (surface);
  guchar *target = cairo_image_surface_get_data (cut);

  for (int row = 0; row < height; row++)
    memcpy (target + (gsize) row * (gsize) to,
            source + (gsize) (y + row) * (gsize) from + 4 * (gsize) x,
            4 * (gsize) width);
  cairo_surface_mark_dirty (cut);
  return cut;
}

GdkTexture *
cw_sheet_pixels_texture (cairo_surface_t *surface)
{
  int height = cairo_image_surface_get_height (surface);
  gsize stride = (gsize) cairo_image_surface_get_stride (surface);
  g_autoptr (GBytes) bytes = g_bytes_new_with_free_func (
      cairo_image_surface_get_data (surface), stride * (gsize) height,
      (GDestroyNotify) cairo_surface_destroy,
      cairo_surface_reference (surface));

  return gdk_memory_texture_new (cairo_image_surface_get_width (surface),
                                 height, GDK_MEMORY_DEFAULT, bytes, stride);
}

GskRenderNode *
cw_sheet_pixels_node (cairo_surface_t *surface)
{
  graphene_rect_t bounds = GRAPHENE_RECT_INIT (
      0, 0, (float) cairo_image_surface_get_width (surface),
      (float) cairo_image_surface_get_height (surface));
  GskRenderNode *node = gsk_cairo_node_new (&bounds);
  cairo_t *cr = gsk_cairo_node_get_draw_context (node);

  cairo_set_source_surface (cr, surface, 0, 0);
  cairo_paint (cr);
  cairo_destroy (cr);
  return node;
}

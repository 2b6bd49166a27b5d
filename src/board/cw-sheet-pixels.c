/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-pixels.h"

#include <string.h>

/* From 0x1c for white to 0xda for black. */
static guint32
darkened (guint32 pixel)
{
  guint32 ink = ~pixel & 0xffffff;

  return ((ink >> 2) & 0x3f3f3f) + ((ink >> 1) & 0x7f7f7f) + 0x1c1c1c;
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
        row[x] = (dark ? darkened (row[x]) : row[x]) | 0xff000000;
    }
  cairo_surface_mark_dirty (surface);
}

GdkTexture *
cw_sheet_pixels_texture (cairo_surface_t *surface, int x, int y, int width,
                         int height)
{
  gsize from = (gsize) cairo_image_surface_get_stride (surface);
  gsize to = 4 * (gsize) width;
  const guchar *rows = cairo_image_surface_get_data (surface)
                       + (gsize) y * from + 4 * (gsize) x;
  guchar *copy = g_malloc (to * (gsize) height);
  g_autoptr (GBytes) bytes = g_bytes_new_take (copy, to * (gsize) height);

  for (gsize row = 0; row < (gsize) height; row++)
    memcpy (copy + row * to, rows + row * from, to);
  return gdk_memory_texture_new (width, height, GDK_MEMORY_DEFAULT, bytes,
                                 to);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-image.h"

#include <gdk-pixbuf/gdk-pixbuf.h>

#include "cw-i18n.h"
#include "cw-sheet-source.h"
#include "cw-sheet-whole.h"

/* Small enough that a vast image is refused before it is unpacked. */
#define CHUNK (64 * 1024)
/* Resolutions outside these are no scanner's or plotter's: left-over or made
 * up, so that the image counts as having none. */
#define LEAST_DPI 10.0
#define MOST_DPI 20000.0
/* The longest side that cairo draws. */
#define MOST_SIDE 32767

/* Comes before any pixels are unpacked: a small file may hold a vast image. */
static void
on_size_prepared (GdkPixbufLoader *loader, int width, int height,
                  gpointer data)
{
  gboolean *too_large = data;

  if (width <= MOST_SIDE && height <= MOST_SIDE
      && (gint64) width * height <= CW_SHEET_PIXELS_MOST)
    return;
  *too_large = TRUE;
  gdk_pixbuf_loader_set_size (loader, 0, 0);
}

static gboolean
feed (GdkPixbufLoader *loader, GBytes *bytes, const gboolean *too_large,
      GError **error)
{
  gsize n;
  const guchar *data = g_bytes_get_data (bytes, &n);

  for (gsize at = 0; at < n; at += CHUNK)
    if (!gdk_pixbuf_loader_write (loader, data + at, MIN (CHUNK, n - at),
                                  error)
        || *too_large)
      return FALSE;
  return TRUE;
}

/* A loader must be closed whatever happened; only the first error counts. */
static gboolean
load_all (GdkPixbufLoader *loader, GBytes *bytes, const gboolean *too_large,
          GError **error)
{
  if (feed (loader, bytes, too_large, error))
    return gdk_pixbuf_loader_close (loader, error);
  gdk_pixbuf_loader_close (loader, NULL);
  return FALSE;
}

static void
set_load_error (GError **error, gboolean too_large, const GError *cause)
{
  if (too_large)
    g_set_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_TOO_LARGE,
                 _ ("has more than %d pixels a side or %d million in all. "
                    "Scan it again at fewer dots per inch."),
                 MOST_SIDE, CW_SHEET_PIXELS_MOST / 1000000);
  else
    g_set_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_DAMAGED,
                 _ ("is damaged or incomplete: %s. Ask for it again."),
                 cause ? cause->message : _ ("the image is not all there"));
}

static GdkPixbuf *
load_pixbuf (GBytes *bytes, const char *type, GError **error)
{
  g_autoptr (GError) cause = NULL;
  g_autoptr (GdkPixbufLoader) loader
      = gdk_pixbuf_loader_new_with_type (type, &cause);
  gboolean too_large = FALSE;
  GdkPixbuf *pixbuf = NULL;

  if (loader)
    {
      g_signal_connect (loader, "size-prepared",
                        G_CALLBACK (on_size_prepared), &too_large);
      if (load_all (loader, bytes, &too_large, &cause) && !too_large)
        pixbuf = gdk_pixbuf_loader_get_pixbuf (loader);
    }
  if (pixbuf == NULL)
    {
      set_load_error (error, too_large, cause);
      return NULL;
    }
  return g_object_ref (pixbuf);
}

/* Loaders fill what was cut off with grey. */
static GdkPixbuf *
load_whole_pixbuf (GBytes *bytes, const char *type, GError **error)
{
  gsize n;
  const guchar *data = g_bytes_get_data (bytes, &n);

  if (cw_sheet_image_is_whole (data, n, type))
    return load_pixbuf (bytes, type, error);
  set_load_error (error, FALSE, NULL);
  return NULL;
}

static double
points_a_pixel (GdkPixbuf *pixbuf, const char *option)
{
  const char *text = gdk_pixbuf_get_option (pixbuf, option);
  double dpi = text ? g_ascii_strtod (text, NULL) : 0;

  return dpi >= LEAST_DPI && dpi <= MOST_DPI ? 72.0 / dpi : 1.0;
}

/* One channel laid on white. */
static inline guint32
on_white (guint32 value, guint32 alpha)
{
  return (value * alpha + 255 * (255 - alpha) + 127) / 255;
}

static void
copy_row (guint32 *to, const guchar *from, int width, int n_channels)
{
  for (int x = 0; x < width; x++, from += n_channels)
    {
      guint32 alpha = n_channels == 4 ? from[3] : 255;

      to[x] = on_white (from[0], alpha) << 16 | on_white (from[1], alpha) << 8
              | on_white (from[2], alpha);
    }
}

static cairo_surface_t *
surface_from_pixbuf (GdkPixbuf *pixbuf)
{
  int width = gdk_pixbuf_get_width (pixbuf);
  int height = gdk_pixbuf_get_height (pixbuf);
  const guchar *pixels = gdk_pixbuf_read_pixels (pixbuf);
  int from_stride = gdk_pixbuf_get_rowstride (pixbuf);
  cairo_surface_t *surface
      = cairo_image_surface_create (CAIRO_FORMAT_RGB24, width, height);
  guchar *to = cairo_image_surface_get_data (surface);
  int stride = cairo_image_surface_get_stride (surface);

  if (cairo_surface_status (surface) != CAIRO_STATUS_SUCCESS)
    return surface;
  for (int y = 0; y < height; y++)
    copy_row ((guint32 *) (gpointer) (to + (gsize) y * (gsize) stride),
              pixels + (gsize) y * (gsize) from_stride, width,
              gdk_pixbuf_get_n_channels (pixbuf));
  cairo_surface_mark_dirty (surface);
  return surface;
}

/* EXIF orientations from 5 lie on their side. */
static gboolean
lies_on_side (GdkPixbuf *pixbuf)
{
  const char *orientation = gdk_pixbuf_get_option (pixbuf, "orientation");

  return orientation && g_ascii_strtoull (orientation, NULL, 10) >= 5;
}

CwSheetImage *
cw_sheet_image_load (GBytes *bytes, const char *type, GError **error)
{
  g_autoptr (GdkPixbuf) stored = load_whole_pixbuf (bytes, type, error);
  g_autoptr (GdkPixbuf) upright = NULL;
  g_autoptr (CwSheetImage) image = NULL;
  double across, along;

  if (stored == NULL)
    return NULL;
  across = points_a_pixel (stored, lies_on_side (stored) ? "y-dpi" : "x-dpi");
  along = points_a_pixel (stored, lies_on_side (stored) ? "x-dpi" : "y-dpi");
  upright = gdk_pixbuf_apply_embedded_orientation (stored);
  image = g_new0 (CwSheetImage, 1);
  image->surface = surface_from_pixbuf (upright);
  if (cairo_surface_status (image->surface) != CAIRO_STATUS_SUCCESS)
    {
      g_set_error_literal (error, CW_SHEET_ERROR, CW_SHEET_ERROR_TOO_LARGE,
                           _ ("does not fit into memory. Scan it again at "
                              "fewer dots per inch."));
      return NULL;
    }
  image->width = across * cairo_image_surface_get_width (image->surface);
  image->height = along * cairo_image_surface_get_height (image->surface);
  return g_steal_pointer (&image);
}

void
cw_sheet_image_free (CwSheetImage *image)
{
  cairo_surface_destroy (image->surface);
  g_free (image);
}

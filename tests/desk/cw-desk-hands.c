/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pointer, keyboard and eyes.
 */
#include <string.h>

#include "cw-desk-private.h"

/* Between two strokes: a person is slower, the screen's server is not. */
#define STROKE_MS "12"

/* The screen counts as still when two pictures this far apart are equal. */
#define STILL_US 150000
#define STILL_TRIES 40

void
cw_desk_key (CwDesk *desk, const char *chord)
{
  const char *const argv[] = { "xdotool", "key", "--delay", STROKE_MS,
                               "--clearmodifiers", chord, NULL };
  g_free (cw_desk_run (desk, TRUE, argv));
}

void
cw_desk_type (CwDesk *desk, const char *text)
{
  const char *const argv[]
      = { "xdotool", "type", "--delay", STROKE_MS, text, NULL };
  g_free (cw_desk_run (desk, TRUE, argv));
}

static void
do_at (CwDesk *desk, double x, double y, const char *verb)
{
  g_autofree char *across = g_strdup_printf ("%.0f", x);
  g_autofree char *down = g_strdup_printf ("%.0f", y);
  const char *const argv[]
      = { "xdotool", "mousemove", "--sync", across, down, verb,
          verb ? "1" : NULL, NULL };
  g_free (cw_desk_run (desk, TRUE, argv));
}

void
cw_desk_move (CwDesk *desk, double x, double y)
{
  do_at (desk, x, y, NULL);
}

void
cw_desk_click (CwDesk *desk, double x, double y)
{
  do_at (desk, x, y, NULL);
  do_at (desk, x + 1, y, NULL);
  do_at (desk, x, y, "click");
}

void
cw_desk_drag (CwDesk *desk, double x0, double y0, double x1, double y1)
{
  do_at (desk, x0, y0, "mousedown");
  do_at (desk, (x0 + x1) / 2, (y0 + y1) / 2, NULL);
  do_at (desk, x1, y1, NULL);
  do_at (desk, x1, y1, "mouseup");
}

static cairo_surface_t *
picture (CwDesk *desk)
{
  g_autofree char *path
      = g_build_filename (desk->folder, "screen.png", NULL);
  const char *const argv[] = { "import", "-window", "root", path, NULL };
  g_free (cw_desk_run (desk, TRUE, argv));
  cairo_surface_t *read = cairo_image_surface_create_from_png (path);
  g_assert_cmpint (cairo_surface_status (read), ==, CAIRO_STATUS_SUCCESS);

  /* One known form of pixels, whatever the file had. */
  cairo_surface_t *surface = cairo_image_surface_create (
      CAIRO_FORMAT_RGB24, cairo_image_surface_get_width (read),
      cairo_image_surface_get_height (read));
  cairo_t *cr = cairo_create (surface);
  cairo_set_source_surface (cr, read, 0, 0);
  cairo_paint (cr);
  cairo_destroy (cr);
  cairo_surface_destroy (read);
  cairo_surface_flush (surface);
  return surface;
}

static gboolean
same (cairo_surface_t *a, cairo_surface_t *b)
{
  const gsize size = (gsize)cairo_image_surface_get_stride (a)
                     * (gsize)cairo_image_surface_get_height (a);
  return memcmp (cairo_image_surface_get_data (a),
                 cairo_image_surface_get_data (b), size)
         == 0;
}

cairo_surface_t *
cw_desk_look (CwDesk *desk)
{
  cairo_surface_t *former = picture (desk);
  for (int i = 0; i < STILL_TRIES; i++)
    {
      g_usleep (STILL_US);
      cairo_surface_t *now = picture (desk);
      const gboolean still = same (former, now);
      cairo_surface_destroy (former);
      former = now;
      if (still)
        break;
    }
  return former;
}

void
cw_desk_keep_picture (CwDesk *desk, const char *name)
{
  const char *folder = g_getenv ("CW_DESK_PICTURES");
  if (folder == NULL)
    return;
  g_autofree char *base = g_strconcat (name, ".png", NULL);
  g_autofree char *path = g_build_filename (folder, base, NULL);
  cairo_surface_t *screen = picture (desk);
  cairo_surface_write_to_png (screen, path);
  cairo_surface_destroy (screen);
}

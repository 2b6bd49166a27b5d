/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading the lines of a plan sheet, as time of the processor:
 *
 *   draw     the page once as pixels, at 72 dots an inch: the baseline
 *   read     its lines, and the index over them
 *   snap     the nearest end, crossing or run to a point, on average and the
 *            longest of 20 000 at random
 *   scan     the same by looking at every line: the baseline
 *   frames   the frames of openings about a point, on average
 *
 *   bench-sheet-lines [FILE.pdf MM_PER_POINT]
 *
 * Without a file the page is made here: 30 000 lines, a hatch of boards with
 * 200 windows in it.
 */
#include <cairo-pdf.h>
#include <glib/gstdio.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#include "cw-drawn-shapes.h"
#include "cw-sheet-lines.h"

#define SNAPS 20000
#define FRAMES 300
#define SIDE 2340.0
#define WINDOWS 20
#define HATCH 100
#define REACH 4.0

static double
now (void)
{
  struct timespec time;

  clock_gettime (CLOCK_THREAD_CPUTIME_ID, &time);
  return (double) time.tv_sec * 1e3 + (double) time.tv_nsec / 1e6;
}

static void
rings (cairo_t *cr, double x, double y)
{
  for (guint i = 0; i < 3; i++)
    cairo_rectangle (cr, x + 1.5 * i, y + 1.5 * i, 42 - 3 * i, 60 - 3 * i);
}

/* Boards between the windows of a row. */
static void
boards (cairo_t *cr, double y)
{
  for (guint j = 0; j <= WINDOWS; j++)
    for (guint i = 0; i < HATCH / 2; i++)
      {
        const double x = j * SIDE / (WINDOWS + 1);

        cairo_move_to (cr, x + 44, y + 1.2 * i);
        cairo_line_to (cr, x + SIDE / (WINDOWS + 1), y + 1.2 * i);
      }
}

static void
draw_page (const char *path)
{
  cairo_surface_t *surface = cairo_pdf_surface_create (path, SIDE, SIDE);
  cairo_t *cr = cairo_create (surface);

  cairo_set_line_width (cr, 0.25);
  for (guint row = 0; row < 10; row++)
    {
      for (guint j = 0; j < WINDOWS; j++)
        rings (cr, j * SIDE / (WINDOWS + 1), 200.0 * row + 50);
      boards (cr, 200.0 * row + 50);
      boards (cr, 200.0 * row + 111);
      boards (cr, 200.0 * row + 172);
      cairo_stroke (cr);
    }
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
}

static double
draw (CwSheetSource *source, double width, double height)
{
  const double begin = now ();
  cairo_surface_t *surface = cw_sheet_source_render (
      source, 1, 0, 1, 0, 0, (int) width, (int) height, NULL);

  cairo_surface_destroy (surface);
  return now () - begin;
}

static double
off (const CwDrawnLine *line, double x, double y)
{
  const double dx = line->x1 - line->x0, dy = line->y1 - line->y0;
  const double t = CLAMP (((x - line->x0) * dx + (y - line->y0) * dy)
                              / (dx * dx + dy * dy),
                          0, 1);

  return hypot (line->x0 + t * dx - x, line->y0 + t * dy - y);
}

/* ms a point. */
static double
scan (const CwDrawnLines *lines, double width, double height)
{
  const double begin = now ();
  double sum = 0;

  for (guint i = 0; i < SNAPS / 100; i++)
    {
      const double x = g_random_double () * width;
      const double y = g_random_double () * height;
      double least = G_MAXDOUBLE;

      for (guint j = 0; j < cw_drawn_lines_n (lines); j++)
        least = MIN (least, off (cw_drawn_lines_at (lines, j), x, y));
      sum += least;
    }
  if (sum < 0)
    printf ("%g\n", sum);
  return (now () - begin) / (SNAPS / 100);
}

static void
snap (const CwDrawnLines *lines, double width, double height)
{
  double sum = 0, worst = 0, baseline = scan (lines, width, height);

  for (guint i = 0; i < SNAPS; i++)
    {
      const double begin = now ();
      double took;

      cw_drawn_lines_nearest (lines, g_random_double () * width,
                              g_random_double () * height, REACH);
      took = now () - begin;
      sum += took;
      worst = MAX (worst, took);
    }
  printf ("snap   %8.4f ms, longest %.4f (aim 0.2)\n", sum / SNAPS, worst);
  printf ("scan   %8.4f ms, ratio %.4f\n", baseline, sum / SNAPS / baseline);
}

static void
frames (const CwDrawnLines *lines, double width, double height,
        double mm_per_point)
{
  const double begin = now ();
  guint n = 0;

  for (guint i = 0; i < FRAMES; i++)
    {
      g_autoptr (CwDrawnShapes) found = cw_drawn_shapes_around (
          lines, g_random_double () * width, g_random_double () * height,
          mm_per_point);

      n += found->shapes->len > 0;
    }
  printf ("frames %8.4f ms a point, found at %u of %u\n",
          (now () - begin) / FRAMES, n, FRAMES);
}

int
main (int argc, char *argv[])
{
  g_autofree char *own
      = g_build_filename (g_get_tmp_dir (), "cw-bench-sheet-lines.pdf", NULL);
  const char *path = argc > 1 ? argv[1] : own;
  const double mm_per_point = argc > 2 ? atof (argv[2]) : 48 * 25.4 / 72;
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GError) error = NULL;
  g_autoptr (CwSheetSource) source = NULL;
  g_autoptr (CwDrawnLines) lines = NULL;
  double width, height, begin, baseline, took;

  g_random_set_seed (1);
  if (argc < 2)
    draw_page (own);
  source = cw_sheet_source_open (file, &error);
  if (source == NULL)
    {
      fprintf (stderr, "%s\n", error->message);
      return 1;
    }
  cw_sheet_source_size (source, 1, 0, &width, &height);
  baseline = draw (source, width, height);
  begin = now ();
  lines = cw_sheet_source_lines (source, 1, 0, NULL, &error);
  took = now () - begin;
  printf ("draw   %8.1f ms\n", baseline);
  printf ("read   %8.1f ms, %u lines, ratio %.2f (aim 2000 ms for 30 000)\n",
          took, cw_drawn_lines_n (lines), took / baseline);
  snap (lines, width, height);
  frames (lines, width, height, mm_per_point);
  if (argc < 2)
    g_unlink (own);
  return 0;
}

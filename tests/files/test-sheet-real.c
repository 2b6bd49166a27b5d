/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Real plan sheets, kept beside the tree; every case skips where they are
 * absent. True sizes are those of the building models that two of the sheets
 * were drawn from, and the dimensions printed on the others.
 */
#include <math.h>
#include <string.h>

#include "cw-sheet-scale.h"
#include "cw-sheet-source.h"

static char *
shared_path (const char *name)
{
  const char *shared = g_getenv ("CW_SHARED");

  return shared ? g_build_filename (shared, "sheets", name, NULL) : NULL;
}

/* NULL, and the case is skipped, when it is not there. */
static CwSheetSource *
open_shared (const char *name)
{
  g_autofree char *path = shared_path (name);
  g_autoptr (GFile) file = NULL;
  g_autoptr (GError) error = NULL;
  CwSheetSource *source;

  if (path == NULL || !g_file_test (path, G_FILE_TEST_EXISTS))
    {
      g_test_skip ("The shared plan sheets are not there");
      return NULL;
    }
  file = g_file_new_for_path (path);
  source = cw_sheet_source_open (file, &error);
  g_assert_no_error (error);
  return source;
}

static void
test_size (void)
{
  static const struct
  {
    const char *name;
    double width, height;
  } cases[] = {
    { "lake-house-south-east.pdf", 2340, 2340 },
    { "lake-house-north-west.pdf", 2340, 2340 },
    { "lake-house-false-scale-note.pdf", 940, 940 },
    { "house-f-1to100-A3-turned.pdf", 841.890, 1190.551 },
    { "duplex-1to75-cropped.pdf", 1950.236, 1383.307 },
    /* 5040 x 3600 pixels at 120 dpi, 4225 square at 130 dpi */
    { "lake-house-raster-120dpi.png", 3024, 2160 },
    { "lake-house-scan-1bit.tif", 2340, 2340 },
    { "photo-of-a-print.jpg", 2400, 1351 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (CwSheetSource) source = open_shared (cases[i].name);
      double width, height;

      if (source == NULL)
        return;
      cw_sheet_source_size (source, 1, 0, &width, &height);
      g_assert_cmpfloat_with_epsilon (width, cases[i].width, 1e-2);
      g_assert_cmpfloat_with_epsilon (height, cases[i].height, 1e-2);
    }
}

static gboolean
is_dark (cairo_surface_t *surface, int x, int y)
{
  const guchar *data = cairo_image_surface_get_data (surface);
  guint32 value;

  memcpy (&value,
          data + y * cairo_image_surface_get_stride (surface) + 4 * x, 4);
  return (value >> 8 & 255) < 128;
}

/* The lengths in pixels of all level dark runs of at least @least. */
static GArray *
level_runs (cairo_surface_t *surface, int least)
{
  GArray *runs = g_array_new (FALSE, FALSE, sizeof (int));
  int width = cairo_image_surface_get_width (surface);

  for (int y = 0; y < cairo_image_surface_get_height (surface); y++)
    for (int x = 0, run = 0; x <= width; x++)
      if (x < width && is_dark (surface, x, y))
        run++;
      else
        {
          if (run >= least)
            g_array_append_val (runs, run);
          run = 0;
        }
  return runs;
}

/* Within 0.5 % of @pixels; a line is longer by its own width. */
static gboolean
has_run (const GArray *runs, double pixels)
{
  for (guint i = 0; i < runs->len; i++)
    if (fabs (g_array_index (runs, int, i) - pixels) <= 0.005 * pixels)
      return TRUE;
  return FALSE;
}

#define SCALE 3.0

static GArray *
runs_of_page (CwSheetSource *source, guint turn)
{
  g_autoptr (GError) error = NULL;
  double width, height;
  cairo_surface_t *surface;
  GArray *runs;

  cw_sheet_source_size (source, 1, turn, &width, &height);
  surface = cw_sheet_source_render (source, 1, turn, SCALE, 0, 0,
                                    (int) (width * SCALE),
                                    (int) (height * SCALE), &error);
  g_assert_no_error (error);
  runs = level_runs (surface, 200);
  cairo_surface_destroy (surface);
  return runs;
}

/* Every wall of the sheet stands on a level line that is as long as the wall
 * by the sheet's scale; at a scale that is 7 % off, none does. */
static void
assert_walls (const char *name, guint turn, double ratio,
              const double *lengths, guint n)
{
  g_autoptr (CwSheetSource) source = open_shared (name);
  g_autoptr (GArray) runs = NULL;
  double mm_per_point = cw_sheet_scale_from_ratio (ratio);

  if (source == NULL)
    return;
  runs = runs_of_page (source, turn);
  for (guint i = 0; i < n; i++)
    {
      double pixels = lengths[i] * 1000 / mm_per_point * SCALE;

      if (!has_run (runs, pixels))
        g_error ("No line of %g m", lengths[i]);
      g_assert_false (has_run (runs, pixels * 1.07));
    }
}

static void
test_turned (void)
{
  static const double lengths[] = { 10.0, 12.0 };

  assert_walls ("house-f-1to100-A3-turned.pdf", 270, 100, lengths,
                G_N_ELEMENTS (lengths));
}

static void
test_cropped (void)
{
  static const double lengths[] = { 16.966, 17.383, 8.8, 8.383 };

  assert_walls ("duplex-1to75-cropped.pdf", 0, 75, lengths,
                G_N_ELEMENTS (lengths));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/files/sheet-real/sizes", test_size);
  g_test_add_func ("/files/sheet-real/turned-1to100", test_turned);
  g_test_add_func ("/files/sheet-real/cropped-1to75", test_cropped);
  return g_test_run ();
}

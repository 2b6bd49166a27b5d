/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-source.h"

#include <math.h>
#include <string.h>

#include "sheet-cases.h"

#define RED 0xff0000
#define GREEN 0x00ff00
#define BLUE 0x0000ff
#define BLACK 0x000000
#define WHITE 0xffffff

static CwSheetSource *
open_file (GFile *file)
{
  g_autoptr (GError) error = NULL;
  CwSheetSource *source = cw_sheet_source_open (file, &error);

  g_assert_no_error (error);
  return source;
}

static CwSheetSource *
open_bytes (const char *name, GBytes *bytes)
{
  gsize n;
  const void *data = g_bytes_get_data (bytes, &n);
  g_autoptr (GFile) file = case_file (name, data, n);

  return open_file (file);
}

static CwSheetSource *
open_pdf (const char *boxes)
{
  g_autoptr (GFile) file = case_pdf ("sheet.pdf", boxes);

  return open_file (file);
}

static void
assert_size (CwSheetSource *source, guint turn, double width, double height)
{
  double shown_width, shown_height;

  cw_sheet_source_size (source, 1, turn, &shown_width, &shown_height);
  g_assert_cmpfloat_with_epsilon (shown_width, width, 1e-9);
  g_assert_cmpfloat_with_epsilon (shown_height, height, 1e-9);
}

static guint32
pixel (cairo_surface_t *surface, int x, int y)
{
  const guchar *data = cairo_image_surface_get_data (surface);
  guint32 value;

  memcpy (&value,
          data + y * cairo_image_surface_get_stride (surface) + 4 * x, 4);
  return value & 0xffffff;
}

/* Lossy images come near to a colour only. */
static gboolean
is_near (guint32 a, guint32 b)
{
  for (int shift = 0; shift < 24; shift += 8)
    if (ABS ((int) (a >> shift & 255) - (int) (b >> shift & 255)) > 60)
      return FALSE;
  return TRUE;
}

/* What the page, as turned and at @scale, shows at @x, @y in points. */
static void
assert_shows (CwSheetSource *source, guint turn, double scale, double x,
              double y, guint32 colour)
{
  g_autoptr (GError) error = NULL;
  int left = (int) floor (x * scale) - 2;
  int top = (int) floor (y * scale) - 2;
  cairo_surface_t *surface = cw_sheet_source_render (
      source, 1, turn, scale, left, top, 5, 5, &error);

  g_assert_no_error (error);
  if (!is_near (pixel (surface, 2, 2), colour))
    g_error ("turned by %u at %g, %g: %06x, not %06x", turn, x, y,
             pixel (surface, 2, 2), colour);
  cairo_surface_destroy (surface);
}

/* The four quarters, from the upper left one clockwise, of a box whose centre
 * is shown at @x, @y. */
static void
assert_quarters (CwSheetSource *source, guint turn, double scale, double x,
                 double y, double step, const guint32 colours[4])
{
  assert_shows (source, turn, scale, x - step, y - step, colours[0]);
  assert_shows (source, turn, scale, x + step, y - step, colours[1]);
  assert_shows (source, turn, scale, x + step, y + step, colours[2]);
  assert_shows (source, turn, scale, x - step, y + step, colours[3]);
}

static const guint32 upright[4] = { RED, GREEN, BLACK, BLUE };
static const guint32 clockwise[4] = { BLUE, RED, GREEN, BLACK };
static const guint32 upside_down[4] = { BLACK, BLUE, RED, GREEN };
static const guint32 anticlockwise[4] = { GREEN, BLACK, BLUE, RED };

static void
test_plain (void)
{
  g_autoptr (CwSheetSource) source = open_pdf ("/MediaBox [0 0 600 400]");

  g_assert_cmpuint (cw_sheet_source_n_pages (source), ==, 1);
  assert_size (source, 0, 600, 400);
  assert_quarters (source, 0, 1, 300, 200, 50, upright);
  assert_quarters (source, 0, 7.3, 300, 200, 2, upright);
  assert_quarters (source, 0, 0.1, 300, 200, 50, upright);
  assert_shows (source, 0, 1, 50, 50, WHITE);
  assert_shows (source, 0, 1, -50, 50, WHITE);
  assert_shows (source, 0, 1, 700, 500, WHITE);
}

static void
test_further_turn (void)
{
  g_autoptr (CwSheetSource) source = open_pdf ("/MediaBox [0 0 650 400]");

  assert_size (source, 90, 400, 650);
  assert_quarters (source, 90, 2, 200, 300, 50, clockwise);
  assert_size (source, 180, 650, 400);
  assert_quarters (source, 180, 2, 350, 200, 50, upside_down);
  assert_size (source, 270, 400, 650);
  assert_quarters (source, 270, 2, 200, 350, 50, anticlockwise);
}

static void
test_own_turn (void)
{
  g_autoptr (CwSheetSource) source
      = open_pdf ("/MediaBox [0 0 650 400] /Rotate 90");

  assert_size (source, 0, 400, 650);
  assert_quarters (source, 0, 2, 200, 300, 50, clockwise);
  assert_size (source, 270, 650, 400);
  assert_quarters (source, 270, 2, 300, 200, 50, upright);
}

/* Points are counted from the crop box's corner; what lies outside of it is
 * not shown. */
static void
test_crop_box (void)
{
  g_autoptr (CwSheetSource) source = open_pdf (
      "/MediaBox [0 0 600 400] /CropBox [200 50 500 260]");

  assert_size (source, 0, 300, 210);
  assert_quarters (source, 0, 2, 100, 60, 20, upright);
  assert_shows (source, 0, 2, 10, -10, WHITE);
  assert_shows (source, 0, 2, -10, 10, WHITE);
}

/* A box that does not start at 0. */
static void
test_shifted_box (void)
{
  g_autoptr (CwSheetSource) source
      = open_pdf ("/MediaBox [-100 -50 500 350]");

  assert_size (source, 0, 600, 400);
  assert_quarters (source, 0, 1, 400, 150, 50, upright);
}

static void
test_a3_points (void)
{
  g_autoptr (CwSheetSource) source
      = open_pdf ("/MediaBox [0 0 841.890 1190.551]");

  /* I-12, I-15: A3 is 297 x 420 mm (seen), in points derived. */
  double width, height;

  cw_sheet_source_size (source, 1, 0, &width, &height);
  g_assert_cmpfloat_with_epsilon (width, 297 / 25.4 * 72, 1e-3);
  g_assert_cmpfloat_with_epsilon (height, 420 / 25.4 * 72, 1e-3);
}

static void
test_no_size (void)
{
  g_autoptr (CwSheetSource) source
      = open_pdf ("/MediaBox [0 0 99999999 99999999]");
  g_autoptr (GError) error = NULL;

  assert_size (source, 0, 0, 0);
  g_assert_null (
      cw_sheet_source_render (source, 1, 0, 1, 0, 0, 10, 10, &error));
  g_assert_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_DAMAGED);
}

static void
test_too_much_at_once (void)
{
  g_autoptr (CwSheetSource) source = open_pdf ("/MediaBox [0 0 600 400]");
  g_autoptr (GError) error = NULL;

  g_assert_null (cw_sheet_source_render (
      source, 1, 0, 100, 0, 0, CW_SHEET_RENDER_MOST + 1, 10, &error));
  g_assert_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_TOO_LARGE);
}

/* The box of quarters is the whole image: 20 x 10 pixels. */
static void
assert_image (CwSheetSource *source, double width, double height)
{
  g_assert_cmpuint (cw_sheet_source_n_pages (source), ==, 1);
  assert_size (source, 0, width, height);
  assert_size (source, 90, height, width);
  assert_quarters (source, 0, 4, width / 2, height / 2, height / 4, upright);
  assert_quarters (source, 90, 4, height / 2, width / 2, height / 4,
                   clockwise);
}

static void
test_images (void)
{
  static const char *const types[] = { "png", "jpeg", "tiff" };

  for (guint i = 0; i < G_N_ELEMENTS (types); i++)
    {
      g_autoptr (GBytes) bytes = case_image (types[i], NULL);
      g_autoptr (CwSheetSource) source = open_bytes ("image", bytes);

      assert_image (source, 20, 10);
    }
}

static void
test_resolution (void)
{
  const char *options[] = { "x-dpi", "36", "y-dpi", "36", NULL };
  g_autoptr (GBytes) bytes = case_image ("jpeg", options);
  g_autoptr (CwSheetSource) source = open_bytes ("image", bytes);

  assert_image (source, 40, 20);
}

static void
test_absurd_resolution (void)
{
  const char *options[] = { "x-dpi", "2", "y-dpi", "2", NULL };
  g_autoptr (GBytes) bytes = case_image ("jpeg", options);
  g_autoptr (CwSheetSource) source = open_bytes ("image", bytes);

  assert_image (source, 20, 10);
}

/* EXIF orientations as cameras write them: 6 is stored to be turned clockwise
 * for viewing, 8 anticlockwise, 3 upside down. */
static void
test_exif (void)
{
  static const struct
  {
    guchar orientation;
    double width, height;
    const guint32 *quarters;
  } cases[] = {
    { 1, 20, 10, upright },
    { 3, 20, 10, upside_down },
    { 6, 10, 20, clockwise },
    { 8, 10, 20, anticlockwise },
  };
  g_autoptr (GBytes) jpeg = case_image ("jpeg", NULL);

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (GBytes) bytes
          = case_oriented_jpeg (jpeg, cases[i].orientation);
      g_autoptr (CwSheetSource) source = open_bytes ("image", bytes);

      assert_size (source, 0, cases[i].width, cases[i].height);
      assert_quarters (source, 0, 4, cases[i].width / 2, cases[i].height / 2,
                       2.5, cases[i].quarters);
    }
}

static void
assert_refused (GFile *file, CwSheetError code)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (CwSheetSource) source = cw_sheet_source_open (file, &error);
  g_autofree char *name = g_file_get_basename (file);

  g_assert_error (error, CW_SHEET_ERROR, (int) code);
  g_assert_null (source);
  g_assert_nonnull (strstr (error->message, name));
}

static void
test_missing (void)
{
  g_autoptr (GFile) file = g_file_new_for_path ("/nowhere/a-201.pdf");

  assert_refused (file, CW_SHEET_ERROR_READ);
}

static void
test_other_kinds (void)
{
  static const char *const texts[]
      = { "", "hello", "GIF89a", "<svg xmlns='http://www.w3.org/2000/svg'/>",
          "PK\3\4", "BM" };

  for (guint i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      g_autoptr (GFile) file
          = case_file ("sheet.pdf", texts[i], strlen (texts[i]));

      assert_refused (file, CW_SHEET_ERROR_KIND);
    }
}

static void
test_broken_pdf (void)
{
  static const char junk[] = "%PDF-1.7\n1 0 obj << /Type /Catalog >>";
  g_autoptr (GFile) file = case_file ("a-201.pdf", junk, strlen (junk));

  assert_refused (file, CW_SHEET_ERROR_DAMAGED);
}

/* Cut at every byte, a small image is refused, never half shown. */
static void
test_cut_images (gconstpointer type)
{
  g_autoptr (GBytes) bytes = case_image (type, NULL);
  gsize n;
  const void *data = g_bytes_get_data (bytes, &n);

  for (gsize kept = 16; kept < n - (strcmp (type, "png") == 0 ? 4 : 0);
       kept += 7)
    {
      g_autoptr (GFile) file = case_file ("scan", data, kept);

      assert_refused (file, CW_SHEET_ERROR_DAMAGED);
    }
}

/* Any byte changed: refused or shown, never a crash or a hang. */
static void
test_garbled (gconstpointer type)
{
  g_autoptr (GBytes) bytes = case_image (type, NULL);
  gsize n;
  const guchar *data = g_bytes_get_data (bytes, &n);
  guint opened = 0, refused = 0;

  for (int i = 0; i < 300; i++)
    {
      g_autofree guchar *changed = g_memdup2 (data, n);
      g_autoptr (CwSheetSource) source = NULL;
      g_autoptr (GError) error = NULL;
      g_autoptr (GFile) file = NULL;

      changed[g_test_rand_int_range (4, (int) n)]
          = (guchar) g_test_rand_int ();
      file = case_file ("scan", changed, n);
      source = cw_sheet_source_open (file, &error);
      g_assert_true ((source != NULL) == (error == NULL));
      opened += source != NULL;
      refused += error != NULL;
    }
  g_assert_cmpuint (opened + refused, ==, 300);
  g_test_message ("%u opened, %u refused", opened, refused);
}

static void
test_vast_image (void)
{
  g_autoptr (GBytes) png = case_image ("png", NULL);
  g_autoptr (GBytes) claiming = case_png_claiming (png, 30000, 30000);
  gsize n;
  const void *data = g_bytes_get_data (claiming, &n);
  g_autoptr (GFile) file = case_file ("scan.png", data, n);

  assert_refused (file, CW_SHEET_ERROR_TOO_LARGE);
}

/* FIPS 180-4's published example: SHA-256 of "abc" (from memory). */
static void
test_sha256 (void)
{
  g_autoptr (GFile) file = case_file ("abc", "abc", 3);
  g_autoptr (GFile) missing = g_file_new_for_path ("/nowhere/abc");
  g_autofree char *sum = cw_sheet_source_sha256 (file, NULL, NULL);
  g_autoptr (GError) error = NULL;

  g_assert_cmpstr (sum, ==,
                   "ba7816bf8f01cfea414140de5dae2223"
                   "b00361a396177a9cb410ff61f20015ad");
  g_assert_null (cw_sheet_source_sha256 (missing, NULL, &error));
  g_assert_error (error, G_IO_ERROR, G_IO_ERROR_NOT_FOUND);
}

static void
test_finalize (void)
{
  CwSheetSource *source = open_pdf ("/MediaBox [0 0 600 400]");

  g_object_add_weak_pointer (G_OBJECT (source), (gpointer *) &source);
  g_object_unref (source);
  g_assert_null (source);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/files/sheet-source/plain", test_plain);
  g_test_add_func ("/files/sheet-source/further-turn", test_further_turn);
  g_test_add_func ("/files/sheet-source/own-turn", test_own_turn);
  g_test_add_func ("/files/sheet-source/crop-box", test_crop_box);
  g_test_add_func ("/files/sheet-source/shifted-box", test_shifted_box);
  g_test_add_func ("/files/sheet-source/a3-points", test_a3_points);
  g_test_add_func ("/files/sheet-source/no-size", test_no_size);
  g_test_add_func ("/files/sheet-source/too-much-at-once",
                   test_too_much_at_once);
  g_test_add_func ("/files/sheet-source/images", test_images);
  g_test_add_func ("/files/sheet-source/resolution", test_resolution);
  g_test_add_func ("/files/sheet-source/absurd-resolution",
                   test_absurd_resolution);
  g_test_add_func ("/files/sheet-source/exif", test_exif);
  g_test_add_func ("/files/sheet-source/missing", test_missing);
  g_test_add_func ("/files/sheet-source/other-kinds", test_other_kinds);
  g_test_add_func ("/files/sheet-source/broken-pdf", test_broken_pdf);
  g_test_add_data_func ("/files/sheet-source/cut-png", "png",
                        test_cut_images);
  g_test_add_data_func ("/files/sheet-source/cut-jpeg", "jpeg",
                        test_cut_images);
  g_test_add_data_func ("/files/sheet-source/cut-tiff", "tiff",
                        test_cut_images);
  g_test_add_data_func ("/files/sheet-source/garbled-png", "png",
                        test_garbled);
  g_test_add_data_func ("/files/sheet-source/garbled-jpeg", "jpeg",
                        test_garbled);
  g_test_add_data_func ("/files/sheet-source/garbled-tiff", "tiff",
                        test_garbled);
  g_test_add_func ("/files/sheet-source/vast-image", test_vast_image);
  g_test_add_func ("/files/sheet-source/sha256", test_sha256);
  g_test_add_func ("/files/sheet-source/finalize", test_finalize);
  return g_test_run ();
}

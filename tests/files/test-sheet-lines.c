/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lines read back from pages that are drawn here.
 */
#include "cw-sheet-lines.h"

#include <cairo-pdf.h>
#include <math.h>
#include <string.h>

#include "cw-svg-lines.h"
#include "cw-svg-path.h"
#include "sheet-cases.h"

typedef void (*Draw) (cairo_t *cr);

static cairo_status_t
append (void *bytes, const unsigned char *data, unsigned int n)
{
  g_byte_array_append (bytes, data, n);
  return CAIRO_STATUS_SUCCESS;
}

/* A page of 400 × 300 points. (transfer full) */
static CwSheetSource *
page_of (const char *name, Draw draw)
{
  g_autoptr (GByteArray) bytes = g_byte_array_new ();
  g_autoptr (GFile) file = NULL;
  g_autoptr (GError) error = NULL;
  cairo_surface_t *surface
      = cairo_pdf_surface_create_for_stream (append, bytes, 400, 300);
  cairo_t *cr = cairo_create (surface);
  CwSheetSource *source;

  draw (cr);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  file = case_file (name, bytes->data, bytes->len);
  source = cw_sheet_source_open (file, &error);
  g_assert_no_error (error);
  return source;
}

/* (transfer full) */
static CwDrawnLines *
lines_of (const char *name, Draw draw, guint turn)
{
  g_autoptr (CwSheetSource) source = page_of (name, draw);
  g_autoptr (GError) error = NULL;
  CwDrawnLines *lines = cw_sheet_source_lines (source, 1, turn, NULL, &error);

  g_assert_no_error (error);
  return lines;
}

static gboolean
has_line (const CwDrawnLines *lines, double x0, double y0, double x1,
          double y1)
{
  for (guint i = 0; i < cw_drawn_lines_n (lines); i++)
    {
      const CwDrawnLine *line = cw_drawn_lines_at (lines, i);
      const double there = hypot (line->x0 - x0, line->y0 - y0)
                           + hypot (line->x1 - x1, line->y1 - y1);
      const double back = hypot (line->x0 - x1, line->y0 - y1)
                          + hypot (line->x1 - x0, line->y1 - y0);

      if (MIN (there, back) < 0.004)
        return TRUE;
    }
  return FALSE;
}

static void
stroke_box (cairo_t *cr)
{
  cairo_rectangle (cr, 50.25, 60.125, 100.5, 80);
  cairo_stroke (cr);
}

static void
test_box (void)
{
  g_autoptr (CwDrawnLines) lines = lines_of ("box.pdf", stroke_box, 0);

  g_assert_cmpuint (cw_drawn_lines_n (lines), ==, 4);
  g_assert_true (has_line (lines, 50.25, 60.125, 150.75, 60.125));
  g_assert_true (has_line (lines, 150.75, 60.125, 150.75, 140.125));
  g_assert_true (has_line (lines, 50.25, 140.125, 150.75, 140.125));
  g_assert_true (has_line (lines, 50.25, 60.125, 50.25, 140.125));
}

/* A quarter clockwise: (x, y) comes to (300 - y, x). */
static void
test_turned (void)
{
  g_autoptr (CwDrawnLines) lines = lines_of ("turned.pdf", stroke_box, 90);

  g_assert_cmpuint (cw_drawn_lines_n (lines), ==, 4);
  g_assert_true (has_line (lines, 239.875, 50.25, 239.875, 150.75));
  g_assert_true (has_line (lines, 159.875, 50.25, 239.875, 50.25));
}

static void
stroke_circle (cairo_t *cr)
{
  cairo_translate (cr, 200, 150);
  cairo_scale (cr, 2, 1);
  cairo_arc (cr, 0, 0, 60, 0, 2 * G_PI);
  cairo_close_path (cr);
  cairo_identity_matrix (cr);
  cairo_stroke (cr);
}

/* Chords of an ellipse: their ends on it, none of them far from it; and no
 * more corners than the four where its curves are joined. */
static void
test_curve (void)
{
  g_autoptr (CwDrawnLines) lines = lines_of ("curve.pdf", stroke_circle, 0);
  guint n_ends = 0;

  g_assert_cmpuint (cw_drawn_lines_n (lines), >, 16);
  g_assert_cmpuint (cw_drawn_lines_n (lines), <, 200);
  for (guint i = 0; i < cw_drawn_lines_n (lines); i++)
    {
      const CwDrawnLine *line = cw_drawn_lines_at (lines, i);
      const double x = (line->x0 + line->x1) / 2, y = (line->y0 + line->y1) / 2;

      /* cairo's own curve is off a circle by 0.03 % of its radius. */
      g_assert_cmpfloat_with_epsilon (
          hypot ((line->x0 - 200) / 120, (line->y0 - 150) / 60), 1, 5e-4);
      g_assert_cmpfloat_with_epsilon (
          hypot ((x - 200) / 120, (y - 150) / 60), 1, 2e-3);
      n_ends += !(line->flags & CW_DRAWN_BEGINS_INSIDE)
                + !(line->flags & CW_DRAWN_ENDS_INSIDE);
    }
  g_assert_cmpuint (n_ends, ==, 8);
}

static void
draw_what_is_no_line (cairo_t *cr)
{
  cairo_move_to (cr, 40, 40);
  cairo_set_font_size (cr, 30);
  cairo_show_text (cr, "W12");
  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_rectangle (cr, 100, 100, 50, 50);
  cairo_fill (cr);
  cairo_rectangle (cr, 200, 100, 50, 50);
  cairo_stroke (cr);
}

static void
test_no_lines (void)
{
  g_autoptr (CwDrawnLines) lines
      = lines_of ("no-lines.pdf", draw_what_is_no_line, 0);

  g_assert_cmpuint (cw_drawn_lines_n (lines), ==, 0);
}

static void
fill_box (cairo_t *cr)
{
  cairo_set_source_rgb (cr, 0.5, 0.5, 0.5);
  cairo_rectangle (cr, 100, 100, 50, 50);
  cairo_fill (cr);
}

static void
test_filled (void)
{
  g_autoptr (CwDrawnLines) lines = lines_of ("filled.pdf", fill_box, 0);

  g_assert_cmpuint (cw_drawn_lines_n (lines), ==, 4);
}

static void
draw_clipped (cairo_t *cr)
{
  cairo_rectangle (cr, 100, 50, 200, 200);
  cairo_clip (cr);
  cairo_move_to (cr, 20, 150);
  cairo_line_to (cr, 380, 150);
  cairo_move_to (cr, 20, 20);
  cairo_line_to (cr, 380, 20);
  cairo_stroke (cr);
}

static void
test_clipped (void)
{
  g_autoptr (CwDrawnLines) lines = lines_of ("clipped.pdf", draw_clipped, 0);

  g_assert_cmpuint (cw_drawn_lines_n (lines), ==, 1);
  g_assert_true (has_line (lines, 100, 150, 300, 150));
}

/* Half clear, as layers of a drawing program come out. */
static void
draw_in_group (cairo_t *cr)
{
  cairo_translate (cr, 10, 20);
  cairo_push_group (cr);
  cairo_move_to (cr, 50, 50);
  cairo_line_to (cr, 250, 50);
  cairo_stroke (cr);
  cairo_pop_group_to_source (cr);
  cairo_paint_with_alpha (cr, 0.5);
}

static void
test_group (void)
{
  g_autoptr (CwDrawnLines) lines = lines_of ("group.pdf", draw_in_group, 0);

  g_assert_cmpuint (cw_drawn_lines_n (lines), ==, 1);
  g_assert_true (has_line (lines, 60, 70, 260, 70));
}

static void
test_image (void)
{
  g_autoptr (GBytes) bytes = case_image ("png", NULL);
  g_autoptr (GFile) file = case_file ("image.png",
                                      g_bytes_get_data (bytes, NULL),
                                      g_bytes_get_size (bytes));
  g_autoptr (GError) error = NULL;
  g_autoptr (CwSheetSource) source = cw_sheet_source_open (file, &error);
  g_autoptr (CwDrawnLines) lines = NULL;

  g_assert_no_error (error);
  lines = cw_sheet_source_lines (source, 1, 0, NULL, &error);
  g_assert_no_error (error);
  g_assert_cmpuint (cw_drawn_lines_n (lines), ==, 0);
}

static void
test_cancelled (void)
{
  g_autoptr (CwSheetSource) source = page_of ("cancelled.pdf", stroke_box);
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  g_autoptr (GError) error = NULL;

  g_cancellable_cancel (cancellable);
  g_assert_null (cw_sheet_source_lines (source, 1, 0, cancellable, &error));
  g_assert_error (error, G_IO_ERROR, G_IO_ERROR_CANCELLED);
}

/* What newer cairo writes, fed in pieces; and what is damaged. */
static void
test_svg (void)
{
  static const char svg[]
      = "<svg xmlns=\"http://www.w3.org/2000/svg\"><g transform=\"translate(5"
        " 0)\"><path fill=\"none\" stroke=\"rgb(0%, 0%, 0%)\" d=\"M 1,2 L 3 4 "
        "Z\" transform=\"matrix(2 0 0 2 0 0)\"/></g></svg>";
  g_autoptr (CwSvgLines) whole = cw_svg_lines_new (1, 100, 100, NULL);
  g_autoptr (CwSvgLines) damaged = cw_svg_lines_new (1, 100, 100, NULL);
  g_autoptr (CwSvgLines) cut = cw_svg_lines_new (1, 100, 100, NULL);
  g_autoptr (GArray) lines = NULL;

  for (guint i = 0; svg[i]; i++)
    g_assert_true (cw_svg_lines_feed (whole, svg + i, 1));
  lines = cw_svg_lines_finish (whole);
  g_assert_cmpuint (lines->len, ==, 2);
  g_assert_cmpfloat_with_epsilon (g_array_index (lines, CwDrawnLine, 0).x0, 7,
                                  1e-9);
  g_assert_cmpfloat_with_epsilon (g_array_index (lines, CwDrawnLine, 0).y1, 8,
                                  1e-9);
  g_assert_false (cw_svg_lines_feed (damaged, "<svg><g></svg>", 14));
  g_assert_null (cw_svg_lines_finish (damaged));
  g_assert_true (cw_svg_lines_feed (cut, svg, 60));
  g_assert_null (cw_svg_lines_finish (cut));
}

static void
test_svg_too_deep (void)
{
  g_autoptr (CwSvgLines) svg = cw_svg_lines_new (1, 100, 100, NULL);
  guint n = 0;

  while (n < 1000 && cw_svg_lines_feed (svg, "<g>", 3))
    n++;
  g_assert_cmpuint (n, <, 300);
}

static void
test_path_stops (void)
{
  static const char *const texts[] = { "", "M", "M 1", "M 1 2 L 3 x", "M 1 2 Q",
                                       "12", "M 1 2 C 1 2 3 4 5" };
  cairo_matrix_t same;

  cairo_matrix_init_identity (&same);
  for (guint i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      g_autoptr (GArray) lines
          = g_array_new (FALSE, FALSE, sizeof (CwDrawnLine));

      cw_svg_path_read (texts[i], strlen (texts[i]), &same, lines);
      g_assert_cmpuint (lines->len, ==, 0);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/files/sheet-lines/box", test_box);
  g_test_add_func ("/files/sheet-lines/turned", test_turned);
  g_test_add_func ("/files/sheet-lines/curve", test_curve);
  g_test_add_func ("/files/sheet-lines/no-lines", test_no_lines);
  g_test_add_func ("/files/sheet-lines/filled", test_filled);
  g_test_add_func ("/files/sheet-lines/clipped", test_clipped);
  g_test_add_func ("/files/sheet-lines/group", test_group);
  g_test_add_func ("/files/sheet-lines/image", test_image);
  g_test_add_func ("/files/sheet-lines/cancelled", test_cancelled);
  g_test_add_func ("/files/sheet-lines/svg", test_svg);
  g_test_add_func ("/files/sheet-lines/svg-too-deep", test_svg_too_deep);
  g_test_add_func ("/files/sheet-lines/path-stops", test_path_stops);
  return g_test_run ();
}

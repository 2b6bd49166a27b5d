/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the painter leaves on a surface.
 */
#include "cw-palette.h"
#include "draw-cases.h"

static const struct
{
  const char *name;
  CwPalette palette;
} palettes[] = { { "paper", CW_PALETTE_PAPER },
                 { "light", CW_PALETTE_LIGHT },
                 { "dark", CW_PALETTE_DARK } };

static CwDisplayList *
house_drawing (CwUnits units, double scale)
{
  g_autoptr (CwTakeoff) takeoff = draw_case_house ();
  const CwTextStyle style = cw_text_style_for_locale (units);

  return cw_elevation_drawing (draw_case_wall (takeoff), CW_LAYER_ALL, &style,
                               1 / scale);
}

/* A box of @size mm at the wall's origin. */
static CwDisplayList *
box_of (CwStyle style, int size)
{
  CwDisplayList *list = cw_display_list_new ();
  const CwBox box = { 0, 0, CW_MM (size), CW_MM (size) };

  cw_display_list_add_box (list, style, "box", &box);
  return list;
}

static guint
n_colours_inside (CwStyle style, double scale, guint32 *colour)
{
  g_autoptr (CwDisplayList) list = box_of (style, (int) (60 / scale));
  cairo_surface_t *picture
      = draw_case_picture (list, CW_PALETTE_LIGHT, scale, 60, 60, 0, 0);
  guint n = draw_case_n_colours (picture, 5, 5, 50, 50);

  *colour = draw_case_pixel (picture, 30, 30);
  cairo_surface_destroy (picture);
  return n;
}

/* 200 mm of wall are 3 units at 0.015: under it a hatch is a flat tone, and
 * not that of the bare fill. */
static void
test_hatch_becomes_flat (void)
{
  static const CwStyle hatched[] = { CW_STYLE_PIECE_RASPED, CW_STYLE_PIECE_CUT,
                                     CW_STYLE_UNCLAD };

  for (guint i = 0; i < G_N_ELEMENTS (hatched); i++)
    {
      const CwStyleValues *values
          = cw_style_values (CW_PALETTE_LIGHT, hatched[i]);
      guint32 colour;

      g_assert_cmpuint (n_colours_inside (hatched[i], 0.1, &colour), >, 3);
      g_assert_cmpuint (n_colours_inside (hatched[i], 0.016, &colour), >, 3);
      g_assert_cmpuint (n_colours_inside (hatched[i], 0.014, &colour), ==, 1);
      g_assert_cmphex (colour, !=, draw_case_colour (&values->fill));
    }
}

/* A small piece at the wall's origin. */
static CwDisplayList *
triangle (CwStyle style)
{
  CwDisplayList *list = cw_display_list_new ();

  cw_display_list_begin (list, style, "gable");
  cw_display_list_move_to (list, 0, 0);
  cw_display_list_line_to (list, 400, 0);
  cw_display_list_line_to (list, 0, 400);
  cw_display_list_close (list);
  cw_display_list_end (list);
  return list;
}

static cairo_surface_t *
recording_of (const CwDisplayList *list)
{
  const cairo_rectangle_t extents = { 0, 0, 100, 100 };
  const CwPaint paint = { .scale = 0.1, .y = 100, .text_scale = 1,
                          .palette = CW_PALETTE_LIGHT };
  cairo_surface_t *recording = cairo_recording_surface_create (
      CAIRO_CONTENT_COLOR_ALPHA, &extents);
  cairo_t *cr = cairo_create (recording);

  cw_paint (cr, list, &paint);
  g_assert_cmpint (cairo_status (cr), ==, CAIRO_STATUS_SUCCESS);
  cairo_destroy (cr);
  return recording;
}

/* Windows replay what was painted into what has changed of them: here a strip
 * along the top and one at the side of the piece, of @overlap pixels in it.
 * With a clip in the recording cairo 1.16.0 ends the program when there is
 * none. */
static void
replay_beside (cairo_surface_t *recording, cairo_surface_t *window,
               double overlap)
{
  cairo_t *cr = cairo_create (window);

  cairo_rectangle (cr, 0, 0, 100, 5);
  cairo_rectangle (cr, 40 - overlap, 60, 30, 40);
  cairo_clip (cr);
  cairo_set_source_surface (cr, recording, 0, 0);
  cairo_paint (cr);
  g_assert_cmpint (cairo_status (cr), ==, CAIRO_STATUS_SUCCESS);
  cairo_destroy (cr);
}

static void
test_hatch_replayed_in_parts (void)
{
  g_autoptr (CwDisplayList) list = triangle (CW_STYLE_PIECE_CUT);
  cairo_surface_t *recording = recording_of (list);
  cairo_surface_t *window
      = cairo_image_surface_create (CAIRO_FORMAT_RGB24, 100, 100);

  replay_beside (recording, window, -5);
  g_assert_cmpuint (draw_case_n_colours (window, 0, 0, 100, 100), ==, 1);
  replay_beside (recording, window, 30);
  g_assert_cmpuint (draw_case_n_colours (window, 10, 60, 30, 40), >, 3);
  g_assert_cmpuint (draw_case_n_colours (window, 0, 60, 10, 40), ==, 1);
  cairo_surface_destroy (window);
  cairo_surface_destroy (recording);
}

static void
test_plain_stays_plain (void)
{
  const CwStyleValues *values
      = cw_style_values (CW_PALETTE_LIGHT, CW_STYLE_PIECE_WHOLE);
  guint32 colour;

  g_assert_cmpuint (n_colours_inside (CW_STYLE_PIECE_WHOLE, 0.1, &colour), ==,
                    1);
  g_assert_cmphex (colour, ==, draw_case_colour (&values->fill));
}

static gboolean
shows_text (double room, double scale, double least)
{
  g_autoptr (CwDisplayList) list = cw_display_list_new ();
  const CwPaint paint = { .scale = scale, .least_text = least };

  cw_display_list_add_text_in (list, CW_STYLE_DIMENSION_TEXT, NULL, 0, 0, 0,
                               10 * room, room, "1234");
  return draw_case_ink (list, &paint, NULL, NULL);
}

/* A line of text is higher than its size, so a room of 5 units is too low for
 * a text of 5 units. */
static void
test_small_texts_left_out (void)
{
  g_assert_true (shows_text (100, 1, 0));
  g_assert_true (shows_text (100, 0.1, 0));
  g_assert_false (shows_text (100, 0.05, 0));
  g_assert_false (shows_text (100, 0.01, 0));
  g_assert_false (shows_text (100, 0.1, 9));
  g_assert_true (shows_text (100, 0.05, 2));
  g_assert_false (shows_text (0, 1, 0));
  g_assert_false (shows_text (-10, 1, 0));
}

/* Text without a room keeps its size on paper whatever the scale. */
static void
test_text_keeps_its_size (void)
{
  g_autoptr (CwDisplayList) list = cw_display_list_new ();
  CwPaint paint = { .scale = 1 };
  double width, height, same_width, same_height, large_width, large_height;

  cw_display_list_add_text (list, CW_STYLE_LEVEL_TEXT, NULL, 0, 0, 0,
                            CW_ANCHOR_LEFT, "+2700");
  draw_case_ink (list, &paint, &width, &height);
  paint.scale = 0.01;
  draw_case_ink (list, &paint, &same_width, &same_height);
  paint.text_scale = 2;
  draw_case_ink (list, &paint, &large_width, &large_height);
  g_assert_cmpfloat_with_epsilon (same_width, width, 1e-9);
  g_assert_cmpfloat_with_epsilon (same_height, height, 1e-9);
  g_assert_cmpfloat (large_width, >, 1.7 * width);
  g_assert_cmpfloat (large_height, >, 1.6 * height);
}

static void
test_text_shrinks_into_its_room (void)
{
  g_autoptr (CwDisplayList) list = cw_display_list_new ();
  const CwPaint paint = { .scale = 1 };
  double width, height;

  cw_display_list_add_text_in (list, CW_STYLE_LEVEL_TEXT, NULL, 0, 0, 0, 22,
                               30, "12345");
  g_assert_true (draw_case_ink (list, &paint, &width, &height));
  g_assert_cmpfloat (width, <=, 22 + 2);
}

static void
test_upright_text (void)
{
  g_autoptr (CwDisplayList) list = cw_display_list_new ();
  const CwPaint paint = { .scale = 1 };
  double width, height;

  cw_display_list_add_text (list, CW_STYLE_LEVEL_TEXT, NULL, 0, 0, G_PI_2,
                            CW_ANCHOR_CENTRE, "2700");
  g_assert_true (draw_case_ink (list, &paint, &width, &height));
  g_assert_cmpfloat (height, >, 2 * width);
}

static void
test_only_id (void)
{
  g_autoptr (CwDisplayList) list = cw_display_list_new ();
  const CwBox first = { 0, 0, CW_MM (10), CW_MM (10) };
  const CwBox second = { CW_MM (40), 0, CW_MM (100), CW_MM (10) };
  CwPaint paint = { .scale = 1, .only_id = "a" };
  double width;

  cw_display_list_add_box (list, CW_STYLE_WALL, "a", &first);
  cw_display_list_add_box (list, CW_STYLE_WALL, "b", &second);
  g_assert_true (draw_case_ink (list, &paint, &width, NULL));
  g_assert_cmpfloat_with_epsilon (width, 10, 1);
  paint.only_id = "b";
  g_assert_true (draw_case_ink (list, &paint, &width, NULL));
  g_assert_cmpfloat_with_epsilon (width, 60, 1);
  paint.only_id = "c";
  g_assert_false (draw_case_ink (list, &paint, NULL, NULL));
}

/* An open path is stroked and never filled. */
static void
test_open_paths_not_filled (void)
{
  g_autoptr (CwDisplayList) list = cw_display_list_new ();
  const CwColour paper = cw_tone (CW_PALETTE_LIGHT, CW_TONE_PAPER);
  cairo_surface_t *picture;

  cw_display_list_begin (list, CW_STYLE_OPENING, NULL);
  cw_display_list_move_to (list, 10, 10);
  cw_display_list_line_to (list, 50, 10);
  cw_display_list_line_to (list, 50, 50);
  cw_display_list_end (list);
  picture = draw_case_picture (list, CW_PALETTE_LIGHT, 1, 60, 60, 0, 0);
  g_assert_cmphex (draw_case_pixel (picture, 40, 40), ==,
                   draw_case_colour (&paper));
  g_assert_cmphex (draw_case_pixel (picture, 30, 49), !=,
                   draw_case_colour (&paper));
  cairo_surface_destroy (picture);
}

/* The upper half of an ellipse of 40 × 20 mm about (50, 30). */
static void
test_arcs_and_upward (void)
{
  g_autoptr (CwDisplayList) list = cw_display_list_new ();
  const CwColour paper = cw_tone (CW_PALETTE_LIGHT, CW_TONE_PAPER);
  const CwColour face = cw_tone (CW_PALETTE_LIGHT, CW_TONE_FACE);
  cairo_surface_t *picture;

  cw_display_list_begin (list, CW_STYLE_WALL, NULL);
  cw_display_list_move_to (list, 90, 30);
  cw_display_list_arc (list, 50, 30, 40, 20, 0, G_PI);
  cw_display_list_close (list);
  cw_display_list_end (list);
  picture = draw_case_picture (list, CW_PALETTE_LIGHT, 1, 100, 100, 0, 0);
  g_assert_cmphex (draw_case_pixel (picture, 50, 99 - 47), ==,
                   draw_case_colour (&face));
  g_assert_cmphex (draw_case_pixel (picture, 50, 99 - 53), ==,
                   draw_case_colour (&paper));
  g_assert_cmphex (draw_case_pixel (picture, 50, 99 - 25), ==,
                   draw_case_colour (&paper));
  /* On the diagonal at 0.70 and 0.72 of both axes. */
  g_assert_cmphex (draw_case_pixel (picture, 76, 99 - 42), ==,
                   draw_case_colour (&face));
  g_assert_cmphex (draw_case_pixel (picture, 81, 99 - 47), ==,
                   draw_case_colour (&paper));
  cairo_surface_destroy (picture);
}

/* Cairo rounds places to 1/256 pixel: edges may differ by a
 * little, in 24 of these 450 000 pixels by more than 6 of 255. */
static gboolean
same_shade (guint32 a, guint32 b)
{
  for (guint shift = 0; shift < 24; shift += 8)
    if (ABS ((int) (a >> shift & 0xff) - (int) (b >> shift & 0xff)) > 24)
      return FALSE;
  return TRUE;
}

/* A tile of a drawing is that part of the whole: nothing that reaches into it
 * is left out, and hatches do not move with the view. */
static void
assert_tile (const CwDisplayList *list, cairo_surface_t *whole, int x, int y,
             int size)
{
  cairo_surface_t *tile = draw_case_picture (
      list, CW_PALETTE_PAPER, 0.08, size, size, 80 - x,
      y + size - cairo_image_surface_get_height (whole) + 70);

  for (int j = 0; j < size; j++)
    for (int i = 0; i < size; i++)
      g_assert_true (same_shade (draw_case_pixel (tile, i, j),
                                 draw_case_pixel (whole, x + i, y + j)));
  cairo_surface_destroy (tile);
}

static void
test_tiles_join (void)
{
  g_autoptr (CwDisplayList) list = house_drawing (CW_UNITS_METRIC, 0.08);
  cairo_surface_t *whole
      = draw_case_picture (list, CW_PALETTE_PAPER, 0.08, 900, 500, 80, 70);

  for (int y = 0; y + 100 <= 500; y += 100)
    for (int x = 0; x + 100 <= 900; x += 100)
      assert_tile (list, whole, x, y, 100);
  cairo_surface_destroy (whole);
}

static void
test_bounds (void)
{
  g_autoptr (CwDisplayList) list = cw_display_list_new ();
  const CwBox box = { CW_MM (-20), CW_MM (5), CW_MM (30), CW_MM (70) };
  double left, bottom, right, top;

  g_assert_false (
      cw_display_list_bounds (list, &left, &bottom, &right, &top));
  cw_display_list_add_text (list, CW_STYLE_LEVEL_TEXT, NULL, 500, 500, 0,
                            CW_ANCHOR_LEFT, "out of bounds");
  g_assert_false (
      cw_display_list_bounds (list, &left, &bottom, &right, &top));
  cw_display_list_add_box (list, CW_STYLE_WALL, NULL, &box);
  g_assert_true (cw_display_list_bounds (list, &left, &bottom, &right, &top));
  g_assert_cmpfloat_with_epsilon (left, -20, 1e-9);
  g_assert_cmpfloat_with_epsilon (bottom, 5, 1e-9);
  g_assert_cmpfloat_with_epsilon (right, 30, 1e-9);
  g_assert_cmpfloat_with_epsilon (top, 70, 1e-9);
}

static void
light (CwDisplayList *list, const char *key)
{
  g_autoptr (CwTakeoff) takeoff = draw_case_house ();
  g_autoptr (CwDisplayList) lit = cw_elevation_drawing_lit (
      draw_case_wall (takeoff), cw_quantity_type (key), NULL);

  cw_display_list_append (list, lit);
}

static void
save_picture (const char *folder, guint palette, double scale, CwUnits units,
              const char *key)
{
  g_autoptr (CwDisplayList) list = house_drawing (units, scale);
  g_autofree char *name
      = g_strdup_printf ("%s/house-%s-%g-%s.png", folder,
                         palettes[palette].name, scale, key ? key : "plain");
  if (key)
    light (list, key);
  cairo_surface_t *picture = draw_case_picture (
      list, palettes[palette].palette, scale, (int) (9000 * scale) + 220,
      (int) (4500 * scale) + 120, 90, 80);

  g_assert_cmpint (cairo_surface_write_to_png (picture, name), ==,
                   CAIRO_STATUS_SUCCESS);
  cairo_surface_destroy (picture);
}

/* For eyes: CW_PICTURES names a folder to leave pictures in. */
static void
save_pictures (const char *folder)
{
  for (guint i = 0; i < G_N_ELEMENTS (palettes); i++)
    {
      save_picture (folder, i, 0.12, CW_UNITS_METRIC, NULL);
      save_picture (folder, i, 0.0567, CW_UNITS_US, "panel.cut");
      save_picture (folder, i, 0.0567, CW_UNITS_US, "opening.jamb");
      save_picture (folder, i, 0.014, CW_UNITS_METRIC, NULL);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
#define ADD(path, test) g_test_add_func ("/draw/painter/" path, test)
  ADD ("hatch-becomes-flat", test_hatch_becomes_flat);
  ADD ("hatch-replayed-in-parts", test_hatch_replayed_in_parts);
  ADD ("plain-stays-plain", test_plain_stays_plain);
  ADD ("small-texts-left-out", test_small_texts_left_out);
  ADD ("text-keeps-its-size", test_text_keeps_its_size);
  ADD ("text-shrinks-into-its-room", test_text_shrinks_into_its_room);
  ADD ("upright-text", test_upright_text);
  ADD ("only-id", test_only_id);
  ADD ("open-paths-not-filled", test_open_paths_not_filled);
  ADD ("arcs-and-upward", test_arcs_and_upward);
  ADD ("tiles-join", test_tiles_join);
  ADD ("bounds", test_bounds);
  if (g_getenv ("CW_PICTURES"))
    save_pictures (g_getenv ("CW_PICTURES"));
  return g_test_run ();
}

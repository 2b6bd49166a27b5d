/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Elevations as display lists, whole and layer by layer.
 *
 * The expected text forms lie in tests/data/draw. After a change that is
 * meant, look at the difference and at the pictures, then renew them:
 *
 *   CW_RENEW=1 meson test -C _build draw-elevation-drawing
 */
#include <string.h>

#include "draw-cases.h"

/* Small, so that its text can be read: a gable over a window, an arch, two
 * stub-outs, an unclad corner and a band. */
#define SHED                                                                  \
  "3.6x1.5 window:0.6x0.6@0.4,0.5 arch:0.8x0.7+0.2:segmental@1.6,0.3 "        \
  "stub:0.05@3.1,0.4 stub:0.1@1.3,1.7 unclad:0.5x0.3@0,0 "                    \
  "band:3.6x0.1x0.02"

static CwDisplayList *
drawing_of (const CwTakeoff *takeoff, CwLayers layers, CwUnits units)
{
  const CwTextStyle style = cw_text_style_for_locale (units);

  return cw_elevation_drawing (draw_case_wall (takeoff), layers, &style, 20);
}

static char *
expected_path (const char *name)
{
  return g_build_filename (g_getenv ("G_TEST_SRCDIR"), "data", "draw", name,
                           NULL);
}

static void
assert_lines (const char *name, const char *text, const char *expected)
{
  g_auto (GStrv) lines = g_strsplit (text, "\n", -1);
  g_auto (GStrv) wanted = g_strsplit (expected, "\n", -1);

  for (guint i = 0; lines[i] && wanted[i]; i++)
    if (!g_str_equal (lines[i], wanted[i]))
      g_error ("%s, line %u: drawn is\n%s\nand expected\n%s", name, i + 1,
               lines[i], wanted[i]);
  g_assert_cmpuint (g_strv_length (lines), ==, g_strv_length (wanted));
}

static void
assert_drawn (const char *name, CwUnits units)
{
  g_autoptr (CwTakeoff) takeoff = draw_case_gable (SHED, 0.7);
  g_autoptr (CwDisplayList) list = drawing_of (takeoff, CW_LAYER_ALL, units);
  g_autofree char *text = cw_display_list_to_text (list);
  g_autofree char *path = expected_path (name);
  g_autofree char *expected = NULL;
  g_autoptr (GError) error = NULL;

  if (g_getenv ("CW_RENEW"))
    g_file_set_contents (path, text, -1, &error);
  g_assert_no_error (error);
  g_file_get_contents (path, &expected, NULL, &error);
  g_assert_no_error (error);
  assert_lines (name, text, expected);
}

static void
test_drawn (void)
{
  assert_drawn ("shed-metric.txt", CW_UNITS_METRIC);
  assert_drawn ("shed-us.txt", CW_UNITS_US);
}

/* How many lines of the text form begin with @start. */
static guint
n_lines (const CwDisplayList *list, const char *start)
{
  g_autofree char *text = cw_display_list_to_text (list);
  g_auto (GStrv) lines = g_strsplit (text, "\n", -1);
  guint n = 0;

  for (guint i = 0; lines[i]; i++)
    n += g_str_has_prefix (lines[i], start);
  return n;
}

static void
test_layers (void)
{
  static const struct
  {
    CwLayers layer;
    const char *start;
  } found[] = {
    { CW_LAYER_WALL, "outline " },
    { CW_LAYER_WALL, "unclad " },
    { CW_LAYER_BANDS, "band " },
    { CW_LAYER_OPENINGS, "opening " },
    { CW_LAYER_OPENINGS, "opening-mark " },
    { CW_LAYER_STUB_OUTS, "stub-out " },
    { CW_LAYER_STUDS, "stud " },
    { CW_LAYER_PANELS, "piece-cut " },
    { CW_LAYER_NUMBERS, "piece-number " },
    { CW_LAYER_DIMENSIONS, "dimension " },
    { CW_LAYER_DIMENSIONS, "dimension-text " },
    { CW_LAYER_LEVELS, "level " },
    { CW_LAYER_LEVELS, "level-text " },
    { CW_LAYER_BARRIER, "barrier " },
    { CW_LAYER_MESH, "mesh-edge " },
    { CW_LAYER_MESH, "mesh-corner " },
  };
  g_autoptr (CwTakeoff) takeoff = draw_case_gable (SHED, 0.7);

  for (guint i = 0; i < G_N_ELEMENTS (found); i++)
    {
      g_autoptr (CwDisplayList) alone
          = drawing_of (takeoff, found[i].layer, CW_UNITS_METRIC);
      g_autoptr (CwDisplayList) without = drawing_of (
          takeoff,
          CW_LAYER_ALL & ~(found[i].layer | CW_LAYER_STUB_OUTS),
          CW_UNITS_METRIC);

      g_test_message ("%s", found[i].start);
      g_assert_cmpuint (n_lines (alone, found[i].start), >, 0);
      g_assert_cmpuint (n_lines (without, found[i].start), ==, 0);
    }
}

/* Every piece of the layout is drawn once, under its kind. */
static void
test_every_piece (void)
{
  g_autoptr (CwTakeoff) takeoff = draw_case_house ();
  const CwLayout *layout = draw_case_wall (takeoff)->layout;
  g_autoptr (CwDisplayList) list
      = drawing_of (takeoff, CW_LAYER_PANELS, CW_UNITS_METRIC);

  g_assert_cmpuint (cw_display_list_length (list), ==, layout->pieces->len);
  g_assert_cmpuint (n_lines (list, "piece-cut "), ==,
                    cw_layout_count (layout, CW_PIECE_CUT));
  g_assert_cmpuint (n_lines (list, "piece-rasped "), ==,
                    cw_layout_count (layout, CW_PIECE_RASPED));
  g_assert_cmpuint (n_lines (list, "piece-cut #5-2 "), ==, 1);
}

static CwDisplayList *
lit (const CwTakeoff *takeoff, const char *key)
{
  return cw_elevation_drawing_lit (draw_case_wall (takeoff),
                                   cw_quantity_type (key), NULL);
}

/* How many shapes light up: of the house that draw-cases.c describes. */
static void
test_lit (void)
{
  g_autoptr (CwTakeoff) takeoff = draw_case_house ();
  const CwLayout *layout = draw_case_wall (takeoff)->layout;
  const struct
  {
    const char *key;
    guint n;
  } expected[] = {
    { "wall.gross", 1 },
    { "wall.net", 1 },
    { "opening.area", 1 },         /* joined: overlaps once */
    { "opening.count", 4 },
    { "opening.head", 4 },
    { "opening.jamb", 8 },
    { "opening.sill", 3 },          /* a door has none */
    { "unclad.area", 1 },
    { "edge.base", 1 },
    { "edge.rake", 2 },
    { "edge.outside-corner", 2 },
    { "edge.eave", 0 },
    { "band.area", 1 },
    { "panel.cut", cw_layout_count (layout, CW_PIECE_CUT) },
    { "panel.rasped", cw_layout_count (layout, CW_PIECE_RASPED) },
    { "panel.whole", cw_layout_count (layout, CW_PIECE_WHOLE) },
    { "panel.stock", layout->pieces->len },
    { "panel.least", layout->pieces->len },
    { "edge.joint", 0 },
    { "mass.total", 0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (expected); i++)
    {
      g_autoptr (CwDisplayList) list = lit (takeoff, expected[i].key);

      g_test_message ("%s", expected[i].key);
      g_assert_cmpuint (cw_display_list_length (list), ==, expected[i].n);
      g_assert_cmpuint (n_lines (list, "lit"), ==, expected[i].n);
    }
}

/* Bed and head joints together are all joints, and each kind is lit alone. */
static void
test_lit_joints (void)
{
  g_autoptr (CwTakeoff) takeoff = draw_case_house ();
  g_autoptr (CwDisplayList) beds = lit (takeoff, "joint.bed");
  g_autoptr (CwDisplayList) heads = lit (takeoff, "joint.head");

  g_assert_cmpuint (cw_display_list_length (beds), >, 0);
  g_assert_cmpuint (cw_display_list_length (heads), >, 0);
  g_assert_cmpuint (cw_display_list_length (beds)
                        + cw_display_list_length (heads),
                    ==, draw_case_wall (takeoff)->layout->joints->len);
}

static double
amount_of (const CwTakeoff *takeoff, const char *key)
{
  const CwQuantity *quantity = cw_takeoff_quantity (
      takeoff, draw_case_wall (takeoff)->wall->elevation->id, key);

  g_assert_nonnull (quantity);
  return quantity->amount;
}

/* As many corner pieces as are counted; each strip of the barrier once, and a
 * lap as deep as the buildup says wherever one lies over another. */
static void
test_linings (void)
{
  g_autoptr (CwTakeoff) takeoff = draw_case_house ();
  const CwWall *wall = draw_case_wall (takeoff)->wall;
  const CwBarrier *barrier = (const CwBarrier *) wall->buildup->barrier;
  g_autoptr (CwDisplayList) strips
      = drawing_of (takeoff, CW_LAYER_BARRIER, CW_UNITS_METRIC);
  g_autoptr (CwDisplayList) mesh
      = drawing_of (takeoff, CW_LAYER_MESH, CW_UNITS_METRIC);
  const CwBox box = cw_region_box (wall->outline);
  const CwLength step = barrier->roll_width - barrier->lap;
  guint n = (guint) ((cw_box_height (&box) - barrier->lap + step - 1) / step);

  g_assert_cmpuint (n, >, 1);
  g_assert_cmpuint (n_lines (strips, "barrier M"), ==, n);
  g_assert_cmpuint (n_lines (strips, "barrier-lap M"), ==, n - 1);
  g_assert_cmpuint (n_lines (strips, "barrier-letter "), ==, n);
  g_assert_cmpuint (n_lines (mesh, "mesh-corner M"), ==,
                    (guint) amount_of (takeoff, "mesh.corner"));
  g_assert_cmpuint (n_lines (mesh, "mesh-edge M"), >, 0);
  g_assert_cmpuint (n_lines (mesh, "mesh-lap "), >, 0);
}

/* Whatever has an amount on the wall and a place on it lights something; the
 * hours of all tasks together have none. */
static void
test_lit_where_there_is_an_amount (void)
{
  g_autoptr (CwTakeoff) takeoff = draw_case_house ();
  const GPtrArray *quantities = draw_case_wall (takeoff)->quantities;
  guint n = 0;

  for (guint i = 0; i < quantities->len; i++)
    {
      const CwQuantity *quantity = quantities->pdata[i];
      g_autoptr (CwDisplayList) list = NULL;

      if (quantity->amount <= 0 || quantity->type->shows == CW_SHOWS_NOTHING
          || (quantity->type->shows == CW_SHOWS_WORK && !quantity->variant))
        continue;
      g_test_message ("%s", quantity->type->key);
      list = cw_elevation_drawing_lit (draw_case_wall (takeoff),
                                       quantity->type, quantity->variant);
      g_assert_cmpuint (cw_display_list_length (list), >, 0);
      n++;
    }
  g_assert_cmpuint (n, >, 50);
}

static void
test_text_form (void)
{
  g_autoptr (CwDisplayList) list = cw_display_list_new ();
  g_autofree char *text = NULL;

  cw_display_list_begin (list, CW_STYLE_OPENING, "o1");
  cw_display_list_move_to (list, 1.25, -0.0001);
  cw_display_list_arc (list, 0, 0, 2, 1, 0, G_PI);
  cw_display_list_close (list);
  cw_display_list_end (list);
  cw_display_list_add_text (list, CW_STYLE_LEVEL_TEXT, NULL, 3, 4, G_PI_2,
                            CW_ANCHOR_RIGHT, "a \"b\" \\ \n");
  text = cw_display_list_to_text (list);
  g_assert_cmpstr (text, ==,
                   "opening #o1 M 1.250 0.000 A 0.000 0.000 2.000 1.000 "
                   "0.000 180.000 Z\n"
                   "level-text T 3.000 4.000 90.000 right "
                   "\"a \\\"b\\\" \\\\ \\n\"\n");
}

static void
test_append (void)
{
  g_autoptr (CwTakeoff) takeoff = draw_case_gable (SHED, 0.7);
  g_autoptr (CwDisplayList) panels
      = drawing_of (takeoff, CW_LAYER_PANELS, CW_UNITS_METRIC);
  g_autoptr (CwDisplayList) levels
      = drawing_of (takeoff, CW_LAYER_LEVELS, CW_UNITS_METRIC);
  g_autoptr (CwDisplayList) both = cw_display_list_new ();
  g_autofree char *first = cw_display_list_to_text (panels);
  g_autofree char *second = cw_display_list_to_text (levels);
  g_autofree char *together = g_strconcat (first, second, NULL);
  g_autofree char *appended = NULL;

  cw_display_list_append (both, panels);
  cw_display_list_append (both, levels);
  appended = cw_display_list_to_text (both);
  g_assert_cmpstr (appended, ==, together);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
#define ADD(path, test) g_test_add_func ("/draw/elevation/" path, test)
  ADD ("drawn", test_drawn);
  ADD ("layers", test_layers);
  ADD ("every-piece", test_every_piece);
  ADD ("lit", test_lit);
  ADD ("lit-joints", test_lit_joints);
  ADD ("lit-where-there-is-an-amount", test_lit_where_there_is_an_amount);
  ADD ("linings", test_linings);
  ADD ("text-form", test_text_form);
  ADD ("append", test_append);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Windows and doors as drawings show them, in mm of the building at 1:50.
 */
#include "cw-drawn-shapes.h"

#include <math.h>

#define MM_PER_POINT (50 * 25.4 / 72)

typedef struct
{
  GArray *lines;
} Drawing;

static void
line (Drawing *drawing, double x0, double y0, double x1, double y1)
{
  const CwDrawnLine one = { x0 / MM_PER_POINT, y0 / MM_PER_POINT,
                            x1 / MM_PER_POINT, y1 / MM_PER_POINT, 0 };

  g_array_append_val (drawing->lines, one);
}

static void
box (Drawing *drawing, double left, double top, double right, double bottom)
{
  line (drawing, left, top, right, top);
  line (drawing, right, top, right, bottom);
  line (drawing, right, bottom, left, bottom);
  line (drawing, left, bottom, left, top);
}

/* Boards that stop at a window of @width × @height at 0, 0, between the
 * corners of a wall. */
static void
boards (Drawing *drawing, double left, double top, double right,
        double bottom)
{
  box (drawing, -3000, -2500, 4000, 4000);
  for (double y = -2400; y < 4000; y += 150)
    if (y <= top || y >= bottom)
      line (drawing, -3000, y, 4000, y);
    else
      {
        line (drawing, -3000, y, left, y);
        line (drawing, right, y, 4000, y);
      }
}

/* A frame of three rings and a sash of four panes. */
static void
window (Drawing *drawing, double x, double y, double width, double height)
{
  const double right = x + width, bottom = y + height;

  box (drawing, x, y, right, bottom);
  box (drawing, x + 15, y + 15, right - 15, bottom - 15);
  box (drawing, x + 60, y + 60, right - 60, bottom - 60);
  line (drawing, x + width / 2, y + 60, x + width / 2, bottom - 60);
  line (drawing, x + 60, y + height / 2, right - 60, y + height / 2);
}

static Drawing
drawing_new (void)
{
  return (Drawing) { g_array_new (FALSE, FALSE, sizeof (CwDrawnLine)) };
}

/* (transfer full) */
static CwDrawnShapes *
around (Drawing *drawing, double x, double y)
{
  g_autoptr (CwDrawnLines) lines = cw_drawn_lines_new (drawing->lines);

  g_clear_pointer (&drawing->lines, g_array_unref);
  return cw_drawn_shapes_around (lines, x / MM_PER_POINT, y / MM_PER_POINT,
                                 MM_PER_POINT);
}

static const CwDrawnShape *
likely (const CwDrawnShapes *found)
{
  g_assert_cmpuint (found->shapes->len, >, found->likely);
  return &g_array_index (found->shapes, CwDrawnShape, found->likely);
}

static void
assert_shape (const CwDrawnShape *shape, double left, double top,
              double right, double bottom)
{
  g_assert_cmpfloat_with_epsilon (shape->left * MM_PER_POINT, left, 1e-6);
  g_assert_cmpfloat_with_epsilon (shape->top * MM_PER_POINT, top, 1e-6);
  g_assert_cmpfloat_with_epsilon (shape->right * MM_PER_POINT, right, 1e-6);
  g_assert_cmpfloat_with_epsilon (shape->bottom * MM_PER_POINT, bottom, 1e-6);
}

/* Wherever the click, also in a pane. */
static void
test_frame (void)
{
  static const double clicks[][2]
      = { { 450, 610 }, { 200, 200 }, { 700, 1000 }, { 70, 1100 } };

  for (guint i = 0; i < G_N_ELEMENTS (clicks); i++)
    {
      Drawing drawing = drawing_new ();
      g_autoptr (CwDrawnShapes) found = NULL;

      window (&drawing, 0, 0, 900, 1200);
      boards (&drawing, 0, 0, 900, 1200);
      found = around (&drawing, clicks[i][0], clicks[i][1]);
      assert_shape (likely (found), 0, 0, 900, 1200);
      g_assert_cmpint (likely (found)->head, ==, CW_DRAWN_HEAD_LEVEL);
    }
}

/* The casing is the next larger one. */
static void
test_casing (void)
{
  Drawing drawing = drawing_new ();
  g_autoptr (CwDrawnShapes) found = NULL;

  window (&drawing, 0, 0, 900, 1200);
  box (&drawing, -100, -120, 1000, 1300);
  boards (&drawing, -100, -120, 1000, 1300);
  found = around (&drawing, 450, 590);
  assert_shape (likely (found), 0, 0, 900, 1200);
  g_assert_cmpuint (found->likely + 1, <, found->shapes->len);
  assert_shape (likely (found) + 1, -100, -120, 1000, 1300);
}

/* A door with its leaf, panels in the leaf, and the ground as threshold. */
static void
test_door (void)
{
  Drawing drawing = drawing_new ();
  g_autoptr (CwDrawnShapes) found = NULL;

  line (&drawing, -3000, 2100, 4000, 2100);
  line (&drawing, 0, 2100, 0, 0);
  line (&drawing, 0, 0, 1000, 0);
  line (&drawing, 1000, 0, 1000, 2100);
  line (&drawing, 45, 2100, 45, 45);
  line (&drawing, 45, 45, 955, 45);
  line (&drawing, 955, 45, 955, 2100);
  box (&drawing, 200, 200, 800, 900);
  box (&drawing, 200, 1050, 800, 1900);
  found = around (&drawing, 500, 600);
  assert_shape (likely (found), 0, 0, 1000, 2100);
}

/* The head lies behind the eaves: one line from end to end. */
static void
test_under_eaves (void)
{
  Drawing drawing = drawing_new ();
  g_autoptr (CwDrawnShapes) found = NULL;

  line (&drawing, -3000, 0, 4000, 0);
  for (guint i = 0; i < 2; i++)
    {
      const double in = i * 15;

      line (&drawing, in, 0, in, 800 - in);
      line (&drawing, in, 800 - in, 900 - in, 800 - in);
      line (&drawing, 900 - in, 800 - in, 900 - in, 0);
    }
  box (&drawing, 60, 40, 840, 740);
  found = around (&drawing, 450, 400);
  assert_shape (likely (found), 0, 0, 900, 800);
  g_assert_false (likely (found)->is_cornered);
}

typedef double (*Head) (double u, double rise);

/* Above the springing line at 0 < u < 1 of the span. */
static double
segmental (double u, double rise)
{
  const double half = 1200, radius = (half * half + rise * rise) / (2 * rise);
  const double x = (2 * u - 1) * half;

  return sqrt (radius * radius - x * x) - (radius - rise);
}

static double
elliptical (double u, double rise)
{
  return rise * sqrt (4 * u * (1 - u));
}

/* Two straight slopes. */
static double
tented (double u, double rise)
{
  return rise * (1 - fabs (2 * u - 1));
}

static CwDrawnShapes *
under_head (Head head, double rise)
{
  enum { CHORDS = 32 };
  Drawing drawing = drawing_new ();

  line (&drawing, -3000, 2000, 4000, 2000);
  line (&drawing, 0, 0, 0, 2000);
  line (&drawing, 2400, 0, 2400, 2000);
  for (guint i = 0; i < CHORDS; i++)
    {
      /* Finer at the springings, as an ellipse asks for. */
      const double u = (1 - cos (G_PI * i / CHORDS)) / 2;
      const double v = (1 - cos (G_PI * (i + 1) / CHORDS)) / 2;

      line (&drawing, 2400 * u, -head (u, rise), 2400 * v, -head (v, rise));
    }
  return around (&drawing, 1200, 900);
}

static void
test_arches (void)
{
  static const struct
  {
    Head head;
    double rise;
    CwDrawnHead kind;
  } cases[] = {
    { segmental, 220, CW_DRAWN_HEAD_CIRCULAR },
    { segmental, 1200, CW_DRAWN_HEAD_CIRCULAR },
    { elliptical, 700, CW_DRAWN_HEAD_ELLIPTICAL },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (CwDrawnShapes) found
          = under_head (cases[i].head, cases[i].rise);
      const CwDrawnShape *shape = likely (found);

      assert_shape (shape, 0, -cases[i].rise, 2400, 2000);
      g_assert_cmpfloat_with_epsilon (shape->springing, 0, 1e-9);
      g_assert_cmpint (shape->head, ==, cases[i].kind);
    }
}

static void
test_no_arch (void)
{
  g_autoptr (CwDrawnShapes) found = under_head (tented, 600);

  g_assert_cmpuint (found->shapes->len, ==, 0);
}

/* An open corner, and a wall by itself: nothing is proposed. */
static void
test_nothing (void)
{
  Drawing drawing = drawing_new ();
  Drawing wall = drawing_new ();
  g_autoptr (CwDrawnShapes) found = NULL;
  g_autoptr (CwDrawnShapes) on_wall = NULL;

  line (&drawing, 0, 0, 900, 0);
  line (&drawing, 0, 0, 0, 1200);
  line (&drawing, 900, 0, 900, 1100);
  line (&drawing, 0, 1200, 900, 1200);
  found = around (&drawing, 450, 600);
  g_assert_cmpuint (found->shapes->len, ==, 0);
  box (&wall, -4000, -2500, 4000, 4000);
  on_wall = around (&wall, 0, 0);
  g_assert_cmpuint (on_wall->shapes->len, ==, 0);
}

static void
test_alike (void)
{
  Drawing drawing = drawing_new ();
  g_autoptr (CwDrawnLines) lines = NULL;
  g_autoptr (CwDrawnShapes) found = NULL;
  g_autoptr (GArray) alike = NULL;
  g_autoptr (GArray) left_of = NULL;

  for (guint i = 0; i < 4; i++)
    window (&drawing, 1500 * i, 100 * i, 900, 1200);
  window (&drawing, 6000, 0, 900, 1100);
  window (&drawing, 7500, 0, 800, 1200);
  lines = cw_drawn_lines_new (drawing.lines);
  g_array_unref (drawing.lines);
  found = cw_drawn_shapes_around (lines, 450 / MM_PER_POINT,
                                  610 / MM_PER_POINT, MM_PER_POINT);
  alike = cw_drawn_shapes_alike (lines, likely (found), -1e4, -1e4, 1e4, 1e4);
  g_assert_cmpuint (alike->len, ==, 4);
  for (guint i = 0; i < alike->len; i++)
    assert_shape (&g_array_index (alike, CwDrawnShape, i), 1500 * i, 100 * i,
                  1500 * i + 900, 100 * i + 1200);
  left_of = cw_drawn_shapes_alike (lines, likely (found), -1e4, -1e4,
                                   1000 / MM_PER_POINT, 1e4);
  g_assert_cmpuint (left_of->len, ==, 1);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/geometry/drawn-shapes/frame", test_frame);
  g_test_add_func ("/geometry/drawn-shapes/casing", test_casing);
  g_test_add_func ("/geometry/drawn-shapes/door", test_door);
  g_test_add_func ("/geometry/drawn-shapes/under-eaves", test_under_eaves);
  g_test_add_func ("/geometry/drawn-shapes/arches", test_arches);
  g_test_add_func ("/geometry/drawn-shapes/no-arch", test_no_arch);
  g_test_add_func ("/geometry/drawn-shapes/nothing", test_nothing);
  g_test_add_func ("/geometry/drawn-shapes/alike", test_alike);
  return g_test_run ();
}

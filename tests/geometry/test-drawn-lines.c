/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-drawn-lines.h"

#include <math.h>

static CwDrawnLines *
lines_of (const CwDrawnLine *all, guint n)
{
  g_autoptr (GArray) lines = g_array_new (FALSE, FALSE, sizeof *all);

  g_array_append_vals (lines, all, n);
  return cw_drawn_lines_new (lines);
}

static void
test_each_once (void)
{
  const CwDrawnLine all[] = {
    { 0, 0, 10, 0, 0 },   { 10, 0, 0, 0, 0 },   { 0.001, 0, 10, 0.001, 0 },
    { 0, 0, 0, 10, 0 },   { 5, 5, 5.005, 5, 0 }, { 1, 1, 1, 1, 0 },
    { NAN, 0, 1, 1, 0 },  { 0, 0, INFINITY, 0, 0 }, { 0, 0.05, 10, 0.05, 0 },
  };
  g_autoptr (CwDrawnLines) lines = lines_of (all, G_N_ELEMENTS (all));

  g_assert_cmpuint (cw_drawn_lines_n (lines), ==, 3);
  g_assert_cmpfloat_with_epsilon (cw_drawn_lines_at (lines, 1)->y1, 10, 1e-9);
  g_assert_false (cw_drawn_lines_is_cut (lines));
}

static void
test_empty (void)
{
  g_autoptr (CwDrawnLines) lines = lines_of (NULL, 0);

  g_assert_cmpuint (cw_drawn_lines_n (lines), ==, 0);
  g_assert_cmpint (cw_drawn_lines_nearest (lines, 3, 4, 10).kind, ==,
                   CW_DRAWN_NOTHING);
}

static void
assert_nearest (const CwDrawnLines *lines, double x, double y, double reach,
                CwDrawnKind kind, double at_x, double at_y)
{
  const CwDrawnPoint point = cw_drawn_lines_nearest (lines, x, y, reach);

  g_assert_cmpint (point.kind, ==, kind);
  g_assert_cmpfloat_with_epsilon (point.x, at_x, 1e-9);
  g_assert_cmpfloat_with_epsilon (point.y, at_y, 1e-9);
}

/* A cross, and a curve of two chords to the right of it. */
static void
test_kinds (void)
{
  const CwDrawnLine all[] = {
    { 0, 50, 100, 50, 0 },
    { 30, 0, 30, 100, 0 },
    { 200, 50, 220, 60, CW_DRAWN_ENDS_INSIDE },
    { 220, 60, 240, 50, CW_DRAWN_BEGINS_INSIDE },
  };
  g_autoptr (CwDrawnLines) lines = lines_of (all, G_N_ELEMENTS (all));

  assert_nearest (lines, 3, 52, 5, CW_DRAWN_END, 0, 50);
  assert_nearest (lines, 32, 53, 5, CW_DRAWN_CROSSING, 30, 50);
  assert_nearest (lines, 60, 53, 5, CW_DRAWN_RUN, 60, 50);
  assert_nearest (lines, 60, 56, 5, CW_DRAWN_NOTHING, 0, 0);
  assert_nearest (lines, 201, 49, 5, CW_DRAWN_END, 200, 50);
  /* Where the chords meet there is no corner: a point on one of them. */
  g_assert_cmpint (cw_drawn_lines_nearest (lines, 220, 61, 5).kind, ==,
                   CW_DRAWN_RUN);
  /* Any end within reach is nearer to what is meant than the run under the
   * pointer. */
  assert_nearest (lines, 4, 50, 5, CW_DRAWN_END, 0, 50);
}

static CwDrawnLine
random_line (void)
{
  const double x = g_test_rand_double_range (-50, 950);
  const double y = g_test_rand_double_range (0, 700);
  const double long_one = g_test_rand_int_range (0, 10) == 0 ? 900 : 30;

  return (CwDrawnLine) { x, y,
                         x + g_test_rand_double_range (-long_one, long_one),
                         y + g_test_rand_double_range (-long_one, long_one),
                         CW_DRAWN_PLAIN };
}

static double
distance_to (const CwDrawnLine *line, double x, double y)
{
  const double dx = line->x1 - line->x0, dy = line->y1 - line->y0;
  const double t = CLAMP (((x - line->x0) * dx + (y - line->y0) * dy)
                              / (dx * dx + dy * dy),
                          0, 1);

  return hypot (line->x0 + t * dx - x, line->y0 + t * dy - y);
}

static gboolean
has_number (const GArray *found, guint number)
{
  for (guint i = 0; i < found->len; i++)
    if (g_array_index (found, guint, i) == number)
      return TRUE;
  return FALSE;
}

/* No line within reach is overlooked, wherever the point lies. */
static void
test_random (void)
{
  g_autoptr (GArray) all = g_array_new (FALSE, FALSE, sizeof (CwDrawnLine));
  g_autoptr (GArray) found = g_array_new (FALSE, FALSE, sizeof (guint));
  g_autoptr (CwDrawnLines) lines = NULL;
  guint n_near = 0;

  for (guint i = 0; i < 3000; i++)
    {
      const CwDrawnLine line = random_line ();

      g_array_append_val (all, line);
    }
  lines = cw_drawn_lines_new (all);
  for (guint i = 0; i < 300; i++)
    {
      const double x = g_test_rand_double_range (-60, 960);
      const double y = g_test_rand_double_range (-40, 740);
      const double reach = g_test_rand_double_range (0.1, 20);
      gboolean any = FALSE;

      cw_drawn_lines_within (lines, x - reach, y - reach, x + reach,
                             y + reach, found);
      for (guint j = 0; j < cw_drawn_lines_n (lines); j++)
        if (distance_to (cw_drawn_lines_at (lines, j), x, y) < reach)
          {
            any = TRUE;
            n_near++;
            g_assert_true (has_number (found, j));
          }
      g_assert_cmpint (
          cw_drawn_lines_nearest (lines, x, y, reach).kind
              != CW_DRAWN_NOTHING,
          ==, any);
    }
  g_assert_cmpuint (n_near, >, 1000);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/geometry/drawn-lines/each-once", test_each_once);
  g_test_add_func ("/geometry/drawn-lines/empty", test_empty);
  g_test_add_func ("/geometry/drawn-lines/kinds", test_kinds);
  g_test_add_func ("/geometry/drawn-lines/random", test_random);
  return g_test_run ();
}

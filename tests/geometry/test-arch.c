/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-arch.h"

#include <math.h>

static const CwArchHead heads[] = {
  CW_ARCH_SEMICIRCULAR, CW_ARCH_SEGMENTAL,     CW_ARCH_SEMI_ELLIPTICAL,
  CW_ARCH_POINTED,      CW_ARCH_THREE_CENTRED,
};

static void
assert_near (double found, double expected, double relative)
{
  if (!(fabs (found - expected) <= relative * fabs (expected)))
    g_error ("%.17g is not within %g of %.17g", found, relative, expected);
}

/* A rise that @head allows over @width, at random. */
static CwLength
random_rise (CwArchHead head, CwLength width)
{
  CwLength least, most;
  cw_arch_rise_limits (head, width, &least, &most);
  most = MIN (most, 3 * width);
  return least + llround (g_test_rand_double () * (double) (most - least));
}

/*
 * Half the perimeter of an ellipse with the half axes @a >= @b by the
 * arithmetic-geometric mean (Gauss; Abramowitz and Stegun 17.6, from memory):
 * 2 E = (π / M (a, b)) (a² - Σ 2^(n-1) c_n²), c_0² = a² - b².
 */
static long double
half_perimeter_by_mean (long double a, long double b)
{
  long double sum = (a * a - b * b) / 2, power = 1, first = a;
  for (int i = 0; i < 40 && fabsl (a - b) > 1e-19L * a; i++)
    {
      long double c = (a - b) / 2, mean = (a + b) / 2;
      b = sqrtl (a * b);
      a = mean;
      sum += power * c * c;
      power *= 2;
    }
  return G_PI * (first * first - sum) / a;
}

/* The same by Ramanujan's second rule (H-14, mathaddict.net/Ellipse.htm),
 * which is off by about (3/2^17) h^5 of itself. */
static double
half_perimeter_by_rule (double a, double b)
{
  double h = (a - b) * (a - b) / ((a + b) * (a + b));
  return G_PI * (a + b) * (1 + 3 * h / (10 + sqrt (4 - 3 * h))) / 2;
}

static double
semi_ellipse (CwLength span, CwLength rise)
{
  return cw_arch_length (CW_ARCH_SEMI_ELLIPTICAL, span, rise);
}

/* From a hair's rise over to a spike, against the mean. */
static void
test_semi_elliptical_length (void)
{
  for (int i = 0; i < 20000; i++)
    {
      CwLength span = llround (exp (g_test_rand_double_range (13, 25)));
      CwLength rise = llround (exp (g_test_rand_double_range (4, 25)));
      long double half = (long double) span / 2;
      long double a = MAX (half, (long double) rise);
      long double b = MIN (half, (long double) rise);
      assert_near (semi_ellipse (span, rise),
                   (double) (half_perimeter_by_mean (a, b) / 1e9L), 1e-11);
    }
}

/* Where the mean itself is met by what anyone can work out: circle and
 * straight line. */
static void
test_semi_elliptical_ends (void)
{
  assert_near ((double) half_perimeter_by_mean (1, 1), G_PI, 1e-15);
  assert_near (semi_ellipse (CW_MM (2000), CW_MM (1000)), G_PI, 1e-14);
  assert_near (semi_ellipse (CW_MM (2000), 1), 2, 1e-9);
}

static void
test_semi_elliptical_rule (void)
{
  for (int i = 0; i < 1000; i++)
    {
      double a = g_test_rand_double_range (1, 10);
      double b = g_test_rand_double_range (0.3, 1) * a;
      CwLength span = 2 * llround (a * 1e9), rise = llround (b * 1e9);
      double h = (a - b) * (a - b) / ((a + b) * (a + b));
      double found = semi_ellipse (span, rise);
      double rule = half_perimeter_by_rule (a, b);
      assert_near (found, rule, 1e-9 + 6e-5 * pow (h, 5));
    }
}

/* ∫ of the speed from @from to @to by Simpson's rule in long doubles. */
static long double
stretch_by_simpson (const CwSide *arc, long double from, long double to)
{
  const int n = 20000;
  long double step = (to - from) / n, sum = 0;
  for (int i = 0; i <= n; i++)
    {
      long double angle = from + i * step;
      long double speed = hypotl (arc->rx * sinl (angle),
                                  arc->ry * cosl (angle));
      sum += speed * (i == 0 || i == n ? 1 : i % 2 ? 4 : 2);
    }
  return fabsl (sum * step / 3);
}

/* Stretches of ellipses, as cuts leave them. */
static void
test_elliptical_stretch (void)
{
  for (int i = 0; i < 200; i++)
    {
      double rx = g_test_rand_double_range (1e8, 1e10);
      double ry = rx * exp (g_test_rand_double_range (-4, 4));
      double from = g_test_rand_double_range (-7, 7);
      double to = from + g_test_rand_double_range (-6.28, 6.28);
      CwSide arc = cw_side_arc (0, 0, rx, ry, from, to, 0);
      double x, y;
      cw_side_at (&arc, cw_point (0, 0), 1, &x, &y);
      CwPoint end = cw_point (llround (x), llround (y));
      assert_near (cw_side_length (&arc, end),
                   (double) (stretch_by_simpson (&arc, from, to) / 1e9L),
                   1e-10);
    }
}

/* Trapezoids under the curve, by our ordinates alone. */
static double
area_by_ordinates (CwArchHead head, CwLength width, CwLength rise)
{
  const int n = 20000;
  double sum = 0;
  /* x = w (1 - cos t) / 2 takes the steep ends in small steps. */
  double before_x = 0, before_y = 0;
  for (int i = 1; i <= n; i++)
    {
      double x = (double) width * (1 - cos (G_PI * i / n)) / 2;
      double y = i == n ? 0 : cw_arch_ordinate (head, width, rise, x);
      sum += (x - before_x) * (y + before_y) / 2;
      before_x = x;
      before_y = y;
    }
  return sum / 1e18;
}

static double
length_by_ordinates (CwArchHead head, CwLength width, CwLength rise)
{
  const int n = 20000;
  double sum = 0, before_x = 0, before_y = 0;
  for (int i = 1; i <= n; i++)
    {
      double x = (double) width * (1 - cos (G_PI * i / n)) / 2;
      double y = i == n ? 0 : cw_arch_ordinate (head, width, rise, x);
      sum += hypot (x - before_x, y - before_y);
      before_x = x;
      before_y = y;
    }
  return sum / 1e9;
}

static void
test_ordinates (gconstpointer data)
{
  CwArchHead head = *(const CwArchHead *) data;
  for (int i = 0; i < 20; i++)
    {
      CwLength width = 2 * CW_MM (g_test_rand_int_range (100, 3000));
      CwLength rise = random_rise (head, width);
      if (rise < width / 100)
        continue;
      assert_near (area_by_ordinates (head, width, rise),
                   cw_arch_area (head, width, rise), 1e-6);
      assert_near (length_by_ordinates (head, width, rise),
                   cw_arch_length (head, width, rise), 1e-5);
    }
}

/* The crown stands at the rise, in the middle, whatever the head. */
static void
test_crown (gconstpointer data)
{
  CwArchHead head = *(const CwArchHead *) data;
  for (int i = 0; i < 1000; i++)
    {
      CwLength width = 2 * CW_MM (g_test_rand_int_range (100, 3000));
      CwLength rise = random_rise (head, width);
      double crown = cw_arch_ordinate (head, width, rise, (double) width / 2);
      g_assert_cmpfloat (fabs (crown - (double) rise), <, 2);
      g_autoptr (CwRegion) region = cw_opening_region (
          cw_point (CW_MM (700), CW_MM (900)), width, CW_MM (1200), head,
          rise);
      CwBox box = cw_region_box (region);
      g_assert_cmpint (box.left, ==, CW_MM (700));
      g_assert_cmpint (box.right, ==, CW_MM (700) + width);
      g_assert_cmpint (box.bottom, ==, CW_MM (900));
      g_assert_cmpint (ABS (box.top - CW_MM (2100) - rise), <=, 1);
    }
}

/* Rectangle and head; each side under its own tag. */
static void
test_region (gconstpointer data)
{
  CwArchHead head = *(const CwArchHead *) data;
  for (int i = 0; i < 1000; i++)
    {
      CwLength width = 2 * CW_MM (g_test_rand_int_range (100, 3000));
      CwLength height = CW_MM (g_test_rand_int_range (0, 3000));
      CwLength rise = random_rise (head, width);
      g_autoptr (CwRegion) region
          = cw_opening_region (cw_point (0, 0), width, height, head, rise);
      assert_near (cw_region_area (region),
                   (double) width / 1e9 * (double) height / 1e9
                       + cw_arch_area (head, width, rise),
                   1e-12);
      assert_near (cw_region_length_of (region, CW_OPENING_SIDE_HEAD),
                   cw_arch_length (head, width, rise), 1e-12);
      assert_near (cw_region_length_of (region, CW_OPENING_SIDE_JAMB),
                   2 * (double) height / 1e9, 1e-15);
      assert_near (cw_region_length_of (region, CW_OPENING_SIDE_SILL),
                   (double) width / 1e9, 1e-15);
    }
}

static void
assert_limits (CwArchHead head, CwLength width, CwLength least, CwLength most)
{
  CwLength found_least, found_most;
  cw_arch_rise_limits (head, width, &found_least, &found_most);
  g_assert_cmpint (found_least, ==, least);
  g_assert_cmpint (found_most, ==, most);
  g_assert_true (cw_arch_is_possible (head, width, least));
  g_assert_true (cw_arch_is_possible (head, width, most));
  g_assert_false (cw_arch_is_possible (head, width, least - 1));
  g_assert_false (cw_arch_is_possible (head, width, most + 1));
  g_assert_false (cw_arch_is_possible (head, 0, least));
  g_assert_false (cw_arch_is_possible (head, -width, least));
}

static void
test_limits (void)
{
  CwLength width = CW_MM (1500), half = CW_MM (750);
  assert_limits (CW_ARCH_SEMICIRCULAR, width, half, half);
  assert_limits (CW_ARCH_SEGMENTAL, width, 1, half);
  assert_limits (CW_ARCH_SEMI_ELLIPTICAL, width, 1, CW_LENGTH_MOST);
  assert_limits (CW_ARCH_POINTED, width, half, CW_LENGTH_MOST);
  assert_limits (CW_ARCH_THREE_CENTRED, width, 1, half - 1);
}

/* An odd number of nanometres has no half. */
static void
test_limits_odd (void)
{
  assert_limits (CW_ARCH_SEMICIRCULAR, 2001, 1000, 1000);
  assert_limits (CW_ARCH_SEGMENTAL, 2001, 1, 1000);
  assert_limits (CW_ARCH_POINTED, 2001, 1001, CW_LENGTH_MOST);
  assert_limits (CW_ARCH_THREE_CENTRED, 2001, 1, 1000);
}

/* At half the span all heads of circles are the same half circle. */
static void
test_meet_at_half_circle (void)
{
  CwLength width = CW_MM (1800), half = CW_MM (900);
  for (guint i = 0; i < G_N_ELEMENTS (heads); i++)
    if (cw_arch_is_possible (heads[i], width, half))
      {
        assert_near (cw_arch_area (heads[i], width, half),
                     G_PI * 0.9 * 0.9 / 2, 1e-12);
        assert_near (cw_arch_length (heads[i], width, half), G_PI * 0.9,
                     1e-12);
      }
  assert_near (cw_arch_length (CW_ARCH_THREE_CENTRED, width, half - 1),
               G_PI * 0.9, 1e-6);
}

/* The three circles of the drawing-board head run into each other without a
 * bend: where they meet, both centres lie on one line with the point. */
static void
test_three_centred_smooth (void)
{
  for (int i = 0; i < 1000; i++)
    {
      CwLength width = 2 * CW_MM (g_test_rand_int_range (100, 3000));
      CwLength rise = random_rise (CW_ARCH_THREE_CENTRED, width);
      if (rise < width / 50 || rise > width * 49 / 100)
        continue;
      g_autoptr (CwRegion) region = cw_opening_region (
          cw_point (0, 0), width, 0, CW_ARCH_THREE_CENTRED, rise);
      CwLoop loop = cw_region_loop (region, 0);
      g_assert_cmpuint (loop.n_sides, ==, 4);
      for (guint k = 1; k < 3; k++)
        {
          const CwSide *one = &loop.sides[k], *next = &loop.sides[k + 1];
          g_assert_cmpfloat (fabs (one->to - next->from), <, 1e-12);
          double x = one->cx + one->rx * cos (one->to);
          double y = one->cy + one->ry * sin (one->to);
          g_assert_cmpfloat (
              hypot (x - next->cx - next->rx * cos (next->from),
                     y - next->cy - next->ry * sin (next->from)),
              <, 1);
        }
    }
}

/* The steps of the drawing board, done here with points: both centres lie on
 * the upright bisector of what is left of the line to the crown. */
static void
test_three_centred_construction (void)
{
  const double a = 1000, h = 600, l = hypot (a, h), left = l - (a - h);
  const double ux = a / l, uy = h / l;
  /* From the left springing (0, 0) towards the crown (a, h). */
  const double mx = left / 2 * ux, my = left / 2 * uy;
  const double small = mx + my * uy / ux;       /* meets y = 0 */
  const double large = my + (mx - a) * ux / uy; /* meets x = a */
  g_autoptr (CwRegion) region
      = cw_opening_region (cw_point (0, 0), CW_MM (2000), 0,
                           CW_ARCH_THREE_CENTRED, CW_MM (600));
  CwLoop loop = cw_region_loop (region, 0);
  assert_near (loop.sides[3].cx, small * 1e6, 1e-12);
  assert_near (loop.sides[3].rx, small * 1e6, 1e-12);
  assert_near (loop.sides[2].cy, large * 1e6, 1e-12);
  assert_near (loop.sides[2].rx, (h - large) * 1e6, 1e-12);
}

static void
test_rectangle (void)
{
  g_autoptr (CwRegion) region
      = cw_opening_region (cw_point (CW_MM (-100), CW_MM (50)), CW_MM (1200),
                           CW_MM (1400), CW_ARCH_POINTED, 0);
  g_assert_true (cw_region_is_box (region));
  assert_near (cw_region_area (region), 1.68, 1e-15);
  assert_near (cw_region_length_of (region, CW_OPENING_SIDE_HEAD), 1.2, 1e-15);
}

static void
test_round_hole (void)
{
  g_autoptr (CwRegion) hole
      = cw_hole_region_round (cw_point (CW_MM (40), CW_MM (7)), CW_MM (60), 9);
  assert_near (cw_region_area (hole), G_PI * 0.03 * 0.03, 1e-14);
  assert_near (cw_region_length_of (hole, 9), G_PI * 0.06, 1e-14);
  CwBox box = cw_region_box (hole);
  g_assert_cmpint (box.left, ==, CW_MM (10));
  g_assert_cmpint (box.right, ==, CW_MM (70));
  g_assert_cmpint (box.bottom, ==, CW_MM (-23));
  g_assert_cmpint (box.top, ==, CW_MM (37));
}

static void
add_for_each_head (const char *what, GTestDataFunc function)
{
  static const char *const names[] = { "semicircular", "segmental",
                                       "semi-elliptical", "pointed",
                                       "three-centred" };
  for (guint i = 0; i < G_N_ELEMENTS (heads); i++)
    {
      g_autofree char *path
          = g_strdup_printf ("/geometry/arch/%s/%s", what, names[i]);
      g_test_add_data_func (path, &heads[i], function);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/geometry/arch/semi-elliptical-length/mean",
                   test_semi_elliptical_length);
  g_test_add_func ("/geometry/arch/semi-elliptical-length/ends",
                   test_semi_elliptical_ends);
  g_test_add_func ("/geometry/arch/semi-elliptical-length/H-14",
                   test_semi_elliptical_rule);
  g_test_add_func ("/geometry/arch/elliptical-stretch",
                   test_elliptical_stretch);
  add_for_each_head ("ordinates", test_ordinates);
  add_for_each_head ("crown", test_crown);
  add_for_each_head ("region", test_region);
  g_test_add_func ("/geometry/arch/limits", test_limits);
  g_test_add_func ("/geometry/arch/limits-odd", test_limits_odd);
  g_test_add_func ("/geometry/arch/half-circle", test_meet_at_half_circle);
  g_test_add_func ("/geometry/arch/three-centred/smooth",
                   test_three_centred_smooth);
  g_test_add_func ("/geometry/arch/three-centred/construction",
                   test_three_centred_construction);
  g_test_add_func ("/geometry/arch/rectangle", test_rectangle);
  g_test_add_func ("/geometry/arch/round-hole", test_round_hole);
  return g_test_run ();
}

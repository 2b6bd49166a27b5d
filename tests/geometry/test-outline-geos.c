/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Which outlines cross themselves, against GEOS.
 */
#include <geos_c.h>
#include <math.h>

#include "cw-outline.h"
#include "geos-shape.h"

#define LONG_RUN (g_getenv ("CW_LONG") != NULL)
#define N_OUTLINES (LONG_RUN ? 1000000 : 20000)
#define MOST_CORNERS 7

/* On a grid of @n_grid by @n_grid corners: few make many coincidences. */
static gsize
random_corners (GRand *rand, int n_grid, CwCorner *corners)
{
  gsize n = (gsize) g_rand_int_range (rand, 3, MOST_CORNERS + 1);
  for (gsize i = 0; i < n; i++)
    corners[i] = (CwCorner) {
      .at = cw_point (CW_MM (300) * g_rand_int_range (rand, 0, n_grid),
                      CW_MM (300) * g_rand_int_range (rand, 0, n_grid)),
    };
  return n;
}

static void
bow_sides (GRand *rand, CwCorner *corners, gsize n)
{
  for (gsize i = 0; i < n; i++)
    {
      CwPoint from = corners[i].at, to = corners[(i + 1) % n].at;
      double most = hypot ((double) (to.x - from.x), (double) (to.y - from.y))
                    / 2;
      if (g_rand_int_range (rand, 0, 2) == 0)
        corners[i].sagitta
            = (CwLength) (g_rand_double_range (rand, -1, 1) * most);
    }
}

/* A ring of the corners themselves, as GEOS judges it. */
static gboolean
is_valid_to_geos (const CwCorner *corners, gsize n)
{
  GEOSContextHandle_t geos = geos_shape_context ();
  double xy[2 * (MOST_CORNERS + 1)];
  for (gsize i = 0; i <= n; i++)
    {
      xy[2 * i] = (double) corners[i % n].at.x;
      xy[2 * i + 1] = (double) corners[i % n].at.y;
    }
  GEOSCoordSequence *points = GEOSCoordSeq_copyFromBuffer_r (
      geos, xy, (unsigned) n + 1, FALSE, FALSE);
  g_autoptr (GeosShape) ring = GEOSGeom_createPolygon_r (
      geos, GEOSGeom_createLinearRing_r (geos, points), NULL, 0);
  return GEOSisValid_r (geos, ring) == 1;
}

static G_GNUC_NORETURN void
fail_outline (const CwCorner *corners, gsize n, CwOutlineFault fault)
{
  g_autoptr (GString) text = g_string_new (NULL);
  for (gsize i = 0; i < n; i++)
    g_string_append_printf (text, " %" G_GINT64_FORMAT ",%" G_GINT64_FORMAT
                                  ",%" G_GINT64_FORMAT,
                            corners[i].at.x, corners[i].at.y,
                            corners[i].sagitta);
  g_error ("GEOS sees this otherwise than %d:%s", fault, text->str);
}

/* Straight sides are whole numbers to both: there is nothing to excuse. */
static void
test_straight (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed ((guint32) g_test_rand_int ());
  guint n_valid = 0, n_judged = 0;
  for (guint i = 0; i < N_OUTLINES; i++)
    {
      CwCorner corners[MOST_CORNERS];
      gsize n = random_corners (rand, i % 2 ? 5 : 12, corners);
      CwOutlineFault fault = cw_outline_check (corners, n).fault;
      /* A corner twice is nothing to GEOS and a slip of the hand to us. */
      if (fault == CW_OUTLINE_ZERO_SIDE)
        continue;
      gboolean is_valid = fault == CW_OUTLINE_VALID;
      if (is_valid != is_valid_to_geos (corners, n))
        fail_outline (corners, n, fault);
      n_judged++;
      n_valid += is_valid;
    }
  g_test_message ("%u outlines judged, %u of them valid", n_judged, n_valid);
  g_assert_cmpuint (n_valid, >, n_judged / 20);
}

/* An outline with bows that we let pass encloses one area to GEOS, which is
 * ours. */
static void
test_bowed (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed ((guint32) g_test_rand_int ());
  guint n_valid = 0;
  for (guint i = 0; i < N_OUTLINES / 10; i++)
    {
      CwCorner corners[MOST_CORNERS];
      gsize n = random_corners (rand, 8, corners);
      bow_sides (rand, corners, n);
      g_autoptr (CwRegion) region = cw_outline_region (corners, n);
      if (region == NULL)
        continue;
      n_valid++;
      g_autoptr (GeosShape) shape = geos_shape_new (region, 1000);
      double slack = cw_region_length (region) * 1.001e-6;
      if (geos_shape_n_parts (shape, slack) != 1
          || fabs (geos_shape_area (shape) - cw_region_area (region)) > slack)
        fail_outline (corners, n, CW_OUTLINE_VALID);
    }
  g_test_message ("%u outlines, %u of them valid", N_OUTLINES / 10, n_valid);
  g_assert_cmpuint (n_valid, >, N_OUTLINES / 200);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/geometry/outline-geos/straight", test_straight);
  g_test_add_func ("/geometry/outline-geos/bowed", test_bowed);
  return g_test_run ();
}

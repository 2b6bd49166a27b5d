/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "random-shape.h"

#include <math.h>

#include "cw-arch.h"
#include "cw-outline.h"

#define MOST_CORNERS 9
#define WIDTH CW_MM (12000)
#define HEIGHT CW_MM (9000)

CwLength
random_grid (GRand *rand)
{
  static const CwLength grids[] = { 1, 1000000, 1587500, 100000000, 300000000 };
  return grids[g_rand_int_range (rand, 0, G_N_ELEMENTS (grids))];
}

CwLength
random_length (GRand *rand, CwLength grid, CwLength low, CwLength high)
{
  double place = g_rand_double_range (rand, (double) low, (double) high);
  return llround (place / (double) grid) * grid;
}

static int
compare_angles (gconstpointer a, gconstpointer b)
{
  double first = *(const double *) a, second = *(const double *) b;
  return (first > second) - (first < second);
}

/* Corners round a middle, each in its own direction: they never cross by
 * themselves, only their bows may. */
static gsize
star_corners (GRand *rand, CwLength grid, CwPoint middle, CwLength most,
              CwCorner *corners)
{
  gsize n = (gsize) g_rand_int_range (rand, 3, MOST_CORNERS + 1);
  double angles[MOST_CORNERS];
  for (gsize i = 0; i < n; i++)
    angles[i] = g_rand_double_range (rand, 0, 2 * G_PI);
  qsort (angles, n, sizeof *angles, compare_angles);
  for (gsize i = 0; i < n; i++)
    {
      double reach = g_rand_double_range (rand, 0.2, 1) * (double) most;
      double x = (double) middle.x + reach * cos (angles[i]);
      double y = (double) middle.y + reach * sin (angles[i]);
      corners[i].at = cw_point (llround (x / (double) grid) * grid,
                                llround (y / (double) grid) * grid);
    }
  return n;
}

/* A gable, a lean-to, a stepped or a plain wall. */
static gsize
house_corners (GRand *rand, CwLength grid, CwCorner *corners)
{
  CwLength width = random_length (rand, grid, CW_MM (900), WIDTH);
  CwLength low = random_length (rand, grid, CW_MM (900), HEIGHT / 2);
  CwLength high = random_length (rand, grid, HEIGHT / 2, HEIGHT);
  CwLength middle = random_length (rand, grid, 0, width);
  const CwPoint points[][6] = {
    { { 0, 0 }, { width, 0 }, { width, low }, { middle, high }, { 0, low } },
    { { 0, 0 }, { width, 0 }, { width, low }, { 0, high } },
    { { 0, 0 }, { width, 0 }, { width, low }, { middle, low },
      { middle, high }, { 0, high } },
    { { 0, 0 }, { width, 0 }, { width, high }, { 0, high } },
  };
  const gsize n[] = { 5, 4, 6, 4 };
  int kind = g_rand_int_range (rand, 0, 4);
  for (gsize i = 0; i < n[kind]; i++)
    corners[i].at = points[kind][i];
  return n[kind];
}

static void
bow_sides (GRand *rand, CwLength grid, CwCorner *corners, gsize n)
{
  for (gsize i = 0; i < n; i++)
    {
      CwPoint from = corners[i].at, to = corners[(i + 1) % n].at;
      double most = hypot ((double) (to.x - from.x), (double) (to.y - from.y))
                    / 2;
      double share = g_rand_boolean (rand) ? 1 : g_rand_double (rand);
      corners[i].tag = (guint) i;
      corners[i].sagitta = 0;
      if (g_rand_int_range (rand, 0, 4) == 0)
        corners[i].sagitta = (CwLength) (share * most / (double) grid) * grid
                             * (g_rand_boolean (rand) ? 1 : -1);
    }
}

static void
turn_round (CwCorner *corners, gsize n)
{
  CwCorner copy[MOST_CORNERS];
  for (gsize i = 0; i < n; i++)
    copy[i] = corners[i];
  for (gsize i = 0; i < n; i++)
    corners[i] = copy[n - 1 - i];
}

static CwRegion *
random_star (GRand *rand, CwLength grid, CwPoint middle, CwLength most)
{
  CwRegion *region = NULL;
  while (region == NULL)
    {
      CwCorner corners[MOST_CORNERS];
      gsize n = star_corners (rand, grid, middle, most, corners);
      if (g_rand_boolean (rand))
        turn_round (corners, n);
      bow_sides (rand, grid, corners, n);
      region = cw_outline_region (corners, n);
    }
  return region;
}

CwRegion *
random_outline (GRand *rand, CwLength grid)
{
  CwRegion *region = NULL;
  if (g_rand_int_range (rand, 0, 3) == 0)
    return random_star (rand, grid, cw_point (WIDTH / 2, HEIGHT / 2),
                        HEIGHT / 2);
  while (region == NULL)
    {
      CwCorner corners[MOST_CORNERS];
      gsize n = house_corners (rand, grid, corners);
      if (g_rand_boolean (rand))
        turn_round (corners, n);
      bow_sides (rand, grid, corners, n);
      region = cw_outline_region (corners, n);
    }
  return region;
}

static CwRegion *
random_arch (GRand *rand, CwLength grid, CwPoint corner)
{
  CwArchHead head = (CwArchHead) g_rand_int_range (rand, 0, 5);
  CwLength width = random_length (rand, grid, CW_MM (300), CW_MM (2400));
  CwLength height = random_length (rand, grid, 0, CW_MM (2100));
  CwLength least, most;
  cw_arch_rise_limits (head, width, &least, &most);
  /* Flatter ones have radii in which a double no longer tells nanometres. */
  least = MAX (least, width / 10000);
  CwLength rise = random_length (rand, grid, least, MIN (most, 2 * width));
  return cw_opening_region (corner, width, height, head,
                            CLAMP (rise, least, most));
}

static CwRegion *
random_box (GRand *rand, CwLength grid, CwPoint corner)
{
  CwLength width = random_length (rand, grid, CW_MM (300), CW_MM (2400));
  CwLength height = random_length (rand, grid, CW_MM (300), CW_MM (2400));
  const CwBox box = { corner.x, corner.y, corner.x + width,
                      corner.y + height };
  return cw_region_new_box (&box, 20);
}

CwRegion *
random_opening (GRand *rand, CwLength grid)
{
  CwPoint corner = cw_point (random_length (rand, grid, -CW_MM (600), WIDTH),
                             random_length (rand, grid, -CW_MM (600), HEIGHT));
  CwLength size = random_length (rand, grid, CW_MM (300), CW_MM (1500));
  switch (g_rand_int_range (rand, 0, 6))
    {
    case 0:
    case 1:
      return random_arch (rand, grid, corner);
    case 2:
      return cw_hole_region_round (corner, size, 21);
    case 3:
      return random_star (rand, grid, corner, size);
    default:
      return random_box (rand, grid, corner);
    }
}

CwRegion *
random_openings (GRand *rand, CwLength grid, guint most)
{
  g_autoptr (GPtrArray) openings
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_region_unref);
  guint n = (guint) g_rand_int_range (rand, 0, (int) most + 1);
  for (guint i = 0; i < n; i++)
    g_ptr_array_add (openings, random_opening (rand, grid));
  return cw_region_union ((const CwRegion *const *) openings->pdata, n);
}

CwRegion *
random_wall (GRand *rand, CwLength grid)
{
  g_autoptr (CwRegion) outline = random_outline (rand, grid);
  g_autoptr (CwRegion) openings = random_openings (rand, grid, 6);
  return cw_region_subtract (outline, openings);
}

char *
random_shape_text (const CwRegion *region)
{
  GString *text = g_string_new (NULL);
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      CwLoop loop = cw_region_loop (region, i);
      g_string_append_printf (text, "loop %zu\n", i);
      for (gsize j = 0; j < loop.n_sides; j++)
        {
          const CwSide *side = &loop.sides[j];
          g_string_append_printf (text, "  %" G_GINT64_FORMAT
                                        ", %" G_GINT64_FORMAT,
                                  side->start.x, side->start.y);
          if (side->is_arc)
            g_string_append_printf (text, " arc %.17g %.17g %.17g %.17g "
                                          "%.17g %.17g",
                                    side->cx, side->cy, side->rx, side->ry,
                                    side->from, side->to);
          g_string_append_c (text, '\n');
        }
    }
  return g_string_free (text, FALSE);
}

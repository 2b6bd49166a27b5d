/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Random unions, intersections and differences against GEOS, which sees arcs
 * flattened.
 */
#include <math.h>

#include "geos-shape.h"
#include "random-shape.h"

#define LONG_RUN (g_getenv ("CW_LONG") != NULL)
#define N_CASES (LONG_RUN ? 100000 : 2000)

/* nm: how fine arcs are flattened. */
static const double deviations[] = { 20000, 200, 2 };

/* Every place where sides meet is rounded to whole nanometres. */
#define ROUNDING 3e-9

/* nm: what flattening and two roundings that face each other can make of a
 * neck or a gap. */
#define NECK 8

typedef CwRegion *(*Ours) (const CwRegion *, const CwRegion *);
typedef GeosShape *(*Theirs) (const GeosShape *, const GeosShape *);

typedef struct
{
  const char *name;
  Ours ours;
  Theirs theirs;
} Operation;

static CwRegion *
union_of_two (const CwRegion *a, const CwRegion *b)
{
  const CwRegion *const both[] = { a, b };
  return cw_region_union (both, 2);
}

static const Operation operations[] = {
  { "union", union_of_two, geos_shape_union },
  { "intersect", cw_region_intersect, geos_shape_intersect },
  { "subtract", cw_region_subtract, geos_shape_subtract },
};

static guint n_refined;

static double
slack_of (const CwRegion *a, const CwRegion *b, double deviation)
{
  return (cw_region_length (a) + cw_region_length (b))
         * (deviation * 1e-9 + ROUNDING);
}

static guint
n_parts (const CwRegion *region, double least)
{
  g_autoptr (GPtrArray) parts = cw_region_parts (region);
  guint n = 0;
  for (guint i = 0; i < parts->len; i++)
    n += cw_region_area (parts->pdata[i]) > least;
  return n;
}

/* (nullable) (transfer full): what is wrong */
static char *
compare (const CwRegion *ours, const GeosShape *theirs, double slack,
         gboolean is_finest)
{
  double area = cw_region_area (ours), by_geos = geos_shape_area (theirs);
  double least = is_finest ? slack : 0;
  guint n = n_parts (ours, least), n_by_geos = geos_shape_n_parts (theirs,
                                                                  least);
  if (!(fabs (area - by_geos) <= slack))
    return g_strdup_printf ("area %.15g, by GEOS %.15g", area, by_geos);
  if (n != n_by_geos
      && !(is_finest && geos_shape_explains (theirs, n, least, NECK)))
    return g_strdup_printf ("%u parts, by GEOS %u", n, n_by_geos);
  return NULL;
}

static char *
check_at (const Operation *operation, const CwRegion *a, const CwRegion *b,
          const CwRegion *ours, guint fineness)
{
  double deviation = deviations[fineness];
  g_autoptr (GeosShape) flat_a = geos_shape_new (a, deviation);
  g_autoptr (GeosShape) flat_b = geos_shape_new (b, deviation);
  g_autoptr (GeosShape) theirs = operation->theirs (flat_a, flat_b);
  return compare (ours, theirs, slack_of (a, b, deviation),
                  fineness + 1 == G_N_ELEMENTS (deviations));
}

static void
check (const Operation *operation, const CwRegion *a, const CwRegion *b)
{
  g_autoptr (CwRegion) ours = operation->ours (a, b);
  g_autofree char *why = NULL;
  for (guint i = 0; i < G_N_ELEMENTS (deviations); i++)
    {
      g_free (why);
      why = check_at (operation, a, b, ours, i);
      if (why == NULL)
        return;
      n_refined++;
    }
  g_autofree char *text_a = random_shape_text (a);
  g_autofree char *text_b = random_shape_text (b);
  g_autofree char *text = random_shape_text (ours);
  g_error ("%s: %s\nof\n%sand\n%sis\n%s", operation->name, why, text_a,
           text_b, text);
}

static void
test_pairs (gconstpointer data)
{
  const Operation *operation = data;
  g_autoptr (GRand) rand = g_rand_new_with_seed ((guint32) g_test_rand_int ());
  n_refined = 0;
  for (guint i = 0; i < N_CASES; i++)
    {
      CwLength grid = random_grid (rand);
      g_autoptr (CwRegion) a = i % 2 ? random_opening (rand, grid)
                                     : random_outline (rand, grid);
      g_autoptr (CwRegion) b = random_opening (rand, grid);
      check (operation, a, b);
    }
  g_test_message ("%u pairs, %u times arcs flattened finer", N_CASES,
                  n_refined);
}

/* Many joined one after the other, then taken out of a wall. */
static void
test_walls (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed ((guint32) g_test_rand_int ());
  n_refined = 0;
  for (guint i = 0; i < N_CASES / 4; i++)
    {
      CwLength grid = random_grid (rand);
      g_autoptr (CwRegion) joined = cw_region_new_empty ();
      for (guint k = 0; k < 5; k++)
        {
          g_autoptr (CwRegion) opening = random_opening (rand, grid);
          check (&operations[0], joined, opening);
          CwRegion *both = union_of_two (joined, opening);
          cw_region_unref (joined);
          joined = both;
        }
      g_autoptr (CwRegion) outline = random_outline (rand, grid);
      check (&operations[1], outline, joined);
      check (&operations[2], outline, joined);
    }
  g_test_message ("%u walls, %u times arcs flattened finer", N_CASES / 4,
                  n_refined);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (operations); i++)
    {
      g_autofree char *path = g_strdup_printf (
          "/geometry/overlay-geos/%s", operations[i].name);
      g_test_add_data_func (path, &operations[i], test_pairs);
    }
  g_test_add_func ("/geometry/overlay-geos/walls", test_walls);
  return g_test_run ();
}

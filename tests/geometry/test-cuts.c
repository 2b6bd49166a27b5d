/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Random cuts against GEOS, which sees arcs flattened: as many pieces on both
 * sides of every line, and no area further off than the flattening.
 */
#include <math.h>

#include "geos-shape.h"
#include "random-shape.h"

#define LONG_RUN (g_getenv ("CW_LONG") != NULL)
#define N_CUTS (LONG_RUN ? 1000000 : 6000)

#define TAG_CUT 77

/* How fine arcs are flattened, nm: first as fine as is quick; where a line
 * runs so near an arc that this decides about pieces, finer. */
static const double deviations[] = { 20000, 200, 2 };

/* Every place of a cut is rounded to whole nanometres. */
#define ROUNDING 2e-9

/* nm: what flattening and two roundings that face each other can make of a
 * neck or a gap. */
#define NECK 8

typedef struct
{
  guint n_cuts, n_explained, n_refined;
  double worst_share;   /* of the slack that an area had */
} Tally;

typedef struct
{
  const CwRegion *region;
  CwAxis axis;
  CwLength at;
  Tally *tally;
} Cut;

static G_GNUC_NORETURN void
fail_cut (const Cut *cut, const char *format, ...)
{
  va_list arguments;
  va_start (arguments, format);
  g_autofree char *why = g_strdup_vprintf (format, arguments);
  g_autofree char *text = random_shape_text (cut->region);
  va_end (arguments);
  g_error ("Cut at %c = %" G_GINT64_FORMAT ": %s\n%s",
           cut->axis == CW_AXIS_X ? 'x' : 'y', cut->at, why, text);
}

static double
length_of_arcs (const CwRegion *region)
{
  double sum = 0;
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      CwLoop loop = cw_region_loop (region, i);
      for (gsize j = 0; j < loop.n_sides; j++)
        if (loop.sides[j].is_arc)
          sum += cw_side_length (&loop.sides[j], cw_loop_end (&loop, j));
    }
  return sum;
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

/* One side of the line, ours and GEOS's; FALSE when the pieces differ in
 * number. At the finest flattening those count that are no thinner than the
 * rounding. */
static gboolean
check_half (const Cut *cut, const CwRegion *ours, const GeosShape *theirs,
            guint fineness)
{
  double deviation = deviations[fineness];
  gboolean is_finest = fineness + 1 == G_N_ELEMENTS (deviations);
  double length = MAX (cw_region_length (ours), geos_shape_length (theirs));
  double slack = length_of_arcs (ours) * deviation * 1e-9 + length * ROUNDING
                 + 1e-18;
  double off = fabs (cw_region_area (ours) - geos_shape_area (theirs));
  if (n_parts (ours, 0) != geos_shape_n_parts (theirs, 0))
    {
      if (!is_finest || !geos_shape_explains (theirs, n_parts (ours, slack), slack, NECK))
        return FALSE;
      cut->tally->n_explained++;
    }
  if (off > slack)
    fail_cut (cut, "area %.15g, by GEOS %.15g", cw_region_area (ours),
              geos_shape_area (theirs));
  cut->tally->worst_share = MAX (cut->tally->worst_share, off / slack);
  return TRUE;
}

static gboolean
check_halves (const Cut *cut, const CwRegion *low, const CwRegion *high,
              const GeosShape *whole, guint fineness)
{
  CwBox below = { -CW_MM (90000), -CW_MM (90000), CW_MM (90000),
                  CW_MM (90000) };
  CwBox above = below;
  if (cut->axis == CW_AXIS_X)
    below.right = above.left = cut->at;
  else
    below.top = above.bottom = cut->at;
  g_autoptr (GeosShape) below_box = geos_shape_box (&below);
  g_autoptr (GeosShape) above_box = geos_shape_box (&above);
  g_autoptr (GeosShape) below_part = geos_shape_intersect (whole, below_box);
  g_autoptr (GeosShape) above_part = geos_shape_intersect (whole, above_box);
  return check_half (cut, low, below_part, fineness)
         && check_half (cut, high, above_part, fineness);
}

/* The parts of the region's area, and nothing beyond the line. */
static void
check_sum (const Cut *cut, const CwRegion *low, const CwRegion *high)
{
  double sum = cw_region_area (low) + cw_region_area (high);
  double whole = cw_region_area (cut->region);
  CwBox below = cw_region_box (low), above = cw_region_box (high);
  gboolean is_x = cut->axis == CW_AXIS_X;
  if (fabs (sum - whole) > cw_region_length (cut->region) * 1e-9)
    fail_cut (cut, "the parts add up to %.17g, not %.17g", sum, whole);
  if ((is_x ? below.right : below.top) > cut->at
      || (is_x ? above.left : above.bottom) < cut->at)
    fail_cut (cut, "a part reaches over the line");
}

/* How much of the part's rim lies on the line, nm. */
static CwLength
length_on_line (const Cut *cut, const CwRegion *part)
{
  CwLength sum = 0;
  gboolean is_x = cut->axis == CW_AXIS_X;
  for (gsize i = 0; i < cw_region_n_loops (part); i++)
    {
      CwLoop loop = cw_region_loop (part, i);
      for (gsize j = 0; j < loop.n_sides; j++)
        {
          CwPoint from = loop.sides[j].start, to = cw_loop_end (&loop, j);
          if (loop.sides[j].is_arc || (is_x ? from.x : from.y) != cut->at
              || (is_x ? to.x : to.y) != cut->at)
            continue;
          sum += is_x ? ABS (to.y - from.y) : ABS (to.x - from.x);
        }
    }
  return sum;
}

/* The spans on the line, sorted, are what the part below it has there. */
static void
check_spans (const Cut *cut, const CwRegion *low)
{
  g_autoptr (GArray) spans
      = cw_region_spans (cut->region, cut->axis, cut->at);
  const CwLength *place = (const CwLength *) (gpointer) spans->data;
  CwLength sum = 0;
  if (cw_region_is_empty (low) || low == cut->region)
    return;
  g_assert_true (spans->len % 2 == 0);
  for (guint i = 0; i < spans->len; i += 2)
    {
      if (place[i] >= place[i + 1] || (i > 0 && place[i] <= place[i - 1]))
        fail_cut (cut, "the spans are not sorted");
      sum += place[i + 1] - place[i];
    }
  if (sum != length_on_line (cut, low))
    fail_cut (cut, "spans of %" G_GINT64_FORMAT " nm, not %" G_GINT64_FORMAT,
              sum, length_on_line (cut, low));
}

static void
check_cut (const Cut *cut, const GeosShape *flat, CwRegion **low,
           CwRegion **high)
{
  cw_region_split (cut->region, cut->axis, cut->at, TAG_CUT, low, high);
  check_sum (cut, *low, *high);
  check_spans (cut, *low);
  cut->tally->n_cuts++;
  if (check_halves (cut, *low, *high, flat, 0))
    return;
  cut->tally->n_refined++;
  for (guint i = 1; i < G_N_ELEMENTS (deviations); i++)
    {
      g_autoptr (GeosShape) finer
          = geos_shape_new (cut->region, deviations[i]);
      if (check_halves (cut, *low, *high, finer, i))
        return;
    }
  fail_cut (cut, "%u and %u pieces, not as many as by GEOS",
            n_parts (*low, 0), n_parts (*high, 0));
}

/* Through a corner or beside it, on the grid, or anywhere. */
static CwLength
random_place (GRand *rand, const CwRegion *region, CwAxis axis, CwLength grid)
{
  CwBox box = cw_region_box (region);
  CwLength low = axis == CW_AXIS_X ? box.left : box.bottom;
  CwLength high = axis == CW_AXIS_X ? box.right : box.top;
  CwLoop loop = cw_region_loop (
      region,
      (gsize) g_rand_int_range (rand, 0, (int) cw_region_n_loops (region)));
  gsize side = (gsize) g_rand_int_range (rand, 0, (int) loop.n_sides);
  CwBox around = cw_side_box (&loop.sides[side], cw_loop_end (&loop, side));
  switch (g_rand_int_range (rand, 0, 5))
    {
    case 0:
      return axis == CW_AXIS_X ? around.left : around.bottom;
    case 1:
      return (axis == CW_AXIS_X ? around.right : around.top)
             + g_rand_int_range (rand, -1, 2);
    case 2:
      return random_length (rand, grid, low, high);
    default:
      return random_length (rand, 1, low, high);
    }
}

#define CUTS_A_REGION 12

/* Some cuts of the region, and some of what is left of it. */
static void
cut_region (GRand *rand, const CwRegion *region, CwLength grid, guint depth,
            Tally *tally)
{
  if (cw_region_is_empty (region))
    return;
  g_autoptr (GeosShape) flat = geos_shape_new (region, deviations[0]);
  for (guint i = 0; i < CUTS_A_REGION; i++)
    {
      Cut cut = { region, g_rand_boolean (rand) ? CW_AXIS_X : CW_AXIS_Y };
      g_autoptr (CwRegion) low = NULL;
      g_autoptr (CwRegion) high = NULL;
      cut.at = random_place (rand, region, cut.axis, grid);
      cut.tally = tally;
      check_cut (&cut, flat, &low, &high);
      if (depth > 0 && i < 2)
        cut_region (rand, i ? low : high, grid, depth - 1, tally);
    }
}

static void
test_against_geos (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed ((guint32) g_test_rand_int ());
  Tally tally = { 0 };
  guint n_regions = 0;
  while (tally.n_cuts < N_CUTS)
    {
      CwLength grid = random_grid (rand);
      g_autoptr (CwRegion) wall = random_wall (rand, grid);
      cut_region (rand, wall, grid, 2, &tally);
      n_regions++;
    }
  g_test_message ("%u cuts of %u walls; %u times the number of pieces hung on "
                  "finer flattening, %u times on pieces, necks or gaps within "
                  "the rounding; the worst area is off by %.2f of what "
                  "flattening and rounding explain",
                  tally.n_cuts, n_regions, tally.n_refined, tally.n_explained,
                  tally.worst_share);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/geometry/cuts/geos", test_against_geos);
  return g_test_run ();
}

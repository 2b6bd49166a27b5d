/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The bound against counts known by arithmetic, and the table of prices
 * against a plain recursion over all cuts at whole numbers.
 */
#include <math.h>

#include "cw-cut-bound.h"
#include "cw-cut-lp-bound.h"
#include "cw-cut-prices.h"

static guint
bound_of (const CwCutSize *blanks, const guint *times, guint n,
          CwCutSize panel, gboolean turn, CwCutEffort effort)
{
  const CwCutTask task = { blanks, times, n, panel, turn, G_MAXUINT };
  return cw_cut_bound (&task, effort, NULL);
}

/* Derived. Panels of 10 yield two 4s each, and then no 3: ten 4s take five
 * panels and leave nothing for the 3s. Prices: 1/2 and 1/4, for 4 + 3 + 3 is
 * worth 1 and nothing is worth more: 10/2 + 2/4 = 5.5. */
static void
test_lengths (void)
{
  const CwCutSize blanks[] = { { 4, 1 }, { 3, 1 } };
  const guint times[] = { 10, 2 };
  const CwCutSize panel = { 10, 1 };
  g_assert_cmpuint (
      bound_of (blanks, times, 2, panel, FALSE, CW_CUT_EFFORT_FIRST), ==, 5);
  g_assert_cmpuint (
      bound_of (blanks, times, 2, panel, FALSE, CW_CUT_EFFORT_LIVE), ==, 6);
  g_assert_cmpuint (
      bound_of (blanks, times, 2, panel, FALSE, CW_CUT_EFFORT_LONG), ==, 6);
}

/* The same in the other direction, and with lengths in nm with a kerf. */
static void
test_heights_in_nm (void)
{
  const CwLength kerf = CW_MM (4), part = CW_MM (60) + 7;
  const CwCutSize blanks[] = { { CW_MM (2404), 4 * part },
                               { CW_MM (2404), 3 * part } };
  const guint times[] = { 10, 2 };
  const CwCutSize panel = { CW_MM (2400) + kerf, 10 * part + part / 2 };
  g_assert_cmpuint (
      bound_of (blanks, times, 2, panel, FALSE, CW_CUT_EFFORT_LIVE), ==, 6);
}

/* Derived. Four blanks of 3 by 2 lie round a hole of 1 by 1 on a panel of 5
 * by 5, two of them turned, but no straight cut parts them: three is the most
 * that straight cuts give, so 12 of them take 4 panels. No dual feasible
 * function can tell, for these bound any way of lying. */
static void
test_pinwheel (void)
{
  const CwCutSize blanks[] = { { 3, 2 }, { 2, 3 } };
  const guint times[] = { 6, 6 };
  const CwCutSize panel = { 5, 5 };
  g_assert_cmpuint (
      bound_of (blanks, times, 2, panel, FALSE, CW_CUT_EFFORT_FIRST), <=, 3);
  g_assert_cmpuint (
      bound_of (blanks, times, 2, panel, FALSE, CW_CUT_EFFORT_LIVE), ==, 4);
  g_assert_cmpuint (
      bound_of (blanks, times, 2, panel, TRUE, CW_CUT_EFFORT_LIVE), ==, 4);
}

/* Turned, 6 × 400 come out of 2400: one panel, as they lie 6 / 4. */
static void
test_turning (void)
{
  const CwCutSize blanks[] = { { 6, 4 } };
  const guint times[] = { 6 };
  const CwCutSize panel = { 24, 6 };
  g_assert_cmpuint (
      bound_of (blanks, times, 1, panel, TRUE, CW_CUT_EFFORT_LONG), ==, 1);
  g_assert_cmpuint (
      bound_of (blanks, times, 1, panel, FALSE, CW_CUT_EFFORT_LONG), ==, 2);
}

static CwCutSize
blank_of (double width_mm, double height_mm)
{
  return (CwCutSize) { (CwLength) lround (width_mm * 1e6) + CW_MM (4),
                       (CwLength) lround (height_mm * 1e6) + CW_MM (4) };
}

/* Derived: a wall of panels of 2400 by 600 with a kerf of 4. Two strips of
 * 331.2 do not lie above each other, and a long one leaves no room for a
 * piece of full height: four panels. Of the pieces of full height five fill a
 * panel; seven more are over a half. What these leave takes one each of 772,
 * 761.4, 761.4 and 736.6, and then the 583.6 nowhere: thirteen panels. The
 * lengths themselves would fill 11.7. */
static void
test_strips_and_full_heights (void)
{
  const double full[] = { 2400, 2400, 2400, 2400, 2282.4, 1991.2,
                          1952.8, 1846.6, 1404.6, 1404.6, 1254.6, 1216.2,
                          772, 761.4, 761.4, 736.6, 583.6, 437.2, 372.6,
                          304.8, 150, 150, 150 };
  const double strips[] = { 2400, 2400, 2323.8, 2314.8, 150, 150 };
  CwCutSize blanks[G_N_ELEMENTS (full) + G_N_ELEMENTS (strips)];
  guint n = 0;
  for (guint i = 0; i < G_N_ELEMENTS (full); i++)
    blanks[n++] = blank_of (full[i], 600);
  for (guint i = 0; i < G_N_ELEMENTS (strips); i++)
    blanks[n++] = blank_of (strips[i], 331.2);
  const CwCutSize panel = { CW_MM (2404), CW_MM (604) };
  g_assert_cmpuint (
      bound_of (blanks, NULL, n, panel, FALSE, CW_CUT_EFFORT_LIVE), ==, 17);
}

static void
test_stops (void)
{
  const CwCutSize blanks[] = { { 4, 1 }, { 3, 1 } };
  const guint times[] = { 10, 2 };
  const CwCutSize panel = { 10, 1 };
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  CwCutSizes sizes;
  cw_cut_sizes_init (&sizes, blanks, times, 2, NULL);
  g_assert_cmpuint (
      cw_cut_lp_bound (&sizes, NULL, panel, FALSE, 2, 9, 0, NULL), ==, 2);
  g_assert_cmpuint (
      cw_cut_lp_bound (&sizes, NULL, panel, FALSE, 2, 9, 1000000, cancellable), ==,
      6);
  /* A plan of what is known is not bettered: nothing is looked for. */
  g_assert_cmpuint (
      cw_cut_lp_bound (&sizes, NULL, panel, FALSE, 3, 3, 1000000, NULL), ==, 3);
  g_cancellable_cancel (cancellable);
  g_assert_cmpuint (
      cw_cut_lp_bound (&sizes, NULL, panel, FALSE, 2, 9, 1000000, cancellable), ==,
      2);
  cw_cut_sizes_clear (&sizes);
}

#define SIDE 12
#define N_SIZES 5

typedef struct
{
  CwCutSize sizes[N_SIZES];
  gint64 prices[N_SIZES];
  gboolean turn;
  gint64 known[SIDE + 1][SIDE + 1];
} Job;

static gint64
worth_uncut (const Job *job, CwLength width, CwLength height)
{
  gint64 most = 0;
  for (guint i = 0; i < N_SIZES; i++)
    {
      const CwCutSize size = job->sizes[i];
      if ((size.width <= width && size.height <= height)
          || (job->turn && size.height <= width && size.width <= height))
        most = MAX (most, job->prices[i]);
    }
  return most;
}

static gint64
worth_of (Job *job, CwLength width, CwLength height)
{
  gint64 *known = &job->known[width][height];
  if (*known >= 0)
    return *known;
  gint64 most = worth_uncut (job, width, height);
  for (CwLength cut = 1; cut < width; cut++)
    most = MAX (most, worth_of (job, cut, height)
                          + worth_of (job, width - cut, height));
  for (CwLength cut = 1; cut < height; cut++)
    most = MAX (most, worth_of (job, width, cut)
                          + worth_of (job, width, height - cut));
  return *known = most;
}

static void
fill_job (Job *job, CwCutSizes *sizes)
{
  CwCutSize blanks[N_SIZES];
  for (guint i = 0; i < N_SIZES; i++)
    blanks[i] = (CwCutSize) { g_test_rand_int_range (1, SIDE + 1),
                              g_test_rand_int_range (1, SIDE + 1) };
  cw_cut_sizes_init (sizes, blanks, NULL, N_SIZES, NULL);
  job->turn = g_test_rand_bit ();
  for (guint i = 0; i < N_SIZES; i++)
    {
      /* Sizes that came twice stand at the end once more, without a price. */
      const gboolean is_there = i < sizes->n;
      job->sizes[i] = is_there ? sizes->sizes[i] : sizes->sizes[0];
      job->prices[i] = is_there ? g_test_rand_int_range (0, 100) : 0;
    }
  for (guint width = 0; width <= SIDE; width++)
    for (guint height = 0; height <= SIDE; height++)
      job->known[width][height] = -1;
}

static void
assert_listed (const CwCutPrices *prices, const Job *job,
               const CwCutSizes *sizes, gint64 most)
{
  guint times[N_SIZES];
  gint64 worth = 0, area = 0;
  g_assert_true (cw_cut_prices_list (prices, CW_CUT_PRICES_ANY, times));
  for (guint i = 0; i < sizes->n; i++)
    {
      worth += times[i] * job->prices[i];
      area += times[i] * sizes->sizes[i].width * sizes->sizes[i].height;
    }
  g_assert_cmpint (worth, ==, most);
  g_assert_cmpint (area, <=, SIDE * SIDE);
  for (guint i = 0; i < sizes->n; i++)
    {
      g_assert_true (cw_cut_prices_list (prices, i, times));
      g_assert_cmpuint (times[i], >, 0);
      worth = 0;
      for (guint j = 0; j < sizes->n; j++)
        worth += times[j] * job->prices[j];
      g_assert_cmpint (worth, <=, most);
    }
}

static void
test_prices (void)
{
  for (guint round = 0; round < 500; round++)
    {
      Job job;
      CwCutSizes sizes;
      fill_job (&job, &sizes);
      g_autoptr (CwCutPrices) prices = cw_cut_prices_new (
          &sizes, (CwCutSize) { SIDE, SIDE }, job.turn);
      const gint64 most = worth_of (&job, SIDE, SIDE);
      g_assert_cmpint (cw_cut_prices_fill (prices, job.prices), ==, most);
      assert_listed (prices, &job, &sizes, most);
      for (guint i = 0; i < sizes.n; i++)
        {
          const CwCutSize size = sizes.sizes[i];
          const gint64 lying = worth_of (&job, size.width, size.height);
          const gint64 turned = worth_of (&job, size.height, size.width);
          g_assert_cmpint (cw_cut_prices_raised (prices, i), ==,
                           job.turn ? MIN (lying, turned) : lying);
        }
      cw_cut_sizes_clear (&sizes);
    }
}

/* Sizes too fine for the table: stretched a million times and made a little
 * smaller, so that they have no divisor in common, they are worth as much. */
static void
test_prices_of_fine_sizes (void)
{
  const CwLength stretch = 1000000;
  for (guint round = 0; round < 200; round++)
    {
      Job job;
      CwCutSizes sizes;
      fill_job (&job, &sizes);
      const gint64 most = worth_of (&job, SIDE, SIDE);
      for (guint i = 0; i < sizes.n; i++)
        {
          sizes.sizes[i].width
              = sizes.sizes[i].width * stretch - g_test_rand_int_range (0, 9);
          sizes.sizes[i].height
              = sizes.sizes[i].height * stretch - g_test_rand_int_range (0, 9);
        }
      g_autoptr (CwCutPrices) prices = cw_cut_prices_new (
          &sizes, (CwCutSize) { SIDE * stretch, SIDE * stretch }, job.turn);
      g_assert_cmpint (cw_cut_prices_fill (prices, job.prices), >=, most);
      cw_cut_sizes_clear (&sizes);
    }
}

/* Whatever the first search finds is a plan, and no bound is above it. */
static void
test_never_above_a_plan (void)
{
  guint n_raised = 0;
  for (guint round = 0; round < 200; round++)
    {
      CwCutSize blanks[20];
      const CwCutSize panel = { g_test_rand_int_range (10, 40),
                                g_test_rand_int_range (10, 40) };
      const gboolean turn = g_test_rand_bit ();
      for (guint i = 0; i < 20; i++)
        blanks[i] = (CwCutSize) {
          g_test_rand_int_range (1, (gint32) panel.width + 1),
          g_test_rand_int_range (1, (gint32) panel.height + 1)
        };
      g_autoptr (CwCutSearch) search
          = cw_cut_search_new (blanks, 20, panel, turn, round);
      const guint first
          = bound_of (blanks, NULL, 20, panel, turn, CW_CUT_EFFORT_FIRST);
      const guint least
          = bound_of (blanks, NULL, 20, panel, turn, CW_CUT_EFFORT_LIVE);
      cw_cut_search_run (search, 1, 300000, NULL);
      g_assert_cmpuint (least, <=, cw_cut_search_n_panels (search));
      g_assert_cmpuint (first, <=, least);
      n_raised += first < least;
    }
  g_assert_cmpuint (n_raised, >, 0);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/layout/cut-bound/lengths", test_lengths);
  g_test_add_func ("/layout/cut-bound/heights-in-nm", test_heights_in_nm);
  g_test_add_func ("/layout/cut-bound/pinwheel", test_pinwheel);
  g_test_add_func ("/layout/cut-bound/turning", test_turning);
  g_test_add_func ("/layout/cut-bound/strips-and-full-heights",
                   test_strips_and_full_heights);
  g_test_add_func ("/layout/cut-bound/stops", test_stops);
  g_test_add_func ("/layout/cut-bound/prices", test_prices);
  g_test_add_func ("/layout/cut-bound/prices-of-fine-sizes",
                   test_prices_of_fine_sizes);
  g_test_add_func ("/layout/cut-bound/never-above-a-plan",
                   test_never_above_a_plan);
  return g_test_run ();
}

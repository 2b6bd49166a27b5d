/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-bound.h"

#include <math.h>

#include "cw-cut-lp-bound.h"

/*
 * A dual feasible function maps sizes, as shares of the panel, so that sizes
 * that fit beside each other still do after it. Three families are used:
 *
 *   STEPS     with a whole number k: shares to whole multiples of 1/k
 *   CLIP      with a threshold e: shares above 1 - e count 1, below e nothing
 *   ROUND     with a threshold e: shares above 1/2 by what they leave beside
 *             them in units of e, others as one unit
 *
 * All are worked out on whole lengths, so that a size of just half a panel is
 * never taken for a little more.
 */
typedef enum
{
  STEPS,
  CLIP,
  ROUND,
} Family;

typedef struct
{
  Family family;
  CwLength parameter;        /* k, or e as a length */
} Function;

static double
steps (CwLength size, CwLength whole, CwLength k)
{
  const CwLength scaled = size * (k + 1);
  if (scaled % whole == 0)
    return (double) size / (double) whole;
  return (double) (scaled / whole) / (double) k;
}

static double
clip (CwLength size, CwLength whole, CwLength e)
{
  if (size > whole - e)
    return 1;
  return size < e ? 0 : (double) size / (double) whole;
}

static double
round_to_units (CwLength size, CwLength whole, CwLength e)
{
  const double units = (double) (whole / e);
  if (2 * size > whole)
    return 1 - (double) ((whole - size) / e) / units;
  return size < e ? 0 : 1 / units;
}

static double
apply (const Function *function, CwLength size, CwLength whole)
{
  switch (function->family)
    {
    case STEPS:
      return steps (size, whole, function->parameter);
    case CLIP:
      return clip (size, whole, function->parameter);
    case ROUND:
      return round_to_units (size, whole, function->parameter);
    }
  g_assert_not_reached ();
}

/* The most that sizes come to which add up to @size. The first two families
 * lose nothing by adding sizes up first. ROUND gives all sizes up to one half
 * a single unit, however large: as many of the least as there is room for;
 * beyond a half a large one and the least beside it make no more than one. */
static double
most_within (const Function *function, CwLength size, CwLength whole)
{
  const CwLength e = function->parameter;
  if (function->family == ROUND && 2 * size <= whole)
    return (double) (size / e) / (double) (whole / e);
  return apply (function, size, whole);
}

#define MOST_STEPS 8
#define LEAST_THRESHOLDS 4
#define MOST_THRESHOLDS 64

/* Products of two functions worked out, some 1 to 2 ns each. */
static const double most_products[] = {
  [CW_CUT_EFFORT_FIRST] = 1e5,
  [CW_CUT_EFFORT_LIVE] = 8e6,
  [CW_CUT_EFFORT_LONG] = 1e8,
};

/* Of each direction, for @n different sizes: two functions for each of them
 * and the steps in pairs with as many of the other direction. */
static guint
n_thresholds_for (CwCutEffort effort, guint n)
{
  const double functions = sqrt (most_products[effort] / n);
  return (guint) CLAMP ((functions - MOST_STEPS) / 2, LEAST_THRESHOLDS,
                        MOST_THRESHOLDS);
}

static int
compare_lengths (gconstpointer a, gconstpointer b)
{
  const CwLength first = *(const CwLength *) a, second = *(const CwLength *) b;
  return (first > second) - (first < second);
}

static void
add_threshold (GArray *thresholds, CwLength e, CwLength whole)
{
  if (e > 0 && 2 * e <= whole)
    g_array_append_val (thresholds, e);
}

/* Where the functions can change their values: at the sizes and at what they
 * leave of a panel. Evenly thinned when there are many. */
static GArray *
collect_thresholds (const CwLength *sizes, guint n, CwLength whole,
                    guint most)
{
  GArray *all = g_array_new (FALSE, FALSE, sizeof (CwLength));
  for (guint i = 0; i < n; i++)
    {
      add_threshold (all, sizes[i], whole);
      add_threshold (all, whole - sizes[i], whole);
      add_threshold (all, whole - sizes[i] + 1, whole);
    }
  g_array_sort (all, compare_lengths);

  GArray *kept = g_array_new (FALSE, FALSE, sizeof (CwLength));
  guint n_distinct = 0;
  for (guint i = 0; i < all->len; i++)
    {
      const CwLength e = g_array_index (all, CwLength, i);
      if (n_distinct == 0 || e != g_array_index (all, CwLength, n_distinct - 1))
        g_array_index (all, CwLength, n_distinct++) = e;
    }
  const guint n_kept = MIN (n_distinct, most);
  for (guint i = 0; i < n_kept; i++)
    g_array_append_val (kept, g_array_index (all, CwLength,
                                             i * n_distinct / n_kept));
  g_array_unref (all);
  return kept;
}

static void
add_function (GArray *functions, Family family, CwLength parameter)
{
  const Function function = { family, parameter };
  g_array_append_val (functions, function);
}

static GArray *
collect_functions (const CwLength *sizes, guint n, CwLength whole,
                   guint most)
{
  GArray *functions = g_array_new (FALSE, FALSE, sizeof (Function));
  GArray *thresholds = collect_thresholds (sizes, n, whole, most);

  for (guint k = 1; k <= MOST_STEPS; k++)
    add_function (functions, STEPS, k);
  add_function (functions, CLIP, 0);
  for (guint i = 0; i < thresholds->len; i++)
    {
      const CwLength e = g_array_index (thresholds, CwLength, i);
      add_function (functions, CLIP, e);
      add_function (functions, ROUND, e);
    }
  g_array_unref (thresholds);
  return functions;
}

/* values[f * n + i]: function f of size i. A size that is larger than the
 * whole cannot lie that way; NAN says so. */
static double *
tabulate (const GArray *functions, const CwLength *sizes, guint n,
          CwLength whole)
{
  double *values = g_new (double, (gsize) functions->len * n);
  for (guint f = 0; f < functions->len; f++)
    for (guint i = 0; i < n; i++)
      values[(gsize) f * n + i]
          = sizes[i] > whole
                ? (double) NAN
                : apply (&g_array_index (functions, Function, f), sizes[i],
                         whole);
  return values;
}

typedef struct
{
  guint n;
  const guint *counts;
  GArray *on_width, *on_height;
  /* [0]: as the blanks lie; [1]: turned */
  double *across[2], *along[2];
  gboolean turn;
  /* Of the rests: the most that fits on them; which sizes fit on any. */
  const CwCutSizes *rests;
  double *rest_across, *rest_along;
  guint8 *fits;
} Tables;

static double
weight_on_rests (const Tables *tables, guint f, guint g)
{
  const CwCutSizes *rests = tables->rests;
  const double *across = tables->rest_across + (gsize) f * rests->n;
  const double *along = tables->rest_along + (gsize) g * rests->n;
  double sum = 0;
  for (guint i = 0; i < rests->n; i++)
    sum += rests->counts[i] * across[i] * along[i];
  return sum;
}

static double
weight (const Tables *tables, guint f, guint g)
{
  const gsize at_f = (gsize) f * tables->n, at_g = (gsize) g * tables->n;
  double sum = 0, fits = 0;
  for (guint i = 0; i < tables->n; i++)
    {
      const double straight
          = tables->across[0][at_f + i] * tables->along[0][at_g + i];
      /* fmin() passes over the way that does not fit. */
      const double all
          = tables->counts[i]
            * (tables->turn ? fmin (straight, tables->across[1][at_f + i]
                                                  * tables->along[1][at_g + i])
                            : straight);
      sum += all;
      if (tables->fits && tables->fits[i])
        fits += all;
    }
  return fits > 0 ? sum - MIN (fits, weight_on_rests (tables, f, g)) : sum;
}

static void
tables_clear (Tables *tables)
{
  for (guint i = 0; i < 2; i++)
    {
      g_free (tables->across[i]);
      g_free (tables->along[i]);
    }
  g_array_unref (tables->on_width);
  g_array_unref (tables->on_height);
  g_free (tables->rest_across);
  g_free (tables->rest_along);
  g_free (tables->fits);
}

static gboolean
fits_on_any (const CwCutSizes *rests, CwCutSize size, gboolean turn)
{
  for (guint i = 0; i < rests->n; i++)
    {
      const CwCutSize rest = rests->sizes[i];
      if ((size.width <= rest.width && size.height <= rest.height)
          || (turn && size.height <= rest.width && size.width <= rest.height))
        return TRUE;
    }
  return FALSE;
}

static double *
tabulate_rests (const GArray *functions, const CwCutSizes *rests,
                gboolean heights, CwLength whole)
{
  double *values = g_new (double, (gsize) functions->len * rests->n);
  for (guint f = 0; f < functions->len; f++)
    for (guint i = 0; i < rests->n; i++)
      values[(gsize) f * rests->n + i] = most_within (
          &g_array_index (functions, Function, f),
          MIN (whole, heights ? rests->sizes[i].height : rests->sizes[i].width),
          whole);
  return values;
}

static void
tables_take_rests (Tables *tables, const CwCutSizes *sizes,
                   const CwCutSizes *rests, CwCutSize panel)
{
  tables->rests = rests;
  if (rests->n == 0)
    return;
  tables->rest_across
      = tabulate_rests (tables->on_width, rests, FALSE, panel.width);
  tables->rest_along
      = tabulate_rests (tables->on_height, rests, TRUE, panel.height);
  tables->fits = g_new (guint8, sizes->n);
  for (guint i = 0; i < sizes->n; i++)
    tables->fits[i] = fits_on_any (rests, sizes->sizes[i], tables->turn);
}

static void
tables_fill (Tables *tables, const CwLength *widths, const CwLength *heights,
             CwCutSize panel, guint most)
{
  const guint n = tables->n;
  tables->on_width = collect_functions (widths, n, panel.width, most);
  tables->on_height = collect_functions (heights, n, panel.height, most);
  tables->across[0] = tabulate (tables->on_width, widths, n, panel.width);
  tables->along[0] = tabulate (tables->on_height, heights, n, panel.height);
  tables->across[1] = tabulate (tables->on_width, heights, n, panel.width);
  tables->along[1] = tabulate (tables->on_height, widths, n, panel.height);
}

/* The sum may be off by rounding: rather a panel too few than too many. */
static guint
panels_of_weight (double sum)
{
  return (guint) ceil (sum - 1e-6 - 1e-12 * sum);
}

static guint
greatest_bound (const Tables *tables, guint enough)
{
  guint most = 0;
  for (guint f = 0; f < tables->on_width->len && most < enough; f++)
    for (guint g = 0; g < tables->on_height->len && most < enough; g++)
      most = MAX (most, panels_of_weight (weight (tables, f, g)));
  return most;
}

static CwLength *
list_lengths (const CwCutSizes *sizes, gboolean heights)
{
  CwLength *lengths = g_new (CwLength, sizes->n);
  for (guint i = 0; i < sizes->n; i++)
    lengths[i] = heights ? sizes->sizes[i].height : sizes->sizes[i].width;
  return lengths;
}

static guint
bound_by_functions (const CwCutSizes *sizes, const CwCutSizes *rests,
                    const CwCutTask *task, CwCutEffort effort)
{
  g_autofree CwLength *widths = list_lengths (sizes, FALSE);
  g_autofree CwLength *heights = list_lengths (sizes, TRUE);
  Tables tables
      = { .n = sizes->n, .counts = sizes->counts, .turn = task->turn };
  tables_fill (&tables, widths, heights, task->panel,
               n_thresholds_for (effort, sizes->n + rests->n));
  tables_take_rests (&tables, sizes, rests, task->panel);
  const guint bound = greatest_bound (&tables, task->enough);
  tables_clear (&tables);
  return bound;
}

/* Sums compared, some 1 ns each. */
static const guint64 most_sums[] = {
  [CW_CUT_EFFORT_FIRST] = 0,
  [CW_CUT_EFFORT_LIVE] = 4000000,
  [CW_CUT_EFFORT_LONG] = 1000000000,
};

guint
cw_cut_bound (const CwCutTask *task, CwCutEffort effort,
              GCancellable *cancellable)
{
  if (task->n_blanks == 0)
    return 0;
  CwCutSizes sizes, rests;
  cw_cut_sizes_init (&sizes, task->blanks, task->times, task->n_blanks, NULL);
  cw_cut_sizes_init (&rests, task->rests, task->rest_times, task->n_rests,
                     NULL);
  guint bound = bound_by_functions (&sizes, &rests, task, effort);
  bound = cw_cut_lp_bound (&sizes, &rests, task->panel, task->turn, bound,
                           task->enough, most_sums[effort], cancellable);
  cw_cut_sizes_clear (&rests);
  cw_cut_sizes_clear (&sizes);
  /* A sliver weighs less than the rounding allows for, and needs a panel. */
  return task->n_rests == 0 ? MAX (bound, 1) : bound;
}

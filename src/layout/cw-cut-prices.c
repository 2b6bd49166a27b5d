/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-prices.h"

#include <string.h>

/* How lengths along one side of the panel are counted. */
typedef struct
{
  CwLength whole;            /* of the panel */
  CwLength divisor;          /* of all sizes */
  guint n_units;             /* of the panel */
} Scale;

/* Along one side of the panel: only lengths that blanks side by side can
 * come to need a place in the table. */
typedef struct
{
  Scale scale;
  guint n;
  guint *units;              /* of each place, ascending; [0] is 0 */
  guint *place;              /* of so many units: the last that is no longer */
  guint *size;               /* units of each size; 0: too fine to count */
} Side;

struct CwCutPrices
{
  guint n_sizes;
  Side across, along;        /* the widths, the heights */
  /* With turning: the units of heights laid across, and the other way. */
  guint *turned_across, *turned_along;
  gint64 *price;
  gint64 *worth;             /* of the rectangle [x * along.n + y] */
  guint *dearest;            /* the blank that just fills it, if any */
};

/* Divides by all small numbers, so that halves, thirds … stay whole. */
#define MOST_UNITS 420

static CwLength
common_divisor (CwLength a, CwLength b)
{
  while (b != 0)
    {
      const CwLength rest = a % b;
      a = b;
      b = rest;
    }
  return a;
}

static Scale
choose_scale (const CwCutSizes *sizes, CwLength whole, gboolean height,
              gboolean turn)
{
  CwLength divisor = 0;
  for (guint i = 0; i < sizes->n; i++)
    {
      const CwCutSize size = sizes->sizes[i];
      if (turn || !height)
        divisor = common_divisor (divisor, size.width);
      if (turn || height)
        divisor = common_divisor (divisor, size.height);
    }
  const CwLength units = whole / divisor;
  return (Scale) { whole, divisor, (guint) MIN (units, MOST_UNITS) };
}

/* Longer than the panel: G_MAXUINT, it does not lie that way. */
static guint
units_of (const Scale *scale, CwLength length)
{
  if (length > scale->whole)
    return G_MAXUINT;
  if (scale->whole / scale->divisor <= MOST_UNITS)
    return (guint) (length / scale->divisor);
  return (guint) (length * scale->n_units / scale->whole);
}

/* Which sums of lengths there are up to the panel's, any number of each. */
static void
mark_sums (guint8 *is_sum, guint n_units, const guint *units, guint n)
{
  is_sum[0] = TRUE;
  for (guint at = 0; at < n_units; at++)
    for (guint i = 0; is_sum[at] && i < n; i++)
      if (units[i] <= n_units - at)
        is_sum[at + units[i]] = TRUE;
  is_sum[n_units] = TRUE;
}

static void
side_place (Side *side, guint n_units, const guint *units, guint n)
{
  g_autofree guint8 *is_sum = g_new0 (guint8, n_units + 1);
  mark_sums (is_sum, n_units, units, n);
  side->n = 0;
  side->units = g_new (guint, n_units + 1);
  side->place = g_new (guint, n_units + 1);
  for (guint at = 0; at <= n_units; at++)
    {
      if (is_sum[at])
        side->units[side->n++] = at;
      side->place[at] = side->n - 1;
    }
}

/* @turned: (out): (nullable) the other measure of the sizes in these units. */
static void
side_init (Side *side, guint **turned, const CwCutSizes *sizes,
           CwLength whole, gboolean height, gboolean turn)
{
  const guint n = sizes->n;
  const Scale scale = choose_scale (sizes, whole, height, turn);
  g_autofree guint *both = g_new (guint, 2 * n);
  for (guint i = 0; i < n; i++)
    {
      const CwCutSize size = sizes->sizes[i];
      both[i] = units_of (&scale, height ? size.height : size.width);
      both[n + i] = units_of (&scale, height ? size.width : size.height);
    }
  side->scale = scale;
  side_place (side, scale.n_units, both, turn ? 2 * n : n);
  side->size = g_memdup2 (both, n * sizeof (guint));
  *turned = turn ? g_memdup2 (both + n, n * sizeof (guint)) : NULL;
}

static void
side_clear (Side *side)
{
  g_free (side->units);
  g_free (side->place);
  g_free (side->size);
}

CwCutPrices *
cw_cut_prices_new (const CwCutSizes *sizes, CwCutSize panel, gboolean turn)
{
  CwCutPrices *prices = g_new0 (CwCutPrices, 1);
  prices->n_sizes = sizes->n;
  side_init (&prices->across, &prices->turned_across, sizes, panel.width,
             FALSE, turn);
  side_init (&prices->along, &prices->turned_along, sizes, panel.height,
             TRUE, turn);
  prices->price = g_new0 (gint64, sizes->n);
  prices->worth
      = g_new0 (gint64, (gsize) prices->across.n * prices->along.n);
  prices->dearest
      = g_new0 (guint, (gsize) prices->across.n * prices->along.n);
  return prices;
}

void
cw_cut_prices_free (CwCutPrices *prices)
{
  side_clear (&prices->across);
  side_clear (&prices->along);
  g_free (prices->turned_across);
  g_free (prices->turned_along);
  g_free (prices->price);
  g_free (prices->worth);
  g_free (prices->dearest);
  g_free (prices);
}

guint64
cw_cut_prices_effort (const CwCutPrices *prices)
{
  const guint64 nx = prices->across.n, ny = prices->along.n;
  return nx * ny * (nx + ny) / 4;
}

/* The row of rectangles as wide as place @x. */
static gint64 *
row_of (const CwCutPrices *prices, guint x)
{
  return prices->worth + (gsize) x * prices->along.n;
}

/* A blank that is too fine to count has no place: it is worth nothing. */
static gint64 *
worth_of_place (const CwCutPrices *prices, guint across, guint along)
{
  if (across == 0 || along == 0 || across == G_MAXUINT || along == G_MAXUINT)
    return NULL;
  return row_of (prices, prices->across.place[across])
         + prices->along.place[along];
}

static void
put_price (CwCutPrices *prices, guint across, guint along, guint index)
{
  gint64 *worth = worth_of_place (prices, across, along);
  if (!worth || *worth >= prices->price[index])
    return;
  *worth = prices->price[index];
  prices->dearest[worth - prices->worth] = index;
}

static void
put_prices (CwCutPrices *prices)
{
  memset (prices->worth, 0,
          (gsize) prices->across.n * prices->along.n * sizeof (gint64));
  for (guint i = 0; i < prices->n_sizes; i++)
    {
      put_price (prices, prices->across.size[i], prices->along.size[i],
                 i);
      if (prices->turned_across)
        put_price (prices, prices->turned_across[i], prices->turned_along[i],
                   i);
    }
}

static void
raise_row (gint64 *row, const gint64 *first, const gint64 *second, guint n)
{
  for (guint y = 0; y < n; y++)
    {
      const gint64 sum = first[y] + second[y];
      row[y] = MAX (row[y], sum);
    }
}

/* Upright cuts: both parts are narrower and known. */
static void
cut_across (CwCutPrices *prices, guint x)
{
  const Side *side = &prices->across;
  const guint units = side->units[x];
  /* A part of no width stands for taking the next narrower one whole. */
  raise_row (row_of (prices, x), row_of (prices, x - 1),
             row_of (prices, 0), prices->along.n);
  for (guint cut = 1; 2 * side->units[cut] <= units; cut++)
    raise_row (row_of (prices, x), row_of (prices, cut),
               row_of (prices, side->place[units - side->units[cut]]),
               prices->along.n);
}

static void
cut_along (CwCutPrices *prices, gint64 *row)
{
  const Side *side = &prices->along;
  for (guint y = 1; y < side->n; y++)
    {
      const guint units = side->units[y];
      gint64 most = MAX (row[y], row[y - 1]);
      for (guint cut = 1; 2 * side->units[cut] <= units; cut++)
        {
          const gint64 sum
              = row[cut] + row[side->place[units - side->units[cut]]];
          most = MAX (most, sum);
        }
      row[y] = most;
    }
}

gint64
cw_cut_prices_fill (CwCutPrices *prices, const gint64 *price)
{
  for (guint i = 0; i < prices->n_sizes; i++)
    {
      g_assert (price[i] >= 0 && price[i] <= CW_CUT_PRICE_MOST);
      prices->price[i] = price[i];
    }
  put_prices (prices);
  for (guint x = 1; x < prices->across.n; x++)
    {
      cut_across (prices, x);
      cut_along (prices, row_of (prices, x));
    }
  return row_of (prices, prices->across.n - 1)[prices->along.n - 1];
}

gint64
cw_cut_prices_raised (const CwCutPrices *prices, guint index)
{
  const guint across = prices->across.size[index];
  const guint along = prices->along.size[index];
  const gint64 *straight = worth_of_place (prices, across, along);
  if (!prices->turned_across)
    return straight ? *straight : 0;
  const gint64 *turned = worth_of_place (
      prices, prices->turned_across[index], prices->turned_along[index]);
  /* What does not lie one way is only ever cut the other way. */
  if (across == G_MAXUINT || along == G_MAXUINT)
    return turned ? *turned : 0;
  if (prices->turned_across[index] == G_MAXUINT
      || prices->turned_along[index] == G_MAXUINT)
    return straight ? *straight : 0;
  return straight && turned ? MIN (*straight, *turned) : 0;
}

/* Rounded down as blanks are: what fits on the rectangle still does. */
gint64
cw_cut_prices_worth (const CwCutPrices *prices, CwCutSize rectangle)
{
  const Side *across = &prices->across, *along = &prices->along;
  const guint width = units_of (&across->scale,
                                MIN (rectangle.width, across->scale.whole));
  const guint height = units_of (&along->scale,
                                 MIN (rectangle.height, along->scale.whole));
  return row_of (prices, across->place[width])[along->place[height]];
}

/* Whether the rectangle is worth what the blank of size @index is, which just
 * fills it in the table. */
static gboolean
is_blank (const CwCutPrices *prices, guint x, guint y, guint index)
{
  const gint64 *at = &row_of (prices, x)[y];
  if (prices->price[index] != *at)
    return FALSE;
  return at == worth_of_place (prices, prices->across.size[index],
                               prices->along.size[index])
         || (prices->turned_across
             && at == worth_of_place (prices, prices->turned_across[index],
                                      prices->turned_along[index]));
}

static void list_part (const CwCutPrices *prices, guint x, guint y,
                       guint *times);

/* Follows the cut that the rectangle got its worth from. */
static void
list_across (const CwCutPrices *prices, guint x, guint y, guint *times)
{
  const Side *side = &prices->across;
  const gint64 worth = row_of (prices, x)[y];
  for (guint cut = 1; cut <= x && 2 * side->units[cut] <= side->units[x];
       cut++)
    {
      const guint rest = side->place[side->units[x] - side->units[cut]];
      if (row_of (prices, cut)[y] + row_of (prices, rest)[y] != worth)
        continue;
      list_part (prices, cut, y, times);
      list_part (prices, rest, y, times);
      return;
    }
  g_assert_not_reached ();
}

static gboolean
list_along (const CwCutPrices *prices, guint x, guint y, guint *times)
{
  const Side *side = &prices->along;
  const gint64 *row = row_of (prices, x);
  for (guint cut = 1; 2 * side->units[cut] <= side->units[y]; cut++)
    {
      const guint rest = side->place[side->units[y] - side->units[cut]];
      if (row[cut] + row[rest] != row[y])
        continue;
      list_part (prices, x, cut, times);
      list_part (prices, x, rest, times);
      return TRUE;
    }
  return FALSE;
}

static void
list_part (const CwCutPrices *prices, guint x, guint y, guint *times)
{
  const gint64 worth = row_of (prices, x)[y];
  if (worth == 0)
    return;
  /* Nothing is lost by making it as small as its worth allows. */
  while (row_of (prices, x - 1)[y] == worth)
    x--;
  while (row_of (prices, x)[y - 1] == worth)
    y--;
  const guint index = prices->dearest[row_of (prices, x) + y - prices->worth];
  if (is_blank (prices, x, y, index))
    times[index]++;
  else if (!list_along (prices, x, y, times))
    list_across (prices, x, y, times);
}

/* A blank in the corner, and the two rectangles that are left of the panel. */
typedef struct
{
  gint64 worth;
  guint x[2], y[2];
} Corner;

static void
weigh_corner (const CwCutPrices *prices, guint across, guint along,
              Corner *best)
{
  if (worth_of_place (prices, across, along) == NULL)
    return;
  const guint x = prices->across.place[across];
  const guint y = prices->along.place[along];
  const guint all_x = prices->across.n - 1, all_y = prices->along.n - 1;
  const guint rest_x
      = prices->across.place[prices->across.units[all_x] - across];
  const guint rest_y
      = prices->along.place[prices->along.units[all_y] - along];
  const Corner ways[] = { { 0, { rest_x, x }, { all_y, rest_y } },
                          { 0, { all_x, rest_x }, { rest_y, y } } };
  for (guint i = 0; i < 2; i++)
    {
      const gint64 worth = row_of (prices, ways[i].x[0])[ways[i].y[0]]
                           + row_of (prices, ways[i].x[1])[ways[i].y[1]];
      if (worth <= best->worth)
        continue;
      *best = ways[i];
      best->worth = worth;
    }
}

static gboolean
list_corner (const CwCutPrices *prices, guint index, guint *times)
{
  Corner best = { .worth = -1 };
  weigh_corner (prices, prices->across.size[index],
                prices->along.size[index], &best);
  if (prices->turned_across)
    weigh_corner (prices, prices->turned_across[index],
                  prices->turned_along[index], &best);
  if (best.worth < 0)
    return FALSE;
  times[index]++;
  for (guint i = 0; i < 2; i++)
    list_part (prices, best.x[i], best.y[i], times);
  return TRUE;
}

gboolean
cw_cut_prices_list (const CwCutPrices *prices, guint index, guint *times)
{
  memset (times, 0, prices->n_sizes * sizeof (guint));
  if (index != CW_CUT_PRICES_ANY)
    return list_corner (prices, index, times);
  list_part (prices, prices->across.n - 1, prices->along.n - 1, times);
  return TRUE;
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Dimension chains: what stands on them, and where.
 */
#include "cw-dimension-chain.h"

#include <math.h>
#include <string.h>

#include "cw-display-items.h"
#include "cw-length.h"
#include "draw-cases.h"

typedef void (*Chain) (const CwChainDrawing *drawing, const GArray *places,
                       double at, double from);

static GArray *
places_of (const CwLength *lengths, gsize n)
{
  GArray *places = g_array_new (FALSE, FALSE, sizeof (CwLength));

  g_array_append_vals (places, lengths, (guint) n);
  cw_lengths_sort (places);
  return places;
}

static CwDisplayList *
draw (Chain chain, const CwTextStyle *style, double mm_per_unit,
      const GArray *places)
{
  CwDisplayList *list = cw_display_list_new ();
  const CwChainDrawing drawing = { list, style, mm_per_unit };

  chain (&drawing, places, -1000, 0);
  return list;
}

/* What is written along the chain, in order. */
static GPtrArray *
figures (const CwDisplayList *list)
{
  GPtrArray *found = g_ptr_array_new ();

  for (gsize i = 0; i < list->items->len; i++)
    {
      const CwDisplayItem *item = cw_display_list_item (list, i);

      if (item->kind == CW_SHAPE_OP_TEXT)
        g_ptr_array_add (found,
                         (gpointer) cw_display_list_string (
                             list, cw_display_list_text (list, item)->text));
    }
  return found;
}

static CwLength
length_of (const char *figure, const CwTextStyle *style)
{
  g_autoptr (GError) error = NULL;
  CwLength length = 0;

  cw_length_parse (figure, style, &length, &error);
  g_assert_no_error (error);
  return length;
}

/* 1' 4", 5' 3 1/2" … in sixty-fourths of an inch. */
#define IN64(n) ((CwLength) (n) * 396875)

static const CwLength metric_places[]
    = { CW_MM (9000), 0, CW_MM (900), CW_MM (2100), CW_MM (4000), CW_MM (900) };
static const CwLength us_places[]
    = { 0, IN64 (64 * 16), IN64 (64 * 63 + 32), IN64 (64 * 120 + 4),
        IN64 (64 * 354) };

static void
assert_sum (const CwLength *lengths, gsize n, CwUnits units)
{
  const CwTextStyle style = cw_text_style_for_locale (units);
  g_autoptr (GArray) places = places_of (lengths, n);
  g_autoptr (CwDisplayList) list
      = draw (cw_dimension_chain_level, &style, 1, places);
  g_autoptr (GPtrArray) found = figures (list);
  CwLength sum = 0;

  g_assert_cmpuint (found->len, ==, places->len - 1);
  for (guint i = 0; i < found->len; i++)
    {
      const CwLength length = length_of (found->pdata[i], &style);

      g_assert_cmpint (length, ==,
                       g_array_index (places, CwLength, i + 1)
                           - g_array_index (places, CwLength, i));
      sum += length;
    }
  g_assert_cmpint (sum, ==,
                   g_array_index (places, CwLength, places->len - 1)
                       - g_array_index (places, CwLength, 0));
}

/* Where every place is a whole step of the figures, they add up exactly. */
static void
test_adds_up (void)
{
  assert_sum (metric_places, G_N_ELEMENTS (metric_places), CW_UNITS_METRIC);
  assert_sum (us_places, G_N_ELEMENTS (us_places), CW_UNITS_US);
}

static void
assert_figures (const CwLength *lengths, gsize n, CwUnits units,
                const char *const *expected)
{
  const CwTextStyle style = cw_text_style_for_locale (units);
  g_autoptr (GArray) places = places_of (lengths, n);
  g_autoptr (CwDisplayList) list
      = draw (cw_dimension_chain_level, &style, 1, places);
  g_autoptr (GPtrArray) found = figures (list);

  g_assert_cmpuint (found->len, ==, g_strv_length ((char **) expected));
  for (guint i = 0; i < found->len; i++)
    g_assert_cmpstr (found->pdata[i], ==, expected[i]);
}

static void
test_written (void)
{
  static const char *const metric[] = { "900", "1200", "1900", "5000", NULL };
  static const char *const us[] = { "1′ 4″", "3′ 11 1/2″", "4′ 8 9/16″",
                                    "19′ 5 15/16″", NULL };

  assert_figures (metric_places, G_N_ELEMENTS (metric_places),
                  CW_UNITS_METRIC, metric);
  assert_figures (us_places, G_N_ELEMENTS (us_places), CW_UNITS_US, us);
}

/* The places of the ticks: each is a line of 45° about a place on the chain. */
static GArray *
ticks (const CwDisplayList *list, gboolean upright)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (double));
  const CwDisplayItem *item = cw_display_list_item (list, 0);
  const double *numbers = cw_display_list_numbers (list, item);

  g_assert_cmpint (item->style, ==, CW_STYLE_DIMENSION);
  for (guint i = 0; i + 1 < item->n_ops; i += 2, numbers += 4)
    {
      const double across = numbers[2] - numbers[0];
      const double up = numbers[3] - numbers[1];
      const double middle = upright ? (numbers[1] + numbers[3]) / 2
                                    : (numbers[0] + numbers[2]) / 2;

      g_assert_cmpint (list->ops->data[item->first + i], ==, CW_OP_MOVE);
      g_assert_cmpint (list->ops->data[item->first + i + 1], ==, CW_OP_LINE);
      if (fabs (across) > 1e-9 && fabs (across - up) < 1e-9)
        g_array_append_val (found, middle);
    }
  return found;
}

static void
assert_ticks (Chain chain, gboolean upright)
{
  const CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  g_autoptr (GArray) places
      = places_of (metric_places, G_N_ELEMENTS (metric_places));
  g_autoptr (CwDisplayList) list = draw (chain, &style, 20, places);
  g_autoptr (GArray) found = ticks (list, upright);

  g_assert_cmpuint (found->len, ==, places->len);
  for (guint i = 0; i < found->len; i++)
    g_assert_cmpfloat_with_epsilon (
        g_array_index (found, double, i),
        (double) g_array_index (places, CwLength, i) / CW_NM_PER_MM, 1e-6);
}

static void
test_ticks_in_order (void)
{
  assert_ticks (cw_dimension_chain_level, FALSE);
  assert_ticks (cw_dimension_chain_upright, TRUE);
}

/* Level: above the chain and level; upright: left of it, read from the
 * right. Each in the middle of its stretch. */
static void
assert_stands (Chain chain, gboolean upright)
{
  const CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  const CwLength ends[] = { 0, CW_MM (3000) };
  g_autoptr (GArray) places = places_of (ends, 2);
  g_autoptr (CwDisplayList) list = draw (chain, &style, 10, places);
  const CwDisplayItem *item = cw_display_list_item (list, 1);
  const CwDisplayText *text = cw_display_list_text (list, item);

  g_assert_cmpint (item->style, ==, CW_STYLE_DIMENSION_TEXT);
  g_assert_cmpfloat_with_epsilon (upright ? text->y : text->x, 1500, 1e-9);
  g_assert_cmpfloat_with_epsilon (text->angle, upright ? G_PI_2 : 0, 1e-9);
  if (upright)
    g_assert_cmpfloat (text->x, <, -1000);
  else
    g_assert_cmpfloat (text->y, >, -1000);
  g_assert_cmpfloat (text->room_width, <, 3000);
}

static void
test_figures_stand_beside (void)
{
  assert_stands (cw_dimension_chain_level, FALSE);
  assert_stands (cw_dimension_chain_upright, TRUE);
}

/* Two places nearer than a tick is wide: no figure, at no scale. */
static void
test_no_room_no_figure (void)
{
  const CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  const CwLength near[] = { 0, CW_MM (10), CW_MM (3000) };
  g_autoptr (GArray) places = places_of (near, G_N_ELEMENTS (near));
  g_autoptr (CwDisplayList) list
      = draw (cw_dimension_chain_level, &style, 20, places);
  g_autoptr (GPtrArray) found = figures (list);

  g_assert_cmpuint (found->len, ==, 1);
  g_assert_cmpstr (found->pdata[0], ==, "2990");
}

static void
test_sorted_once_each (void)
{
  g_autoptr (GArray) places
      = places_of (metric_places, G_N_ELEMENTS (metric_places));

  g_assert_cmpuint (places->len, ==, G_N_ELEMENTS (metric_places) - 1);
  for (guint i = 1; i < places->len; i++)
    g_assert_cmpint (g_array_index (places, CwLength, i - 1), <,
                     g_array_index (places, CwLength, i));
}

/* Whole drawings: the outer chain says what the inner one adds up to. */
static void
test_house (void)
{
  g_autoptr (CwTakeoff) takeoff = draw_case_house ();
  const CwTextStyle style = cw_text_style_for_locale (CW_UNITS_METRIC);
  g_autoptr (CwDisplayList) list = cw_elevation_drawing (
      draw_case_wall (takeoff), CW_LAYER_DIMENSIONS, &style, 10);
  g_autoptr (GPtrArray) found = figures (list);
  CwLength sum = 0;
  guint i = 0;

  while (i < found->len && sum < CW_MM (9000))
    sum += length_of (found->pdata[i++], &style);
  g_assert_cmpint (sum, ==, CW_MM (9000));
  g_assert_cmpstr (found->pdata[i++], ==, "9000");
  sum = 0;
  while (i < found->len && sum < CW_MM (4500))
    sum += length_of (found->pdata[i++], &style);
  g_assert_cmpint (sum, ==, CW_MM (4500));
  g_assert_cmpstr (found->pdata[i++], ==, "4500");
  g_assert_cmpuint (i, ==, found->len);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
#define ADD(path, test) g_test_add_func ("/draw/dimension-chain/" path, test)
  ADD ("adds-up", test_adds_up);
  ADD ("written", test_written);
  ADD ("ticks-in-order", test_ticks_in_order);
  ADD ("figures-stand-beside", test_figures_stand_beside);
  ADD ("no-room-no-figure", test_no_room_no_figure);
  ADD ("sorted-once-each", test_sorted_once_each);
  ADD ("house", test_house);
  return g_test_run ();
}

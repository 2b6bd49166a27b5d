/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every quantity of the takeoff stands on the papers with the same figure.
 */
#include <math.h>
#include <string.h>

#include "paper-house.h"
#include "paper-pages.h"

/* Written here again, apart from the program's own: how an amount is shown. */
static const struct
{
  const char *unit;
  int decimals;
  const char *us_unit;
  double us_size;
} shown[] = {
  { "m", 2, "ft", 0.3048 },       { "m²", 2, "ft²", 0.09290304 },
  { "L", 1, "gal", 3.785411784 }, { "kg", 1, "lb", 0.45359237 },
  { "%", 1, "%", 1 },             { "", 0, "", 1 },
};

static char *
expected_amount (const CwQuantity *quantity, const CwTextStyle *style)
{
  const gboolean is_us = style->units == CW_UNITS_US;
  for (guint i = 0; i < G_N_ELEMENTS (shown); i++)
    {
      if (!g_str_equal (shown[i].unit, quantity->type->unit))
        continue;
      const int decimals = is_us ? MIN (shown[i].decimals, 1)
                                 : shown[i].decimals;
      char number[64];
      g_snprintf (number, sizeof number, "%.*f", decimals,
                  quantity->amount / (is_us ? shown[i].us_size : 1));
      g_auto (GStrv) parts = g_strsplit (number, ".", 2);
      g_autofree char *signed_number = g_strjoinv (style->decimal, parts);
      const char *unit = is_us ? shown[i].us_unit : shown[i].unit;
      return g_strconcat (signed_number, *unit ? " " : "", unit, NULL);
    }
  g_error ("%s has an unknown unit", quantity->type->key);
}

static char *
label_of (const CwQuantity *quantity)
{
  return quantity->variant ? g_strdup_printf ("%s: %s", quantity->type->label,
                                              quantity->variant)
                           : g_strdup (quantity->type->label);
}

/* Noughts are named together in one sentence. */
static gboolean
stands_as_nought (const char *text, const char *label)
{
  const char *from = strstr (text, "Nought: ");
  if (!from)
    return FALSE;
  g_autofree char *sentence = g_strndup (from, strcspn (from, "."));
  return strstr (sentence, label) != NULL;
}

static void
check_line (const char *text, const CwQuantity *quantity,
            const CwTextStyle *style)
{
  g_autofree char *label = label_of (quantity);
  g_autofree char *amount = expected_amount (quantity, style);
  g_autofree char *line = g_strdup_printf ("%s %s ", label, amount);
  if (fabs (quantity->amount) < 1e-12 && stands_as_nought (text, label))
    return;
  if (!strstr (text, line))
    g_error ("“%s” is not in: %s", line, text);
}

static void
check_lines (const char *text, const GPtrArray *quantities,
             const CwTextStyle *style)
{
  g_assert_cmpuint (quantities->len, >, 20);
  for (guint i = 0; i < quantities->len; i++)
    check_line (text, quantities->pdata[i], style);
}

static void
check_orders (const char *text, const GPtrArray *quantities)
{
  guint n = 0;
  for (guint i = 0; i < quantities->len; i++)
    {
      const CwQuantity *quantity = quantities->pdata[i];
      if (!isfinite (quantity->order_amount))
        continue;
      g_autofree char *line
          = g_strdup_printf ("%s %.0f %.0f %s", quantity->type->label,
                             quantity->amount, quantity->order_amount,
                             quantity->order_unit);
      if (!strstr (text, line))
        g_error ("“%s” is not in: %s", line, text);
      n++;
    }
  g_assert_cmpuint (n, >=, 7);
}

static void
check_house (const CwTextStyle *style)
{
  const PaperHouse house = { .units = style->units, .n_elevations = 3,
                             .name = "Fig House", .count = 2 };
  g_autoptr (CwTakeoff) takeoff = paper_house_takeoff (&house);
  g_autoptr (PaperDocument) document = paper_read_styled (takeoff, style);
  int from = paper_find_section (document, "Elevation Wall 1", 0);
  g_autofree char *summary = paper_text (document, 0, from);
  check_lines (summary, takeoff->quantities, style);
  check_orders (summary, takeoff->quantities);
  for (guint i = 0; i < takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = takeoff->walls->pdata[i];
      g_autofree char *next = g_strdup_printf ("Elevation Wall %u", i + 2);
      const int to = paper_find_section (document, next, from);
      g_autofree char *text = paper_text (document, from, to);
      check_lines (text, wall->quantities, style);
      from = to;
    }
}

static void
test_metric (void)
{
  const CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  check_house (&style);
}

static void
test_us (void)
{
  const CwTextStyle style = cw_text_style_plain (CW_UNITS_US);
  check_house (&style);
}

static void
test_comma (void)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  g_strlcpy (style.decimal, ",", sizeof style.decimal);
  check_house (&style);
}

static void
check_row (const char *text, const char *row)
{
  if (!strstr (text, row))
    g_error ("“%s” is not in: %s", row, text);
}

static void
test_openings (void)
{
  const PaperHouse house = { .units = CW_UNITS_METRIC, .n_elevations = 3,
                             .name = "Fig House", .count = 2 };
  g_autoptr (CwTakeoff) takeoff = paper_house_takeoff (&house);
  g_autoptr (PaperDocument) document = paper_read (takeoff);
  const int to = paper_find_section (document, "Elevation Wall 1", 0);
  g_autofree char *text = paper_text (document, 0, to);
  /* Three windows of the mark, two walls each. 1.2 × 1.4 m. */
  check_row (text, "W1 Window 6 1200 × 1400 mm Level – 90 mm 1.68 m² Wall 1,");
  check_row (text, "o2 Door 2 1000 × 2100 mm Level – ");
  /* 1.5 × 1.5 m and half a circle of 0.75 m: 2.25 + 0.8836 m². */
  check_row (text,
             "o3 Arch 2 1500 × 1500 mm Semicircular 750 mm 0 mm 3.13 m² Wall");
}

/* Millimetres to one place, as the plain style writes them. */
static double
tenths (CwLength length)
{
  return round ((double) length / CW_NM_PER_MM * 10) / 10;
}

static void
test_pieces (void)
{
  const PaperHouse house = { .units = CW_UNITS_METRIC, .n_elevations = 1,
                             .name = "Fig House" };
  g_autoptr (CwTakeoff) takeoff = paper_house_takeoff (&house);
  g_autoptr (PaperDocument) document = paper_read (takeoff);
  const CwWallTakeoff *wall = takeoff->walls->pdata[0];
  const int n = poppler_document_get_n_pages (document);
  const int from = paper_find_section (document, "Elevation Wall 1", 0);
  g_autofree char *text = paper_text (document, from, n);
  g_assert_cmpuint (wall->layout->pieces->len, >, 10);
  for (guint i = 0; i < wall->layout->pieces->len; i++)
    {
      const CwPiece *piece
          = &g_array_index (wall->layout->pieces, CwPiece, i);
      g_autofree char *row = g_strdup_printf (
          " %u-%u %g %g %.2f m² ", piece->course, piece->number,
          tenths (cw_box_width (&piece->box)),
          tenths (cw_box_height (&piece->box)), piece->area);
      check_row (text, row);
    }
}

/* What was traced on a sheet without a scale has no true figures: the paper
 * must not keep that to itself. */
static void
test_sheet_without_scale (void)
{
  const PaperHouse house = { .units = CW_UNITS_METRIC, .n_elevations = 1 };
  g_autoptr (CwTakeoff) sound = paper_house_takeoff (&house);
  g_autoptr (CwNode) sheet = cw_node_new (&cw_sheet_type);
  cw_node_put_text (sheet, "id", "s1");
  cw_node_put_text (sheet, "name", "A-201");
  g_autoptr (CwNode) project = cw_node_copy (&sound->project->node);
  g_autoptr (CwList) sheets = cw_list_new (&sheet, 1);
  cw_node_set_list (project, CW_PROJECT_SHEETS, sheets);
  g_autoptr (CwTakeoff) takeoff
      = cw_takeoff_new ((const CwProject *)project, NULL, NULL);

  g_autoptr (PaperDocument) before = paper_read (sound);
  g_autoptr (PaperDocument) after = paper_read (takeoff);
  g_autofree char *without = paper_text (before, 0, 2);
  g_autofree char *with = paper_text (after, 0, 2);
  g_assert_null (strstr (without, "has no scale"));
  g_assert_nonnull (strstr (with, "Sheet A-201 has no scale"));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/report/takeoff/figures/sheet-without-scale",
                   test_sheet_without_scale);
  g_test_add_func ("/report/takeoff/figures/metric", test_metric);
  g_test_add_func ("/report/takeoff/figures/us", test_us);
  g_test_add_func ("/report/takeoff/figures/comma", test_comma);
  g_test_add_func ("/report/takeoff/figures/openings", test_openings);
  g_test_add_func ("/report/takeoff/figures/pieces", test_pieces);
  return g_test_run ();
}

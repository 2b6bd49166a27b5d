/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A drawing is true to the scale that is written beside it: measured on the
 * page as a reader with a ruler would.
 */
#include <math.h>
#include <string.h>

#include "cw-length.h"
#include "paper-house.h"
#include "paper-pages.h"

#define MM_PER_POINT (25.4 / 72)
#define TOLERANCE 0.2       /* mm on paper */
#define OUTLINE 1.4         /* points: half a stroke stands out at each end */
#define BAR_OUTLINE 0.9

/* The number after the colon, or feet over inches. */
static double
ratio_said (const char *text)
{
  const char *at = strstr (text, "Scale ");
  g_assert_nonnull (at);
  at += strlen ("Scale ");
  if (g_str_has_prefix (at, "1:"))
    return g_ascii_strtod (at + 2, NULL);
  const CwTextStyle style = cw_text_style_plain (CW_UNITS_US);
  g_autofree char *paper = g_strndup (at, strcspn (at, "="));
  CwLength inches;
  g_assert_true (cw_length_parse (g_strstrip (paper), &style, &inches, NULL));
  g_assert_true (g_str_has_prefix (strchr (at, '='), "= 1′-0″"));
  return (double) CW_NM_PER_FOOT / (double) inches;
}

/* "… Scale 1:50 0 0.5 1.0 1.5 2.0 m": the last of the bar's figures, in mm. */
static double
bar_said (const char *text, CwUnits units)
{
  const char *unit = units == CW_UNITS_US ? " ft" : " m";
  const char *from = strstr (text, "Scale ");
  const char *end = strstr (from, unit);
  g_assert_nonnull (end);
  while (end > from && end[-1] != ' ')
    end--;
  return g_ascii_strtod (end, NULL) * (units == CW_UNITS_US ? 304.8 : 1000);
}

static void
assert_true_length (double points, double mm, double ratio, const char *what)
{
  const double on_paper = points * MM_PER_POINT, expected = mm / ratio;
  if (fabs (on_paper - expected) > TOLERANCE)
    g_error ("%s: %.3f mm on paper, at 1:%g it must be %.3f", what, on_paper,
             ratio, expected);
}

static void
check (CwUnits units, guint width, guint height, double expected)
{
  double top;
  g_autoptr (CwTakeoff) takeoff = paper_plain_wall (units, width, height);
  g_autoptr (PaperDocument) document = paper_read (takeoff);
  const int page = paper_find_section (document, "Elevation Plain", 0);
  g_autofree char *text = paper_text (document, page, page + 1);
  const double ratio = ratio_said (text);
  g_assert_cmpfloat_with_epsilon (ratio, expected, 1e-9);
  const double across = paper_longest_run (document, page, FALSE, 0, &top);
  const double up = paper_longest_run (document, page, TRUE, 0, NULL);
  assert_true_length (across - OUTLINE, width, ratio, "width");
  assert_true_length (up - OUTLINE, height, ratio, "height");
  const double bottom = top + height / ratio / MM_PER_POINT + 10;
  const double bar = paper_longest_run (document, page, FALSE, bottom, NULL);
  assert_true_length (bar - BAR_OUTLINE, bar_said (text, units), ratio,
                      "scale bar");
}

static void
test_metric (void)
{
  check (CW_UNITS_METRIC, 5000, 2500, 50);
  check (CW_UNITS_METRIC, 9000, 5200, 100);
  check (CW_UNITS_METRIC, 2600, 1200, 20);
}

static void
test_us (void)
{
  check (CW_UNITS_US, 9144, 2743, 48);
  check (CW_UNITS_US, 24000, 6000, 128);
  check (CW_UNITS_US, 3600, 2400, 24);
}

static void
test_large (void)
{
  check (CW_UNITS_METRIC, 60000, 9000, 500);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/report/takeoff/scale/metric", test_metric);
  g_test_add_func ("/report/takeoff/scale/us", test_us);
  g_test_add_func ("/report/takeoff/scale/large-wall", test_large);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The lifting equation, fasteners and wind against published figures. The
 * tolerance is absolute, but for limits of lifting relative.
 */
#include <math.h>

#include "cw-case-table.h"
#include "cw-fastener-loads.h"
#include "cw-lifting-equation.h"

#define MM_PER_INCH 25.4
#define MPA_PER_KSI 6.894757293

static double
number (char **words, guint index)
{
  g_assert_cmpuint (index, <, g_strv_length (words));
  return g_ascii_strtod (words[index], NULL);
}

static double
limit_in (char **words, double cm)
{
  const CwLift lift = {
    .horizontal = number (words, 2) * cm,
    .vertical = number (words, 3) * cm,
    .origin = number (words, 4) * cm,
    .distance = number (words, 5) * cm,
    .angle = number (words, 6),
    .frequency = number (words, 7),
    .hours = (int) number (words, 0),
    .us = cm > 1,
    .grip = g_str_equal (words[1], "good")   ? CW_GRIP_GOOD
            : g_str_equal (words[1], "poor") ? CW_GRIP_POOR
                                             : CW_GRIP_FAIR,
  };

  return cw_lifting_limit (&lift);
}

static CwExposure
exposure_of (const char *word)
{
  return (CwExposure) (*word - 'B');
}

static CwNode *
guide (char **words)
{
  CwNode *wind = cw_node_new (&cw_wind_type);

  cw_node_put (wind, "basis", CW_WIND_GUIDE);
  cw_node_put (wind, "speed",
               (CwDecimal) (number (words, 0) * 0.44704 * 1e6 + 0.5));
  cw_node_put (wind, "exposure", exposure_of (words[1]));
  cw_node_put (wind, "mean-height",
               (CwLength) number (words, 2) * CW_NM_PER_FOOT);
  if (words[3])
    cw_node_put (wind, "zone", (gint64) number (words, 3));
  return wind;
}

static double
wind_psf (char **words, gboolean on_wall)
{
  g_autoptr (CwNode) node = guide (words);
  const CwWind *wind = (const CwWind *) node;

  return (on_wall ? cw_wind_pressure (wind, 0.5)
                  : cw_wind_velocity_pressure (wind))
         / CW_PA_PER_PSF;
}

/* lb of a screw an inch deep in a wood stud, for the short time of a gust. */
static double
held_in_wind (char **words)
{
  g_autoptr (CwNode) node = cw_node_new (&cw_fastener_type);

  cw_node_put (node, "gravity",
               (CwDecimal) (number (words, 0) * 1e6 + 0.5));
  cw_node_put (node, "diameter",
               (CwLength) (number (words, 1) * CW_NM_PER_INCH + 0.5));
  cw_node_put (node, "penetration", CW_INCHES (1));
  cw_node_put (node, "duration", CW_DECIMAL (16) / 10);
  return cw_fastener_allowable ((const CwFastener *) node, CW_STUDS_WOOD)
         / CW_N_PER_LBF;
}

static double
work_out (const char *what, char **words)
{
  if (g_str_equal (what, "rwl-in"))
    return limit_in (words, 2.54);
  if (g_str_equal (what, "rwl-cm"))
    return limit_in (words, 1);
  if (g_str_equal (what, "fm"))
    return cw_lifting_frequency_multiplier (
        number (words, 0), (int) number (words, 1),
        g_str_equal (words[2], "low"));
  if (g_str_equal (what, "withdrawal"))
    return cw_withdrawal_from_wood (number (words, 0),
                                    number (words, 1) * MM_PER_INCH)
           * MM_PER_INCH / CW_N_PER_LBF;
  if (g_str_equal (what, "withdrawal-of-wind"))
    return held_in_wind (words);
  /* 2850 G² D of a screw 1 in thick. */
  if (g_str_equal (what, "gravity-squared"))
    return cw_withdrawal_from_wood (number (words, 0), MM_PER_INCH)
           * MM_PER_INCH / CW_N_PER_LBF / 2850;
  if (g_str_equal (what, "pull-out"))
    return cw_pull_out_from_steel (number (words, 1) * MM_PER_INCH,
                                   number (words, 0) * MM_PER_INCH,
                                   45 * MPA_PER_KSI, 3)
           / CW_N_PER_LBF;
  if (g_str_equal (what, "kz"))
    return cw_wind_exposure_coefficient (exposure_of (words[0]),
                                         number (words, 1) * 0.3048);
  if (g_str_equal (what, "gcp"))
    return cw_wind_wall_suction ((int) number (words, 0),
                                 number (words, 1) * 0.09290304);
  g_assert_true (g_str_equal (what, "qh") || g_str_equal (what, "suction"));
  return wind_psf (words, g_str_equal (what, "suction"));
}

static void
test_row (gconstpointer data)
{
  const CwCase *row = data;
  g_auto (GStrv) words = g_strsplit (row->columns[2], " ", -1);
  const double expected = g_ascii_strtod (row->columns[3], NULL);
  const double got = work_out (row->columns[1], words);
  double tolerance = g_ascii_strtod (row->columns[4], NULL);

  if (g_str_has_prefix (row->columns[1], "rwl"))
    tolerance *= MAX (1, expected);
  g_test_message ("line %u: %.6g, expected %g", row->line, got, expected);
  g_assert_cmpfloat_with_epsilon (got, expected, tolerance);
}

/* F-26, derived: 31.83 psf and 87 lb a screw: 2.733 ft² for each. */
static void
test_screws (void)
{
  g_autoptr (CwNode) node = cw_node_new (&cw_fastener_type);
  const double pounds
      = cw_fastener_allowable ((const CwFastener *) node, CW_STUDS_STEEL)
        / CW_N_PER_LBF;

  g_assert_cmpfloat_with_epsilon (pounds, 87, 0.5);
  g_assert_cmpfloat_with_epsilon (pounds / 31.83, 2.733, 0.01);
}

/* G-25, published (DHHS (NIOSH) 94-110 pp. 21, 26): both ends are looked at,
 * and the lower limit holds. */
static void
test_lower_end (void)
{
  static const double heights[][2] = { { 400, 1500 }, { 1600, 700 } };

  for (guint i = 0; i < G_N_ELEMENTS (heights); i++)
    {
      g_autoptr (CwNode) node = cw_node_new (&cw_lifting_type);
      const CwLifting *lifting = (const CwLifting *) node;

      cw_node_put (node, "height", (CwLength) (heights[i][0] * 1e6));
      cw_node_put (node, "to-height", (CwLength) (heights[i][1] * 1e6));
      const CwLift begins = cw_lifting_end (lifting, CW_UNITS_METRIC, FALSE);
      const CwLift ends = cw_lifting_end (lifting, CW_UNITS_METRIC, TRUE);
      const double first = cw_lifting_limit (&begins);
      const double last = cw_lifting_limit (&ends);

      g_assert_cmpfloat (fabs (first - last), >, 0.1);
      g_assert_cmpfloat_with_epsilon (
          cw_lifting_limit_of (lifting, CW_UNITS_METRIC), MIN (first, last),
          1e-12);
    }
}

int
main (int argc, char **argv)
{
  g_autoptr (GPtrArray) rows = NULL;

  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  rows = cw_case_table_load ("estimate/loads.tsv", 6);
  for (guint i = 0; i < rows->len; i++)
    {
      const CwCase *row = rows->pdata[i];
      g_autofree char *path
          = g_strdup_printf ("/loads/%s/%s/%u", row->columns[1],
                             row->columns[0], row->line);

      g_test_add_data_func (path, row, test_row);
    }
  g_test_add_func ("/loads/screws", test_screws);
  g_test_add_func ("/loads/lower-end/G-25", test_lower_end);
  return g_test_run ();
}

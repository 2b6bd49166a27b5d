/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Random walls, openings that touch, overlap and stick out among them,
 * against the slow estimator.
 */
#include <geos_c.h>

#include "estimate-cases.h"
#include "random-elevation.h"
#include "slow-estimate.h"

#define LIMIT 2.5
/* What is lost by flattening a head into 1200 pieces is 3e-6 of its length. */
#define TOLERANCE 5e-6

static CwTakeoff *
takeoff_of (CwNode *elevation, const char *rule)
{
  g_autoptr (GPtrArray) elevations = g_ptr_array_new ();
  g_autofree char *settings
      = g_strdup_printf ("measure.rule=%s measure.limit=2.5", rule);
  g_autoptr (CwProject) project = NULL;

  g_ptr_array_add (elevations, elevation);
  project = case_project_of (elevations, settings);
  return cw_takeoff_new (project, NULL, NULL);
}

static void
compare (const CwTakeoff *takeoff, const char *key, double expected)
{
  double amount = case_amount (takeoff, "e1", key);

  if (ABS (amount - expected) > TOLERANCE * MAX (1, expected))
    g_error ("%s is %.9f, by the slow estimator %.9f", key, amount, expected);
}

static void
compare_areas (CwNode *elevation, const CwTakeoff *net,
               const SlowEstimate *slow)
{
  g_autoptr (CwTakeoff) through = takeoff_of (elevation, "through");
  g_autoptr (CwTakeoff) half = takeoff_of (elevation, "half");

  compare (net, "wall.gross", slow->gross);
  compare (net, "opening.area", slow->openings);
  compare (net, "unclad.area", slow->unclad);
  compare (net, "wall.net", slow->net);
  compare (net, "wall.measured", slow->net);
  compare (through, "wall.measured", slow->through);
  compare (half, "wall.measured", slow->half);
}

static void
compare_lengths (const CwTakeoff *net, const SlowEstimate *slow)
{
  compare (net, "edge.base", slow->edges[CW_EDGE_BASE]);
  compare (net, "edge.rake", slow->edges[CW_EDGE_RAKE]);
  compare (net, "edge.eave", slow->edges[CW_EDGE_EAVE]);
  compare (net, "edge.outside-corner", slow->edges[CW_EDGE_OUTSIDE_CORNER]);
  compare (net, "edge.abutment", slow->edges[CW_EDGE_ABUTMENT]);
  if (slow->doubtful)
    return;
  compare (net, "opening.head", slow->head);
  compare (net, "opening.jamb", slow->jamb);
  compare (net, "opening.sill", slow->sill);
  compare (net, "reveal.area", (slow->head + slow->jamb + slow->sill) * 0.09);
}

static void
test_random_walls (void)
{
  g_autoptr (GRand) random = g_rand_new_with_seed (20261125);
  guint n = g_getenv ("CW_LONG") ? 1000 : 25;
  guint n_sure = 0;

  for (guint i = 0; i < n; i++)
    {
      g_autoptr (CwNode) elevation = random_elevation (random, "e1", FALSE);
      g_autoptr (CwTakeoff) net = takeoff_of (elevation, "net");
      SlowEstimate slow
          = slow_estimate ((const CwElevation *) elevation, LIMIT);

      g_test_message ("wall %u", i);
      compare_areas (elevation, net, &slow);
      compare_lengths (net, &slow);
      n_sure += !slow.doubtful;
    }
  g_assert_cmpuint (n_sure, >, n / 2);
}

int
main (int argc, char *argv[])
{
  int result;

  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  initGEOS (NULL, NULL);
  g_test_add_func ("/estimate/random-walls", test_random_walls);
  result = g_test_run ();
  finishGEOS ();
  return result;
}

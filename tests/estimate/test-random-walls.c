/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Random walls, openings that touch, overlap and stick out among them,
 * against the slow estimator.
 */
#include <geos_c.h>

#include "estimate-cases.h"
#include "slow-estimate.h"

/* Few places, so that sides lie on one another now and then. */
#define GRID CW_MM (250)
#define LIMIT 2.5
#define REVEAL CW_MM (90)
/* What is lost by flattening a head into 1200 pieces is 3e-6 of its length. */
#define TOLERANCE 5e-6

static CwLength
random_length (GRand *random, int from, int to)
{
  return GRID * g_rand_int_range (random, from, to + 1);
}

static void
put_random_head (GRand *random, CwNode *arch, CwLength width)
{
  CwArchHead head = g_rand_int_range (random, CW_ARCH_SEMICIRCULAR,
                                      CW_ARCH_POINTED + 1);
  CwLength rise = width / 2;

  if (head == CW_ARCH_SEGMENTAL)
    rise = width / g_rand_int_range (random, 2, 8);
  if (head == CW_ARCH_POINTED)
    rise += random_length (random, 0, 3);
  if (head == CW_ARCH_SEMI_ELLIPTICAL)
    rise = random_length (random, 1, 4);
  cw_node_put (arch, "head", head);
  cw_node_put (arch, "rise", rise);
}

static CwNode *
random_opening (GRand *random, guint index, CwLength width, CwLength height)
{
  static const CwNodeType *const types[]
      = { &cw_window_type, &cw_door_type, &cw_arch_type };
  const CwNodeType *type = types[g_rand_int_range (random, 0, 3)];
  CwNode *opening = cw_node_new (type);
  CwLength across = random_length (random, 2, 8);
  g_autofree char *id = g_strdup_printf ("o%u", index);

  cw_node_put_text (opening, "id", id);
  cw_node_put (opening, "x", random_length (random, -1, width / GRID));
  cw_node_put (opening, "y", type == &cw_door_type
                                 ? 0
                                 : random_length (random, 0, height / GRID));
  cw_node_put (opening, "width", across);
  cw_node_put (opening, "height", random_length (random, 2, 8));
  cw_node_put (opening, "reveal", REVEAL);
  if (type == &cw_arch_type)
    put_random_head (random, opening, across);
  return opening;
}

static CwNode *
random_unclad (GRand *random, CwLength width)
{
  CwLength right = random_length (random, 1, width / GRID);
  CwLength top = random_length (random, 1, 5);
  const CwCorner corners[]
      = { { { 0, 0 } }, { { right, 0 } }, { { right, top } }, { { 0, top } } };
  g_autoptr (CwList) list
      = cw_corners_to_list (corners, G_N_ELEMENTS (corners));
  CwNode *unclad = cw_node_new (&cw_unclad_type);

  cw_node_put_text (unclad, "id", "u1");
  cw_node_set_list (unclad, CW_UNCLAD_CORNERS, list);
  return unclad;
}

static CwNode *
random_elevation (GRand *random)
{
  CwLength width = random_length (random, 12, 60);
  CwLength left = random_length (random, 10, 24);
  CwLength right = random_length (random, 10, 24);
  CwLength apex = MAX (left, right) + random_length (random, 1, 12);
  const CwCorner corners[]
      = { { { 0, 0 }, 0, CW_EDGE_BASE },
          { { width, 0 }, 0, CW_EDGE_OUTSIDE_CORNER },
          { { width, right }, 0, CW_EDGE_RAKE },
          { { width / 3, apex }, 0, CW_EDGE_EAVE },
          { { 0, left }, 0, CW_EDGE_ABUTMENT } };
  g_autoptr (GPtrArray) items
      = g_ptr_array_new_with_free_func (cw_node_unref);
  guint n = g_rand_int_range (random, 0, 8);

  for (guint i = 0; i < n; i++)
    g_ptr_array_add (items, random_opening (random, i, width, left));
  if (g_rand_boolean (random))
    g_ptr_array_add (items, random_unclad (random, width));
  return case_elevation_of ("e1", corners, G_N_ELEMENTS (corners), items);
}

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
      g_autoptr (CwNode) elevation = random_elevation (random);
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

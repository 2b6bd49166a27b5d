/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Buildups that list several panels: the cheapest mix, held against what
 * arithmetic knows and against all the ways there are.
 */
#include "panel-plan-checker.h"

#include <math.h>

#include "estimate-cases.h"

/* A panel of the buildup beside the usual one of 2400 × 600. */
typedef struct
{
  double length, height;     /* mm; 0: none */
  double price;
  double thickness;          /* mm; 0: as the first */
} Other;

static void
add_panel (CwNode *buildup, const CwPanel *first, const Other *other)
{
  g_autoptr (CwNode) panel = cw_node_copy (&first->node);
  const CwList *former = ((CwBuildup *) buildup)->panels;
  g_autoptr (GPtrArray) all = g_ptr_array_new ();
  g_autoptr (CwList) panels = NULL;

  cw_node_put (panel, "length", (CwLength) (other->length * CW_NM_PER_MM));
  cw_node_put (panel, "height", (CwLength) (other->height * CW_NM_PER_MM));
  cw_node_put (panel, "price", CW_DECIMAL (llround (other->price)));
  if (other->thickness > 0)
    cw_node_put (panel, "thickness",
                 (CwLength) (other->thickness * CW_NM_PER_MM));
  for (gsize i = 0; i < cw_list_length (former); i++)
    g_ptr_array_add (all, (gpointer) cw_list_at (former, i));
  g_ptr_array_add (all, panel);
  panels = cw_list_new ((CwNode *const *) all->pdata, all->len);
  cw_node_set_list (buildup, CW_BUILDUP_PANELS, panels);
}

static CwProject *
project_with (const char *walls, const char *settings, const Other *others,
              guint n)
{
  g_autoptr (CwProject) plain = case_project (walls, settings);
  const CwNode *former = cw_list_at (plain->buildups, 0);
  g_autoptr (CwNode) buildup = cw_node_copy (former);
  const CwPanel *first = cw_list_at (((CwBuildup *) former)->panels, 0);

  for (guint i = 0; i < n; i++)
    if (others[i].length > 0)
      add_panel (buildup, first, &others[i]);
  return (CwProject *) cw_node_replace (&plain->node, former, buildup);
}

static guint
n_of (const CwTakeoff *takeoff, guint panel)
{
  return panel < takeoff->stocks->len
             ? ((const CwPanelStock *) takeoff->stocks->pdata[panel])->n_panels
             : 0;
}

/* Kerf 4. The usual panel is the first figure, the other the second. */
static const struct
{
  const char *name, *walls, *settings;
  Other other;
  guint usual, others, least;
} known[] = {
  { "short-for-the-rest", "3.001x0.6", "panel.price=40",
    { 1200, 600, 20, 0 }, 1, 1, 2 },
  /* 598 + 4 + 598 = 1200. */
  { "two-on-a-short-one", "3.001x0.6 *2", "panel.price=40",
    { 1200, 600, 20, 0 }, 2, 1, 3 },
  { "two-by-area-without-prices", "3.001x0.6 *2", "", { 1200, 600, 0, 0 }, 2,
    1, 3 },
  { "one-price-is-none", "3.001x0.6 *2", "panel.price=40",
    { 1200, 600, 0, 0 }, 2, 1, 3 },
  { "short-but-dear", "3.001x0.6 *2", "panel.price=40", { 1200, 600, 41, 0 },
    3, 0, 3 },
  { "as-dear-as-the-usual", "3.001x0.6 *2", "panel.price=40",
    { 1200, 600, 40, 0 }, 3, 0, 3 },
  /* 1498 + 4 + 1498 = 3000: two walls' rests on one long panel. */
  { "long-for-two", "3.901x0.6 *2", "panel.price=40", { 3000, 600, 50, 0 }, 2,
    1, 3 },
  { "long-but-dear", "3.901x0.6 *2", "panel.price=40", { 3000, 600, 81, 0 },
    4, 0, 3 },
  /* Three of 1198: two on a usual panel, one on a short one. */
  { "usual-and-short", "3.601x0.6 *3", "panel.price=40",
    { 1200, 600, 21, 0 }, 4, 1, 5 },
  { "three-short", "3.601x0.6 *3", "panel.price=40", { 1200, 600, 13, 0 }, 3,
    3, 5 },
  { "low-for-the-top", "2.4x0.9", "panel.price=40", { 2400, 300, 25, 0 }, 1, 1,
    2 },
  { "too-low", "2.4x0.904", "panel.price=40", { 2400, 300, 25, 0 }, 2, 0, 2 },
  { "of-other-thickness", "3.001x0.6 *2", "panel.price=40",
    { 1200, 600, 20, 60 }, 3, 0, 3 },
  { "by-wall", "3.001x0.6 *2", "panel.price=40 setting-out.offcuts=elevation",
    { 1200, 600, 20, 0 }, 2, 2, 4 },
  { "each-by-itself", "3.001x1.203",
    "panel.price=40 setting-out.offcuts=none", { 1200, 600, 20, 0 }, 2, 2,
    4 },
  { "by-course", "3.001x1.203", "panel.price=40 setting-out.offcuts=course",
    { 1200, 600, 20, 0 }, 2, 2, 4 },
  /* Out of the usual panel's notch comes the small wall, out of the short
   * panel the rest: 598 × 600. */
  { "beside-a-notch", "2.4x0.6 window:1x0.4@0,0.2; 0.996x0.396; 3.001x0.6",
    "panel.price=40", { 1200, 600, 20, 0 }, 2, 1, 3 },
  { "upright", "0.6x3.001 *2",
    "panel.price=40 setting-out.run=vertical setting-out.offcuts=project",
    { 1200, 600, 20, 0 }, 2, 1, 3 },
};

static void
test_known (gconstpointer data)
{
  const guint i = GPOINTER_TO_UINT (data);
  g_autoptr (CwProject) project
      = project_with (known[i].walls, known[i].settings, &known[i].other, 1);
  g_autoptr (CwTakeoff) takeoff = settled_takeoff (project, NULL);

  check_panel_plans (takeoff);
  g_assert_cmpuint (n_of (takeoff, 0), ==, known[i].usual);
  g_assert_cmpuint (n_of (takeoff, 1), ==, known[i].others);
  g_assert_cmpuint (panels_used (takeoff), ==,
                    known[i].usual + known[i].others);
  g_assert_cmpuint (panels_needed (takeoff), ==, known[i].least);
}

/* 2 × 2400 and 1 × 1200, one to spare of each: ordered, weighed and piled by
 * kind. */
static void
test_order (void)
{
  const Other other = { 1200, 600, 20, 0 };
  g_autoptr (CwProject) project = project_with (
      "3.001x0.6 *2",
      "panel.price=40 panel.spare=1 panel.mass=43 panel.per-pallet=20 "
      "panel.pallet-length=2400 panel.pallet-width=1200",
      &other, 1);
  g_autoptr (CwTakeoff) takeoff = settled_takeoff (project, NULL);
  const double area = 2 * 2.4 * 0.6 + 1.2 * 0.6;

  case_assert_near (case_amount (takeoff, NULL, "panel.order"), 3 + 2, 1e-12);
  case_assert_near (case_amount (takeoff, NULL, "pallet.count"), 2, 1e-12);
  case_assert_near (case_amount (takeoff, NULL, "staging.area"),
                    2 * 2.4 * 1.2, 1e-9);
  case_assert_near (case_amount (takeoff, NULL, "panel.waste"),
                    100 * (1 - 2 * 2.998 * 0.6 / area), 1e-9);
}

/* Rests of walls 600 mm high: all ways to put them on panels of up to three
 * lengths, worked out over all sets of them. */
typedef struct
{
  guint n;
  CwLength lengths[7];
  CwLength panels[3];
  double prices[3];
} Lengths;

static double
cheapest_panel (const Lengths *all, guint set)
{
  double best = INFINITY;
  CwLength sum = 0;

  for (guint i = 0; i < all->n; i++)
    if (set >> i & 1)
      sum += all->lengths[i] + CW_MM (4);
  for (guint i = 0; i < 3; i++)
    if (sum <= all->panels[i] + CW_MM (4))
      best = MIN (best, all->prices[i]);
  return best;
}

static double
cheapest_of_all (const Lengths *all)
{
  const guint n_sets = 1u << all->n;
  g_autofree double *best = g_new0 (double, n_sets);

  for (guint set = 1; set < n_sets; set++)
    {
      best[set] = INFINITY;
      for (guint part = set; part > 0; part = (part - 1) & set)
        best[set] = MIN (best[set],
                         cheapest_panel (all, part) + best[set & ~part]);
    }
  return best[n_sets - 1];
}

static double
cost_of (const CwTakeoff *takeoff)
{
  double cost = 0;

  for (guint i = 0; i < takeoff->stocks->len; i++)
    {
      const CwPanelStock *stock = takeoff->stocks->pdata[i];
      const CwPanel *panel
          = cw_list_at (stock->buildup->panels, stock->panel);

      cost += stock->n_panels * cw_decimal_to_double (panel->price);
    }
  return cost;
}

static void
make_lengths (GRand *random, Lengths *all, GString *walls)
{
  all->n = (guint) g_rand_int_range (random, 1, 8);
  for (guint i = 0; i < all->n; i++)
    {
      const int mm = g_rand_int_range (random, 200, 2300);

      all->lengths[i] = CW_MM (mm);
      g_string_append_printf (walls, "%s%.3fx0.6", i ? "; " : "", mm / 1000.0);
    }
  all->panels[0] = CW_MM (2400);
  all->prices[0] = 48;
  for (guint i = 1; i < 3; i++)
    {
      const int mm = 100 * g_rand_int_range (random, 9, 36);

      all->panels[i] = CW_MM (mm);
      all->prices[i]
          = mm / 50 + g_rand_int_range (random, -5, 12);
    }
}

static void
test_all_ways (void)
{
  g_autoptr (GRand) random = g_rand_new_with_seed (7);
  const guint n = g_getenv ("CW_LONG") ? 3000 : 150;
  guint n_best = 0;

  for (guint i = 0; i < n; i++)
    {
      g_autoptr (GString) walls = g_string_new (NULL);
      Lengths all;
      make_lengths (random, &all, walls);
      const Other others[] = {
        { (double) all.panels[1] / CW_NM_PER_MM, 600, all.prices[1], 0 },
        { (double) all.panels[2] / CW_NM_PER_MM, 600, all.prices[2], 0 },
      };
      g_autoptr (CwProject) project = project_with (
          walls->str, "panel.price=48 setting-out.rasp=0", others, 2);
      g_autoptr (CwTakeoff) first = cw_takeoff_new (project, NULL, NULL);
      g_autoptr (CwTakeoff) settled
          = cw_takeoff_improve (first, CW_CUT_EFFORT_LIVE, NULL);
      const double best = cheapest_of_all (&all);

      check_panel_plans (first);
      check_panel_plans (settled);
      g_assert_cmpfloat (cost_of (settled), <=, cost_of (first) + 1e-9);
      g_assert_cmpfloat (cost_of (settled), >=, best - 1e-9);
      if (cost_of (settled) > best + 1e-9)
        g_test_message (
            "%s, panels of %g at %g, %g at %g: %g, best %g", walls->str,
            others[0].length, others[0].price, others[1].length,
            others[1].price, cost_of (settled), best);
      g_assert_cmpfloat (cost_of (settled), <=, 1.1 * best);
      n_best += cost_of (settled) < best + 1e-9;
    }
  g_test_message ("the cheapest of all ways in %u of %u cases", n_best, n);
  g_assert_cmpuint (n_best * 100, >=, n * 98);
}

/* Walls with openings and arches, turned or not, whatever the scope. */
static void
test_random_walls (void)
{
  static const char *const ways[] = { "none", "course", "elevation",
                                      "project" };
  g_autoptr (GRand) random = g_rand_new_with_seed (11);
  const guint n = g_getenv ("CW_LONG") ? 600 : 60;

  for (guint i = 0; i < n; i++)
    {
      const Other others[] = {
        { 100 * g_rand_int_range (random, 6, 36),
          100 * g_rand_int_range (random, 3, 8),
          g_rand_int_range (random, 10, 60), 0 },
        { 100 * g_rand_int_range (random, 6, 36), 600,
          g_rand_int_range (random, 10, 60), 0 },
      };
      g_autofree char *walls = g_strdup_printf (
          "%.3fx%.3f *%d window:1.2x1.3@0.7,0.5 arch:1x0.9+0.2:segmental@3,1; "
          "%.3fx2.1 door:0.9x2@0.8,0",
          g_rand_double_range (random, 4.5, 9),
          g_rand_double_range (random, 2.3, 4), g_rand_int_range (random, 1, 3),
          g_rand_double_range (random, 2, 6));
      g_autofree char *settings = g_strdup_printf (
          "panel.price=40 setting-out.offcuts=%s setting-out.run=%s "
          "setting-out.turn=%s",
          ways[i % 4], i % 3 ? "horizontal" : "vertical", i % 5 ? "no" : "yes");
      g_autoptr (CwProject) one = project_with (walls, settings, NULL, 0);
      g_autoptr (CwProject) several
          = project_with (walls, settings, others, 2);
      g_autoptr (CwTakeoff) usual = settled_takeoff (one, NULL);
      g_autoptr (CwTakeoff) mixed = settled_takeoff (several, NULL);
      g_autoptr (CwTakeoff) again = settled_takeoff (several, NULL);

      g_test_message ("%u: %s %s: %g, of one kind %g", i, walls, settings,
                      cost_of (mixed), cost_of (usual));
      check_panel_plans (mixed);
      g_assert_cmpfloat (cost_of (mixed), <=, cost_of (usual) + 1e-9);
      for (guint j = 0; j < mixed->stocks->len; j++)
        g_assert_cmpuint (n_of (mixed, j), ==, n_of (again, j));
      for (guint j = 0; j < mixed->walls->len; j++)
        {
          const CwPanelMix *mix
              = ((CwWallTakeoff *) mixed->walls->pdata[j])->mix;

          g_assert_cmpfloat (mix->least_cost, <=, mix->cost + 1e-9);
          g_assert_cmpuint (mix->least, <=, mix->n_panels);
        }
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (known); i++)
    {
      g_autofree char *path
          = g_strconcat ("/estimate/panel-mix/", known[i].name, NULL);

      g_test_add_data_func (path, GUINT_TO_POINTER (i), test_known);
    }
  g_test_add_func ("/estimate/panel-mix/order", test_order);
  g_test_add_func ("/estimate/panel-mix/all-ways", test_all_ways);
  g_test_add_func ("/estimate/panel-mix/random-walls", test_random_walls);
  return g_test_run ();
}

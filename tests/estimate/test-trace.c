/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What lights up is exactly the geometry that was measured: for each quantity
 * its shares add up to the amount, and each share is the length or area of
 * its own piece of geometry.
 */
#include "cw-trace.h"
#include "estimate-cases.h"

#include <math.h>
#include <string.h>

#define NEAR 1e-9

static const CwBuildup *
buildup_of (const CwWallTakeoff *wall)
{
  return wall->wall->buildup;
}

static double
decimal (CwDecimal value)
{
  return cw_decimal_to_double (value);
}

static double
mortar_litres (const CwBuildup *buildup)
{
  const CwPanel *panel = cw_list_at (buildup->panels, 0);
  return cw_length_in_m (panel->thickness) * cw_length_in_m (panel->joint)
         * 1000;
}

static double
mortar_water (const CwBuildup *buildup)
{
  const CwJointMortar *mortar = (const CwJointMortar *) buildup->joint_mortar;
  return mortar_litres (buildup) * (1 + decimal (mortar->waste) / 100)
         / decimal (mortar->yield) * decimal (mortar->water);
}

static double
coat_use (const CwBuildup *buildup)
{
  return decimal (((const CwBaseCoat *) buildup->base_coat)->use);
}

static double
coat_water (const CwBuildup *buildup)
{
  const CwBaseCoat *coat = (const CwBaseCoat *) buildup->base_coat;
  return coat_use (buildup) * (1 + decimal (coat->waste) / 100)
         / decimal (coat->bag) * decimal (coat->water);
}

static double
finish_use (const CwBuildup *buildup)
{
  return decimal (((const CwFinish *) buildup->finish)->use);
}

static double
lap_factor (const CwBuildup *buildup)
{
  const CwMesh *mesh = (const CwMesh *) buildup->mesh;
  return (double) mesh->roll_width / (double) (mesh->roll_width - mesh->lap);
}

/* From what is measured to the line's own unit; 1 for all others. */
static const struct
{
  const char *key;
  double (*factor) (const CwBuildup *buildup);
} factors[] = {
  { "mortar.volume", mortar_litres }, { "mortar.water", mortar_water },
  { "basecoat.mass", coat_use },      { "basecoat.water", coat_water },
  { "finish.mass", finish_use },      { "mesh.field", lap_factor },
};

static double
factor_of (const CwQuantityType *type, const CwBuildup *buildup)
{
  for (guint i = 0; i < G_N_ELEMENTS (factors); i++)
    if (g_str_equal (factors[i].key, type->key))
      return factors[i].factor (buildup);
  return 1;
}

/* Made from the pieces, but not by adding them up: what is seen is which
 * pieces. How they come out of panels is a plan's matter. */
static gboolean
is_of_the_plan (const char *key)
{
  static const char *const keys[]
      = { "panel.stock", "panel.least", "panel.order", "panel.waste" };
  for (guint i = 0; i < G_N_ELEMENTS (keys); i++)
    if (g_str_equal (keys[i], key))
      return TRUE;
  return g_str_has_prefix (key, "saw.");
}

/* Of a day, or of two layers at once: they light up where they are used, and
 * are no sum of what lies there. */
static gboolean
is_no_sum (const char *key)
{
  return g_str_has_suffix (key, ".mixes")
         || g_str_equal (key, "water.wetting")
         || g_str_equal (key, "water.total");
}

static double
sum_of (const GArray *trace)
{
  double sum = 0;
  for (guint i = 0; i < trace->len; i++)
    sum += g_array_index (trace, CwTraceItem, i).share;
  return sum;
}

/* Every line of the wall; how many were held against their geometry. */
static guint
check_wall (const CwWallTakeoff *wall)
{
  guint n = 0;
  for (guint i = 0; i < wall->quantities->len; i++)
    {
      const CwQuantity *quantity = wall->quantities->pdata[i];
      if (quantity->variant || is_of_the_plan (quantity->type->key)
            || is_no_sum (quantity->type->key)
          || quantity->type->step >= CW_STEP_DELIVERY)
        continue;
      g_autoptr (GArray) trace = cw_wall_trace (wall, quantity->type);
      double sum
          = sum_of (trace) * factor_of (quantity->type, buildup_of (wall));
      if (fabs (sum - quantity->amount)
          > NEAR * MAX (1, fabs (quantity->amount)))
        g_error ("%s is %.9f, what lights up %.9f", quantity->type->key,
                 quantity->amount, sum);
      n++;
    }
  return n;
}

/* Side by side: windows, a door, arches with every head, stub-outs, bands,
 * an unclad area, openings that overlap and that stick out. */
static const char *const walls[] = {
  "9x2.7 corners window:1.2x1.4/0.09 door:0.9x2.1/0.09 stub:0.06@7.8,0.45 "
  "band:9x0.15x0.025@0,0.6",
  "12.5x7 corners window:1.5x1/0.2 door:0.9x2.1 arch:1.2x1+0.4:pointed "
  "window:0.6x0.6/0.1 stub:0.2@10,3",
  "20x9 abutments window:2x2.5/0.15@2,1 window:2x2@3,2/0.2 "
  "arch:2x1+1:semicircular door:1x2.2",
  "6x4 corners unclad:2x1@0,0 window:1x1@1,0.5 window:2x1@5,3",
  "3x2",
};

static void
check_all (const char *settings)
{
  guint n = 0;
  for (guint i = 0; i < G_N_ELEMENTS (walls); i++)
    {
      g_autoptr (CwProject) project = case_project (walls[i], settings);
      g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
      g_test_message ("%s", walls[i]);
      n += check_wall (takeoff->walls->pdata[0]);
    }
  g_assert_cmpuint (n, >, 30 * G_N_ELEMENTS (walls));
}

static void
test_net (void)
{
  check_all ("measure.rule=net");
}

static void
test_through (void)
{
  check_all ("measure.rule=through measure.limit=2.5");
}

static void
test_half (void)
{
  check_all ("measure.rule=half");
}

static void
test_is1200 (void)
{
  check_all ("measure.rule=is1200");
}

static void
test_laps (void)
{
  check_all ("barrier.lap=50.8 barrier.wrap=304.8 barrier.roll-width=1000 "
             "mesh.lap=63.5 mesh.roll-width=965.2");
}

/* Nothing that has an amount on the wall and a place is left dark. */
static void
test_nothing_dark (void)
{
  g_autoptr (CwProject) project
      = case_project (walls[0], "setting-out.bond=stacked");
  g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
  const CwWallTakeoff *wall = takeoff->walls->pdata[0];
  for (guint i = 0; i < wall->quantities->len; i++)
    {
      const CwQuantity *quantity = wall->quantities->pdata[i];
      if (quantity->amount <= 0 || quantity->type->step >= CW_STEP_DELIVERY)
        continue;
      g_autoptr (GArray) trace = cw_wall_trace (wall, quantity->type);
      if (trace->len == 0 && !g_str_has_prefix (quantity->type->key, "saw."))
        g_error ("%s lights nothing", quantity->type->key);
    }
}

/* The length or area of the item's own geometry. */
static double
own_measure (const CwTraceItem *item)
{
  if (item->kind == CW_TRACE_REGION)
    return cw_region_area (item->region);
  return item->kind == CW_TRACE_LINE ? cw_side_length (&item->side, item->end)
                                     : 1;
}

/* Lines in m and areas in m²: the share is the shape's own measure. */
static void
test_own_measure (void)
{
  static const char *const keys[]
      = { "wall.gross",   "wall.net",      "opening.area",  "opening.head",
          "opening.jamb", "opening.sill",  "unclad.area",   "edge.base",
          "band.length",  "joint.bed",     "joint.head",    "barrier.area",
          "mesh.edge",    "sealant.length", "bead.corner",  "bead.starter",
          "bead.drip",    "joint.control", "fastener.count" };
  for (guint i = 0; i < G_N_ELEMENTS (walls); i++)
    {
      g_autoptr (CwProject) project = case_project (walls[i], "");
      g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
      for (guint j = 0; j < G_N_ELEMENTS (keys); j++)
        {
          g_autoptr (GArray) trace = cw_wall_trace (
              takeoff->walls->pdata[0], cw_quantity_type (keys[j]));
          for (guint k = 0; k < trace->len; k++)
            {
              const CwTraceItem *item
                  = &g_array_index (trace, CwTraceItem, k);
              case_assert_near (item->share, own_measure (item), NEAR);
            }
        }
    }
}

/* C-05, ASTM C1397 practice, unsure: a piece of 9 by 12 in at each corner;
 * C-22: a window and a door make 6 of them, 4.5 ft². */
static void
test_mesh_corners (void)
{
  g_autoptr (CwProject) project = case_project (
      "6x3 window:1x1 door:0.9x2.1",
      "mesh.corner-width=228.6 mesh.corner-height=304.8");
  g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
  g_autoptr (GArray) trace = cw_wall_trace (takeoff->walls->pdata[0],
                                            cw_quantity_type ("mesh.corner"));
  double area = 0;
  for (guint i = 0; i < trace->len; i++)
    area += own_measure (&g_array_index (trace, CwTraceItem, i));
  g_assert_cmpuint (trace->len, ==, 6);
  case_assert_near (area, 4.5 * 0.3048 * 0.3048, 1e-6);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/trace/net", test_net);
  g_test_add_func ("/trace/through", test_through);
  g_test_add_func ("/trace/half", test_half);
  g_test_add_func ("/trace/is1200", test_is1200);
  g_test_add_func ("/trace/laps", test_laps);
  g_test_add_func ("/trace/nothing-dark", test_nothing_dark);
  g_test_add_func ("/trace/own-measure", test_own_measure);
  g_test_add_func ("/trace/mesh-corners", test_mesh_corners);
  return g_test_run ();
}

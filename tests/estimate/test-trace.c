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

/* How the pieces come out of panels is a plan's matter: what is seen is all
 * of the pieces that it is about. */
static gboolean
is_of_the_plan (const char *key)
{
  static const char *const keys[]
      = { "panel.stock", "panel.least", "panel.order", "panel.waste" };
  for (guint i = 0; i < G_N_ELEMENTS (keys); i++)
    if (g_str_equal (keys[i], key))
      return TRUE;
  return FALSE;
}

/* Of a day: it lights up where the mix is used, and is no sum of that. */
static gboolean
is_of_a_day (const char *key)
{
  return g_str_has_suffix (key, ".mixes");
}

static double
sum_of (const GArray *trace)
{
  double sum = 0;
  for (guint i = 0; i < trace->len; i++)
    sum += g_array_index (trace, CwTraceItem, i).share;
  return sum;
}

static double
rate_of_task (const CwBuildup *buildup, const char *task)
{
  const CwLabour *labour = (const CwLabour *) buildup->labour;
  const struct
  {
    const char *task;
    CwDecimal rate;
  } rates[] = {
    { "barrier", labour->barrier },
    { "sawing", labour->sawing },
    { "panels", labour->panels },
    { "joints", labour->joints },
    { "base coat and mesh", labour->base_coat },
    { "finish", labour->finish },
    { "sealant", labour->sealant },
    { "beads", labour->beads },
  };
  for (guint i = 0; i < G_N_ELEMENTS (rates); i++)
    if (g_str_equal (rates[i].task, task))
      return decimal (rates[i].rate);
  g_error ("no task %s", task);
}

/* m of the plan's saw cuts, as the line of the straight ones says. */
static double
saw_of_plan (const CwWallTakeoff *wall)
{
  for (guint i = 0; i < wall->quantities->len; i++)
    {
      const CwQuantity *line = wall->quantities->pdata[i];
      if (g_str_equal (line->type->key, "saw.length"))
        return g_array_index (line->steps, CwStepWords, 0).places[0].value;
    }
  g_error ("nothing sawn");
}

/* What is lit for whole pieces counts one each: their area is laid. */
static double
area_of_regions (const GArray *trace)
{
  double area = 0;
  for (guint i = 0; i < trace->len; i++)
    area += cw_region_area (g_array_index (trace, CwTraceItem, i).region);
  return area;
}

/* Hours and days of a task by what it lights up. */
static double
work_lit (const CwWallTakeoff *wall, const CwQuantity *line,
          const GArray *trace)
{
  const CwLabour *labour
      = (const CwLabour *) buildup_of (wall)->labour;
  double amount = g_str_equal (line->variant, "panels")
                      ? area_of_regions (trace)
                      : sum_of (trace);
  if (g_str_equal (line->variant, "sawing"))
    amount += saw_of_plan (wall);
  amount /= rate_of_task (buildup_of (wall), line->variant);
  return g_str_equal (line->type->key, "labour.hours")
             ? amount * (double) labour->crew
             : amount / decimal (labour->day);
}

/* What the lit geometry comes to, in the line's own unit. */
static double
amount_lit (const CwWallTakeoff *wall, const CwQuantity *line,
            const GArray *trace)
{
  if (line->type->step == CW_STEP_LABOUR)
    return work_lit (wall, line, trace);
  const double sum
      = sum_of (trace) * factor_of (line->type, buildup_of (wall));
  return g_str_equal (line->type->key, "saw.length")
             ? sum + saw_of_plan (wall)
             : sum;
}

/* All of the pieces, whatever the plan makes of them. */
static void
check_all_pieces (const CwWallTakeoff *wall, const GArray *trace)
{
  g_assert_cmpuint (trace->len, ==, wall->layout->pieces->len);
}

static void
check_line (const CwWallTakeoff *wall, const CwQuantity *line)
{
  g_autoptr (GArray) trace
      = cw_wall_trace (wall, line->type, line->variant);
  if (is_of_the_plan (line->type->key))
    {
      check_all_pieces (wall, trace);
      return;
    }
  if (is_of_a_day (line->type->key))
    {
      g_assert_cmpuint (trace->len, >, 0);
      return;
    }
  const double lit = amount_lit (wall, line, trace);
  if (fabs (lit - line->amount) > NEAR * MAX (1, fabs (line->amount)))
    g_error ("%s/%s is %.9f, what lights up %.9f", line->type->key,
             line->variant ? line->variant : "", line->amount, lit);
}

/* The hours of all tasks together light nothing of their own. */
static gboolean
is_of_all_tasks (const CwQuantity *line)
{
  return line->type->step == CW_STEP_LABOUR && !line->variant;
}

/* Every line of the wall; how many were held against their geometry. */
static guint
check_wall (const CwWallTakeoff *wall)
{
  guint n = 0;
  for (guint i = 0; i < wall->quantities->len; i++)
    {
      const CwQuantity *line = wall->quantities->pdata[i];
      if (is_of_all_tasks (line))
        continue;
      check_line (wall, line);
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
  g_assert_cmpuint (n, >, 55 * G_N_ELEMENTS (walls));
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
  check_all ("measure.rule=is1200 measure.face=narrower");
  check_all ("measure.rule=is1200 measure.face=equal");
  check_all ("measure.rule=is1200 measure.face=wider");
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
      if (quantity->amount <= 0 || is_of_all_tasks (quantity))
        continue;
      g_autoptr (GArray) trace = cw_wall_trace (wall, quantity->type,
                                                quantity->variant);
      if (trace->len == 0)
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
              takeoff->walls->pdata[0], cw_quantity_type (keys[j]), NULL);
          for (guint k = 0; k < trace->len; k++)
            {
              const CwTraceItem *item
                  = &g_array_index (trace, CwTraceItem, k);
              case_assert_near (item->share, own_measure (item), NEAR);
            }
        }
    }
}

/* The project with two marks, a window's and a door's. */
static CwProject *
with_marks (const CwProject *project, const char *window, const char *door)
{
  CwNode *changed = cw_node_copy (&project->node);
  CwNode *marks[] = { cw_node_new (&cw_mark_type),
                      cw_node_new (&cw_mark_type) };
  cw_node_put_text (marks[0], "id", window);
  cw_node_put_text (marks[1], "id", door);
  cw_node_put (marks[1], "kind", CW_OPENING_DOOR);
  g_autoptr (CwList) list = cw_list_new (marks, G_N_ELEMENTS (marks));
  for (guint i = 0; i < G_N_ELEMENTS (marks); i++)
    cw_node_unref (marks[i]);
  cw_node_set_list (changed, CW_PROJECT_MARKS, list);
  cw_node_freeze (changed);
  return (CwProject *) changed;
}

/* The schedule: a mark's line lights the openings of that mark, a kind's those
 * of that kind. */
static void
test_schedule (void)
{
  static const struct
  {
    const char *variant;
    guint n;
    double area;
  } lines[] = {
    { NULL, 4, 1.2 * 1.4 + 1.5 * 1.4 + 0.9 * 2.1 + 1 },
    { "window", 3, 1.2 * 1.4 + 1.5 * 1.4 + 1 },
    { "door", 1, 0.9 * 2.1 },
    { "mark w1", 2, 1.2 * 1.4 + 1.5 * 1.4 },
    { "mark d1", 1, 0.9 * 2.1 },
    { "mark w9", 0, 0 },
  };
  g_autoptr (CwProject) bare = case_project (
      "12x3 window:1.2x1.4@1,1#w1 window:1.5x1.4@4,1#w1 door:0.9x2.1@7,0#d1 "
      "window:1x1@9,1",
      "");
  g_autoptr (CwProject) project = with_marks (bare, "w1", "d1");
  g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    {
      g_autoptr (GArray) trace = cw_wall_trace (
          takeoff->walls->pdata[0], cw_quantity_type ("opening.count"),
          lines[i].variant);
      g_assert_cmpuint (trace->len, ==, lines[i].n);
      case_assert_near (area_of_regions (trace), lines[i].area, NEAR);
    }
}

/* Curves are lit as arcs, each as long as it is sawn. */
static void
test_curves (void)
{
  g_autoptr (CwProject) project = case_project (
      "9x4 arch:2x1+1:semicircular@3,0.5 stub:0.2@7,2", "");
  g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
  g_autoptr (GArray) trace = cw_wall_trace (
      takeoff->walls->pdata[0], cw_quantity_type ("saw.curve"), NULL);
  g_assert_cmpuint (trace->len, >, 3);
  for (guint i = 0; i < trace->len; i++)
    {
      const CwTraceItem *item = &g_array_index (trace, CwTraceItem, i);
      g_assert_cmpint (item->kind, ==, CW_TRACE_LINE);
      g_assert_true (item->side.is_arc);
    }
  case_assert_near (sum_of (trace),
                    case_amount (takeoff, NULL, "saw.curve"), NEAR);
  /* Half the circle and the hole, less what lies in joints. */
  g_assert_cmpfloat (sum_of (trace), >, G_PI * 1.2 - 0.06);
  g_assert_cmpfloat (sum_of (trace), <=, G_PI * 1.2);
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
                                            cw_quantity_type ("mesh.corner"),
                                            NULL);
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
  g_test_add_func ("/trace/schedule", test_schedule);
  g_test_add_func ("/trace/curves", test_curves);
  return g_test_run ();
}

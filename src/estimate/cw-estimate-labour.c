/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Labour: what a crew lays by what it lays in an hour, trade step by trade
 * step. The project's sawing is that of its own cut plan.
 */
#include "cw-estimate-private.h"

static const struct
{
  const char *name;
  CwTradeStep step;
  gsize rate;                 /* offset in CwLabour */
  const char *unit, *rate_unit;
} tasks[CW_N_TASKS] = {
#define TASK(name, step, rate, unit)                                          \
  {                                                                           \
    name, step, G_STRUCT_OFFSET (CwLabour, rate), unit, unit "/h"             \
  }
  [CW_TASK_BARRIER] = TASK (N_ ("barrier"), CW_STEP_BARRIER, barrier, "m²"),
  [CW_TASK_SAWING] = TASK (N_ ("sawing"), CW_STEP_PANELS, sawing, "m"),
  [CW_TASK_PANELS] = TASK (N_ ("panels"), CW_STEP_PANELS, panels, "m²"),
  [CW_TASK_JOINTS] = TASK (N_ ("joints"), CW_STEP_JOINTS, joints, "m"),
  [CW_TASK_BASE_COAT]
  = TASK (N_ ("base coat and mesh"), CW_STEP_COATS, base_coat, "m²"),
  [CW_TASK_FINISH] = TASK (N_ ("finish"), CW_STEP_COATS, finish, "m²"),
  [CW_TASK_SEALANT] = TASK (N_ ("sealant"), CW_STEP_SEALANT, sealant, "m"),
  [CW_TASK_BEADS] = TASK (N_ ("beads"), CW_STEP_BEADS, beads, "m"),
#undef TASK
};

static double
saw_without_plan (const CwSawFigures *saw)
{
  return saw->notches + saw->rakes + saw->curves + saw->round_holes;
}

static void
measure_tasks (CwWallEstimate *estimate)
{
  const CwBuildup *buildup = estimate->wall->buildup;
  CwWallFigures *figures = estimate->figures;
  const GPtrArray *lines = estimate->quantities;
  double coated = cw_estimate_coated_area (figures);
  double edges = figures->head + figures->jamb + figures->sill;

  figures->tasks[CW_TASK_BARRIER]
      = cw_quantities_amount (lines, "barrier.area");
  figures->tasks[CW_TASK_SAWING] = saw_without_plan (&figures->saw);
  figures->tasks[CW_TASK_PANELS] = figures->placed;
  figures->tasks[CW_TASK_JOINTS]
      = buildup->joint_mortar
            ? figures->bed_joints + figures->head_joints + edges
            : 0;
  figures->tasks[CW_TASK_BASE_COAT] = buildup->base_coat ? coated : 0;
  figures->tasks[CW_TASK_FINISH] = buildup->finish ? coated : 0;
  figures->tasks[CW_TASK_SEALANT]
      = cw_quantities_amount (lines, "sealant.length");
  figures->tasks[CW_TASK_BEADS]
      = cw_quantities_amount (lines, "bead.corner")
        + cw_quantities_amount (lines, "bead.starter")
        + cw_quantities_amount (lines, "bead.drip")
        + cw_quantities_amount (lines, "joint.control");
}

static double
rate_of (const CwLabour *labour, CwTask task)
{
  return cw_decimal_to_double (
      G_STRUCT_MEMBER (CwDecimal, labour, tasks[task].rate));
}

/* Hours of the whole crew; none without a rate. */
static double
crew_hours (const CwLabour *labour, CwTask task, double amount)
{
  double rate = rate_of (labour, task);

  return rate > 0 ? amount / rate : 0;
}

static void
add_task (GPtrArray *quantities, const CwLabour *labour, CwTask task,
          double amount)
{
  double hours = crew_hours (labour, task, amount);
  double persons = hours * (double) labour->crew;
  double days = hours / cw_decimal_to_double (labour->day);
  CwQuantity *line;

  if (hours <= 0)
    return;
  line = cw_quantities_line (quantities, "labour.hours", tasks[task].name);
  line->amount += persons;
  cw_quantity_step (line, N_ ("{0} at {1} are {2} of a crew of {3}"),
                    { amount, tasks[task].unit },
                    { rate_of (labour, task), tasks[task].rate_unit },
                    { hours, "h" }, { (double) labour->crew, "" });
  line = cw_quantities_line (quantities, "labour.days", tasks[task].name);
  line->amount += days;
  cw_quantity_step (line, N_ ("{0} of the crew, {1} a day"), { hours, "h" },
                    { cw_decimal_to_double (labour->day), "h" });
  cw_quantities_line (quantities, "labour.hours", NULL)->amount += persons;
  cw_quantities_line (quantities, "labour.days", NULL)->amount += days;
}

/* The whole comes before its parts. */
static void
add_tasks (GPtrArray *quantities, const CwLabour *labour, const double *amounts)
{
  cw_quantities_line (quantities, "labour.hours", NULL);
  cw_quantities_line (quantities, "labour.days", NULL);
  for (CwTask task = 0; task < CW_N_TASKS; task++)
    add_task (quantities, labour, task, amounts[task]);
}

static void
say_sum (GPtrArray *quantities)
{
  CwQuantity *days = cw_quantities_line (quantities, "labour.days", NULL);

  cw_quantity_step (cw_quantities_line (quantities, "labour.hours", NULL),
                    N_ ("hours of all persons, the trade steps together"));
  cw_quantity_step (days,
                    N_ ("of one crew, one trade step after the other: {0}, "
                        "without the time that coats need to dry"),
                    { days->amount, "d" });
}

void
cw_estimate_labour (CwWallEstimate *estimate)
{
  const CwLabour *labour
      = (const CwLabour *) estimate->wall->buildup->labour;
  double amounts[CW_N_TASKS];

  measure_tasks (estimate);
  if (labour == NULL)
    return;
  memcpy (amounts, estimate->figures->tasks, sizeof amounts);
  amounts[CW_TASK_SAWING] += estimate->figures->saw.plan;
  add_tasks (estimate->quantities, labour, amounts);
  say_sum (estimate->quantities);
}

typedef struct
{
  const CwLabour *labour;
  double amounts[CW_N_TASKS];
} Gang;

static Gang *
gang_for (GArray *gangs, const CwNode *labour)
{
  Gang gang = { (const CwLabour *) labour, { 0 } };

  for (guint i = 0; i < gangs->len; i++)
    {
      Gang *former = &g_array_index (gangs, Gang, i);

      if (cw_node_equal (former->labour, labour))
        return former;
    }
  g_array_append_val (gangs, gang);
  return &g_array_index (gangs, Gang, gangs->len - 1);
}

static void
add_walls (GArray *gangs, const GPtrArray *walls)
{
  for (guint i = 0; i < walls->len; i++)
    {
      const CwWallTakeoff *wall = walls->pdata[i];
      const CwBuildup *buildup = wall->wall->buildup;
      Gang *gang;

      if (buildup == NULL || buildup->labour == NULL)
        continue;
      gang = gang_for (gangs, buildup->labour);
      for (CwTask task = 0; task < CW_N_TASKS; task++)
        gang->amounts[task]
            += wall->figures->tasks[task] * cw_estimate_count (wall);
    }
}

static void
add_sawing (GArray *gangs, const GPtrArray *stocks)
{
  for (guint i = 0; i < stocks->len; i++)
    {
      const CwPanelStock *stock = stocks->pdata[i];

      for (guint j = 0; stock->buildup->labour && j < stock->shares->len; j++)
        {
          const CwPanelShare *share
              = &g_array_index (stock->shares, CwPanelShare, j);

          gang_for (gangs, stock->buildup->labour)->amounts[CW_TASK_SAWING]
              += cw_panel_plan_saw (share->plan) * share->times;
        }
    }
}

static void
price_gang (CwProjectEstimate *estimate, const Gang *gang)
{
  for (CwTask task = 0; task < CW_N_TASKS; task++)
    {
      double hours = crew_hours (gang->labour, task, gang->amounts[task]);

      if (hours > 0)
        cw_cost_add (estimate->cost,
                     &(CwCostLine) { .kind = CW_COST_LABOUR,
                                     .step = tasks[task].step,
                                     .name = (char *) tasks[task].name,
                                     .key = "labour.hours",
                                     .amount = hours
                                               * (double) gang->labour->crew,
                                     .unit = "h",
                                     .price = gang->labour->wage });
    }
}

void
cw_estimate_project_labour (CwProjectEstimate *estimate)
{
  g_autoptr (GArray) gangs = g_array_new (FALSE, FALSE, sizeof (Gang));

  add_walls (gangs, estimate->takeoff->walls);
  add_sawing (gangs, estimate->takeoff->stocks);
  for (guint i = 0; i < gangs->len; i++)
    {
      const Gang *gang = &g_array_index (gangs, Gang, i);

      add_tasks (estimate->quantities, gang->labour, gang->amounts);
      price_gang (estimate, gang);
    }
  if (gangs->len > 0)
    say_sum (estimate->quantities);
}

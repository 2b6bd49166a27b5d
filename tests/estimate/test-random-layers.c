/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every layer of random walls, the labour and the way to the bid against the
 * slow estimator. The cut plan's figures (panels used, its saw cuts) are
 * taken as they are: a checker of their own holds them.
 */
#include <geos_c.h>
#include <math.h>

#include "estimate-cases.h"
#include "random-elevation.h"
#include "slow-cost.h"
#include "slow-layers.h"

/* What is lost by flattening a head into 1200 pieces is 3e-6 of its length,
 * and more where the outline cuts it. */
#define TOLERANCE 3e-5
/* A line that grazes a head ends on the flattened one up to that far off. */
#define GRAZED 2e-4
/* So near to a whole number of packages the slow figure cannot tell. */
#define UNSURE 1e-4

#define N_WALLS 2

typedef struct
{
  const CwProject *project;
  CwTakeoff *takeoff;
  SlowLayers walls[N_WALLS];
  double counts[N_WALLS];
} Case;

static const char *const ids[N_WALLS] = { "e1", "e2" };

static void
compare_within (const Case *job, const char *scope, const char *key,
                double expected, double tolerance)
{
  const double amount = case_amount (job->takeoff, scope, key);

  if (ABS (amount - expected) > tolerance * MAX (1, ABS (expected)))
    g_error ("%s of %s is %.9f, by the slow estimator %.9f", key,
             scope ? scope : "the project", amount, expected);
}

static void
compare (const Case *job, const char *scope, const char *key, double expected)
{
  compare_within (job, scope, key, expected, TOLERANCE);
}

/* A number of the first steps: what a line says of itself. */
static double
said (const CwTakeoff *takeoff, const char *scope, const char *key,
      guint place)
{
  const CwQuantity *line = cw_takeoff_quantity (takeoff, scope, key);

  return g_array_index (line->steps, CwStepWords, 0).places[place].value;
}

static void
compare_panels (const Case *job, guint i)
{
  const SlowPanels *panels = &job->walls[i].panels;
  const double sawn
      = case_amount (job->takeoff, ids[i], "saw.length")
        + case_amount (job->takeoff, ids[i], "saw.curve")
        - said (job->takeoff, ids[i], "saw.length", 0);

  compare (job, ids[i], "panel.whole", panels->n_whole);
  compare (job, ids[i], "panel.rasped", 0);
  compare (job, ids[i], "panel.cut", panels->n_cut);
  compare_within (job, ids[i], "joint.bed", panels->bed, GRAZED);
  compare_within (job, ids[i], "joint.head", panels->head, GRAZED);
  compare (job, ids[i], "fastener.count", panels->n_fasteners);
  compare (job, ids[i], "panel.waste",
           100
               * (1
                  - panels->placed / 1.44
                        / case_amount (job->takeoff, ids[i],
                                       "panel.stock")));
  case_assert_near (sawn, panels->own_cuts, TOLERANCE);
}

static void
compare_layers (const Case *job, guint i)
{
  const SlowLayers *layers = &job->walls[i];

  compare (job, ids[i], "barrier.area", layers->barrier * 2.7432);
  compare (job, ids[i], "bead.starter", layers->starter);
  compare_within (job, ids[i], "joint.control", layers->control, GRAZED);
  compare (job, ids[i], "band.area", layers->bands);
  if (layers->wall.doubtful)
    return;
  compare (job, ids[i], "mortar.volume", layers->mortar);
  compare (job, ids[i], "mortar.water", layers->mortar_water);
  compare (job, ids[i], "basecoat.mass", layers->base_coat);
  compare (job, ids[i], "basecoat.water", layers->coat_water);
  compare (job, ids[i], "finish.mass", layers->finish);
  compare (job, ids[i], "water.wetting", layers->wetting);
  compare (job, ids[i], "water.total",
           layers->mortar_water + layers->coat_water + layers->wetting);
  compare (job, ids[i], "mesh.field", layers->mesh);
  compare (job, ids[i], "mesh.edge", layers->mesh_edges);
  if (!layers->wall.shared)
    compare (job, ids[i], "mesh.corner", layers->wall.n_corners);
  compare (job, ids[i], "sealant.length", layers->sealant);
  compare (job, ids[i], "backer.length", layers->sealant);
  compare (job, ids[i], "bead.corner", layers->corner);
  compare (job, ids[i], "bead.drip", layers->drip);
}

/* The sum over the walls × count of a double in SlowLayers. */
#define SUM(job, member)                                                      \
  ((job)->walls[0].member * (job)->counts[0]                                  \
   + (job)->walls[1].member * (job)->counts[1])

/* TRUE when the slow need is sure to be that many packages. */
static gboolean
compare_packages (const Case *job, const char *key, double need, double size)
{
  const double n = need / size;
  const CwQuantity *line = cw_takeoff_quantity (job->takeoff, NULL, key);
  double amount;

  g_assert_nonnull (line);
  amount = isnan (line->order_amount) ? line->amount : line->order_amount;
  if (fabs (n - round (n)) < UNSURE)
    return FALSE;
  if (fabs (amount - ceil (n)) > 1e-9)
    g_error ("%s are %.9g, by the slow estimator %.9g", key, amount,
             ceil (n));
  return TRUE;
}

static guint
compare_all_packages (const Case *job)
{
  const double mesh = SUM (job, mesh) + 0.06 * SUM (job, wall.n_corners)
                      + 0.25 * SUM (job, mesh_edges);
  const double order = case_amount (job->takeoff, NULL, "panel.order");
  guint n = 0;

  n += compare_packages (job, "mortar.bags", SUM (job, mortar) * 1.1, 15);
  n += compare_packages (job, "fastener.boxes",
                         SUM (job, panels.n_fasteners), 500);
  n += compare_packages (job, "basecoat.bags", SUM (job, base_coat) * 1.05,
                         25);
  n += compare_packages (job, "finish.pails", SUM (job, finish) * 1.05, 25);
  n += compare_packages (job, "mesh.rolls", mesh, 50);
  n += compare_packages (job, "sealant.cartridges",
                         SUM (job, sealant) * 72 * 1.05, 300);
  n += compare_packages (job, "backer.coils", SUM (job, sealant) * 1.05, 50);
  n += compare_packages (job, "bead.corner", SUM (job, corner) * 1.05, 2.5);
  n += compare_packages (job, "bead.drip", SUM (job, drip) * 1.05, 2.5);
  n += compare_packages (job, "pallet.count", order + 1e-3, 20)
       && compare_packages (job, "truck.count",
                            case_amount (job->takeoff, NULL, "mass.total"),
                            19958);
  compare (job, NULL, "staging.area",
           2.88 * case_amount (job->takeoff, NULL, "pallet.count"));
  compare (job, NULL, "mass.total",
           43 * order
               + 20 * case_amount (job->takeoff, NULL, "mortar.bags")
               + 25 * case_amount (job->takeoff, NULL, "basecoat.bags")
               + 25 * case_amount (job->takeoff, NULL, "finish.pails"));
  return n;
}

static double
hours_of_task (const CwTakeoff *takeoff, const char *task)
{
  for (guint i = 0; i < takeoff->quantities->len; i++)
    {
      const CwQuantity *line = takeoff->quantities->pdata[i];

      if (g_str_equal (line->type->key, "labour.hours")
          && g_strcmp0 (line->variant, task) == 0)
        return line->amount;
    }
  return 0;
}

typedef struct
{
  const char *task;
  double amount, rate;
} Task;

/* 3 persons; the hours of all of them. Returns the sum. */
static double
compare_task (const Case *job, const Task *task)
{
  const double hours = hours_of_task (job->takeoff, task->task);

  case_assert_near (hours, 3 * task->amount / task->rate, TOLERANCE);
  return hours;
}

static void
compare_labour (const Case *job)
{
  const double beads = SUM (job, corner) + SUM (job, starter)
                       + SUM (job, drip) + SUM (job, control);
  const double sawn = said (job->takeoff, NULL, "saw.length", 0)
                      + SUM (job, panels.own_cuts);
  const Task tasks[] = {
    { "barrier", SUM (job, barrier) * 2.7432, 25 },
    { "sawing", sawn, 20 },
    { "panels", SUM (job, panels.placed), 8 },
    { "joints", SUM (job, mortared), 30 },
    { "base coat and mesh", SUM (job, coated), 10 },
    { "finish", SUM (job, coated), 12 },
    { "sealant", SUM (job, sealant), 20 },
    { "beads", beads, 30 },
  };
  double sum = 0;

  for (guint i = 0; i < G_N_ELEMENTS (tasks); i++)
    sum += compare_task (job, &tasks[i]);
  case_assert_near (case_amount (job->takeoff, NULL, "labour.hours"), sum,
                    1e-9);
  case_assert_near (case_amount (job->takeoff, NULL, "labour.days"),
                    sum / 3 / 8, 1e-9);
}

static gint64
ordered_cents (const Case *job, const char *key, double price)
{
  const CwQuantity *line = cw_takeoff_quantity (job->takeoff, NULL, key);

  return line && line->order_amount > 0
             ? slow_cents (line->order_amount,
                           (CwDecimal) llround (price * 1e6))
             : 0;
}

/* Whole packages and hours as the takeoff has them, which were compared. */
static void
compare_cost (const Case *job)
{
  static const struct
  {
    const char *key;
    double price;
  } prices[] = {
    { "panel.order", 46.5 },       { "mortar.bags", 18.4 },
    { "fastener.boxes", 62 },      { "barrier.rolls", 148 },
    { "basecoat.bags", 24.75 },    { "mesh.rolls", 71 },
    { "finish.pails", 83.2 },      { "sealant.cartridges", 7.9 },
    { "backer.coils", 14.505 },
  };
  static const char *const tasks[]
      = { "barrier", "sawing",  "panels",  "joints", "base coat and mesh",
          "finish",  "sealant", "beads" };
  SlowCost cost = { 0 };

  for (guint i = 0; i < G_N_ELEMENTS (prices); i++)
    cost.material += ordered_cents (job, prices[i].key, prices[i].price);
  for (guint i = 0; i < G_N_ELEMENTS (tasks); i++)
    cost.labour
        += slow_cents (hours_of_task (job->takeoff, tasks[i]), 38550000);
  slow_cost_finish (&cost, (const CwBid *) job->project->bid, cost.material,
                    case_amount (job->takeoff, NULL, "wall.net"));

  const struct
  {
    const char *key;
    gint64 cents;
  } sums[] = {
    { "cost.material", cost.material },
    { "cost.labour", cost.labour },
    { "cost.equipment", 0 },
    { "cost.contingency", cost.contingency },
    { "cost.overhead", cost.overhead },
    { "cost.profit", cost.profit },
    { "cost.tax", cost.tax },
    { "cost.bid", cost.bid },
    { "cost.unit", cost.unit },
  };
  for (guint i = 0; i < G_N_ELEMENTS (sums); i++)
    {
      const CwQuantity *line
          = cw_takeoff_quantity (job->takeoff, NULL, sums[i].key);

      g_assert_nonnull (line);
      g_test_message ("%s", sums[i].key);
      g_assert_cmpint (line->money, ==, sums[i].cents * 100);
    }
}

/* (transfer full) */
static char *
random_settings (GRand *random)
{
  return g_strdup_printf (
      "setting-out.least-piece=0 setting-out.rasp=0 setting-out.bond=stacked "
      "panel.spare=%d panel.price=46.5 joint-mortar.price=18.4 "
      "fastener.price=62 barrier.price=148 base-coat.price=24.75 "
      "mesh.price=71 finish.price=83.2 sealant.price=7.9 "
      "backer-rod.price=14.505 labour.wage=38.55 barrier.roll-width=2743.2 "
      "bid.contingency=%d.5 bid.overhead=%d.25 bid.profit=%d bid.tax=%d.125 "
      "bid.rounding=%d bid.profit-on=%s bid.tax-on=%s",
      g_rand_int_range (random, 0, 9), g_rand_int_range (random, 0, 9),
      g_rand_int_range (random, 0, 20), g_rand_int_range (random, 0, 30),
      g_rand_int_range (random, 0, 20),
      g_rand_int_range (random, 0, 3) * 25,
      g_rand_boolean (random) ? "cost" : "price",
      g_rand_boolean (random) ? "lines" : "price");
}

static CwProject *
random_project (GRand *random)
{
  g_autoptr (GPtrArray) elevations
      = g_ptr_array_new_with_free_func (cw_node_unref);
  g_autofree char *settings = random_settings (random);

  for (guint i = 0; i < N_WALLS; i++)
    {
      CwNode *elevation = random_elevation (random, ids[i], TRUE);

      cw_node_put (elevation, "count", g_rand_int_range (random, 1, 4));
      g_ptr_array_add (elevations, elevation);
    }
  return case_project_of (elevations, settings);
}

/* Returns whether its packages could be compared. */
static gboolean
check_job (const CwProject *project)
{
  Case job = { .project = project,
               .takeoff = cw_takeoff_new (project, NULL, NULL) };
  gboolean is_sure = TRUE;
  guint n_packages = 0;

  for (guint i = 0; i < N_WALLS; i++)
    {
      const CwElevation *elevation = cw_list_at (project->elevations, i);

      job.walls[i] = slow_layers (project, elevation);
      job.counts[i] = (double) elevation->count;
      if (!job.walls[i].panels.shifted)
        {
          compare_panels (&job, i);
          compare_layers (&job, i);
        }
      is_sure = is_sure && !job.walls[i].wall.doubtful
                && !job.walls[i].wall.shared
                && !job.walls[i].panels.shifted;
    }
  if (is_sure)
    {
      n_packages = compare_all_packages (&job);
      compare_labour (&job);
    }
  compare_cost (&job);
  cw_takeoff_unref (job.takeoff);
  return n_packages >= 5;
}

static void
test_random_layers (void)
{
  g_autoptr (GRand) random = g_rand_new_with_seed (20261126);
  const guint n = g_getenv ("CW_LONG") ? 300 : 15;
  guint n_sure = 0;

  for (guint i = 0; i < n; i++)
    {
      g_autoptr (CwProject) project = random_project (random);

      g_test_message ("job %u", i);
      n_sure += check_job (project);
    }
  g_test_message ("%u of %u to the packages", n_sure, n);
  g_assert_cmpuint (n_sure, >, n / 5);
}

int
main (int argc, char *argv[])
{
  int result;

  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  initGEOS (NULL, NULL);
  g_test_add_func ("/estimate/random-layers", test_random_layers);
  result = g_test_run ();
  finishGEOS ();
  return result;
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The takeoff as a whole: what holds for every project.
 */
#include <math.h>
#include <string.h>

#include "estimate-cases.h"

#define HOUSE                                                                 \
  "9x5.2 *2 corners window:1.2x1.4/0.09 window:1.2x1.4/0.09 door:0.9x2.1/0.1 " \
  "stub:0.06 band:9x0.15x0.025; "                                             \
  "7.5x4 *3 corners arch:1.5x1.2+0.3:segmental/0.09 unclad:2x1@5,0; "         \
  "6x3 abutments"

static CwTakeoff *
takeoff_of (const char *walls, const char *settings)
{
  g_autoptr (CwProject) project = case_project (walls, settings);

  return cw_takeoff_new (project, NULL, NULL);
}

/* Offcuts travel from wall to wall, so that all walls need fewer panels than
 * each by itself. */
static gboolean
is_of_the_plan (const CwQuantity *quantity)
{
  return g_str_equal (quantity->type->key, "panel.stock")
         || g_str_equal (quantity->type->key, "panel.least");
}

static gboolean
adds_up (const CwQuantity *quantity)
{
  return isnan (quantity->order_amount)
         && !g_str_equal (quantity->type->unit, "%")
         && !is_of_the_plan (quantity)
         && !g_str_equal (quantity->type->key, "saw.length")
         && !g_str_has_suffix (quantity->type->key, ".mixes")
         && quantity->type->step < CW_STEP_DELIVERY;
}

static double
sum_of_walls (const CwTakeoff *takeoff, const CwQuantity *quantity)
{
  double sum = 0;

  for (guint i = 0; i < takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = takeoff->walls->pdata[i];

      for (guint j = 0; j < wall->quantities->len; j++)
        {
          const CwQuantity *line = wall->quantities->pdata[j];

          if (line->type == quantity->type
              && g_strcmp0 (line->variant, quantity->variant) == 0)
            sum += line->amount * (double) wall->wall->elevation->count;
        }
    }
  return sum;
}

static void
test_project_is_the_sum (void)
{
  g_autoptr (CwTakeoff) takeoff = takeoff_of (HOUSE, "");
  guint n = 0;

  for (guint i = 0; i < takeoff->quantities->len; i++)
    {
      const CwQuantity *quantity = takeoff->quantities->pdata[i];

      if (is_of_the_plan (quantity))
        g_assert_cmpfloat (quantity->amount, <=,
                           sum_of_walls (takeoff, quantity));
      if (!adds_up (quantity))
        continue;
      case_assert_near (quantity->amount, sum_of_walls (takeoff, quantity),
                        1e-12);
      n++;
    }
  g_assert_cmpuint (n, >, 35);
}

/* All that is not rounded up to packages doubles; packages at most double. */
static void
test_count_doubles (void)
{
  g_autoptr (CwTakeoff) one = takeoff_of ("8x4 corners window:1x1/0.1", "");
  g_autoptr (CwTakeoff) two
      = takeoff_of ("8x4 *2 corners window:1x1/0.1", "");

  g_assert_cmpuint (one->quantities->len, ==, two->quantities->len);
  for (guint i = 0; i < one->quantities->len; i++)
    {
      const CwQuantity *a = one->quantities->pdata[i];
      const CwQuantity *b = two->quantities->pdata[i];

      g_assert_true (a->type == b->type);
      if (g_str_equal (a->type->key, "panel.waste"))
        g_assert_cmpfloat (b->amount, <=, a->amount + 1e-9);
      else if (g_str_equal (a->type->unit, "%"))
        case_assert_near (b->amount, a->amount, 1e-12);
      else if (adds_up (a))
        case_assert_near (b->amount, 2 * a->amount, 1e-12);
      else
        g_assert_true (b->amount <= 2 * a->amount && b->amount >= a->amount);
    }
}

static void
test_units_change_no_number (void)
{
  g_autoptr (CwProject) metric = case_project (HOUSE, "");
  g_autoptr (CwNode) copy = cw_node_copy (&metric->node);
  g_autoptr (CwTakeoff) first = cw_takeoff_new (metric, NULL, NULL);
  g_autoptr (CwTakeoff) second = NULL;

  cw_node_put (copy, "units", CW_UNITS_US);
  cw_node_freeze (copy);
  second = cw_takeoff_new ((CwProject *) copy, NULL, NULL);
  for (guint i = 0; i < first->quantities->len; i++)
    {
      const CwQuantity *a = first->quantities->pdata[i];
      const CwQuantity *b = second->quantities->pdata[i];
      g_autofree char *words = cw_quantity_steps_plain (a);
      g_autofree char *other_words = cw_quantity_steps_plain (b);

      g_assert_true (memcmp (&a->amount, &b->amount, sizeof (double)) == 0);
      g_assert_cmpstr (words, ==, other_words);
    }
}

static void
assert_in_order (const GPtrArray *quantities)
{
  for (guint i = 0; i < quantities->len; i++)
    {
      const CwQuantity *quantity = quantities->pdata[i];
      const CwQuantity *former = i ? quantities->pdata[i - 1] : NULL;

      g_assert_true (isfinite (quantity->amount));
      g_assert_cmpfloat (quantity->amount, >=, 0);
      g_assert_cmpuint (quantity->steps->len, >, 0);
      if (former)
        g_assert_true (former->type < quantity->type
                       || (former->type == quantity->type
                           && quantity->variant != NULL));
    }
}

static void
test_order_and_words (void)
{
  g_autoptr (CwTakeoff) takeoff = takeoff_of (HOUSE, "");

  assert_in_order (takeoff->quantities);
  for (guint i = 0; i < takeoff->walls->len; i++)
    assert_in_order (
        ((CwWallTakeoff *) takeoff->walls->pdata[i])->quantities);
}

/* Every key of the table comes of a house with every layer. */
static void
test_every_key (void)
{
  g_autoptr (CwTakeoff) takeoff = takeoff_of (HOUSE, "labour.wage=50");

  for (guint i = 0; i < cw_n_quantity_types; i++)
    {
      const CwQuantityType *type = &cw_quantity_types[i];

      g_assert_true (cw_quantity_type (type->key) == type);
      /* Each has a name of its own; see the tests of cost. */
      if (!g_str_equal (type->key, "cost.alternate"))
        case_amount (takeoff, NULL, type->key);
      g_assert_nonnull (cw_trade_step_label (type->step));
    }
  g_assert_null (cw_quantity_type ("wall"));
}

static void
test_orders_at_the_project_alone (void)
{
  g_autoptr (CwTakeoff) takeoff = takeoff_of (HOUSE, "");
  const CwWallTakeoff *wall = takeoff->walls->pdata[0];
  guint n_orders = 0;

  for (guint i = 0; i < wall->quantities->len; i++)
    g_assert_true (isnan (
        ((CwQuantity *) wall->quantities->pdata[i])->order_amount));
  for (guint i = 0; i < takeoff->quantities->len; i++)
    {
      const CwQuantity *quantity = takeoff->quantities->pdata[i];

      if (isnan (quantity->order_amount))
        continue;
      n_orders++;
      g_assert_cmpfloat (fabs (remainder (quantity->order_amount, 1)), <=, 0);
      g_assert_cmpstr (quantity->order_unit, !=, "");
    }
  /* Panels, mortar, fasteners, barrier, base coat, mesh, finish, sealant,
   * backer rod and four beads. */
  g_assert_cmpuint (n_orders, ==, 13);
}

static const CwQuantity *
variant_of (const CwTakeoff *takeoff, const char *variant)
{
  for (guint i = 0; i < takeoff->quantities->len; i++)
    {
      const CwQuantity *quantity = takeoff->quantities->pdata[i];

      if (g_strcmp0 (quantity->variant, variant) == 0)
        return quantity;
    }
  return NULL;
}

static CwProject *
with_mark (const CwProject *project)
{
  g_autoptr (CwNode) mark = cw_node_new (&cw_mark_type);
  g_autoptr (CwList) marks = NULL;
  CwNode *copy = cw_node_copy (&project->node);

  cw_node_put_text (mark, "id", "w1");
  cw_node_put_text (mark, "name", "W1");
  marks = cw_list_new (&mark, 1);
  cw_node_set_list (copy, CW_PROJECT_MARKS, marks);
  cw_node_freeze (copy);
  return (CwProject *) copy;
}

static void
test_openings_by_kind_and_mark (void)
{
  g_autoptr (CwProject) bare = case_project (
      "9x4 *2 door:1x2 window:1x1#w1 window:1x1#w1; 9x4 window:2x1#w1 "
      "arch:1x1+0.3:segmental",
      "");
  g_autoptr (CwProject) project = with_mark (bare);
  g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);

  case_assert_near (case_amount (takeoff, NULL, "opening.count"), 8, 1e-12);
  case_assert_near (variant_of (takeoff, "window")->amount, 5, 1e-12);
  case_assert_near (variant_of (takeoff, "door")->amount, 2, 1e-12);
  case_assert_near (variant_of (takeoff, "arch")->amount, 1, 1e-12);
  case_assert_near (variant_of (takeoff, "mark W1")->amount, 5, 1e-12);
}

static void
test_reuse (void)
{
  g_autoptr (CwProject) project = case_project ("9x4; 8x4; 7x4", "");
  g_autoptr (CwTakeoff) former = cw_takeoff_new (project, NULL, NULL);
  const CwNode *edited = cw_list_at (project->elevations, 1);
  g_autoptr (CwNode) by = cw_node_copy (edited);
  g_autoptr (CwNode) next = NULL;
  g_autoptr (CwTakeoff) takeoff = NULL;

  cw_node_put (by, "count", 5);
  next = cw_node_replace (&project->node, edited, by);
  takeoff = cw_takeoff_new ((CwProject *) next, former, NULL);
  g_assert_true (takeoff->walls->pdata[0] == former->walls->pdata[0]);
  g_assert_true (takeoff->walls->pdata[1] != former->walls->pdata[1]);
  g_assert_true (takeoff->walls->pdata[2] == former->walls->pdata[2]);
  case_assert_near (case_amount (takeoff, NULL, "wall.gross"),
                    36 + 5 * 32 + 28, 1e-12);
}

static void
test_cancelled (void)
{
  g_autoptr (CwProject) project = case_project ("9x4", "");
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();

  g_cancellable_cancel (cancellable);
  g_assert_null (cw_takeoff_new (project, NULL, cancellable));
}

static CwTakeoff *
takeoff_of_changed (const char *field, const char *value, guint slot)
{
  g_autoptr (CwProject) project = case_project ("9x4 window:1x1", "");
  const CwNode *edited = cw_list_at (project->elevations, 0);
  g_autoptr (CwNode) by = cw_node_copy (edited);
  g_autoptr (CwNode) next = NULL;

  if (field)
    cw_node_put_text (by, field, value);
  else
    cw_node_set_child (by, slot, NULL);
  next = cw_node_replace (&project->node, edited, by);
  return cw_takeoff_new ((CwProject *) next, NULL, NULL);
}

static void
test_without_outline (void)
{
  g_autoptr (CwTakeoff) takeoff
      = takeoff_of_changed (NULL, NULL, CW_ELEVATION_OUTLINE);

  case_assert_near (case_amount (takeoff, "e1", "opening.count"), 1, 1e-12);
  g_assert_null (cw_takeoff_quantity (takeoff, "e1", "wall.net"));
  g_assert_null (cw_takeoff_quantity (takeoff, "project", "panel.order"));
}

static void
test_without_buildup (void)
{
  g_autoptr (CwTakeoff) takeoff = takeoff_of_changed ("buildup", "", 0);

  case_assert_near (case_amount (takeoff, "e1", "wall.net"), 35, 1e-12);
  case_assert_near (case_amount (takeoff, "e1", "opening.jamb"), 2, 1e-12);
  g_assert_null (cw_takeoff_quantity (takeoff, "e1", "panel.stock"));
  g_assert_null (cw_takeoff_quantity (takeoff, NULL, "barrier.rolls"));
}

static void
test_without_layers (void)
{
  g_autoptr (CwTakeoff) takeoff = takeoff_of (
      HOUSE, "fastener=none joint-mortar=none barrier=none base-coat=none "
             "mesh=none finish=none sealant=none");
  static const char *const absent[]
      = { "fastener.count", "mortar.bags", "barrier.area", "basecoat.mass",
          "mesh.field",     "finish.pails", "sealant.length" };

  for (guint i = 0; i < G_N_ELEMENTS (absent); i++)
    g_assert_null (cw_takeoff_quantity (takeoff, NULL, absent[i]));
  g_assert_cmpfloat (case_amount (takeoff, NULL, "panel.order"), >, 0);
}

static void
test_empty_project (void)
{
  g_autoptr (CwProject) project = cw_project_new_default (CW_UNITS_US);
  g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);

  g_assert_cmpuint (takeoff->walls->len, ==, 0);
  g_assert_cmpuint (takeoff->quantities->len, ==, 0);
  g_assert_null (cw_takeoff_wall (takeoff, "e1"));
  g_assert_null (cw_takeoff_quantity (takeoff, "e1", "wall.net"));
}

static void
test_steps_read (void)
{
  g_autoptr (CwTakeoff) takeoff
      = takeoff_of ("10x4 window:1.5x1; 9x4 unclad:2x1@1,0", "");
  const CwQuantity *net = cw_takeoff_quantity (takeoff, "e1", "wall.net");
  const CwTextStyle us = cw_text_style_plain (CW_UNITS_US);
  g_autofree char *plain = cw_quantity_steps_plain (net);
  g_autofree char *feet = cw_quantity_steps_text (net, &us);
  const CwQuantity *rasped
      = cw_takeoff_quantity (takeoff, "e1", "panel.rasped");
  g_autofree char *inches = cw_quantity_steps_text (rasped, &us);

  g_assert_cmpstr (plain, ==,
                   "gross 40 m² less openings 1.5 m² less unclad areas 0 m²");
  g_assert_nonnull (strstr (feet, "430.6 ft²"));
  g_assert_nonnull (strstr (inches, "63/64″"));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
#define ADD(path, test) g_test_add_func ("/estimate/takeoff/" path, test)
  ADD ("project-is-the-sum", test_project_is_the_sum);
  ADD ("count-doubles", test_count_doubles);
  ADD ("units-change-no-number", test_units_change_no_number);
  ADD ("order-and-words", test_order_and_words);
  ADD ("every-key", test_every_key);
  ADD ("orders-at-the-project-alone", test_orders_at_the_project_alone);
  ADD ("openings-by-kind-and-mark", test_openings_by_kind_and_mark);
  ADD ("reuse", test_reuse);
  ADD ("cancelled", test_cancelled);
  ADD ("without-outline", test_without_outline);
  ADD ("without-buildup", test_without_buildup);
  ADD ("without-layers", test_without_layers);
  ADD ("empty-project", test_empty_project);
  ADD ("steps-read", test_steps_read);
  return g_test_run ();
}

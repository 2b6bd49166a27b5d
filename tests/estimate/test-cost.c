/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Labour, the order list and the bid.
 */
#include "estimate-cases.h"

static CwTakeoff *
takeoff_of (const char *walls, const char *settings)
{
  g_autoptr (CwProject) project = case_project (walls, settings);

  return cw_takeoff_new (project, NULL, NULL);
}

#define PRICES                                                                \
  "panel.price=46.5 panel.spare=2 joint-mortar.price=18.4 fastener.price=62 " \
  "barrier.price=148 base-coat.price=24.75 mesh.price=71 finish.price=83.2 "  \
  "sealant.price=7.9 backer-rod.price=12 labour.wage=38.55"

/* Worked by hand: 8 m² of panels an hour by a crew of 3. */
static void
test_labour (void)
{
  g_autoptr (CwTakeoff) takeoff = takeoff_of (
      "9.609x6.027", "labour.barrier=0 labour.joints=0 labour.base-coat=0 "
                     "labour.finish=0 labour.sealant=0 labour.beads=0 "
                     "labour.panels=8 labour.crew=3 labour.day=8");
  const double placed = 40 * 2.4 * 0.6;

  case_assert_near (case_amount (takeoff, NULL, "labour.hours"),
                    placed / 8 * 3, 1e-9);
  case_assert_near (case_amount (takeoff, NULL, "labour.days"),
                    placed / 8 / 8, 1e-9);
}

/* K-09, published (Cyclopedia of Architecture, Carpentry and Building, vol.
 * 4): two plasterers and a helper, 8 h, 40 to 50 square yards of three-coat
 * work; 24 hours of labour are then 0.48 to 0.60 a square yard. */
static void
test_crew_output (void)
{
  const double yard = 0.9144 * 0.9144;
  g_autoptr (CwTakeoff) takeoff = takeoff_of (
      "10x5", "labour.barrier=0 labour.sawing=0 labour.panels=0 "
              "labour.joints=0 labour.finish=0 labour.sealant=0 "
              "labour.beads=0 labour.crew=3 labour.day=8 "
              "labour.base-coat=5.225796");
  double hours = case_amount (takeoff, NULL, "labour.hours");

  /* 50 yd² in 8 h are 5.225796 m² an hour. */
  case_assert_near (hours / (50 / yard), 0.48, 1e-6);
  case_assert_near (case_amount (takeoff, NULL, "labour.days"),
                    50 / yard / 50, 1e-6);
}

/* K-10, published (Treatise on Architecture and Building Construction, vol.
 * 4): one man lays 1,500 shingles a day of 2.25, which is 1.50 for 1,000. */
static void
test_price_of_work (void)
{
  g_autoptr (CwTakeoff) takeoff = takeoff_of (
      "100x10", "labour.barrier=0 labour.sawing=0 labour.panels=0 "
                "labour.joints=0 labour.base-coat=0 labour.sealant=0 "
                "labour.beads=0 labour.crew=1 labour.day=8 "
                "labour.finish=187.5 labour.wage=0.28125");

  case_assert_near (case_amount (takeoff, NULL, "labour.days"), 1000 / 1500.0,
                    1e-9);
  g_assert_cmpint (takeoff->cost->sums[CW_COST_LABOUR], ==, 15000);
}

/* The printed lines add up to the printed sums, to the cent. */
static void
test_lines_add_up (void)
{
  g_autoptr (CwTakeoff) takeoff
      = takeoff_of ("9x6 *3 corners window:1.2x1.4/0.1 door:1x2.1", PRICES);
  const CwCost *cost = takeoff->cost;
  CwMoney sums[CW_N_COSTS] = { 0 }, all = 0;

  g_assert_cmpuint (cost->lines->len, >, 12);
  for (guint i = 0; i < cost->lines->len; i++)
    {
      const CwCostLine *line = cost->lines->pdata[i];

      g_assert_cmpint (line->money % 100, ==, 0);
      g_assert_cmpint (
          line->money, ==,
          cw_money_of (cw_money_amount (line->amount), line->price,
                       &cost->currency));
      sums[line->kind] += line->money;
    }
  for (guint i = 0; i < CW_N_COSTS; i++)
    {
      g_assert_cmpint (sums[i], ==, cost->sums[i]);
      all += sums[i];
    }
  g_assert_cmpint (all, >, 0);
  g_assert_cmpint (cost->bid, ==, all);
}

/* By hand: 800 of cost with 10 % contingency, 5 % overhead, 20 % profit, 8 %
 * tax on the price, rounded up to 50. */
static void
test_parts (void)
{
  g_autoptr (CwProject) project = cw_project_new_default (CW_UNITS_US);
  g_autoptr (CwCost) cost = cw_cost_new (project);
  CwBid bid = { .contingency = CW_DECIMAL (10), .overhead = CW_DECIMAL (5),
                .profit = CW_DECIMAL (20), .tax = CW_DECIMAL (8),
                .tax_on = CW_TAX_ON_PRICE, .rounding = CW_DECIMAL (50) };

  cw_cost_add (cost, &(CwCostLine) { .kind = CW_COST_MATERIAL,
                                     .name = (char *) "a", .amount = 2,
                                     .unit = "", .price = CW_DECIMAL (300),
                                     .taxed = TRUE });
  cw_cost_add (cost, &(CwCostLine) { .kind = CW_COST_LABOUR,
                                     .name = (char *) "b", .amount = 4,
                                     .unit = "h",
                                     .price = CW_DECIMAL (50) });
  cw_cost_finish (cost, &bid, 10);
  g_assert_cmpint (cost->contingency, ==, CW_MONEY (80));
  g_assert_cmpint (cost->overhead, ==, CW_MONEY (44));
  g_assert_cmpint (cost->profit, ==, 1848000);      /* 184.80 */
  g_assert_cmpint (cost->tax, ==, 887000);          /* 88.704 */
  g_assert_cmpint (cost->bid, ==, CW_MONEY (1200)); /* 1197.50 */
  g_assert_cmpint (cost->rounding, ==, 25000);
  g_assert_cmpint (cost->per_area, ==, CW_MONEY (120));

  bid.profit_on = CW_PROFIT_ON_PRICE;
  bid.tax_on = CW_TAX_ON_LINES;
  bid.rounding = 0;
  cw_cost_finish (cost, &bid, 0);
  g_assert_cmpint (cost->profit, ==, CW_MONEY (231));
  g_assert_cmpint (cost->tax, ==, CW_MONEY (48));
  g_assert_cmpint (cost->bid, ==, CW_MONEY (1203));
  g_assert_cmpint (cost->per_area, ==, 0);
}

/* L-05, derived: 44,000 lb of panels of 98.67 lb each hold 445. */
static void
test_trucks (void)
{
  const char *const settings
      = "panel.mass=44.755959 panel.per-pallet=1000 joint-mortar=none "
        "base-coat=none finish=none";
  g_autoptr (CwTakeoff) full = takeoff_of (
      "2.4x0.6", "panel.mass=44.755959 panel.per-pallet=1000 panel.spare=444 "
                 "joint-mortar=none base-coat=none finish=none");
  g_autoptr (CwTakeoff) over = takeoff_of (
      "2.4x0.6", "panel.mass=44.755959 panel.per-pallet=1000 panel.spare=445 "
                 "joint-mortar=none base-coat=none finish=none");
  g_autoptr (CwTakeoff) one = takeoff_of ("2.4x0.6", settings);
  /* 45 pallets by 22 a truck, and light. */
  g_autoptr (CwTakeoff) bulky = takeoff_of (
      "2.4x0.6", "panel.per-pallet=1 panel.spare=44 truck.pallets=22");

  case_assert_near (case_amount (bulky, NULL, "pallet.count"), 45, 1e-12);
  case_assert_near (case_amount (bulky, NULL, "truck.count"), 3, 1e-12);
  case_assert_near (case_amount (full, NULL, "panel.order"), 445, 1e-12);
  case_assert_near (case_amount (full, NULL, "truck.count"), 1, 1e-12);
  case_assert_near (case_amount (over, NULL, "truck.count"), 2, 1e-12);
  case_assert_near (case_amount (one, NULL, "truck.count"), 1, 1e-12);
}

/* @project with one kind of equipment, two of it by the day. */
static CwProject *
with_equipment (const CwProject *project, CwDecimal days, CwEquipmentBy by)
{
  CwNode *changed = cw_node_copy (&project->node);
  g_autoptr (CwNode) scaffold = cw_node_new (&cw_equipment_type);
  g_autoptr (CwList) list = NULL;

  cw_node_put (scaffold, "count", 2);
  cw_node_put (scaffold, "by", by);
  cw_node_put (scaffold, "days", days);
  cw_node_put (scaffold, "price", CW_DECIMAL (85));
  list = cw_list_new (&scaffold, 1);
  cw_node_set_list (changed, CW_PROJECT_EQUIPMENT, list);
  cw_node_freeze (changed);
  return (CwProject *) changed;
}

/* Two at 85: once, for 12 days, and for as many whole days as the crew is
 * there: 57.6 m² of panels at 8 m² an hour are 0.9 of a day. */
static void
test_equipment (void)
{
  static const struct
  {
    CwEquipmentBy by;
    int days, money;
  } cases[] = {
    { CW_EQUIPMENT_EACH, 12, 170 },
    { CW_EQUIPMENT_DAY, 12, 2040 },
    { CW_EQUIPMENT_DAY, 0, 170 },
  };
  g_autoptr (CwProject) bare = case_project (
      "9.609x6.027", "labour.barrier=0 labour.joints=0 labour.base-coat=0 "
                     "labour.finish=0 labour.sealant=0 labour.beads=0 "
                     "labour.panels=8 labour.crew=3 labour.day=8");

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (CwProject) project = with_equipment (
          bare, CW_DECIMAL (cases[i].days), cases[i].by);
      g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);

      g_assert_cmpint (takeoff->cost->sums[CW_COST_EQUIPMENT], ==,
                       CW_MONEY (cases[i].money));
    }
}

/* Pieces for corners in boxes and strips on rolls of their own: then the
 * field's rolls are without them. */
static void
test_mesh_ready_made (void)
{
  const char *const wall = "9x6 window:2x1 window:1x1 door:1x2";
  g_autoptr (CwTakeoff) takeoff = takeoff_of (
      wall, "mesh.corner-box=4 mesh.corner-price=30 mesh.edge-roll=10000 "
            "mesh.edge-price=7 mesh.roll-length=60000");
  const CwQuantity *corners
      = cw_takeoff_quantity (takeoff, NULL, "mesh.corner");
  const CwQuantity *edges = cw_takeoff_quantity (takeoff, NULL, "mesh.edge");
  const double field = (54 - 5) / 0.9;

  /* 4 + 4 + 2 pieces; 6 + 4 + 5 m. */
  case_assert_near (corners->amount, 10, 1e-12);
  case_assert_near (corners->order_amount, 3, 1e-12);
  case_assert_near (edges->amount, 15, 1e-9);
  case_assert_near (edges->order_amount, 2, 1e-12);
  case_assert_near (case_amount (takeoff, NULL, "mesh.field"), field, 1e-9);
  case_assert_near (case_amount (takeoff, NULL, "mesh.rolls"), 1, 1e-12);
  g_assert_cmpint (takeoff->cost->sums[CW_COST_MATERIAL], ==,
                   CW_MONEY (3 * 30 + 2 * 7));
}

/* @project with its wall @quick of a second buildup, whose crew lays ten times
 * the joints in an hour. */
static CwProject *
with_quick_crew_on (const CwProject *project, gsize quick)
{
  const CwBuildup *first = cw_list_at (project->buildups, 0);
  CwNode *changed = cw_node_copy (&project->node);
  g_autoptr (CwNode) second = cw_node_copy (&first->node);
  g_autoptr (CwNode) labour = cw_node_copy (first->labour);
  g_autoptr (CwNode) wall
      = cw_node_copy (cw_list_at (project->elevations, quick));
  g_autoptr (CwList) buildups = NULL;
  g_autoptr (CwList) walls = NULL;

  cw_node_put (labour, "joints", CW_DECIMAL (300));
  cw_node_set_child (second, CW_BUILDUP_LABOUR, labour);
  cw_node_put_text (second, "id", "b2");
  cw_node_put_text (wall, "buildup", "b2");
  buildups = cw_list_append (project->buildups, second);
  walls = cw_list_set (project->elevations, quick, wall);
  cw_node_set_list (changed, CW_PROJECT_BUILDUPS, buildups);
  cw_node_set_list (changed, CW_PROJECT_ELEVATIONS, walls);
  cw_node_freeze (changed);
  return (CwProject *) changed;
}

/* What a day needs is what the crew needs that mixes the most, whichever wall
 * it works on. */
static void
test_mixes_of_two_crews (void)
{
  g_autoptr (CwProject) bare
      = case_project ("9x6; 8x3", "joint-mortar.pot-life=30");

  for (gsize quick = 0; quick < 2; quick++)
    {
      g_autoptr (CwProject) project = with_quick_crew_on (bare, quick);
      g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
      const char *const quick_wall = quick == 0 ? "e1" : "e2";
      const char *const slow_wall = quick == 0 ? "e2" : "e1";

      /* 30 m an hour take 0.33 bags: in 30 min 0.165 of one, 16 times in 8 h;
       * 300 m take 3.3: 1.65, so one whole bag, 26.4 times. */
      case_assert_near (case_amount (takeoff, slow_wall, "mortar.mixes"), 16,
                        1e-12);
      case_assert_near (case_amount (takeoff, quick_wall, "mortar.mixes"), 27,
                        1e-12);
      case_assert_near (case_amount (takeoff, NULL, "mortar.mixes"), 27,
                        1e-12);
    }
}

/* A project with one own line, of 1 by @key at 1. */
static CwProject *
with_own_line (const CwProject *project, gint64 key, CwUnits units)
{
  CwNode *changed = cw_node_copy (&project->node);
  g_autoptr (CwNode) line = cw_node_new (&cw_own_line_type);
  g_autoptr (CwList) lines = NULL;

  cw_node_put (line, "per", key);
  cw_node_put (line, "units", units);
  cw_node_put (line, "price", CW_DECIMAL_ONE);
  lines = cw_list_new (&line, 1);
  cw_node_set_list (changed, CW_PROJECT_OWN_LINES, lines);
  cw_node_freeze (changed);
  return (CwProject *) changed;
}

/* The last one, which is the own line. */
static const CwCostLine *
own_line_of (const CwTakeoff *takeoff)
{
  return takeoff->cost->lines->pdata[takeoff->cost->lines->len - 1];
}

/* How much of a US unit is in the quantity's own; exact by NIST SP 811,
 * appendix B (from memory). */
static double
us_size (const char *unit)
{
  if (g_str_equal (unit, "m"))
    return 0.3048;
  if (g_str_equal (unit, "m²"))
    return 0.09290304;
  if (g_str_equal (unit, "kg"))
    return 0.45359237;
  return 1;
}

/* By each quantity that a line may be priced by, in both units: the
 * project's figure of it. */
static void
test_own_lines (void)
{
  const CwField *field = &cw_own_line_type.fields[cw_node_type_field (
      &cw_own_line_type, "per")];
  g_autoptr (CwProject) bare = case_project (
      "9x6 *2 corners window:1.2x1.4/0.1 door:1x2.1 band:2x0.1x0.02", PRICES);

  for (const CwChoice *choice = field->choices; choice->name; choice++)
    for (CwUnits units = CW_UNITS_US; units <= CW_UNITS_METRIC; units++)
      {
        g_autoptr (CwProject) project
            = with_own_line (bare, choice->value, units);
        g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
        const CwCostLine *line = own_line_of (takeoff);
        const gboolean is_once = choice->value == CW_LINE_PROJECT;
        const double measured
            = is_once ? 1 : case_amount (takeoff, NULL, choice->name);
        const double size
            = is_once || units == CW_UNITS_METRIC
                  ? 1
                  : us_size (cw_quantity_type (choice->name)->unit);

        g_test_message ("%s, %s", choice->name, line->unit);
        case_assert_near (line->amount, measured / size, 1e-12);
        g_assert_cmpint (
            line->money, ==,
            cw_money_of (cw_money_amount (measured / size), CW_DECIMAL_ONE,
                         &takeoff->cost->currency));
        if (size < 1)
          g_assert_cmpstr (line->unit, !=,
                           cw_quantity_type (choice->name)->unit);
      }
}

/* Steps show money to the cent, as many digits as it has. */
static void
test_money_in_steps (void)
{
  static const struct
  {
    const char *currency, *all_of_it;
  } currencies[] = {
    { "USD", "all of it 12345678.50 USD, rounded up to whole 0.00 USD: 0.00 "
             "USD more" },
    { "JPY", "all of it 12345679 JPY, rounded up to whole 0 JPY: 0 JPY more" },
    { "KWD", "all of it 12345678.500 KWD, rounded up to whole 0.000 KWD: "
             "0.000 KWD more" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (currencies); i++)
    {
      g_autoptr (CwProject) bare = case_project ("9x6", "");
      CwNode *changed = cw_node_copy (&bare->node);
      g_autoptr (CwNode) line = cw_node_new (&cw_own_line_type);
      g_autoptr (CwList) lines = NULL;
      g_autoptr (CwProject) project = NULL;
      g_autoptr (CwTakeoff) takeoff = NULL;
      g_autofree char *steps = NULL;

      cw_node_put (line, "price", (CwDecimal) 12345678500000);
      lines = cw_list_new (&line, 1);
      cw_node_set_list (changed, CW_PROJECT_OWN_LINES, lines);
      cw_node_put_text (changed, "currency", currencies[i].currency);
      cw_node_freeze (changed);
      project = (CwProject *) changed;
      takeoff = cw_takeoff_new (project, NULL, NULL);
      steps = cw_quantity_steps_plain (
          cw_takeoff_quantity (takeoff, NULL, "cost.bid"));
      g_assert_cmpstr (steps, ==, currencies[i].all_of_it);
    }
}

/* 100 m² of wall are 1076.391042 ft². */
static void
test_unit_cost (void)
{
  g_autoptr (CwProject) project = cw_project_new_default (CW_UNITS_US);
  g_autoptr (CwCost) cost = cw_cost_new (project);
  CwBid bid = { 0 };

  cw_cost_add (cost, &(CwCostLine) { .kind = CW_COST_MATERIAL,
                                     .name = (char *) "a", .amount = 1,
                                     .unit = "",
                                     .price = CW_DECIMAL (12345) });
  cw_cost_finish (cost, &bid, 100);
  g_assert_cmpint (cost->per_area, ==, 1234500);        /* 123.45 */
  g_assert_cmpint (cost->per_square_foot, ==, 114700);  /* 11.4688… */
}

/* @project with its buildup twice, the second with dearer and heavier
 * panels, and that one as an alternate. */
static CwProject *
with_alternate (const CwProject *project)
{
  const CwBuildup *first = cw_list_at (project->buildups, 0);
  CwNode *changed = cw_node_copy (&project->node);
  g_autoptr (CwNode) second = cw_node_copy (&first->node);
  g_autoptr (CwNode) panel = cw_node_copy (cw_list_at (first->panels, 0));
  g_autoptr (CwNode) alternate = cw_node_new (&cw_alternate_type);
  g_autoptr (CwList) panels = NULL;
  g_autoptr (CwList) buildups = NULL;
  g_autoptr (CwList) alternates = NULL;

  cw_node_put (panel, "price", CW_DECIMAL (60));
  cw_node_put (panel, "mass", CW_DECIMAL (60));
  panels = cw_list_new (&panel, 1);
  cw_node_put_text (second, "id", "b2");
  cw_node_set_list (second, CW_BUILDUP_PANELS, panels);
  buildups = cw_list_append (project->buildups, second);
  cw_node_put_text (alternate, "name", "Thick");
  cw_node_put_text (alternate, "buildup", "b1");
  cw_node_put_text (alternate, "by", "b2");
  alternates = cw_list_new (&alternate, 1);
  cw_node_set_list (changed, CW_PROJECT_BUILDUPS, buildups);
  cw_node_set_list (changed, CW_PROJECT_ALTERNATES, alternates);
  cw_node_freeze (changed);
  return (CwProject *) changed;
}

static const CwQuantity *
alternate_line (const CwTakeoff *takeoff)
{
  for (guint i = 0; i < takeoff->quantities->len; i++)
    {
      const CwQuantity *quantity = takeoff->quantities->pdata[i];

      if (g_str_equal (quantity->type->key, "cost.alternate"))
        return quantity;
    }
  g_error ("no alternate");
}

/* Forty panels and two spare ones, 13.50 dearer each. */
static void
test_alternate (void)
{
  g_autoptr (CwProject) bare = case_project ("9.609x6.027", PRICES);
  g_autoptr (CwProject) project = with_alternate (bare);
  g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
  g_autoptr (CwTakeoff) plain = cw_takeoff_new (bare, NULL, NULL);
  const CwQuantity *line = alternate_line (takeoff);

  g_assert_cmpstr (line->variant, ==, "Thick");
  g_assert_cmpint (line->money, ==, CW_MONEY (567));
  g_assert_cmpint (takeoff->cost->bid, ==, plain->cost->bid);
}

/* An edit elsewhere works out no wall of an alternate again. */
static void
test_alternate_is_kept (void)
{
  g_autoptr (CwProject) bare = case_project ("9x6; 8x3", PRICES);
  g_autoptr (CwProject) project = with_alternate (bare);
  g_autoptr (CwTakeoff) first = cw_takeoff_new (project, NULL, NULL);
  CwNode *edited = cw_node_copy (&project->node);
  g_autoptr (CwProject) next = NULL;
  g_autoptr (CwTakeoff) second = NULL;
  const CwAlternateTakeoff *a, *b;

  cw_node_put_text (edited, "currency", "EUR");
  cw_node_freeze (edited);
  next = (CwProject *) edited;
  second = cw_takeoff_new (next, first, NULL);
  a = first->alternates->pdata[0];
  b = second->alternates->pdata[0];
  g_assert_true (a->takeoff->walls->pdata[0] == b->takeoff->walls->pdata[0]);
  g_assert_true (a->takeoff->walls->pdata[1] == b->takeoff->walls->pdata[1]);
  g_assert_cmpstr (b->takeoff->cost->currency.code, ==, "EUR");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/estimate/cost/labour", test_labour);
  g_test_add_func ("/estimate/cost/K-09", test_crew_output);
  g_test_add_func ("/estimate/cost/K-10", test_price_of_work);
  g_test_add_func ("/estimate/cost/lines-add-up", test_lines_add_up);
  g_test_add_func ("/estimate/cost/parts", test_parts);
  g_test_add_func ("/estimate/cost/own-lines", test_own_lines);
  g_test_add_func ("/estimate/cost/equipment", test_equipment);
  g_test_add_func ("/estimate/cost/mesh-ready-made", test_mesh_ready_made);
  g_test_add_func ("/estimate/cost/mixes-of-two-crews",
                   test_mixes_of_two_crews);
  g_test_add_func ("/estimate/cost/unit-cost", test_unit_cost);
  g_test_add_func ("/estimate/cost/money-in-steps", test_money_in_steps);
  g_test_add_func ("/estimate/cost/L-05", test_trucks);
  g_test_add_func ("/estimate/cost/alternate", test_alternate);
  g_test_add_func ("/estimate/cost/alternate-is-kept",
                   test_alternate_is_kept);
  return g_test_run ();
}

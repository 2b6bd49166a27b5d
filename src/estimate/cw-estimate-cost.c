/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From what is ordered, worked and hired to the bid.
 */
#include "cw-estimate-private.h"

#include <math.h>

/* What the order list calls a layer. */
static const char *
name_of_layer (const CwNode *layer)
{
  int name = cw_node_type_field (layer->type, "name");
  const char *text = name < 0 ? "" : cw_node_get_text (layer, (guint) name);

  if (*text)
    return text;
  if (layer->type == &cw_bead_type)
    return cw_field_choice_by_value (
               &cw_bead_type.fields[cw_node_type_field (&cw_bead_type,
                                                        "kind")],
               ((const CwBead *) layer)->kind)
        ->label;
  return layer->type->label;
}

void
cw_estimate_buy (CwProjectEstimate *estimate, const CwQuantity *quantity,
                 const CwNode *layer, const char *price, double n)
{
  int index = cw_node_type_field (layer->type, price);

  g_assert (index >= 0);
  if (n > 0)
    cw_cost_add (estimate->cost,
                 &(CwCostLine) { .kind = CW_COST_MATERIAL,
                                 .step = quantity->type->step,
                                 .name = (char *) name_of_layer (layer),
                                 .key = quantity->type->key,
                                 .amount = n,
                                 .unit = quantity->order_unit,
                                 .price = cw_node_get (layer, (guint) index),
                                 .taxed = TRUE });
}

static void
add_equipment (CwProjectEstimate *estimate, const CwEquipment *equipment)
{
  double crew_days = ceil (
      cw_quantities_amount (estimate->quantities, "labour.days") - 1e-9);
  double days = equipment->days > 0 ? cw_decimal_to_double (equipment->days)
                                    : MAX (0, crew_days);
  gboolean by_day = equipment->by == CW_EQUIPMENT_DAY;

  cw_cost_add (estimate->cost,
               &(CwCostLine) { .kind = CW_COST_EQUIPMENT,
                               .step = CW_STEP_COST,
                               .name = *equipment->name
                                           ? equipment->name
                                           : (char *) cw_equipment_type.label,
                               .amount = (double) equipment->each
                                         * (by_day ? days : 1),
                               .unit = by_day ? "d" : "",
                               .price = equipment->price,
                               .taxed = equipment->taxed != 0 });
}

static void
add_own_line (CwProjectEstimate *estimate, const CwOwnLine *line)
{
  const CwField *field = &cw_own_line_type.fields[cw_node_type_field (
      &cw_own_line_type, "per")];
  const char *key = line->key == CW_LINE_PROJECT
                        ? NULL
                        : cw_field_choice_by_value (field, line->key)->name;
  const CwTextStyle style = cw_text_style_plain ((CwUnits) line->units);
  const CwShownAmount each
      = key ? cw_text_style_amount (
                  &style, cw_quantities_amount (estimate->quantities, key),
                  cw_quantity_type (key)->unit)
            : (CwShownAmount) { 1, "", 0 };

  cw_cost_add (estimate->cost,
               &(CwCostLine) { .kind = (CwCostKind) line->kind,
                               .step = CW_STEP_COST,
                               .name = *line->name
                                           ? line->name
                                           : (char *) cw_own_line_type.label,
                               .key = key,
                               .amount = each.value
                                         * cw_decimal_to_double (line->amount),
                               .unit = each.unit,
                               .price = line->price,
                               .taxed = line->taxed != 0 });
}

static void
add_lines (CwProjectEstimate *estimate)
{
  const CwProject *project = estimate->takeoff->project;

  for (gsize i = 0; i < cw_list_length (project->equipment); i++)
    add_equipment (estimate, cw_list_at (project->equipment, i));
  for (gsize i = 0; i < cw_list_length (project->own_lines); i++)
    add_own_line (estimate, cw_list_at (project->own_lines, i));
}

CwQuantity *
cw_estimate_add_money (CwProjectEstimate *estimate, const char *key,
                       const char *variant, CwMoney money)
{
  const CwCurrency *currency = &estimate->cost->currency;
  CwQuantity *quantity = cw_quantity_add_variant (
      estimate->quantities, key, variant, cw_money_to_double (money));

  quantity->is_money = TRUE;
  quantity->money = money;
  if (*currency->code)
    quantity->unit = currency->code;
  return quantity;
}

static void
add_sum (CwProjectEstimate *estimate, const char *key, CwCostKind kind)
{
  const CwCost *cost = estimate->cost;
  guint n = 0;

  for (guint i = 0; i < cost->lines->len; i++)
    n += ((const CwCostLine *) cost->lines->pdata[i])->kind == kind;
  cw_quantity_step (cw_estimate_add_money (estimate, key, NULL, cost->sums[kind]),
                    N_ ("{0} lines, each rounded once; {1} lines of the whole "
                        "bid have no price yet"),
                    { n, "" }, { cost->n_unpriced, "" });
  for (CwTradeStep step = 0; step <= CW_STEP_COST; step++)
    {
      CwMoney money = cw_cost_at_step (cost, kind, step);

      if (money != 0)
        cw_quantity_step (cw_estimate_add_money (estimate, key,
                                     step == CW_STEP_COST
                                         ? N_ ("Own lines")
                                         : cw_trade_step_label (step),
                                     money),
                          N_ ("lines of this trade step"));
    }
}

/* A part put on a sum, in words. */
static void
add_part (CwProjectEstimate *estimate, const char *key, CwMoney money,
          CwDecimal percent, CwMoney of, const char *sentence)
{
  CwQuantity *quantity = cw_estimate_add_money (estimate, key, NULL, money);

  cw_quantity_step (quantity, sentence,
                    { cw_decimal_to_double (percent), "%" },
                    { cw_money_to_double (of), quantity->unit });
}

static void
add_parts (CwProjectEstimate *estimate, const CwBid *bid)
{
  const CwCost *cost = estimate->cost;
  CwMoney sum = cost->sums[CW_COST_MATERIAL] + cost->sums[CW_COST_LABOUR]
                + cost->sums[CW_COST_EQUIPMENT];
  const CwMoney before_overhead = sum + cost->contingency;
  const CwMoney before_profit = before_overhead + cost->overhead;
  const CwMoney price = before_profit + cost->profit;

  add_part (estimate, "cost.contingency", cost->contingency, bid->contingency,
            sum, N_ ("{0} of material, labour and equipment {1}"));
  add_part (estimate, "cost.overhead", cost->overhead, bid->overhead,
            before_overhead, N_ ("{0} of {1} with contingency"));
  add_part (estimate, "cost.profit", cost->profit, bid->profit, before_profit,
            bid->profit_on == CW_PROFIT_ON_PRICE
                ? N_ ("{0} of the price, on a cost of {1}")
                : N_ ("{0} of {1} with overhead"));
  add_part (estimate, "cost.tax", cost->tax, bid->tax, price,
            bid->tax_on == CW_TAX_ON_PRICE
                ? N_ ("{0} of the price {1}")
                : N_ ("{0} of material and the lines said to be taxed, of a "
                      "price of {1}"));
}

static void
add_bid (CwProjectEstimate *estimate, const CwBid *bid, double area)
{
  const CwCost *cost = estimate->cost;
  CwQuantity *line = cw_estimate_add_money (estimate, "cost.bid", NULL, cost->bid);

  cw_quantity_step (line,
                    N_ ("all of it {0}, rounded up to whole {1}: {2} more"),
                    { cw_money_to_double (cost->bid - cost->rounding),
                      line->unit },
                    { cw_decimal_to_double (bid->rounding), line->unit },
                    { cw_money_to_double (cost->rounding), line->unit });
  line = cw_estimate_add_money (estimate, "cost.unit", NULL, cost->per_area);
  cw_quantity_step (line, N_ ("the bid {0} over {1} of net wall, for 1 m²"),
                    { cw_money_to_double (cost->bid), line->unit },
                    { area, "m²" });
  line = cw_estimate_add_money (estimate, "cost.unit-foot", NULL,
                                cost->per_square_foot);
  cw_quantity_step (line, N_ ("the bid {0} over {1} of net wall, for 1 ft²"),
                    { cw_money_to_double (cost->bid), line->unit },
                    { area, "m²" });
}

void
cw_estimate_cost (CwProjectEstimate *estimate)
{
  const CwBid *bid = (const CwBid *) estimate->takeoff->project->bid;
  double area = cw_quantities_amount (estimate->quantities, "wall.net");

  add_lines (estimate);
  cw_cost_finish (estimate->cost, bid, area);
  if (estimate->cost->n_unpriced == estimate->cost->lines->len)
    return;
  add_sum (estimate, "cost.material", CW_COST_MATERIAL);
  add_sum (estimate, "cost.labour", CW_COST_LABOUR);
  add_sum (estimate, "cost.equipment", CW_COST_EQUIPMENT);
  add_parts (estimate, bid);
  add_bid (estimate, bid, area);
}

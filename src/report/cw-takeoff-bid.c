/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The bid: its summary, and every line that was priced. Lines are rounded
 * once each, and the sums are of the lines as they stand.
 */
#include "cw-i18n.h"
#include "cw-takeoff-papers.h"

static const CwTableColumn sum_columns[] = {
  { N_ ("Bid"), 70, CW_ALIGN_LEFT, CW_TYPE_BODY },
  { N_ ("Sum"), 30, CW_ALIGN_RIGHT, CW_TYPE_STRONG },
};

static const CwTableColumn line_columns[] = {
  { N_ ("Line"), 40, CW_ALIGN_LEFT, CW_TYPE_BODY },
  { N_ ("Amount"), 22, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Price"), 18, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Sum"), 20, CW_ALIGN_RIGHT, CW_TYPE_STRONG },
};

static char *
money (const CwPapers *papers, CwMoney sum)
{
  return cw_money_format (sum, &papers->takeoff->cost->currency,
                          &papers->options->style);
}

static void
add_sum (const CwPapers *papers, CwTable *table, const char *label,
         CwMoney sum)
{
  cw_table_add_cell (table, label);
  cw_table_take_cell (table, money (papers, sum));
}

static void
add_summary (const CwPapers *papers)
{
  const CwCost *cost = papers->takeoff->cost;
  g_autoptr (CwTable) table
      = cw_table_new (sum_columns, G_N_ELEMENTS (sum_columns));

  add_sum (papers, table, _("Material"), cost->sums[CW_COST_MATERIAL]);
  add_sum (papers, table, _("Labour"), cost->sums[CW_COST_LABOUR]);
  add_sum (papers, table, _("Equipment"), cost->sums[CW_COST_EQUIPMENT]);
  add_sum (papers, table, _("Contingency"), cost->contingency);
  add_sum (papers, table, _("Overhead"), cost->overhead);
  add_sum (papers, table, _("Profit"), cost->profit);
  add_sum (papers, table, _("Tax"), cost->tax);
  add_sum (papers, table, _("Rounding"), cost->rounding);
  add_sum (papers, table, _("Bid"), cost->bid);
  if (papers->options->style.units == CW_UNITS_US)
    add_sum (papers, table, _("For 1 ft² of net wall"),
             cost->per_square_foot);
  else
    add_sum (papers, table, _("For 1 m² of net wall"), cost->per_area);
  cw_pages_add_table (papers->pages, table);
}

/* In the unit that it is priced by, whatever the reader's units. */
static char *
priced_amount (const CwPapers *papers, const CwCostLine *line)
{
  const gboolean is_whole
      = cw_money_amount (line->amount) % CW_DECIMAL_ONE == 0;
  g_autofree char *number = cw_text_style_number (
      &papers->options->style, line->amount, is_whole ? 0 : 2);

  return *line->unit ? g_strdup_printf ("%s\302\240%s", number, line->unit)
                     : g_steal_pointer (&number);
}

static char *
amount_text (const CwPapers *papers, const CwCostLine *line)
{
  CwQuantity order = { .order_amount = line->amount,
                       .order_unit = line->unit };

  return line->kind == CW_COST_MATERIAL && line->step != CW_STEP_COST
             ? cw_papers_order (papers, &order)
             : priced_amount (papers, line);
}

/* With the places of the currency, and more where it has more. */
static char *
price_text (const CwPapers *papers, CwDecimal price)
{
  const CwTextStyle *style = &papers->options->style;
  CwDecimal step = CW_DECIMAL_ONE;

  for (guint i = 0; i < papers->takeoff->cost->currency.places; i++)
    step /= 10;
  return price % step == 0
             ? cw_text_style_number (
                   style, cw_decimal_to_double (price),
                   papers->takeoff->cost->currency.places)
             : cw_decimal_format (price, style);
}

static void
add_line (const CwPapers *papers, CwTable *table, const CwCostLine *line)
{
  cw_table_add_cell (table, _(line->name));
  cw_table_take_cell (table, amount_text (papers, line));
  cw_table_take_cell (table,
                      line->price == 0
                          ? g_strdup (_("no price"))
                          : price_text (papers, line->price));
  cw_table_take_cell (table, money (papers, line->money));
}

static void
add_kind (const CwPapers *papers, CwCostKind kind, const char *title)
{
  const CwCost *cost = papers->takeoff->cost;
  g_autoptr (CwTable) table
      = cw_table_new (line_columns, G_N_ELEMENTS (line_columns));
  int step = -1;

  for (guint i = 0; i < cost->lines->len; i++)
    {
      const CwCostLine *line = cost->lines->pdata[i];

      if (line->kind != kind)
        continue;
      if ((int) line->step != step)
        cw_table_add_group (table,
                            line->step == CW_STEP_COST
                                ? _("Own lines")
                                : _(cw_trade_step_label (line->step)));
      step = (int) line->step;
      add_line (papers, table, line);
    }
  if (cw_table_n_rows (table) == 0)
    return;
  cw_table_add_group (table, _("All of it"));
  cw_table_add_cell (table, _(title));
  cw_table_add_cell (table, "");
  cw_table_add_cell (table, "");
  cw_table_take_cell (table, money (papers, cost->sums[kind]));
  cw_papers_add_titled_table (papers, _(title), table);
}

static const CwTableColumn alternate_columns[] = {
  { N_ ("Alternate"), 40, CW_ALIGN_LEFT, CW_TYPE_BODY },
  { N_ ("Bid with it"), 30, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("More or less"), 30, CW_ALIGN_RIGHT, CW_TYPE_STRONG },
};

static void
add_alternates (const CwPapers *papers)
{
  const CwTakeoff *takeoff = papers->takeoff;
  g_autoptr (CwTable) table
      = cw_table_new (alternate_columns, G_N_ELEMENTS (alternate_columns));

  for (guint i = 0; i < takeoff->alternates->len; i++)
    {
      const CwAlternateTakeoff *it = takeoff->alternates->pdata[i];
      const CwMoney bid = it->takeoff->cost->bid;

      cw_table_add_cell (table, *it->alternate->name
                                    ? it->alternate->name
                                    : _(cw_alternate_type.label));
      cw_table_take_cell (table, money (papers, bid));
      cw_table_take_cell (table, money (papers, bid - takeoff->cost->bid));
    }
  cw_papers_add_titled_table (papers, _("Alternates"), table);
}

void
cw_papers_add_bid (const CwPapers *papers)
{
  const CwCost *cost = papers->takeoff->cost;

  if (cost->n_unpriced == cost->lines->len)
    return;
  cw_pages_begin_here (papers->pages, _("Bid"), "bid");
  cw_page_add_heading (papers->pages, CW_TYPE_HEADING, _("Bid"), 60);
  cw_page_add_text (papers->pages, CW_TYPE_SMALL,
                    _("Every line is rounded once to the currency's smallest "
                      "unit, and the sums are of the lines as they stand. "
                      "Rates, prices, percentages and taxes are as typed: "
                      "compare them with offers, wage agreements and the law "
                      "of the place before a bid goes out."));
  if (cost->n_unpriced > 0)
    cw_page_add_text (papers->pages, CW_TYPE_SMALL,
                      _("Lines without a price are in the bid with nothing."));
  cw_page_add_space (papers->pages, 0.5);
  add_summary (papers);
  add_kind (papers, CW_COST_MATERIAL, N_ ("Order list with prices"));
  add_kind (papers, CW_COST_LABOUR, N_ ("Labour"));
  add_kind (papers, CW_COST_EQUIPMENT, N_ ("Equipment"));
  add_alternates (papers);
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Panels: pieces by kind, the panels that they take, and waste.
 */
#include "cw-estimate-private.h"

static double
panel_area (const CwPanel *panel)
{
  return cw_length_in_m (panel->length) * cw_length_in_m (panel->height);
}

static void
add_pieces (CwWallEstimate *estimate)
{
  static const struct
  {
    const char *key;
    CwPieceKind kind;
    const char *sentence;
  } kinds[] = {
    { "panel.whole", CW_PIECE_WHOLE, N_ ("panels placed uncut") },
    { "panel.rasped", CW_PIECE_RASPED,
      N_ ("panels trimmed by at most {0}") },
    { "panel.cut", CW_PIECE_CUT,
      N_ ("pieces sawn, notched, holed, cut to a rake or a curve") },
  };
  const CwSettingOut *setting_out
      = (const CwSettingOut *) estimate->wall->buildup->setting_out;

  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    cw_quantity_step (
        cw_quantity_add (estimate->quantities, kinds[i].key,
                         cw_layout_count (estimate->layout, kinds[i].kind)),
        kinds[i].sentence, { cw_estimate_mm (setting_out->rasp), "mm" });
}

/* Panels used, of one or more kinds. */
typedef struct
{
  guint n_panels, least, n_whole, n_sawn;
  double area;               /* m² */
  GArray *kinds;             /* Kind */
} Stock;

typedef struct
{
  const CwPanel *panel;
  guint n;
} Kind;

static Stock
stock_begin (void)
{
  return (Stock) { .kinds = g_array_new (FALSE, FALSE, sizeof (Kind)) };
}

static void
add_kind (Stock *stock, const CwPanel *panel, guint n_panels, guint n_whole,
          guint n_sawn)
{
  const Kind kind = { panel, n_panels };

  stock->n_panels += n_panels;
  stock->n_whole += n_whole;
  stock->n_sawn += n_sawn;
  stock->area += n_panels * panel_area (panel);
  if (n_panels > 0)
    g_array_append_val (stock->kinds, kind);
}

static void
add_kind_steps (CwQuantity *quantity, const GArray *kinds)
{
  for (guint i = 0; i < kinds->len && kinds->len > 1; i++)
    {
      const Kind *kind = &g_array_index (kinds, Kind, i);

      cw_quantity_step (quantity, N_ ("of them {0} of {1} by {2}"),
                        { kind->n, "" },
                        { cw_estimate_mm (kind->panel->length), "mm" },
                        { cw_estimate_mm (kind->panel->height), "mm" });
    }
}

/* Adds the lines; @stock is done with. */
static void
add_stock (GPtrArray *quantities, Stock *stock)
{
  const guint n = stock->n_panels, least = stock->least;
  CwQuantity *quantity = cw_quantity_add (quantities, "panel.stock", n);

  cw_quantity_step (quantity, N_ ("whole and rasped panels {0}"),
                    { stock->n_whole, "" });
  cw_quantity_step (quantity,
                    N_ ("panels {1} that sawn pieces {0} come out of"),
                    { stock->n_sawn, "" }, { n - stock->n_whole, "" });
  add_kind_steps (quantity, stock->kinds);
  cw_quantity_step (quantity,
                    n == 1 ? N_ ("{0} panel, at least {1} is needed")
                           : N_ ("{0} panels, at least {1} are needed"),
                    { n, "" }, { least, "" });
  quantity->has_note = TRUE;
  cw_quantity_step (cw_quantity_add (quantities, "panel.least", least),
                    N_ ("whole and rasped panels {0}, and {1} that no cutting "
                        "of the sawn pieces can do without"),
                    { stock->n_whole, "" }, { least - stock->n_whole, "" });
  g_array_unref (stock->kinds);
}

static void
add_waste (GPtrArray *quantities, double placed, double stock)
{
  if (stock <= 0)
    return;
  cw_quantity_step (cw_quantity_add (quantities, "panel.waste",
                                     100 * (1 - placed / stock)),
                    N_ ("{0} placed of {1} of panels used"),
                    { placed, "m²" }, { stock, "m²" });
}

void
cw_estimate_panels (CwWallEstimate *estimate)
{
  const GArray *pieces = estimate->layout->pieces;
  const CwPanelMix *mix = estimate->mix;
  Stock stock = stock_begin ();

  add_pieces (estimate);
  for (guint i = 0; i < pieces->len; i++)
    estimate->figures->placed += g_array_index (pieces, CwPiece, i).area;
  for (guint i = 0; i < mix->plans->len; i++)
    {
      const CwPanelPlan *plan = mix->plans->pdata[i];

      add_kind (&stock, cw_list_at (estimate->wall->buildup->panels, i),
                plan->n_panels, plan->n_whole, plan->pieces->len);
    }
  stock.least = mix->least;
  add_stock (estimate->quantities, &stock);
  add_waste (estimate->quantities, estimate->figures->placed, stock.area);
}

static const CwPanel *
panel_of (const CwPanelStock *stock)
{
  return cw_list_at (stock->buildup->panels, stock->panel);
}

/* The panels used, apart for each panel that differs. */
static GArray *
panel_products (const CwProjectEstimate *estimate)
{
  const GPtrArray *stocks = estimate->takeoff->stocks;
  GArray *products = g_array_new (FALSE, FALSE, sizeof (CwProduct));

  for (guint i = 0; i < stocks->len; i++)
    {
      const CwPanelStock *stock = stocks->pdata[i];

      if (stock->n_panels > 0)
        cw_estimate_add_need (products, &panel_of (stock)->node,
                              stock->n_panels);
    }
  return products;
}

/* Orders @product, and keeps what its delivery needs. */
static void
order_panel (CwProjectEstimate *estimate, CwQuantity *order,
             const CwProduct *product)
{
  const CwPanel *panel = (const CwPanel *) product->layer;
  double n = product->need + (double) panel->spare;
  double pallets = cw_estimate_n_packages (n, (double) panel->per_pallet);

  order->amount += n;
  estimate->panel_mass += n * cw_decimal_to_double (panel->mass);
  estimate->pallets += pallets;
  estimate->pallet_area += pallets * cw_length_in_m (panel->pallet_length)
                           * cw_length_in_m (panel->pallet_width);
  cw_quantity_step (order, N_ ("{0} used and {1} spare, {2} by {3}"),
                    { product->need, "" }, { (double) panel->spare, "" },
                    { cw_estimate_mm (panel->length), "mm" },
                    { cw_estimate_mm (panel->height), "mm" });
  cw_estimate_buy (estimate, order, product->layer, "price", n);
}

static void
add_project_waste (CwProjectEstimate *estimate)
{
  const CwTakeoff *takeoff = estimate->takeoff;
  double placed = 0, area = 0;

  for (guint i = 0; i < takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = takeoff->walls->pdata[i];

      placed += wall->figures->placed * cw_estimate_count (wall);
    }
  for (guint i = 0; i < takeoff->stocks->len; i++)
    {
      const CwPanelStock *stock = takeoff->stocks->pdata[i];

      area += stock->n_panels * panel_area (panel_of (stock));
    }
  add_waste (estimate->quantities, placed, area);
}

static void
add_project_stock (CwProjectEstimate *estimate)
{
  const GPtrArray *stocks = estimate->takeoff->stocks;
  Stock sum = stock_begin ();

  for (guint i = 0; i < stocks->len; i++)
    {
      const CwPanelStock *stock = stocks->pdata[i];

      add_kind (&sum, panel_of (stock), stock->n_panels, stock->n_whole,
                stock->n_sawn);
      sum.least += stock->least;
    }
  add_stock (estimate->quantities, &sum);
}

void
cw_estimate_panel_order (CwProjectEstimate *estimate)
{
  g_autoptr (GArray) products = panel_products (estimate);
  CwQuantity *order;

  if (products->len == 0)
    return;
  add_project_stock (estimate);
  order = cw_quantity_add (estimate->quantities, "panel.order", 0);
  order->order_unit = N_ ("panel");
  for (guint i = 0; i < products->len; i++)
    order_panel (estimate, order, &g_array_index (products, CwProduct, i));
  order->order_amount = order->amount;
  add_project_waste (estimate);
}

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

/* One new panel for every piece. */
static void
take_stock (CwWallEstimate *estimate)
{
  CwWallFigures *figures = estimate->figures;
  const GArray *pieces = estimate->layout->pieces;

  g_array_set_size (figures->stock,
                    cw_list_length (estimate->wall->buildup->panels));
  for (guint i = 0; i < pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (pieces, CwPiece, i);

      g_assert (piece->panel < figures->stock->len);
      g_array_index (figures->stock, double, piece->panel)++;
      figures->placed += piece->area;
    }
}

static double
stock_area (const CwWallTakeoff *wall, double *n)
{
  double area = 0;

  for (guint i = 0; i < wall->figures->stock->len; i++)
    {
      double stock = g_array_index (wall->figures->stock, double, i);

      *n += stock;
      area += stock * panel_area (cw_list_at (wall->wall->buildup->panels, i));
    }
  return area;
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
  CwWallTakeoff wall = { .wall = (CwWall *) estimate->wall,
                         .figures = estimate->figures };
  double n = 0, area;

  add_pieces (estimate);
  take_stock (estimate);
  area = stock_area (&wall, &n);
  cw_quantity_step (cw_quantity_add (estimate->quantities, "panel.stock", n),
                    N_ ("a new panel for each of {0} pieces"), { n, "" });
  add_waste (estimate->quantities, estimate->figures->placed, area);
}

/* The panels used, apart for each panel that differs. */
static GArray *
panel_products (const CwProjectEstimate *estimate)
{
  GArray *products = g_array_new (FALSE, FALSE, sizeof (CwProduct));

  for (guint i = 0; i < estimate->takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = estimate->takeoff->walls->pdata[i];
      const GArray *stock = wall->figures->stock;

      for (guint j = 0; j < stock->len; j++)
        if (g_array_index (stock, double, j) > 0)
          cw_estimate_add_need (
              products, cw_list_at (wall->wall->buildup->panels, j),
              g_array_index (stock, double, j) * cw_estimate_count (wall));
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
}

static void
add_project_waste (CwProjectEstimate *estimate)
{
  double placed = 0, stock = 0, n = 0;

  for (guint i = 0; i < estimate->takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = estimate->takeoff->walls->pdata[i];

      placed += wall->figures->placed * cw_estimate_count (wall);
      stock += stock_area (wall, &n) * cw_estimate_count (wall);
    }
  add_waste (estimate->quantities, placed, stock);
}

void
cw_estimate_panel_order (CwProjectEstimate *estimate)
{
  g_autoptr (GArray) products = panel_products (estimate);
  CwQuantity *order;

  if (products->len == 0)
    return;
  order = cw_quantity_add (estimate->quantities, "panel.order", 0);
  order->order_unit = N_ ("panel");
  for (guint i = 0; i < products->len; i++)
    order_panel (estimate, order, &g_array_index (products, CwProduct, i));
  order->order_amount = order->amount;
  add_project_waste (estimate);
}

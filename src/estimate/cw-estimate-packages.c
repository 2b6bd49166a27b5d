/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From what all walls need to whole packages, rounded up once.
 */
#include "cw-estimate-private.h"

#include <math.h>

double
cw_estimate_count (const CwWallTakeoff *wall)
{
  return (double) wall->wall->elevation->count;
}

/* A need that fills packages exactly may come out of its sums a last digit
 * high, and must not open another one. */
double
cw_estimate_n_packages (double need, double size)
{
  double n = need / size;

  return MAX (0, ceil (n - 1e-9 * MAX (1, n)));
}

double
cw_estimate_with_waste (double amount, CwDecimal waste)
{
  return amount * (1 + cw_decimal_to_double (waste) / 100);
}

void
cw_estimate_add_need (GArray *products, const CwNode *layer, double need)
{
  for (guint i = 0; i < products->len; i++)
    {
      CwProduct *product = &g_array_index (products, CwProduct, i);

      if (product->layer == layer || cw_node_equal (product->layer, layer))
        {
          product->need += need;
          return;
        }
    }
  g_array_append_vals (products, &(CwProduct) { layer, need }, 1);
}

GArray *
cw_estimate_products (const CwProjectEstimate *estimate, guint slot,
                      gsize figure)
{
  GArray *products = g_array_new (FALSE, FALSE, sizeof (CwProduct));

  for (guint i = 0; i < estimate->takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = estimate->takeoff->walls->pdata[i];
      const CwBuildup *buildup = wall->wall->buildup;
      const CwNode *layer
          = buildup ? cw_node_child (&buildup->node, slot) : NULL;

      if (layer)
        cw_estimate_add_need (
            products, layer,
            G_STRUCT_MEMBER (double, wall->figures, figure)
                * cw_estimate_count (wall));
    }
  return products;
}

static void
pack (CwProjectEstimate *estimate, CwQuantity *quantity,
      const CwPackaging *packaging, const CwProduct *product)
{
  double size = packaging->size (product->layer);
  CwDecimal waste = packaging->waste ? packaging->waste (product->layer) : 0;
  double n = cw_estimate_n_packages (
      cw_estimate_with_waste (product->need, waste), size);

  quantity->amount += n;
  if (packaging->mass)
    estimate->package_mass += n * packaging->mass (product->layer);
  cw_quantity_step (quantity, packaging->sentence,
                    { product->need, packaging->unit },
                    { cw_decimal_to_double (waste), "%" },
                    { size, packaging->unit }, { n, "" });
  cw_estimate_buy (estimate, quantity, product->layer, "price", n);
}

void
cw_estimate_add_packages (CwProjectEstimate *estimate,
                          const CwPackaging *packaging)
{
  g_autoptr (GArray) products = cw_estimate_products (
      estimate, packaging->slot, packaging->figure);
  CwQuantity *quantity;

  if (products->len == 0)
    return;
  quantity = cw_quantity_add (estimate->quantities, packaging->key, 0);
  quantity->order_unit = packaging->order_unit;
  for (guint i = 0; i < products->len; i++)
    pack (estimate, quantity, packaging,
          &g_array_index (products, CwProduct, i));
  quantity->order_amount = quantity->amount;
}

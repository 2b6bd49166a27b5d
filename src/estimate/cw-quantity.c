/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-estimate-private.h"

#include <math.h>

const CwQuantityType *
cw_quantity_type (const char *key)
{
  g_return_val_if_fail (key != NULL, NULL);

  for (guint i = 0; i < cw_n_quantity_types; i++)
    if (g_str_equal (cw_quantity_types[i].key, key))
      return &cw_quantity_types[i];
  return NULL;
}

CwQuantity *
cw_quantity_add_variant (GPtrArray *quantities, const char *key,
                         const char *variant, double amount)
{
  CwQuantity *quantity = g_new0 (CwQuantity, 1);

  quantity->type = cw_quantity_type (key);
  g_assert (quantity->type != NULL);
  quantity->variant = g_strdup (variant);
  quantity->unit = quantity->type->unit;
  quantity->amount = amount;
  quantity->order_amount = NAN;
  quantity->order_unit = "";
  quantity->steps = g_array_new (FALSE, FALSE, sizeof (CwStepWords));
  g_ptr_array_add (quantities, quantity);
  return quantity;
}

CwQuantity *
cw_quantity_add (GPtrArray *quantities, const char *key, double amount)
{
  return cw_quantity_add_variant (quantities, key, NULL, amount);
}

void
cw_quantity_add_step (CwQuantity *quantity, const CwStepWords *step)
{
  g_array_append_vals (quantity->steps, step, 1);
}

CwQuantity *
cw_quantities_find (const GPtrArray *quantities, const char *key,
                    const char *variant)
{
  for (guint i = 0; i < quantities->len; i++)
    {
      CwQuantity *quantity = quantities->pdata[i];

      if (g_strcmp0 (quantity->variant, variant) == 0
          && g_str_equal (quantity->type->key, key))
        return quantity;
    }
  return NULL;
}

CwQuantity *
cw_quantities_line (GPtrArray *quantities, const char *key,
                    const char *variant)
{
  CwQuantity *line = cw_quantities_find (quantities, key, variant);

  return line ? line : cw_quantity_add_variant (quantities, key, variant, 0);
}

double
cw_quantities_amount (const GPtrArray *quantities, const char *key)
{
  const CwQuantity *quantity = cw_quantities_find (quantities, key, NULL);

  return quantity ? quantity->amount : 0;
}

static int
compare_types (gconstpointer a, gconstpointer b)
{
  const CwQuantity *const *first = a;
  const CwQuantity *const *second = b;

  return (int) ((*first)->type - (*second)->type);
}

/* g_ptr_array_sort() is stable since GLib 2.32, by its manual. */
void
cw_quantities_sort (GPtrArray *quantities)
{
  g_ptr_array_sort (quantities, compare_types);
}

void
cw_quantity_free (CwQuantity *quantity)
{
  g_return_if_fail (quantity != NULL);

  g_array_unref (quantity->steps);
  g_free (quantity->variant);
  g_free (quantity);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-price-book.h"

#include <string.h>

/* How a kind is sold, and the sizes that tell two without a name apart. */
static const struct
{
  const char *kind, *unit;
  const char *sizes[4];
  const char *size_unit;
} products[] = {
  { "panel", "panel", { "thickness", "height", "length" }, "mm" },
  { "fastener", "box", { "length" }, "mm" },
  { "joint-mortar", "bag", { "bag" }, "kg" },
  { "barrier", "roll", { "roll-width", "roll-length" }, "mm" },
  { "base-coat", "bag", { "bag" }, "kg" },
  { "mesh", "roll", { "roll-width", "roll-length" }, "mm" },
  { "finish", "pail", { "pail" }, "kg" },
  { "sealant", "cartridge", { "cartridge" }, "mL" },
};

void
cw_price_item_free (CwPriceItem *item)
{
  g_free (item->kind);
  g_free (item->name);
  g_free (item->unit);
  g_free (item->currency);
  g_free (item->date);
  g_free (item->note);
  g_free (item);
}

CwPriceItem *
cw_price_item_copy (const CwPriceItem *item)
{
  CwPriceItem *copy = g_new0 (CwPriceItem, 1);

  copy->kind = g_strdup (item->kind);
  copy->name = g_strdup (item->name);
  copy->unit = g_strdup (item->unit);
  copy->price = item->price;
  copy->currency = g_strdup (item->currency);
  copy->date = g_strdup (item->date);
  copy->note = g_strdup (item->note);
  return copy;
}

GPtrArray *
cw_price_book_new (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) cw_price_item_free);
}

GPtrArray *
cw_price_book_copy (const GPtrArray *book)
{
  GPtrArray *copy = cw_price_book_new ();

  for (guint i = 0; i < book->len; i++)
    g_ptr_array_add (copy, cw_price_item_copy (book->pdata[i]));
  return copy;
}

int
cw_price_book_find (const GPtrArray *book, const char *kind, const char *name)
{
  for (guint i = 0; i < book->len; i++)
    {
      const CwPriceItem *item = book->pdata[i];

      if (g_str_equal (item->kind, kind) && g_str_equal (item->name, name))
        return (int) i;
    }
  return -1;
}

const CwNodeType *const *
cw_product_types (void)
{
  static const CwNodeType *types[64];
  static gsize made;

  if (g_once_init_enter (&made))
    {
      guint n = 0;

      for (guint i = 0; i < cw_buildup_type.n_slots; i++)
        for (const CwNodeType *const *type = cw_buildup_type.slots[i].types;
             *type && n + 1 < G_N_ELEMENTS (types); type++)
          if (cw_node_type_field (*type, "price") >= 0)
            types[n++] = *type;
      g_once_init_leave (&made, 1);
    }
  return types;
}

const char *
cw_product_unit (const char *kind)
{
  for (guint i = 0; i < G_N_ELEMENTS (products); i++)
    if (g_str_equal (products[i].kind, kind))
      return products[i].unit;
  return "unit";
}

static char *
name_by_sizes (const CwNode *layer)
{
  GString *name = g_string_new (layer->type->element);

  for (guint i = 0; i < G_N_ELEMENTS (products); i++)
    {
      if (!g_str_equal (products[i].kind, layer->type->element))
        continue;
      for (guint j = 0; products[i].sizes[j]; j++)
        {
          int field = cw_node_type_field (layer->type, products[i].sizes[j]);
          g_autofree char *size
              = cw_decimal_to_text (cw_node_get (layer, (guint) field));

          g_string_append_printf (name, "%s%s", j > 0 ? " × " : " ", size);
        }
      g_string_append_printf (name, " %s", products[i].size_unit);
    }
  return g_string_free (name, FALSE);
}

char *
cw_product_name (const CwNode *layer)
{
  int field = cw_node_type_field (layer->type, "name");
  const char *name
      = field >= 0 ? cw_node_get_text (layer, (guint) field) : "";

  return *name ? g_strdup (name) : name_by_sizes (layer);
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Prices going from the book to a project and back.
 */
#include "cw-price-book.h"

static void
change_free (CwPriceChange *change)
{
  g_free (change->kind);
  g_free (change->name);
  g_free (change->unit);
  g_free (change->date);
  g_free (change->currency);
  g_free (change);
}

static int
price_field (const CwNode *layer)
{
  return cw_node_type_field (layer->type, "price");
}

typedef void (*LayerFunc) (const CwNode *layer, gpointer data);

static void
each_layer_of (const CwNode *buildup, LayerFunc each, gpointer data)
{
  for (guint slot = 0; slot < buildup->type->n_slots; slot++)
    {
      CwNode *child = NULL;
      const CwList *list = NULL;

      if (buildup->type->slots[slot].is_list)
        list = cw_node_list (buildup, slot);
      else
        child = cw_node_child (buildup, slot);
      if (child && price_field (child) >= 0)
        each (child, data);
      for (gsize i = 0; list && i < cw_list_length (list); i++)
        if (price_field (cw_list_at (list, i)) >= 0)
          each (cw_list_at (list, i), data);
    }
}

static void
each_layer (const CwProject *project, LayerFunc each, gpointer data)
{
  for (gsize i = 0; i < cw_list_length (project->buildups); i++)
    each_layer_of (cw_list_at (project->buildups, i), each, data);
}

typedef struct
{
  const CwProject *project;
  const GPtrArray *book;
  const char *date;
  GPtrArray *changes;
} Comparing;

/* The same change found before: a product stands in several buildups. */
static gboolean
is_known (const GPtrArray *changes, const CwPriceChange *like)
{
  for (guint i = 0; i < changes->len; i++)
    {
      const CwPriceChange *change = changes->pdata[i];

      if (g_str_equal (change->kind, like->kind)
          && g_str_equal (change->name, like->name)
          && change->from == like->from && change->to == like->to)
        return TRUE;
    }
  return FALSE;
}

/* Takes @change. */
static void
add_once (GPtrArray *changes, CwPriceChange *change)
{
  if (is_known (changes, change))
    change_free (change);
  else
    g_ptr_array_add (changes, change);
}

static CwPriceFit
fit_of (const CwPriceItem *item, const char *currency)
{
  if (!g_str_equal (item->currency, currency))
    return CW_PRICE_OTHER_CURRENCY;
  return g_str_equal (item->unit, cw_product_unit (item->kind))
             ? CW_PRICE_FITS
             : CW_PRICE_OTHER_UNIT;
}

static void
compare_with_book (const CwNode *layer, gpointer data)
{
  Comparing *comparing = data;
  g_autofree char *name = cw_product_name (layer);
  int index
      = cw_price_book_find (comparing->book, layer->type->element, name);
  const CwPriceItem *item;
  CwPriceChange *change;

  if (index < 0)
    return;
  item = comparing->book->pdata[index];
  if (item->price == cw_node_get (layer, (guint) price_field (layer))
      && fit_of (item, comparing->project->currency) == CW_PRICE_FITS)
    return;
  change = g_new0 (CwPriceChange, 1);
  change->kind = g_strdup (item->kind);
  change->name = g_steal_pointer (&name);
  change->unit = g_strdup (item->unit);
  change->from = cw_node_get (layer, (guint) price_field (layer));
  change->to = item->price;
  change->date = g_strdup (item->date);
  change->currency = g_strdup (item->currency);
  change->fit = fit_of (item, comparing->project->currency);
  add_once (comparing->changes, change);
}

static GPtrArray *
compare (const CwProject *project, const GPtrArray *book, const char *date,
         LayerFunc each)
{
  Comparing comparing = {
    project, book, date,
    g_ptr_array_new_with_free_func ((GDestroyNotify) change_free)
  };

  each_layer (project, each, &comparing);
  return comparing.changes;
}

GPtrArray *
cw_price_changes_to_project (const CwProject *project, const GPtrArray *book)
{
  return compare (project, book, NULL, compare_with_book);
}

/* The change that is taken for @layer, or NULL. */
static const CwPriceChange *
taken_for (const CwNode *layer, const GPtrArray *changes,
           const gboolean *taken)
{
  g_autofree char *name = cw_product_name (layer);
  CwDecimal price = cw_node_get (layer, (guint) price_field (layer));

  for (guint i = 0; i < changes->len; i++)
    {
      const CwPriceChange *change = changes->pdata[i];

      if (taken[i] && change->fit == CW_PRICE_FITS && change->from == price
          && g_str_equal (change->kind, layer->type->element)
          && g_str_equal (change->name, name))
        return change;
    }
  return NULL;
}

typedef struct
{
  const GPtrArray *changes;
  const gboolean *taken;
  CwNode *buildup;            /* as changed so far; owned */
} Applying;

static void
apply_to_layer (const CwNode *layer, gpointer data)
{
  Applying *applying = data;
  const CwPriceChange *change
      = taken_for (layer, applying->changes, applying->taken);

  if (change)
    {
      g_autoptr (CwNode) former = applying->buildup;
      g_autoptr (CwNode) priced = cw_node_with (
          layer, (guint) price_field (layer), change->to);

      applying->buildup = cw_node_replace (former, layer, priced);
    }
}

/* Buildup by buildup, since two may share a layer. */
CwProject *
cw_price_changes_apply (const CwProject *project, const GPtrArray *changes,
                        const gboolean *taken)
{
  g_autoptr (CwList) list = cw_list_ref (project->buildups);

  for (gsize i = 0; i < cw_list_length (project->buildups); i++)
    {
      const CwNode *buildup = cw_list_at (project->buildups, i);
      Applying applying = { changes, taken, cw_node_ref (buildup) };
      g_autoptr (CwNode) changed = NULL;

      each_layer_of (buildup, apply_to_layer, &applying);
      changed = applying.buildup;
      if (changed != buildup)
        {
          g_autoptr (CwList) former = g_steal_pointer (&list);

          list = cw_list_set (former, i, changed);
        }
    }
  if (list == project->buildups)
    return cw_node_ref (project);
  return cw_project_with_list (project, CW_PROJECT_BUILDUPS,
                               g_steal_pointer (&list));
}

static void
compare_with_project (const CwNode *layer, gpointer data)
{
  Comparing *comparing = data;
  g_autofree char *name = cw_product_name (layer);
  CwDecimal price = cw_node_get (layer, (guint) price_field (layer));
  int index
      = cw_price_book_find (comparing->book, layer->type->element, name);
  const CwPriceItem *item = index < 0 ? NULL : comparing->book->pdata[index];
  CwPriceChange *change;

  if (price == 0
      || (item && item->price == price
          && fit_of (item, comparing->project->currency) == CW_PRICE_FITS))
    return;
  change = g_new0 (CwPriceChange, 1);
  change->kind = g_strdup (layer->type->element);
  change->name = g_steal_pointer (&name);
  change->unit = g_strdup (cw_product_unit (layer->type->element));
  change->from = item ? item->price : 0;
  change->to = price;
  change->date = g_strdup (comparing->date);
  change->currency = g_strdup (comparing->project->currency);
  add_once (comparing->changes, change);
}

GPtrArray *
cw_price_changes_to_book (const CwProject *project, const GPtrArray *book,
                          const char *date)
{
  return compare (project, book, date, compare_with_project);
}

static void
take_into (GPtrArray *book, const CwPriceChange *change)
{
  int index = cw_price_book_find (book, change->kind, change->name);
  CwPriceItem *item = g_new0 (CwPriceItem, 1);

  item->kind = g_strdup (change->kind);
  item->name = g_strdup (change->name);
  item->unit = g_strdup (change->unit);
  item->price = change->to;
  item->currency = g_strdup (change->currency);
  item->date = g_strdup (change->date);
  item->note = g_strdup (
      index < 0 ? "" : ((const CwPriceItem *) book->pdata[index])->note);
  if (index >= 0)
    {
      cw_price_item_free (book->pdata[index]);
      book->pdata[index] = item;
    }
  else
    g_ptr_array_add (book, item);
}

GPtrArray *
cw_price_book_take (const GPtrArray *book, const GPtrArray *changes,
                    const gboolean *taken)
{
  GPtrArray *next = cw_price_book_copy (book);

  for (guint i = 0; i < changes->len; i++)
    if (taken[i])
      take_into (next, changes->pdata[i]);
  return next;
}

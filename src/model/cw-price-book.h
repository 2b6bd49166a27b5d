/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The user's own prices, and what they would change in a project. An item and
 * a layer of a buildup belong together when kind and name are equal.
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

typedef struct
{
  char *kind;           /* element of the layer: "panel", "mesh" … */
  char *name;           /* as cw_product_name() gives it */
  char *unit;           /* what the price is for, see cw_product_unit() */
  CwDecimal price;
  char *currency;       /* ISO 4217 */
  char *date;           /* "2026-11-25", may be "" */
  char *note;           /* supplier, terms; may be "" */
} CwPriceItem;

CwPriceItem *cw_price_item_copy (const CwPriceItem *item);
void cw_price_item_free (CwPriceItem *item);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwPriceItem, cw_price_item_free)

/* A book is an array of items. (transfer full) (element-type CwPriceItem) */
GPtrArray *cw_price_book_new (void);
GPtrArray *cw_price_book_copy (const GPtrArray *book);
/* The place of that item, or -1. */
int cw_price_book_find (const GPtrArray *book, const char *kind,
                        const char *name);

/* All kinds of layers that have a price, NULL-ended; static. */
const CwNodeType *const *cw_product_types (void);
/* What a price of that kind is for, as files write it: "box". */
const char *cw_product_unit (const char *kind);
/* Its name, or kind and sizes where it has none: "mesh 1000 × 50000 mm".
 * (transfer full) */
char *cw_product_name (const CwNode *layer);

typedef enum
{
  CW_PRICE_FITS,
  CW_PRICE_OTHER_CURRENCY,    /* cannot be taken */
  CW_PRICE_OTHER_UNIT,        /* cannot be taken */
} CwPriceFit;

typedef struct
{
  char *kind, *name, *unit;
  CwDecimal from, to;
  char *date, *currency;      /* of the new price */
  CwPriceFit fit;
} CwPriceChange;

/* What the book would change in the project's layers: those that it knows
 * with another price. (transfer full) (element-type CwPriceChange) */
GPtrArray *cw_price_changes_to_project (const CwProject *project,
                                        const GPtrArray *book);
/* The project with those of @changes that fit and for which @taken is TRUE;
 * @project itself, with a new reference, when none is. (transfer full) */
CwProject *cw_price_changes_apply (const CwProject *project,
                                   const GPtrArray *changes,
                                   const gboolean *taken);

/* What the project's prices would change in the book; prices of 0 are none.
 * @date: of the new ones. Where layers of one name have several prices, each
 * is a change. (transfer full) (element-type CwPriceChange) */
GPtrArray *cw_price_changes_to_book (const CwProject *project,
                                     const GPtrArray *book, const char *date);
/* A new book; notes stay. (transfer full) */
GPtrArray *cw_price_book_take (const GPtrArray *book,
                               const GPtrArray *changes,
                               const gboolean *taken);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The price book on disk. Errors are those of project files.
 */
#pragma once

#include "cw-price-book.h"
#include "cw-project-file.h"

G_BEGIN_DECLS

#define CW_PRICE_BOOK_NAMESPACE "urn:cladwright:price-book:1"

/* Where the user's book is kept: price-book.xml in the folder cladwright of
 * the user's data. (transfer full) */
GFile *cw_price_book_file (void);

/* (transfer full) (nullable) (element-type CwPriceItem) */
GPtrArray *cw_price_book_from_xml (GBytes *bytes, GError **error);
GBytes *cw_price_book_to_xml (const GPtrArray *book);

/* A book that is not there yet is an empty one. @etag: (out) (optional).
 * What cannot be read is refused with its line, and stays as it is. */
GPtrArray *cw_price_book_load (GFile *file, char **etag, GError **error);

/* As cw_project_save() does, its folder made where it is missing. */
gboolean cw_price_book_save (const GPtrArray *book, GFile *file, char **etag,
                             GError **error);

G_END_DECLS

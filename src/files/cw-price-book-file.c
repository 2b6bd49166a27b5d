/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-price-book-file.h"

#include "cw-file-bytes.h"
#include "cw-file-error.h"
#include "cw-i18n.h"
#include "cw-project-reading.h"
#include "cw-xml-text.h"

#define SCHEMA "/cladwright/schema/price-book-1.rng"

GFile *
cw_price_book_file (void)
{
  return g_file_new_build_filename (g_get_user_data_dir (), "cladwright",
                                    "price-book.xml", NULL);
}

static char *
attribute (xmlNode *element, const char *name)
{
  xmlChar *text = xmlGetNoNsProp (element, BAD_CAST name);
  char *copy = g_strdup (text ? (const char *)text : "");
  xmlFree (text);
  return copy;
}

static gboolean
read_item (GPtrArray *book, xmlNode *element, GError **error)
{
  CwPriceItem *item = g_new0 (CwPriceItem, 1);
  g_autofree char *price = attribute (element, "price");
  item->kind = attribute (element, "kind");
  item->name = attribute (element, "name");
  item->unit = attribute (element, "unit");
  item->currency = attribute (element, "currency");
  item->date = attribute (element, "date");
  item->note = attribute (element, "note");
  gboolean is_twice
      = cw_price_book_find (book, item->kind, item->name) >= 0;
  g_ptr_array_add (book, item);
  if (!cw_decimal_from_text (price, &item->price))
    {
      cw_file_error_set (error, CW_FILE_ERROR_VALUE, cw_xml_line (element),
                         _ ("“%s” is no price"), price);
      return FALSE;
    }
  if (!is_twice)
    return TRUE;
  cw_file_error_set (error, CW_FILE_ERROR_SENSE, cw_xml_line (element),
                     _ ("“%s” stands in the book before; an item is there "
                        "once"),
                     item->name);
  return FALSE;
}

GPtrArray *
cw_price_book_from_xml (GBytes *bytes, GError **error)
{
  g_return_val_if_fail (bytes != NULL, NULL);
  g_autoptr (CwXml) xml = cw_xml_parse (bytes, error);
  if (xml == NULL || !cw_xml_check_schema (xml, SCHEMA, error))
    return NULL;
  g_autoptr (GPtrArray) book = cw_price_book_new ();
  for (xmlNode *node = xmlDocGetRootElement (xml)->children; node != NULL;
       node = node->next)
    if (node->type == XML_ELEMENT_NODE && !read_item (book, node, error))
      return NULL;
  return g_steal_pointer (&book);
}

static void
append_item (GString *xml, const CwPriceItem *item)
{
  g_autofree char *price = cw_decimal_to_text (item->price);
  g_string_append (xml, "  <item");
  cw_xml_append_attribute (xml, "kind", item->kind);
  cw_xml_append_attribute (xml, "name", item->name);
  cw_xml_append_attribute (xml, "unit", item->unit);
  cw_xml_append_attribute (xml, "price", price);
  cw_xml_append_attribute (xml, "currency", item->currency);
  if (*item->date)
    cw_xml_append_attribute (xml, "date", item->date);
  if (*item->note)
    cw_xml_append_attribute (xml, "note", item->note);
  g_string_append (xml, "/>\n");
}

GBytes *
cw_price_book_to_xml (const GPtrArray *book)
{
  g_return_val_if_fail (book != NULL, NULL);
  GString *xml = g_string_new ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                               "<price-book xmlns=\"" CW_PRICE_BOOK_NAMESPACE
                               "\" format=\"1\">\n");
  for (guint i = 0; i < book->len; i++)
    append_item (xml, book->pdata[i]);
  g_string_append (xml, "</price-book>\n");
  return g_string_free_to_bytes (xml);
}

GPtrArray *
cw_price_book_load (GFile *file, char **etag, GError **error)
{
  g_return_val_if_fail (G_IS_FILE (file), NULL);
  g_autofree char *tag = NULL;
  if (!g_file_query_exists (file, NULL))
    return cw_price_book_new ();
  g_autoptr (GBytes) bytes = cw_file_bytes (file, &tag, error);
  g_autoptr (GPtrArray) book
      = bytes ? cw_price_book_from_xml (bytes, error) : NULL;
  if (book && etag)
    *etag = g_steal_pointer (&tag);
  return g_steal_pointer (&book);
}

gboolean
cw_price_book_save (const GPtrArray *book, GFile *file, char **etag,
                    GError **error)
{
  g_return_val_if_fail (book != NULL && G_IS_FILE (file), FALSE);
  g_autoptr (GBytes) bytes = cw_price_book_to_xml (book);
  g_autoptr (GPtrArray) again = cw_price_book_from_xml (bytes, error);
  if (again == NULL)
    return FALSE;
  g_autoptr (GFile) folder = g_file_get_parent (file);
  /* What fails here is told by the writing after it. */
  g_file_make_directory_with_parents (folder, NULL, NULL);
  return cw_file_bytes_save (bytes, file, etag, error);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-foreign.h"

struct CwForeign
{
  gatomicrefcount count;
  GArray *attributes;   /* CwForeignAttribute */
  GArray *elements;     /* CwForeignElement */
};

static void
clear_attribute (gpointer data)
{
  CwForeignAttribute *attribute = data;

  g_free (attribute->prefix);
  g_free (attribute->uri);
  g_free (attribute->name);
  g_free (attribute->value);
}

static void
clear_element (gpointer data)
{
  CwForeignElement *element = data;

  g_free (element->xml);
}

CwForeign *
cw_foreign_new (void)
{
  CwForeign *foreign = g_new0 (CwForeign, 1);

  g_atomic_ref_count_init (&foreign->count);
  foreign->attributes
      = g_array_new (FALSE, FALSE, sizeof (CwForeignAttribute));
  g_array_set_clear_func (foreign->attributes, clear_attribute);
  foreign->elements = g_array_new (FALSE, FALSE, sizeof (CwForeignElement));
  g_array_set_clear_func (foreign->elements, clear_element);
  return foreign;
}

CwForeign *
cw_foreign_ref (const CwForeign *foreign)
{
  g_return_val_if_fail (foreign != NULL, NULL);

  g_atomic_ref_count_inc (&((CwForeign *) foreign)->count);
  return (CwForeign *) foreign;
}

void
cw_foreign_unref (CwForeign *foreign)
{
  g_return_if_fail (foreign != NULL);

  if (!g_atomic_ref_count_dec (&foreign->count))
    return;
  g_array_unref (foreign->attributes);
  g_array_unref (foreign->elements);
  g_free (foreign);
}

static gboolean
attributes_equal (const CwForeignAttribute *a, const CwForeignAttribute *b)
{
  return g_str_equal (a->prefix, b->prefix) && g_str_equal (a->uri, b->uri)
         && g_str_equal (a->name, b->name) && g_str_equal (a->value, b->value);
}

static gboolean
elements_equal (const CwForeignElement *a, const CwForeignElement *b)
{
  return a->before == b->before && g_str_equal (a->xml, b->xml);
}

static gboolean
contents_equal (const CwForeign *a, const CwForeign *b)
{
  gsize n_attributes = cw_foreign_n_attributes (a);
  gsize n_elements = cw_foreign_n_elements (a);

  if (n_attributes != cw_foreign_n_attributes (b)
      || n_elements != cw_foreign_n_elements (b))
    return FALSE;
  for (gsize i = 0; i < n_attributes; i++)
    if (!attributes_equal (cw_foreign_attribute (a, i),
                           cw_foreign_attribute (b, i)))
      return FALSE;
  for (gsize i = 0; i < n_elements; i++)
    if (!elements_equal (cw_foreign_element (a, i),
                         cw_foreign_element (b, i)))
      return FALSE;
  return TRUE;
}

gboolean
cw_foreign_equal (const CwForeign *a, const CwForeign *b)
{
  if (a == b)
    return TRUE;
  if (a == NULL || b == NULL)
    return FALSE;
  return contents_equal (a, b);
}

void
cw_foreign_add_attribute (CwForeign *foreign, const char *prefix,
                          const char *uri, const char *name,
                          const char *value)
{
  CwForeignAttribute attribute = {
    g_strdup (prefix ? prefix : ""),
    g_strdup (uri ? uri : ""),
    g_strdup (name),
    g_strdup (value),
  };

  g_array_append_val (foreign->attributes, attribute);
}

void
cw_foreign_add_element (CwForeign *foreign, guint before, const char *xml)
{
  CwForeignElement element = { before, g_strdup (xml) };

  g_array_append_val (foreign->elements, element);
}

gsize
cw_foreign_n_attributes (const CwForeign *foreign)
{
  return foreign->attributes->len;
}

const CwForeignAttribute *
cw_foreign_attribute (const CwForeign *foreign, gsize index)
{
  g_return_val_if_fail (index < foreign->attributes->len, NULL);

  return &g_array_index (foreign->attributes, CwForeignAttribute, index);
}

gsize
cw_foreign_n_elements (const CwForeign *foreign)
{
  return foreign->elements->len;
}

const CwForeignElement *
cw_foreign_element (const CwForeign *foreign, gsize index)
{
  g_return_val_if_fail (index < foreign->elements->len, NULL);

  return &g_array_index (foreign->elements, CwForeignElement, index);
}

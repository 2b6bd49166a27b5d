/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Project to XML: one element a line, two spaces a level, attributes in the
 * order of the field tables, then those of other namespaces.
 */
#include "cw-foreign.h"
#include "cw-project-file.h"
#include "cw-project-reading.h"
#include "cw-project-value.h"
#include "cw-xml-text.h"

static void append_element (GString *xml, guint level, const CwNode *node);

/* Stated attributes, and those without which the file would not open. */
static gboolean
is_written (const CwNode *node, guint index)
{
  CwFieldFlags flags = node->type->fields[index].flags;
  return cw_node_states (node, index)
         || ((flags & CW_FIELD_REQUIRED) && !(flags & CW_FIELD_FROM_MARK));
}

static gboolean
has_attributes (const CwNode *node)
{
  for (guint i = 0; i < node->type->n_fields; i++)
    if (is_written (node, i))
      return TRUE;
  return FALSE;
}

/* A child that is there in any case says nothing when it states nothing. */
static gboolean
is_silent (const CwNode *node)
{
  return node->foreign == NULL && node->type->n_slots == 0
         && !has_attributes (node);
}

static void
append_attributes (GString *xml, const CwNode *node)
{
  for (guint i = 0; i < node->type->n_fields; i++)
    if (is_written (node, i))
      {
        g_autofree char *value = cw_project_value_write (node, i);
        cw_xml_append_attribute (xml, node->type->fields[i].name, value);
      }
}

static gboolean
declared_before (const CwForeign *foreign, gsize index)
{
  const char *prefix = cw_foreign_attribute (foreign, index)->prefix;
  for (gsize i = 0; i < index; i++)
    if (g_str_equal (cw_foreign_attribute (foreign, i)->prefix, prefix))
      return TRUE;
  return FALSE;
}

static void
append_foreign_attributes (GString *xml, const CwForeign *foreign)
{
  for (gsize i = 0; i < cw_foreign_n_attributes (foreign); i++)
    {
      const CwForeignAttribute *attribute = cw_foreign_attribute (foreign, i);
      const char *prefix = attribute->prefix;
      g_autofree char *declaration = g_strconcat ("xmlns:", prefix, NULL);
      g_autofree char *name = g_strconcat (prefix, ":", attribute->name, NULL);
      /* The prefix xml is declared by XML itself. */
      if (!g_str_equal (prefix, "xml") && !declared_before (foreign, i))
        cw_xml_append_attribute (xml, declaration, attribute->uri);
      cw_xml_append_attribute (xml, name, attribute->value);
    }
}

static void
append_indent (GString *xml, guint level)
{
  g_string_append_printf (xml, "%*s", (int)level * 2, "");
}

GPtrArray *
cw_project_written_children (const CwNode *node)
{
  GPtrArray *children = g_ptr_array_new ();
  for (guint i = 0; i < node->type->n_slots; i++)
    {
      const CwSlot *slot = &node->type->slots[i];
      CwList *list = slot->is_list ? cw_node_list (node, i) : NULL;
      CwNode *child = slot->is_list ? NULL : cw_node_child (node, i);
      gsize n = list ? cw_list_length (list) : 0;
      if (child && !(slot->always && is_silent (child)))
        g_ptr_array_add (children, child);
      for (gsize j = 0; j < n; j++)
        if (!(slot->always && n == 1 && is_silent (cw_list_at (list, j))))
          g_ptr_array_add (children, cw_list_at (list, j));
    }
  return children;
}

/* Foreign elements that stand before own child @place; with the last place,
 * all that are left. */
static void
append_foreign_before (GString *xml, guint level, const CwForeign *foreign,
                       gsize *next, guint place, gboolean is_last)
{
  for (; foreign && *next < cw_foreign_n_elements (foreign); ++*next)
    {
      const CwForeignElement *element = cw_foreign_element (foreign, *next);
      if (!is_last && element->before > place)
        break;
      append_indent (xml, level);
      g_string_append_printf (xml, "%s\n", element->xml);
    }
}

static void
append_content (GString *xml, guint level, const CwNode *node,
                const GPtrArray *children)
{
  gsize next = 0;
  for (guint i = 0; i < children->len; i++)
    {
      append_foreign_before (xml, level, node->foreign, &next, i, FALSE);
      append_element (xml, level, children->pdata[i]);
    }
  append_foreign_before (xml, level, node->foreign, &next, children->len, TRUE);
}

static void
append_element (GString *xml, guint level, const CwNode *node)
{
  const CwForeign *foreign = node->foreign;
  g_autoptr (GPtrArray) children = cw_project_written_children (node);

  append_indent (xml, level);
  g_string_append_printf (xml, "<%s", node->type->element);
  if (level == 0)
    cw_xml_append_attribute (xml, "xmlns", CW_PROJECT_NAMESPACE);
  append_attributes (xml, node);
  if (foreign)
    append_foreign_attributes (xml, foreign);
  if (children->len == 0
      && (foreign == NULL || cw_foreign_n_elements (foreign) == 0))
    {
      g_string_append (xml, "/>\n");
      return;
    }
  g_string_append (xml, ">\n");
  append_content (xml, level + 1, node, children);
  append_indent (xml, level);
  g_string_append_printf (xml, "</%s>\n", node->type->element);
}

GBytes *
cw_project_to_xml (const CwProject *project)
{
  g_return_val_if_fail (project != NULL, NULL);

  GString *xml = g_string_new ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
  append_element (xml, 0, &project->node);
  return g_string_free_to_bytes (xml);
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Written by ourselves, so that the bytes do not depend on the version of
 * the library.
 */
#include "cw-xml-foreign.h"

#include "cw-xml-text.h"

static void append_node (GString *xml, const xmlNode *node);

static void
append_name (GString *xml, const xmlNs *ns, const xmlChar *name)
{
  if (ns && ns->prefix)
    g_string_append_printf (xml, "%s:", ns->prefix);
  g_string_append (xml, (const char *)name);
}

static void
append_declarations (GString *xml, const xmlNs *ns)
{
  for (; ns != NULL; ns = ns->next)
    {
      g_autofree char *name = g_strconcat (ns->prefix ? "xmlns:" : "xmlns",
                                           (const char *)ns->prefix, NULL);
      cw_xml_append_attribute (xml, name,
                               ns->href ? (const char *)ns->href : "");
    }
}

static void
append_attributes (GString *xml, const xmlNode *element)
{
  for (const xmlAttr *attribute = element->properties; attribute != NULL;
       attribute = attribute->next)
    {
      xmlChar *value
          = xmlNodeListGetString (element->doc, attribute->children, 1);
      GString *name = g_string_new (NULL);
      append_name (name, attribute->ns, attribute->name);
      cw_xml_append_attribute (xml, name->str,
                               value ? (const char *)value : "");
      g_string_free (name, TRUE);
      xmlFree (value);
    }
}

static void
append_element (GString *xml, const xmlNode *element)
{
  g_string_append_c (xml, '<');
  append_name (xml, element->ns, element->name);
  append_declarations (xml, element->nsDef);
  append_attributes (xml, element);
  if (element->children == NULL)
    {
      g_string_append (xml, "/>");
      return;
    }
  g_string_append_c (xml, '>');
  for (const xmlNode *child = element->children; child; child = child->next)
    append_node (xml, child);
  g_string_append (xml, "</");
  append_name (xml, element->ns, element->name);
  g_string_append_c (xml, '>');
}

static void
append_instruction (GString *xml, const xmlNode *node)
{
  g_string_append_printf (xml, "<?%s", node->name);
  if (node->content)
    g_string_append_printf (xml, " %s", node->content);
  g_string_append (xml, "?>");
}

static void
append_node (GString *xml, const xmlNode *node)
{
  switch (node->type)
    {
    case XML_ELEMENT_NODE:
      append_element (xml, node);
      break;
    case XML_TEXT_NODE:
    case XML_CDATA_SECTION_NODE:
      cw_xml_append_content (xml, (const char *)node->content);
      break;
    case XML_COMMENT_NODE:
      g_string_append_printf (xml, "<!--%s-->", (const char *)node->content);
      break;
    case XML_PI_NODE:
      append_instruction (xml, node);
      break;
    default:
      break;
    }
}

char *
cw_xml_foreign_text (const xmlNode *node)
{
  GString *xml = g_string_new (NULL);
  /* A copy declares for itself what was declared further out. */
  xmlNode *copy = xmlDocCopyNode ((xmlNode *)node, node->doc, 1);
  if (copy == NULL)
    g_error ("Out of memory");
  append_node (xml, copy);
  xmlFreeNode (copy);
  return g_string_free (xml, FALSE);
}

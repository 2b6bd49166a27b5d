/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-xml-parse.h"

#include <libxml/SAX2.h>
#include <libxml/parser.h>
#include <string.h>

#include "cw-file-error.h"
#include "cw-i18n.h"

/* What the parser's callbacks found; hangs on the parser's _private. */
typedef struct
{
  gboolean has_dtd;
  guint dtd_line;
  GError *first;
} Findings;

static void
note_error (void *data, xmlErrorPtr xml_error)
{
  xmlParserCtxt *parser = data;
  Findings *findings = parser->_private;
  if (xml_error->level < XML_ERR_ERROR || findings->first != NULL)
    return;
  g_autofree char *text = g_strdup (xml_error->message);
  cw_file_error_set (&findings->first, CW_FILE_ERROR_XML,
                     MAX (xml_error->line, 1),
                     _ ("This is not well-formed XML: %s"), g_strchomp (text));
}

/* A project needs no DTD, and a DTD can hide bombs and reach out for other
 * files: stop before reading on. What the parser then returns tells nothing,
 * so the flag does. */
static void
note_dtd (void *data, const xmlChar *name, const xmlChar *external,
          const xmlChar *system)
{
  xmlParserCtxt *parser = data;
  Findings *findings = parser->_private;
  findings->has_dtd = TRUE;
  findings->dtd_line = (guint)MAX (xmlSAX2GetLineNumber (parser), 1);
  xmlStopParser (parser);
}

/* The tree keeps lines in 16 bits; a large project has more. */
static void
start_element (void *data, const xmlChar *name, const xmlChar *prefix,
               const xmlChar *uri, int n_namespaces, const xmlChar **namespaces,
               int n_attributes, int n_defaulted, const xmlChar **attributes)
{
  xmlParserCtxt *parser = data;
  xmlSAX2StartElementNs (data, name, prefix, uri, n_namespaces, namespaces,
                         n_attributes, n_defaulted, attributes);
  if (parser->node != NULL)
    parser->node->_private = GINT_TO_POINTER (xmlSAX2GetLineNumber (parser));
}

static xmlDoc *
run_parser (GBytes *bytes, Findings *findings)
{
  gsize size;
  const char *data = g_bytes_get_data (bytes, &size);
  xmlParserCtxt *parser = xmlNewParserCtxt ();
  if (parser == NULL)
    g_error ("Out of memory");
  parser->_private = findings;
  parser->sax->serror = note_error;
  parser->sax->internalSubset = note_dtd;
  parser->sax->startElementNs = start_element;
  xmlDoc *xml
      = xmlCtxtReadMemory (parser, data, (int)size, NULL, NULL,
                           XML_PARSE_NONET | XML_PARSE_NOERROR
                               | XML_PARSE_NOWARNING | XML_PARSE_NOCDATA);
  xmlFreeParserCtxt (parser);
  return xml;
}

static gboolean
check_utf8 (GBytes *bytes, GError **error)
{
  gsize size;
  const char *text = g_bytes_get_data (bytes, &size), *bad;
  if (size == 0)
    {
      cw_file_error_set (error, CW_FILE_ERROR_XML, 0, _ ("The file is empty"));
      return FALSE;
    }
  if (g_utf8_validate (text, (gssize)size, &bad))
    return TRUE;

  guint line = 1;
  for (const char *at = text; at < bad; at++)
    line += *at == '\n';
  cw_file_error_set (error, CW_FILE_ERROR_XML, line,
                     _ ("A project file is UTF-8 text; this is not"));
  return FALSE;
}

static gboolean
check_encoding (const xmlDoc *xml, GError **error)
{
  const char *encoding = (const char *)xml->encoding;
  if (encoding == NULL || g_ascii_strcasecmp (encoding, "UTF-8") == 0)
    return TRUE;
  cw_file_error_set (error, CW_FILE_ERROR_XML, 1,
                     _ ("A project file is UTF-8; this one says %s"), encoding);
  return FALSE;
}

/* TRUE when the tree may be used. */
static gboolean
judge (const xmlDoc *xml, Findings *findings, GError **error)
{
  if (findings->has_dtd)
    {
      cw_file_error_set (error, CW_FILE_ERROR_XML, findings->dtd_line,
                         _ ("<!DOCTYPE> is not allowed in a project file"));
      return FALSE;
    }
  if (findings->first != NULL)
    {
      g_propagate_error (error, g_steal_pointer (&findings->first));
      return FALSE;
    }
  if (xml == NULL || xmlDocGetRootElement (xml) == NULL)
    {
      cw_file_error_set (error, CW_FILE_ERROR_XML, 1,
                         _ ("This is not well-formed XML"));
      return FALSE;
    }
  return check_encoding (xml, error);
}

CwXml *
cw_xml_parse (GBytes *bytes, GError **error)
{
  if (!check_utf8 (bytes, error))
    return NULL;

  Findings findings = { 0 };
  g_autoptr (CwXml) xml = run_parser (bytes, &findings);
  gboolean is_good = judge (xml, &findings, error);
  g_clear_error (&findings.first);
  return is_good ? g_steal_pointer (&xml) : NULL;
}

void
cw_xml_free (CwXml *xml)
{
  if (xml)
    xmlFreeDoc (xml);
}

guint
cw_xml_line (const xmlNode *node)
{
  while (node != NULL && node->type != XML_ELEMENT_NODE)
    node = node->prev ? node->prev : node->parent;
  return node ? GPOINTER_TO_UINT (node->_private) : 0;
}

char *
cw_xml_describe (const xmlNode *element)
{
  xmlAttr *id = xmlHasNsProp ((xmlNode *)element, BAD_CAST "id", NULL);
  if (id == NULL || id->children == NULL)
    return g_strdup_printf ("<%s>", element->name);
  return g_strdup_printf ("<%s id=\"%s\">", element->name,
                          id->children->content);
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The RELAX NG schema as the last word on what a project file may hold. The
 * reader before it gives the better messages.
 */
#include <libxml/relaxng.h>

#include "cw-file-error.h"
#include "cw-files-resources.h"
#include "cw-i18n.h"
#include "cw-project-reading.h"

#define SCHEMA "/cladwright/schema/project-1.rng"

static xmlRelaxNG *
parse_schema (const char *resource)
{
  cw_files_register_resource ();
  g_autoptr (GBytes) bytes
      = g_resources_lookup_data (resource, G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);
  g_assert (bytes != NULL);
  gsize size;
  const char *data = g_bytes_get_data (bytes, &size);
  xmlRelaxNGParserCtxt *parser = xmlRelaxNGNewMemParserCtxt (data, (int)size);
  xmlRelaxNG *schema = xmlRelaxNGParse (parser);
  xmlRelaxNGFreeParserCtxt (parser);
  if (schema == NULL)
    g_error ("The built-in schema %s cannot be read", resource);
  return schema;
}

/* Each is made once, then only read. */
static xmlRelaxNG *
get_schema (const char *resource)
{
  static GMutex mutex;
  static GHashTable *schemas;
  g_mutex_lock (&mutex);
  if (schemas == NULL)
    schemas = g_hash_table_new (g_str_hash, g_str_equal);
  xmlRelaxNG *schema = g_hash_table_lookup (schemas, resource);
  if (schema == NULL)
    {
      schema = parse_schema (resource);
      g_hash_table_insert (schemas, g_strdup (resource), schema);
    }
  g_mutex_unlock (&mutex);
  return schema;
}

static void
note_first (void *data, xmlErrorPtr xml_error)
{
  GError **first = data;
  if (*first != NULL)
    return;
  g_autofree char *text = g_strdup (xml_error->message);
  cw_file_error_set (first, CW_FILE_ERROR_GRAMMAR,
                     cw_xml_line (xml_error->node),
                     _ ("The schema refuses this: %s"), g_strchomp (text));
}

gboolean
cw_xml_check_schema (const CwXml *xml, const char *resource, GError **error)
{
  GError *first = NULL;
  xmlRelaxNGValidCtxt *judge = xmlRelaxNGNewValidCtxt (get_schema (resource));
  xmlRelaxNGSetValidStructuredErrors (judge, note_first, &first);
  int result = xmlRelaxNGValidateDoc (judge, (xmlDoc *)xml);
  xmlRelaxNGFreeValidCtxt (judge);
  if (result == 0)
    {
      g_clear_error (&first);
      return TRUE;
    }
  if (first == NULL)
    cw_file_error_set (&first, CW_FILE_ERROR_GRAMMAR, 0,
                       _ ("The schema refuses this file"));
  g_propagate_error (error, first);
  return FALSE;
}

gboolean
cw_reading_check_schema (const CwXml *xml, GError **error)
{
  return cw_xml_check_schema (xml, SCHEMA, error);
}

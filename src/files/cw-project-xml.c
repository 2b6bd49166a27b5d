/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Bytes to project.
 */
#include "cw-file-error.h"
#include "cw-i18n.h"
#include "cw-project-reading.h"

static CwProject *
read_tree (const CwXml *xml, GError **error)
{
  g_autoptr (GHashTable) elements = g_hash_table_new (NULL, NULL);
  g_autoptr (GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);
  CwReading reading = { elements, ids };

  g_autoptr (CwProject) project = cw_reading_project (&reading, xml, error);
  if (project == NULL || !cw_reading_check_sense (&reading, project, error)
      || !cw_reading_check_schema (xml, error))
    return NULL;
  return g_steal_pointer (&project);
}

CwProject *
cw_project_from_xml (GBytes *bytes, GError **error)
{
  g_return_val_if_fail (bytes != NULL, NULL);

  if (g_bytes_get_size (bytes) > CW_PROJECT_FILE_MOST)
    {
      cw_file_error_set (error, CW_FILE_ERROR_TOO_LARGE, 0,
                         _ ("A project file is at most %u MiB"),
                         CW_PROJECT_FILE_MOST / (1024 * 1024));
      return NULL;
    }
  g_autoptr (CwXml) xml = cw_xml_parse (bytes, error);
  return xml ? read_tree (xml, error) : NULL;
}

static void
add_lines (GHashTable *lines, const xmlNode *element)
{
  for (; element != NULL; element = element->next)
    {
      if (element->type != XML_ELEMENT_NODE)
        continue;
      xmlChar *id = xmlGetNoNsProp (element, BAD_CAST "id");
      if (id != NULL && !g_hash_table_contains (lines, id))
        g_hash_table_insert (lines, g_strdup ((const char *)id),
                             GUINT_TO_POINTER (cw_xml_line (element)));
      xmlFree (id);
      add_lines (lines, element->children);
    }
}

GHashTable *
cw_project_xml_lines (GBytes *bytes)
{
  g_return_val_if_fail (bytes != NULL, NULL);

  GHashTable *lines
      = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  g_autoptr (CwXml) xml = cw_xml_parse (bytes, NULL);
  if (xml != NULL)
    add_lines (lines, xmlDocGetRootElement (xml));
  return lines;
}

guint
cw_project_xml_line (GHashTable *lines, const char *id)
{
  g_return_val_if_fail (lines != NULL && id != NULL, 0);

  return GPOINTER_TO_UINT (g_hash_table_lookup (lines, id));
}

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

static guint
line_of (const xmlNode *element, const char *id)
{
  for (; element != NULL; element = element->next)
    {
      if (element->type != XML_ELEMENT_NODE)
        continue;
      xmlChar *own = xmlGetNoNsProp (element, BAD_CAST "id");
      gboolean is_it = g_strcmp0 ((const char *)own, id) == 0;
      xmlFree (own);
      guint line
          = is_it ? cw_xml_line (element) : line_of (element->children, id);
      if (line > 0)
        return line;
    }
  return 0;
}

guint
cw_project_xml_line (GBytes *bytes, const char *id)
{
  g_return_val_if_fail (bytes != NULL && id != NULL, 0);

  g_autoptr (CwXml) xml = cw_xml_parse (bytes, NULL);
  return xml ? line_of (xmlDocGetRootElement (xml), id) : 0;
}

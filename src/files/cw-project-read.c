/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Elements to nodes. What an element may hold is what its type's tables say.
 */
#include <string.h>

#include "cw-file-error.h"
#include "cw-foreign.h"
#include "cw-i18n.h"
#include "cw-project-reading.h"
#include "cw-project-value.h"
#include "cw-xml-foreign.h"

static CwNode *read_element (CwReading *reading, const xmlNode *element,
                             const CwNodeType *type, GError **error);

static gboolean
is_ours (const xmlNs *ns)
{
  return ns && g_strcmp0 ((const char *)ns->href, CW_PROJECT_NAMESPACE) == 0;
}

G_GNUC_PRINTF (4, 5)
static gboolean
refuse (const xmlNode *element, CwFileError code, GError **error,
        const char *format, ...)
{
  va_list arguments;
  va_start (arguments, format);
  g_autofree char *sentence = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  g_autofree char *name = cw_xml_describe (element);
  cw_file_error_set (error, code, cw_xml_line (element), "%s %s", name,
                     sentence);
  return FALSE;
}

/* Attributes */

static gboolean
refuse_attribute (const xmlNode *element, const CwNodeType *type,
                  const char *name, GError **error)
{
  if (type->n_fields == 0)
    return refuse (element, CW_FILE_ERROR_GRAMMAR, error,
                   _ ("has no attribute %s, nor any other"), name);
  g_autoptr (GString) names = g_string_new (NULL);
  for (guint i = 0; i < type->n_fields; i++)
    g_string_append_printf (names, "%s%s", i > 0 ? ", " : "",
                            type->fields[i].name);
  return refuse (element, CW_FILE_ERROR_GRAMMAR, error,
                 _ ("has no attribute %s; it may have %s"), name, names->str);
}

static CwForeign *
ensure_foreign (CwNode *node)
{
  if (node->foreign == NULL)
    node->foreign = cw_foreign_new ();
  return node->foreign;
}

static gboolean
read_own_attribute (CwNode *node, const xmlNode *element, const char *name,
                    const char *value, GError **error)
{
  int index = cw_node_type_field (node->type, name);
  if (index < 0)
    return refuse_attribute (element, node->type, name, error);
  g_autofree char *wanted = cw_project_value_read (node, (guint)index, value);
  if (wanted == NULL)
    return TRUE;
  return refuse (element, CW_FILE_ERROR_VALUE, error, _ ("has %s=\"%s\": %s"),
                 name, value, wanted);
}

static gboolean
read_attribute (CwNode *node, const xmlNode *element, const xmlAttr *attribute,
                GError **error)
{
  const char *name = (const char *)attribute->name;
  xmlChar *text = xmlNodeListGetString (element->doc, attribute->children, 1);
  const char *value = text ? (const char *)text : "";
  gboolean is_read = TRUE;
  if (attribute->ns == NULL)
    is_read = read_own_attribute (node, element, name, value, error);
  else if (is_ours (attribute->ns))
    is_read = refuse (element, CW_FILE_ERROR_GRAMMAR, error,
                      _ ("has the attribute %s with a prefix; the format's "
                         "own attributes have none"),
                      name);
  else
    cw_foreign_add_attribute (ensure_foreign (node),
                              (const char *)attribute->ns->prefix,
                              (const char *)attribute->ns->href, name, value);
  xmlFree (text);
  return is_read;
}

static gboolean
check_required (const CwNode *node, const xmlNode *element, GError **error)
{
  for (guint i = 0; i < node->type->n_fields; i++)
    {
      const CwField *field = &node->type->fields[i];
      if ((field->flags & CW_FIELD_REQUIRED)
          && !(field->flags & CW_FIELD_FROM_MARK) && !cw_node_states (node, i))
        return refuse (element, CW_FILE_ERROR_GRAMMAR, error,
                       _ ("lacks the attribute %s"), field->name);
    }
  return TRUE;
}

static gboolean
read_attributes (CwNode *node, const xmlNode *element, GError **error)
{
  for (const xmlAttr *attribute = element->properties; attribute != NULL;
       attribute = attribute->next)
    if (!read_attribute (node, element, attribute, error))
      return FALSE;
  return check_required (node, element, error);
}

/* Keeps the id; FALSE when it was there before. */
static gboolean
note_id (CwReading *reading, const CwNode *node, const xmlNode *element,
         GError **error)
{
  const char *id = cw_node_id (node);
  if (id == NULL)
    return TRUE;
  const CwNode *former = g_hash_table_lookup (reading->ids, id);
  if (former != NULL)
    {
      const xmlNode *first = g_hash_table_lookup (reading->elements, former);
      return refuse (element, CW_FILE_ERROR_SENSE, error,
                     _ ("has the id of <%s> on line %u; ids are unique in the "
                        "file"),
                     former->type->element, cw_xml_line (first));
    }
  g_hash_table_insert (reading->ids, (gpointer)id, (gpointer)node);
  return TRUE;
}

/* Content */

static gboolean
refuse_child (const xmlNode *parent, const CwNodeType *type,
              const xmlNode *child, GError **error)
{
  g_autoptr (GString) names = g_string_new (NULL);
  for (guint i = 0; i < type->n_slots; i++)
    for (const CwNodeType *const *at = type->slots[i].types; *at; at++)
      g_string_append_printf (names, "%s%s", names->len > 0 ? ", " : "",
                              (*at)->element);
  g_autofree char *holder = cw_xml_describe (parent);
  if (names->len == 0)
    return refuse (child, CW_FILE_ERROR_GRAMMAR, error,
                   _ ("cannot stand in %s, which holds no elements"), holder);
  return refuse (child, CW_FILE_ERROR_GRAMMAR, error,
                 _ ("cannot stand in %s, which holds %s"), holder, names->str);
}

/* The type of the child element and the slot it goes to. */
static const CwNodeType *
type_of_child (const CwNodeType *type, const char *element, guint *slot)
{
  for (guint i = 0; i < type->n_slots; i++)
    for (const CwNodeType *const *at = type->slots[i].types; *at; at++)
      if (g_str_equal ((*at)->element, element))
        {
          *slot = i;
          return *at;
        }
  return NULL;
}

/* What an element holds while it is being read. */
typedef struct
{
  GPtrArray **slots;    /* of CwNode, owned, one array a slot */
  GPtrArray *strangers; /* const xmlNode: comments and foreign elements */
  GHashTable *nodes;    /* child xmlNode → CwNode */
} Content;

static void
content_init (Content *content, const CwNodeType *type)
{
  content->slots = g_new (GPtrArray *, type->n_slots);
  for (guint i = 0; i < type->n_slots; i++)
    content->slots[i] = g_ptr_array_new_with_free_func (cw_node_unref);
  content->strangers = g_ptr_array_new ();
  content->nodes = g_hash_table_new (NULL, NULL);
}

static void
content_clear (Content *content, const CwNodeType *type)
{
  for (guint i = 0; i < type->n_slots; i++)
    g_ptr_array_unref (content->slots[i]);
  g_free (content->slots);
  g_ptr_array_unref (content->strangers);
  g_hash_table_unref (content->nodes);
}

static gboolean
read_own_child (CwReading *reading, Content *content, const CwNodeType *type,
                const xmlNode *child, GError **error)
{
  guint slot;
  const CwNodeType *child_type
      = type_of_child (type, (const char *)child->name, &slot);
  if (child_type == NULL)
    return refuse_child (child->parent, type, child, error);
  if (!type->slots[slot].is_list && content->slots[slot]->len > 0)
    {
      g_autofree char *holder = cw_xml_describe (child->parent);
      return refuse (child, CW_FILE_ERROR_GRAMMAR, error,
                     _ ("stands in %s a second time; once is allowed"), holder);
    }
  CwNode *node = read_element (reading, child, child_type, error);
  if (node == NULL)
    return FALSE;
  g_ptr_array_add (content->slots[slot], node);
  g_hash_table_insert (content->nodes, (gpointer)child, node);
  return TRUE;
}

static gboolean
check_blank (const xmlNode *text, GError **error)
{
  const char *at = (const char *) text->content;
  at += strspn (at, " \t\r\n");
  if (*at == '\0')
    return TRUE;
  g_autofree char *shown
      = g_utf8_substring (at, 0, MIN (g_utf8_strlen (at, -1), 40));
  g_autofree char *holder = cw_xml_describe (text->parent);
  cw_file_error_set (error, CW_FILE_ERROR_GRAMMAR, cw_xml_line (text),
                     _ ("%s holds the text “%s”; only elements are allowed "
                        "there"),
                     holder, g_strchomp (shown));
  return FALSE;
}

static gboolean
read_child (CwReading *reading, Content *content, const CwNodeType *type,
            const xmlNode *child, GError **error)
{
  switch (child->type)
    {
    case XML_TEXT_NODE:
    case XML_CDATA_SECTION_NODE:
      return check_blank (child, error);
    case XML_ELEMENT_NODE:
      if (is_ours (child->ns))
        return read_own_child (reading, content, type, child, error);
      if (child->ns == NULL)
        return refuse (child, CW_FILE_ERROR_GRAMMAR, error,
                       _ ("is in no namespace; the format's own is %s"),
                       CW_PROJECT_NAMESPACE);
      break;
    default:
      break;
    }
  g_ptr_array_add (content->strangers, (gpointer)child);
  return TRUE;
}

static void
fill_slots (CwNode *node, const Content *content)
{
  for (guint i = 0; i < node->type->n_slots; i++)
    {
      const GPtrArray *children = content->slots[i];
      if (children->len == 0)
        continue;
      if (!node->type->slots[i].is_list)
        {
          cw_node_set_child (node, i, children->pdata[0]);
          continue;
        }
      g_autoptr (CwList) list
          = cw_list_new ((CwNode **)children->pdata, children->len);
      cw_node_set_list (node, i, list);
    }
}

/* The place of the next own child that a file holds. */
static guint
place_before (const Content *content, const xmlNode *stranger,
              GPtrArray *written)
{
  for (const xmlNode *next = stranger->next; next; next = next->next)
    {
      CwNode *node = g_hash_table_lookup (content->nodes, next);
      guint place;
      if (node && g_ptr_array_find (written, node, &place))
        return place;
    }
  return written->len;
}

static void
keep_strangers (CwNode *node, const Content *content)
{
  if (content->strangers->len == 0)
    return;
  g_autoptr (GPtrArray) written = cw_project_written_children (node);
  for (guint i = 0; i < content->strangers->len; i++)
    {
      const xmlNode *stranger = content->strangers->pdata[i];
      g_autofree char *text = cw_xml_foreign_text (stranger);
      cw_foreign_add_element (ensure_foreign (node),
                              place_before (content, stranger, written), text);
    }
}

static gboolean
read_content (CwReading *reading, CwNode *node, const xmlNode *element,
              GError **error)
{
  Content content;
  gboolean is_read = TRUE;
  content_init (&content, node->type);
  for (const xmlNode *child = element->children; child && is_read;
       child = child->next)
    is_read = read_child (reading, &content, node->type, child, error);
  if (is_read)
    {
      fill_slots (node, &content);
      keep_strangers (node, &content);
    }
  content_clear (&content, node->type);
  return is_read;
}

static CwNode *
read_element (CwReading *reading, const xmlNode *element,
              const CwNodeType *type, GError **error)
{
  g_autoptr (CwNode) node = cw_node_new (type);
  if (!read_attributes (node, element, error)
      || !note_id (reading, node, element, error))
    return NULL;
  g_hash_table_insert (reading->elements, node, (gpointer)element);
  if (!read_content (reading, node, element, error))
    return NULL;
  cw_node_freeze (node);
  return g_steal_pointer (&node);
}

/* The root: is it ours, and do we know its format? */

static gboolean
check_root (const xmlNode *root, GError **error)
{
  if (is_ours (root->ns)
      && g_str_equal ((const char *)root->name, cw_project_type.element))
    return TRUE;
  return refuse (root, CW_FILE_ERROR_GRAMMAR, error,
                 _ ("is no Cladwright project; that begins with <project "
                    "xmlns=\"%s\">"),
                 CW_PROJECT_NAMESPACE);
}

/* Before all else: what a newer format may hold cannot be judged. */
static gboolean
check_format (const xmlNode *root, GError **error)
{
  xmlChar *text = xmlGetNoNsProp (root, BAD_CAST "format");
  guint64 format = text ? g_ascii_strtoull ((const char *)text, NULL, 10) : 0;
  gboolean is_number = text && *text
                       && strspn ((const char *)text, "0123456789")
                              == strlen ((const char *)text);
  xmlFree (text);
  if (!is_number || format <= CW_PROJECT_FORMAT)
    return TRUE;
  cw_file_error_set (error, CW_FILE_ERROR_NEWER, cw_xml_line (root),
                     _ ("The project is in format %" G_GUINT64_FORMAT
                        " and this program knows formats up to %u; open it "
                        "with a newer version"),
                     format, CW_PROJECT_FORMAT);
  return FALSE;
}

CwProject *
cw_reading_project (CwReading *reading, const CwXml *xml, GError **error)
{
  const xmlNode *root = xmlDocGetRootElement (xml);
  if (!check_root (root, error) || !check_format (root, error))
    return NULL;
  return (CwProject *)read_element (reading, root, &cw_project_type, error);
}

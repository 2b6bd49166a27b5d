/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The schema and the tables of the model say the same: each element, what it
 * holds, each attribute, whether it must be there, its choices, bounds and
 * default.
 */
#include <libxml/parser.h>
#include <libxml/xpath.h>
#include <libxml/xpathInternals.h>
#include <string.h>

#include "cw-project-value.h"
#include "project-cases.h"

#define RELAX_NG "http://relaxng.org/ns/structure/1.0"
#define ANNOTATIONS "http://relaxng.org/ns/compatibility/annotations/1.0"

static xmlDoc *schema;

/* The nodes that the XPath finds from @from, as many as there are. */
static GPtrArray *
find_all (xmlNode *from, const char *path)
{
  xmlXPathContext *context = xmlXPathNewContext (schema);
  xmlXPathRegisterNs (context, BAD_CAST "r", BAD_CAST RELAX_NG);
  xmlXPathRegisterNs (context, BAD_CAST "a", BAD_CAST ANNOTATIONS);
  context->node = from ? from : xmlDocGetRootElement (schema);
  xmlXPathObject *found = xmlXPathEvalExpression (BAD_CAST path, context);
  g_assert_nonnull (found);
  GPtrArray *nodes = g_ptr_array_new ();
  for (int i = 0; found->nodesetval && i < found->nodesetval->nodeNr; i++)
    g_ptr_array_add (nodes, found->nodesetval->nodeTab[i]);
  xmlXPathFreeObject (found);
  xmlXPathFreeContext (context);
  return nodes;
}

G_GNUC_PRINTF (2, 3)
static xmlNode *
find_one (xmlNode *from, const char *format, ...)
{
  va_list arguments;
  va_start (arguments, format);
  g_autofree char *path = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  g_autoptr (GPtrArray) nodes = find_all (from, path);
  if (nodes->len != 1)
    g_error ("%u nodes are %s", nodes->len, path);
  return nodes->pdata[0];
}

static char *
text_of (xmlNode *node)
{
  xmlChar *content = xmlNodeGetContent (node);
  char *text = g_strdup ((const char *)content);
  xmlFree (content);
  return text;
}

/* The contents of the nodes in a row: "a b c". */
static char *
texts_of (xmlNode *from, const char *path)
{
  g_autoptr (GPtrArray) nodes = find_all (from, path);
  GString *texts = g_string_new (NULL);
  for (guint i = 0; i < nodes->len; i++)
    {
      g_autofree char *text = text_of (nodes->pdata[i]);
      g_string_append_printf (texts, "%s%s", i > 0 ? " " : "", text);
    }
  return g_string_free (texts, FALSE);
}

static xmlNode *
element_of (const CwNodeType *type)
{
  return find_one (NULL, "r:define[@name='%s']/r:element[@name='%s']",
                   type->element, type->element);
}

typedef void (*FieldCheck) (const CwNodeType *type, const CwField *field,
                            xmlNode *attribute);

static void
each_field (FieldCheck check)
{
  for (guint i = 0; cw_node_types[i]; i++)
    for (guint j = 0; j < cw_node_types[i]->n_fields; j++)
      {
        const CwField *field = &cw_node_types[i]->fields[j];
        check (cw_node_types[i], field,
               find_one (element_of (cw_node_types[i]),
                         ".//r:attribute[@name='%s']", field->name));
      }
}

static void
test_elements (void)
{
  g_autoptr (GPtrArray) named = find_all (NULL, "//r:element[@name]");
  guint n = 0;
  for (; cw_node_types[n]; n++)
    element_of (cw_node_types[n]);
  g_assert_cmpuint (named->len, ==, n);
}

static void
test_attributes (void)
{
  for (guint i = 0; cw_node_types[i]; i++)
    {
      const CwNodeType *type = cw_node_types[i];
      g_autofree char *names
          = texts_of (element_of (type), ".//r:attribute/@name");
      GString *expected = g_string_new (NULL);
      for (guint j = 0; j < type->n_fields; j++)
        g_string_append_printf (expected, "%s%s", j > 0 ? " " : "",
                                type->fields[j].name);
      g_assert_cmpstr (names, ==, expected->str);
      g_string_free (expected, TRUE);
    }
}

static gboolean
must_be_there (const CwField *field)
{
  return (field->flags & CW_FIELD_REQUIRED)
         && !(field->flags & CW_FIELD_FROM_MARK);
}

static void
check_required (const CwNodeType *type, const CwField *field,
                xmlNode *attribute)
{
  gboolean is_optional
      = g_str_equal ((const char *)attribute->parent->name, "optional");
  if (is_optional == must_be_there (field))
    g_error ("<%s> %s: the schema has it %s", type->element, field->name,
             is_optional ? "optional" : "required");
}

static void
test_required (void)
{
  each_field (check_required);
}

/* What a mark does not state, it does not give: no default there. Nor for
 * what must be stated, by the element or its mark. */
static gboolean
has_default (const CwNodeType *type, const CwField *field)
{
  int in_opening = cw_node_type_field (&cw_arch_type, field->name);
  if (type == &cw_mark_type && in_opening >= 0
      && (cw_arch_type.fields[in_opening].flags & CW_FIELD_FROM_MARK))
    return FALSE;
  return !cw_field_is_text (field) && !(field->flags & CW_FIELD_REQUIRED);
}

static void
check_default (const CwNodeType *type, const CwField *field, xmlNode *attribute)
{
  xmlChar *given
      = xmlGetNsProp (attribute, BAD_CAST "defaultValue", BAD_CAST ANNOTATIONS);
  g_autofree char *expected
      = has_default (type, field)
            ? cw_project_number_text (field, field->fallback)
            : NULL;
  if (g_strcmp0 ((const char *)given, expected) != 0)
    g_error ("<%s> %s: the default is %s, but %s in the schema", type->element,
             field->name, expected, given);
  xmlFree (given);
}

static void
test_defaults (void)
{
  each_field (check_default);
}

static void
check_choices (const CwNodeType *type, const CwField *field, xmlNode *attribute)
{
  g_autofree char *values = texts_of (attribute, "r:choice/r:value");
  GString *expected = g_string_new (NULL);
  if (field->kind == CW_FIELD_YES_NO)
    g_string_append (expected, "no yes");
  if (field->kind == CW_FIELD_CHOICE)
    for (const CwChoice *choice = field->choices; choice->name; choice++)
      g_string_append_printf (expected, "%s%s", expected->len ? " " : "",
                              choice->name);
  if (!g_str_equal (values, expected->str))
    g_error ("<%s> %s: %s, but %s in the schema", type->element, field->name,
             expected->str, values);
  g_string_free (expected, TRUE);
}

static void
test_choices (void)
{
  each_field (check_choices);
}

static void
check_bound (const CwField *field, xmlNode *attribute, const char *name,
             gint64 bound)
{
  g_autofree char *path = g_strdup_printf ("r:data/r:param[@name='%s']", name);
  g_autofree char *given = texts_of (attribute, path);
  g_autofree char *expected = cw_project_number_text (field, bound);
  if (!g_str_equal (given, expected))
    g_error ("%s: %s is %s, but %s in the schema", field->name, name, expected,
             given);
}

static void
check_kind (const CwNodeType *type, const CwField *field, xmlNode *attribute)
{
  gint64 least, most;
  switch (field->kind)
    {
    case CW_FIELD_TEXT:
      find_one (attribute, "r:text");
      break;
    case CW_FIELD_ID:
      find_one (attribute, "r:ref[@name='id']");
      break;
    case CW_FIELD_REFERENCE:
      find_one (attribute, "r:ref[@name='reference']");
      break;
    case CW_FIELD_CHOICE:
    case CW_FIELD_YES_NO:
      break;
    case CW_FIELD_LENGTH:
    case CW_FIELD_DECIMAL:
    case CW_FIELD_COUNT:
      cw_field_bounds (field, &least, &most);
      check_bound (field, attribute, "minInclusive", least);
      check_bound (field, attribute, "maxInclusive", most);
      break;
    }
}

static void
test_kinds_and_bounds (void)
{
  each_field (check_kind);
}

static void
check_documented (const CwNodeType *type, const CwField *field,
                  xmlNode *attribute)
{
  g_autofree char *text = texts_of (attribute, "a:documentation");
  g_auto (GStrv) words = g_strsplit_set (text, " \n", -1);
  guint n_words = 0;
  for (guint i = 0; words[i]; i++)
    n_words += *words[i] != '\0';
  if (n_words < 3)
    g_error ("<%s> %s is not documented", type->element, field->name);
  if (field->kind == CW_FIELD_LENGTH && strstr (text, "(mm)") == NULL)
    g_error ("<%s> %s: no unit", type->element, field->name);
  if (*field->unit && strstr (text, field->unit) == NULL)
    g_error ("<%s> %s: no %s", type->element, field->name, field->unit);
}

static void
test_documented (void)
{
  each_field (check_documented);
}

static void
check_slot (xmlNode *element, const CwSlot *slot)
{
  const char *often = slot->is_list ? "zeroOrMore" : "optional";
  for (guint i = 0; slot->types[i]; i++)
    {
      xmlNode *ref = find_one (element, "r:interleave//r:ref[@name='%s']",
                               slot->types[i]->element);
      xmlNode *holder = ref->parent;
      if (g_str_equal ((const char *)holder->name, "choice"))
        holder = holder->parent;
      g_assert_cmpstr ((const char *)holder->name, ==, often);
    }
}

static void
test_children (void)
{
  for (guint i = 0; cw_node_types[i]; i++)
    {
      const CwNodeType *type = cw_node_types[i];
      xmlNode *element = element_of (type);
      guint n_types = 0;
      for (guint j = 0; j < type->n_slots; j++)
        {
          check_slot (element, &type->slots[j]);
          for (guint k = 0; type->slots[j].types[k]; k++)
            n_types++;
        }
      g_autoptr (GPtrArray) refs
          = find_all (element, "r:interleave//r:ref[not(starts-with(@name, "
                               "'foreign-'))]");
      g_assert_cmpuint (refs->len, ==, n_types);
      find_one (element, ".//r:ref[@name='foreign-elements']");
      find_one (element, ".//r:ref[@name='foreign-attributes']");
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_autofree char *path = g_build_filename (g_getenv ("CW_SOURCE_ROOT"), "data",
                                            "schema", "project-1.rng", NULL);
  schema = xmlReadFile (path, NULL, XML_PARSE_NONET);
  g_assert_nonnull (schema);
  g_test_add_func ("/project-schema/elements", test_elements);
  g_test_add_func ("/project-schema/children", test_children);
  g_test_add_func ("/project-schema/attributes", test_attributes);
  g_test_add_func ("/project-schema/required", test_required);
  g_test_add_func ("/project-schema/defaults", test_defaults);
  g_test_add_func ("/project-schema/choices", test_choices);
  g_test_add_func ("/project-schema/bounds", test_kinds_and_bounds);
  g_test_add_func ("/project-schema/documented", test_documented);
  int result = g_test_run ();
  xmlFreeDoc (schema);
  return result;
}

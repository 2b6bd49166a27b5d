/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Random projects by the tables of the model: any element, any attribute
 * stated or not, any value within its bounds.
 */
#include "cw-foreign.h"
#include "project-cases.h"

#include <string.h>

typedef struct
{
  guint n_ids;
  GHashTable *ids; /* element name → GPtrArray of ids, in the order made */
} Maker;

static CwNode *make_node (Maker *maker, const CwNodeType *type);

static gboolean
toss (guint one_in)
{
  return (guint)g_test_rand_int_range (0, (gint32)one_in) == 0;
}

/* Signs that XML must escape or that need several bytes. */
static char *
make_text (void)
{
  static const char *const words[]
      = { "",         "South",   "a \"b\" <c> & 'd'",
          "50 × 600", "é\u0301", "\t\n",
          "日本",     " edge ",  "]]>",
          "-- \r" };
  return g_strconcat (words[g_test_rand_int_range (0, G_N_ELEMENTS (words))],
                      words[g_test_rand_int_range (0, G_N_ELEMENTS (words))],
                      NULL);
}

static char *
make_id (Maker *maker, const char *element)
{
  GPtrArray *ids = g_hash_table_lookup (maker->ids, element);
  if (ids == NULL)
    {
      ids = g_ptr_array_new_with_free_func (g_free);
      g_hash_table_insert (maker->ids, (gpointer)element, ids);
    }
  g_ptr_array_add (ids, g_strdup_printf ("%c%u", *element, maker->n_ids++));
  return g_strdup (ids->pdata[ids->len - 1]);
}

/* One of those made so far, or none. */
static char *
make_reference (const Maker *maker, const char *element)
{
  const GPtrArray *ids = g_hash_table_lookup (maker->ids, element);
  if (ids == NULL || toss (4))
    return g_strdup ("");
  return g_strdup (ids->pdata[g_test_rand_int_range (0, (gint32)ids->len)]);
}

static gint64
make_number (const CwField *field)
{
  if (field->kind == CW_FIELD_CHOICE)
    {
      gint32 n = 0;
      while (field->choices[n].name)
        n++;
      return field->choices[g_test_rand_int_range (0, n)].value;
    }
  gint64 least, most;
  cw_field_bounds (field, &least, &most);
  if (toss (8))
    return toss (2) ? least : most;
  guint64 wide = ((guint64)(guint32)g_test_rand_int () << 32)
                 | (guint32)g_test_rand_int ();
  wide >>= g_test_rand_int_range (0, 60);
  return least + (gint64)(wide % (guint64)(most - least + 1));
}

static void
set_field (Maker *maker, CwNode *node, guint index)
{
  const CwField *field = &node->type->fields[index];
  g_autofree char *text = NULL;
  if (!cw_field_is_text (field))
    {
      cw_node_set (node, index, make_number (field));
      return;
    }
  if (field->kind == CW_FIELD_ID)
    text = make_id (maker, node->type->element);
  else if (field->kind == CW_FIELD_REFERENCE)
    text = make_reference (maker, field->refers_to);
  else
    text = make_text ();
  cw_node_set_text (node, index, text);
}

/* What rules of sense ask beyond the tables. */
static void
make_sensible (CwNode *node)
{
  if (node->type == &cw_project_type)
    cw_node_put (node, "format", 1);
  if (node->type == &cw_corner_type)
    cw_node_unset (node, (guint)cw_node_type_field (node->type, "sagitta"));
  if (node->type == &cw_stub_out_type)
    cw_node_put (node, "height", ((CwStubOut *)node)->width);
  if (node->type == &cw_mark_type)
    cw_node_unset (node, (guint)cw_node_type_field (node->type, "rise"));
  if (node->type == &cw_arch_type)
    {
      cw_node_put (node, "width", 2 * CW_MM (g_test_rand_int_range (2, 9000)));
      CwLength least, most;
      cw_node_put (node, "head", g_test_rand_int_range (0, 5));
      cw_arch_rise_limits ((CwArchHead)((CwOpening *)node)->head,
                           ((CwOpening *)node)->width, &least, &most);
      cw_node_put (node, "rise", least);
    }
}

static void
add_strangers (CwNode *node)
{
  static const char *const elements[] = {
    "<!-- kept & where it stands -->",
    "<n:note xmlns:n=\"urn:note\" by=\"x\">two <n:b/> &amp; more\n</n:note>",
    "<note xmlns=\"urn:note\"/>",
    "<?note an instruction?>",
  };
  node->foreign = cw_foreign_new ();
  if (toss (2))
    cw_foreign_add_attribute (node->foreign, "n", "urn:note", "colour",
                              "a \"b\"\n");
  if (toss (3))
    cw_foreign_add_attribute (node->foreign, "m", "urn:more", "colour", "");
  if (cw_foreign_n_attributes (node->foreign) == 0 || toss (2))
    cw_foreign_add_element (
        node->foreign, 0,
        elements[g_test_rand_int_range (0, G_N_ELEMENTS (elements))]);
}

static const CwNodeType *
any_type (const CwSlot *slot)
{
  gint32 n = 0;
  while (slot->types[n])
    n++;
  return slot->types[g_test_rand_int_range (0, n)];
}

static void
fill_slot (Maker *maker, CwNode *node, guint index)
{
  const CwSlot *slot = &node->type->slots[index];
  guint n = slot->is_list ? (guint)g_test_rand_int_range (0, 6) : !toss (4);
  for (guint i = 0; i < n; i++)
    {
      g_autoptr (CwNode) child = make_node (maker, any_type (slot));
      if (!slot->is_list)
        cw_node_set_child (node, index, child);
      else
        {
          /* A list that is never empty begins with a default one. */
          g_autoptr (CwList) list
              = i == 0 ? cw_list_new (&child, 1)
                       : cw_list_append (cw_node_list (node, index), child);
          cw_node_set_list (node, index, list);
        }
    }
}

static CwNode *
make_node (Maker *maker, const CwNodeType *type)
{
  CwNode *node = cw_node_new (type);
  for (guint i = 0; i < type->n_fields; i++)
    if ((type->fields[i].flags & CW_FIELD_REQUIRED) || toss (2))
      set_field (maker, node, i);
  make_sensible (node);
  for (guint i = 0; i < type->n_slots; i++)
    fill_slot (maker, node, i);
  if (toss (5))
    add_strangers (node);
  return node;
}

CwProject *
project_case_random (void)
{
  Maker maker
      = { 0, g_hash_table_new_full (g_str_hash, g_str_equal, NULL,
                                    (GDestroyNotify)g_ptr_array_unref) };
  CwNode *project = make_node (&maker, &cw_project_type);
  g_hash_table_unref (maker.ids);
  cw_node_freeze (project);
  return (CwProject *)project;
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the figures assume: every value of the buildups, from the same tables
 * as their form on the screen.
 */
#include "cw-i18n.h"
#include "cw-takeoff-papers.h"

/* Two values a row. */
#define VALUE_COLUMNS                                                         \
  { "", 26, CW_ALIGN_LEFT, CW_TYPE_SMALL },                                   \
  { "", 20, CW_ALIGN_RIGHT, CW_TYPE_BODY }

static const CwTableColumn columns[] = { VALUE_COLUMNS, VALUE_COLUMNS };

static char *
with_unit (char *number, const char *unit)
{
  if (!*unit)
    return number;
  char *text = g_strdup_printf ("%s %s", number, unit);
  g_free (number);
  return text;
}

static char *
value_text (const CwPapers *papers, const CwNode *node, guint index)
{
  const CwField *field = &node->type->fields[index];
  if (cw_field_is_text (field))
    return g_strdup (cw_node_get_text (node, index));
  const gint64 value = cw_node_get (node, index);
  switch (field->kind)
    {
    case CW_FIELD_LENGTH:
      return cw_papers_length (papers, value);
    case CW_FIELD_DECIMAL:
      return with_unit (cw_decimal_format (value, &papers->options->style),
                        field->unit);
    case CW_FIELD_YES_NO:
      return g_strdup (value ? _("yes") : _("no"));
    case CW_FIELD_CHOICE:
      return g_strdup (cw_papers_choice (node, field->name));
    default:
      return with_unit (cw_papers_count (papers, value), field->unit);
    }
}

/* Prices are no part of a takeoff of quantities. */
static gboolean
is_shown (const CwField *field)
{
  return field->kind != CW_FIELD_ID && !g_str_equal (field->name, "price");
}

static void
add_node (const CwPapers *papers, CwTable *table, const CwNode *node)
{
  cw_table_add_group (table, _(node->type->label));
  for (guint i = 0; i < node->type->n_fields; i++)
    {
      if (!is_shown (&node->type->fields[i]))
        continue;
      cw_table_add_cell (table, _(node->type->fields[i].label));
      cw_table_take_cell (table, value_text (papers, node, i));
    }
}

static void
add_slot (const CwPapers *papers, CwTable *table, const CwNode *node,
          guint slot)
{
  if (!node->type->slots[slot].is_list)
    {
      const CwNode *child = cw_node_child (node, slot);
      if (child)
        add_node (papers, table, child);
      return;
    }
  const CwList *list = cw_node_list (node, slot);
  for (gsize i = 0; i < cw_list_length (list); i++)
    add_node (papers, table, cw_list_at (list, i));
}

static void
add_buildup (const CwPapers *papers, const CwBuildup *buildup)
{
  g_autoptr (CwTable) table = cw_table_new (columns, G_N_ELEMENTS (columns));
  for (guint i = 0; i < buildup->node.type->n_slots; i++)
    add_slot (papers, table, &buildup->node, i);
  cw_papers_add_titled_table (
      papers, *buildup->name ? buildup->name : buildup->id, table);
}

void
cw_papers_add_assumptions (const CwPapers *papers)
{
  const CwList *buildups = papers->takeoff->project->buildups;
  if (cw_list_length (buildups) == 0)
    return;
  cw_pages_begin_here (papers->pages, _("Buildups"), "buildups");
  cw_page_add_heading (papers->pages, CW_TYPE_HEADING, _("Buildups"), 60);
  cw_page_add_text (papers->pages, CW_TYPE_SMALL,
                    _("What the quantities assume. Values that nobody typed "
                      "are the program's defaults; compare them with the "
                      "makers' instructions."));
  for (gsize i = 0; i < cw_list_length (buildups); i++)
    add_buildup (papers, cw_list_at (buildups, i));
}

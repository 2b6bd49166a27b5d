/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Quantity tables: the project's with rules and orders, a wall's with steps.
 */
#include <math.h>

#include "cw-i18n.h"
#include "cw-takeoff-papers.h"

static const CwTableColumn project_columns[] = {
  { N_ ("Quantity"), 24, CW_ALIGN_LEFT, CW_TYPE_BODY },
  { N_ ("Amount"), 16, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("To order"), 16, CW_ALIGN_RIGHT, CW_TYPE_STRONG },
  { N_ ("How it is measured, and where it comes from"), 45, CW_ALIGN_LEFT,
    CW_TYPE_SMALL },
};

static const CwTableColumn wall_columns[] = {
  { N_ ("Quantity"), 28, CW_ALIGN_LEFT, CW_TYPE_BODY },
  { N_ ("Amount"), 16, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Where it comes from"), 56, CW_ALIGN_LEFT, CW_TYPE_SMALL },
};

static gboolean
is_nought (const CwQuantity *quantity)
{
  return fpclassify (quantity->amount) == FP_ZERO
         && !isfinite (quantity->order_amount);
}

/* Lines of nought go into one sentence under the table. */
static GPtrArray *
lines_that_count (const GPtrArray *quantities)
{
  GPtrArray *lines = g_ptr_array_new ();
  for (guint i = 0; i < quantities->len; i++)
    if (!is_nought (quantities->pdata[i]))
      g_ptr_array_add (lines, quantities->pdata[i]);
  return lines;
}

static void
add_noughts (const CwPapers *papers, const GPtrArray *quantities)
{
  g_autoptr (GString) names = g_string_new (NULL);
  for (guint i = 0; i < quantities->len; i++)
    {
      const CwQuantity *quantity = quantities->pdata[i];
      if (!is_nought (quantity))
        continue;
      g_autofree char *label = cw_papers_label (quantity);
      g_string_append_printf (names, "%s%s", names->len ? ", " : "", label);
    }
  if (names->len == 0)
    return;
  g_autofree char *text = g_strdup_printf (_("Nought: %s."), names->str);
  cw_page_add_text (papers->pages, CW_TYPE_SMALL, text);
}

static void
add_group_before (CwTable *table, const GPtrArray *lines, guint index)
{
  const CwQuantity *quantity = lines->pdata[index];
  const CwQuantity *former = index ? lines->pdata[index - 1] : NULL;
  if (!former || former->type->step != quantity->type->step)
    cw_table_add_group (table, _(cw_trade_step_label (quantity->type->step)));
}

/* The rule once for a key; lines that split it are plain from it. */
static char *
rule_and_steps (const CwPapers *papers, const CwQuantity *quantity)
{
  g_autofree char *steps
      = cw_quantity_steps_text (quantity, &papers->options->style);
  if (quantity->variant)
    return g_steal_pointer (&steps);
  const char *rule = _(quantity->type->help);
  return *steps ? g_strdup_printf ("%s → %s", rule, steps) : g_strdup (rule);
}

static void
add_label_and_amount (const CwPapers *papers, CwTable *table,
                      const CwQuantity *quantity)
{
  cw_table_take_cell (table, cw_papers_label (quantity));
  cw_table_take_cell (table, cw_papers_amount (papers, quantity->amount,
                                               quantity->unit));
}

void
cw_papers_add_quantities (const CwPapers *papers)
{
  const GPtrArray *quantities = papers->takeoff->quantities;
  g_autoptr (GPtrArray) lines = lines_that_count (quantities);
  g_autoptr (CwTable) table
      = cw_table_new (project_columns, G_N_ELEMENTS (project_columns));
  cw_pages_begin_here (papers->pages, _("Quantities of the project"),
                       "quantities");
  cw_page_add_heading (papers->pages, CW_TYPE_HEADING,
                       _("Quantities of the project"), 60);
  for (guint i = 0; i < lines->len; i++)
    {
      const CwQuantity *quantity = lines->pdata[i];
      add_group_before (table, lines, i);
      add_label_and_amount (papers, table, quantity);
      cw_table_take_cell (table, cw_papers_order (papers, quantity));
      cw_table_take_cell (table, rule_and_steps (papers, quantity));
    }
  cw_pages_add_table (papers->pages, table);
  add_noughts (papers, quantities);
}

/* The project tells the hours of each task; a wall its hours in all. */
static gboolean
is_of_one_task (const CwQuantity *quantity)
{
  return quantity->type->step == CW_STEP_LABOUR && quantity->variant;
}

static GPtrArray *
lines_of_wall (const GPtrArray *quantities)
{
  GPtrArray *lines = lines_that_count (quantities);
  for (guint i = lines->len; i > 0; i--)
    if (is_of_one_task (lines->pdata[i - 1]))
      g_ptr_array_remove_index (lines, i - 1);
  return lines;
}

void
cw_papers_add_wall_quantities (const CwPapers *papers,
                               const CwWallTakeoff *wall)
{
  const GPtrArray *quantities = wall->quantities;
  g_autoptr (GPtrArray) lines = lines_of_wall (quantities);
  g_autoptr (CwTable) table
      = cw_table_new (wall_columns, G_N_ELEMENTS (wall_columns));
  for (guint i = 0; i < lines->len; i++)
    {
      const CwQuantity *quantity = lines->pdata[i];
      add_group_before (table, lines, i);
      add_label_and_amount (papers, table, quantity);
      cw_table_take_cell (
          table, cw_quantity_steps_text (quantity, &papers->options->style));
    }
  cw_papers_add_titled_table (papers,
                              wall->wall->elevation->count == 1
                                  ? _("Quantities")
                                  : _("Quantities of one such wall"),
                              table);
  add_noughts (papers, quantities);
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The first page: whose job it is, what it comes to, what to know about it.
 */
#include <math.h>

#include "cw-i18n.h"
#include "cw-takeoff-papers.h"

static const CwTableColumn fact_columns[] = {
  { "", 16, CW_ALIGN_LEFT, CW_TYPE_LABEL },
  { "", 84, CW_ALIGN_LEFT, CW_TYPE_BODY },
};

static const CwTableColumn key_columns[] = {
  { "", 16, CW_ALIGN_LEFT, CW_TYPE_LABEL },
  { N_ ("Quantity"), 44, CW_ALIGN_LEFT, CW_TYPE_BODY },
  { N_ ("Amount"), 20, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("To order"), 20, CW_ALIGN_RIGHT, CW_TYPE_STRONG },
};

static const CwTableColumn wall_columns[] = {
  { N_ ("Elevation"), 25, CW_ALIGN_LEFT, CW_TYPE_STRONG },
  { N_ ("Walls"), 8, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Gross area"), 15, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Openings"), 15, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Net area"), 15, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Panels used"), 13, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Page"), 9, CW_ALIGN_RIGHT, CW_TYPE_BODY },
};

static void
add_fact (CwTable *table, const char *label, const char *text)
{
  if (!text || !*text)
    return;
  cw_table_add_cell (table, label);
  cw_table_add_cell (table, text);
}

static char *
measure_text (const CwPapers *papers, const CwMeasure *measure)
{
  const char *rule = cw_papers_choice (measure, "rule");
  if (measure->rule != CW_MEASURE_THROUGH)
    return g_strdup (rule);
  g_autofree char *limit = cw_papers_amount (
      papers, cw_decimal_to_double (measure->limit), "m²");
  return g_strdup_printf (_("%s, up to %s an opening"), rule, limit);
}

static char *
sheet_names (const CwProject *project)
{
  GString *names = g_string_new (NULL);
  for (gsize i = 0; i < cw_list_length (project->sheets); i++)
    {
      const CwSheet *sheet = cw_list_at (project->sheets, i);
      g_string_append_printf (names, "%s%s", i ? "; " : "",
                              *sheet->name ? sheet->name : sheet->file);
    }
  return g_string_free (names, FALSE);
}

static void
add_facts (const CwPapers *papers)
{
  const CwProject *project = papers->takeoff->project;
  const CwInfo *info = (const CwInfo *) project->info;
  g_autoptr (CwTable) table
      = cw_table_new (fact_columns, G_N_ELEMENTS (fact_columns));
  g_autofree char *rule
      = measure_text (papers, (const CwMeasure *) project->measure);
  g_autofree char *sheets = sheet_names (project);
  add_fact (table, _("Number"), info->number);
  add_fact (table, _("Revision"), info->revision);
  add_fact (table, _("Date"), info->date);
  add_fact (table, _("Client"), info->client);
  add_fact (table, _("Address"), info->address);
  add_fact (table, _("Estimator"), info->estimator);
  add_fact (table, _("Plan sheets"), sheets);
  add_fact (table, _("Measuring rule"), rule);
  cw_pages_add_table (papers->pages, table);
}

/* What a bid rests on: areas, everything that is ordered, long runs. */
static gboolean
is_key (const CwQuantity *quantity)
{
  static const char *const keys[]
      = { "wall.gross",   "opening.area",  "unclad.area", "wall.net",
          "opening.count", "panel.stock",   "panel.least", "panel.waste",
          "bead.corner",  "bead.starter",  "bead.drip",   "joint.control",
          "mass.total",   "pallet.count",  "staging.area", NULL };
  if (quantity->variant)
    return FALSE;
  return isfinite (quantity->order_amount)
         || g_strv_contains (keys, quantity->type->key);
}

/* The step stands beside its first line. What is ordered is said once: as so
 * many bags, not as a bare number of them too. */
static void
add_key_quantity (const CwPapers *papers, CwTable *table,
                  const CwQuantity *quantity, gboolean is_first)
{
  const gboolean is_package
      = isfinite (quantity->order_amount) && !*quantity->unit;
  cw_table_add_cell (
      table, is_first ? _(cw_trade_step_label (quantity->type->step)) : "");
  cw_table_take_cell (table, cw_papers_label (quantity));
  cw_table_take_cell (table, is_package
                                 ? g_strdup ("")
                                 : cw_papers_amount (papers, quantity->amount,
                                                     quantity->unit));
  cw_table_take_cell (table, cw_papers_order (papers, quantity));
}

static void
add_key_quantities (const CwPapers *papers)
{
  const GPtrArray *quantities = papers->takeoff->quantities;
  int step = -1;
  g_autoptr (CwTable) table
      = cw_table_new (key_columns, G_N_ELEMENTS (key_columns));
  for (guint i = 0; i < quantities->len; i++)
    {
      const CwQuantity *quantity = quantities->pdata[i];
      if (!is_key (quantity))
        continue;
      add_key_quantity (papers, table, quantity,
                        (int) quantity->type->step != step);
      step = (int) quantity->type->step;
    }
  cw_papers_add_titled_table (papers, _("Key quantities"), table);
}

static void
take_amount (const CwPapers *papers, CwTable *table, const char *id,
             const char *key)
{
  const CwQuantity *quantity = cw_takeoff_quantity (papers->takeoff, id, key);
  cw_table_take_cell (table,
                      quantity ? cw_papers_amount (papers, quantity->amount,
                                                   quantity->unit)
                               : g_strdup ("–"));
}

static void
add_wall_row (const CwPapers *papers, CwTable *table,
              const CwElevation *elevation)
{
  static const char *const keys[]
      = { "wall.gross", "opening.area", "wall.net", "panel.stock" };
  const guint page = cw_pages_number_of (papers->pages, elevation->id);
  cw_table_add_cell (table, cw_papers_name (elevation));
  cw_table_take_cell (table, cw_papers_count (papers, elevation->count));
  for (guint i = 0; i < G_N_ELEMENTS (keys); i++)
    take_amount (papers, table, elevation->id, keys[i]);
  cw_table_take_cell (table, cw_papers_count (papers, page));
  cw_table_link_row (table, page);
}

static void
add_walls (const CwPapers *papers)
{
  const CwList *elevations = papers->takeoff->project->elevations;
  g_autoptr (CwTable) table
      = cw_table_new (wall_columns, G_N_ELEMENTS (wall_columns));
  gboolean are_single = TRUE;
  for (gsize i = 0; i < cw_list_length (elevations); i++)
    {
      const CwElevation *elevation = cw_list_at (elevations, i);
      add_wall_row (papers, table, elevation);
      are_single = are_single && elevation->count == 1;
    }
  cw_papers_add_titled_table (papers,
                              are_single
                                  ? _("Elevations")
                                  : _("Elevations, figures of one such wall"),
                              table);
}

void
cw_papers_add_summary (const CwPapers *papers)
{
  const char *title = papers->pages->title;
  cw_pages_begin (papers->pages, _("Takeoff of panel cladding"), NULL, FALSE);
  cw_page_add_heading (papers->pages, CW_TYPE_TITLE, title, 0);
  cw_page_add_text (papers->pages, CW_TYPE_SUBHEADING,
                    _("Takeoff of panel cladding"));
  cw_page_add_space (papers->pages, 1);
  add_facts (papers);
  add_key_quantities (papers);
  add_walls (papers);
  cw_papers_add_warnings (papers);
  cw_papers_add_cover (papers);
  cw_papers_add_cautions (papers);
}

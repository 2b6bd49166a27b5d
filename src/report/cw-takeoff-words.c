/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Amounts, lengths and names as the papers show them.
 */
#include <math.h>

#include "cw-i18n.h"
#include "cw-takeoff-papers.h"

/* A figure and its unit, feet and inches: they stay on one line. */
static char *
unbroken (char *text)
{
  char **parts = g_strsplit (text, " ", -1);
  char *joined = g_strjoinv ("\302\240", parts);
  g_strfreev (parts);
  g_free (text);
  return joined;
}

char *
cw_papers_amount (const CwPapers *papers, double amount, const char *unit)
{
  const CwTextStyle *style = &papers->options->style;
  const CwShownAmount shown = cw_text_style_amount (style, amount, unit);
  g_autofree char *number
      = cw_text_style_number (style, shown.value, shown.decimals);
  return *shown.unit ? unbroken (g_strdup_printf ("%s %s", number, shown.unit))
                     : g_steal_pointer (&number);
}

char *
cw_papers_count (const CwPapers *papers, gint64 count)
{
  return cw_text_style_number (&papers->options->style, (double) count, 0);
}

/* What is ordered comes in these. */
static const struct
{
  const char *unit, *one, *more;
} order_units[] = {
  { "panel", N_ ("panel"), N_ ("panels") },
  { "bag", N_ ("bag"), N_ ("bags") },
  { "box", N_ ("box"), N_ ("boxes") },
  { "roll", N_ ("roll"), N_ ("rolls") },
  { "pail", N_ ("pail"), N_ ("pails") },
  { "cartridge", N_ ("cartridge"), N_ ("cartridges") },
  { "coil", N_ ("coil"), N_ ("coils") },
  { "length", N_ ("length"), N_ ("lengths") },
};

static const char *
order_unit (const char *unit, double amount)
{
  for (guint i = 0; i < G_N_ELEMENTS (order_units); i++)
    if (g_strcmp0 (order_units[i].unit, unit) == 0)
      return g_dngettext (GETTEXT_PACKAGE, order_units[i].one,
                          order_units[i].more, (gulong) amount);
  return _(unit);
}

char *
cw_papers_order (const CwPapers *papers, const CwQuantity *quantity)
{
  if (!isfinite (quantity->order_amount))
    return g_strdup ("");
  const gboolean is_whole
      = fabs (quantity->order_amount - round (quantity->order_amount)) < 1e-9;
  g_autofree char *number
      = cw_text_style_number (&papers->options->style, quantity->order_amount,
                              is_whole ? 0 : 2);
  if (!quantity->order_unit || !*quantity->order_unit)
    return g_steal_pointer (&number);
  return g_strdup_printf ("%s %s", number,
                          order_unit (quantity->order_unit,
                                      quantity->order_amount));
}

char *
cw_papers_label (const CwQuantity *quantity)
{
  const char *label = _(quantity->type->label);
  return quantity->variant
             ? g_strdup_printf ("%s: %s", label, _(quantity->variant))
             : g_strdup (label);
}

char *
cw_papers_length (const CwPapers *papers, CwLength length)
{
  return unbroken (cw_length_format (length, &papers->options->style));
}

/* As on dimension lines: millimetres without their unit. */
char *
cw_papers_dimension (const CwPapers *papers, CwLength length)
{
  return unbroken (
      cw_length_format_dimension (length, &papers->options->style));
}

char *
cw_papers_size (const CwPapers *papers, CwLength width, CwLength height)
{
  g_autofree char *across = cw_papers_dimension (papers, width);
  g_autofree char *up = cw_papers_length (papers, height);
  return g_strdup_printf ("%s × %s", across, up);
}

const char *
cw_papers_name (const CwElevation *elevation)
{
  return *elevation->name ? elevation->name : elevation->id;
}

const char *
cw_papers_choice (gconstpointer node, const char *field)
{
  const CwNode *owner = node;
  const int index = cw_node_type_field (owner->type, field);
  g_return_val_if_fail (index >= 0, "");
  const CwChoice *choice = cw_field_choice_by_value (
      &owner->type->fields[index], cw_node_get (owner, (guint) index));
  return choice ? _(choice->label) : "";
}

void
cw_papers_add_titled_table (const CwPapers *papers, const char *title,
                            const CwTable *table)
{
  if (cw_table_n_rows (table) == 0)
    return;
  cw_page_add_space (papers->pages, 1.5);
  cw_page_add_heading (papers->pages, CW_TYPE_SUBHEADING, title,
                       cw_table_first_height (papers->pages, table));
  cw_pages_add_table (papers->pages, table);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-setting-words.h"

#include <math.h>

#include "cw-amount-text.h"
#include "cw-i18n.h"
#include "cw-length.h"

static const struct
{
  const char *title;
  gboolean is_figure;
} columns[] = {
  [CW_SETTING_COLUMN_START] = { N_ ("Start"), FALSE },
  [CW_SETTING_COLUMN_BOND] = { N_ ("Bond"), FALSE },
  [CW_SETTING_COLUMN_OFFSET] = { N_ ("Offset"), TRUE },
  [CW_SETTING_COLUMN_BASE] = { N_ ("Base"), TRUE },
  [CW_SETTING_COLUMN_PANELS] = { N_ ("Panels"), TRUE },
  [CW_SETTING_COLUMN_SAW] = { N_ ("Saw cuts"), TRUE },
  [CW_SETTING_COLUMN_COST] = { N_ ("Cost"), TRUE },
  [CW_SETTING_COLUMN_TROUBLES] = { N_ ("Rules broken"), TRUE },
};

const char *
cw_setting_column_title (CwSettingColumn column)
{
  g_return_val_if_fail (column < CW_N_SETTING_COLUMNS, NULL);
  return _(columns[column].title);
}

gboolean
cw_setting_column_is_figure (CwSettingColumn column)
{
  g_return_val_if_fail (column < CW_N_SETTING_COLUMNS, FALSE);
  return columns[column].is_figure;
}

/* As the inspector calls it. */
static const char *
name_of (const char *field, gint64 value)
{
  int index = cw_node_type_field (&cw_setting_out_type, field);
  const CwChoice *choice = cw_field_choice_by_value (
      &cw_setting_out_type.fields[index], value);
  return choice ? _(choice->label) : "";
}

static char *
bond_text (const CwSettingChoice *choice, const CwTextStyle *style)
{
  const char *name = name_of ("bond", choice->bond);
  if (choice->bond != CW_BOND_STAGGER)
    return g_strdup (name);
  g_autofree char *by = cw_length_format (choice->stagger, style);
  return g_strdup_printf ("%s, %s", name, by);
}

static char *
panels_text (const CwSettingChoice *choice, const CwTextStyle *style)
{
  g_autofree char *panels = cw_text_style_number (style, choice->n_panels, 0);
  if (choice->n_least >= choice->n_panels)
    return g_steal_pointer (&panels);
  g_autofree char *least = cw_text_style_number (style, choice->n_least, 0);
  /* Translators: panels that a plan uses, and that no plan can do without. */
  return g_strdup_printf (_("%s (at least %s)"), panels, least);
}

static char *
cost_text (const CwSettingChoice *choice, const CwTextStyle *style,
           const CwCurrency *currency)
{
  CwMoney cost = (CwMoney) llround (choice->cost * (double) CW_MONEY_ONE);
  return cost > 0 ? cw_money_format (cost, currency, style) : g_strdup ("");
}

char *
cw_setting_cell (const CwSettingChoice *choice, CwSettingColumn column,
                 const CwTextStyle *style, const CwCurrency *currency)
{
  g_return_val_if_fail (choice != NULL, NULL);
  switch (column)
    {
    case CW_SETTING_COLUMN_START:
      return g_strdup (name_of ("start", choice->start));
    case CW_SETTING_COLUMN_BOND:
      return bond_text (choice, style);
    case CW_SETTING_COLUMN_OFFSET:
      return cw_length_format (choice->offset, style);
    case CW_SETTING_COLUMN_BASE:
      return cw_length_format (choice->base, style);
    case CW_SETTING_COLUMN_PANELS:
      return panels_text (choice, style);
    case CW_SETTING_COLUMN_SAW:
      return cw_amount_text_with_unit (style, choice->saw, "m");
    case CW_SETTING_COLUMN_COST:
      return cost_text (choice, style, currency);
    case CW_SETTING_COLUMN_TROUBLES:
      return cw_text_style_number (style, choice->n_troubles, 0);
    case CW_N_SETTING_COLUMNS:
      break;
    }
  g_return_val_if_reached (NULL);
}

char *
cw_setting_row_words (const CwSettingChoice *choice, const CwTextStyle *style,
                      const CwCurrency *currency)
{
  GString *words = g_string_new (choice->is_present ? _("Present") : NULL);
  for (guint i = 0; i < CW_N_SETTING_COLUMNS; i++)
    {
      g_autofree char *cell = cw_setting_cell (choice, i, style, currency);
      if (*cell)
        g_string_append_printf (words, "%s%s: %s", words->len ? ", " : "",
                                cw_setting_column_title (i), cell);
    }
  return g_string_free (words, FALSE);
}

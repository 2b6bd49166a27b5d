/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-table-csv.h"

#include <math.h>

#include "cw-csv.h"

/* The shortest text that reads back to the very same number; nothing for
 * what is no number. */
static void
append_number (GString *csv, double value)
{
  if (!isfinite (value))
    return;
  char text[G_ASCII_DTOSTR_BUF_SIZE];
  for (int digits = 15; digits <= 17; digits++)
    {
      char format[8];
      g_snprintf (format, sizeof format, "%%.%dg", digits);
      g_ascii_formatd (text, sizeof text, format, value);
      double back = g_ascii_strtod (text, NULL);
      if (back <= value && back >= value)
        break;
    }
  g_string_append (csv, text);
}

/* What splits a key follows it after a slash: opening.count/window. */
static void
append_key (GString *csv, const CwQuantity *quantity)
{
  g_autofree char *key
      = g_strjoin ("/", quantity->type->key, quantity->variant, NULL);
  cw_csv_append_text (csv, key);
}

/* Money with all the places of its currency: 12.50. */
static void
append_amount (GString *csv, const CwQuantity *quantity,
               const CwCurrency *currency)
{
  if (!quantity->is_money)
    {
      append_number (csv, quantity->amount);
      return;
    }
  g_autofree char *money = cw_money_to_text (quantity->money, currency);
  g_string_append (csv, money);
}

static void
append_quantity (GString *csv, const char *scope, const CwQuantity *quantity,
                 const CwCurrency *currency)
{
  g_autofree char *steps = cw_quantity_steps_plain (quantity);
  append_key (csv, quantity);
  g_string_append_c (csv, ',');
  cw_csv_append_text (csv, scope);
  g_string_append_c (csv, ',');
  append_amount (csv, quantity, currency);
  g_string_append_c (csv, ',');
  cw_csv_append_text (csv, quantity->unit);
  g_string_append_c (csv, ',');
  append_number (csv, quantity->order_amount);
  g_string_append_c (csv, ',');
  cw_csv_append_text (csv, quantity->order_unit ? quantity->order_unit : "");
  g_string_append_c (csv, ',');
  cw_csv_append_text (csv, steps);
  g_string_append (csv, CW_CSV_LINE_END);
}

static void
append_scope (GString *csv, const char *scope, const GPtrArray *quantities,
              const CwCurrency *currency)
{
  for (guint i = 0; i < quantities->len; i++)
    append_quantity (csv, scope, quantities->pdata[i], currency);
}

char *
cw_takeoff_to_csv (const CwTakeoff *takeoff)
{
  g_return_val_if_fail (takeoff != NULL, NULL);

  GString *csv = g_string_new (
      "key,scope,quantity,unit,order_quantity,order_unit,steps" CW_CSV_LINE_END);
  for (guint i = 0; i < takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = takeoff->walls->pdata[i];
      append_scope (csv, wall->wall->elevation->id, wall->quantities,
                    &takeoff->cost->currency);
    }
  append_scope (csv, "project", takeoff->quantities,
                &takeoff->cost->currency);
  return g_string_free (csv, FALSE);
}

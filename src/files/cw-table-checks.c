/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-table-checks.h"

#include "cw-csv.h"
#include "cw-i18n.h"

/* (transfer full) */
static char *
places_text (const CwCheck *check)
{
  GString *text = g_string_new (NULL);
  for (guint i = 0; i < check->places->len; i++)
    {
      const CwBox *box = &g_array_index (check->places, CwBox, i);
      g_autofree char *left = cw_length_to_mm_text (box->left);
      g_autofree char *bottom = cw_length_to_mm_text (box->bottom);
      g_autofree char *right = cw_length_to_mm_text (box->right);
      g_autofree char *top = cw_length_to_mm_text (box->top);
      g_string_append_printf (text, "%s%s %s %s %s", i ? "; " : "", left,
                              bottom, right, top);
    }
  return g_string_free (text, FALSE);
}

static const char *
severity_word (CwCheckSeverity severity)
{
  static const char *const words[] = { "error", "warning", "note" };
  return words[severity];
}

static void
append_check (GString *csv, const CwCheck *check)
{
  const CwWaiver *waiver = check->waiver;
  g_autofree char *places = places_text (check);
  cw_csv_append_row (
      csv, (const char *[]){
               check->type->code,
               severity_word (check->type->severity),
               check->elevation_id ? check->elevation_id : "project",
               check->item,
               places,
               check->text,
               check->detail ? check->detail : "",
               _ (check->type->remedy),
               _ (check->type->source),
               waiver ? waiver->reason : "",
               waiver ? waiver->by : "",
               waiver ? waiver->date : "",
               waiver && check->is_changed ? "yes" : "",
               NULL,
           });
}

char *
cw_checks_to_csv (const GPtrArray *checks)
{
  g_return_val_if_fail (checks != NULL, NULL);

  GString *csv = g_string_new (
      "code,severity,scope,item,places,text,detail,remedy,source,waived,"
      "waived_by,waived_on,changed" CW_CSV_LINE_END);
  for (guint i = 0; i < checks->len; i++)
    append_check (csv, checks->pdata[i]);
  return g_string_free (csv, FALSE);
}

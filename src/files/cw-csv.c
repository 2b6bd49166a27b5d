/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-csv.h"

#include <string.h>

void
cw_csv_append_text (GString *csv, const char *text)
{
  if (strpbrk (text, ",\"\r\n") == NULL)
    {
      g_string_append (csv, text);
      return;
    }
  g_string_append_c (csv, '"');
  for (const char *at = text; *at != '\0'; at++)
    {
      if (*at == '"')
        g_string_append_c (csv, '"');
      g_string_append_c (csv, *at);
    }
  g_string_append_c (csv, '"');
}

void
cw_csv_append_row (GString *csv, const char *const *texts)
{
  for (guint i = 0; texts[i]; i++)
    {
      if (i > 0)
        g_string_append_c (csv, ',');
      cw_csv_append_text (csv, texts[i]);
    }
  g_string_append (csv, CW_CSV_LINE_END);
}

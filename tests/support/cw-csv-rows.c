/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-csv-rows.h"

#include <string.h>

/* The text after the opening quote; @at ends after the closing one. */
static char *
take_quoted (const char **at)
{
  GString *field = g_string_new (NULL);
  for (;; ++*at)
    {
      g_assert_cmpint (**at, !=, '\0');
      if (**at == '"' && *++*at != '"')
        return g_string_free (field, FALSE);
      g_string_append_c (field, **at);
    }
}

static char *
take_field (const char **at)
{
  if (**at == '"')
    {
      ++*at;
      return take_quoted (at);
    }
  gsize n = strcspn (*at, ",\"\r\n");
  char *field = g_strndup (*at, n);
  *at += n;
  return field;
}

static GPtrArray *
take_row (const char **at)
{
  GPtrArray *row = g_ptr_array_new_with_free_func (g_free);
  for (;;)
    {
      g_ptr_array_add (row, take_field (at));
      if (**at != ',')
        break;
      ++*at;
    }
  if (!g_str_has_prefix (*at, "\r\n"))
    g_error ("A row does not end in CR LF before “%.40s”", *at);
  *at += 2;
  return row;
}

GPtrArray *
cw_csv_rows (const char *csv)
{
  GPtrArray *rows
      = g_ptr_array_new_with_free_func ((GDestroyNotify)g_ptr_array_unref);
  while (*csv != '\0')
    {
      GPtrArray *row = take_row (&csv);
      g_ptr_array_add (rows, row);
      g_assert_cmpuint (row->len, ==, ((GPtrArray *)rows->pdata[0])->len);
    }
  return rows;
}

const char *
cw_csv_field (GPtrArray *rows, guint row, guint column)
{
  g_assert_cmpuint (row, <, rows->len);
  GPtrArray *fields = rows->pdata[row];
  g_assert_cmpuint (column, <, fields->len);
  return fields->pdata[column];
}

GPtrArray *
cw_csv_find (GPtrArray *rows, const char *key, const char *scope)
{
  for (guint i = 0; i < rows->len; i++)
    if (g_str_equal (cw_csv_field (rows, i, 0), key)
        && g_str_equal (cw_csv_field (rows, i, 1), scope))
      return rows->pdata[i];
  return NULL;
}

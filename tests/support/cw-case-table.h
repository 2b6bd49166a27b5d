/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Case tables: rows of a text file under tests/data, columns set apart by
 * tabs. Blank lines and lines that start with # are left out.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef struct
{
  guint line;     /* in the file, from 1 */
  char **columns; /* NULL-ended */
  guint n_columns;
} CwCase;

/*
 * @name: path under tests/data, "base/lengths-read.tsv"
 * @n_columns: what each row must have at least; the test fails otherwise
 *
 * Returns: (transfer full) (element-type CwCase): never empty
 */
GPtrArray *cw_case_table_load (const char *name, guint n_columns);

/* The text between « and ». (transfer full) */
char *cw_case_quoted (const char *column);

G_END_DECLS

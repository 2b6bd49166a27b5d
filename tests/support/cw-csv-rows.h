/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A reader of RFC 4180 tables for the tests, apart from the program's writer.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Rows of fields; the test fails at whatever RFC 4180 does not allow, bare
 * line feeds included. (transfer full) (element-type GPtrArray) */
GPtrArray *cw_csv_rows (const char *csv);

/* A field of a row, borrowed. */
const char *cw_csv_field (GPtrArray *rows, guint row, guint column);

/* The row with that key and scope, or NULL. */
GPtrArray *cw_csv_find (GPtrArray *rows, const char *key, const char *scope);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What tables are written with; this folder only.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

#define CW_CSV_LINE_END "\r\n"

/* RFC 4180, section 2: quoted when it must be, quotes doubled. */
void cw_csv_append_text (GString *csv, const char *text);

/* @texts, NULL-ended, with commas between and the line's end. */
void cw_csv_append_row (GString *csv, const char *const *texts);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Making errors of files.
 */
#pragma once

#include "cw-project-file.h"

G_BEGIN_DECLS

/* @line: from 1, or 0 when there is none; it is put before the sentence. */
void cw_file_error_set (GError **error, CwFileError code, guint line,
                        const char *format, ...) G_GNUC_PRINTF (4, 5);

G_END_DECLS

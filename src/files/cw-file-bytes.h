/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The bytes of a file that somebody chose to open.
 */
#pragma once

#include "cw-project-file.h"

G_BEGIN_DECLS

/* At most CW_PROJECT_FILE_MOST bytes of a regular file. @etag: (out)
 * (optional): set on success. (transfer full) (nullable) */
GBytes *cw_file_bytes (GFile *file, char **etag, GError **error);

G_END_DECLS

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

/* Durably, by the steps of cw_project_save(), all but reading back. @etag:
 * (inout) (nullable). */
gboolean cw_file_bytes_save (GBytes *bytes, GFile *file, char **etag,
                             GError **error);

/* What cw_file_tag needs of a file's information. */
#define CW_FILE_TAG_ATTRIBUTES                                                \
  G_FILE_ATTRIBUTE_ETAG_VALUE "," G_FILE_ATTRIBUTE_UNIX_INODE                 \
                              "," G_FILE_ATTRIBUTE_STANDARD_SIZE

/* Tells two states of a file apart, also two written within one tick of the
 * file system's clock, which can be as long as 10 ms: a time alone would let
 * the second pass for the first. @info (nullable). (transfer full) (nullable) */
char *cw_file_tag (GFileInfo *info);

G_END_DECLS

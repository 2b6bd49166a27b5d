/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Errors of typed text. The message is a sentence for the user; the offset
 * tells where the trouble starts.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

#define CW_TEXT_ERROR (cw_text_error_quark ())

typedef enum
{
  CW_TEXT_ERROR_EMPTY,
  CW_TEXT_ERROR_UNEXPECTED,   /* a character that cannot stand there */
  CW_TEXT_ERROR_UNIT,         /* a unit that is not known or not in order */
  CW_TEXT_ERROR_RANGE,        /* a number out of bounds */
} CwTextError;

/* A GError type with private data: the byte offset into the text. */
GQuark cw_text_error_quark (void);

/* Returns: the byte offset of the trouble, 0 for errors of other domains. */
gsize cw_text_error_offset (const GError *error);

/* Sets @error (message by printf) with @offset. */
void cw_text_error_set (GError **error, CwTextError code, gsize offset,
                        const char *format, ...) G_GNUC_PRINTF (4, 5);

G_END_DECLS

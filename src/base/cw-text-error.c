/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-text-error.h"

typedef struct
{
  gsize offset;
} CwTextErrorPrivate;

static void
cw_text_error_private_init (CwTextErrorPrivate *private)
{
}

static void
cw_text_error_private_copy (const CwTextErrorPrivate *from,
                            CwTextErrorPrivate *to)
{
  *to = *from;
}

static void
cw_text_error_private_clear (CwTextErrorPrivate *private)
{
}

G_DEFINE_EXTENDED_ERROR (CwTextError, cw_text_error)

gsize
cw_text_error_offset (const GError *error)
{
  g_return_val_if_fail (error != NULL, 0);

  if (error->domain != CW_TEXT_ERROR)
    return 0;
  return cw_text_error_get_private (error)->offset;
}

void
cw_text_error_set (GError **error, CwTextError code, gsize offset,
                   const char *format, ...)
{
  if (error == NULL)
    return;

  va_list arguments;
  va_start (arguments, format);
  GError *made = g_error_new_valist (CW_TEXT_ERROR, code, format, arguments);
  va_end (arguments);
  cw_text_error_get_private (made)->offset = offset;
  g_propagate_error (error, made);
}

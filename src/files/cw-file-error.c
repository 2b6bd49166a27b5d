/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-file-error.h"

#include "cw-i18n.h"

typedef struct
{
  guint line;
  char *sentence;
} CwFileErrorPrivate;

static void
cw_file_error_private_init (CwFileErrorPrivate *private)
{
}

static void
cw_file_error_private_copy (const CwFileErrorPrivate *from,
                            CwFileErrorPrivate *to)
{
  to->line = from->line;
  to->sentence = g_strdup (from->sentence);
}

static void
cw_file_error_private_clear (CwFileErrorPrivate *private)
{
  g_free (private->sentence);
}

G_DEFINE_EXTENDED_ERROR (CwFileError, cw_file_error)

guint
cw_file_error_line (const GError *error)
{
  g_return_val_if_fail (error != NULL, 0);

  if (error->domain != CW_FILE_ERROR)
    return 0;
  return cw_file_error_get_private (error)->line;
}

const char *
cw_file_error_sentence (const GError *error)
{
  g_return_val_if_fail (error != NULL, NULL);

  const char *sentence = NULL;
  if (error->domain == CW_FILE_ERROR)
    sentence = cw_file_error_get_private (error)->sentence;
  return sentence ? sentence : error->message;
}

void
cw_file_error_set (GError **error, CwFileError code, guint line,
                   const char *format, ...)
{
  if (error == NULL)
    return;

  va_list arguments;
  va_start (arguments, format);
  g_autofree char *sentence = g_strdup_vprintf (format, arguments);
  va_end (arguments);

  GError *made = line > 0 ? g_error_new (CW_FILE_ERROR, code, _ ("Line %u: %s"),
                                         line, sentence)
                          : g_error_new_literal (CW_FILE_ERROR, code, sentence);
  CwFileErrorPrivate *private = cw_file_error_get_private (made);
  private->line = line;
  private->sentence = g_steal_pointer (&sentence);
  g_propagate_error (error, made);
}

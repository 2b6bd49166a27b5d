/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <errno.h>
#include <stdio.h>

#include "cw-batch.h"
#include "cw-i18n.h"

void
cw_batch_print_error (const char *path, const GError *error)
{
  guint line = cw_file_error_line (error);
  if (line > 0)
    g_printerr ("%s:%u: %s\n", path, line, cw_file_error_sentence (error));
  else
    g_printerr ("%s: %s\n", path, cw_file_error_sentence (error));
}

static gboolean
write_to_output (const char *data, gsize size)
{
  if (fwrite (data, 1, size, stdout) == size && fflush (stdout) == 0)
    return TRUE;
  g_printerr (_ ("Standard output cannot be written: %s\n"),
              g_strerror (errno));
  return FALSE;
}

gboolean
cw_batch_write (const char *path, const char *data, gsize size)
{
  if (g_str_equal (path, "-"))
    return write_to_output (data, size);
  g_autoptr (GError) error = NULL;
  if (g_file_set_contents_full (path, data, (gssize)size,
                                G_FILE_SET_CONTENTS_CONSISTENT, 0666, &error))
    return TRUE;
  cw_batch_print_error (path, error);
  return FALSE;
}

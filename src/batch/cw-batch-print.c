/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <errno.h>
#include <glib/gstdio.h>
#include <stdio.h>
#include <stdlib.h>

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

char *
cw_batch_real_path (const char *path)
{
  char *real = realpath (path, NULL);
  char *copy = g_strdup (real);
  free (real);
  return copy;
}

/* Pipes and devices, /dev/stdout among them: what another file must not take
 * the place of. */
static gboolean
is_special (const char *path)
{
  GStatBuf info;
  return g_stat (path, &info) == 0 && !S_ISREG (info.st_mode)
         && !S_ISDIR (info.st_mode);
}

static gboolean
write_through (const char *path, const char *data, gsize size)
{
  FILE *file = g_fopen (path, "w");
  gboolean written = file && fwrite (data, 1, size, file) == size;
  if (file && fclose (file) != 0)
    written = FALSE;
  if (!written)
    g_printerr ("%s: %s\n", path, g_strerror (errno));
  return written;
}

gboolean
cw_batch_write (const char *path, const char *data, gsize size)
{
  if (g_str_equal (path, "-"))
    return write_to_output (data, size);
  if (is_special (path))
    return write_through (path, data, size);
  g_autoptr (GError) error = NULL;
  g_autofree char *real = cw_batch_real_path (path);
  if (g_file_set_contents_full (real ? real : path, data, (gssize)size,
                                G_FILE_SET_CONTENTS_CONSISTENT, 0666, &error))
    return TRUE;
  cw_batch_print_error (path, error);
  return FALSE;
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Saving that refuses to lie. In this order, so that at every moment the file
 * is the old one or the new one, whole:
 *
 *   bytes in memory → read back and compared → link followed → etag compared
 *   → former file copied to NAME~ durably → new file written durably
 *   (temporary file, fsync, rename, fsync of the folder) → new etag
 */
#include <errno.h>
#include <glib/gstdio.h>
#include <string.h>

#include "cw-file-bytes.h"
#include "cw-file-error.h"
#include "cw-i18n.h"

/* As many links as Linux follows. */
#define LINKS_MOST 40

#define DURABLE (G_FILE_SET_CONTENTS_CONSISTENT | G_FILE_SET_CONTENTS_DURABLE)

static gboolean
refuse (GError **error, CwFileError code, const char *step, const char *path,
        const char *why)
{
  cw_file_error_set (error, code, 0, _ ("Not saved. %s %s: %s"), step, path,
                     why);
  return FALSE;
}

static gboolean
check_reads_back (GBytes *bytes, const char *path, GError **error)
{
  g_autoptr (GError) fault = NULL;
  g_autoptr (CwProject) project = cw_project_from_xml (bytes, &fault);
  if (project == NULL)
    return refuse (error, CW_FILE_ERROR_SENSE,
                   _ ("This could not be opened as"), path, fault->message);
  g_autoptr (GBytes) again = cw_project_to_xml (project);
  if (g_bytes_equal (bytes, again))
    return TRUE;
  return refuse (error, CW_FILE_ERROR_WRITE, _ ("Reading back for"), path,
                 _ ("what was read is not what was written"));
}

/* The file behind @path, which need not be there. (transfer full) */
static char *
follow_links (const char *path, GError **error)
{
  g_autofree char *at = g_strdup (path);
  for (guint i = 0; i < LINKS_MOST; i++)
    {
      if (!g_file_test (at, G_FILE_TEST_IS_SYMLINK))
        return g_steal_pointer (&at);
      g_autoptr (GError) fault = NULL;
      g_autofree char *link = g_file_read_link (at, &fault);
      if (link == NULL)
        {
          refuse (error, CW_FILE_ERROR_WRITE, _ ("Following the link"), at,
                  fault->message);
          return NULL;
        }
      g_autofree char *folder = g_path_get_dirname (at);
      g_free (at);
      at = g_path_is_absolute (link) ? g_strdup (link)
                                     : g_build_filename (folder, link, NULL);
    }
  refuse (error, CW_FILE_ERROR_WRITE, _ ("Following the link"), path,
          g_strerror (ELOOP));
  return NULL;
}

/* NULL when there is no such file. (transfer full) */
static char *
etag_of_path (const char *path)
{
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GFileInfo) info = g_file_query_info (
      file, CW_FILE_TAG_ATTRIBUTES, G_FILE_QUERY_INFO_NONE, NULL, NULL);
  return cw_file_tag (info);
}

/* A file that was deleted meanwhile holds nothing that could be lost. */
static gboolean
check_unchanged (const char *path, const char *etag, GError **error)
{
  g_autofree char *now = etag_of_path (path);
  if (etag == NULL || now == NULL || g_str_equal (etag, now))
    return TRUE;
  return refuse (error, CW_FILE_ERROR_CHANGED, _ ("Comparing"), path,
                 _ ("another program has changed the file since it was opened; "
                    "save under another name or open it again"));
}

static gboolean
write_durably (const char *path, const char *data, gsize size, int mode,
               const char *step, GError **error)
{
  g_autoptr (GError) fault = NULL;
  if (!g_file_set_contents_full (path, data, (gssize)size, DURABLE, mode,
                                 &fault))
    return refuse (error, CW_FILE_ERROR_WRITE, step, path, fault->message);
  return TRUE;
}

static gboolean
keep_former (const char *path, int mode, GError **error)
{
  g_autofree char *data = NULL;
  g_autofree char *backup = g_strconcat (path, "~", NULL);
  g_autoptr (GError) fault = NULL;
  gsize size;
  if (!g_file_get_contents (path, &data, &size, &fault))
    return refuse (error, CW_FILE_ERROR_WRITE, _ ("Reading the former file"),
                   path, fault->message);
  return write_durably (backup, data, size, mode, _ ("Writing the backup"),
                        error);
}

static gboolean
replace (const char *path, GBytes *bytes, GError **error)
{
  GStatBuf former;
  gboolean is_there = g_stat (path, &former) == 0;
  int mode = is_there ? (int)former.st_mode & 0777 : 0666;
  if (is_there && !S_ISREG (former.st_mode))
    return refuse (error, CW_FILE_ERROR_WRITE, _ ("Replacing"), path,
                   _ ("it is no regular file"));
  /* Renaming over a file needs no right to write it; its owner meant it. */
  if (is_there && g_access (path, W_OK) != 0)
    return refuse (error, CW_FILE_ERROR_WRITE, _ ("Replacing"), path,
                   g_strerror (errno));
  if (is_there && !keep_former (path, mode, error))
    return FALSE;

  gsize size;
  const char *data = g_bytes_get_data (bytes, &size);
  if (!write_durably (path, data, size, mode, _ ("Writing"), error))
    return FALSE;
  /* The umask may have taken rights that the former file had. The content is
   * safe by now, so a failure here is none of saving. */
  if (is_there && g_chmod (path, mode) != 0)
    g_debug ("The rights of %s were not kept: %s", path, g_strerror (errno));
  return TRUE;
}

static char *
path_of (GFile *file, GError **error)
{
  char *path = g_file_get_path (file);
  g_autofree char *name = g_file_get_parse_name (file);
  if (path == NULL)
    refuse (error, CW_FILE_ERROR_WRITE, _ ("Finding"), name,
            _ ("it is not on this computer's disks"));
  return path;
}

gboolean
cw_file_bytes_save (GBytes *bytes, GFile *file, char **etag, GError **error)
{
  g_autofree char *path = path_of (file, error);
  if (path == NULL)
    return FALSE;
  g_autofree char *target = follow_links (path, error);
  if (target == NULL || !check_unchanged (target, etag ? *etag : NULL, error)
      || !replace (target, bytes, error))
    return FALSE;
  if (etag)
    {
      g_free (*etag);
      *etag = etag_of_path (target);
    }
  return TRUE;
}

gboolean
cw_project_save (const CwProject *project, GFile *file, char **etag,
                 GError **error)
{
  g_return_val_if_fail (project != NULL && G_IS_FILE (file), FALSE);

  g_autofree char *path = path_of (file, error);
  if (path == NULL)
    return FALSE;
  g_autoptr (GBytes) bytes = cw_project_to_xml (project);
  return check_reads_back (bytes, path, error)
         && cw_file_bytes_save (bytes, file, etag, error);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-file-bytes.h"
#include "cw-file-error.h"
#include "cw-i18n.h"

#define CHUNK (256 * 1024)

static gboolean
refuse (GFile *file, CwFileError code, const char *why, GError **error)
{
  g_autofree char *name = g_file_get_parse_name (file);
  cw_file_error_set (error, code, 0, _ ("The file cannot be read: %s"), why);
  g_prefix_error (error, "%s: ", name);
  return FALSE;
}

/* Reads to the end; what grows past the limit while it is read is refused. */
static gboolean
read_all (GFile *file, GInputStream *stream, GByteArray *bytes, GError **error)
{
  g_autofree guint8 *chunk = g_malloc (CHUNK);
  for (;;)
    {
      g_autoptr (GError) fault = NULL;
      gssize n = g_input_stream_read (stream, chunk, CHUNK, NULL, &fault);
      if (n < 0)
        return refuse (file, CW_FILE_ERROR_READ, fault->message, error);
      if (n == 0)
        return TRUE;
      g_byte_array_append (bytes, chunk, (guint)n);
      if (bytes->len > CW_PROJECT_FILE_MOST)
        return refuse (file, CW_FILE_ERROR_TOO_LARGE,
                       _ ("it is larger than a project can be"), error);
    }
}

/* A pipe or a device could keep a reader waiting for ever. */
static gboolean
check_regular (GFile *file, GError **error)
{
  GFileType type = g_file_query_file_type (file, G_FILE_QUERY_INFO_NONE, NULL);
  if (type == G_FILE_TYPE_REGULAR)
    return TRUE;
  return refuse (file, CW_FILE_ERROR_READ,
                 type == G_FILE_TYPE_UNKNOWN
                     ? _ ("it is not there, or may not be looked at")
                     : _ ("it is no regular file"),
                 error);
}

char *
cw_file_tag (GFileInfo *info)
{
  if (info == NULL)
    return NULL;
  return g_strdup_printf (
      "%s/%" G_GUINT64_FORMAT "/%" G_GOFFSET_FORMAT,
      g_file_info_get_etag (info),
      g_file_info_get_attribute_uint64 (info, G_FILE_ATTRIBUTE_UNIX_INODE),
      g_file_info_get_size (info));
}

/* The tag of what was opened, even when its name means another file by now. */
static char *
tag_of_stream (GFileInputStream *stream)
{
  g_autoptr (GFileInfo) info = g_file_input_stream_query_info (
      stream, CW_FILE_TAG_ATTRIBUTES, NULL, NULL);
  return cw_file_tag (info);
}

GBytes *
cw_file_bytes (GFile *file, char **etag, GError **error)
{
  if (!check_regular (file, error))
    return NULL;
  g_autoptr (GError) fault = NULL;
  g_autoptr (GFileInputStream) stream = g_file_read (file, NULL, &fault);
  if (stream == NULL)
    {
      refuse (file, CW_FILE_ERROR_READ, fault->message, error);
      return NULL;
    }

  g_autofree char *tag = tag_of_stream (stream);
  g_autoptr (GByteArray) bytes = g_byte_array_new ();
  if (!read_all (file, G_INPUT_STREAM (stream), bytes, error))
    return NULL;
  if (etag)
    *etag = g_steal_pointer (&tag);
  return g_byte_array_free_to_bytes (g_steal_pointer (&bytes));
}

CwProject *
cw_project_load (GFile *file, char **etag, GError **error)
{
  g_return_val_if_fail (G_IS_FILE (file), NULL);

  g_autofree char *tag = NULL;
  g_autoptr (GBytes) bytes = cw_file_bytes (file, &tag, error);
  if (bytes == NULL)
    return NULL;
  g_autoptr (CwProject) project = cw_project_from_xml (bytes, error);
  if (project && etag)
    *etag = g_steal_pointer (&tag);
  return g_steal_pointer (&project);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-whole.h"

#include <string.h>

#define PNG_SIGNATURE 8
/* Length, type and checksum round a chunk's data. */
#define PNG_CHUNK 12

static gsize
big_endian (const guchar *at, guint n)
{
  gsize value = 0;

  for (guint i = 0; i < n; i++)
    value = value << 8 | at[i];
  return value;
}

/* Chunk after chunk up to the last one, IEND. */
static gboolean
png_is_whole (const guchar *data, gsize n)
{
  gsize at = PNG_SIGNATURE;

  while (at + PNG_CHUNK <= n)
    {
      gsize length = big_endian (data + at, 4);

      if (length > n - at - PNG_CHUNK)
        return FALSE;
      if (memcmp (data + at + 4, "IEND", 4) == 0)
        return TRUE;
      at += PNG_CHUNK + length;
    }
  return FALSE;
}

#define JPEG_START_OF_SCAN 0xda
#define JPEG_END_OF_IMAGE 0xd9

/* The place after the first scan's header: before it stand segments, which
 * may hold another, small image with an end of its own. */
static gsize
jpeg_first_scan (const guchar *data, gsize n)
{
  gsize at = 2;

  while (at + 4 <= n && data[at] == 0xff)
    {
      guchar marker = data[at + 1];

      if (marker == 0xff)
        {
          at++;
          continue;
        }
      at += 2 + big_endian (data + at + 2, 2);
      if (marker == JPEG_START_OF_SCAN)
        return MIN (at, n);
    }
  return n;
}

static gboolean
jpeg_is_whole (const guchar *data, gsize n)
{
  for (gsize at = jpeg_first_scan (data, n); at + 2 <= n; at++)
    if (data[at] == 0xff && data[at + 1] == JPEG_END_OF_IMAGE)
      return TRUE;
  return FALSE;
}

gboolean
cw_sheet_image_is_whole (const guchar *data, gsize n, const char *type)
{
  if (strcmp (type, "png") == 0)
    return png_is_whole (data, n);
  return strcmp (type, "jpeg") != 0 || jpeg_is_whole (data, n);
}

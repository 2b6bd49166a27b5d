/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheet-cases.h"

#include <gdk-pixbuf/gdk-pixbuf.h>
#include <string.h>

GFile *
case_file (const char *name, const void *bytes, gsize n)
{
  g_autofree char *path
      = g_build_filename (g_get_user_cache_dir (), name, NULL);
  g_autoptr (GError) error = NULL;

  g_assert_cmpint (g_mkdir_with_parents (g_get_user_cache_dir (), 0700), ==,
                   0);
  g_file_set_contents (path, bytes, (gssize) n, &error);
  g_assert_no_error (error);
  return g_file_new_for_path (path);
}

/* Adds an object and notes where it stands. */
static void
add_object (GString *pdf, GArray *places, const char *body)
{
  g_array_append_val (places, pdf->len);
  g_string_append_printf (pdf, "%u 0 obj\n%s\nendobj\n", places->len, body);
}

GFile *
case_pdf (const char *name, const char *boxes)
{
  static const char content[]
      = "1 0 0 rg 100 200 200 100 re f 0 1 0 rg 300 200 200 100 re f "
        "0 0 1 rg 100 100 200 100 re f 0 0 0 rg 300 100 200 100 re f";
  g_autoptr (GString) pdf = g_string_new ("%PDF-1.4\n");
  g_autoptr (GArray) places = g_array_new (FALSE, FALSE, sizeof (gsize));
  g_autofree char *page = g_strdup_printf (
      "<< /Type /Page /Parent 2 0 R /Contents 4 0 R %s >>", boxes);
  g_autofree char *stream
      = g_strdup_printf ("<< /Length %zu >>\nstream\n%s\nendstream",
                         strlen (content), content);
  gsize table;

  add_object (pdf, places, "<< /Type /Catalog /Pages 2 0 R >>");
  add_object (pdf, places, "<< /Type /Pages /Kids [3 0 R] /Count 1 >>");
  add_object (pdf, places, page);
  add_object (pdf, places, stream);
  table = pdf->len;
  g_string_append_printf (pdf, "xref\n0 %u\n0000000000 65535 f \n",
                          places->len + 1);
  for (guint i = 0; i < places->len; i++)
    g_string_append_printf (pdf, "%010zu 00000 n \n",
                            g_array_index (places, gsize, i));
  g_string_append_printf (
      pdf, "trailer << /Size %u /Root 1 0 R >>\nstartxref\n%zu\n%%%%EOF\n",
      places->len + 1, table);
  return case_file (name, pdf->str, pdf->len);
}

static void
fill_quarters (GdkPixbuf *pixbuf)
{
  static const guint32 colours[2][2]
      = { { 0xff0000ff, 0x00ff00ff }, { 0x0000ffff, 0x000000ff } };

  for (int row = 0; row < 2; row++)
    for (int column = 0; column < 2; column++)
      {
        g_autoptr (GdkPixbuf) part = gdk_pixbuf_new_subpixbuf (
            pixbuf, 10 * column, 5 * row, 10, 5);

        gdk_pixbuf_fill (part, colours[row][column]);
      }
}

GBytes *
case_image (const char *type, const char *const *options)
{
  g_autoptr (GdkPixbuf) pixbuf
      = gdk_pixbuf_new (GDK_COLORSPACE_RGB, FALSE, 8, 20, 10);
  g_autoptr (GPtrArray) keys = g_ptr_array_new ();
  g_autoptr (GPtrArray) values = g_ptr_array_new ();
  g_autoptr (GError) error = NULL;
  char *data = NULL;
  gsize n = 0;

  for (; options && *options; options += 2)
    {
      g_ptr_array_add (keys, (gpointer) options[0]);
      g_ptr_array_add (values, (gpointer) options[1]);
    }
  g_ptr_array_add (keys, NULL);
  g_ptr_array_add (values, NULL);
  fill_quarters (pixbuf);
  gdk_pixbuf_save_to_bufferv (pixbuf, &data, &n, type, (char **) keys->pdata,
                              (char **) values->pdata, &error);
  g_assert_no_error (error);
  return g_bytes_new_take (data, n);
}

GBytes *
case_oriented_jpeg (GBytes *jpeg, guchar orientation)
{
  /* Length, "Exif", little-endian TIFF with one entry: 0x0112, a short. */
  guchar segment[] = { 0xff, 0xe1, 0,    34,   'E', 'x', 'i', 'f', 0, 0,
                       'I',  'I',  0x2a, 0,    8,   0,   0,   0,   1, 0,
                       0x12, 0x01, 3,    0,    1,   0,   0,   0,
                       orientation, 0, 0, 0,   0,   0,   0,   0 };
  gsize n;
  const guchar *data = g_bytes_get_data (jpeg, &n);
  GByteArray *made = g_byte_array_new ();

  g_byte_array_append (made, data, 2);
  g_byte_array_append (made, segment, sizeof segment);
  g_byte_array_append (made, data + 2, (guint) n - 2);
  return g_byte_array_free_to_bytes (made);
}

static guint32
checksum (const guchar *data, gsize n)
{
  guint32 sum = 0xffffffff;

  for (gsize i = 0; i < n; i++)
    {
      sum ^= data[i];
      for (int bit = 0; bit < 8; bit++)
        sum = sum & 1 ? sum >> 1 ^ 0xedb88320 : sum >> 1;
    }
  return ~sum;
}

static void
put (guchar *at, guint32 value)
{
  guint32 big = GUINT32_TO_BE (value);

  memcpy (at, &big, sizeof big);
}

GBytes *
case_png_claiming (GBytes *png, guint32 width, guint32 height)
{
  gsize n;
  const guchar *data = g_bytes_get_data (png, &n);
  guchar *made = g_memdup2 (data, n);

  put (made + 16, width);
  put (made + 20, height);
  put (made + 29, checksum (made + 12, 17));
  return g_bytes_new_take (made, n);
}

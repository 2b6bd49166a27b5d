/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-source.h"

#include <math.h>
#include <poppler.h>
#include <string.h>

#include "cw-i18n.h"
#include "cw-sheet-image.h"
#include "cw-sheet-source-private.h"

/* Where a PDF's mark may stand, by the habit of every reader. */
#define HEAD_BYTES 1024
#define MOST_PAGES 20000
/* Of an image's file, packed. */
#define MOST_BYTES 500000000
#define CHUNK (256 * 1024)
/* No page of a drawing is larger: 350 m. */
#define MOST_POINTS 1e6
/* cairo counts in 24 bits of whole pixels. */
#define MOST_SCALED 4e6

G_DEFINE_QUARK (cw-sheet-error-quark, cw_sheet_error)

struct _CwSheetSource
{
  GObject parent_instance;

  /* One of the two. */
  PopplerDocument *pdf;
  CwSheetImage *image;
};

G_DEFINE_FINAL_TYPE (CwSheetSource, cw_sheet_source, G_TYPE_OBJECT)

static void
cw_sheet_source_finalize (GObject *object)
{
  CwSheetSource *self = CW_SHEET_SOURCE (object);

  g_clear_object (&self->pdf);
  g_clear_pointer (&self->image, cw_sheet_image_free);
  G_OBJECT_CLASS (cw_sheet_source_parent_class)->finalize (object);
}

static void
cw_sheet_source_class_init (CwSheetSourceClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = cw_sheet_source_finalize;
}

static void
cw_sheet_source_init (CwSheetSource *self)
{
}

static char *
shown_name (GFile *file)
{
  g_autofree char *name = g_file_get_basename (file);

  return g_utf8_make_valid (name ? name : "", -1);
}

static void
set_pdf_error (GError **error, const char *name, const GError *cause)
{
  if (g_error_matches (cause, POPPLER_ERROR, POPPLER_ERROR_ENCRYPTED))
    g_set_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_PASSWORD,
                 _ ("“%s” is protected by a password. Save a copy of it "
                    "without one and add that."),
                 name);
  else if (cause->domain == POPPLER_ERROR)
    g_set_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_DAMAGED,
                 _ ("“%s” is damaged or incomplete. Ask for it again, or "
                    "save it anew from a program that still opens it."),
                 name);
  else
    g_set_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_READ,
                 _ ("“%s” cannot be read: %s"), name, cause->message);
}

static gboolean
open_pdf (CwSheetSource *self, GFile *file, const char *name, GError **error)
{
  g_autoptr (GError) cause = NULL;
  int n_pages;

  self->pdf = poppler_document_new_from_gfile (file, NULL, NULL, &cause);
  if (self->pdf == NULL)
    {
      set_pdf_error (error, name, cause);
      return FALSE;
    }
  n_pages = poppler_document_get_n_pages (self->pdf);
  if (n_pages < 1)
    g_set_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_DAMAGED,
                 _ ("“%s” has no pages. Ask for it again."), name);
  else if (n_pages > MOST_PAGES)
    g_set_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_TOO_LARGE,
                 _ ("“%s” has more than %d pages. Save the sheets that you "
                    "need in a file of their own."),
                 name, MOST_PAGES);
  return n_pages >= 1 && n_pages <= MOST_PAGES;
}

/* All of @stream, at most MOST_BYTES. */
static GBytes *
read_bytes (GInputStream *stream, const char *name, GError **error)
{
  g_autoptr (GError) cause = NULL;
  g_autoptr (GByteArray) bytes = g_byte_array_new ();
  g_autofree guchar *chunk = g_malloc (CHUNK);
  gssize n;

  while ((n = g_input_stream_read (stream, chunk, CHUNK, NULL, &cause)) > 0
         && bytes->len <= MOST_BYTES)
    g_byte_array_append (bytes, chunk, (guint) n);
  if (n < 0)
    g_set_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_READ,
                 _ ("“%s” cannot be read: %s"), name, cause->message);
  else if (n > 0)
    g_set_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_TOO_LARGE,
                 _ ("“%s” has more than %d MB. Scan it again at fewer dots "
                    "per inch."),
                 name, MOST_BYTES / 1000000);
  return n == 0 ? g_byte_array_free_to_bytes (g_steal_pointer (&bytes)) : NULL;
}

static gboolean
open_image (CwSheetSource *self, GInputStream *stream, const char *type,
            const char *name, GError **error)
{
  g_autoptr (GBytes) bytes = read_bytes (stream, name, error);
  g_autoptr (GError) cause = NULL;

  if (bytes == NULL)
    return FALSE;
  self->image = cw_sheet_image_load (bytes, type, &cause);
  if (self->image == NULL)
    g_set_error (error, CW_SHEET_ERROR, cause->code, _ ("“%s” %s"), name,
                 cause->message);
  return self->image != NULL;
}

static gboolean
is_pdf (const guchar *head, gsize n)
{
  for (gsize i = 0; i + 5 <= n; i++)
    if (memcmp (head + i, "%PDF-", 5) == 0)
      return TRUE;
  return FALSE;
}

/* "pdf", or the name of an image loader, or NULL. */
static const char *
kind_of (const guchar *head, gsize n)
{
  static const struct
  {
    const char *mark;
    gsize n;
    const char *kind;
  } kinds[] = {
    { "\x89PNG\r\n\x1a\n", 8, "png" },
    { "\xff\xd8\xff", 3, "jpeg" },
    { "II*\0", 4, "tiff" },
    { "MM\0*", 4, "tiff" },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (kinds); i++)
    if (n >= kinds[i].n && memcmp (head, kinds[i].mark, kinds[i].n) == 0)
      return kinds[i].kind;
  return is_pdf (head, n) ? "pdf" : NULL;
}

static gboolean
open_stream (CwSheetSource *self, GFile *file, GInputStream *stream,
             const char *name, GError **error)
{
  guchar head[HEAD_BYTES];
  g_autoptr (GError) cause = NULL;
  gsize n = 0;
  const char *kind;

  if (!g_input_stream_read_all (stream, head, sizeof head, &n, NULL, &cause)
      || !g_seekable_seek (G_SEEKABLE (stream), 0, G_SEEK_SET, NULL, &cause))
    {
      g_set_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_READ,
                   _ ("“%s” cannot be read: %s"), name, cause->message);
      return FALSE;
    }
  kind = kind_of (head, n);
  if (kind == NULL)
    {
      g_set_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_KIND,
                   _ ("“%s” is neither a PDF nor a PNG, JPEG or TIFF image. "
                      "Save the plan sheet as one of these."),
                   name);
      return FALSE;
    }
  return strcmp (kind, "pdf") == 0
             ? open_pdf (self, file, name, error)
             : open_image (self, stream, kind, name, error);
}

CwSheetSource *
cw_sheet_source_open (GFile *file, GError **error)
{
  g_autoptr (CwSheetSource) self = g_object_new (CW_TYPE_SHEET_SOURCE, NULL);
  g_autofree char *name = NULL;
  g_autoptr (GError) cause = NULL;
  g_autoptr (GFileInputStream) stream = NULL;

  g_return_val_if_fail (G_IS_FILE (file), NULL);

  name = shown_name (file);
  stream = g_file_read (file, NULL, &cause);
  if (stream == NULL)
    {
      g_set_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_READ,
                   _ ("“%s” cannot be read: %s"), name, cause->message);
      return NULL;
    }
  if (!open_stream (self, file, G_INPUT_STREAM (stream), name, error))
    return NULL;
  return g_steal_pointer (&self);
}

guint
cw_sheet_source_n_pages (CwSheetSource *self)
{
  g_return_val_if_fail (CW_IS_SHEET_SOURCE (self), 0);

  return self->image ? 1 : (guint) poppler_document_get_n_pages (self->pdf);
}

static PopplerPage *
pdf_page (CwSheetSource *self, guint page)
{
  return poppler_document_get_page (self->pdf, (int) page - 1);
}

/* In points, before a further turn. A page without area has none at all. */
static void
own_size (CwSheetSource *self, guint page, double *width, double *height)
{
  *width = *height = 0;
  if (self->image)
    {
      *width = self->image->width;
      *height = self->image->height;
    }
  else
    {
      PopplerPage *pdf = pdf_page (self, page);

      if (pdf)
        poppler_page_get_size (pdf, width, height);
      g_clear_object (&pdf);
    }
  if (!(*width > 0 && *height > 0 && *width <= MOST_POINTS
        && *height <= MOST_POINTS))
    *width = *height = 0;
}

void
cw_sheet_source_size (CwSheetSource *self, guint page, guint turn,
                      double *width, double *height)
{
  g_return_if_fail (CW_IS_SHEET_SOURCE (self));
  g_return_if_fail (page >= 1 && page <= cw_sheet_source_n_pages (self));
  g_return_if_fail (turn % 90 == 0);

  if (turn % 180 == 0)
    own_size (self, page, width, height);
  else
    own_size (self, page, height, width);
}

/* From points of the page as it is to points of the page as turned. */
static cairo_matrix_t
turn_matrix (guint turn, double width, double height)
{
  cairo_matrix_t matrix;

  cairo_matrix_init_identity (&matrix);
  switch (turn % 360)
    {
    case 90:
      cairo_matrix_init (&matrix, 0, 1, -1, 0, height, 0);
      break;
    case 180:
      cairo_matrix_init (&matrix, -1, 0, 0, -1, width, height);
      break;
    case 270:
      cairo_matrix_init (&matrix, 0, -1, 1, 0, 0, width);
      break;
    default:
      break;
    }
  return matrix;
}

static void
paint_image (cairo_t *cr, const CwSheetImage *image)
{
  cairo_scale (cr,
               image->width / cairo_image_surface_get_width (image->surface),
               image->height
                   / cairo_image_surface_get_height (image->surface));
  cairo_set_source_surface (cr, image->surface, 0, 0);
  cairo_paint (cr);
}

/* The page's points lie on the context's user space. */
static void
paint_page (CwSheetSource *self, cairo_t *cr, guint page)
{
  PopplerPage *pdf;

  if (self->image)
    {
      paint_image (cr, self->image);
      return;
    }
  pdf = pdf_page (self, page);
  poppler_page_render (pdf, cr);
  g_object_unref (pdf);
}

gboolean
cw_sheet_source_is_vector (CwSheetSource *self)
{
  return self->pdf != NULL;
}

static cairo_t *
white_context (int width, int height)
{
  cairo_surface_t *surface
      = cairo_image_surface_create (CAIRO_FORMAT_RGB24, width, height);
  cairo_t *cr = cairo_create (surface);

  cairo_surface_destroy (surface);
  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_paint (cr);
  return cr;
}

/* Leaves what the page paints outside its own box, a crop box say, white. */
static void
clip_to_page (cairo_t *cr, double width, double height)
{
  cairo_rectangle (cr, 0, 0, width, height);
  cairo_clip (cr);
  cairo_set_source_rgb (cr, 0, 0, 0);
}

void
cw_sheet_source_paint (CwSheetSource *self, cairo_t *cr, guint page,
                       guint turn)
{
  cairo_matrix_t matrix;
  double width, height;

  own_size (self, page, &width, &height);
  matrix = turn_matrix (turn, width, height);
  cairo_transform (cr, &matrix);
  clip_to_page (cr, width, height);
  paint_page (self, cr, page);
}

static gboolean
can_render (double page_width, double scale, int width, int height,
            GError **error)
{
  if (!(page_width > 0))
    {
      g_set_error_literal (error, CW_SHEET_ERROR, CW_SHEET_ERROR_DAMAGED,
                           _ ("The page has no size that can be drawn. Ask "
                              "for the sheet again."));
      return FALSE;
    }
  if (width > CW_SHEET_RENDER_MOST || height > CW_SHEET_RENDER_MOST
      || page_width * scale > MOST_SCALED)
    {
      g_set_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_TOO_LARGE,
                   _ ("At most %d pixels a side of a sheet are drawn at "
                      "once. Choose a smaller part."),
                   CW_SHEET_RENDER_MOST);
      return FALSE;
    }
  return TRUE;
}

static cairo_surface_t *
finished_surface (cairo_t *cr, GError **error)
{
  cairo_status_t status = cairo_status (cr);

  if (status == CAIRO_STATUS_SUCCESS)
    return cairo_surface_reference (cairo_get_target (cr));
  g_set_error (error, CW_SHEET_ERROR, CW_SHEET_ERROR_RENDER,
               _ ("The page cannot be drawn: %s. Save the sheet anew from a "
                  "program that still shows it."),
               cairo_status_to_string (status));
  return NULL;
}

cairo_surface_t *
cw_sheet_source_render (CwSheetSource *self, guint page, guint turn,
                        double scale, int x, int y, int width, int height,
                        GError **error)
{
  double own_width, own_height;
  cairo_surface_t *surface;
  cairo_t *cr;

  g_return_val_if_fail (CW_IS_SHEET_SOURCE (self), NULL);
  g_return_val_if_fail (page >= 1 && page <= cw_sheet_source_n_pages (self),
                        NULL);
  g_return_val_if_fail (turn % 90 == 0, NULL);
  g_return_val_if_fail (scale > 0 && width > 0 && height > 0, NULL);

  own_size (self, page, &own_width, &own_height);
  if (!can_render (MAX (own_width, own_height), scale, width, height, error))
    return NULL;
  cr = white_context (width, height);
  cairo_translate (cr, -x, -y);
  cairo_scale (cr, scale, scale);
  cw_sheet_source_paint (self, cr, page, turn);
  surface = finished_surface (cr, error);
  cairo_destroy (cr);
  return surface;
}

static gboolean
digest_stream (GInputStream *stream, GChecksum *checksum,
               GCancellable *cancellable, GError **error)
{
  guchar chunk[64 * 1024];
  gssize n;

  while ((n = g_input_stream_read (stream, chunk, sizeof chunk, cancellable,
                                   error))
         > 0)
    g_checksum_update (checksum, chunk, n);
  return n == 0;
}

char *
cw_sheet_source_sha256 (GFile *file, GCancellable *cancellable, GError **error)
{
  g_autoptr (GFileInputStream) stream = NULL;
  g_autoptr (GChecksum) checksum = g_checksum_new (G_CHECKSUM_SHA256);

  g_return_val_if_fail (G_IS_FILE (file), NULL);

  stream = g_file_read (file, cancellable, error);
  if (stream == NULL
      || !digest_stream (G_INPUT_STREAM (stream), checksum, cancellable,
                         error))
    return NULL;
  return g_strdup (g_checksum_get_string (checksum));
}

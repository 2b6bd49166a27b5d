/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "paper-pages.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#define PIXELS 6.0        /* a point */
#define HEAD 52.0         /* where the running head ends, points */
#define INK 0x30          /* no lighter than this, each colour */

PopplerDocument *
paper_read_styled (const CwTakeoff *takeoff, const CwTextStyle *style)
{
  g_autoptr (GError) error = NULL;
  CwTakeoffPdfOptions options;
  cw_takeoff_pdf_options_init (&options, takeoff->project);
  options.style = *style;
  options.file_name = "house.cladwright";
  g_autoptr (GBytes) pdf = cw_takeoff_to_pdf (takeoff, &options, NULL, &error);
  g_assert_no_error (error);
  PopplerDocument *document
      = poppler_document_new_from_bytes (pdf, NULL, &error);
  g_assert_no_error (error);
  return document;
}

PopplerDocument *
paper_read (const CwTakeoff *takeoff)
{
  const CwTextStyle style
      = cw_text_style_plain ((CwUnits) takeoff->project->units);
  return paper_read_styled (takeoff, &style);
}

static void
word_free (gpointer data)
{
  PaperWord *word = data;
  g_free (word->text);
  g_free (word);
}

static void
add_letter (PaperWord *word, gunichar letter, const PopplerRectangle *box)
{
  char utf8[7] = { 0 };
  g_unichar_to_utf8 (letter, utf8);
  char *longer = g_strconcat (word->text ? word->text : "", utf8, NULL);
  if (!word->text)
    word->box = *box;
  word->box.x1 = MIN (word->box.x1, box->x1);
  word->box.y1 = MIN (word->box.y1, box->y1);
  word->box.x2 = MAX (word->box.x2, box->x2);
  word->box.y2 = MAX (word->box.y2, box->y2);
  g_free (word->text);
  word->text = longer;
}

/* Columns stand well apart; letters of a word do not. */
#define GAP 1.8

static gboolean
follows (const PaperWord *word, const PopplerRectangle *box)
{
  return word && fabs (word->box.y2 - box->y2) < 1
         && box->x1 > word->box.x1 && box->x1 - word->box.x2 < GAP;
}

GPtrArray *
paper_words (PopplerDocument *document, int number)
{
  g_autoptr (PaperPage) page = poppler_document_get_page (document, number);
  g_autofree char *text = poppler_page_get_text (page);
  g_autofree PopplerRectangle *boxes = NULL;
  guint n, i = 0;
  GPtrArray *words = g_ptr_array_new_with_free_func (word_free);
  PaperWord *word = NULL;
  g_assert_true (poppler_page_get_text_layout (page, &boxes, &n));
  for (const char *at = text; *at && i < n; at = g_utf8_next_char (at), i++)
    {
      const gunichar letter = g_utf8_get_char (at);
      const gboolean is_space = g_unichar_isspace (letter);
      if (is_space || !follows (word, &boxes[i]))
        word = NULL;
      if (is_space)
        continue;
      if (!word)
        g_ptr_array_add (words, word = g_new0 (PaperWord, 1));
      add_letter (word, letter, &boxes[i]);
    }
  return words;
}

static double
middle (const PaperWord *word)
{
  return (word->box.y1 + word->box.y2) / 2;
}

static int
compare_middles (gconstpointer a, gconstpointer b)
{
  const PaperWord *const *one = a, *const *other = b;
  const double first = middle (*one), second = middle (*other);
  return (first > second) - (first < second);
}

static int
compare_left (gconstpointer a, gconstpointer b)
{
  const PaperWord *const *one = a, *const *other = b;
  const double first = (*one)->box.x1, second = (*other)->box.x1;
  return (first > second) - (first < second);
}

/* Words whose middles are this near stand on one line. */
#define LINE 2.5

static void
append_page (GString *plain, GPtrArray *words)
{
  g_ptr_array_sort (words, compare_middles);
  for (guint i = 0, end; i < words->len; i = end)
    {
      end = i + 1;
      while (end < words->len
             && middle (words->pdata[end]) - middle (words->pdata[i]) < LINE)
        end++;
      qsort (&words->pdata[i], end - i, sizeof (gpointer), compare_left);
      for (guint j = i; j < end; j++)
        g_string_append_printf (plain, "%s ",
                                ((PaperWord *) words->pdata[j])->text);
    }
}

char *
paper_text (PopplerDocument *document, int from, int to)
{
  GString *plain = g_string_new (NULL);
  for (int i = from; i < to; i++)
    {
      g_autoptr (GPtrArray) words = paper_words (document, i);
      append_page (plain, words);
    }
  return g_string_free (plain, FALSE);
}

/* The words in the first line of a page. */
static char *
running_head (PopplerDocument *document, int page)
{
  GString *head = g_string_new (NULL);
  g_autoptr (GPtrArray) words = paper_words (document, page);
  for (guint i = words->len; i-- > 0;)
    if (((PaperWord *) words->pdata[i])->box.y2 > HEAD)
      g_ptr_array_remove_index (words, i);
  append_page (head, words);
  return g_string_free (head, FALSE);
}

int
paper_find_section (PopplerDocument *document, const char *text, int from)
{
  const int n = poppler_document_get_n_pages (document);
  for (int i = from; i < n; i++)
    {
      g_autofree char *head = running_head (document, i);
      if (strstr (head, text))
        return i;
    }
  return n;
}

static cairo_surface_t *
render (PopplerPage *page, double width, double height)
{
  cairo_surface_t *surface = cairo_image_surface_create (
      CAIRO_FORMAT_RGB24, (int) (width * PIXELS), (int) (height * PIXELS));
  cairo_t *cr = cairo_create (surface);
  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_paint (cr);
  cairo_scale (cr, PIXELS, PIXELS);
  poppler_page_render (page, cr);
  cairo_destroy (cr);
  cairo_surface_flush (surface);
  return surface;
}

static gboolean
is_ink (cairo_surface_t *surface, int x, int y)
{
  const guchar *row = cairo_image_surface_get_data (surface)
                      + (gsize) y * cairo_image_surface_get_stride (surface);
  const guchar *pixel = row + (gsize) x * 4;
  return pixel[0] < INK && pixel[1] < INK && pixel[2] < INK;
}

double
paper_longest_run (PopplerDocument *document, int number, gboolean upright,
                   double top, double *place)
{
  double width, height;
  g_autoptr (PaperPage) page = poppler_document_get_page (document, number);
  poppler_page_get_size (page, &width, &height);
  cairo_surface_t *surface = render (page, width, height);
  const int n_x = cairo_image_surface_get_width (surface);
  const int n_y = cairo_image_surface_get_height (surface);
  const int first = (int) (top * PIXELS);
  int longest = 0;
  for (int i = upright ? 0 : first; i < (upright ? n_x : n_y); i++)
    for (int j = upright ? first : 0, run = 0; j < (upright ? n_y : n_x); j++)
      {
        run = is_ink (surface, upright ? i : j, upright ? j : i) ? run + 1 : 0;
        if (run <= longest)
          continue;
        longest = run;
        if (place)
          *place = i / PIXELS;
      }
  cairo_surface_destroy (surface);
  return longest / PIXELS;
}

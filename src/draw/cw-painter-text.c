/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-painter-private.h"

#include <math.h>

#include "cw-figures.h"
#include "cw-palette.h"

#define LEAST_TEXT 5.0
#define PATCH_MARGIN 2.0
/* Figures are kept for sizes this far apart, context units. */
#define SIZE_STEP 0.25

/* A line of text at a size, ready to be shown. */
typedef struct
{
  const char *text;
  const CwFigures *figures;   /* NULL: the painting's layout has the text */
  double width, height;
} Words;

static void
set_font (const CwPainting *painting, gboolean bold, double size)
{
  PangoFontDescription *font = pango_font_description_new ();
  pango_font_description_set_family (font, "Sans");
  pango_font_description_set_weight (
      font, bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
  pango_font_description_set_absolute_size (font, size * PANGO_SCALE);
  pango_layout_set_font_description (painting->layout, font);
  pango_font_description_free (font);
}

static void
free_figures (gpointer figures)
{
  cw_figures_free (figures);
}

/* A page has no pixels to round letters to, and keeps words with their
 * letters, to be searched and copied. */
static void
start_texts (CwPainting *painting)
{
  painting->layout = pango_cairo_create_layout (painting->cr);
  if (cairo_surface_get_type (cairo_get_target (painting->cr))
      == CAIRO_SURFACE_TYPE_PDF)
    pango_context_set_round_glyph_positions (
        pango_layout_get_context (painting->layout), FALSE);
  else
    painting->figures = g_hash_table_new_full (NULL, NULL, NULL,
                                               free_figures);
}

void
cw_painting_clear_texts (CwPainting *painting)
{
  g_clear_object (&painting->layout);
  g_clear_pointer (&painting->figures, g_hash_table_unref);
}

/* NULL, which is kept too: the font is not made for it. */
static const CwFigures *
figures_at (const CwPainting *painting, gboolean bold, guint steps)
{
  gpointer key = GUINT_TO_POINTER (2 * steps + (bold ? 1 : 0)), figures;
  if (!g_hash_table_lookup_extended (painting->figures, key, NULL, &figures))
    {
      set_font (painting, bold, steps * SIZE_STEP);
      figures = cw_figures_new (painting->layout);
      g_hash_table_insert (painting->figures, key, figures);
    }
  return figures;
}

static Words
words_at (const CwPainting *painting, const CwStyleValues *style,
          const char *text, double size)
{
  Words words = { .text = text };
  int across, along;
  if (painting->figures && cw_figures_suit (text))
    words.figures
        = figures_at (painting, style->bold, (guint) (size / SIZE_STEP));
  if (words.figures)
    {
      words.width = cw_figures_width (words.figures, text);
      words.height = cw_figures_height (words.figures);
      return words;
    }
  pango_layout_set_text (painting->layout, text, -1);
  set_font (painting, style->bold, size);
  pango_layout_get_size (painting->layout, &across, &along);
  words.width = (double) across / PANGO_SCALE;
  words.height = (double) along / PANGO_SCALE;
  return words;
}

static double
least_text (const CwPainting *painting)
{
  return painting->paint->least_text > 0 ? painting->paint->least_text
                                         : LEAST_TEXT;
}

/* The share of its size at which the words fit their room. */
static double
fitting_share (const CwPainting *painting, const CwDisplayText *text,
               const Words *words)
{
  const double across
      = text->room_width * painting->paint->scale / MAX (words->width, 1);
  const double up
      = text->room_height * painting->paint->scale / MAX (words->height, 1);
  return text->room_width > 0 ? MIN (1, MIN (across, up)) : 1;
}

/* Whether texts of that style stand beside the wall and not on its shapes. */
static gboolean
stands_beside (CwStyle style)
{
  return style == CW_STYLE_DIMENSION_TEXT || style == CW_STYLE_LEVEL_TEXT;
}

static void
show_patch (const CwPainting *painting, double x, double y,
            const Words *words)
{
  const CwColour paper
      = cw_tone (painting->paint->palette, CW_TONE_PAPER);
  cairo_t *cr = painting->cr;
  cairo_set_source_rgba (cr, paper.red, paper.green, paper.blue, 0.85);
  cairo_rectangle (cr, x - PATCH_MARGIN, y, words->width + 2 * PATCH_MARGIN,
                   words->height);
  cairo_fill (cr);
}

static void
show_words (const CwPainting *painting, double x, double y,
            const Words *words)
{
  cairo_t *cr = painting->cr;
  if (words->figures)
    {
      cw_figures_show (words->figures, cr, x, y, words->text);
      return;
    }
  cairo_move_to (cr, x, y);
  pango_cairo_show_layout (cr, painting->layout);
}

static void
show_text (const CwPainting *painting, const CwDisplayText *text,
           const CwStyleValues *style, const Words *words, gboolean patch)
{
  static const double shares[] = { -0.5, 0, -1 };
  cairo_t *cr = painting->cr;
  const double x = shares[text->anchor] * words->width;
  const double y = -0.5 * words->height;
  cairo_save (cr);
  cairo_translate (cr, cw_painting_x (painting, text->x),
                   cw_painting_y (painting, text->y));
  cairo_rotate (cr, -text->angle);
  if (patch)
    show_patch (painting, x, y, words);
  cw_painting_set_colour (cr, &style->line);
  show_words (painting, x, y, words);
  cairo_restore (cr);
  cairo_new_path (cr);
}

void
cw_painting_text (CwPainting *painting, const CwDisplayItem *item,
                  const CwStyleValues *style)
{
  const CwDisplayText *text = cw_display_list_text (painting->list, item);
  const char *string = cw_display_list_string (painting->list, text->text);
  const double scale
      = painting->paint->text_scale > 0 ? painting->paint->text_scale : 1;
  const double size = style->text * scale, least = least_text (painting);
  double share;
  Words words;
  /* A room that is too small even for a letter needs no measuring. */
  if (size < least
      || (text->room_width > 0
          && text->room_height * painting->paint->scale < least))
    return;
  if (!painting->layout)
    start_texts (painting);
  words = words_at (painting, style, string, size);
  share = fitting_share (painting, text, &words);
  if (share * size < least)
    return;
  if (share < 1)
    words = words_at (painting, style, string, share * size);
  show_text (painting, text, style, &words,
             painting->paint->patches && stands_beside (item->style));
}

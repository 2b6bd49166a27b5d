/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-page-text.h"

#include "cw-palette.h"

static const struct
{
  double size;
  gboolean bold;
  CwTone tone;
} types[CW_N_TYPES] = {
  [CW_TYPE_TITLE] = { 22, TRUE, CW_TONE_INK },
  [CW_TYPE_HEADING] = { 15, TRUE, CW_TONE_INK },
  [CW_TYPE_SUBHEADING] = { 10.5, TRUE, CW_TONE_INK },
  [CW_TYPE_BODY] = { 9, FALSE, CW_TONE_INK },
  [CW_TYPE_STRONG] = { 9, TRUE, CW_TONE_INK },
  [CW_TYPE_SMALL] = { 8, FALSE, CW_TONE_SOFT },
  [CW_TYPE_LABEL] = { 8, TRUE, CW_TONE_SOFT },
  [CW_TYPE_RUNNING] = { 8, FALSE, CW_TONE_SOFT },
};

static const PangoAlignment alignments[] = {
  [CW_ALIGN_LEFT] = PANGO_ALIGN_LEFT,
  [CW_ALIGN_RIGHT] = PANGO_ALIGN_RIGHT,
  [CW_ALIGN_CENTRE] = PANGO_ALIGN_CENTER,
};

static void
set_type (PangoLayout *layout, CwType type)
{
  PangoFontDescription *font = pango_font_description_new ();
  pango_font_description_set_family (font, "Sans");
  pango_font_description_set_weight (
      font, types[type].bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
  pango_font_description_set_absolute_size (font,
                                            types[type].size * PANGO_SCALE);
  pango_layout_set_font_description (layout, font);
  pango_font_description_free (font);
}

PangoLayout *
cw_page_layout (const CwPages *pages, CwType type, const char *text,
                double width, CwAlign align)
{
  PangoLayout *layout = pango_cairo_create_layout (pages->cr);
  /* A page has no pixels to round letters to. */
  pango_context_set_round_glyph_positions (pango_layout_get_context (layout),
                                           FALSE);
  set_type (layout, type);
  pango_layout_set_text (layout, text, -1);
  pango_layout_set_alignment (layout, alignments[align]);
  if (width >= 0)
    {
      pango_layout_set_width (layout, (int) (width * PANGO_SCALE));
      pango_layout_set_wrap (layout, PANGO_WRAP_WORD_CHAR);
    }
  return layout;
}

double
cw_page_layout_height (PangoLayout *layout)
{
  int height;
  pango_layout_get_size (layout, NULL, &height);
  return (double) height / PANGO_SCALE;
}

static void
set_tone (cairo_t *cr, CwTone tone)
{
  const CwColour colour = cw_tone (CW_PALETTE_PAPER, tone);
  cairo_set_source_rgb (cr, colour.red, colour.green, colour.blue);
}

void
cw_page_show (const CwPages *pages, CwType type, PangoLayout *layout, double x,
              double y)
{
  if (pages->is_trial)
    return;
  set_tone (pages->cr, types[type].tone);
  cairo_move_to (pages->cr, x, y);
  pango_cairo_show_layout (pages->cr, layout);
  cairo_new_path (pages->cr);
}

void
cw_page_show_line (const CwPages *pages, CwType type, const char *text,
                   double x, double y, double width, CwAlign align)
{
  g_autoptr (PangoLayout) layout
      = cw_page_layout (pages, type, text, width, align);
  pango_layout_set_single_paragraph_mode (layout, TRUE);
  pango_layout_set_height (layout, -1);
  pango_layout_set_ellipsize (layout, PANGO_ELLIPSIZE_END);
  cw_page_show (pages, type, layout, x, y);
}

/* Shows @layout line by line, going on to a further page where one is full. */
static void
add_lines (CwPages *pages, CwType type, PangoLayout *layout, double x)
{
  const int n = pango_layout_get_line_count (layout);
  for (int i = 0; i < n; i++)
    {
      PangoRectangle extent;
      PangoLayoutLine *line = pango_layout_get_line_readonly (layout, i);
      pango_layout_line_get_extents (line, NULL, &extent);
      const double height = (double) extent.height / PANGO_SCALE;
      cw_pages_need (pages, height);
      if (!pages->is_trial)
        {
          set_tone (pages->cr, types[type].tone);
          cairo_move_to (pages->cr, x,
                         pages->y - (double) extent.y / PANGO_SCALE);
          pango_cairo_show_layout_line (pages->cr, line);
          cairo_new_path (pages->cr);
        }
      pages->y += height;
    }
}

void
cw_page_add_text (CwPages *pages, CwType type, const char *text)
{
  g_autoptr (PangoLayout) layout
      = cw_page_layout (pages, type, text, pages->width, CW_ALIGN_LEFT);
  add_lines (pages, type, layout, pages->left);
}

/* Of an item what stays on one page: all of it, unless it is a long one. */
static double
height_kept (const CwPages *pages, PangoLayout *layout, PangoLayout *sign)
{
  const double height = cw_page_layout_height (layout);
  return height <= (pages->bottom - pages->top) / 4
             ? height
             : cw_page_layout_height (sign);
}

void
cw_page_add_item (CwPages *pages, const char *mark, const char *text)
{
  const double hang = 2.5 * CW_PAGE_STEP;
  g_autoptr (PangoLayout) layout = cw_page_layout (
      pages, CW_TYPE_BODY, text, pages->width - hang, CW_ALIGN_LEFT);
  g_autoptr (PangoLayout) sign
      = cw_page_layout (pages, CW_TYPE_STRONG, mark, -1, CW_ALIGN_LEFT);
  cw_pages_need (pages, height_kept (pages, layout, sign));
  cw_page_show (pages, CW_TYPE_STRONG, sign, pages->left, pages->y);
  add_lines (pages, CW_TYPE_BODY, layout, pages->left + hang);
  pages->y += CW_PAGE_STEP / 3;
}

void
cw_page_add_heading (CwPages *pages, CwType type, const char *text,
                     double with)
{
  g_autoptr (PangoLayout) layout
      = cw_page_layout (pages, type, text, pages->width, CW_ALIGN_LEFT);
  cw_pages_need (pages, cw_page_layout_height (layout) + CW_PAGE_STEP + with);
  add_lines (pages, type, layout, pages->left);
  pages->y += CW_PAGE_STEP / 2;
}

void
cw_page_add_space (CwPages *pages, double steps)
{
  if (pages->y > pages->top)
    pages->y += steps * CW_PAGE_STEP;
}

static void
draw_rule (const CwPages *pages, double x, double y, double weight,
           CwTone tone)
{
  if (pages->is_trial)
    return;
  set_tone (pages->cr, tone);
  cairo_set_line_width (pages->cr, weight);
  cairo_move_to (pages->cr, x, y);
  cairo_line_to (pages->cr, pages->left + pages->width, y);
  cairo_stroke (pages->cr);
}

void
cw_page_rule (const CwPages *pages, double y, double weight)
{
  draw_rule (pages, pages->left, y, weight, CW_TONE_SOFT);
}

void
cw_page_hairline (const CwPages *pages, double x, double y)
{
  draw_rule (pages, x, y, 0.3, CW_TONE_FAINT);
}

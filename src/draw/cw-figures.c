/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-figures.h"

#include <string.h>

/* With the letters of the kinds of pieces. */
#define FIGURES "0123456789- WRC"
#define N_FIGURES ((int) sizeof FIGURES - 1)
#define MOST 24

struct CwFigures
{
  PangoFont *font;
  PangoGlyphInfo glyphs[N_FIGURES];
  int height, baseline;     /* Pango's units */
};

static gsize
place_of (char figure)
{
  return (gsize) (strchr (FIGURES, figure) - FIGURES);
}

gboolean
cw_figures_suit (const char *text)
{
  const gsize length = strspn (text, FIGURES);

  return length > 0 && length <= MOST && text[length] == '\0';
}

/* Each figure one glyph, in order, of one font. */
static gboolean
is_plain (PangoLayoutLine *line)
{
  const PangoGlyphItem *run;

  if (line == NULL || line->runs == NULL || line->runs->next != NULL)
    return FALSE;
  run = line->runs->data;
  for (int i = 0; i < run->glyphs->num_glyphs; i++)
    if (run->glyphs->log_clusters[i] != i)
      return FALSE;
  return run->glyphs->num_glyphs == N_FIGURES;
}

CwFigures *
cw_figures_new (PangoLayout *layout)
{
  CwFigures *figures;
  PangoLayoutLine *line;
  const PangoGlyphItem *run;

  pango_layout_set_text (layout, FIGURES, -1);
  line = pango_layout_get_line_readonly (layout, 0);
  if (!is_plain (line))
    return NULL;
  run = line->runs->data;
  figures = g_new0 (CwFigures, 1);
  figures->font = g_object_ref (run->item->analysis.font);
  memcpy (figures->glyphs, run->glyphs->glyphs, sizeof figures->glyphs);
  pango_layout_get_size (layout, NULL, &figures->height);
  figures->baseline = pango_layout_get_baseline (layout);
  return figures;
}

void
cw_figures_free (CwFigures *figures)
{
  if (figures == NULL)
    return;
  g_object_unref (figures->font);
  g_free (figures);
}

double
cw_figures_width (const CwFigures *figures, const char *text)
{
  int width = 0;

  for (const char *c = text; *c; c++)
    width += figures->glyphs[place_of (*c)].geometry.width;
  return (double) width / PANGO_SCALE;
}

double
cw_figures_height (const CwFigures *figures)
{
  return (double) figures->height / PANGO_SCALE;
}

void
cw_figures_show (const CwFigures *figures, cairo_t *cr, double x, double y,
                 const char *text)
{
  PangoGlyphInfo glyphs[MOST];
  int clusters[MOST];
  PangoGlyphString string
      = { .glyphs = glyphs, .log_clusters = clusters };

  for (const char *c = text; *c; c++)
    {
      clusters[string.num_glyphs] = string.num_glyphs;
      glyphs[string.num_glyphs++] = figures->glyphs[place_of (*c)];
    }
  cairo_move_to (cr, x, y + (double) figures->baseline / PANGO_SCALE);
  pango_cairo_show_glyph_string (cr, figures->font, &string);
}

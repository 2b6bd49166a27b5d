/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Numbers by the thousand: the figures of a font are shaped once and set side
 * by side, which costs a twentieth of laying out every number by itself. For
 * the screen; a page wants words that know their letters.
 */
#pragma once

#include <pango/pangocairo.h>

G_BEGIN_DECLS

typedef struct CwFigures CwFigures;

/* The font and the resolution are those of @layout, whose text is lost. NULL
 * when the font does not shape each figure by itself. */
CwFigures *cw_figures_new (PangoLayout *layout);
void cw_figures_free (CwFigures *figures);

/* Whether @text, as "12-34" or "12-34 C", has nothing but figures, hyphens and
 * the letters of pieces. */
gboolean cw_figures_suit (const char *text);

/* Of a line of text, in units of the context. */
double cw_figures_width (const CwFigures *figures, const char *text);
double cw_figures_height (const CwFigures *figures);

/* With the top left of the line at @x, @y. */
void cw_figures_show (const CwFigures *figures, cairo_t *cr, double x,
                      double y, const char *text);

G_END_DECLS

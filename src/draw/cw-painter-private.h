/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The painter's parts: shapes (cw-painter.c) and texts (cw-painter-text.c).
 */
#pragma once

#include <pango/pangocairo.h>

#include "cw-display-items.h"
#include "cw-painter.h"

G_BEGIN_DECLS

typedef struct
{
  cairo_t *cr;
  const CwDisplayList *list;
  const CwPaint *paint;
  CwExtent clip;            /* in mm of wall */
  PangoLayout *layout;      /* made when the first text is painted */
  GHashTable *figures;      /* (nullable) the same, where they are of use */
} CwPainting;

static inline double
cw_painting_x (const CwPainting *painting, double mm)
{
  return painting->paint->x + painting->paint->scale * mm;
}

static inline double
cw_painting_y (const CwPainting *painting, double mm)
{
  return painting->paint->y - painting->paint->scale * mm;
}

static inline void
cw_painting_set_colour (cairo_t *cr, const CwColour *colour)
{
  cairo_set_source_rgba (cr, colour->red, colour->green, colour->blue,
                         colour->alpha);
}

/* cw-painter-text.c */
void cw_painting_text (CwPainting *painting, const CwDisplayItem *item,
                       const CwStyleValues *style);
void cw_painting_clear_texts (CwPainting *painting);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plays a display list on a cairo context.
 */
#pragma once

#include <cairo.h>

#include "cw-display-list.h"

G_BEGIN_DECLS

typedef struct
{
  double scale;               /* context units (points, pixels) a mm of wall */
  double x, y;                /* where the wall's origin comes to lie, context units, y down */
  CwPalette palette;
  double text_scale;          /* 1: the style's sizes; for the user's font scale */
  double least_text;          /* no text smaller than this, context units; 0: 5 */
  const char *only_id;        /* (nullable): paint just what has that id */
  gboolean patches;           /* dimensions and levels stand on patches of paper, to be read over a plan sheet */
} CwPaint;

/* Paints what meets the clip. Hatches are 200 mm of wall apart and at most 9
 * context units; where that is under 3 units they become a flat tone. Texts
 * are left out where they would not be readable (under @least_text). */
void cw_paint (cairo_t *cr, const CwDisplayList *list, const CwPaint *paint);

G_END_DECLS

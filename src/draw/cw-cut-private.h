/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Parts of the picture of a sawn panel; this folder only.
 */
#pragma once

#include "cw-cut-drawing.h"
#include "cw-cut-whole.h"

G_BEGIN_DECLS

typedef struct
{
  CwDisplayList *list;
  const CwPanelPlan *plan;
  const CwCutWhole *whole;
  const CwTextStyle *style;
  double mm_per_unit;
  GArray *corners;            /* CwPoint, where shapes are measured */
  CwCutRoom *room;            /* grows with what is drawn */
} CwCutPicture;

/* The cuts with their numbers. */
void cw_cut_draw_saw (const CwCutPicture *picture);
/* The places of the cuts and the panel's size, from its lower left. */
void cw_cut_draw_figures (const CwCutPicture *picture);

G_END_DECLS

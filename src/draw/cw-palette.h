/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tones of paper and graphite with one accent, in three palettes: print,
 * light and dark screen. Tones that carry text or meaning keep a contrast of
 * 4.5 : 1 on the tones they stand on (WCAG 2.1, 1.4.3); a test works it out.
 */
#pragma once

#include "cw-style.h"

G_BEGIN_DECLS

typedef enum
{
  CW_TONE_NONE,
  CW_TONE_PAPER,     /* what is drawn on */
  CW_TONE_FACE,      /* the clad wall */
  CW_TONE_GLASS,     /* openings */
  CW_TONE_RASPED,
  CW_TONE_CUT,
  CW_TONE_INK,
  CW_TONE_SOFT,
  CW_TONE_FAINT,     /* studs, grid: no meaning rests on it alone */
  CW_TONE_ACCENT,
  CW_TONE_WASH,      /* the accent, thin */
  CW_TONE_TROUBLE,
  CW_N_TONES,
} CwTone;

CwColour cw_tone (CwPalette palette, CwTone tone);

G_END_DECLS

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-palette.h"

/* 0xRRGGBBAA */
static const guint32 tones[3][CW_N_TONES] = {
  [CW_PALETTE_PAPER] = {
    [CW_TONE_PAPER] = 0xffffffff,  [CW_TONE_FACE] = 0xf7f5f0ff,
    [CW_TONE_GLASS] = 0xffffffff,  [CW_TONE_RASPED] = 0xeeebe3ff,
    [CW_TONE_CUT] = 0xe6e1d6ff,    [CW_TONE_INK] = 0x16181aff,
    [CW_TONE_SOFT] = 0x565b60ff,   [CW_TONE_FAINT] = 0xa7abaeff,
    [CW_TONE_ACCENT] = 0x0a584fff, [CW_TONE_WASH] = 0x0a584f26,
    [CW_TONE_TROUBLE] = 0x8f4300ff,
  },
  [CW_PALETTE_LIGHT] = {
    [CW_TONE_PAPER] = 0xfbfaf7ff,  [CW_TONE_FACE] = 0xf1eee6ff,
    [CW_TONE_GLASS] = 0xfdfdfcff,  [CW_TONE_RASPED] = 0xe9e5daff,
    [CW_TONE_CUT] = 0xe0dacbff,    [CW_TONE_INK] = 0x1d2023ff,
    [CW_TONE_SOFT] = 0x555a5fff,   [CW_TONE_FAINT] = 0xa9acaeff,
    [CW_TONE_ACCENT] = 0x0a584fff, [CW_TONE_WASH] = 0x0a584f2a,
    [CW_TONE_TROUBLE] = 0x8a3f00ff,
  },
  [CW_PALETTE_DARK] = {
    [CW_TONE_PAPER] = 0x1b1d1fff,  [CW_TONE_FACE] = 0x2a2d30ff,
    [CW_TONE_GLASS] = 0x1f2224ff,  [CW_TONE_RASPED] = 0x32363aff,
    [CW_TONE_CUT] = 0x3b4045ff,    [CW_TONE_INK] = 0xf0eee8ff,
    [CW_TONE_SOFT] = 0xbfc3c6ff,   [CW_TONE_FAINT] = 0x74797eff,
    [CW_TONE_ACCENT] = 0x84e3d2ff, [CW_TONE_WASH] = 0x84e3d22a,
    [CW_TONE_TROUBLE] = 0xffb870ff,
  },
};

CwColour
cw_tone (CwPalette palette, CwTone tone)
{
  g_return_val_if_fail (tone < CW_N_TONES, (CwColour) { 0 });
  const guint32 rgba = tones[palette][tone];
  return (CwColour) { (rgba >> 24) / 255.0, (rgba >> 16 & 0xff) / 255.0,
                      (rgba >> 8 & 0xff) / 255.0, (rgba & 0xff) / 255.0 };
}

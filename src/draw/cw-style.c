/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-style.h"

#include "cw-palette.h"

/* What a style is made of: tones of the palette, so that light, dark and
 * paper differ in colour alone and never in line, hatch or size. */
typedef struct
{
  const char *name;
  CwTone fill, line;
  double width;
  double dash[4];
  CwHatch hatch;
  double text;
  gboolean bold;
} Recipe;

static const Recipe recipes[CW_N_STYLES] = {
  [CW_STYLE_WALL] = { "wall", CW_TONE_FACE, CW_TONE_NONE },
  [CW_STYLE_OUTLINE] = { "outline", CW_TONE_NONE, CW_TONE_INK, 1.4 },
  [CW_STYLE_OPENING] = { "opening", CW_TONE_GLASS, CW_TONE_INK, 0.9 },
  [CW_STYLE_OPENING_MARK]
  = { "opening-mark", CW_TONE_NONE, CW_TONE_INK, .text = 9, .bold = TRUE },
  [CW_STYLE_UNCLAD] = { "unclad", CW_TONE_PAPER, CW_TONE_SOFT, 0.7,
                        .hatch = CW_HATCH_CROSS },
  [CW_STYLE_BAND] = { "band", CW_TONE_GLASS, CW_TONE_SOFT, 0.8,
                      .hatch = CW_HATCH_FALLING },
  [CW_STYLE_STUB_OUT] = { "stub-out", CW_TONE_PAPER, CW_TONE_INK, 0.8 },
  [CW_STYLE_STUD]
  = { "stud", CW_TONE_NONE, CW_TONE_FAINT, 0.5, { 6, 3, 1, 3 } },
  [CW_STYLE_PIECE_WHOLE] = { "piece-whole", CW_TONE_FACE, CW_TONE_SOFT, 0.5 },
  [CW_STYLE_PIECE_RASPED] = { "piece-rasped", CW_TONE_RASPED, CW_TONE_SOFT,
                              0.5, { 5, 2 }, .hatch = CW_HATCH_DOTS },
  [CW_STYLE_PIECE_CUT] = { "piece-cut", CW_TONE_CUT, CW_TONE_SOFT, 0.8,
                           .hatch = CW_HATCH_RISING },
  [CW_STYLE_PIECE_NUMBER]
  = { "piece-number", CW_TONE_NONE, CW_TONE_INK, .text = 8 },
  [CW_STYLE_JOINT_BED] = { "joint-bed", CW_TONE_NONE, CW_TONE_SOFT, 0.7 },
  [CW_STYLE_JOINT_HEAD]
  = { "joint-head", CW_TONE_NONE, CW_TONE_SOFT, 0.7, { 4, 2 } },
  [CW_STYLE_DIMENSION] = { "dimension", CW_TONE_NONE, CW_TONE_SOFT, 0.5 },
  [CW_STYLE_DIMENSION_TEXT]
  = { "dimension-text", CW_TONE_NONE, CW_TONE_INK, .text = 8 },
  [CW_STYLE_LEVEL]
  = { "level", CW_TONE_NONE, CW_TONE_SOFT, 0.5, { 8, 3 } },
  [CW_STYLE_LEVEL_TEXT]
  = { "level-text", CW_TONE_NONE, CW_TONE_INK, .text = 8 },
  [CW_STYLE_SELECTION] = { "selection", CW_TONE_NONE, CW_TONE_ACCENT, 2 },
  [CW_STYLE_HANDLE] = { "handle", CW_TONE_PAPER, CW_TONE_ACCENT, 1.5 },
  [CW_STYLE_GUIDE]
  = { "guide", CW_TONE_NONE, CW_TONE_ACCENT, 1, { 3, 3 } },
  [CW_STYLE_DRAFT] = { "draft", CW_TONE_WASH, CW_TONE_ACCENT, 1.5 },
  [CW_STYLE_LIT] = { "lit", CW_TONE_WASH, CW_TONE_ACCENT, 2.5 },
  [CW_STYLE_TROUBLE]
  = { "trouble", CW_TONE_NONE, CW_TONE_TROUBLE, 2, { 2, 2 } },
  [CW_STYLE_TROUBLE_LETTER] = { "trouble-letter", CW_TONE_NONE,
                                CW_TONE_TROUBLE, .text = 10, .bold = TRUE },
  [CW_STYLE_BARRIER] = { "barrier", CW_TONE_NONE, CW_TONE_SOFT, 0.9,
                         { 10, 3, 2, 3 } },
  [CW_STYLE_BARRIER_LAP] = { "barrier-lap", CW_TONE_NONE, CW_TONE_SOFT, 0.6,
                             .hatch = CW_HATCH_FALLING },
  [CW_STYLE_BARRIER_LETTER]
  = { "barrier-letter", CW_TONE_NONE, CW_TONE_INK, .text = 8, .bold = TRUE },
  [CW_STYLE_MESH_LAP] = { "mesh-lap", CW_TONE_NONE, CW_TONE_SOFT, 0.6,
                          { 2, 2 }, CW_HATCH_CROSS },
  [CW_STYLE_MESH_EDGE]
  = { "mesh-edge", CW_TONE_NONE, CW_TONE_SOFT, 2.4, { 1.5, 1.5 } },
  [CW_STYLE_MESH_CORNER] = { "mesh-corner", CW_TONE_NONE, CW_TONE_INK, 0.8,
                             .hatch = CW_HATCH_CROSS },
  [CW_STYLE_GRID] = { "grid", CW_TONE_NONE, CW_TONE_FAINT, 0.4 },
  [CW_STYLE_CUT_STOCK] = { "cut-stock", CW_TONE_PAPER, CW_TONE_INK, 1.2,
                           .hatch = CW_HATCH_FALLING },
  [CW_STYLE_CUT_REST] = { "cut-rest", CW_TONE_PAPER, CW_TONE_SOFT, 0.5,
                          .hatch = CW_HATCH_FALLING },
  [CW_STYLE_CUT_PIECE]
  = { "cut-piece", CW_TONE_CUT, CW_TONE_INK, 0.7 },
  [CW_STYLE_CUT_SHAPE]
  = { "cut-shape", CW_TONE_NONE, CW_TONE_INK, 1.4, { 3, 2 } },
  [CW_STYLE_CUT_LETTER]
  = { "cut-letter", CW_TONE_NONE, CW_TONE_INK, .text = 9, .bold = TRUE },
  [CW_STYLE_SAW] = { "saw", CW_TONE_NONE, CW_TONE_ACCENT, 1.6 },
  [CW_STYLE_SAW_MARK] = { "saw-mark", CW_TONE_PAPER, CW_TONE_ACCENT, 1 },
  [CW_STYLE_SAW_NUMBER]
  = { "saw-number", CW_TONE_NONE, CW_TONE_INK, .text = 8, .bold = TRUE },
};

static CwStyleValues values[3][CW_N_STYLES];

static CwStyleValues
cook (CwPalette palette, const Recipe *recipe)
{
  CwStyleValues cooked = { .fill = cw_tone (palette, recipe->fill),
                           .line = cw_tone (palette, recipe->line),
                           .width = recipe->width,
                           .hatch = recipe->hatch,
                           .text = recipe->text,
                           .bold = recipe->bold };
  for (guint i = 0; i < G_N_ELEMENTS (cooked.dash); i++)
    cooked.dash[i] = recipe->dash[i];
  return cooked;
}

static void
cook_all (void)
{
  for (guint palette = 0; palette < G_N_ELEMENTS (values); palette++)
    for (guint style = 0; style < CW_N_STYLES; style++)
      values[palette][style] = cook (palette, &recipes[style]);
}

const CwStyleValues *
cw_style_values (CwPalette palette, CwStyle style)
{
  static gsize is_cooked;
  g_return_val_if_fail (style < CW_N_STYLES, NULL);

  if (g_once_init_enter (&is_cooked))
    {
      cook_all ();
      g_once_init_leave (&is_cooked, 1);
    }
  return &values[palette][style];
}

const char *
cw_style_name (CwStyle style)
{
  g_return_val_if_fail (style < CW_N_STYLES, NULL);
  return recipes[style].name;
}

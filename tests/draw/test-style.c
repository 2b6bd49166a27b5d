/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The table of styles: what can be read, and what can be told apart.
 */
#include <math.h>

#include "cw-palette.h"

/* Relative luminance and contrast ratio of WCAG 2.1 (W3C Recommendation of 5
 * June 2018, section 2.2, definitions "relative luminance" and "contrast
 * ratio"; the formula from memory). */
static double
linear (double channel)
{
  return channel <= 0.03928 ? channel / 12.92
                            : pow ((channel + 0.055) / 1.055, 2.4);
}

static double
luminance (const CwColour *colour)
{
  return 0.2126 * linear (colour->red) + 0.7152 * linear (colour->green)
         + 0.0722 * linear (colour->blue);
}

static double
contrast (const CwColour *a, const CwColour *b)
{
  const double first = luminance (a), second = luminance (b);

  return (MAX (first, second) + 0.05) / (MIN (first, second) + 0.05);
}

/* What is seen of @colour on @ground. */
static CwColour
laid_on (const CwColour *colour, const CwColour *ground)
{
  const double share = colour->alpha;

  return (CwColour) { share * colour->red + (1 - share) * ground->red,
                      share * colour->green + (1 - share) * ground->green,
                      share * colour->blue + (1 - share) * ground->blue, 1 };
}

/* Known ratios: black on white is 21, a colour on itself 1; the greys 0x767676
 * and 0x777777 stand on either side of 4.5 on white (often named; derived). */
static void
test_formula (void)
{
  const CwColour white = { 1, 1, 1, 1 }, black = { 0, 0, 0, 1 };
  const double last = 0x76 / 255.0, first = 0x77 / 255.0;
  const CwColour enough = { last, last, last, 1 };
  const CwColour little = { first, first, first, 1 };

  g_assert_cmpfloat_with_epsilon (contrast (&white, &black), 21, 1e-9);
  g_assert_cmpfloat_with_epsilon (contrast (&black, &white), 21, 1e-9);
  g_assert_cmpfloat_with_epsilon (contrast (&enough, &enough), 1, 1e-9);
  g_assert_cmpfloat (contrast (&enough, &white), >=, 4.5);
  g_assert_cmpfloat (contrast (&little, &white), <, 4.5);
}

/* Which tones the line or the letters of each style stand on. Studs and grid
 * are faint on purpose: no meaning rests on them alone. */
#define ON(tone) (1u << CW_TONE_##tone)
#define ON_PIECES (ON (FACE) | ON (RASPED) | ON (CUT))
#define ON_WALL (ON_PIECES | ON (GLASS) | ON (PAPER))

static const guint grounds[CW_N_STYLES] = {
  [CW_STYLE_CUT_STOCK] = ON (PAPER),
  [CW_STYLE_CUT_REST] = ON (PAPER),
  [CW_STYLE_CUT_PIECE] = ON (PAPER) | ON (CUT),
  [CW_STYLE_CUT_SHAPE] = ON (PAPER) | ON (CUT),
  [CW_STYLE_CUT_LETTER] = ON (PAPER) | ON (CUT),
  [CW_STYLE_SAW] = ON (PAPER) | ON (CUT),
  [CW_STYLE_SAW_MARK] = ON (PAPER),
  [CW_STYLE_SAW_NUMBER] = ON (PAPER),
  [CW_STYLE_OUTLINE] = ON_WALL,
  [CW_STYLE_OPENING] = ON_WALL,
  [CW_STYLE_OPENING_MARK] = ON (GLASS),
  [CW_STYLE_UNCLAD] = ON_WALL,
  [CW_STYLE_BAND] = ON_WALL,
  [CW_STYLE_STUB_OUT] = ON_WALL,
  [CW_STYLE_PIECE_WHOLE] = ON_PIECES,
  [CW_STYLE_PIECE_RASPED] = ON_PIECES,
  [CW_STYLE_PIECE_CUT] = ON_PIECES,
  [CW_STYLE_PIECE_NUMBER] = ON_WALL,
  [CW_STYLE_BARRIER] = ON_WALL,
  [CW_STYLE_BARRIER_LAP] = ON_WALL,
  [CW_STYLE_BARRIER_LETTER] = ON_WALL,
  [CW_STYLE_MESH_LAP] = ON_WALL,
  [CW_STYLE_MESH_EDGE] = ON_WALL,
  [CW_STYLE_MESH_CORNER] = ON_WALL,
  [CW_STYLE_JOINT_BED] = ON_PIECES,
  [CW_STYLE_JOINT_HEAD] = ON_PIECES,
  [CW_STYLE_DIMENSION] = ON (PAPER),
  [CW_STYLE_DIMENSION_TEXT] = ON (PAPER),
  [CW_STYLE_LEVEL] = ON (PAPER),
  [CW_STYLE_LEVEL_TEXT] = ON (PAPER),
  [CW_STYLE_SELECTION] = ON_WALL,
  [CW_STYLE_HANDLE] = ON_WALL,
  [CW_STYLE_GUIDE] = ON_WALL,
  [CW_STYLE_DRAFT] = ON_WALL,
  [CW_STYLE_LIT] = ON_WALL,
  [CW_STYLE_TROUBLE] = ON_WALL,
  [CW_STYLE_TROUBLE_LETTER] = ON_WALL,
};

static void
assert_contrast (CwPalette palette, CwStyle style, CwTone tone)
{
  const CwStyleValues *values = cw_style_values (palette, style);
  const CwColour ground = cw_tone (palette, tone);
  const CwColour washed = laid_on (&values->fill, &ground);
  const double ratio = contrast (&values->line, &ground);

  g_test_message ("palette %d, %s on tone %d: %.2f", palette,
                  cw_style_name (style), tone, ratio);
  g_assert_cmpfloat (ratio, >=, 4.5);
  /* On its own fill too, where that is a wash of the ground. */
  g_assert_cmpfloat (contrast (&values->line, &washed), >=, 4.5);
}

static void
test_contrast (void)
{
  guint n = 0;

  for (CwPalette palette = 0; palette <= CW_PALETTE_DARK; palette++)
    for (CwStyle style = 0; style < CW_N_STYLES; style++)
      for (CwTone tone = 0; tone < CW_N_TONES; tone++)
        if (grounds[style] & 1u << tone)
          {
            assert_contrast (palette, style, tone);
            n++;
          }
  g_assert_cmpuint (n, >, 150);
}

/* No style is left out of the table above but the faint ones. */
static void
test_no_style_forgotten (void)
{
  for (CwStyle style = 0; style < CW_N_STYLES; style++)
    {
      const CwStyleValues *values = cw_style_values (CW_PALETTE_LIGHT, style);

      g_test_message ("%s", cw_style_name (style));
      if (style == CW_STYLE_STUD || style == CW_STYLE_GRID)
        continue;
      g_assert_true ((grounds[style] != 0) == (values->line.alpha > 0));
    }
}

/* Letters are read on what lights up a piece as well as on the piece. */
static void
test_letters_under_the_wash (void)
{
  static const CwTone under[]
      = { CW_TONE_FACE, CW_TONE_RASPED, CW_TONE_CUT, CW_TONE_GLASS };

  for (CwPalette palette = 0; palette <= CW_PALETTE_DARK; palette++)
    for (guint i = 0; i < G_N_ELEMENTS (under); i++)
      {
        const CwColour ground = cw_tone (palette, under[i]);
        const CwColour wash = cw_tone (palette, CW_TONE_WASH);
        const CwColour ink = cw_tone (palette, CW_TONE_INK);
        const CwColour lit = laid_on (&wash, &ground);
        const CwColour letters = laid_on (&wash, &ink);

        g_assert_cmpfloat (contrast (&letters, &lit), >=, 4.5);
      }
}

static gboolean
same_dash (const CwStyleValues *a, const CwStyleValues *b)
{
  for (guint i = 0; i < G_N_ELEMENTS (a->dash); i++)
    if (fabs (a->dash[i] - b->dash[i]) > 0.5)
      return FALSE;
  return TRUE;
}

/* As a copy in black and white shows them. */
static gboolean
same_in_grey (CwStyle a, CwStyle b)
{
  const CwStyleValues *first = cw_style_values (CW_PALETTE_PAPER, a);
  const CwStyleValues *second = cw_style_values (CW_PALETTE_PAPER, b);

  return first->hatch == second->hatch && same_dash (first, second)
         && fabs (first->width - second->width) < 0.29;
}

static void
assert_told_apart (const CwStyle *styles, guint n)
{
  for (guint i = 0; i < n; i++)
    for (guint j = i + 1; j < n; j++)
      {
        g_test_message ("%s and %s", cw_style_name (styles[i]),
                        cw_style_name (styles[j]));
        g_assert_false (same_in_grey (styles[i], styles[j]));
      }
}

/* Kinds that stand side by side differ in hatch, in dash or clearly in
 * width; openings and stub-outs have letters besides. */
static void
test_told_apart (void)
{
  static const CwStyle areas[]
      = { CW_STYLE_PIECE_WHOLE, CW_STYLE_PIECE_RASPED, CW_STYLE_PIECE_CUT,
          CW_STYLE_UNCLAD,      CW_STYLE_OPENING,      CW_STYLE_BAND };
  static const CwStyle lines[]
      = { CW_STYLE_OUTLINE, CW_STYLE_STUD,      CW_STYLE_JOINT_BED,
          CW_STYLE_LEVEL,   CW_STYLE_SELECTION, CW_STYLE_JOINT_HEAD,
          CW_STYLE_GUIDE,   CW_STYLE_TROUBLE,   CW_STYLE_LIT };

  static const CwStyle cut_lines[]
      = { CW_STYLE_CUT_PIECE, CW_STYLE_CUT_SHAPE, CW_STYLE_SAW };
  static const CwStyle cut_areas[]
      = { CW_STYLE_CUT_PIECE, CW_STYLE_CUT_REST };

  assert_told_apart (cut_lines, G_N_ELEMENTS (cut_lines));
  assert_told_apart (cut_areas, G_N_ELEMENTS (cut_areas));
  assert_told_apart (areas, G_N_ELEMENTS (areas));
  assert_told_apart (lines, G_N_ELEMENTS (lines));
}

/* Palettes change colours and nothing else. */
static void
test_palettes_differ_in_colour_alone (void)
{
  for (CwPalette palette = 0; palette <= CW_PALETTE_DARK; palette++)
    for (CwStyle style = 0; style < CW_N_STYLES; style++)
      {
        const CwStyleValues *paper
            = cw_style_values (CW_PALETTE_PAPER, style);
        const CwStyleValues *other = cw_style_values (palette, style);

        g_assert_true (same_dash (paper, other));
        g_assert_cmpint (paper->hatch, ==, other->hatch);
        g_assert_cmpint (paper->bold, ==, other->bold);
        g_assert_cmpfloat_with_epsilon (paper->width, other->width, 1e-9);
        g_assert_cmpfloat_with_epsilon (paper->text, other->text, 1e-9);
      }
}

static void
test_names (void)
{
  g_autoptr (GHashTable) names = g_hash_table_new (g_str_hash, g_str_equal);

  for (CwStyle style = 0; style < CW_N_STYLES; style++)
    {
      const char *name = cw_style_name (style);

      g_assert_nonnull (name);
      g_assert_true (
          g_regex_match_simple ("^[a-z]+(-[a-z]+)*$", name, 0, 0));
      g_assert_true (g_hash_table_add (names, (gpointer) name));
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
#define ADD(path, test) g_test_add_func ("/draw/style/" path, test)
  ADD ("formula", test_formula);
  ADD ("contrast", test_contrast);
  ADD ("no-style-forgotten", test_no_style_forgotten);
  ADD ("letters-under-the-wash", test_letters_under_the_wash);
  ADD ("told-apart", test_told_apart);
  ADD ("palettes-differ-in-colour-alone",
       test_palettes_differ_in_colour_alone);
  ADD ("names", test_names);
  return g_test_run ();
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-dimension-chain.h"

#include <math.h>

/* Points on paper. */
#define TICK 2.5
#define OVERSHOOT 3.0
#define GAP 4.0
#define FIGURE_HEIGHT 11.0
#define FIGURE_RISE 6.0

static inline double
in_mm (CwLength length)
{
  return (double) length / CW_NM_PER_MM;
}

/* Chains are worked out along one axis; this turns them. */
static void
line (const CwChainDrawing *drawing, gboolean upright, double along_0,
      double across_0, double along_1, double across_1)
{
  cw_display_list_move_to (drawing->list, upright ? across_0 : along_0,
                           upright ? along_0 : across_0);
  cw_display_list_line_to (drawing->list, upright ? across_1 : along_1,
                           upright ? along_1 : across_1);
}

static void
draw_lines (const CwChainDrawing *drawing, const GArray *places,
            gboolean upright, double at, double from)
{
  const double unit = drawing->mm_per_unit;
  const double outward = at < from ? -1 : 1;
  const double first = in_mm (g_array_index (places, CwLength, 0));
  const double last
      = in_mm (g_array_index (places, CwLength, places->len - 1));

  cw_display_list_begin (drawing->list, CW_STYLE_DIMENSION, NULL);
  line (drawing, upright, first, at, last, at);
  for (guint i = 0; i < places->len; i++)
    {
      const double place = in_mm (g_array_index (places, CwLength, i));
      line (drawing, upright, place, from + outward * GAP * unit, place,
            at + outward * OVERSHOOT * unit);
      line (drawing, upright, place - TICK * unit, at - TICK * unit,
            place + TICK * unit, at + TICK * unit);
    }
  cw_display_list_end (drawing->list);
}

static void
draw_figure (const CwChainDrawing *drawing, gboolean upright, CwLength low,
             CwLength high, double at)
{
  const double unit = drawing->mm_per_unit;
  const double middle = (in_mm (low) + in_mm (high)) / 2;
  const double above = at + (upright ? -1 : 1) * FIGURE_RISE * unit;
  g_autofree char *text
      = cw_length_format_dimension (high - low, drawing->style);
  cw_display_list_add_text_in (
      drawing->list, CW_STYLE_DIMENSION_TEXT, NULL, upright ? above : middle,
      upright ? middle : above, upright ? G_PI_2 : 0,
      in_mm (high - low) - TICK * unit, FIGURE_HEIGHT * unit, text);
}

static void
draw_chain (const CwChainDrawing *drawing, const GArray *places,
            gboolean upright, double at, double from)
{
  if (places->len < 2)
    return;
  draw_lines (drawing, places, upright, at, from);
  for (guint i = 0; i + 1 < places->len; i++)
    draw_figure (drawing, upright, g_array_index (places, CwLength, i),
                 g_array_index (places, CwLength, i + 1), at);
}

void
cw_dimension_chain_level (const CwChainDrawing *drawing, const GArray *places,
                          double at, double from)
{
  draw_chain (drawing, places, FALSE, at, from);
}

void
cw_dimension_chain_upright (const CwChainDrawing *drawing,
                            const GArray *places, double at, double from)
{
  draw_chain (drawing, places, TRUE, at, from);
}

static int
compare_lengths (gconstpointer a, gconstpointer b)
{
  const CwLength first = *(const CwLength *) a, second = *(const CwLength *) b;
  return (first > second) - (first < second);
}

void
cw_lengths_sort (GArray *lengths)
{
  guint n = 0;
  g_array_sort (lengths, compare_lengths);
  for (guint i = 0; i < lengths->len; i++)
    {
      const CwLength length = g_array_index (lengths, CwLength, i);
      if (n == 0 || g_array_index (lengths, CwLength, n - 1) != length)
        g_array_index (lengths, CwLength, n++) = length;
    }
  g_array_set_size (lengths, n);
}

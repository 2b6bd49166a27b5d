/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-dimension-chain.h"
#include "cw-elevation-layers.h"

/* Points on paper from the wall to the first chain, and between chains. */
#define FIRST_CHAIN 22.0
#define CHAIN_STEP 20.0

static GArray *
lengths_new (void)
{
  return g_array_new (FALSE, FALSE, sizeof (CwLength));
}

static void
add_two (GArray *lengths, CwLength a, CwLength b)
{
  g_array_append_val (lengths, a);
  g_array_append_val (lengths, b);
}

static GArray *
opening_places (const CwWall *wall, const CwBox *box, gboolean upright)
{
  GArray *places = lengths_new ();
  add_two (places, upright ? box->bottom : box->left,
           upright ? box->top : box->right);
  for (guint i = 0; i < wall->openings->len; i++)
    {
      const CwBox opening = cw_region_box (
          g_array_index (wall->openings, CwWallOpening, i).shape);
      if (upright)
        add_two (places, opening.bottom, opening.top);
      else
        add_two (places, opening.left, opening.right);
    }
  cw_lengths_sort (places);
  return places;
}

static GArray *
whole_places (CwLength low, CwLength high)
{
  GArray *places = lengths_new ();
  add_two (places, low, high);
  return places;
}

void
cw_draw_dimensions (const CwLayerDrawing *drawing)
{
  const CwBox box = cw_region_box (drawing->wall->outline);
  const CwChainDrawing chain
      = { drawing->list, drawing->style, drawing->mm_per_unit };
  const double unit = drawing->mm_per_unit;
  const double bottom = (double) box.bottom / CW_NM_PER_MM;
  const double left = (double) box.left / CW_NM_PER_MM;
  g_autoptr (GArray) across = opening_places (drawing->wall, &box, FALSE);
  g_autoptr (GArray) up = opening_places (drawing->wall, &box, TRUE);
  g_autoptr (GArray) width = whole_places (box.left, box.right);
  g_autoptr (GArray) height = whole_places (box.bottom, box.top);

  if (across->len > 2)
    cw_dimension_chain_level (&chain, across, bottom - FIRST_CHAIN * unit,
                              bottom);
  cw_dimension_chain_level (
      &chain, width, bottom - (FIRST_CHAIN + CHAIN_STEP) * unit, bottom);
  if (up->len > 2)
    cw_dimension_chain_upright (&chain, up, left - FIRST_CHAIN * unit, left);
  cw_dimension_chain_upright (
      &chain, height, left - (FIRST_CHAIN + CHAIN_STEP) * unit, left);
}

static GArray *
corner_levels (const CwWall *wall)
{
  GArray *levels = lengths_new ();
  for (gsize i = 0; i < cw_region_n_loops (wall->outline); i++)
    {
      const CwLoop loop = cw_region_loop (wall->outline, i);
      for (gsize j = 0; j < loop.n_sides; j++)
        g_array_append_val (levels, loop.sides[j].start.y);
    }
  cw_lengths_sort (levels);
  return levels;
}

#define LEVEL_GAP 6.0
#define LEVEL_LINE 26.0
#define LEVEL_HEIGHT 11.0

static void
draw_level (const CwLayerDrawing *drawing, const CwBox *box, CwLength level)
{
  const double unit = drawing->mm_per_unit;
  const double x = (double) box->right / CW_NM_PER_MM + LEVEL_GAP * unit;
  const double y = (double) level / CW_NM_PER_MM;
  g_autofree char *height
      = cw_length_format_dimension (level - box->bottom, drawing->style);
  g_autofree char *text
      = g_strconcat (level > box->bottom ? "+" : "±", height, NULL);
  cw_display_list_begin (drawing->list, CW_STYLE_LEVEL, NULL);
  cw_display_list_move_to (drawing->list, x, y);
  cw_display_list_line_to (drawing->list, x + LEVEL_LINE * unit, y);
  cw_display_list_end (drawing->list);
  cw_display_list_add_text (drawing->list, CW_STYLE_LEVEL_TEXT, NULL,
                            x + LEVEL_LINE * unit + 3 * unit, y, 0,
                            CW_ANCHOR_LEFT, text);
}

/* From the base up; a level that would stand on the text of the one below is
 * left out. */
void
cw_draw_levels (const CwLayerDrawing *drawing)
{
  const CwBox box = cw_region_box (drawing->wall->outline);
  g_autoptr (GArray) levels = corner_levels (drawing->wall);
  double free_from = -G_MAXDOUBLE;
  for (guint i = 0; i < levels->len; i++)
    {
      const CwLength level = g_array_index (levels, CwLength, i);
      const double y = (double) level / CW_NM_PER_MM;
      if (y < free_from)
        continue;
      draw_level (drawing, &box, level);
      free_from = y + LEVEL_HEIGHT * drawing->mm_per_unit;
    }
}

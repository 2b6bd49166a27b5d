/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Running dimensions of a sawn panel: each figure stands at its place, or as
 * near to it as its neighbours allow, with a line that leads there.
 */
#include "cw-cut-private.h"
#include "cw-dimension-chain.h"

/* Points. */
#define TICK 3.0
#define LEADER 9.0
#define LINE_HEIGHT 10.0
#define FIGURE_WIDTH 5.0

typedef struct
{
  const CwCutPicture *picture;
  gboolean upright;           /* figures of cuts across, under the panel */
  double last;                /* where the figure before stands */
} Row;

static void
draw_leader (const Row *row, double place, double stand)
{
  CwDisplayList *list = row->picture->list;
  const double tick = -TICK * row->picture->mm_per_unit;
  const double end = -LEADER * row->picture->mm_per_unit;

  cw_display_list_begin (list, CW_STYLE_DIMENSION, NULL);
  cw_display_list_move_to (list, row->upright ? place : 0,
                           row->upright ? 0 : place);
  cw_display_list_line_to (list, row->upright ? place : tick,
                           row->upright ? tick : place);
  cw_display_list_line_to (list, row->upright ? stand : end,
                           row->upright ? end : stand);
  cw_display_list_end (list);
}

/* What the figures take on the side where they stand. */
static void
make_room (const Row *row, double length, double stand, double half)
{
  CwCutRoom *room = row->picture->room;

  if (row->upright)
    {
      room->bottom = MIN (room->bottom, -length);
      room->right = MAX (room->right, stand + half);
    }
  else
    {
      room->left = MIN (room->left, -length);
      room->top = MAX (room->top, stand + half);
    }
}

static double
width_of (const Row *row, const char *text)
{
  return FIGURE_WIDTH * (double) g_utf8_strlen (text, -1)
         * row->picture->mm_per_unit;
}

/* Under the panel, level: each at its own place. */
static void
draw_level (const Row *row, double place, const char *text)
{
  const double unit = row->picture->mm_per_unit;
  const double down = LEADER + LINE_HEIGHT / 2;

  draw_leader (row, place, place);
  cw_display_list_add_text (row->picture->list, CW_STYLE_DIMENSION_TEXT, NULL,
                            place, -down * unit, 0, CW_ANCHOR_CENTRE, text);
  make_room (row, (down + LINE_HEIGHT / 2) * unit, place,
             width_of (row, text) / 2);
}

/* Beside the panel, or upright under it. */
static void
draw_spread (Row *row, double place, const char *text)
{
  const CwCutPicture *picture = row->picture;
  const double unit = picture->mm_per_unit;
  const double stand = MAX (place, row->last + LINE_HEIGHT * unit);
  const double end = -(LEADER + 1.5) * unit;

  draw_leader (row, place, stand);
  cw_display_list_add_text (picture->list, CW_STYLE_DIMENSION_TEXT, NULL,
                            row->upright ? stand : end,
                            row->upright ? end : stand,
                            row->upright ? G_PI / 2 : 0, CW_ANCHOR_RIGHT,
                            text);
  make_room (row, (LEADER + 2) * unit + width_of (row, text), stand,
             LINE_HEIGHT / 2 * unit);
  row->last = stand;
}

static double
in_mm (const GArray *places, guint i)
{
  return (double) g_array_index (places, CwLength, i) / CW_NM_PER_MM;
}

static gboolean
fits_level (const Row *row, const GArray *places, const GStrv texts)
{
  const double gap = 6 * row->picture->mm_per_unit;

  for (guint i = 0; i < places->len; i++)
    {
      const double before = i > 0 ? in_mm (places, i - 1) : 0;
      const double half = i > 0 ? width_of (row, texts[i - 1]) / 2 : 0;

      if (in_mm (places, i) - width_of (row, texts[i]) / 2
          < before + half + gap)
        return FALSE;
    }
  return TRUE;
}

/* What is sawn out of a blank is measured at its corners, a round hole at its
 * centre. */
static void
add_shape_places (const CwCutPicture *picture, gboolean upright,
                  GArray *places)
{
  const GArray *corners = picture->corners;

  for (guint i = 0; i < corners->len; i++)
    {
      const CwPoint *corner = &g_array_index (corners, CwPoint, i);
      const CwLength place = upright ? corner->x : corner->y;

      g_array_append_val (places, place);
    }
}

static void
keep_inside (GArray *places, CwLength size)
{
  for (guint i = places->len; i-- > 0;)
    {
      const CwLength place = g_array_index (places, CwLength, i);
      if (place <= 0 || place > size)
        g_array_remove_index (places, i);
    }
}

/* (transfer full): sorted, the panel's end among them. */
static GArray *
places_of (const CwCutPicture *picture, gboolean upright, CwLength size)
{
  const GArray *cuts = picture->whole->cuts;
  GArray *places = g_array_new (FALSE, FALSE, sizeof (CwLength));

  for (guint i = 0; i < cuts->len; i++)
    {
      const CwCut *cut = &g_array_index (cuts, CwCut, i);

      if (!cut->upright == !upright)
        g_array_append_val (places, cut->at);
    }
  add_shape_places (picture, upright, places);
  g_array_append_val (places, size);
  keep_inside (places, size);
  cw_lengths_sort (places);
  return places;
}

static void
draw_row (const CwCutPicture *picture, gboolean upright, CwLength size)
{
  Row row = { picture, upright, -G_MAXFLOAT };
  g_autoptr (GArray) places = places_of (picture, upright, size);
  g_auto (GStrv) texts = g_new0 (char *, places->len + 1);
  gboolean level;

  for (guint i = 0; i < places->len; i++)
    texts[i] = cw_length_format_dimension (
        g_array_index (places, CwLength, i), picture->style);
  level = upright && fits_level (&row, places, texts);
  for (guint i = 0; i < places->len; i++)
    if (level)
      draw_level (&row, in_mm (places, i), texts[i]);
    else
      draw_spread (&row, in_mm (places, i), texts[i]);
}

void
cw_cut_draw_figures (const CwCutPicture *picture)
{
  const CwCutRules *rules = &picture->plan->cut->rules;
  const double aside = -5 * picture->mm_per_unit;

  draw_row (picture, TRUE, rules->length);
  draw_row (picture, FALSE, rules->height);
  cw_display_list_add_text (picture->list, CW_STYLE_DIMENSION_TEXT, NULL,
                            aside, aside, 0, CW_ANCHOR_CENTRE, "0");
}

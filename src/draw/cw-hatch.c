/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Along a line of slope s the value u = x - s (y - y0) stays the same, so the
 * lines are u = x0 + k spacing. Every side of the shape is crossed by those
 * between its ends' values. The crossings of a line, sorted down it, are where
 * it goes in and out.
 */
#include "cw-hatch.h"

#include <math.h>
#include <stdlib.h>

/* More lines than this are no hatch but a tone; the painter asks for none. */
#define LINES_MOST 20000
#define DOT_LENGTH 0.7

typedef struct
{
  int line;
  int turn;             /* 1 where the side runs towards larger u, else -1 */
  double y;
} Crossing;

typedef struct
{
  cairo_t *cr;
  const CwHatchLines *lines;
  double left, top, right, bottom;   /* what is seen */
  GArray *crossings;                 /* Crossing */
} Hatch;

static double
across (const Hatch *hatch, double x, double y)
{
  const CwHatchLines *lines = hatch->lines;
  return (x - lines->x - lines->slope * (y - lines->y)) / lines->spacing;
}

/* First and last line that cross what is seen. */
static void
seen_lines (const Hatch *hatch, int *first, int *last)
{
  const double a = across (hatch, hatch->left, hatch->top);
  const double b = across (hatch, hatch->right, hatch->top);
  const double c = across (hatch, hatch->left, hatch->bottom);
  const double d = across (hatch, hatch->right, hatch->bottom);
  const double low = MIN (MIN (a, b), MIN (c, d));
  const double high = MAX (MAX (a, b), MAX (c, d));
  *first = (int)ceil (CLAMP (low, -1e9, 1e9));
  *last = (int)floor (CLAMP (high, -1e9, 1e9));
}

/* The lower end's line belongs to the side, the higher end's to the next, so
 * that a line through a corner is counted once. */
static void
cross_side (Hatch *hatch, double x0, double y0, double x1, double y1,
            int first, int last)
{
  const double from = across (hatch, x0, y0), to = across (hatch, x1, y1);
  const double low = MIN (from, to), high = MAX (from, to);
  const int begin = (int)MAX (ceil (MAX (low, -1e9)), first);
  const int end = (int)MIN (ceil (MIN (high, 1e9)) - 1, last);
  for (int line = begin; line <= end; line++)
    {
      const double share = (line - from) / (to - from);
      const Crossing crossing
          = { line, to > from ? 1 : -1, y0 + share * (y1 - y0) };
      g_array_append_val (hatch->crossings, crossing);
    }
}

static void
cross_path (Hatch *hatch, const cairo_path_t *shape, int first, int last)
{
  double x = 0, y = 0, start_x = 0, start_y = 0;
  for (int i = 0; i < shape->num_data; i += shape->data[i].header.length)
    {
      const cairo_path_data_t *data = &shape->data[i];
      const gboolean moves = data->header.type == CAIRO_PATH_MOVE_TO;
      const gboolean draws = data->header.type == CAIRO_PATH_LINE_TO;
      if (!draws)
        cross_side (hatch, x, y, start_x, start_y, first, last);
      else
        cross_side (hatch, x, y, data[1].point.x, data[1].point.y, first,
                    last);
      x = moves || draws ? data[1].point.x : start_x;
      y = moves || draws ? data[1].point.y : start_y;
      start_x = moves ? x : start_x;
      start_y = moves ? y : start_y;
    }
  cross_side (hatch, x, y, start_x, start_y, first, last);
}

static int
compare (gconstpointer a, gconstpointer b)
{
  const Crossing *one = a, *other = b;
  if (one->line != other->line)
    return one->line < other->line ? -1 : 1;
  return (one->y > other->y) - (one->y < other->y);
}

static double
x_at (const Hatch *hatch, int line, double y)
{
  const CwHatchLines *lines = hatch->lines;
  return lines->x + line * lines->spacing + lines->slope * (y - lines->y);
}

static void
add_line (const Hatch *hatch, int line, double from, double to)
{
  cairo_move_to (hatch->cr, x_at (hatch, line, from), from);
  cairo_line_to (hatch->cr, x_at (hatch, line, to), to);
}

/* Dots lie on level lines too, so that they stay in place with the lines. */
static void
add_dots (const Hatch *hatch, int line, double from, double to)
{
  const double step = hatch->lines->spacing;
  double y = hatch->lines->y
             + ceil ((from - hatch->lines->y) / step) * step;
  for (; y + DOT_LENGTH <= to; y += step)
    add_line (hatch, line, y, y + DOT_LENGTH);
}

static void
add_stretch (const Hatch *hatch, int line, double from, double to)
{
  from = MAX (from, hatch->top);
  to = MIN (to, hatch->bottom);
  if (from >= to)
    return;
  if (hatch->lines->is_dotted)
    add_dots (hatch, line, from, to);
  else
    add_line (hatch, line, from, to);
}

static void
add_stretches (const Hatch *hatch)
{
  int winding = 0;
  for (guint i = 0; i + 1 < hatch->crossings->len; i++)
    {
      const Crossing *now = &g_array_index (hatch->crossings, Crossing, i);
      const Crossing *next = now + 1;
      winding += now->turn;
      if (now->line == next->line && winding != 0)
        add_stretch (hatch, now->line, now->y, next->y);
      if (now->line != next->line)
        winding = 0;
    }
}

void
cw_hatch_trace (cairo_t *cr, const cairo_path_t *shape,
                const CwHatchLines *lines)
{
  int first, last;
  Hatch hatch = { cr, lines };
  cairo_clip_extents (cr, &hatch.left, &hatch.top, &hatch.right,
                      &hatch.bottom);
  if (hatch.left >= hatch.right || lines->spacing <= 0)
    return;
  seen_lines (&hatch, &first, &last);
  if (last - first > LINES_MOST)
    return;
  hatch.crossings = g_array_new (FALSE, FALSE, sizeof (Crossing));
  cross_path (&hatch, shape, first, last);
  g_array_sort (hatch.crossings, compare);
  add_stretches (&hatch);
  g_array_unref (hatch.crossings);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-svg-path.h"

#include <math.h>
#include <string.h>

/* How far a chord may lie from its curve. */
#define CHORD_ERROR 0.05
#define CHORDS_MOST 64

typedef struct
{
  double x, y;
} Spot;

typedef struct
{
  const char *next, *end;
  cairo_matrix_t matrix;
  GArray *lines;
  Spot at, begin;       /* in the space of the lines */
} Reading;

static void
skip_space (Reading *reading)
{
  while (reading->next < reading->end
         && (g_ascii_isspace (*reading->next) || *reading->next == ','))
    reading->next++;
}

static gboolean
read_number (Reading *reading, double *number)
{
  char *end;

  skip_space (reading);
  if (reading->next >= reading->end)
    return FALSE;
  *number = g_ascii_strtod (reading->next, &end);
  if (end == reading->next || end > reading->end)
    return FALSE;
  reading->next = end;
  return TRUE;
}

static gboolean
read_spot (Reading *reading, Spot *spot)
{
  if (!read_number (reading, &spot->x) || !read_number (reading, &spot->y))
    return FALSE;
  cairo_matrix_transform_point (&reading->matrix, &spot->x, &spot->y);
  return TRUE;
}

static void
add_line (Reading *reading, Spot to, CwDrawnFlags flags)
{
  const CwDrawnLine line
      = { reading->at.x, reading->at.y, to.x, to.y, flags };

  g_array_append_val (reading->lines, line);
  reading->at = to;
}

/* By the second differences of the control points, which bound the curve's
 * second derivative: that divided by 8 n² is how far n chords are off. */
static guint
n_chords (const Spot p[4])
{
  const double one = hypot (p[0].x - 2 * p[1].x + p[2].x,
                            p[0].y - 2 * p[1].y + p[2].y);
  const double other = hypot (p[1].x - 2 * p[2].x + p[3].x,
                              p[1].y - 2 * p[2].y + p[3].y);
  const double n = ceil (sqrt (6 * MAX (one, other) / (8 * CHORD_ERROR)));

  return (guint) CLAMP (n, 1, CHORDS_MOST);
}

static Spot
on_curve (const Spot p[4], double t)
{
  const double s = 1 - t;
  const double a = s * s * s, b = 3 * s * s * t, c = 3 * s * t * t,
               d = t * t * t;

  return (Spot) { a * p[0].x + b * p[1].x + c * p[2].x + d * p[3].x,
                  a * p[0].y + b * p[1].y + c * p[2].y + d * p[3].y };
}

static gboolean
read_curve (Reading *reading)
{
  Spot p[4] = { reading->at };
  guint n;

  for (guint i = 1; i < 4; i++)
    if (!read_spot (reading, &p[i]))
      return FALSE;
  n = n_chords (p);
  for (guint i = 1; i <= n; i++)
    add_line (reading, i < n ? on_curve (p, (double) i / n) : p[3],
              (i > 1 ? CW_DRAWN_BEGINS_INSIDE : CW_DRAWN_PLAIN)
                  | (i < n ? CW_DRAWN_ENDS_INSIDE : CW_DRAWN_PLAIN));
  return TRUE;
}

static gboolean
read_step (Reading *reading, char step)
{
  Spot to;

  switch (step)
    {
    case 'M':
      if (!read_spot (reading, &reading->at))
        return FALSE;
      reading->begin = reading->at;
      return TRUE;
    case 'L':
      if (!read_spot (reading, &to))
        return FALSE;
      add_line (reading, to, CW_DRAWN_PLAIN);
      return TRUE;
    case 'C':
      return read_curve (reading);
    case 'Z':
      add_line (reading, reading->begin, CW_DRAWN_PLAIN);
      return TRUE;
    default:
      return FALSE;
    }
}

void
cw_svg_path_read (const char *data, gsize n, const cairo_matrix_t *matrix,
                  GArray *lines)
{
  Reading reading = { data, data + n, *matrix, lines, { 0, 0 }, { 0, 0 } };

  g_return_if_fail (data != NULL && lines != NULL);

  for (skip_space (&reading); reading.next < reading.end;
       skip_space (&reading))
    if (!read_step (&reading, *reading.next++))
      return;
}

gboolean
cw_svg_transform_read (const char *text, cairo_matrix_t *matrix)
{
  double a, b, c, d, e, f;
  const char *numbers = strchr (text, '(');
  double *const all[] = { &a, &b, &c, &d, &e, &f };
  Reading reading = { 0 };
  guint n = 0;

  if (numbers == NULL)
    return FALSE;
  reading.next = numbers + 1;
  reading.end = text + strlen (text);
  while (n < G_N_ELEMENTS (all) && read_number (&reading, all[n]))
    n++;
  if (g_str_has_prefix (text, "matrix") && n == 6)
    cairo_matrix_init (matrix, a, b, c, d, e, f);
  else if (g_str_has_prefix (text, "translate") && n == 2)
    cairo_matrix_init_translate (matrix, a, b);
  else
    return FALSE;
  return TRUE;
}

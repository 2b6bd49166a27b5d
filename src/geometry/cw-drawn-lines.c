/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The index is a grid of square cells, each with the numbers of the lines that
 * go through it, all in one array behind each other.
 */
#include "cw-drawn-lines.h"

#include <math.h>

/* Two ends nearer than this, in points, are one. */
#define SAME 0.01
/* Cells each way over the whole, at most. */
#define CELLS_MOST 512
/* Lines a cell that the size of the cells aims at. */
#define LINES_A_CELL 4
/* Of the lines near a point so many are asked for crossings: a hatch under a
 * far view has thousands, and then none of their crossings is meant. */
#define CROSSING_LINES_MOST 64

struct CwDrawnLines
{
  gatomicrefcount count;
  CwDrawnLine *lines;
  guint n;
  gboolean is_cut;
  double left, top, cell;
  int columns, rows;
  guint *first;           /* where each cell's numbers begin; one more */
  guint *numbers;
};

static gboolean
is_drawn (const CwDrawnLine *line)
{
  return isfinite (line->x0) && isfinite (line->y0) && isfinite (line->x1)
         && isfinite (line->y1)
         && hypot (line->x1 - line->x0, line->y1 - line->y0) >= SAME;
}

/* Whichever way it runs. */
typedef struct
{
  gint64 a[4];
} Key;

static Key
key_of (const CwDrawnLine *line)
{
  const Key key = { { llround (line->x0 / SAME), llround (line->y0 / SAME),
                      llround (line->x1 / SAME), llround (line->y1 / SAME) } };
  const gboolean turned
      = key.a[2] < key.a[0] || (key.a[2] == key.a[0] && key.a[3] < key.a[1]);

  return turned ? (Key) { { key.a[2], key.a[3], key.a[0], key.a[1] } } : key;
}

static guint
key_hash (gconstpointer data)
{
  const Key *key = data;
  guint64 hash = 0;

  for (guint i = 0; i < G_N_ELEMENTS (key->a); i++)
    hash = (hash ^ (guint64) key->a[i]) * G_GUINT64_CONSTANT (0x9e3779b97f4a7c15);
  return (guint) (hash >> 32);
}

static gboolean
key_equal (gconstpointer data, gconstpointer other_data)
{
  const Key *key = data, *other = other_data;

  for (guint i = 0; i < G_N_ELEMENTS (key->a); i++)
    if (key->a[i] != other->a[i])
      return FALSE;
  return TRUE;
}

static void
keep_each_once (CwDrawnLines *self, const GArray *lines)
{
  g_autoptr (GHashTable) seen = g_hash_table_new (key_hash, key_equal);
  g_autofree Key *keys = g_new (Key, MAX (lines->len, 1));

  self->lines = g_new (CwDrawnLine, MAX (lines->len, 1));
  for (guint i = 0; i < lines->len; i++)
    {
      const CwDrawnLine *line = &g_array_index (lines, CwDrawnLine, i);

      if (!is_drawn (line))
        continue;
      if (self->n == CW_DRAWN_LINES_MOST)
        {
          self->is_cut = TRUE;
          return;
        }
      keys[i] = key_of (line);
      if (g_hash_table_add (seen, &keys[i]))
        self->lines[self->n++] = *line;
    }
}

static void
lay_grid (CwDrawnLines *self)
{
  double right = -G_MAXDOUBLE, bottom = -G_MAXDOUBLE, side;

  self->left = self->top = G_MAXDOUBLE;
  for (guint i = 0; i < self->n; i++)
    {
      const CwDrawnLine *line = &self->lines[i];

      self->left = MIN (self->left, MIN (line->x0, line->x1));
      self->top = MIN (self->top, MIN (line->y0, line->y1));
      right = MAX (right, MAX (line->x0, line->x1));
      bottom = MAX (bottom, MAX (line->y0, line->y1));
    }
  if (self->n == 0)
    self->left = self->top = right = bottom = 0;
  side = MAX (MAX (right - self->left, bottom - self->top), 1);
  self->cell = side
               / CLAMP (sqrt ((double) self->n / LINES_A_CELL) * 2, 1,
                        CELLS_MOST);
  self->columns = (int) ((right - self->left) / self->cell) + 1;
  self->rows = (int) ((bottom - self->top) / self->cell) + 1;
}

typedef struct
{
  int first_column, last_column, first_row, last_row;
} Cells;

static int
cell_at (double value, double origin, double cell, int n)
{
  return (int) CLAMP (floor ((value - origin) / cell), 0, n - 1);
}

static Cells
cells_of_box (const CwDrawnLines *self, double left, double top, double right,
              double bottom)
{
  return (Cells) {
    cell_at (left, self->left, self->cell, self->columns),
    cell_at (right, self->left, self->cell, self->columns),
    cell_at (top, self->top, self->cell, self->rows),
    cell_at (bottom, self->top, self->cell, self->rows),
  };
}

static Cells
cells_of_line (const CwDrawnLines *self, const CwDrawnLine *line)
{
  return cells_of_box (self, MIN (line->x0, line->x1),
                       MIN (line->y0, line->y1), MAX (line->x0, line->x1),
                       MAX (line->y0, line->y1));
}

/* TRUE when the line comes within half the diagonal of the cell's middle. */
static gboolean
comes_into (const CwDrawnLines *self, const CwDrawnLine *line, int column,
            int row)
{
  const double x = self->left + (column + 0.5) * self->cell - line->x0;
  const double y = self->top + (row + 0.5) * self->cell - line->y0;
  const double dx = line->x1 - line->x0, dy = line->y1 - line->y0;

  return fabs (x * dy - y * dx)
         <= hypot (dx, dy) * self->cell * (G_SQRT2 / 2 + 1e-9);
}

typedef void (*CellVisitor) (CwDrawnLines *self, guint line, int cell);

static void
visit_cells (CwDrawnLines *self, CellVisitor visit)
{
  for (guint i = 0; i < self->n; i++)
    {
      const CwDrawnLine *line = &self->lines[i];
      const Cells cells = cells_of_line (self, line);

      for (int row = cells.first_row; row <= cells.last_row; row++)
        for (int column = cells.first_column; column <= cells.last_column;
             column++)
          if (comes_into (self, line, column, row))
            visit (self, i, row * self->columns + column);
    }
}

static void
count_in (CwDrawnLines *self, guint line, int cell)
{
  self->first[cell]++;
}

/* Backward, so that the cells' beginnings come out of their ends. */
static void
put_in (CwDrawnLines *self, guint line, int cell)
{
  self->numbers[--self->first[cell]] = line;
}

static void
fill_grid (CwDrawnLines *self)
{
  const int n_cells = self->columns * self->rows;

  self->first = g_new0 (guint, n_cells + 1);
  visit_cells (self, count_in);
  for (int i = 0; i < n_cells; i++)
    self->first[i + 1] += self->first[i];
  self->numbers = g_new (guint, MAX (self->first[n_cells], 1));
  visit_cells (self, put_in);
}

CwDrawnLines *
cw_drawn_lines_new (const GArray *lines)
{
  CwDrawnLines *self;

  g_return_val_if_fail (lines != NULL, NULL);

  self = g_new0 (CwDrawnLines, 1);
  g_atomic_ref_count_init (&self->count);
  keep_each_once (self, lines);
  lay_grid (self);
  fill_grid (self);
  return self;
}

CwDrawnLines *
cw_drawn_lines_ref (const CwDrawnLines *lines)
{
  CwDrawnLines *self = (CwDrawnLines *) lines;

  g_return_val_if_fail (self != NULL, NULL);

  g_atomic_ref_count_inc (&self->count);
  return self;
}

void
cw_drawn_lines_unref (CwDrawnLines *self)
{
  g_return_if_fail (self != NULL);

  if (!g_atomic_ref_count_dec (&self->count))
    return;
  g_free (self->lines);
  g_free (self->first);
  g_free (self->numbers);
  g_free (self);
}

guint
cw_drawn_lines_n (const CwDrawnLines *self)
{
  g_return_val_if_fail (self != NULL, 0);

  return self->n;
}

const CwDrawnLine *
cw_drawn_lines_at (const CwDrawnLines *self, guint i)
{
  g_return_val_if_fail (self != NULL && i < self->n, NULL);

  return &self->lines[i];
}

gboolean
cw_drawn_lines_is_cut (const CwDrawnLines *self)
{
  g_return_val_if_fail (self != NULL, FALSE);

  return self->is_cut;
}

static int
compare_numbers (gconstpointer a, gconstpointer b)
{
  const guint one = *(const guint *) a, other = *(const guint *) b;

  return (one > other) - (one < other);
}

static void
keep_numbers_once (GArray *numbers)
{
  guint n = 0;

  g_array_sort (numbers, compare_numbers);
  for (guint i = 0; i < numbers->len; i++)
    {
      const guint number = g_array_index (numbers, guint, i);

      if (n == 0 || g_array_index (numbers, guint, n - 1) != number)
        g_array_index (numbers, guint, n++) = number;
    }
  g_array_set_size (numbers, n);
}

void
cw_drawn_lines_within (const CwDrawnLines *self, double left, double top,
                       double right, double bottom, GArray *found)
{
  Cells cells;

  g_return_if_fail (self != NULL && found != NULL);

  g_array_set_size (found, 0);
  cells = cells_of_box (self, left, top, right, bottom);
  for (int row = cells.first_row; row <= cells.last_row; row++)
    for (int column = cells.first_column; column <= cells.last_column;
         column++)
      {
        const guint *first = &self->first[row * self->columns + column];

        g_array_append_vals (found, self->numbers + first[0],
                             first[1] - first[0]);
      }
  keep_numbers_once (found);
}

/* The nearest so far of one kind, and how far. */
typedef struct
{
  CwDrawnPoint point;
  double distance;
} Nearest;

static void
offer (Nearest *nearest, CwDrawnKind kind, double x, double y, guint line,
       double distance)
{
  if (distance >= nearest->distance)
    return;
  nearest->point = (CwDrawnPoint) { kind, x, y, line };
  nearest->distance = distance;
}

static void
offer_ends (Nearest *nearest, const CwDrawnLine *line, guint number, double x,
            double y)
{
  if (!(line->flags & CW_DRAWN_BEGINS_INSIDE))
    offer (nearest, CW_DRAWN_END, line->x0, line->y0, number,
           hypot (line->x0 - x, line->y0 - y));
  if (!(line->flags & CW_DRAWN_ENDS_INSIDE))
    offer (nearest, CW_DRAWN_END, line->x1, line->y1, number,
           hypot (line->x1 - x, line->y1 - y));
}

/* Returns: how far the line is. */
static double
offer_run (Nearest *nearest, const CwDrawnLine *line, guint number, double x,
           double y)
{
  const double dx = line->x1 - line->x0, dy = line->y1 - line->y0;
  const double along = ((x - line->x0) * dx + (y - line->y0) * dy)
                       / (dx * dx + dy * dy);
  const double t = CLAMP (along, 0, 1);
  const double at_x = line->x0 + t * dx, at_y = line->y0 + t * dy;
  const double distance = hypot (at_x - x, at_y - y);

  offer (nearest, CW_DRAWN_RUN, at_x, at_y, number, distance);
  return distance;
}

/* TRUE where the line goes on as another chord of its curve. */
static gboolean
is_joint (const CwDrawnLine *line, double t)
{
  const double end = SAME / hypot (line->x1 - line->x0, line->y1 - line->y0);

  return (t <= end && (line->flags & CW_DRAWN_BEGINS_INSIDE))
         || (t >= 1 - end && (line->flags & CW_DRAWN_ENDS_INSIDE));
}

static gboolean
crossing_of (const CwDrawnLine *one, const CwDrawnLine *other, double *x,
             double *y)
{
  const double dx = one->x1 - one->x0, dy = one->y1 - one->y0;
  const double ex = other->x1 - other->x0, ey = other->y1 - other->y0;
  const double cross = dx * ey - dy * ex;
  const double fx = other->x0 - one->x0, fy = other->y0 - one->y0;
  double t, u;

  /* Nearer to parallel than a degree they do not cross at a place that a
   * drawing means. */
  if (fabs (cross) < hypot (dx, dy) * hypot (ex, ey) * sin (G_PI / 180))
    return FALSE;
  t = (fx * ey - fy * ex) / cross;
  u = (fx * dy - fy * dx) / cross;
  *x = one->x0 + t * dx;
  *y = one->y0 + t * dy;
  return t >= 0 && t <= 1 && u >= 0 && u <= 1
         && !(is_joint (one, t) && is_joint (other, u));
}

static void
offer_crossings (Nearest *nearest, const CwDrawnLines *self,
                 const GArray *near, double x, double y)
{
  if (near->len > CROSSING_LINES_MOST)
    return;
  for (guint i = 1; i < near->len; i++)
    for (guint j = 0; j < i; j++)
      {
        const guint one = g_array_index (near, guint, i);
        const guint other = g_array_index (near, guint, j);
        double at_x, at_y;

        if (crossing_of (&self->lines[one], &self->lines[other], &at_x,
                         &at_y))
          offer (nearest, CW_DRAWN_CROSSING, at_x, at_y, one,
                 hypot (at_x - x, at_y - y));
      }
}

CwDrawnPoint
cw_drawn_lines_nearest (const CwDrawnLines *self, double x, double y,
                        double reach)
{
  g_autoptr (GArray) near = g_array_new (FALSE, FALSE, sizeof (guint));
  Nearest corner = { { CW_DRAWN_NOTHING, 0, 0, 0 }, reach };
  Nearest run = corner;
  guint n = 0;

  g_return_val_if_fail (self != NULL && reach > 0, corner.point);

  cw_drawn_lines_within (self, x - reach, y - reach, x + reach, y + reach,
                         near);
  for (guint i = 0; i < near->len; i++)
    {
      const guint number = g_array_index (near, guint, i);
      const CwDrawnLine *line = &self->lines[number];

      offer_ends (&corner, line, number, x, y);
      if (offer_run (&run, line, number, x, y) < reach)
        g_array_index (near, guint, n++) = number;
    }
  g_array_set_size (near, n);
  offer_crossings (&corner, self, near, x, y);
  return corner.point.kind != CW_DRAWN_NOTHING ? corner.point : run.point;
}

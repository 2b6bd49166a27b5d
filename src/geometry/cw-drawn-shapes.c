/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-drawn-shapes.h"

#include <math.h>

#include "cw-drawn-arch.h"
#include "cw-drawn-runs.h"

/* Openings of houses and small buildings, mm. */
#define LEAST 200.0
#define WIDTH_MOST 6500.0
#define HEIGHT_MOST 5000.0
/* What is drawn about a frame that is no more of it than so is a casing. */
#define CASING_LEAST 75.0
/* Lines of a frame lie nearer to each other, mm. */
#define FRAME_MOST 70.0
/* From a pane or leaf to what it is in, on three sides; mm. */
#define RAIL_MOST 300.0
/* Jambs on either side that are tried. */
#define JAMBS_MOST 48

typedef struct
{
  const CwDrawnLines *lines;
  const CwDrawnRuns *runs;
  double least, width_most, height_most;    /* points */
} Search;

static gboolean
are_one (double one, double other)
{
  return fabs (one - other) <= CW_DRAWN_REACH;
}

/* The first run that is not before @at. */
static guint
first_from (const GArray *runs, double at)
{
  guint low = 0, high = runs->len;

  while (low < high)
    {
      const guint middle = low + (high - low) / 2;

      if (g_array_index (runs, CwDrawnRun, middle).at < at)
        low = middle + 1;
      else
        high = middle;
    }
  return low;
}

typedef enum
{
  ENDS_THERE,       /* a corner */
  GOES_ON,          /* longer than needed: a threshold, the ground */
} Ends;

/* Is there a level run at @y from @left to @right? */
static gboolean
has_level (const Search *search, double y, double left, double right,
           Ends ends)
{
  const GArray *level = search->runs->level;

  for (guint i = first_from (level, y - CW_DRAWN_REACH); i < level->len; i++)
    {
      const CwDrawnRun *run = &g_array_index (level, CwDrawnRun, i);

      if (run->at > y + CW_DRAWN_REACH)
        break;
      if (run->begin > left + CW_DRAWN_REACH
          || run->end < right - CW_DRAWN_REACH)
        continue;
      if (ends == GOES_ON
          || (are_one (run->begin, left) && are_one (run->end, right)))
        return TRUE;
    }
  return FALSE;
}

static gboolean
fits_openings (const Search *search, const CwDrawnShape *shape)
{
  const double width = shape->right - shape->left;
  const double height = shape->bottom - shape->top;

  return width >= search->least && width <= search->width_most
         && height >= search->least && height <= search->height_most;
}

/* Jambs of one height, with a sill, under a head or an arch. */
static gboolean
is_frame (const Search *search, const CwDrawnRun *left,
          const CwDrawnRun *right, CwDrawnShape *shape)
{
  if (!are_one (left->begin, right->begin) || !are_one (left->end, right->end))
    return FALSE;
  *shape = (CwDrawnShape) { left->at,    right->at, left->begin,
                            left->begin, left->end, CW_DRAWN_HEAD_LEVEL,
                            TRUE };
  if (shape->right - shape->left < search->least
      || !has_level (search, shape->bottom, shape->left, shape->right,
                     GOES_ON))
    return FALSE;
  shape->is_cornered
      = has_level (search, shape->top, shape->left, shape->right, ENDS_THERE)
        || cw_drawn_arch_follow (search->lines, shape);
  return (shape->is_cornered
          || has_level (search, shape->top, shape->left, shape->right,
                        GOES_ON))
         && fits_openings (search, shape);
}

static int
compare_areas (gconstpointer a, gconstpointer b)
{
  const CwDrawnShape *one = a, *other = b;
  const double area = (one->right - one->left) * (one->bottom - one->top);
  const double against
      = (other->right - other->left) * (other->bottom - other->top);

  return (area > against) - (area < against);
}

static gboolean
is_within (const CwDrawnShape *inner, const CwDrawnShape *outer)
{
  return inner->left >= outer->left - CW_DRAWN_REACH
         && inner->right <= outer->right + CW_DRAWN_REACH
         && inner->top >= outer->top - CW_DRAWN_REACH
         && inner->bottom <= outer->bottom + CW_DRAWN_REACH;
}

/* Puts @shape into its place among @nested, if it is in all that are larger
 * and has all that are smaller in it. */
static void
nest (GArray *nested, const CwDrawnShape *shape)
{
  const CwDrawnShape *all = (const CwDrawnShape *) nested->data;
  guint i = 0;

  while (i < nested->len && compare_areas (&all[i], shape) <= 0)
    i++;
  if (i > 0
      && (!is_within (&all[i - 1], shape) || is_within (shape, &all[i - 1])))
    return;
  if (i < nested->len
      && (!is_within (shape, &all[i]) || is_within (&all[i], shape)))
    return;
  g_array_insert_val (nested, i, *shape);
}

/* Leaves each in the next, from the innermost; the sure ones first come to
 * their places. (transfer full) */
static GArray *
nested_of (GArray *shapes)
{
  GArray *nested = g_array_new (FALSE, FALSE, sizeof (CwDrawnShape));

  g_array_sort (shapes, compare_areas);
  for (int sure = TRUE; sure >= FALSE; sure--)
    for (guint i = 0; i < shapes->len; i++)
      {
        const CwDrawnShape *shape = &g_array_index (shapes, CwDrawnShape, i);

        if (shape->is_cornered == sure)
          nest (nested, shape);
      }
  return nested;
}

/* The gaps on the four sides that are no wider than @most, points. */
static guint
n_narrow (const CwDrawnShape *inner, const CwDrawnShape *outer, double most)
{
  return (inner->left - outer->left <= most)
         + (outer->right - inner->right <= most)
         + (inner->top - outer->top <= most)
         + (outer->bottom - inner->bottom <= most);
}

/* The next outer one that is cornered, or the number of all. */
static guint
next_cornered (const GArray *shapes, guint i)
{
  while (i < shapes->len
         && !g_array_index (shapes, CwDrawnShape, i).is_cornered)
    i++;
  return i;
}

/* One opening goes out to here, from the first cornered shape on; @inner is
 * the last one before. */
static guint
outermost (const GArray *shapes, double mm_per_point, guint *inner)
{
  const CwDrawnShape *all = (const CwDrawnShape *) shapes->data;
  guint i = next_cornered (shapes, 0);
  guint next;

  *inner = shapes->len;
  while ((next = next_cornered (shapes, i + 1)) < shapes->len
         && n_narrow (&all[i], &all[next], RAIL_MOST / mm_per_point) >= 3)
    {
      *inner = i;
      i = next;
    }
  return i;
}

/* A wide board about a frame of narrow lines. */
static gboolean
is_casing (const GArray *shapes, guint outer, guint frame,
           double mm_per_point)
{
  const CwDrawnShape *all = (const CwDrawnShape *) shapes->data;
  gboolean has_ring = FALSE;

  for (guint i = 0; i < frame && !has_ring; i++)
    has_ring = n_narrow (&all[i], &all[frame], FRAME_MOST / mm_per_point) >= 3;
  return has_ring
         && n_narrow (&all[frame], &all[outer], CASING_LEAST / mm_per_point)
                <= 1;
}

/* Rings of the frame whose head is hidden by eaves. */
static guint
with_hidden_rings (const GArray *shapes, guint i, double mm_per_point)
{
  const CwDrawnShape *all = (const CwDrawnShape *) shapes->data;

  while (i + 1 < shapes->len && !all[i + 1].is_cornered
         && n_narrow (&all[i], &all[i + 1], FRAME_MOST / mm_per_point) == 4)
    i++;
  return i;
}

static guint
likely_of (const GArray *shapes, double mm_per_point)
{
  guint inner, likely;

  if (shapes->len == 0)
    return 0;
  likely = outermost (shapes, mm_per_point, &inner);
  if (likely == shapes->len)
    return 0;
  if (inner < likely && is_casing (shapes, likely, inner, mm_per_point))
    return inner;
  return with_hidden_rings (shapes, likely, mm_per_point);
}

/* Upright runs on one side of the point that go past it, the nearest first.
 * (transfer full) (element-type CwDrawnRun) */
static GArray *
jambs_beside (const CwDrawnRuns *runs, double x, double y, int way)
{
  const GArray *upright = runs->upright;
  GArray *jambs = g_array_new (FALSE, FALSE, sizeof (CwDrawnRun));
  int i = (int) first_from (upright, x) - (way < 0);

  for (; i >= 0 && i < (int) upright->len && jambs->len < JAMBS_MOST;
       i += way)
    {
      const CwDrawnRun *run = &g_array_index (upright, CwDrawnRun, i);

      if (run->begin <= y && run->end >= y)
        g_array_append_val (jambs, *run);
    }
  return jambs;
}

CwDrawnShapes *
cw_drawn_shapes_around (const CwDrawnLines *lines, double x, double y,
                        double mm_per_point)
{
  const double width = WIDTH_MOST / mm_per_point;
  const double height = HEIGHT_MOST / mm_per_point;
  CwDrawnShapes *found = g_new0 (CwDrawnShapes, 1);
  g_autoptr (CwDrawnRuns) runs = NULL;
  g_autoptr (GArray) lefts = NULL;
  g_autoptr (GArray) rights = NULL;
  g_autoptr (GArray) shapes
      = g_array_new (FALSE, FALSE, sizeof (CwDrawnShape));

  g_return_val_if_fail (lines != NULL && mm_per_point > 0, NULL);

  runs = cw_drawn_runs_new (lines, x - width, y - height, x + width,
                            y + height);
  lefts = jambs_beside (runs, x, y, -1);
  rights = jambs_beside (runs, x, y, 1);
  const Search search
      = { lines, runs, LEAST / mm_per_point, width, height };
  for (guint i = 0; i < lefts->len; i++)
    for (guint j = 0; j < rights->len; j++)
      {
        CwDrawnShape shape;

        if (is_frame (&search, &g_array_index (lefts, CwDrawnRun, i),
                      &g_array_index (rights, CwDrawnRun, j), &shape))
          g_array_append_val (shapes, shape);
      }
  found->shapes = nested_of (shapes);
  found->likely = likely_of (found->shapes, mm_per_point);
  return found;
}

void
cw_drawn_shapes_free (CwDrawnShapes *found)
{
  g_array_unref (found->shapes);
  g_free (found);
}

static gboolean
is_alike (const CwDrawnShape *one, const CwDrawnShape *other)
{
  const double reach = 2 * CW_DRAWN_REACH;

  return one->head == other->head && one->is_cornered == other->is_cornered
         && fabs ((one->right - one->left) - (other->right - other->left))
                <= reach
         && fabs ((one->bottom - one->top) - (other->bottom - other->top))
                <= reach
         && fabs ((one->bottom - one->springing)
                  - (other->bottom - other->springing))
                <= reach;
}

static gboolean
is_over_any (const GArray *shapes, const CwDrawnShape *shape)
{
  for (guint i = 0; i < shapes->len; i++)
    {
      const CwDrawnShape *other = &g_array_index (shapes, CwDrawnShape, i);

      if (shape->left < other->right - CW_DRAWN_REACH
          && shape->right > other->left + CW_DRAWN_REACH
          && shape->top < other->bottom - CW_DRAWN_REACH
          && shape->bottom > other->top + CW_DRAWN_REACH)
        return TRUE;
    }
  return FALSE;
}

/* All that have @left for their left jamb. */
static void
add_alike (const Search *search, const CwDrawnShape *model,
           const CwDrawnRun *left, GArray *alike)
{
  const GArray *upright = search->runs->upright;
  const double at = left->at + (model->right - model->left);
  const double reach = 2 * CW_DRAWN_REACH;

  for (guint i = first_from (upright, at - reach); i < upright->len; i++)
    {
      const CwDrawnRun *right = &g_array_index (upright, CwDrawnRun, i);
      CwDrawnShape shape;

      if (right->at > at + reach)
        break;
      if (is_frame (search, left, right, &shape) && is_alike (&shape, model)
          && !is_over_any (alike, &shape))
        g_array_append_val (alike, shape);
    }
}

GArray *
cw_drawn_shapes_alike (const CwDrawnLines *lines, const CwDrawnShape *shape,
                       double left, double top, double right, double bottom)
{
  GArray *alike = g_array_new (FALSE, FALSE, sizeof (CwDrawnShape));
  g_autoptr (CwDrawnRuns) runs = NULL;

  g_return_val_if_fail (lines != NULL && shape != NULL, alike);

  runs = cw_drawn_runs_new (lines, left, top, right, bottom);
  const Search search = { lines, runs, 0, G_MAXDOUBLE, G_MAXDOUBLE };
  for (guint i = 0; i < runs->upright->len; i++)
    {
      const CwDrawnRun *run = &g_array_index (runs->upright, CwDrawnRun, i);

      if (fabs ((run->end - run->begin) - (shape->bottom - shape->springing))
          <= 2 * CW_DRAWN_REACH)
        add_alike (&search, shape, run, alike);
    }
  return alike;
}

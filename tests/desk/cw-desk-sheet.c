/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "cw-desk-sheet.h"

/* How far the found area's shape may be off the page's: anti-aliasing takes
 * a pixel here and there. */
#define SHAPE_TOLERANCE 0.01

/* Shorter white stretches are not looked at, pixels. */
#define RUN_LEAST 200

/* How often, and how long apart, the page is looked for. */
#define LOOKS 20
#define LOOK_PAUSE_US 500000

/* White lines of the same place and length: perhaps a page's margins. */
typedef struct
{
  int first, length;
  int top, bottom;
} Area;

static gboolean
is_white (cairo_surface_t *screen, int x, int y)
{
  const guint32 *pixels = (const guint32 *)(gconstpointer)
      cairo_image_surface_get_data (screen);
  const int row = cairo_image_surface_get_stride (screen) / 4;
  return (pixels[y * row + x] & 0xffffff) == 0xffffff;
}

static void
add_run (GArray *areas, int first, int length, int y)
{
  for (guint i = 0; i < areas->len; i++)
    {
      Area *area = &g_array_index (areas, Area, i);
      if (area->first == first && area->length == length)
        {
          area->bottom = y + 1;
          return;
        }
    }
  const Area area = { first, length, y, y + 1 };
  g_array_append_val (areas, area);
}

static void
add_runs_of_line (GArray *areas, cairo_surface_t *screen, int y)
{
  const int width = cairo_image_surface_get_width (screen);
  int first = 0;
  for (int x = 0; x <= width; x++)
    {
      if (x < width && is_white (screen, x, y))
        continue;
      if (x - first >= RUN_LEAST)
        add_run (areas, first, x - first, y);
      first = x + 1;
    }
}

/* The page's margins run from its left to its right edge; the first and the
 * last of them are its top and its bottom. */
static const Area *
largest_of_shape (const GArray *areas, double shape)
{
  const Area *best = NULL;
  for (guint i = 0; i < areas->len; i++)
    {
      const Area *area = &g_array_index (areas, Area, i);
      const double found = area->length / (double)(area->bottom - area->top);
      if (fabs (found / shape - 1) <= SHAPE_TOLERANCE
          && (best == NULL || area->length > best->length))
        best = area;
    }
  return best;
}

static gboolean
look_for_sheet (CwDesk *desk, double shape, Area *found)
{
  g_autoptr (GArray) areas = g_array_new (FALSE, FALSE, sizeof (Area));
  cairo_surface_t *screen = cw_desk_look (desk);
  const int height = cairo_image_surface_get_height (screen);
  for (int y = 0; y < height; y++)
    add_runs_of_line (areas, screen, y);
  cairo_surface_destroy (screen);

  const Area *page = largest_of_shape (areas, shape);
  if (page)
    *found = *page;
  return page != NULL;
}

/* On a busy machine the page may be slow to come. */
CwSheetPlace
cw_desk_find_sheet (CwDesk *desk, double page_width, double page_height)
{
  Area page;
  for (int i = 0; i < LOOKS; i++)
    {
      if (look_for_sheet (desk, page_width / page_height, &page))
        return (CwSheetPlace){ page.first, page.top,
                               page.length / page_width };
      g_usleep (LOOK_PAUSE_US);
    }
  cw_desk_keep_picture (desk, "no-sheet");
  g_error ("no white area of the page's shape is on the screen");
}

void
cw_desk_click_on_sheet (CwDesk *desk, const CwSheetPlace *sheet, double x,
                        double y)
{
  cw_desk_click (desk, sheet->x + x * sheet->scale,
                 sheet->y + y * sheet->scale);
}

void
cw_desk_point_on_sheet (CwDesk *desk, const CwSheetPlace *sheet, double x,
                        double y)
{
  cw_desk_move (desk, sheet->x + x * sheet->scale,
                sheet->y + y * sheet->scale);
}

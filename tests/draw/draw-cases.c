/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw-cases.h"

#include <math.h>

#include "cw-palette.h"

static CwNode *
gable_outline (CwLength width, CwLength height, CwLength rise)
{
  const CwCorner corners[]
      = { { { 0, 0 }, 0, CW_EDGE_BASE },
          { { width, 0 }, 0, CW_EDGE_OUTSIDE_CORNER },
          { { width, height }, 0, CW_EDGE_RAKE },
          { { width / 2, height + rise }, 0, CW_EDGE_RAKE },
          { { 0, height }, 0, CW_EDGE_OUTSIDE_CORNER } };
  g_autoptr (CwList) list
      = cw_corners_to_list (corners, G_N_ELEMENTS (corners));
  CwNode *outline = cw_node_new (&cw_outline_type);

  cw_node_set_list (outline, CW_OUTLINE_CORNERS, list);
  return outline;
}

CwTakeoff *
draw_case_gable (const char *wall, double rise)
{
  g_autoptr (CwProject) plain = case_project (wall, "");
  const CwNode *box = cw_list_at (plain->elevations, 0);
  g_auto (GStrv) size = g_strsplit_set (wall, "x ", 3);
  g_autoptr (CwNode) outline = gable_outline (
      (CwLength) rint (g_ascii_strtod (size[0], NULL) * 1e9),
      (CwLength) rint (g_ascii_strtod (size[1], NULL) * 1e9),
      (CwLength) rint (rise * 1e9));
  g_autoptr (CwNode) gable = cw_node_copy (box);
  g_autoptr (CwNode) project = NULL;

  cw_node_set_child (gable, CW_ELEVATION_OUTLINE, outline);
  project = cw_node_replace (&plain->node, box, gable);
  return cw_takeoff_new ((CwProject *) project, NULL, NULL);
}

CwTakeoff *
draw_case_house (void)
{
  return draw_case_gable (
      "9x2.7 window:1.2x1.4@0.9,0.9 door:0.9x2.1@4,0 "
      "arch:1.5x1.2+0.3:segmental@6,0.9 window:0.8x0.8@4.1,3 "
      "stub:0.06@7.8,0.45 stub:0.15@3.2,1.9 unclad:2.5x0.45@0,0 "
      "band:9x0.15x0.025",
      1.8);
}

const CwWallTakeoff *
draw_case_wall (const CwTakeoff *takeoff)
{
  return takeoff->walls->pdata[0];
}

cairo_surface_t *
draw_case_picture (const CwDisplayList *list, CwPalette palette, double scale,
                   int width, int height, double left, double up)
{
  cairo_surface_t *picture
      = cairo_image_surface_create (CAIRO_FORMAT_RGB24, width, height);
  cairo_t *cr = cairo_create (picture);
  const CwColour paper = cw_tone (palette, CW_TONE_PAPER);
  const CwPaint paint
      = { .scale = scale, .x = left, .y = height - up, .palette = palette };

  cairo_set_source_rgb (cr, paper.red, paper.green, paper.blue);
  cairo_paint (cr);
  cw_paint (cr, list, &paint);
  g_assert_cmpint (cairo_status (cr), ==, CAIRO_STATUS_SUCCESS);
  cairo_destroy (cr);
  cairo_surface_flush (picture);
  return picture;
}

guint32
draw_case_pixel (cairo_surface_t *picture, int x, int y)
{
  const guint8 *row
      = cairo_image_surface_get_data (picture)
        + (gsize) y * (gsize) cairo_image_surface_get_stride (picture);

  return ((const guint32 *) (gconstpointer) row)[x] & 0xffffff;
}

guint
draw_case_n_colours (cairo_surface_t *picture, int x, int y, int width,
                     int height)
{
  g_autoptr (GHashTable) colours = g_hash_table_new (NULL, NULL);

  for (int j = y; j < y + height; j++)
    for (int i = x; i < x + width; i++)
      g_hash_table_add (colours,
                        GUINT_TO_POINTER (draw_case_pixel (picture, i, j)));
  return g_hash_table_size (colours);
}

guint32
draw_case_colour (const CwColour *colour)
{
  return (guint32) rint (colour->red * 255) << 16
         | (guint32) rint (colour->green * 255) << 8
         | (guint32) rint (colour->blue * 255);
}

gboolean
draw_case_ink (const CwDisplayList *list, const CwPaint *paint, double *width,
               double *height)
{
  cairo_surface_t *sheet
      = cairo_recording_surface_create (CAIRO_CONTENT_COLOR_ALPHA, NULL);
  cairo_t *cr = cairo_create (sheet);
  double x, y, ink_width, ink_height;

  cw_paint (cr, list, paint);
  cairo_destroy (cr);
  cairo_recording_surface_ink_extents (sheet, &x, &y, &ink_width,
                                       &ink_height);
  cairo_surface_destroy (sheet);
  if (width)
    *width = ink_width;
  if (height)
    *height = ink_height;
  return ink_width > 0 && ink_height > 0;
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Draws the demo's plan sheet: the elevations of a project as an architect
 * would issue them, on one page, in vectors. The drawn house and the project
 * agree, so that tracing the sheet must give the project's figures.
 *
 *   draw-sheet PROJECT OUT.pdf
 */
#include <cairo-pdf.h>
#include <math.h>

#include "cw-project-file.h"
#include "cw-wall.h"

/* ANSI B, landscape (reference I-13: 11 × 17 in; published). */
#define PAGE_WIDTH 1224.0
#define PAGE_HEIGHT 792.0

typedef struct
{
  cairo_t *cr;
  const CwProject *project;
  const CwElevation *elevation;
  double x, y;           /* page point of the elevation's origin */
  double mm_per_point;
} Sheet;

static double
to_page (const Sheet *sheet, double nm)
{
  return nm / CW_NM_PER_MM / sheet->mm_per_point;
}

static double
page_x (const Sheet *sheet, double nm)
{
  return sheet->x + to_page (sheet, nm);
}

static double
page_y (const Sheet *sheet, double nm)
{
  return sheet->y - to_page (sheet, nm);
}

static void
pen (const Sheet *sheet, double width)
{
  cairo_set_source_rgb (sheet->cr, 0.08, 0.08, 0.08);
  cairo_set_line_width (sheet->cr, width);
}

static void
text_at (const Sheet *sheet, double x, double y, double size, gboolean centred,
         const char *text)
{
  cairo_text_extents_t extents;
  cairo_select_font_face (sheet->cr, "DejaVu Sans", CAIRO_FONT_SLANT_NORMAL,
                          CAIRO_FONT_WEIGHT_NORMAL);
  cairo_set_font_size (sheet->cr, size);
  cairo_text_extents (sheet->cr, text, &extents);
  cairo_move_to (sheet->cr, centred ? x - extents.x_advance / 2 : x, y);
  cairo_show_text (sheet->cr, text);
}

/* The curve of an arc side in page space: y runs down there, so the scale of
 * the ellipse is mirrored and the angles keep their meaning. */
static void
trace_arc (const Sheet *sheet, const CwSide *side)
{
  cairo_save (sheet->cr);
  cairo_translate (sheet->cr, page_x (sheet, side->cx),
                   page_y (sheet, side->cy));
  cairo_scale (sheet->cr, to_page (sheet, side->rx),
               -to_page (sheet, side->ry));
  if (side->to > side->from)
    cairo_arc (sheet->cr, 0, 0, 1, side->from, side->to);
  else
    cairo_arc_negative (sheet->cr, 0, 0, 1, side->from, side->to);
  cairo_restore (sheet->cr);
}

static void
trace_loop (const Sheet *sheet, const CwLoop *loop)
{
  for (gsize i = 0; i < loop->n_sides; i++)
    {
      const CwSide *side = &loop->sides[i];
      cairo_line_to (sheet->cr, page_x (sheet, side->start.x),
                     page_y (sheet, side->start.y));
      if (side->is_arc)
        trace_arc (sheet, side);
    }
  cairo_close_path (sheet->cr);
}

static void
stroke_region (const Sheet *sheet, const CwRegion *region, double width)
{
  pen (sheet, width);
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      CwLoop loop = cw_region_loop (region, i);
      cairo_new_sub_path (sheet->cr);
      trace_loop (sheet, &loop);
    }
  cairo_stroke (sheet->cr);
}

/* A frame of 2 in: at a window all round, at a door on three sides, at an
 * arch up to the springing. */
static void
draw_frame_lines (const Sheet *sheet, const CwOpening *size)
{
  const CwLength frame = CW_INCHES (2);
  const CwLength below = size->y > 0 ? frame : 0;
  const CwLength above = size->node.type == &cw_arch_type ? 0 : frame;
  pen (sheet, 0.35);
  cairo_rectangle (sheet->cr, page_x (sheet, size->x + frame),
                   page_y (sheet, size->y + size->height - above),
                   to_page (sheet, size->width - 2 * frame),
                   to_page (sheet, size->height - above - below));
  cairo_stroke (sheet->cr);
}

static void
draw_opening (const Sheet *sheet, const CwWallOpening *opening)
{
  const CwOpening *size = opening->opening;
  const CwBox box = cw_region_box (opening->shape);
  stroke_region (sheet, opening->shape, 0.9);
  draw_frame_lines (sheet, size);

  const CwMark *mark = cw_project_mark (sheet->project, size->mark);
  if (mark)
    text_at (sheet, page_x (sheet, (box.left + box.right) / 2.0),
             page_y (sheet, (box.bottom + box.top) / 2.0) + 3, 8, TRUE,
             mark->name);
}

static void
draw_band (const Sheet *sheet, const CwBand *band)
{
  pen (sheet, 0.5);
  cairo_rectangle (sheet->cr, page_x (sheet, band->x),
                   page_y (sheet, band->y + band->height),
                   to_page (sheet, band->width),
                   to_page (sheet, band->height));
  cairo_stroke (sheet->cr);
}

static void
draw_ground (const Sheet *sheet, const CwBox *box)
{
  pen (sheet, 1.4);
  cairo_move_to (sheet->cr, page_x (sheet, box->left) - 18, sheet->y + 0.7);
  cairo_line_to (sheet->cr, page_x (sheet, box->right) + 18, sheet->y + 0.7);
  cairo_stroke (sheet->cr);
}

static void
tick (const Sheet *sheet, double x, double y)
{
  cairo_move_to (sheet->cr, x - 2.5, y + 2.5);
  cairo_line_to (sheet->cr, x + 2.5, y - 2.5);
  cairo_stroke (sheet->cr);
}

static void
draw_width (const Sheet *sheet, const CwBox *box, const CwTextStyle *style)
{
  const double y = sheet->y + 20;
  g_autofree char *length
      = cw_length_format_dimension (cw_box_width (box), style);
  pen (sheet, 0.35);
  cairo_move_to (sheet->cr, page_x (sheet, box->left), y);
  cairo_line_to (sheet->cr, page_x (sheet, box->right), y);
  cairo_stroke (sheet->cr);
  tick (sheet, page_x (sheet, box->left), y);
  tick (sheet, page_x (sheet, box->right), y);
  text_at (sheet, page_x (sheet, (box->left + box->right) / 2.0), y - 3, 7,
           TRUE, length);
}

static void
draw_height (const Sheet *sheet, const CwBox *box, const CwTextStyle *style)
{
  const double x = page_x (sheet, box->left) - 28;
  g_autofree char *length
      = cw_length_format_dimension (cw_box_height (box), style);
  pen (sheet, 0.35);
  cairo_move_to (sheet->cr, x, sheet->y);
  cairo_line_to (sheet->cr, x, page_y (sheet, box->top));
  cairo_stroke (sheet->cr);
  tick (sheet, x, sheet->y);
  tick (sheet, x, page_y (sheet, box->top));
  cairo_save (sheet->cr);
  cairo_translate (sheet->cr, x - 3,
                   page_y (sheet, (box->bottom + box->top) / 2.0));
  cairo_rotate (sheet->cr, -G_PI / 2);
  text_at (sheet, 0, 0, 7, TRUE, length);
  cairo_restore (sheet->cr);
}

static void
draw_title (const Sheet *sheet, const CwBox *box)
{
  const double x = page_x (sheet, (box->left + box->right) / 2.0);
  g_autofree char *title = g_ascii_strup (sheet->elevation->name, -1);
  g_autofree char *full = g_strdup_printf ("%s ELEVATION", title);
  text_at (sheet, x, sheet->y + 40, 11, TRUE, full);
  text_at (sheet, x, sheet->y + 52, 7, TRUE, "SCALE: 1/4\" = 1'-0\"");
}

static void
draw_elevation (Sheet *sheet)
{
  const CwTextStyle style = cw_text_style_plain (sheet->project->units);
  g_autoptr (CwWall) wall = cw_wall_new (sheet->project, sheet->elevation);
  const CwBox box = cw_region_box (wall->outline);

  sheet->x = cw_decimal_to_double (sheet->elevation->at_x);
  sheet->y = cw_decimal_to_double (sheet->elevation->at_y);
  stroke_region (sheet, wall->outline, 1.0);
  if (!cw_region_is_empty (wall->unclad))
    stroke_region (sheet, wall->unclad, 0.6);
  for (guint i = 0; i < wall->openings->len; i++)
    draw_opening (sheet, &g_array_index (wall->openings, CwWallOpening, i));
  for (guint i = 0; i < wall->stub_outs->len; i++)
    {
      g_autoptr (CwRegion) hole
          = cw_stub_out_shape (wall->stub_outs->pdata[i], FALSE);
      stroke_region (sheet, hole, 0.5);
    }
  for (guint i = 0; i < wall->bands->len; i++)
    draw_band (sheet, wall->bands->pdata[i]);
  draw_ground (sheet, &box);
  draw_width (sheet, &box, &style);
  draw_height (sheet, &box, &style);
  draw_title (sheet, &box);
}

static void
draw_title_block (const Sheet *sheet)
{
  const CwInfo *info = (const CwInfo *)sheet->project->info;
  pen (sheet, 1.2);
  cairo_rectangle (sheet->cr, 24, 24, PAGE_WIDTH - 48, PAGE_HEIGHT - 48);
  cairo_stroke (sheet->cr);
  text_at (sheet, 36, 46, 12, FALSE, info->name);
  text_at (sheet, 36, 60, 8, FALSE, info->address);
  text_at (sheet, 36, 74, 8, FALSE, "A-201  EXTERIOR ELEVATIONS");
}

/* One line of the schedule: mark, width × height, and the rise of an arch. */
static void
draw_mark (const Sheet *sheet, const CwMark *mark, double x, double y,
           const CwTextStyle *style)
{
  g_autofree char *width = cw_length_format_dimension (mark->width, style);
  g_autofree char *height = cw_length_format_dimension (mark->height, style);
  g_autofree char *rise = cw_length_format_dimension (mark->rise, style);
  g_autofree char *size = g_strdup_printf ("%s × %s", width, height);
  text_at (sheet, x, y, 7, FALSE, mark->name);
  text_at (sheet, x + 24, y, 7, FALSE, size);
  if (mark->kind == CW_OPENING_ARCH)
    text_at (sheet, x + 130, y, 7, FALSE, "TO SPRINGING, RISE");
  if (mark->kind == CW_OPENING_ARCH)
    text_at (sheet, x + 212, y, 7, FALSE, rise);
}

static void
draw_schedule (const Sheet *sheet)
{
  const CwTextStyle style = cw_text_style_plain (sheet->project->units);
  const double x = 300, y = 46;
  text_at (sheet, x, y, 8, FALSE, "OPENINGS, WIDTH × HEIGHT");
  for (gsize i = 0; i < cw_list_length (sheet->project->marks); i++)
    draw_mark (sheet, cw_list_at (sheet->project->marks, i), x,
               y + 13 + 11 * (double)i, &style);
}

static gboolean
draw_sheet (const CwProject *project, const char *file)
{
  cairo_surface_t *surface
      = cairo_pdf_surface_create (file, PAGE_WIDTH, PAGE_HEIGHT);
  Sheet sheet = { .cr = cairo_create (surface), .project = project };
  const CwSheet *page = cw_list_at (project->sheets, 0);
  const CwScale *scale = (const CwScale *)page->scale;

  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_TITLE,
                                  page->name);
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_CREATE_DATE,
                                  "2026-11-25T00:00:00");
  sheet.mm_per_point = cw_decimal_to_double (scale->across);
  draw_title_block (&sheet);
  draw_schedule (&sheet);
  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    {
      sheet.elevation = cw_list_at (project->elevations, i);
      draw_elevation (&sheet);
    }
  cairo_destroy (sheet.cr);
  cairo_surface_finish (surface);
  const gboolean drawn
      = cairo_surface_status (surface) == CAIRO_STATUS_SUCCESS;
  cairo_surface_destroy (surface);
  return drawn;
}

int
main (int argc, char *argv[])
{
  g_autoptr (GError) error = NULL;
  if (argc != 3)
    {
      g_printerr ("Usage: draw-sheet PROJECT OUT.pdf\n");
      return 2;
    }
  g_autoptr (GFile) file = g_file_new_for_commandline_arg (argv[1]);
  CwProject *project = cw_project_load (file, NULL, &error);
  if (!project)
    {
      g_printerr ("%s: %s\n", argv[1], error->message);
      return 1;
    }
  const gboolean drawn = draw_sheet (project, argv[2]);
  cw_node_unref (project);
  if (!drawn)
    g_printerr ("%s could not be written\n", argv[2]);
  return drawn ? 0 : 1;
}

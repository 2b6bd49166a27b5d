/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An elevation: its drawing to a named scale, then what stands on it.
 */
#include "cw-display-items.h"
#include "cw-elevation-drawing.h"
#include "cw-i18n.h"
#include "cw-painter.h"
#include "cw-takeoff-papers.h"

#define POINTS_PER_MM (72 / 25.4)

/* Room round the wall for dimension chains and for the lines of levels; the
 * figures of levels come to it by their width. */
#define ROOM_LEFT 56.0
#define ROOM_BOTTOM 56.0
#define ROOM_RIGHT 40.0
#define ROOM_TOP 12.0

/* What stands above and below the drawing on its page, beside the heading: a
 * line of figures, the scale bar and the legend. */
#define ROOM_FIGURES 44.0
#define ROOM_BELOW 76.0

#define MOST_HEADING_LINES 4
#define MOST_BACKGROUND_LINES 2

/* Points: what cannot be written so large is in the tables. */
#define LEAST_TEXT 8.0

typedef struct
{
  gboolean is_turned;
  double ratio;
  const char *label;
  double width, height;     /* of the wall, mm */
  double room_right;
} Fit;

static char *
heading (const CwElevation *elevation)
{
  const char *name = cw_papers_name (elevation);
  if (elevation->count == 1)
    return g_strdup (name);
  return g_strdup_printf (
      g_dngettext (GETTEXT_PACKAGE, "%s, %" G_GINT64_FORMAT " such wall",
                   "%s, %" G_GINT64_FORMAT " such walls",
                   (gulong) elevation->count),
      name, elevation->count);
}

static PangoLayout *
heading_layout (const CwPapers *papers, const CwElevation *elevation,
                double width)
{
  g_autofree char *text = heading (elevation);
  PangoLayout *layout = cw_page_layout (papers->pages, CW_TYPE_HEADING, text,
                                        width, CW_ALIGN_LEFT);
  pango_layout_set_height (layout, -MOST_HEADING_LINES);
  pango_layout_set_ellipsize (layout, PANGO_ELLIPSIZE_END);
  return layout;
}

/* The widest figure of a level. All levels are asked for: at the scale that
 * is chosen some may be left out. */
static double
level_width (const CwPapers *papers, const CwWallTakeoff *wall)
{
  g_autoptr (CwDisplayList) list = cw_elevation_drawing (
      wall, CW_LAYER_LEVELS, &papers->options->style, 1e-6);
  double most = 0;
  for (gsize i = 0; i < cw_display_list_length (list); i++)
    {
      const CwDisplayItem *item = cw_display_list_item (list, i);
      int width;
      if (item->kind != CW_SHAPE_OP_TEXT)
        continue;
      g_autoptr (PangoLayout) layout = cw_page_layout (
          papers->pages, CW_TYPE_SMALL,
          cw_display_list_string (list,
                                  cw_display_list_text (list, item)->text),
          -1, CW_ALIGN_LEFT);
      pango_layout_get_size (layout, &width, NULL);
      most = MAX (most, (double) width / PANGO_SCALE);
    }
  return most;
}

static double
fit_on (const CwPapers *papers, const CwElevation *elevation, const Fit *fit,
        gboolean is_turned, const char **label)
{
  const CwPages *pages = papers->pages;
  const double across = is_turned ? pages->paper_height : pages->paper_width;
  const double up = is_turned ? pages->paper_width : pages->paper_height;
  const double body = across - 2 * CW_PAGE_MARGIN;
  const double width = body - ROOM_LEFT - fit->room_right;
  g_autoptr (PangoLayout) title = heading_layout (papers, elevation, body);
  const double height = up - 2 * CW_PAGE_MARGIN - CW_PAGE_HEAD - CW_PAGE_FOOT
                        - cw_page_layout_height (title) - ROOM_FIGURES
                        - ROOM_BELOW - ROOM_TOP - ROOM_BOTTOM;
  return cw_named_scale_that_fits (papers->options->style.units, fit->width,
                                   fit->height, width, height, label);
}

/* Upright unless the wall can be drawn larger on a page on its side. */
static Fit
fit_wall (const CwPapers *papers, const CwWallTakeoff *wall, const CwBox *box)
{
  const char *turned_label;
  Fit fit = { .width = (double) cw_box_width (box) / CW_NM_PER_MM,
              .height = (double) cw_box_height (box) / CW_NM_PER_MM,
              .room_right = ROOM_RIGHT + level_width (papers, wall) };
  const CwElevation *elevation = wall->wall->elevation;
  fit.ratio = fit_on (papers, elevation, &fit, FALSE, &fit.label);
  const double turned
      = fit_on (papers, elevation, &fit, TRUE, &turned_label);
  if (turned < fit.ratio)
    {
      fit.is_turned = TRUE;
      fit.ratio = turned;
      fit.label = turned_label;
    }
  return fit;
}

static void
add_drawing (const CwPapers *papers, const CwWallTakeoff *wall,
             const CwBox *box, const Fit *fit)
{
  CwPages *pages = papers->pages;
  const double scale = POINTS_PER_MM / fit->ratio;
  const double spare
      = pages->width - ROOM_LEFT - fit->room_right
        - fit->width * scale;
  const double left = pages->left + ROOM_LEFT + MAX (0, spare / 2);
  const double base = pages->y + ROOM_TOP + fit->height * scale;
  const CwPaint paint
      = { .scale = scale,
          .x = left - (double) box->left / CW_NM_PER_MM * scale,
          .y = base + (double) box->bottom / CW_NM_PER_MM * scale,
          .palette = CW_PALETTE_PAPER,
          .text_scale = 1,
          .least_text = LEAST_TEXT };
  if (!pages->is_trial)
    {
      g_autoptr (CwDisplayList) list = cw_elevation_drawing (
          wall, CW_LAYER_ALL, &papers->options->style, 1 / scale);
      cw_paint (pages->cr, list, &paint);
    }
  pages->y = base + ROOM_BOTTOM;
}

static void
append_amount (const CwPapers *papers, GString *text,
               const CwWallTakeoff *wall, const char *key)
{
  const CwQuantity *quantity = cw_takeoff_quantity (
      papers->takeoff, wall->wall->elevation->id, key);
  if (!quantity)
    return;
  g_autofree char *amount = cw_papers_amount (papers, quantity->amount,
                                              quantity->unit);
  g_string_append_printf (text, "%s%s %s", text->len ? "   ·   " : "",
                          _(quantity->type->label), amount);
}

/* "Gross wall area 287.5 ft²   ·   Area of openings …" */
static void
add_figures (const CwPapers *papers, const CwWallTakeoff *wall)
{
  static const char *const keys[]
      = { "wall.gross", "opening.area", "unclad.area", "wall.net" };
  g_autoptr (GString) text = g_string_new (NULL);
  for (guint i = 0; i < G_N_ELEMENTS (keys); i++)
    append_amount (papers, text, wall, keys[i]);
  cw_page_add_text (papers->pages, CW_TYPE_BODY, text->str);
}

static void
append_part (GString *text, const char *part)
{
  if (part && *part)
    g_string_append_printf (text, "%s%s", text->len ? "   ·   " : "", part);
}

/* What the wall is clad with, and where it was drawn from. */
static void
add_background (const CwPapers *papers, const CwWall *wall)
{
  const CwElevation *elevation = wall->elevation;
  const CwSheet *sheet
      = cw_project_sheet (papers->takeoff->project, elevation->sheet);
  const CwPanel *panel
      = wall->buildup ? cw_list_at (wall->buildup->panels, 0) : NULL;
  g_autoptr (GString) text = g_string_new (NULL);
  append_part (text, wall->buildup ? wall->buildup->name
                                   : _("No buildup is chosen"));
  append_part (text, panel ? panel->name : NULL);
  append_part (text, sheet ? sheet->name : NULL);
  g_autoptr (PangoLayout) layout
      = cw_page_layout (papers->pages, CW_TYPE_SMALL, text->str,
                        papers->pages->width, CW_ALIGN_LEFT);
  pango_layout_set_height (layout, -MOST_BACKGROUND_LINES);
  pango_layout_set_ellipsize (layout, PANGO_ELLIPSIZE_END);
  cw_page_show (papers->pages, CW_TYPE_SMALL, layout, papers->pages->left,
                papers->pages->y);
  papers->pages->y += cw_page_layout_height (layout) + CW_PAGE_STEP;
}

static void
begin (const CwPapers *papers, const CwElevation *elevation,
       gboolean is_turned)
{
  CwPages *pages = papers->pages;
  g_autofree char *section
      = g_strdup_printf (_("Elevation %s"), cw_papers_name (elevation));
  cw_pages_begin (pages, section, elevation->id, is_turned);
  g_autoptr (PangoLayout) title
      = heading_layout (papers, elevation, pages->width);
  cw_page_show (pages, CW_TYPE_HEADING, title, pages->left, pages->y);
  pages->y += cw_page_layout_height (title) + CW_PAGE_STEP / 2;
}

/* Short tables may stand under a drawing on its side; long ones read better
 * upright. */
static void
add_tables (const CwPapers *papers, const CwWallTakeoff *wall)
{
  cw_papers_add_wall_openings (papers, wall->wall);
  cw_papers_add_stub_outs (papers, wall->wall);
  if (papers->pages->is_turned)
    cw_pages_continue (papers->pages);
  cw_papers_add_wall_quantities (papers, wall);
  cw_papers_add_pieces (papers, wall->layout);
}

void
cw_papers_add_elevation (const CwPapers *papers, const CwWallTakeoff *wall)
{
  const CwElevation *elevation = wall->wall->elevation;
  if (!wall->wall->outline)
    {
      begin (papers, elevation, FALSE);
      cw_page_add_text (papers->pages, CW_TYPE_BODY,
                        _("This elevation has no outline yet: nothing of it "
                          "is in the quantities."));
      return;
    }
  const CwBox box = cw_region_box (wall->wall->outline);
  const Fit fit = fit_wall (papers, wall, &box);
  begin (papers, elevation, fit.is_turned);
  add_figures (papers, wall);
  add_background (papers, wall->wall);
  add_drawing (papers, wall, &box, &fit);
  cw_papers_add_scale_bar (papers, POINTS_PER_MM / fit.ratio, fit.label);
  cw_papers_add_legend (papers, wall);
  add_tables (papers, wall);
}

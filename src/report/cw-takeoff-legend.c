/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The scale bar and the legend under a drawing.
 */
#include <math.h>

#include "cw-i18n.h"
#include "cw-painter.h"
#include "cw-takeoff-papers.h"

#define N_FIELDS 4
#define BAR_MOST 190.0        /* points */
#define BAR_HEIGHT 5.0
#define SWATCH_WIDTH 22.0
#define SWATCH_HEIGHT 10.0

/* The largest of 1, 2, 5 × 10ⁿ units of which four fit into the bar. */
static double
field_units (double points_per_unit)
{
  static const double steps[] = { 5, 2, 1 };
  const double most = BAR_MOST / N_FIELDS / points_per_unit;
  const double power = pow (10, floor (log10 (most)));
  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    if (steps[i] * power <= most * (1 + 1e-9))
      return steps[i] * power;
  return power;
}

static void
bar_box (CwDisplayList *list, CwStyle style, double x, double width)
{
  cw_display_list_begin (list, style, NULL);
  cw_display_list_move_to (list, x, 0);
  cw_display_list_line_to (list, x + width, 0);
  cw_display_list_line_to (list, x + width, BAR_HEIGHT);
  cw_display_list_line_to (list, x, BAR_HEIGHT);
  cw_display_list_close (list);
  cw_display_list_end (list);
}

static void
fill_field (const CwPages *pages, double x, double y, double width)
{
  if (pages->is_trial)
    return;
  cairo_rectangle (pages->cr, x, y, width, BAR_HEIGHT);
  cairo_fill (pages->cr);
}

static void
draw_bar (const CwPages *pages, double x, double y, double field)
{
  if (pages->is_trial)
    return;
  g_autoptr (CwDisplayList) list = cw_display_list_new ();
  const CwPaint paint = { .scale = 1, .x = x, .y = y + BAR_HEIGHT,
                          .palette = CW_PALETTE_PAPER, .text_scale = 1 };
  for (guint i = 0; i < N_FIELDS; i++)
    bar_box (list, CW_STYLE_OPENING, i * field, field);
  cw_paint (pages->cr, list, &paint);
  cairo_set_source_rgb (pages->cr, 0, 0, 0);
  for (guint i = 0; i < N_FIELDS; i += 2)
    fill_field (pages, x + i * field, y, field);
}

static void
show_mark (const CwPapers *papers, double x, double y, double units,
           guint decimals, const char *unit)
{
  g_autofree char *number
      = cw_text_style_number (&papers->options->style, units, decimals);
  g_autofree char *text
      = *unit ? g_strdup_printf ("%s %s", number, unit) : g_strdup (number);
  cw_page_show_line (papers->pages, CW_TYPE_SMALL, text, x - 30, y, 60,
                     CW_ALIGN_CENTRE);
}

void
cw_papers_add_scale_bar (const CwPapers *papers, double points_per_mm,
                         const char *label)
{
  CwPages *pages = papers->pages;
  const gboolean is_us = papers->options->style.units == CW_UNITS_US;
  const double per_unit = points_per_mm * (is_us ? 304.8 : 1000);
  const double units = field_units (per_unit);
  const guint decimals = units < 1 ? (guint) ceil (-log10 (units)) : 0;
  const double x = pages->left + 120;
  g_autofree char *scale = g_strdup_printf (_("Scale %s"), _(label));

  cw_page_show_line (pages, CW_TYPE_STRONG, scale, pages->left, pages->y, 110,
                     CW_ALIGN_LEFT);
  draw_bar (pages, x, pages->y + 3, units * per_unit);
  for (guint i = 0; i <= N_FIELDS; i++)
    show_mark (papers, x + i * units * per_unit, pages->y + 10, i * units,
               i ? decimals : 0,
               i < N_FIELDS ? "" : is_us ? "ft" : "m");
  pages->y += 5 * CW_PAGE_STEP;
}

typedef struct
{
  const CwPapers *papers;
  double x;
} Legend;

static void
draw_swatch (const CwPages *pages, CwStyle style, gboolean is_line, double x)
{
  g_autoptr (CwDisplayList) list = cw_display_list_new ();
  const CwPaint paint = { .scale = 1, .x = x, .y = pages->y + SWATCH_HEIGHT,
                          .palette = CW_PALETTE_PAPER, .text_scale = 1 };
  cw_display_list_begin (list, style, NULL);
  cw_display_list_move_to (list, 0, is_line ? SWATCH_HEIGHT / 2 : 0);
  cw_display_list_line_to (list, SWATCH_WIDTH,
                           is_line ? SWATCH_HEIGHT / 2 : 0);
  if (!is_line)
    {
      cw_display_list_line_to (list, SWATCH_WIDTH, SWATCH_HEIGHT);
      cw_display_list_line_to (list, 0, SWATCH_HEIGHT);
      cw_display_list_close (list);
    }
  cw_display_list_end (list);
  if (style == CW_STYLE_OPENING)
    cw_display_list_add_text_in (list, CW_STYLE_OPENING_MARK, NULL,
                                 SWATCH_WIDTH / 2, SWATCH_HEIGHT / 2, 0,
                                 SWATCH_WIDTH, SWATCH_HEIGHT, _("W1"));
  cairo_save (pages->cr);
  cairo_rectangle (pages->cr, x - 1, pages->y - 1, SWATCH_WIDTH + 2,
                   SWATCH_HEIGHT + 2);
  cairo_clip (pages->cr);
  cw_paint (pages->cr, list, &paint);
  cairo_restore (pages->cr);
}

/* @style of CW_N_STYLES: words alone, with the sign in them. */
static void
add_entry (Legend *legend, CwStyle style, gboolean is_line, const char *words)
{
  CwPages *pages = legend->papers->pages;
  const double swatch = style == CW_N_STYLES ? 0 : SWATCH_WIDTH + 5;
  int width;
  g_autoptr (PangoLayout) layout
      = cw_page_layout (pages, CW_TYPE_SMALL, words, -1, CW_ALIGN_LEFT);
  pango_layout_get_size (layout, &width, NULL);
  const double taken = swatch + (double) width / PANGO_SCALE;
  if (legend->x > pages->left && legend->x + taken > pages->left + pages->width)
    {
      legend->x = pages->left;
      pages->y += SWATCH_HEIGHT + CW_PAGE_STEP;
    }
  if (swatch > 0 && !pages->is_trial)
    draw_swatch (pages, style, is_line, legend->x);
  cw_page_show (pages, CW_TYPE_SMALL, layout, legend->x + swatch, pages->y);
  legend->x += taken + 3 * CW_PAGE_STEP;
}

static void
add_piece_entries (Legend *legend, const CwLayout *layout)
{
  static const struct
  {
    CwStyle style;
    const char *words;
  } kinds[] = {
    [CW_PIECE_WHOLE] = { CW_STYLE_PIECE_WHOLE, N_ ("Whole panel") },
    [CW_PIECE_RASPED] = { CW_STYLE_PIECE_RASPED, N_ ("Rasped panel") },
    [CW_PIECE_CUT] = { CW_STYLE_PIECE_CUT, N_ ("Cut piece") },
  };
  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    if (cw_layout_count (layout, i) > 0)
      add_entry (legend, kinds[i].style, FALSE, _(kinds[i].words));
  if (layout->pieces->len > 0)
    add_entry (legend, CW_N_STYLES, FALSE,
               _("3-2  Course 3, piece 2 from the start; W whole, R rasped, "
                 "C cut"));
}

void
cw_papers_add_legend (const CwPapers *papers, const CwWallTakeoff *wall)
{
  Legend legend = { papers, papers->pages->left };
  add_piece_entries (&legend, wall->layout);
  if (wall->wall->openings->len > 0)
    add_entry (&legend, CW_STYLE_OPENING, FALSE, _("Opening, with its mark"));
  if (wall->wall->unclads->len > 0)
    add_entry (&legend, CW_STYLE_UNCLAD, FALSE, _("Unclad area"));
  if (wall->wall->bands->len > 0)
    add_entry (&legend, CW_STYLE_BAND, FALSE, _("Band"));
  if (wall->layout->studs->len > 0)
    add_entry (&legend, CW_STYLE_STUD, TRUE, _("Stud"));
  add_entry (&legend, CW_STYLE_LEVEL, TRUE, _("Height above the base"));
  if (wall->wall->stub_outs->len > 0)
    add_entry (&legend, CW_N_STYLES, FALSE,
               _("Stub-out: P plumbing, E electrical, M mechanical, "
                 "O other"));
  papers->pages->y += SWATCH_HEIGHT + CW_PAGE_STEP;
}

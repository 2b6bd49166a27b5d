/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-elevation-drawing.h"

#include "cw-elevation-layers.h"
#include "cw-i18n.h"

static void
draw_wall (const CwLayerDrawing *drawing)
{
  const CwWall *wall = drawing->wall;
  cw_display_list_add_region (drawing->list, CW_STYLE_WALL,
                              wall->elevation->id, wall->net);
  for (guint i = 0; i < wall->unclads->len; i++)
    {
      const CwUnclad *unclad = g_ptr_array_index (wall->unclads, i);
      g_autoptr (CwRegion) shape = cw_unclad_shape (unclad);
      g_autoptr (CwRegion) within
          = cw_region_intersect (shape, wall->outline);
      cw_display_list_add_region (drawing->list, CW_STYLE_UNCLAD, unclad->id,
                                  within);
    }
}

static void
draw_bands (const CwLayerDrawing *drawing)
{
  for (guint i = 0; i < drawing->wall->bands->len; i++)
    {
      const CwBand *band = g_ptr_array_index (drawing->wall->bands, i);
      const CwBox box = { band->x, band->y, band->x + band->width,
                          band->y + band->height };
      cw_display_list_add_box (drawing->list, CW_STYLE_BAND, band->id, &box);
    }
}

static void
draw_studs (const CwLayerDrawing *drawing)
{
  const GArray *studs = drawing->layout->studs;
  for (guint i = 0; i < studs->len; i++)
    {
      const CwLength x = g_array_index (studs, CwLength, i);
      g_autoptr (GArray) spans
          = cw_region_spans (drawing->wall->outline, CW_AXIS_X, x);
      for (guint j = 0; j + 1 < spans->len; j += 2)
        cw_display_list_add_line (
            drawing->list, CW_STYLE_STUD, NULL,
            cw_point (x, g_array_index (spans, CwLength, j)),
            cw_point (x, g_array_index (spans, CwLength, j + 1)));
    }
}

/* A room that its own name may fill. */
static void
name_box (const CwLayerDrawing *drawing, CwStyle style, const char *id,
          const CwBox *box, const char *name)
{
  const double mm = CW_NM_PER_MM;
  cw_display_list_add_text_in (
      drawing->list, style, id,
      ((double) box->left + (double) box->right) / 2 / mm,
      ((double) box->bottom + (double) box->top) / 2 / mm, 0,
      0.9 * (double) cw_box_width (box) / mm,
      0.9 * (double) cw_box_height (box) / mm, name);
}

static void
draw_openings (const CwLayerDrawing *drawing)
{
  for (guint i = 0; i < drawing->wall->openings->len; i++)
    {
      const CwWallOpening *opening
          = &g_array_index (drawing->wall->openings, CwWallOpening, i);
      const CwBox box = cw_region_box (opening->shape);
      const char *id = opening->opening->id;
      cw_display_list_add_region (drawing->list, CW_STYLE_OPENING, id,
                                  opening->shape);
      name_box (drawing, CW_STYLE_OPENING_MARK, id, &box,
                opening->mark ? opening->mark->name : id);
    }
}

static const char *
trade_letter (gint64 trade)
{
  static const char *const letters[] = {
    [CW_TRADE_PLUMBING] = NC_ ("trade letter", "P"),
    [CW_TRADE_ELECTRICAL] = NC_ ("trade letter", "E"),
    [CW_TRADE_MECHANICAL] = NC_ ("trade letter", "M"),
    [CW_TRADE_OTHER] = NC_ ("trade letter", "O"),
  };
  return g_dpgettext2 (GETTEXT_PACKAGE, "trade letter", letters[trade]);
}

/* The letter stands beside the hole, which is mostly too small for it. */
static void
draw_stub_outs (const CwLayerDrawing *drawing)
{
  for (guint i = 0; i < drawing->wall->stub_outs->len; i++)
    {
      const CwStubOut *stub_out
          = g_ptr_array_index (drawing->wall->stub_outs, i);
      g_autoptr (CwRegion) shape = cw_stub_out_shape (stub_out, FALSE);
      const CwBox box = cw_region_box (shape);
      cw_display_list_add_region (drawing->list, CW_STYLE_STUB_OUT,
                                  stub_out->id, shape);
      cw_display_list_add_text (
          drawing->list, CW_STYLE_PIECE_NUMBER, stub_out->id,
          (double) box.right / CW_NM_PER_MM + 3 * drawing->mm_per_unit,
          (double) stub_out->y / CW_NM_PER_MM, 0, CW_ANCHOR_LEFT,
          trade_letter (stub_out->trade));
    }
}

static void
draw_outline (const CwLayerDrawing *drawing)
{
  cw_display_list_add_region (drawing->list, CW_STYLE_OUTLINE,
                              drawing->wall->elevation->id,
                              drawing->wall->outline);
}

static const struct
{
  CwLayers layer;
  void (*draw) (const CwLayerDrawing *drawing);
} layers_in_order[] = {
  { CW_LAYER_WALL, draw_wall },
  { CW_LAYER_PANELS, cw_draw_panels },
  { CW_LAYER_BARRIER, cw_draw_barrier },
  { CW_LAYER_BANDS, draw_bands },
  { CW_LAYER_STUDS, draw_studs },
  { CW_LAYER_OPENINGS, draw_openings },
  { CW_LAYER_MESH, cw_draw_mesh },
  { CW_LAYER_NUMBERS, cw_draw_numbers },
  { CW_LAYER_STUB_OUTS, draw_stub_outs },
  { CW_LAYER_WALL, draw_outline },
  { CW_LAYER_DIMENSIONS, cw_draw_dimensions },
  { CW_LAYER_DIMENSIONS, cw_draw_drawn_dimensions },
  { CW_LAYER_LEVELS, cw_draw_levels },
};

CwDisplayList *
cw_elevation_drawing (const CwWallTakeoff *takeoff, CwLayers layers,
                      const CwTextStyle *style, double mm_per_unit)
{
  CwDisplayList *list = cw_display_list_new ();
  const CwLayerDrawing drawing
      = { list, takeoff, takeoff->wall, takeoff->layout, style, mm_per_unit };
  if (!takeoff->wall->outline)
    return list;
  for (guint i = 0; i < G_N_ELEMENTS (layers_in_order); i++)
    if (layers & layers_in_order[i].layer)
      layers_in_order[i].draw (&drawing);
  return list;
}

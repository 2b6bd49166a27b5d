/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What lies under and over the panels: strips of the barrier, and the mesh.
 * Both are drawn from the traces of their quantities, so that what is seen is
 * what was counted.
 */
#include "cw-elevation-layers.h"
#include "cw-i18n.h"
#include "cw-trace.h"

/* A roll so narrow beside its wall is drawn without its laps. */
#define MOST_STRIPS 500

static GArray *
trace_of (const CwLayerDrawing *drawing, const char *key)
{
  return cw_wall_trace (drawing->takeoff, cw_quantity_type (key), NULL);
}

static void
name_strip (const CwLayerDrawing *drawing, const CwBox *box, guint number)
{
  /* Translators: strips of the barrier, counted from the base: B1, B2. */
  g_autofree char *name = g_strdup_printf (_("B%u"), number);
  const double mm = CW_NM_PER_MM;

  cw_display_list_add_text (
      drawing->list, CW_STYLE_BARRIER_LETTER, name,
      (double) box->left / mm + 3 * drawing->mm_per_unit,
      (double) (box->bottom + box->top) / 2 / mm, 0, CW_ANCHOR_LEFT, name);
}

/* Where two strips of neighbouring courses lie over one another. */
static void
draw_lap (const CwLayerDrawing *drawing, const CwBox *below,
          const CwBox *above)
{
  const CwBox lap = { MAX (below->left, above->left), above->bottom,
                      MIN (below->right, above->right), below->top };

  if (above->bottom > below->bottom && lap.left < lap.right
      && lap.bottom < lap.top)
    cw_display_list_add_box (drawing->list, CW_STYLE_BARRIER_LAP, NULL, &lap);
}

static void
draw_strip (const CwLayerDrawing *drawing, const GArray *boxes, guint index)
{
  const CwBox *box = &g_array_index (boxes, CwBox, index);

  cw_display_list_add_box (drawing->list, CW_STYLE_BARRIER, NULL, box);
  for (guint i = 0; i < index; i++)
    draw_lap (drawing, &g_array_index (boxes, CwBox, i), box);
}

/* Strips of one course share their bottom. */
static void
name_strips (const CwLayerDrawing *drawing, const GArray *boxes)
{
  guint course = 0;

  for (guint i = 0; i < boxes->len; i++)
    {
      const CwBox *box = &g_array_index (boxes, CwBox, i);

      if (i == 0 || box->bottom > box[-1].bottom)
        course++;
      name_strip (drawing, box, course);
    }
}

void
cw_draw_barrier (const CwLayerDrawing *drawing)
{
  g_autoptr (GArray) trace = trace_of (drawing, "barrier.area");
  g_autoptr (GArray) boxes = g_array_new (FALSE, FALSE, sizeof (CwBox));

  for (guint i = 0; i < trace->len; i++)
    {
      CwBox box = cw_region_box (
          g_array_index (trace, CwTraceItem, i).region);

      g_array_append_val (boxes, box);
    }
  for (guint i = 0; i < boxes->len; i++)
    draw_strip (drawing, boxes, i);
  name_strips (drawing, boxes);
}

/* Strips hang side by side from the left end, as far as their laps allow. */
static void
draw_field_laps (const CwLayerDrawing *drawing, const CwMesh *mesh,
                 const CwRegion *face)
{
  const CwBox all = cw_region_box (drawing->wall->outline);
  const CwLength step = mesh->roll_width - mesh->lap;

  if (mesh->lap <= 0 || step <= 0
      || cw_box_width (&all) / step > MOST_STRIPS)
    return;
  for (CwLength x = all.left + step; x + mesh->lap < all.right; x += step)
    {
      const CwBox lap = { x, all.bottom, x + mesh->lap, all.top };
      g_autoptr (CwRegion) strip = cw_region_new_box (&lap, 0);
      g_autoptr (CwRegion) seen = cw_region_intersect (strip, face);

      cw_display_list_add_region (drawing->list, CW_STYLE_MESH_LAP, NULL,
                                  seen);
    }
}

static void
draw_trace (const CwLayerDrawing *drawing, CwStyle style, const char *key)
{
  g_autoptr (GArray) trace = trace_of (drawing, key);

  for (guint i = 0; i < trace->len; i++)
    {
      const CwTraceItem *item = &g_array_index (trace, CwTraceItem, i);

      if (item->kind == CW_TRACE_REGION)
        cw_display_list_add_region (drawing->list, style, NULL, item->region);
      else
        cw_display_list_add_side (drawing->list, style, NULL, &item->side,
                                  item->end);
    }
}

void
cw_draw_mesh (const CwLayerDrawing *drawing)
{
  const CwMesh *mesh = drawing->wall->buildup
                           ? (const CwMesh *) drawing->wall->buildup->mesh
                           : NULL;

  if (!mesh)
    return;
  draw_field_laps (drawing, mesh, drawing->wall->net);
  draw_trace (drawing, CW_STYLE_MESH_EDGE, "mesh.edge");
  draw_trace (drawing, CW_STYLE_MESH_CORNER, "mesh.corner");
}

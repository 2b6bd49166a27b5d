/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-trace-private.h"

void
cw_trace_side (CwTrace *trace, const CwSide *side, CwPoint end, double depth)
{
  CwTraceItem item = { .kind = CW_TRACE_LINE, .side = *side, .end = end };

  item.share = cw_side_length (side, end) * depth;
  g_array_append_val (trace->items, item);
}

void
cw_trace_straight (CwTrace *trace, CwPoint from, CwPoint to)
{
  CwSide side = cw_side_straight (from, 0);

  cw_trace_side (trace, &side, to, 1);
}

void
cw_trace_region (CwTrace *trace, CwRegion *region, double share)
{
  CwTraceItem item
      = { .kind = CW_TRACE_REGION, .region = region, .share = share };

  if (cw_region_is_empty (region))
    cw_region_unref (region);
  else
    g_array_append_val (trace->items, item);
}

static void
trace_region_of (CwTrace *trace, const CwRegion *region)
{
  cw_trace_region (trace, cw_region_ref (region), cw_region_area (region));
}

static void
trace_tagged_sides (CwTrace *trace, const CwRegion *region, guint tag)
{
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      CwLoop loop = cw_region_loop (region, i);

      for (gsize j = 0; j < loop.n_sides; j++)
        if (loop.sides[j].tag == tag)
          cw_trace_side (trace, &loop.sides[j], cw_loop_end (&loop, j), 1);
    }
}

/* A door has no sill. */
static gboolean
is_wanted (const CwWall *wall, guint tag, guint sides)
{
  CwOpeningSide side;
  guint index;

  if (!cw_estimate_opening_of_tag (tag, &index, &side)
      || !(sides & 1u << side))
    return FALSE;
  return side != CW_OPENING_SIDE_SILL
         || g_array_index (wall->openings, CwWallOpening, index)
                    .opening->node.type
                != &cw_door_type;
}

void
cw_trace_opening_sides (CwTrace *trace, guint sides)
{
  g_autoptr (CwRegion) opened = cw_estimate_opened_outline (trace->wall);

  for (gsize i = 0; i < cw_region_n_loops (opened); i++)
    {
      CwLoop loop = cw_region_loop (opened, i);

      for (gsize j = 0; j < loop.n_sides; j++)
        if (is_wanted (trace->wall, loop.sides[j].tag, sides))
          cw_trace_side (trace, &loop.sides[j], cw_loop_end (&loop, j), 1);
    }
}

void
cw_trace_stub_outs (CwTrace *trace)
{
  for (guint i = 0; i < trace->wall->stub_outs->len; i++)
    {
      g_autoptr (CwRegion) cut
          = cw_stub_out_shape (trace->wall->stub_outs->pdata[i], TRUE);

      for (gsize j = 0; j < cw_region_n_loops (cut); j++)
        {
          CwLoop loop = cw_region_loop (cut, j);

          for (gsize k = 0; k < loop.n_sides; k++)
            cw_trace_side (trace, &loop.sides[k], cw_loop_end (&loop, k), 1);
        }
    }
}

/* Whether an opening is counted in that line: all of them, those of a kind,
 * or those of a mark. */
static gboolean
is_of_variant (const CwWallOpening *opening, const char *variant)
{
  g_autofree char *name = NULL;

  if (variant == NULL)
    return TRUE;
  name = cw_estimate_mark_variant (opening->mark);
  return g_str_equal (opening->opening->node.type->element, variant)
         || g_strcmp0 (name, variant) == 0;
}

static void
trace_openings (CwTrace *trace, guint detail)
{
  for (guint i = 0; i < trace->wall->openings->len; i++)
    {
      const CwWallOpening *opening
          = &g_array_index (trace->wall->openings, CwWallOpening, i);

      if (is_of_variant (opening, trace->variant))
        cw_trace_region (trace, cw_region_ref (opening->shape), 1);
    }
}

static void
trace_bands (CwTrace *trace, guint detail)
{
  for (guint i = 0; i < trace->wall->bands->len; i++)
    {
      const CwBand *band = trace->wall->bands->pdata[i];
      CwLength y = band->y + band->height / 2;

      cw_trace_straight (trace, cw_point (band->x, y),
                         cw_point (band->x + band->width, y));
    }
}

static void
trace_pieces (CwTrace *trace, guint kinds)
{
  const GArray *pieces = trace->takeoff->layout->pieces;

  for (guint i = 0; i < pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (pieces, CwPiece, i);

      if (kinds & 1u << piece->kind)
        cw_trace_region (trace,
                         piece->shape ? cw_region_ref (piece->shape)
                                      : cw_region_new_box (&piece->box, 0),
                         1);
    }
}

static void
trace_joints (CwTrace *trace, gboolean beds, gboolean heads)
{
  const GArray *joints = trace->takeoff->layout->joints;

  for (guint i = 0; i < joints->len; i++)
    {
      const CwJoint *joint = &g_array_index (joints, CwJoint, i);

      if (joint->is_bed ? beds : heads)
        cw_trace_straight (trace, joint->from, joint->to);
    }
}

static void
trace_fasteners (CwTrace *trace, guint detail)
{
  const CwLayout *layout = trace->takeoff->layout;
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (CwPoint));

  if (!trace->wall->buildup)
    return;
  for (guint i = 0; i < layout->pieces->len; i++)
    cw_layout_piece_fastener_points (
        layout, &g_array_index (layout->pieces, CwPiece, i), points);
  for (guint i = 0; i < points->len; i++)
    {
      CwTraceItem item = { .kind = CW_TRACE_POINT, .share = 1 };

      item.side = cw_side_straight (g_array_index (points, CwPoint, i), 0);
      item.end = item.side.start;
      g_array_append_val (trace->items, item);
    }
}

static void
trace_barrier (CwTrace *trace, guint detail)
{
  g_autoptr (GArray) boxes
      = trace->wall->buildup ? cw_estimate_barrier_boxes (trace->wall) : NULL;

  for (guint i = 0; boxes && i < boxes->len; i++)
    {
      const CwBox *box = &g_array_index (boxes, CwBox, i);

      cw_trace_region (trace, cw_region_new_box (box, 0),
                       cw_length_in_m (cw_box_width (box))
                           * cw_length_in_m (cw_box_height (box)));
    }
}

static void
trace_control_joints (CwTrace *trace, guint detail)
{
  g_autoptr (GArray) lines = cw_estimate_control_joint_lines (trace->wall);

  for (guint i = 0; i < lines->len; i++)
    {
      const CwJoint *line = &g_array_index (lines, CwJoint, i);

      cw_trace_straight (trace, line->from, line->to);
    }
}

static void
trace_mesh (CwTrace *trace, gboolean field, gboolean corners, gboolean edges)
{
  if (!trace->wall->buildup || !trace->wall->buildup->mesh)
    return;
  if (field)
    {
      cw_trace_measured_faces (trace);
      cw_trace_band_faces (trace);
    }
  if (corners)
    cw_trace_mesh_corners (trace);
  if (edges)
    {
      cw_trace_opening_sides (trace, CW_TRACE_ALL_SIDES);
      cw_trace_stub_outs (trace);
    }
}

static void
trace_coated (CwTrace *trace, guint detail)
{
  cw_trace_measured_faces (trace);
  cw_trace_reveals (trace);
  cw_trace_band_faces (trace);
}

static void
trace_sealant (CwTrace *trace, guint detail)
{
  cw_trace_opening_sides (trace, CW_TRACE_ALL_SIDES);
  cw_trace_stub_outs (trace);
  trace_tagged_sides (trace, trace->wall->outline, CW_EDGE_ABUTMENT);
}

static void
trace_corner_beads (CwTrace *trace, guint detail)
{
  trace_tagged_sides (trace, trace->wall->outline, CW_EDGE_OUTSIDE_CORNER);
  cw_trace_opening_sides (trace, 1u << CW_OPENING_SIDE_JAMB
                                     | 1u << CW_OPENING_SIDE_SILL);
}

static void
trace_outline (CwTrace *trace, guint detail)
{
  trace_region_of (trace, trace->wall->outline);
}

static void
trace_net (CwTrace *trace, guint detail)
{
  trace_region_of (trace, trace->wall->net);
}

static void
trace_opened (CwTrace *trace, guint detail)
{
  trace_region_of (trace, trace->wall->opened);
}

static void
trace_unclad (CwTrace *trace, guint detail)
{
  trace_region_of (trace, trace->wall->unclad);
}

static void
trace_edges (CwTrace *trace, guint detail)
{
  trace_tagged_sides (trace, trace->wall->outline, detail);
}

static void
trace_bed_joints (CwTrace *trace, guint detail)
{
  trace_joints (trace, TRUE, FALSE);
}

static void
trace_head_joints (CwTrace *trace, guint detail)
{
  trace_joints (trace, FALSE, TRUE);
}

static void
trace_mortar (CwTrace *trace, guint detail)
{
  trace_joints (trace, TRUE, TRUE);
  cw_trace_opening_sides (trace, CW_TRACE_ALL_SIDES);
}

static void
trace_whole_mesh (CwTrace *trace, guint detail)
{
  trace_mesh (trace, TRUE, TRUE, TRUE);
}

static void
trace_mesh_field (CwTrace *trace, guint detail)
{
  trace_mesh (trace, TRUE, FALSE, FALSE);
}

static void
trace_mesh_corners (CwTrace *trace, guint detail)
{
  trace_mesh (trace, FALSE, TRUE, FALSE);
}

static void
trace_mesh_edges (CwTrace *trace, guint detail)
{
  trace_mesh (trace, FALSE, FALSE, TRUE);
}

static void
trace_starter (CwTrace *trace, guint detail)
{
  trace_tagged_sides (trace, trace->wall->net, CW_EDGE_BASE);
}

static void
trace_measured (CwTrace *trace, guint detail)
{
  cw_trace_measured (trace);
}

static void
trace_reveals (CwTrace *trace, guint detail)
{
  cw_trace_reveals (trace);
}

static void
trace_band_faces (CwTrace *trace, guint detail)
{
  cw_trace_band_faces (trace);
}

static void (*const tracers[]) (CwTrace *trace, guint detail) = {
  [CW_SHOWS_OUTLINE] = trace_outline,
  [CW_SHOWS_NET] = trace_net,
  [CW_SHOWS_MEASURED] = trace_measured,
  [CW_SHOWS_OPENINGS] = trace_openings,
  [CW_SHOWS_OPENED] = trace_opened,
  [CW_SHOWS_OPENING_SIDES] = cw_trace_opening_sides,
  [CW_SHOWS_REVEALS] = trace_reveals,
  [CW_SHOWS_UNCLAD] = trace_unclad,
  [CW_SHOWS_EDGES] = trace_edges,
  [CW_SHOWS_BANDS] = trace_bands,
  [CW_SHOWS_BAND_FACES] = trace_band_faces,
  [CW_SHOWS_PIECES] = trace_pieces,
  [CW_SHOWS_SAW_CUTS] = cw_trace_saw_cuts,
  [CW_SHOWS_BED_JOINTS] = trace_bed_joints,
  [CW_SHOWS_HEAD_JOINTS] = trace_head_joints,
  [CW_SHOWS_MORTAR] = trace_mortar,
  [CW_SHOWS_FASTENERS] = trace_fasteners,
  [CW_SHOWS_BARRIER] = trace_barrier,
  [CW_SHOWS_COATED] = trace_coated,
  [CW_SHOWS_WATER] = cw_trace_water,
  [CW_SHOWS_WORK] = cw_trace_work,
  [CW_SHOWS_MESH] = trace_whole_mesh,
  [CW_SHOWS_MESH_FIELD] = trace_mesh_field,
  [CW_SHOWS_MESH_CORNERS] = trace_mesh_corners,
  [CW_SHOWS_MESH_EDGES] = trace_mesh_edges,
  [CW_SHOWS_SEALANT] = trace_sealant,
  [CW_SHOWS_CORNER_BEADS] = trace_corner_beads,
  [CW_SHOWS_STARTER] = trace_starter,
  [CW_SHOWS_CONTROL_JOINTS] = trace_control_joints,
};

static void
clear_item (gpointer data)
{
  CwTraceItem *item = data;

  g_clear_pointer (&item->region, cw_region_unref);
}

void
cw_trace_add (CwTrace *trace, CwShows shows, guint detail)
{
  if ((guint) shows < G_N_ELEMENTS (tracers) && tracers[shows])
    tracers[shows](trace, detail);
}

GArray *
cw_wall_trace (const CwWallTakeoff *takeoff, const CwQuantityType *type,
               const char *variant)
{
  g_return_val_if_fail (takeoff != NULL && type != NULL, NULL);
  CwTrace made = { takeoff, takeoff->wall,
                   g_array_new (FALSE, FALSE, sizeof (CwTraceItem)), variant };

  g_array_set_clear_func (made.items, clear_item);
  if (takeoff->wall->outline)
    cw_trace_add (&made, type->shows, type->detail);
  return made.items;
}

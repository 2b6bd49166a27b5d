/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-piece-cuts.h"

static gboolean
lies_on_edge (const CwBox *box, CwPoint a, CwPoint b)
{
  return (a.x == b.x && (a.x == box->left || a.x == box->right))
         || (a.y == b.y && (a.y == box->bottom || a.y == box->top));
}

static CwCutFlags
kind_of_straight (const CwPiece *piece, CwPoint from, CwPoint to,
                  gboolean is_upright)
{
  if (from.x != to.x && from.y != to.y)
    return CW_CUT_RAKE;
  if (!lies_on_edge (&piece->box, from, to))
    return CW_CUT_NOTCH;
  return (from.x == to.x) == is_upright ? CW_CUT_HEIGHT : CW_CUT_LENGTH;
}

static void
add_loop (const CwLayout *layout, const CwPiece *piece, const CwLoop *loop,
          GArray *cuts)
{
  for (gsize i = 0; i < loop->n_sides; i++)
    {
      const CwSide *side = &loop->sides[i];
      const CwPoint end = cw_loop_end (loop, i);
      if (!side->is_arc && lies_on_edge (&piece->slot, side->start, end))
        continue;
      const double length = cw_side_length (side, end);
      const CwPieceCut cut = {
        .kind = side->is_arc ? CW_CUT_CURVE
                             : kind_of_straight (piece, side->start, end,
                                                 cw_layout_stands (layout)),
        .is_rasped = piece->kind == CW_PIECE_RASPED,
        .from = side->start,
        .to = end,
        .length = length,
        .curved = side->is_arc ? length : 0,
      };
      g_array_append_val (cuts, cut);
    }
}

/* The piece as a region, holes not yet cut. (transfer full) */
static CwRegion *
shape_of (const CwPiece *piece)
{
  return piece->shape ? cw_region_ref (piece->shape)
                      : cw_region_new_box (&piece->box, 0);
}

/* FALSE when the stub-out, a round one's box too, is clear of the piece: most
 * of a wall's are. */
static gboolean
may_meet (const CwStubOut *stub_out, const CwPiece *piece)
{
  const CwLength x = stub_out->width / 2 + stub_out->clearance + 1;
  const CwLength y = (stub_out->shape == CW_SHAPE_ROUND ? stub_out->width
                                                        : stub_out->height)
                         / 2
                     + stub_out->clearance + 1;
  const CwBox box = { stub_out->x - x, stub_out->y - y, stub_out->x + x,
                      stub_out->y + y };
  return cw_box_overlaps (&box, &piece->box);
}

static gboolean
is_within (const CwBox *inner, const CwBox *outer)
{
  return inner->left >= outer->left && inner->right <= outer->right
         && inner->bottom >= outer->bottom && inner->top <= outer->top;
}

/* The stub-outs that go through the piece, cut to it.
 * (transfer full) (element-type CwRegion) */
static GPtrArray *
holes_of (const CwLayout *layout, const CwPiece *piece, const CwRegion *shape)
{
  GPtrArray *holes
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_region_unref);
  if (!(piece->cuts & CW_CUT_HOLE))
    return holes;
  for (guint i = 0; i < layout->wall->stub_outs->len; i++)
    {
      const CwStubOut *stub_out
          = g_ptr_array_index (layout->wall->stub_outs, i);
      if (!may_meet (stub_out, piece))
        continue;
      g_autoptr (CwRegion) whole = cw_stub_out_shape (stub_out, TRUE);
      const CwBox box = cw_region_box (whole);
      g_autoptr (CwRegion) hole
          = !piece->shape && is_within (&box, &piece->box)
                ? cw_region_ref (whole)
                : cw_region_intersect (whole, shape);
      if (!cw_region_is_empty (hole))
        g_ptr_array_add (holes, g_steal_pointer (&hole));
    }
  return holes;
}

static double
curved_length (const CwRegion *hole, guint tag)
{
  double length = 0;
  for (gsize i = 0; i < cw_region_n_loops (hole); i++)
    {
      const CwLoop loop = cw_region_loop (hole, i);
      for (gsize j = 0; j < loop.n_sides; j++)
        if (loop.sides[j].is_arc && loop.sides[j].tag == tag)
          length += cw_side_length (&loop.sides[j], cw_loop_end (&loop, j));
    }
  return length;
}

static void
add_hole (const CwRegion *hole, GArray *cuts)
{
  const CwBox box = cw_region_box (hole);
  const CwPieceCut cut = {
    .kind = CW_CUT_HOLE,
    .from = cw_point (box.left, box.bottom),
    .to = cw_point (box.right, box.top),
    .length = cw_region_length_of (hole, CW_WALL_TAG_STUB_OUT),
    .curved = curved_length (hole, CW_WALL_TAG_STUB_OUT),
  };
  g_array_append_val (cuts, cut);
}

GArray *
cw_piece_cuts (const CwLayout *layout, const CwPiece *piece)
{
  g_return_val_if_fail (layout != NULL && piece != NULL, NULL);

  GArray *cuts = g_array_new (FALSE, FALSE, sizeof (CwPieceCut));
  g_autoptr (CwRegion) shape = shape_of (piece);
  g_autoptr (GPtrArray) holes = holes_of (layout, piece, shape);
  for (gsize i = 0; i < cw_region_n_loops (shape); i++)
    {
      const CwLoop loop = cw_region_loop (shape, i);
      add_loop (layout, piece, &loop, cuts);
    }
  for (guint i = 0; i < holes->len; i++)
    add_hole (g_ptr_array_index (holes, i), cuts);
  return cuts;
}

CwRegion *
cw_piece_region (const CwLayout *layout, const CwPiece *piece)
{
  g_return_val_if_fail (layout != NULL && piece != NULL, NULL);

  g_autoptr (CwRegion) shape = shape_of (piece);
  g_autoptr (GPtrArray) holes = holes_of (layout, piece, shape);
  if (holes->len == 0)
    return g_steal_pointer (&shape);
  g_autoptr (CwRegion) hole = cw_region_union (
      (const CwRegion *const *) holes->pdata, holes->len);
  return cw_region_subtract (shape, hole);
}

double
cw_piece_mass (const CwLayout *layout, const CwPiece *piece)
{
  g_return_val_if_fail (layout != NULL && piece != NULL, 0);

  const CwPanel *panel
      = cw_list_at (layout->wall->buildup->panels, piece->panel);
  const double panel_area
      = cw_length_in_m (panel->length) * cw_length_in_m (panel->height);
  g_autoptr (CwRegion) shape = shape_of (piece);
  g_autoptr (GPtrArray) holes = holes_of (layout, piece, shape);
  g_autoptr (CwRegion) hole = cw_region_union (
      (const CwRegion *const *) holes->pdata, holes->len);
  return cw_decimal_to_double (panel->mass)
         * (piece->area - cw_region_area (hole)) / panel_area;
}

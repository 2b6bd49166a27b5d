/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-classify.h"

static gboolean
goes_through (const CwPiece *piece, const CwRegion *hole)
{
  g_autoptr (CwRegion) within = cw_region_clip (hole, &piece->box, 0);
  if (cw_region_is_empty (within) || !piece->shape)
    return !cw_region_is_empty (within);
  g_autoptr (CwRegion) common = cw_region_intersect (within, piece->shape);
  return !cw_region_is_empty (common);
}

void
cw_classify_hole (CwPiece *pieces, guint n, const CwRegion *hole)
{
  CwBox box = cw_region_box (hole);
  for (guint i = 0; i < n; i++)
    if (cw_box_overlaps (&box, &pieces[i].box)
        && goes_through (&pieces[i], hole))
      pieces[i].cuts |= CW_CUT_HOLE;
}

static CwPoint
way (CwPoint from, CwPoint to)
{
  return cw_point (to.x - from.x, to.y - from.y);
}

/* TRUE when the way turns right from @in to @out: the piece is notched. */
static gboolean
turns_inward (CwPoint in, CwPoint out)
{
  return (double) in.x * (double) out.y - (double) in.y * (double) out.x < 0;
}

static gboolean
is_level_or_upright (CwPoint along)
{
  return along.x == 0 || along.y == 0;
}

static CwCutFlags
cuts_of_side (const CwLoop *loop, gsize index)
{
  gsize next = index + 1 < loop->n_sides ? index + 1 : 0;
  const CwSide *side = &loop->sides[index];
  if (side->is_arc)
    return CW_CUT_CURVE;
  CwPoint here = way (side->start, cw_loop_end (loop, index));
  if (!is_level_or_upright (here))
    return CW_CUT_RAKE;
  CwPoint there = way (loop->sides[next].start, cw_loop_end (loop, next));
  if (!loop->sides[next].is_arc && is_level_or_upright (there)
      && turns_inward (here, there))
    return CW_CUT_NOTCH;
  return 0;
}

static CwCutFlags
cuts_of_shape (const CwRegion *shape)
{
  gsize n = cw_region_n_loops (shape);
  CwCutFlags cuts = n > 1 ? CW_CUT_NOTCH : 0;
  for (gsize l = 0; l < n; l++)
    {
      CwLoop loop = cw_region_loop (shape, l);
      for (gsize s = 0; s < loop.n_sides; s++)
        cuts |= cuts_of_side (&loop, s);
    }
  return cuts;
}

static CwCutFlags
cuts_of_size (const CwPiece *piece, gboolean is_upright)
{
  gboolean narrower = cw_box_width (&piece->box) < cw_box_width (&piece->slot);
  gboolean lower = cw_box_height (&piece->box) < cw_box_height (&piece->slot);
  return (narrower ? (is_upright ? CW_CUT_HEIGHT : CW_CUT_LENGTH) : 0)
         | (lower ? (is_upright ? CW_CUT_LENGTH : CW_CUT_HEIGHT) : 0);
}

/* The middle of @box that must be whole when all cuts within it together go
 * no deeper than @trim from each side. */
static gboolean
middle_is_whole (const CwPiece *piece, CwLength across, CwLength up)
{
  CwBox middle = { piece->box.left + across, piece->box.bottom + up,
                   piece->box.right - across, piece->box.top - up };
  if (middle.left >= middle.right || middle.bottom >= middle.top)
    return FALSE;
  g_autoptr (CwRegion) within = cw_region_clip (piece->shape, &middle, 0);
  CwBox around = cw_region_box (within);
  return cw_region_is_box (within) && around.left == middle.left
         && around.right == middle.right && around.bottom == middle.bottom
         && around.top == middle.top;
}

static gboolean
trims_at_most (const CwPiece *piece, CwLength rasp)
{
  CwLength across
      = rasp - (cw_box_width (&piece->slot) - cw_box_width (&piece->box));
  CwLength up
      = rasp - (cw_box_height (&piece->slot) - cw_box_height (&piece->box));
  if (across < 0 || up < 0 || (piece->cuts & CW_CUT_HOLE))
    return FALSE;
  return !piece->shape || middle_is_whole (piece, across, up);
}

void
cw_classify_piece (CwPiece *piece, gboolean is_upright, CwLength rasp)
{
  piece->cuts |= cuts_of_size (piece, is_upright);
  if (piece->shape)
    piece->cuts |= cuts_of_shape (piece->shape);
  if (!piece->cuts)
    piece->kind = CW_PIECE_WHOLE;
  else
    piece->kind
        = trims_at_most (piece, rasp) ? CW_PIECE_RASPED : CW_PIECE_CUT;
}

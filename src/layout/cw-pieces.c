/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-pieces.h"

void
cw_piece_clear (gpointer piece)
{
  CwPiece *p = piece;
  g_clear_pointer (&p->shape, cw_region_unref);
}

/* A straight side along the edge of the course cuts nothing. */
static gboolean
lies_on_edge (const CwRow *row, const CwSide *side, CwInterval across)
{
  return !side->is_arc && across.low == across.high
         && (across.low == row->across.low || across.low == row->across.high);
}

/* Marks the stretches with the side's extent inside or through them. */
static void
mark_side (const CwStretch *stretches, guint n, CwInterval along,
           gboolean *meets)
{
  guint low = 0, high = n;
  while (low < high)
    {
      guint middle = low + (high - low) / 2;
      if (stretches[middle].high <= along.low)
        low = middle + 1;
      else
        high = middle;
    }
  for (; low < n && stretches[low].low < along.high; low++)
    meets[low] = TRUE;
  /* An upright side is a place without width. */
  if (along.low == along.high && low < n && stretches[low].low < along.low)
    meets[low] = TRUE;
}

static void
mark_part (const CwFrame *frame, const CwRow *row, const CwRegion *part,
           const CwStretch *stretches, guint n, gboolean *meets)
{
  for (gsize l = 0; l < cw_region_n_loops (part); l++)
    {
      CwLoop loop = cw_region_loop (part, l);
      for (gsize s = 0; s < loop.n_sides; s++)
        {
          CwBox box = cw_side_box (&loop.sides[s], cw_loop_end (&loop, s));
          if (!lies_on_edge (row, &loop.sides[s],
                             cw_frame_across_of (frame, &box)))
            mark_side (stretches, n, cw_frame_along_of (frame, &box), meets);
        }
    }
}

/* Which of the stretches meet a side of the wall. */
static gboolean *
mark_stretches (const CwFrame *frame, const CwRow *row, const CwRowRun *run,
                const CwStretch *stretches, guint n)
{
  gboolean *meets = g_new0 (gboolean, n);
  for (guint i = 0; i < run->n_parts && !row->is_box; i++)
    mark_part (frame, row,
               g_ptr_array_index (row->parts, run->first_part + i), stretches,
               n, meets);
  return meets;
}

static CwBox
common_box (const CwBox *a, const CwBox *b)
{
  return (CwBox) { MAX (a->left, b->left), MAX (a->bottom, b->bottom),
                   MIN (a->right, b->right), MIN (a->top, b->top) };
}

static void
add_box_piece (GArray *pieces, const CwBox *box, const CwBox *slot)
{
  CwPiece piece = { .slot = *slot, .box = *box, .area = cw_box_area (box) };
  g_array_append_val (pieces, piece);
}

/* Arcs have boxes rounded outward: @place keeps them within the panel. */
static void
add_shaped_piece (GArray *pieces, const CwRegion *shape, const CwBox *place,
                  const CwBox *slot)
{
  CwBox around = cw_region_box (shape);
  CwBox box = common_box (&around, place);
  if (cw_region_is_box (shape))
    {
      add_box_piece (pieces, &box, slot);
      return;
    }
  CwPiece piece = { .slot = *slot,
                    .box = box,
                    .shape = cw_region_ref (shape),
                    .area = cw_region_area (shape) };
  g_array_append_val (pieces, piece);
}

static int
compare_pieces (gconstpointer a, gconstpointer b, gpointer frame)
{
  const CwPiece *one = a, *other = b;
  CwLength low = cw_frame_along_of (frame, &one->box).low;
  CwLength other_low = cw_frame_along_of (frame, &other->box).low;
  if (low == other_low)
    {
      low = cw_frame_across_of (frame, &one->box).low;
      other_low = cw_frame_across_of (frame, &other->box).low;
    }
  return (low > other_low) - (low < other_low);
}

/* A panel's pieces in the order of the work, from the starting corner. */
static void
sort_pieces_from (const CwFrame *frame, GArray *pieces, guint first)
{
  if (pieces->len > first + 1)
    g_qsort_with_data (&g_array_index (pieces, CwPiece, first),
                       pieces->len - first, sizeof (CwPiece), compare_pieces,
                       (gpointer) frame);
}

static void
add_cut_pieces (const CwFrame *frame, const CwRow *row, const CwRowRun *run,
                const CwBox *place, const CwBox *slot, GArray *pieces)
{
  guint first = pieces->len;
  for (guint i = 0; i < run->n_parts; i++)
    {
      const CwRegion *part
          = g_ptr_array_index (row->parts, run->first_part + i);
      CwBox part_box = cw_region_box (part);
      if (!cw_box_overlaps (&part_box, place))
        continue;
      g_autoptr (CwRegion) clipped = cw_region_clip (part, place, 0);
      g_autoptr (GPtrArray) shapes = cw_region_parts (clipped);
      for (guint s = 0; s < shapes->len; s++)
        add_shaped_piece (pieces, g_ptr_array_index (shapes, s), place, slot);
    }
  sort_pieces_from (frame, pieces, first);
}

void
cw_pieces_of_run (const CwFrame *frame, const CwRow *row, const CwRowRun *run,
                  const CwPanelSize *size, const CwStretch *stretches, guint n,
                  GArray *pieces)
{
  g_autofree gboolean *meets = mark_stretches (frame, row, run, stretches, n);
  CwInterval slot_across = { row->slot, row->slot + size->height };
  for (guint i = 0; i < n; i++)
    {
      CwInterval along = { stretches[i].low, stretches[i].high };
      CwInterval slot_along
          = { stretches[i].slot, stretches[i].slot + size->length };
      CwBox place = cw_frame_box (frame, along, row->across);
      CwBox slot = cw_frame_box (frame, slot_along, slot_across);
      if (meets[i])
        add_cut_pieces (frame, row, run, &place, &slot, pieces);
      else
        add_box_piece (pieces, &place, &slot);
    }
}

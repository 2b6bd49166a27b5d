/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-row.h"

#include "cw-set-out.h"

static int
compare_along (gconstpointer a, gconstpointer b, gpointer frame)
{
  CwBox one_box = cw_region_box (*(CwRegion *const *) a);
  CwBox other_box = cw_region_box (*(CwRegion *const *) b);
  CwLength one = cw_frame_along_of (frame, &one_box).low;
  CwLength other = cw_frame_along_of (frame, &other_box).low;
  return (one > other) - (one < other);
}

static GPtrArray *
parts_of (const CwFrame *frame, CwRow *row)
{
  if (row->is_box)
    {
      GPtrArray *parts
          = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_region_unref);
      g_ptr_array_add (parts, cw_region_ref (row->region));
      return parts;
    }
  GPtrArray *parts = cw_region_parts (row->region);
  g_ptr_array_sort_with_data (parts, compare_along, (gpointer) frame);
  return parts;
}

/* Parts one above the other in the same course share a run. */
static void
add_part (CwRow *row, CwInterval along, guint part)
{
  CwRowRun *last = row->runs->len > 0 ? &g_array_index (row->runs, CwRowRun,
                                                        row->runs->len - 1)
                                      : NULL;
  if (last && along.low < last->along.high)
    {
      last->along.high = MAX (last->along.high, along.high);
      last->n_parts++;
      return;
    }
  CwRowRun run = { along, part, 1 };
  g_array_append_val (row->runs, run);
}

CwRow *
cw_row_new (const CwFrame *frame, CwInterval across, CwLength slot,
            CwRegion *region)
{
  CwRow *row = g_new (CwRow, 1);
  row->across = across;
  row->slot = slot;
  row->region = region;
  row->runs = g_array_new (FALSE, FALSE, sizeof (CwRowRun));
  CwBox box = cw_region_box (region);
  CwInterval filled = cw_frame_across_of (frame, &box);
  row->is_box = cw_region_is_box (region) && filled.low == across.low
                && filled.high == across.high;
  row->parts = parts_of (frame, row);
  for (guint i = 0; i < row->parts->len; i++)
    {
      CwBox part = cw_region_box (g_ptr_array_index (row->parts, i));
      add_part (row, cw_frame_along_of (frame, &part), i);
    }
  return row;
}

void
cw_row_free (CwRow *row)
{
  cw_region_unref (row->region);
  g_ptr_array_unref (row->parts);
  g_array_unref (row->runs);
  g_free (row);
}

/* What the cuts share. */
typedef struct
{
  const CwFrame *frame;
  const GArray *courses;
  GPtrArray *rows;
} Cutting;

/* Cuts @region, which it takes, in two between courses @middle - 1 and
 * @middle; the joint between them belongs to nobody. */
static void
cut_between (const Cutting *cutting, CwRegion *region, guint middle,
             CwRegion **before, CwRegion **beyond)
{
  const CwLength end
      = g_array_index (cutting->courses, CwStretch, middle - 1).high;
  const CwLength start
      = g_array_index (cutting->courses, CwStretch, middle).low;
  cw_frame_cut (cutting->frame, region, end, before, beyond);
  cw_region_unref (region);
  if (end < start)
    {
      CwRegion *rest = *beyond;
      cw_frame_cut (cutting->frame, rest, start, NULL, beyond);
      cw_region_unref (rest);
    }
}

/* Every cut across a rake or an arc rounds to a whole nanometre. Halving
 * keeps that from adding up course by course, and cuts less each time. */
static void
cut_rows (const Cutting *cutting, CwRegion *region, guint first, guint n)
{
  if (n == 1)
    {
      const CwStretch *course
          = &g_array_index (cutting->courses, CwStretch, first);
      g_ptr_array_add (cutting->rows,
                       cw_row_new (cutting->frame,
                                   (CwInterval) { course->low, course->high },
                                   course->slot, region));
      return;
    }
  CwRegion *before, *beyond;
  cut_between (cutting, region, first + n / 2, &before, &beyond);
  cut_rows (cutting, before, first, n / 2);
  cut_rows (cutting, beyond, first + n / 2, n - n / 2);
}

GPtrArray *
cw_rows_of_region (const CwFrame *frame, const CwRegion *net,
                   const GArray *courses)
{
  GPtrArray *rows
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_row_free);
  const Cutting cutting = { frame, courses, rows };
  if (courses->len > 0)
    cut_rows (&cutting, cw_region_ref (net), 0, courses->len);
  return rows;
}

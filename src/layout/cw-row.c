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

/* Takes @rest and returns what is left of it beyond @across. */
static CwRegion *
cut_off (const CwFrame *frame, CwRegion *rest, CwLength across,
         CwRegion **before)
{
  CwRegion *beyond;
  cw_frame_cut (frame, rest, across, before, &beyond);
  cw_region_unref (rest);
  return beyond;
}

GPtrArray *
cw_rows_of_region (const CwFrame *frame, const CwRegion *net,
                   const GArray *courses)
{
  GPtrArray *rows
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_row_free);
  CwRegion *rest = cw_region_ref (net);
  for (guint i = 0; i < courses->len; i++)
    {
      const CwStretch *course = &g_array_index (courses, CwStretch, i);
      CwRegion *within = NULL;
      /* The joint below this course belongs to nobody. */
      if (i > 0 && course[-1].high < course->low)
        rest = cut_off (frame, rest, course->low, NULL);
      rest = cut_off (frame, rest, course->high, &within);
      g_ptr_array_add (rows, cw_row_new (frame,
                                         (CwInterval) { course->low,
                                                        course->high },
                                         course->slot, within));
    }
  cw_region_unref (rest);
  return rows;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-taper.h"

typedef struct
{
  const CwFrame *frame;
  const CwRow *row;
  const CwRowRun *run;
  CwInterval along;
  gboolean at_low;
} RunEnd;

static const CwRegion *
part_of (const RunEnd *end, guint index)
{
  return g_ptr_array_index (end->row->parts, end->run->first_part + index);
}

/* The extent across of a straight side that ends the run squarely. */
static CwLength
square_end (const RunEnd *end, const CwLoop *loop, gsize index)
{
  CwBox box = cw_side_box (&loop->sides[index], cw_loop_end (loop, index));
  CwInterval along = cw_frame_along_of (end->frame, &box);
  CwLength place = end->at_low ? end->along.low : end->along.high;
  if (loop->sides[index].is_arc || along.low != place || along.high != place)
    return 0;
  return cw_interval_width (cw_frame_across_of (end->frame, &box));
}

static gboolean
ends_squarely (const RunEnd *end, CwLength least)
{
  for (guint p = 0; p < end->run->n_parts; p++)
    for (gsize l = 0; l < cw_region_n_loops (part_of (end, p)); l++)
      {
        CwLoop loop = cw_region_loop (part_of (end, p), l);
        for (gsize s = 0; s < loop.n_sides; s++)
          if (square_end (end, &loop, s) >= least)
            return TRUE;
      }
  return FALSE;
}

/* How high the wall is within @length of the end of the run. */
static CwLength
height_within (const RunEnd *end, CwLength length)
{
  CwInterval along = end->along;
  CwLength height = 0;
  if (end->at_low)
    along.high = along.low + length;
  else
    along.low = along.high - length;
  CwBox place = cw_frame_box (end->frame, along, end->row->across);
  for (guint p = 0; p < end->run->n_parts; p++)
    {
      g_autoptr (CwRegion) within
          = cw_region_clip (part_of (end, p), &place, 0);
      if (cw_region_is_empty (within))
        continue;
      CwBox box = cw_region_box (within);
      CwInterval across = cw_frame_across_of (end->frame, &box);
      height = MAX (height, cw_interval_width (across));
    }
  return height;
}

CwLength
cw_taper_least (const CwFrame *frame, const CwRow *row, const CwRowRun *run,
                CwInterval along, CwLength least, CwLength most,
                gboolean at_low)
{
  const RunEnd end = { frame, row, run, along, at_low };
  most = MIN (most, cw_interval_width (along));
  if (row->is_box || least >= most || ends_squarely (&end, least)
      || height_within (&end, least) >= least
      || height_within (&end, most) < least)
    return least;
  CwLength low = 0, high = (most - least) / CW_NM_PER_MM + 1;
  while (low + 1 < high)
    {
      CwLength middle = low + (high - low) / 2;
      if (height_within (&end, least + middle * CW_NM_PER_MM) >= least)
        high = middle;
      else
        low = middle;
    }
  return MIN (least + high * CW_NM_PER_MM, most);
}

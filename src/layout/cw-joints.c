/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-joints.h"

static void
add_joint (GArray *joints, gboolean is_bed, CwPoint from, CwPoint to)
{
  CwJoint joint = { is_bed, from, to };
  g_array_append_val (joints, joint);
}

typedef void (*SpanFunc) (CwInterval span, gpointer data);

/* Calls @visit for what two sorted lists of stretches have in common. */
static void
each_common_span (const GArray *one, const GArray *other, SpanFunc visit,
                  gpointer data)
{
  guint i = 0, j = 0;
  while (i < one->len && j < other->len)
    {
      CwInterval a = g_array_index (one, CwInterval, i);
      CwInterval b = g_array_index (other, CwInterval, j);
      CwInterval common = { MAX (a.low, b.low), MIN (a.high, b.high) };
      if (common.low < common.high)
        visit (common, data);
      if (a.high < b.high)
        i++;
      else
        j++;
    }
}

typedef struct
{
  const CwFrame *frame;
  CwLength middle;          /* of the gap */
  GArray *joints;
} Gap;

static void
add_head (CwInterval span, gpointer data)
{
  const Gap *gap = data;
  add_joint (gap->joints, FALSE,
             cw_frame_point (gap->frame, gap->middle, span.low),
             cw_frame_point (gap->frame, gap->middle, span.high));
}

static void
add_bed (CwInterval span, gpointer data)
{
  const Gap *gap = data;
  add_joint (gap->joints, TRUE,
             cw_frame_point (gap->frame, span.low, gap->middle),
             cw_frame_point (gap->frame, span.high, gap->middle));
}

static GArray *
one_span (CwInterval span)
{
  GArray *spans = g_array_new (FALSE, FALSE, sizeof (CwInterval));
  g_array_append_val (spans, span);
  return spans;
}

/* What stands on an upright line within the course, a nanometre inside the
 * piece: on its edge the line would run along a side. */
static GArray *
spans_in_row (const CwFrame *frame, const CwRow *row, CwLength along)
{
  if (row->is_box)
    return one_span (row->across);
  return cw_frame_spans_across (frame, row->region, along);
}

void
cw_joints_of_run (const CwFrame *frame, const CwRow *row,
                  const CwStretch *stretches, guint n, GArray *joints)
{
  for (guint i = 0; i + 1 < n; i++)
    {
      CwLength end = stretches[i].high, start = stretches[i + 1].low;
      Gap gap = { frame, end + (start - end) / 2, joints };
      g_autoptr (GArray) before = spans_in_row (frame, row, end - 1);
      g_autoptr (GArray) after = spans_in_row (frame, row, start + 1);
      each_common_span (before, after, add_head, &gap);
    }
}

static GArray *
spans_on_edge (const CwFrame *frame, const CwRow *row, CwLength across)
{
  if (!row->is_box)
    return cw_frame_spans_along (frame, row->region, across);
  return one_span (g_array_index (row->runs, CwRowRun, 0).along);
}

void
cw_joints_of_rows (const CwFrame *frame, const CwRow *below,
                   const CwRow *above, GArray *joints)
{
  CwLength end = below->across.high, start = above->across.low;
  Gap gap = { frame, end + (start - end) / 2, joints };
  g_autoptr (GArray) before = spans_on_edge (frame, below, end - 1);
  g_autoptr (GArray) after = spans_on_edge (frame, above, start + 1);
  each_common_span (before, after, add_bed, &gap);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-layout.h"

#include "cw-bond.h"
#include "cw-classify.h"
#include "cw-joints.h"
#include "cw-pieces.h"
#include "cw-studs.h"

/* Far beyond any wall; more is a slip of the pen in the panel's size. */
#define MOST_PANELS 200000.0

typedef struct
{
  CwLayout *layout;
  const CwPanel *panel;
  const CwSettingOut *setting_out;
  CwFrame frame;
} Laying;

static CwLayout *
layout_begin (const CwWall *wall)
{
  CwLayout *layout = g_new0 (CwLayout, 1);
  g_atomic_ref_count_init (&layout->count);
  layout->wall = cw_wall_ref ((CwWall *) wall);
  layout->courses = g_array_new (FALSE, FALSE, sizeof (CwCourse));
  layout->pieces = g_array_new (FALSE, FALSE, sizeof (CwPiece));
  g_array_set_clear_func (layout->pieces, cw_piece_clear);
  layout->joints = g_array_new (FALSE, FALSE, sizeof (CwJoint));
  layout->troubles = g_array_new (FALSE, FALSE, sizeof (CwLayoutTrouble));
  layout->studs = cw_studs_of_wall (wall);
  return layout;
}

static void
add_trouble (CwLayout *layout, CwTroubleKind kind, CwPoint place,
             guint course)
{
  const CwLayoutTrouble trouble = { kind, place, course };
  g_array_append_val (layout->troubles, trouble);
}

static CwPoint
middle_of (const CwBox *box)
{
  return cw_point (box->left + cw_box_width (box) / 2,
                   box->bottom + cw_box_height (box) / 2);
}

/* Joints between the courses of an upright run that stand off the studs. */
static void
note_course_troubles (const Laying *laying, const CwSetOut *out)
{
  const CwInterval along = cw_frame_along (&laying->frame);
  for (guint i = 0; i < out->troubles->len; i++)
    {
      const CwSetOutTrouble *trouble
          = &g_array_index (out->troubles, CwSetOutTrouble, i);
      guint course = 0;
      while (g_array_index (out->stretches, CwStretch, course).high
             < trouble->at)
        course++;
      add_trouble (laying->layout, trouble->kind,
                   cw_frame_point (&laying->frame,
                                   cw_interval_width (along) / 2,
                                   trouble->at + laying->panel->joint / 2),
                   course + 1);
    }
}

/* Where courses lie: the same sum as panels along a course, turned. */
static GArray *
set_out_courses (const Laying *laying)
{
  const CwSettingOut *setting_out = laying->setting_out;
  const CwFrame *frame = &laying->frame;
  const CwInterval run = cw_frame_across (frame);
  g_autoptr (GArray) studs = cw_bond_studs (
      frame, setting_out, laying->layout->studs, !frame->is_upright);
  g_autoptr (GArray) troubles
      = g_array_new (FALSE, FALSE, sizeof (CwSetOutTrouble));
  const CwLength least = MAX (setting_out->least_piece, 1);
  const CwSetOutRules rules = { .length = laying->panel->height,
                                .joint = laying->panel->joint,
                                .least = least,
                                .least_low = least,
                                .least_high = least,
                                .studs = studs };
  CwSetOut out
      = { g_array_new (FALSE, FALSE, sizeof (CwStretch)), troubles };
  if (frame->is_upright && setting_out->start == CW_START_BOTH)
    cw_set_out_both_corners (&rules, run, run.high, setting_out->offset,
                             setting_out->offset, &out);
  else
    cw_set_out_run (&rules, run,
                    cw_set_out_slot (&rules,
                                     frame->is_upright ? setting_out->offset
                                                       : setting_out->base,
                                     run.low),
                    &out);
  note_course_troubles (laying, &out);
  return out.stretches;
}

static void
number_course (const Laying *laying, const CwRow *row, guint first)
{
  CwLayout *layout = laying->layout;
  const CwBox box = cw_frame_box (&laying->frame,
                                  cw_frame_along (&laying->frame),
                                  row->across);
  const gboolean is_upright = laying->frame.is_upright;
  const CwCourse course = { is_upright ? box.left : box.bottom,
                            is_upright ? box.right : box.top, first,
                            layout->pieces->len - first };
  g_array_append_val (layout->courses, course);
  for (guint i = first; i < layout->pieces->len; i++)
    {
      CwPiece *piece = &g_array_index (layout->pieces, CwPiece, i);
      piece->course = layout->courses->len;
      piece->number = i - first + 1;
    }
}

static void
note_troubles (const Laying *laying, const CwRow *row, const GArray *troubles)
{
  const CwLength middle
      = row->across.low + cw_interval_width (row->across) / 2;
  for (guint i = 0; i < troubles->len; i++)
    {
      const CwSetOutTrouble *trouble
          = &g_array_index (troubles, CwSetOutTrouble, i);
      add_trouble (laying->layout, trouble->kind,
                   cw_frame_point (&laying->frame,
                                   trouble->at + laying->panel->joint / 2,
                                   middle),
                   laying->layout->courses->len);
    }
}

static void
lay_row (const Laying *laying, CwBonding *bond, const CwRow *row)
{
  CwLayout *layout = laying->layout;
  const CwPanelSize size = { laying->panel->length, laying->panel->height };
  const guint first_piece = layout->pieces->len;
  g_autoptr (GArray) stretches
      = g_array_new (FALSE, FALSE, sizeof (CwStretch));
  g_autoptr (GArray) troubles
      = g_array_new (FALSE, FALSE, sizeof (CwSetOutTrouble));
  g_autoptr (GArray) counts = g_array_new (FALSE, FALSE, sizeof (guint));
  CwSetOut out = { stretches, troubles };
  guint first = 0;

  cw_bond_set_out (bond, row, &out, counts);
  for (guint i = 0; i < counts->len; i++)
    {
      const CwRowRun *run = &g_array_index (row->runs, CwRowRun, i);
      const guint n = g_array_index (counts, guint, i);
      const CwStretch *of_run
          = &g_array_index (stretches, CwStretch, first);
      cw_pieces_of_run (&laying->frame, row, run, &size, of_run, n,
                        layout->pieces);
      cw_joints_of_run (&laying->frame, row, of_run, n, layout->joints);
      first += n;
    }
  number_course (laying, row, first_piece);
  note_troubles (laying, row, troubles);
}

static void
lay_rows (const Laying *laying)
{
  g_autoptr (GArray) courses = set_out_courses (laying);
  g_autoptr (GPtrArray) rows = cw_rows_of_region (
      &laying->frame, laying->layout->wall->net, courses);
  g_auto (CwBonding) bond;
  cw_bond_init (&bond, laying->layout->wall, &laying->frame,
                laying->layout->studs);
  for (guint i = 0; i < rows->len; i++)
    {
      lay_row (laying, &bond, g_ptr_array_index (rows, i));
      if (i > 0)
        cw_joints_of_rows (&laying->frame, g_ptr_array_index (rows, i - 1),
                           g_ptr_array_index (rows, i),
                           laying->layout->joints);
    }
}

static void
mark_holes (CwLayout *layout)
{
  for (guint i = 0; i < layout->wall->stub_outs->len; i++)
    {
      g_autoptr (CwRegion) hole = cw_stub_out_shape (
          g_ptr_array_index (layout->wall->stub_outs, i), TRUE);
      cw_classify_hole (&g_array_index (layout->pieces, CwPiece, 0),
                        layout->pieces->len, hole);
    }
}

static void
judge_pieces (const Laying *laying)
{
  GArray *pieces = laying->layout->pieces;
  mark_holes (laying->layout);
  for (guint i = 0; i < pieces->len; i++)
    {
      CwPiece *piece = &g_array_index (pieces, CwPiece, i);
      cw_classify_piece (piece, laying->frame.is_upright,
                         laying->setting_out->rasp);
      if (MIN (cw_box_width (&piece->box), cw_box_height (&piece->box))
          < laying->setting_out->least_piece)
        add_trouble (laying->layout, CW_TROUBLE_LEAST_PIECE,
                     middle_of (&piece->box), piece->course);
    }
}

static gboolean
can_lay (const Laying *laying, const CwBox *wall)
{
  const CwPanel *panel = laying->panel;
  if (panel->length <= 0 || panel->height <= 0 || panel->joint < 0)
    {
      add_trouble (laying->layout, CW_TROUBLE_NO_PANEL, middle_of (wall), 0);
      return FALSE;
    }
  const double one = cw_length_in_m (panel->length)
                     * cw_length_in_m (panel->height);
  if (cw_box_area (wall) / one > MOST_PANELS)
    {
      add_trouble (laying->layout, CW_TROUBLE_TOO_MANY, middle_of (wall), 0);
      return FALSE;
    }
  return TRUE;
}

CwLayout *
cw_layout_new (const CwWall *wall)
{
  g_return_val_if_fail (wall != NULL, NULL);

  CwLayout *layout = layout_begin (wall);
  if (!wall->outline || !wall->buildup)
    return layout;
  const CwBox box = cw_region_box (wall->outline);
  Laying laying
      = { .layout = layout,
          .panel = cw_list_at (wall->buildup->panels, 0),
          .setting_out = (const CwSettingOut *) wall->buildup->setting_out };
  laying.frame = cw_frame_new (laying.setting_out, &box);
  if (can_lay (&laying, &box))
    {
      lay_rows (&laying);
      judge_pieces (&laying);
    }
  return layout;
}

CwLayout *
cw_layout_ref (const CwLayout *layout)
{
  g_atomic_ref_count_inc (&((CwLayout *) layout)->count);
  return (CwLayout *) layout;
}

void
cw_layout_unref (CwLayout *layout)
{
  if (!g_atomic_ref_count_dec (&layout->count))
    return;
  cw_wall_unref (layout->wall);
  g_array_unref (layout->courses);
  g_array_unref (layout->pieces);
  g_array_unref (layout->joints);
  g_array_unref (layout->studs);
  g_array_unref (layout->troubles);
  g_free (layout);
}

gboolean
cw_layout_stands (const CwLayout *layout)
{
  g_return_val_if_fail (layout != NULL, FALSE);

  const CwBuildup *buildup = layout->wall->buildup;
  return buildup
         && ((const CwSettingOut *) buildup->setting_out)->run
                == CW_RUN_VERTICAL;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-bond.h"

#include "cw-taper.h"

GArray *
cw_bond_studs (const CwFrame *frame, const CwSettingOut *setting_out,
               const GArray *studs, gboolean line_is_upright)
{
  if (!setting_out->joints_on_studs || line_is_upright)
    return NULL;
  GArray *seen
      = g_array_sized_new (FALSE, FALSE, sizeof (CwLength), studs->len);
  for (guint i = 0; i < studs->len; i++)
    {
      guint from = frame->from_right ? studs->len - 1 - i : i;
      CwLength x = g_array_index (studs, CwLength, from);
      CwLength at = frame->from_right ? frame->wall.right - x
                                      : x - frame->wall.left;
      g_array_append_val (seen, at);
    }
  return seen;
}

void
cw_bond_init (CwBonding *bond, const CwWall *wall, const CwFrame *frame,
              const GArray *studs)
{
  *bond = (CwBonding) {
    .frame = *frame,
    .wall = wall,
    .setting_out = (const CwSettingOut *) wall->buildup->setting_out,
    .panel = cw_list_at (wall->buildup->panels, 0),
    .joints = g_array_new (FALSE, FALSE, sizeof (CwLength)),
  };
  bond->studs = cw_bond_studs (frame, bond->setting_out, studs,
                               frame->is_upright);
}

void
cw_bond_clear (CwBonding *bond)
{
  g_clear_pointer (&bond->studs, g_array_unref);
  g_clear_pointer (&bond->joints, g_array_unref);
}

static void
add_zone (CwSetOutRules *rules, CwLength low, CwLength high,
          CwTroubleKind kind)
{
  CwZone zone = { low, high, kind };
  if (low < high)
    g_array_append_val (rules->zones, zone);
}

/* Joints keep their distance from those of the course before. */
static void
add_stagger_zones (const CwBonding *bond, CwSetOutRules *rules)
{
  CwLength least = bond->setting_out->least_stagger;
  if (bond->setting_out->bond == CW_BOND_STACKED || least <= 0)
    return;
  for (guint i = 0; i < bond->joints->len; i++)
    {
      CwLength at = g_array_index (bond->joints, CwLength, i);
      add_zone (rules, at - least, at + least, CW_TROUBLE_LEAST_STAGGER);
    }
}

/* The clear opening under the springing, in the frame. */
static void
opening_extent (const CwBonding *bond, guint index, CwInterval *along,
                CwInterval *across)
{
  const CwOpening *opening
      = g_array_index (bond->wall->openings, CwWallOpening, index).opening;
  CwBox box = { opening->x, opening->y, opening->x + opening->width,
                opening->y + opening->height };
  *along = cw_frame_along_of (&bond->frame, &box);
  *across = cw_frame_across_of (&bond->frame, &box);
}

/* A corner of the opening lies in the course or on its joints. */
static gboolean
has_corner_in (CwInterval opening, CwInterval course, CwLength joint)
{
  CwLength low = course.low - joint, high = course.high + joint;
  return (opening.low >= low && opening.low <= high)
         || (opening.high >= low && opening.high <= high);
}

/* A notched panel runs past the corner by the least piece on either side,
 * so that no joint meets the corner. */
static void
add_corner_zones (const CwBonding *bond, const CwRow *row, CwSetOutRules *rules)
{
  for (guint i = 0; i < bond->wall->openings->len; i++)
    {
      CwInterval along, across;
      opening_extent (bond, i, &along, &across);
      if (!has_corner_in (across, row->across, rules->joint))
        continue;
      add_zone (rules, along.low - rules->least - rules->joint,
                along.low + rules->least, CW_TROUBLE_AT_CORNER);
      add_zone (rules, along.high - rules->least - rules->joint,
                along.high + rules->least, CW_TROUBLE_AT_CORNER);
    }
}

/* Ends of the lengths that a `break` at openings makes of the course: at
 * each jamb a joint within the opening's width, so that the panel beside the
 * opening ends flush with it. */
static GArray *
break_places (const CwBonding *bond, const CwRow *row)
{
  GArray *places = g_array_new (FALSE, FALSE, sizeof (CwLength));
  CwLength joint = bond->panel->joint;
  for (guint i = 0; i < bond->wall->openings->len; i++)
    {
      CwInterval along, across;
      opening_extent (bond, i, &along, &across);
      if (across.low >= row->across.high || across.high <= row->across.low
          || cw_interval_width (along) <= 2 * joint)
        continue;
      CwLength far_joint = along.high - joint;
      g_array_append_val (places, along.low);
      g_array_append_val (places, far_joint);
    }
  return places;
}

static int
compare_lengths (gconstpointer a, gconstpointer b)
{
  CwLength one = *(const CwLength *) a, other = *(const CwLength *) b;
  return (one > other) - (one < other);
}

static gboolean
is_broken (const CwBonding *bond)
{
  return bond->setting_out->at_openings == CW_AT_OPENINGS_BREAK;
}

static CwSetOutRules
rules_of_row (const CwBonding *bond, const CwRow *row)
{
  const CwLength least = MAX (bond->setting_out->least_piece, 1);
  CwSetOutRules rules = {
    .length = bond->panel->length,
    .joint = bond->panel->joint,
    .least = least,
    .least_low = least,
    .least_high = least,
    .one_if_it_fits = is_broken (bond),
    .zones = g_array_new (FALSE, FALSE, sizeof (CwZone)),
    .studs = bond->studs,
  };
  add_stagger_zones (bond, &rules);
  if (!is_broken (bond))
    add_corner_zones (bond, row, &rules);
  cw_zones_sort (&rules);
  return rules;
}

/* A course that begins with the rest of the last panel keeps its distance. */
static gboolean
rest_gives_stagger (const CwBonding *bond, CwLength joint)
{
  for (guint i = 0; i < bond->joints->len; i++)
    if (ABS (g_array_index (bond->joints, CwLength, i) - joint)
        < bond->setting_out->least_stagger)
      return FALSE;
  return TRUE;
}

static CwLength
origin_by_offcut (const CwBonding *bond, CwLength start)
{
  if (bond->rest < MAX (bond->setting_out->least_piece, 1)
      || !rest_gives_stagger (bond, start + bond->rest))
    return start;
  return start + bond->rest - bond->panel->length;
}

/* Where a panel of the course begins, counted from the wall's corner. The
 * offset belongs to x: to the panels of a level run, to the courses of an
 * upright one. */
static CwLength
origin_of_course (const CwBonding *bond, CwLength start)
{
  const CwSettingOut *setting_out = bond->setting_out;
  CwLength origin
      = bond->frame.is_upright ? setting_out->base : setting_out->offset;
  if (setting_out->bond == CW_BOND_OFFCUT && bond->course > 0)
    return origin_by_offcut (bond, start);
  if (setting_out->bond == CW_BOND_STAGGER)
    origin += setting_out->stagger % bond->panel->length * bond->course
              % bond->panel->length;
  return origin;
}

static gboolean
starts_in_both (const CwBonding *bond)
{
  return bond->setting_out->start == CW_START_BOTH
         && !bond->frame.is_upright;
}

/* There is one rest of a last panel, and it goes to the left corner. */
static void
set_out_length (const CwBonding *bond, const CwSetOutRules *rules,
                CwInterval length, CwLength origin, CwSetOut *out)
{
  if (starts_in_both (bond))
    cw_set_out_both_corners (
        rules, length, cw_interval_width (cw_frame_along (&bond->frame)),
        origin,
        bond->setting_out->bond == CW_BOND_OFFCUT && bond->course > 0
            ? 0
            : origin,
        out);
  else
    cw_set_out_run (rules, length,
                    cw_set_out_slot (rules, origin, length.low), out);
}

/* One length of a run, of which the ends may taper. */
static void
set_out_part (const CwBonding *bond, const CwRow *row, const CwRowRun *run,
              const CwSetOutRules *rules, CwInterval part, CwLength origin,
              CwSetOut *out)
{
  CwSetOutRules tapered = *rules;
  if (part.low == run->along.low)
    tapered.least_low = cw_taper_least (&bond->frame, row, run, part,
                                        rules->least, rules->length, TRUE);
  if (part.high == run->along.high)
    tapered.least_high = cw_taper_least (&bond->frame, row, run, part,
                                         rules->least, rules->length, FALSE);
  set_out_length (bond, &tapered, part, origin, out);
}

/* One run, in lengths between the joints that a break asks for. */
static void
set_out_row_run (const CwBonding *bond, const CwRow *row, const CwRowRun *run,
                 const CwSetOutRules *rules, const GArray *breaks,
                 CwLength origin, CwSetOut *out)
{
  CwInterval part = run->along;
  for (guint i = 0; i < breaks->len; i++)
    {
      CwLength at = g_array_index (breaks, CwLength, i);
      if (at <= part.low || at + rules->joint >= run->along.high)
        continue;
      part.high = at;
      set_out_part (bond, row, run, rules, part, origin, out);
      part.low = at + rules->joint;
    }
  part.high = run->along.high;
  set_out_part (bond, row, run, rules, part, origin, out);
}

/* The piece that was laid last: with it a panel was begun. */
static const CwStretch *
last_laid (const CwBonding *bond, const CwSetOutRules *rules,
           const GArray *stretches)
{
  guint last = stretches->len - 1;
  if (starts_in_both (bond))
    last = cw_set_out_closer (
        rules, stretches, cw_interval_width (cw_frame_along (&bond->frame)));
  return &g_array_index (stretches, CwStretch, last);
}

/* What the next course needs to know. */
static void
hand_on (CwBonding *bond, const CwSetOutRules *rules, const CwSetOut *out,
         const GArray *n_stretches)
{
  bond->course++;
  g_array_set_size (bond->joints, 0);
  guint first = 0;
  for (guint r = 0; r < n_stretches->len; r++)
    {
      guint n = g_array_index (n_stretches, guint, r);
      for (guint i = first; i + 1 < first + n; i++)
        g_array_append_val (
            bond->joints, g_array_index (out->stretches, CwStretch, i).high);
      first += n;
    }
  if (out->stretches->len == 0)
    return;
  const CwStretch *last = last_laid (bond, rules, out->stretches);
  bond->rest
      = bond->panel->length - (last->high - last->low) - bond->panel->kerf;
}

void
cw_bond_set_out (CwBonding *bond, const CwRow *row, CwSetOut *out,
                 GArray *n_stretches)
{
  CwSetOutRules rules = rules_of_row (bond, row);
  g_autoptr (GArray) zones = rules.zones;
  g_autoptr (GArray) breaks
      = is_broken (bond) ? break_places (bond, row)
                         : g_array_new (FALSE, FALSE, sizeof (CwLength));
  g_array_sort (breaks, compare_lengths);

  for (guint i = 0; i < row->runs->len; i++)
    {
      const CwRowRun *run = &g_array_index (row->runs, CwRowRun, i);
      CwLength start = g_array_index (row->runs, CwRowRun, 0).along.low;
      guint before = out->stretches->len;
      set_out_row_run (bond, row, run, &rules, breaks,
                       origin_of_course (bond, start), out);
      guint n = out->stretches->len - before;
      g_array_append_val (n_stretches, n);
    }
  hand_on (bond, &rules, out, n_stretches);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-set-out.h"

#include "cw-joint-places.h"

/* From all rules down to the least piece alone, the least important dropped
 * first. */
static const guint held_steps[] = {
  CW_HOLDS (CW_TROUBLE_AT_CORNER) | CW_HOLDS (CW_TROUBLE_LEAST_STAGGER)
      | CW_HOLDS (CW_TROUBLE_OFF_STUD),
  CW_HOLDS (CW_TROUBLE_LEAST_STAGGER) | CW_HOLDS (CW_TROUBLE_OFF_STUD),
  CW_HOLDS (CW_TROUBLE_OFF_STUD),
  0,
};

#define N_STEPS G_N_ELEMENTS (held_steps)

/* A run while it is laid. */
typedef struct
{
  const CwSetOutRules *rules;
  CwInterval run;
  gboolean looks_ahead;
  GArray *near;               /* places seen without */
  GPtrArray *places[N_STEPS]; /* (nullable): by step, worked out when needed */
  CwSetOut *out;
} Laying;

CwLength
cw_set_out_slot (const CwSetOutRules *rules, CwLength origin, CwLength at)
{
  CwLength pitch = rules->length + rules->joint;
  CwLength into = (at - origin) % pitch;
  if (into < 0)
    into += pitch;
  return into < rules->length ? at - into : at;
}

static void
add_trouble (CwSetOut *out, CwTroubleKind kind, CwLength at)
{
  CwSetOutTrouble trouble = { kind, at };
  g_array_append_val (out->troubles, trouble);
}

/* The rules that the joint at @place breaks. A piece below the least shows
 * on the piece itself, which may be narrow for other reasons too. */
static void
note_broken_rules (const Laying *laying, CwLength place)
{
  static const CwTroubleKind kinds[]
      = { CW_TROUBLE_AT_CORNER, CW_TROUBLE_LEAST_STAGGER,
          CW_TROUBLE_OFF_STUD };
  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    if (cw_joint_breaks (laying->rules, kinds[i], place))
      add_trouble (laying->out, kinds[i], place);
}

/* Where the next joint may begin so that a panel reaches from @start to it
 * and neither that piece nor what is left of the run is too narrow. */
static CwInterval
reach_of_joint (const Laying *laying, CwLength start)
{
  const CwSetOutRules *rules = laying->rules;
  CwLength end = laying->run.high - rules->joint;
  return (CwInterval) {
    start + (start == laying->run.low ? rules->least_low : rules->least),
    MIN (start + rules->length, end - rules->least_high),
  };
}

static const GPtrArray *
places_of_step (Laying *laying, guint step)
{
  if (!laying->places[step])
    laying->places[step]
        = cw_joint_places (laying->rules, laying->run, held_steps[step]);
  return laying->places[step];
}

/* How many joints the row of uncut panels has after the one wished for. */
static guint
n_joints_after (const Laying *laying, CwLength wish)
{
  const CwSetOutRules *rules = laying->rules;
  CwLength rest = laying->run.high - wish - rules->joint;
  return rest > 0 ? (guint) ((rest + rules->joint - 1)
                             / (rules->length + rules->joint)) : 0;
}

/* No more panels than there would be, unless the rules ask for them. */
static gboolean
place_by_step (Laying *laying, guint step, CwLength start, CwLength wish,
               CwLength *place)
{
  const CwJointWish wished
      = { .reach = reach_of_joint (laying, start),
          .wish = wish,
          .back_first
          = laying->rules->studs
            && (held_steps[step] & CW_HOLDS (CW_TROUBLE_OFF_STUD)) };
  const GPtrArray *places = places_of_step (laying, step);
  return cw_joint_place_ahead (places, n_joints_after (laying, wish), &wished,
                               place)
         || cw_joint_place_ahead (places, G_MAXUINT, &wished, place);
}

/* With all rules dropped, two last pieces that both ought to be wider share
 * what there is. */
static gboolean
place_anyhow (Laying *laying, CwLength start, CwLength wish, CwLength *place)
{
  const CwSetOutRules *rules = laying->rules;
  CwLength end = laying->run.high - rules->joint;
  CwInterval reach = { start + 1, MIN (start + rules->length, end - 1) };
  if (reach.low > reach.high)
    return FALSE;
  if (end - wish < rules->least)
    wish = MIN (wish, start + (end - start) / 2);
  *place = CLAMP (wish, reach.low, reach.high);
  return TRUE;
}

/* The nearest place that keeps all rules, whatever comes after it. */
static gboolean
place_at_sight (Laying *laying, CwLength start, CwLength wish,
                CwLength *place)
{
  const CwJointWish wished = { .reach = reach_of_joint (laying, start),
                               .wish = wish,
                               .back_first = laying->rules->studs != NULL };
  g_array_set_size (laying->near, 0);
  cw_joint_places_add (laying->rules, wished.reach, held_steps[0],
                       laying->near);
  return cw_joint_place_near (laying->near, &wished, place);
}

/* FALSE when the run ends without a joint: one panel, if it reaches, rather
 * than a rule broken, or no place for two. */
static gboolean
place_joint (Laying *laying, CwLength start, CwLength wish, CwLength *place)
{
  gboolean fits = laying->run.high - start <= laying->rules->length;
  for (guint step = 0; step < (fits ? 1 : N_STEPS); step++)
    if (place_by_step (laying, step, start, wish, place))
      {
        if (step > 0)
          note_broken_rules (laying, *place);
        return TRUE;
      }
  if (fits || !place_anyhow (laying, start, wish, place))
    return FALSE;
  note_broken_rules (laying, *place);
  return TRUE;
}

static void
add_stretch (CwSetOut *out, CwLength low, CwLength high, CwLength slot)
{
  CwStretch stretch = { low, high, slot };
  g_array_append_val (out->stretches, stretch);
}

/* FALSE when a joint has no place and the laying does not look ahead. */
static gboolean
lay_run (Laying *laying, CwLength slot)
{
  const CwSetOutRules *rules = laying->rules;
  CwLength start = laying->run.low, end = laying->run.high;
  CwLength wish = slot + rules->length;
  while (slot + rules->length < end)
    {
      CwLength joint, near = MIN (wish, start + rules->length);
      gboolean one
          = rules->one_if_it_fits && start + rules->length >= end;
      if (!one && !laying->looks_ahead
          && !place_at_sight (laying, start, near, &joint))
        return FALSE;
      if (one
          || (laying->looks_ahead
              && !place_joint (laying, start, near, &joint)))
        {
          slot = start;
          break;
        }
      add_stretch (laying->out, start, joint,
                   start > slot ? joint - rules->length : start);
      start = slot = joint + rules->joint;
      wish += rules->length + rules->joint;
    }
  add_stretch (laying->out, start, end, slot);
  return TRUE;
}

/* Mostly the nearest place serves for every joint; only where it does not is
 * it worth the time to look ahead. */
void
cw_set_out_run (const CwSetOutRules *rules, CwInterval run,
                CwLength first_slot, CwSetOut *out)
{
  g_return_if_fail (rules->length > 0 && rules->joint >= 0);
  g_return_if_fail (rules->least > 0 && first_slot <= run.low);

  const guint before = out->stretches->len;
  g_autoptr (GArray) near = g_array_new (FALSE, FALSE, sizeof (CwInterval));
  Laying laying = { .rules = rules, .run = run, .near = near, .out = out };
  if (!lay_run (&laying, first_slot))
    {
      g_array_set_size (out->stretches, before);
      laying.looks_ahead = TRUE;
      lay_run (&laying, first_slot);
    }
  for (guint step = 0; step < N_STEPS; step++)
    g_clear_pointer (&laying.places[step], g_ptr_array_unref);
}

static CwInterval
mirror_interval (CwInterval interval, CwLength about)
{
  return (CwInterval) { about - interval.high, about - interval.low };
}

static GArray *
mirror_zones (const CwSetOutRules *rules, CwLength about)
{
  if (!rules->zones)
    return NULL;
  GArray *zones = g_array_sized_new (FALSE, FALSE, sizeof (CwZone),
                                     rules->zones->len);
  for (guint i = 0; i < rules->zones->len; i++)
    {
      CwZone zone = g_array_index (rules->zones, CwZone, i);
      /* Zones say where joints begin; seen from the far side they end. */
      CwInterval turned = mirror_interval (
          (CwInterval) { zone.low + rules->joint, zone.high + rules->joint },
          about);
      zone.low = turned.low;
      zone.high = turned.high;
      g_array_append_val (zones, zone);
    }
  return zones;
}

static GArray *
mirror_studs (const CwSetOutRules *rules, CwLength about)
{
  if (!rules->studs)
    return NULL;
  GArray *studs = g_array_new (FALSE, FALSE, sizeof (CwLength));
  for (guint i = rules->studs->len; i > 0; i--)
    {
      CwLength stud = about - g_array_index (rules->studs, CwLength, i - 1);
      g_array_append_val (studs, stud);
    }
  return studs;
}

/* The run laid from its far end, everything seen from there. */
static void
set_out_mirrored (const CwSetOutRules *rules, CwInterval run, CwLength slot,
                  CwSetOut *out)
{
  CwLength about = run.low + run.high;
  g_autoptr (GArray) zones = mirror_zones (rules, about);
  g_autoptr (GArray) studs = mirror_studs (rules, about);
  CwSetOutRules mirrored = *rules;
  mirrored.zones = zones;
  mirrored.studs = studs;
  mirrored.least_low = rules->least_high;
  mirrored.least_high = rules->least_low;
  cw_zones_sort (&mirrored);
  cw_set_out_run (&mirrored, run, slot, out);
}

/* How many stretches from the far end are laid from there: those whose joint
 * stands beyond the middle, and the last when all of the run does. What is
 * left for the near corner must not be too narrow for a piece. */
static guint
n_from_far (const CwSetOutRules *rules, const GArray *stretches,
            CwInterval run, CwLength middle)
{
  CwLength about = run.low + run.high;
  guint n = 0;
  for (; n + 1 < stretches->len; n++)
    {
      CwLength joint_end
          = about - g_array_index (stretches, CwStretch, n).high;
      if (2 * joint_end - rules->joint < 2 * middle
          || joint_end - rules->joint - run.low < rules->least_low)
        return n;
    }
  return run.low >= middle ? n + 1 : n;
}

static void
append_mirrored (const CwSetOutRules *rules, const CwSetOut *far, guint n,
                 CwLength about, CwSetOut *out)
{
  for (guint i = n; i > 0; i--)
    {
      CwStretch stretch = g_array_index (far->stretches, CwStretch, i - 1);
      add_stretch (out, about - stretch.high, about - stretch.low,
                   about - stretch.slot - rules->length);
    }
  for (guint i = 0; i < far->troubles->len && n > 0; i++)
    {
      CwSetOutTrouble trouble
          = g_array_index (far->troubles, CwSetOutTrouble, i);
      if (trouble.at <= g_array_index (far->stretches, CwStretch, n - 1).high)
        add_trouble (out, trouble.kind, about - trouble.at - rules->joint);
    }
}

static void
set_out_both (const CwSetOutRules *rules, CwInterval run, CwLength middle,
              CwLength first_slot, CwLength last_slot_end, CwSetOut *out)
{
  g_autoptr (GArray) stretches
      = g_array_new (FALSE, FALSE, sizeof (CwStretch));
  g_autoptr (GArray) troubles
      = g_array_new (FALSE, FALSE, sizeof (CwSetOutTrouble));
  CwSetOut far = { stretches, troubles };
  CwLength about = run.low + run.high;
  set_out_mirrored (rules, run, about - last_slot_end, &far);

  guint n = n_from_far (rules, stretches, run, middle);
  if (n > 0)
    run.high = about - g_array_index (stretches, CwStretch, n - 1).high
               - rules->joint;
  if (run.high > run.low)
    cw_set_out_run (rules, run, first_slot, out);
  append_mirrored (rules, &far, n, about, out);
}

void
cw_set_out_both_corners (const CwSetOutRules *rules, CwInterval run,
                         CwLength wall, CwLength left, CwLength right,
                         CwSetOut *out)
{
  g_return_if_fail (rules->length > 0 && rules->joint >= 0);

  set_out_both (rules, run, wall / 2,
                cw_set_out_slot (rules, left, run.low),
                wall - cw_set_out_slot (rules, right, wall - run.high), out);
}

guint
cw_set_out_closer (const CwSetOutRules *rules, const GArray *stretches,
                   CwLength wall)
{
  g_return_val_if_fail (stretches->len > 0, 0);

  guint i = 0;
  while (i + 1 < stretches->len
         && 2 * g_array_index (stretches, CwStretch, i).high + rules->joint
                < wall)
    i++;
  return i;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-set-out.h"

/* Which rules are still held, as a mask of trouble kinds. */
typedef guint Held;

#define HOLDS(kind) (1u << (kind))

/* From all rules down to none, the least important dropped first. */
static const Held held_steps[] = {
  HOLDS (CW_TROUBLE_AT_CORNER) | HOLDS (CW_TROUBLE_LEAST_STAGGER)
      | HOLDS (CW_TROUBLE_OFF_STUD) | HOLDS (CW_TROUBLE_LEAST_PIECE),
  HOLDS (CW_TROUBLE_LEAST_STAGGER) | HOLDS (CW_TROUBLE_OFF_STUD)
      | HOLDS (CW_TROUBLE_LEAST_PIECE),
  HOLDS (CW_TROUBLE_OFF_STUD) | HOLDS (CW_TROUBLE_LEAST_PIECE),
  HOLDS (CW_TROUBLE_LEAST_PIECE),
};

static int
compare_zones (gconstpointer a, gconstpointer b)
{
  const CwZone *one = a, *other = b;
  return (one->low > other->low) - (one->low < other->low);
}

void
cw_zones_sort (CwSetOutRules *rules)
{
  rules->widest_zone = 0;
  if (!rules->zones)
    return;
  g_array_sort (rules->zones, compare_zones);
  for (guint i = 0; i < rules->zones->len; i++)
    {
      const CwZone *zone = &g_array_index (rules->zones, CwZone, i);
      rules->widest_zone = MAX (rules->widest_zone, zone->high - zone->low);
    }
}

CwLength
cw_set_out_slot (const CwSetOutRules *rules, CwLength origin, CwLength at)
{
  CwLength pitch = rules->length + rules->joint;
  CwLength into = (at - origin) % pitch;
  if (into < 0)
    into += pitch;
  return into < rules->length ? at - into : at;
}

/* The first zone that can reach @at: zones before it end at or before @at. */
static guint
first_zone_near (const CwSetOutRules *rules, CwLength at)
{
  guint low = 0, high = rules->zones->len;
  while (low < high)
    {
      guint middle = low + (high - low) / 2;
      if (g_array_index (rules->zones, CwZone, middle).low
          <= at - rules->widest_zone)
        low = middle + 1;
      else
        high = middle;
    }
  return low;
}

/* A zone of a kind that is held and has @at inside, or NULL. */
static const CwZone *
zone_at (const CwSetOutRules *rules, Held held, CwLength at)
{
  if (!rules->zones)
    return NULL;
  for (guint i = first_zone_near (rules, at); i < rules->zones->len; i++)
    {
      const CwZone *zone = &g_array_index (rules->zones, CwZone, i);
      if (zone->low >= at)
        break;
      if (zone->high > at && (held & HOLDS (zone->kind)))
        return zone;
    }
  return NULL;
}

static CwLength
free_before (const CwSetOutRules *rules, Held held, CwLength at)
{
  const CwZone *zone;
  while ((zone = zone_at (rules, held, at)))
    at = zone->low;
  return at;
}

static CwLength
free_after (const CwSetOutRules *rules, Held held, CwLength at)
{
  const CwZone *zone;
  while ((zone = zone_at (rules, held, at)))
    at = zone->high;
  return at;
}

static gboolean
place_freely (const CwSetOutRules *rules, Held held, CwInterval reach,
              CwLength wish, CwLength *place)
{
  CwLength before = free_before (rules, held, wish);
  CwLength after = free_after (rules, held, wish);
  gboolean has_before = before >= reach.low;
  gboolean has_after = after <= reach.high;
  *place = !has_after || (has_before && wish - before <= after - wish)
               ? before
               : after;
  return has_before || has_after;
}

/* A joint on a stud begins half a joint before the stud's centre line. */
static CwLength
joint_at_stud (const CwSetOutRules *rules, guint index)
{
  return g_array_index (rules->studs, CwLength, index) - rules->joint / 2;
}

/* The number of studs whose joint begins at or before @at. */
static guint
studs_up_to (const CwSetOutRules *rules, CwLength at)
{
  guint low = 0, high = rules->studs->len;
  while (low < high)
    {
      guint middle = low + (high - low) / 2;
      if (joint_at_stud (rules, middle) <= at)
        low = middle + 1;
      else
        high = middle;
    }
  return low;
}

/* Back from the wish to the nearest stud; forward only when there is none. */
static gboolean
place_on_stud (const CwSetOutRules *rules, Held held, CwInterval reach,
               CwLength wish, CwLength *place)
{
  guint after = studs_up_to (rules, wish);
  for (guint i = after; i > 0; i--)
    {
      *place = joint_at_stud (rules, i - 1);
      if (*place < reach.low)
        break;
      if (!zone_at (rules, held, *place))
        return TRUE;
    }
  for (guint i = after; i < rules->studs->len; i++)
    {
      *place = joint_at_stud (rules, i);
      if (*place > reach.high)
        break;
      if (!zone_at (rules, held, *place))
        return TRUE;
    }
  return FALSE;
}

/* Where the run's next joint may begin so that the piece before it, from
 * @start, is possible, and, while that rule is held, neither that piece nor
 * what is left of the run is narrower than the least. */
static CwInterval
reach_of_joint (const CwSetOutRules *rules, Held held, CwLength start,
                CwLength end)
{
  CwLength least = held & HOLDS (CW_TROUBLE_LEAST_PIECE) ? rules->least : 1;
  return (CwInterval) {
    start + least,
    MIN (start + rules->length, end - rules->joint - least),
  };
}

static gboolean
place_held (const CwSetOutRules *rules, Held held, CwInterval reach,
            CwLength wish, CwLength *place)
{
  if (reach.low > reach.high)
    return FALSE;
  wish = CLAMP (wish, reach.low, reach.high);
  if (rules->studs && (held & HOLDS (CW_TROUBLE_OFF_STUD)))
    return place_on_stud (rules, held, reach, wish, place);
  return place_freely (rules, held, reach, wish, place);
}

static gboolean
is_on_stud (const CwSetOutRules *rules, CwLength place)
{
  guint n = studs_up_to (rules, place);
  return n > 0 && joint_at_stud (rules, n - 1) == place;
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
note_broken_rules (const CwSetOutRules *rules, CwLength place, CwSetOut *out)
{
  if (zone_at (rules, HOLDS (CW_TROUBLE_AT_CORNER), place))
    add_trouble (out, CW_TROUBLE_AT_CORNER, place);
  if (zone_at (rules, HOLDS (CW_TROUBLE_LEAST_STAGGER), place))
    add_trouble (out, CW_TROUBLE_LEAST_STAGGER, place);
  if (rules->studs && !is_on_stud (rules, place))
    add_trouble (out, CW_TROUBLE_OFF_STUD, place);
}

/* With all rules dropped, two last pieces that both ought to be wider share
 * what there is. */
static CwLength
place_anyhow (const CwSetOutRules *rules, CwInterval reach, CwLength start,
              CwLength end, CwLength wish)
{
  if (end - rules->joint - wish < rules->least)
    wish = MIN (wish, start + (end - rules->joint - start) / 2);
  return CLAMP (wish, reach.low, reach.high);
}

/* FALSE when the run is too short to hold a joint at all. */
static gboolean
place_joint (const CwSetOutRules *rules, CwLength start, CwLength end,
             CwLength wish, CwSetOut *out, CwLength *place)
{
  for (guint i = 0; i < G_N_ELEMENTS (held_steps); i++)
    {
      CwInterval reach = reach_of_joint (rules, held_steps[i], start, end);
      if (place_held (rules, held_steps[i], reach, wish, place))
        {
          if (i > 0)
            note_broken_rules (rules, *place, out);
          return TRUE;
        }
    }
  /* One panel rather than two that are too narrow. */
  if (end - start <= rules->length)
    return FALSE;
  CwInterval reach = reach_of_joint (rules, 0, start, end);
  if (reach.low > reach.high)
    return FALSE;
  *place = place_anyhow (rules, reach, start, end, wish);
  note_broken_rules (rules, *place, out);
  return TRUE;
}

static void
add_stretch (CwSetOut *out, CwLength low, CwLength high, CwLength slot)
{
  CwStretch stretch = { low, high, slot };
  g_array_append_val (out->stretches, stretch);
}

void
cw_set_out_run (const CwSetOutRules *rules, CwInterval run,
                CwLength first_slot, CwSetOut *out)
{
  g_return_if_fail (rules->length > 0 && rules->joint >= 0);
  g_return_if_fail (rules->least > 0 && first_slot <= run.low);

  CwLength start = run.low, slot = first_slot;
  CwLength wish = slot + rules->length;
  while (slot + rules->length < run.high)
    {
      CwLength joint;
      gboolean fits = start + rules->length >= run.high;
      if ((fits && rules->one_if_it_fits)
          || !place_joint (rules, start, run.high,
                           MIN (wish, start + rules->length), out, &joint))
        {
          slot = start;
          break;
        }
      add_stretch (out, start, joint,
                   start > slot ? joint - rules->length : start);
      start = slot = joint + rules->joint;
      wish += rules->length + rules->joint;
    }
  add_stretch (out, start, run.high, slot);
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
          || joint_end - rules->joint - run.low < rules->least)
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

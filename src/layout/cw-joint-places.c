/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-joint-places.h"

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
zone_at (const CwSetOutRules *rules, guint held, CwLength at)
{
  if (!rules->zones)
    return NULL;
  for (guint i = first_zone_near (rules, at); i < rules->zones->len; i++)
    {
      const CwZone *zone = &g_array_index (rules->zones, CwZone, i);
      if (zone->low >= at)
        break;
      if (zone->high > at && (held & CW_HOLDS (zone->kind)))
        return zone;
    }
  return NULL;
}

static CwLength
free_after (const CwSetOutRules *rules, guint held, CwLength at)
{
  const CwZone *zone;
  while ((zone = zone_at (rules, held, at)))
    at = zone->high;
  return at;
}

/* Where the first held zone at or after @at begins; @end when none does. */
static CwLength
next_zone (const CwSetOutRules *rules, guint held, CwLength at, CwLength end)
{
  if (!rules->zones)
    return end;
  for (guint i = first_zone_near (rules, at); i < rules->zones->len; i++)
    {
      const CwZone *zone = &g_array_index (rules->zones, CwZone, i);
      if (zone->low >= end)
        break;
      if (zone->low >= at && (held & CW_HOLDS (zone->kind)))
        return zone->low;
    }
  return end;
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

static void
add_place (GArray *places, CwLength low, CwLength high)
{
  const CwInterval place = { low, high };
  g_array_append_val (places, place);
}

static void
add_between_zones (const CwSetOutRules *rules, guint held, CwInterval span,
                   GArray *places)
{
  for (CwLength at = free_after (rules, held, span.low); at <= span.high;)
    {
      CwLength end = next_zone (rules, held, at, span.high);
      add_place (places, at, end);
      at = free_after (rules, held, end + 1);
    }
}

static void
add_on_studs (const CwSetOutRules *rules, guint held, CwInterval span,
              GArray *places)
{
  for (guint i = studs_up_to (rules, span.low - 1); i < rules->studs->len;
       i++)
    {
      CwLength at = joint_at_stud (rules, i);
      if (at > span.high)
        break;
      if (!zone_at (rules, held, at))
        add_place (places, at, at);
    }
}

void
cw_joint_places_add (const CwSetOutRules *rules, CwInterval span, guint held,
                     GArray *places)
{
  if (span.low > span.high)
    return;
  if (rules->studs && (held & CW_HOLDS (CW_TROUBLE_OFF_STUD)))
    add_on_studs (rules, held, span, places);
  else
    add_between_zones (rules, held, span, places);
}

static int
compare_places (gconstpointer a, gconstpointer b)
{
  const CwInterval *one = a, *other = b;
  return (one->low > other->low) - (one->low < other->low);
}

static void
merge_places (GArray *places)
{
  g_array_sort (places, compare_places);
  guint n = 0;
  CwInterval *at = (CwInterval *) (gpointer) places->data;
  for (guint i = 0; i < places->len; i++)
    if (n > 0 && at[i].low <= at[n - 1].high)
      at[n - 1].high = MAX (at[n - 1].high, at[i].high);
    else
      at[n++] = at[i];
  g_array_set_size (places, n);
}

/* Where a joint may begin so that the next one stands at one of @next. */
static GArray *
places_before (const CwSetOutRules *rules, guint held, CwLength start,
               const GArray *next)
{
  g_autoptr (GArray) spans
      = g_array_new (FALSE, FALSE, sizeof (CwInterval));
  GArray *places = g_array_new (FALSE, FALSE, sizeof (CwInterval));
  for (guint i = 0; i < next->len; i++)
    {
      CwInterval span = g_array_index (next, CwInterval, i);
      span.low = MAX (span.low - rules->joint - rules->length, start + 1);
      span.high -= rules->joint + rules->least;
      if (span.low <= span.high)
        g_array_append_val (spans, span);
    }
  merge_places (spans);
  for (guint i = 0; i < spans->len; i++)
    cw_joint_places_add (rules, g_array_index (spans, CwInterval, i), held,
                         places);
  return places;
}

GPtrArray *
cw_joint_places (const CwSetOutRules *rules, CwInterval run, guint held)
{
  GPtrArray *all
      = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  GArray *places = g_array_new (FALSE, FALSE, sizeof (CwInterval));
  const CwInterval last
      = { MAX (run.high - rules->joint - rules->length, run.low + 1),
          run.high - rules->joint - rules->least_high };
  /* Pieces of half a panel on average are more than any run needs. */
  gint64 n = 2 * cw_interval_width (run) / (rules->length + rules->joint) + 4;

  cw_joint_places_add (rules, last, held, places);
  for (; n > 0 && places->len > 0; n--)
    {
      g_ptr_array_add (all, places);
      places = places_before (rules, held, run.low, places);
    }
  g_array_unref (places);
  return all;
}

/* How many of @places begin at or before @at. */
static guint
places_up_to (const GArray *places, CwLength at)
{
  guint low = 0, high = places->len;
  while (low < high)
    {
      guint middle = low + (high - low) / 2;
      if (g_array_index (places, CwInterval, middle).low <= at)
        low = middle + 1;
      else
        high = middle;
    }
  return low;
}

gboolean
cw_joint_place_near (const GArray *places, const CwJointWish *wish,
                     CwLength *place)
{
  const CwInterval reach = wish->reach;
  if (reach.low > reach.high)
    return FALSE;
  CwLength at = CLAMP (wish->wish, reach.low, reach.high);
  CwLength before = reach.low - 1, after = reach.high + 1;
  guint n = places_up_to (places, at);
  if (n > 0)
    before = MIN (g_array_index (places, CwInterval, n - 1).high, at);
  if (n < places->len)
    after = g_array_index (places, CwInterval, n).low;
  gboolean has_before = before >= reach.low, has_after = after <= reach.high;
  gboolean goes_back
      = has_before
        && (!has_after || wish->back_first || at - before <= after - at);
  *place = goes_back ? before : after;
  return has_before || has_after;
}

/* TRUE when @one serves the wish better than @other. */
static gboolean
is_nearer (const CwJointWish *wish, CwLength one, CwLength other)
{
  if (wish->back_first && (one <= wish->wish) != (other <= wish->wish))
    return one <= wish->wish;
  CwLength far = ABS (one - wish->wish) - ABS (other - wish->wish);
  return far < 0 || (far == 0 && one < other);
}

gboolean
cw_joint_place_ahead (const GPtrArray *places, guint n_after,
                      const CwJointWish *wish, CwLength *place)
{
  gboolean found = FALSE;
  for (guint i = 0; i < places->len && i <= n_after; i++)
    {
      CwLength at;
      if (!cw_joint_place_near (g_ptr_array_index (places, i), wish, &at)
          || (found && !is_nearer (wish, at, *place)))
        continue;
      *place = at;
      found = TRUE;
    }
  return found;
}

gboolean
cw_joint_breaks (const CwSetOutRules *rules, CwTroubleKind kind, CwLength at)
{
  if (kind != CW_TROUBLE_OFF_STUD)
    return zone_at (rules, CW_HOLDS (kind), at) != NULL;
  if (!rules->studs)
    return FALSE;
  guint n = studs_up_to (rules, at);
  return n == 0 || joint_at_stud (rules, n - 1) != at;
}

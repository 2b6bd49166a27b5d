/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-panel-mix.h"

#include <math.h>

#include "cw-cut-panel.h"
#include "cw-mix-search.h"
#include "cw-panel-rests.h"

static CwMixKinds *
kinds_of (const CwBuildup *buildup)
{
  const guint n = (guint) cw_list_length (buildup->panels);
  CwMixKinds *kinds = cw_mix_kinds_new (n);
  gboolean is_priced = TRUE;

  for (guint i = 0; i < n; i++)
    if (cw_panel_rules (buildup, i, &kinds->rules[i]))
      {
        const CwPanel *panel = cw_list_at (buildup->panels, i);

        kinds->is_usable[i] = TRUE;
        kinds->costs[i] = cw_decimal_to_double (panel->price);
        is_priced = is_priced && kinds->costs[i] > 0;
      }
  for (guint i = 0; i < n && !is_priced; i++)
    kinds->costs[i] = cw_length_in_m (kinds->rules[i].length)
                      * cw_length_in_m (kinds->rules[i].height);
  return kinds;
}

static const CwBuildup *
buildup_of (const CwPanelMix *mix)
{
  return ((const CwLayout *) mix->base->layouts->pdata[0])->wall->buildup;
}

/* The pieces of @base that come out of one kind of panel. */
typedef struct
{
  const CwPanelPlan *base;
  CwPanelPlan *plan;
  guint *numbers;            /* of each of the base's blanks, its place here */
} Part;

static void
take_pieces (Part *part, const guint *kind_of, guint kind)
{
  const CwPanelPlan *base = part->base;

  for (guint i = 0; i < base->pieces->len; i++)
    {
      if (kind_of[i] != kind)
        continue;
      part->numbers[i] = part->plan->pieces->len;
      g_array_append_val (part->plan->pieces,
                          g_array_index (base->pieces, CwPanelPiece, i));
      g_array_append_val (part->plan->blanks,
                          g_array_index (base->blanks, CwCutBlank, i));
    }
}

static void
take_rests (Part *part, const guint *kind_of, guint kind)
{
  const CwPanelPlan *base = part->base;

  for (guint i = 0; i < base->rests->len; i++)
    {
      CwPanelRest rest = g_array_index (base->rests, CwPanelRest, i);

      if (kind_of[rest.host] != kind)
        continue;
      rest.host = part->numbers[rest.host];
      if (rest.cut)
        rest.cut = cw_cut_panel_renamed (rest.cut, part->numbers);
      g_array_append_val (part->plan->rests, rest);
    }
}

static CwPanelPlan *
part_new (const CwPanelMix *mix, const guint *kind_of, guint kind)
{
  const CwPanelPlan *base = mix->base;
  const CwCutPlan *cut = mix->cuts->pdata[kind];
  g_autofree guint *numbers = g_new0 (guint, base->pieces->len + 1);
  CwPanelPlan *plan
      = cw_panel_plan_new_empty (base->layouts, kind == 0 ? base->n_whole : 0);
  Part part = { base, plan, numbers };

  take_pieces (&part, kind_of, kind);
  take_rests (&part, kind_of, kind);
  plan->effort = mix->effort;
  if (plan->pieces->len == 0)
    return plan;
  plan->cut = cw_cut_plan_renamed (cut, numbers);
  plan->n_panels += plan->cut->panels->len;
  plan->cut->least = cw_panel_rests_bound (plan, plan->cut, &cut->rules,
                                           CW_CUT_EFFORT_FIRST, NULL);
  plan->least += plan->cut->least;
  return plan;
}

static void
note_hosts (const CwPanelPlan *base, guint *host_of)
{
  for (guint i = 0; i < base->rests->len; i++)
    {
      const CwPanelRest *rest = &g_array_index (base->rests, CwPanelRest, i);

      for (guint j = 0; rest->cut && j < rest->cut->placements->len; j++)
        host_of[g_array_index (rest->cut->placements, CwCutPlacement, j)
                    .blank]
            = rest->host;
    }
}

static void
note_kinds (const CwPanelMix *mix, guint *kind_of)
{
  for (guint kind = 0; kind < mix->cuts->len; kind++)
    {
      const CwCutPlan *cut = mix->cuts->pdata[kind];

      for (guint i = 0; cut && i < cut->panels->len; i++)
        {
          const GArray *placements
              = ((const CwCutPanel *) cut->panels->pdata[i])->placements;

          for (guint j = 0; j < placements->len; j++)
            kind_of[g_array_index (placements, CwCutPlacement, j).blank]
                = kind;
        }
    }
}

/* (transfer full): of each blank the panel that it comes out of, through
 * rests too */
static guint *
kinds_of_blanks (const CwPanelMix *mix)
{
  const guint n = mix->base->blanks->len;
  g_autofree guint *host_of = g_new (guint, n + 1);
  guint *kind_of = g_new0 (guint, n + 1);

  for (guint i = 0; i < n; i++)
    host_of[i] = i;
  note_hosts (mix->base, host_of);
  note_kinds (mix, kind_of);
  for (guint i = 0; i < n; i++)
    {
      guint root = i;

      while (host_of[root] != root)
        root = host_of[root];
      kind_of[i] = kind_of[root];
    }
  return kind_of;
}

static void
part_plans (CwPanelMix *mix, guint n)
{
  g_autofree guint *kind_of = mix->cuts ? kinds_of_blanks (mix) : NULL;

  for (guint kind = 0; kind < n; kind++)
    if (mix->cuts)
      g_ptr_array_add (mix->plans, part_new (mix, kind_of, kind));
    else if (kind == 0)
      g_ptr_array_add (mix->plans, cw_panel_plan_ref (mix->base));
    else
      {
        CwPanelPlan *plan = cw_panel_plan_new_empty (mix->base->layouts, 0);

        plan->effort = mix->effort;
        g_ptr_array_add (mix->plans, plan);
      }
}

static void
sum_up (CwPanelMix *mix, const CwMixKinds *kinds)
{
  for (guint kind = 0; kind < mix->plans->len; kind++)
    {
      const CwPanelPlan *plan = mix->plans->pdata[kind];

      mix->n_panels += plan->n_panels;
      mix->cost += plan->n_panels * kinds->costs[kind];
    }
}

/* As long as the longest and as high as the highest. */
static CwCutRules
largest_of (const CwMixKinds *kinds)
{
  CwCutRules largest = kinds->rules[0];

  for (guint i = 0; i < kinds->n; i++)
    if (kinds->is_usable[i])
      {
        largest.length = MAX (largest.length, kinds->rules[i].length);
        largest.height = MAX (largest.height, kinds->rules[i].height);
      }
  return largest;
}

static guint
least_of (const CwPanelMix *mix, const CwMixKinds *kinds,
          GCancellable *cancellable)
{
  const CwPanelPlan *base = mix->base;
  const CwCutRules largest = largest_of (kinds);

  if (base->cut == NULL
      || (largest.length == kinds->rules[0].length
          && largest.height == kinds->rules[0].height))
    return base->least;
  return base->n_whole
         + cw_panel_rests_bound (base, base->cut, &largest, base->effort,
                                 cancellable);
}

static double
area_with_kerf (CwLength width, CwLength height, CwLength kerf)
{
  return cw_length_in_m (width + kerf) * cw_length_in_m (height + kerf);
}

/* Every m² of blank, the kerf in it, costs at least as much as a m² of the
 * panel that gives most for its cost. */
static double
least_cost_of (const CwPanelMix *mix, const CwMixKinds *kinds)
{
  const CwPanelPlan *base = mix->base;
  const CwCutRules *first = &kinds->rules[0];
  const CwLength kerf = first->kerf;
  double area = 0, rate = G_MAXDOUBLE;

  for (guint i = 0; i < base->blanks->len; i++)
    {
      const CwCutBlank *blank = &g_array_index (base->blanks, CwCutBlank, i);

      area += area_with_kerf (MIN (blank->width, first->length),
                              MIN (blank->height, first->height), kerf);
    }
  for (guint i = 0; i < base->rests->len; i++)
    {
      const CwPanelRest *rest = &g_array_index (base->rests, CwPanelRest, i);

      area -= area_with_kerf (rest->width, rest->height, kerf);
    }
  for (guint i = 0; i < kinds->n; i++)
    if (kinds->is_usable[i])
      rate = MIN (rate, kinds->costs[i]
                            / area_with_kerf (kinds->rules[i].length,
                                              kinds->rules[i].height, kerf));
  return base->n_whole * kinds->costs[0] + MAX (area, 0) * rate;
}

static CwPanelMix *
mix_begin (CwPanelPlan *base)
{
  CwPanelMix *mix = g_new0 (CwPanelMix, 1);

  g_atomic_ref_count_init (&mix->count);
  mix->base = base;
  mix->effort = base->effort;
  mix->plans = g_ptr_array_new_with_free_func (
      (GDestroyNotify) cw_panel_plan_unref);
  return mix;
}

static gboolean
are_same_costs (const CwMixKinds *kinds, const CwPanelMix *former)
{
  g_autoptr (CwMixKinds) then = kinds_of (buildup_of (former));

  return cw_mix_kinds_equal (kinds, then);
}

/* The cuts of @former where nothing that decides on them has changed. */
static gboolean
take_former (CwPanelMix *mix, const CwMixKinds *kinds,
             const CwPanelMix *former)
{
  if (!former || former->base->cut != mix->base->cut
      || former->effort < mix->effort || !are_same_costs (kinds, former))
    return FALSE;
  mix->effort = former->effort;
  mix->cuts = former->cuts ? g_ptr_array_ref (former->cuts) : NULL;
  return TRUE;
}

static void
fill_mix (CwPanelMix *mix, const CwMixKinds *kinds)
{
  part_plans (mix, kinds->n);
  sum_up (mix, kinds);
}

/* A mix of the cheapest panels. (transfer full): @base is taken over */
static CwPanelMix *
search_mix (CwPanelPlan *base, const CwMixKinds *kinds,
            const CwPanelMix *former, GCancellable *cancellable)
{
  CwPanelMix *mix = mix_begin (base);

  if (cw_mix_kinds_are_several (kinds) && base->cut
      && !take_former (mix, kinds, former))
    mix->cuts = cw_mix_search (base, kinds, cancellable);
  fill_mix (mix, kinds);
  return mix;
}

/* Whoever looked then looked at rests too. */
static gboolean
is_taken_over (const CwPanelMix *mix, const CwPanelMix *former)
{
  return former && mix->cuts == former->cuts
         && mix->base->cut == former->base->cut
         && mix->effort <= former->effort;
}

/* What comes out of rests may save no panel of the base and yet make room for
 * a cheaper one. (transfer full): @mix or a better one */
static CwPanelMix *
or_with_rests (CwPanelMix *mix, const CwMixKinds *kinds,
               const CwPanelMix *former, GCancellable *cancellable)
{
  CwPanelPlan *base;
  CwPanelMix *other;

  if (!cw_mix_kinds_are_several (kinds) || mix->effort == CW_CUT_EFFORT_FIRST
      || is_taken_over (mix, former)
      || (base = cw_panel_plan_with_rests (mix->base, cancellable)) == NULL)
    return mix;
  other = search_mix (base, kinds, NULL, cancellable);
  if (other->cost < mix->cost * (1 - 1e-9))
    {
      cw_panel_mix_unref (mix);
      return other;
    }
  cw_panel_mix_unref (other);
  return mix;
}

CwPanelMix *
cw_panel_mix_new (const CwPanelWalls *walls, guint n_walls, CwOffcuts offcuts,
                  CwCutEffort effort, const CwPanelMix *former,
                  GCancellable *cancellable)
{
  g_return_val_if_fail (walls != NULL && n_walls > 0, NULL);

  g_autoptr (CwMixKinds) kinds = kinds_of (walls[0].layout->wall->buildup);
  CwPanelPlan *base
      = cw_panel_plan_new (walls, n_walls, 0, offcuts, effort,
                           former ? former->base : NULL, cancellable);
  CwPanelMix *mix;

  if (base == NULL)
    return NULL;
  mix = or_with_rests (search_mix (base, kinds, former, cancellable), kinds,
                       former, cancellable);
  mix->least = least_of (mix, kinds, cancellable);
  mix->least_cost = least_cost_of (mix, kinds);
  if (g_cancellable_is_cancelled (cancellable))
    g_clear_pointer (&mix, cw_panel_mix_unref);
  return mix;
}

/* @mix as it is. */
static CwPanelMix *
mix_copy (const CwPanelMix *mix, const CwMixKinds *kinds)
{
  CwPanelMix *copy = mix_begin (cw_panel_plan_ref (mix->base));

  copy->cuts = mix->cuts ? g_ptr_array_ref (mix->cuts) : NULL;
  fill_mix (copy, kinds);
  return copy;
}

/* (transfer full): @base is taken over */
static CwPanelMix *
improve_several (const CwPanelMix *mix, CwPanelPlan *base,
                 const CwMixKinds *kinds, GCancellable *cancellable)
{
  CwPanelMix *better = or_with_rests (
      search_mix (base, kinds, NULL, cancellable), kinds, NULL, cancellable);

  if (!g_cancellable_is_cancelled (cancellable)
      && better->cost <= mix->cost * (1 + 1e-9))
    return better;
  cw_panel_mix_unref (better);
  return mix_copy (mix, kinds);
}

CwPanelMix *
cw_panel_mix_improve (const CwPanelMix *mix, CwCutProgress progress,
                      gpointer data, GCancellable *cancellable)
{
  CwPanelMix *better;

  g_return_val_if_fail (mix != NULL, NULL);

  if (cw_panel_mix_is_settled (mix, CW_CUT_EFFORT_LONG))
    return cw_panel_mix_ref (mix);
  g_autoptr (CwMixKinds) kinds = kinds_of (buildup_of (mix));
  CwPanelPlan *base
      = cw_panel_plan_improve (mix->base, progress, data, cancellable);
  if (cw_mix_kinds_are_several (kinds))
    better = improve_several (mix, base, kinds, cancellable);
  else
    better = search_mix (base, kinds, NULL, cancellable);
  better->effort = g_cancellable_is_cancelled (cancellable)
                       ? mix->effort
                       : CW_CUT_EFFORT_LONG;
  better->least = MAX (mix->least, least_of (better, kinds, cancellable));
  better->least_cost = least_cost_of (better, kinds);
  return better;
}

CwPanelMix *
cw_panel_mix_ref (const CwPanelMix *mix)
{
  g_return_val_if_fail (mix != NULL, NULL);

  g_atomic_ref_count_inc (&((CwPanelMix *) mix)->count);
  return (CwPanelMix *) mix;
}

void
cw_panel_mix_unref (CwPanelMix *mix)
{
  g_return_if_fail (mix != NULL);

  if (!g_atomic_ref_count_dec (&mix->count))
    return;
  g_ptr_array_unref (mix->plans);
  g_clear_pointer (&mix->cuts, g_ptr_array_unref);
  cw_panel_plan_unref (mix->base);
  g_free (mix);
}

gboolean
cw_panel_mix_is_settled (const CwPanelMix *mix, CwCutEffort effort)
{
  g_return_val_if_fail (mix != NULL, FALSE);

  g_autoptr (CwMixKinds) kinds = kinds_of (buildup_of (mix));

  if (!cw_mix_kinds_are_several (kinds))
    return cw_panel_plan_is_settled (mix->base, effort);
  return mix->effort >= effort || mix->base->cut == NULL;
}

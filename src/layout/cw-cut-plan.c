/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-plan.h"

#include <string.h>

#include "cw-cut-bound.h"
#include "cw-cut-panel.h"
#include "cw-cut-search.h"

/* Places looked at: for each blank, at the most for one group, and how many
 * coolings that makes. Measured with bench-cutting: some 4 to 8 ns a place. */
static const struct
{
  guint64 a_blank, most, coolings;
} efforts[] = {
  [CW_CUT_EFFORT_FIRST] = { 0, 0, 1 },
  [CW_CUT_EFFORT_LIVE] = { 20000, 4000000, 1 },
  [CW_CUT_EFFORT_LONG] = { 8000000, 800000000, 8 },
};

/* Far above any wall's cut pieces; keeps the bound's tables in proportion. */
#define MOST_BLANKS_FOR_SEARCH 4000

typedef struct
{
  const CwCutBlank *blanks;
  const CwCutRules *rules;
  CwCutEffort effort;
  CwCutProgress progress;
  gpointer data;
  GCancellable *cancellable;
  CwCutPlan *plan;
} Planning;

/* The blanks of one group that need cutting. */
typedef struct
{
  GArray *names;             /* guint: places in the plan's array */
  GArray *sizes;             /* CwCutSize, kerf added */
} Group;

static CwCutSize
with_kerf (CwLength width, CwLength height, CwLength kerf)
{
  return (CwCutSize) { width + kerf, height + kerf };
}

static void
report (const Planning *planning, const CwCutSearch *search, guint64 whole)
{
  if (!planning->progress)
    return;
  const double share
      = (double) cw_cut_search_weighed (search) / (double) whole;
  planning->progress (planning->plan->panels->len
                          + cw_cut_search_n_panels (search),
                      MIN (share, 1), planning->data);
}

static void
search_on (const Planning *planning, CwCutSearch *search, guint n_blanks,
           guint least)
{
  const guint64 whole = MIN (n_blanks * efforts[planning->effort].a_blank,
                             efforts[planning->effort].most);
  /* Short enough that a cancel is heard within a moment. */
  const guint64 cooling = whole / efforts[planning->effort].coolings;

  while (cw_cut_search_n_panels (search) > least
         && cw_cut_search_weighed (search) < whole
         && !g_cancellable_is_cancelled (planning->cancellable))
    {
      cw_cut_search_run (search, least, cooling);
      report (planning, search, whole);
    }
}

static void
take_panels (const Planning *planning, const CwCutSearch *search,
             const Group *group, guint number)
{
  for (guint i = 0; i < cw_cut_search_n_panels (search); i++)
    g_ptr_array_add (
        planning->plan->panels,
        cw_cut_panel_new (cw_cut_search_panel (search, i),
                          &g_array_index (group->names, guint, 0), number,
                          planning->rules->kerf));
}

/* Depends on nothing but the blanks, so that a plan can be had again. */
#define SEED 20

static void
plan_group (const Planning *planning, const Group *group, guint number)
{
  const CwCutRules *rules = planning->rules;
  const CwCutSize panel
      = with_kerf (rules->length, rules->height, rules->kerf);
  const CwCutSize *sizes = &g_array_index (group->sizes, CwCutSize, 0);
  g_autoptr (CwCutSearch) search = cw_cut_search_new (
      sizes, group->sizes->len, panel, rules->turn, SEED);
  const guint least = cw_cut_bound (
      &(CwCutTask) { .blanks = sizes,
                     .n_blanks = group->sizes->len,
                     .panel = panel,
                     .turn = rules->turn,
                     .enough = cw_cut_search_n_panels (search) },
      planning->effort, planning->cancellable);

  if (group->sizes->len <= MOST_BLANKS_FOR_SEARCH)
    search_on (planning, search, group->sizes->len, least);
  take_panels (planning, search, group, number);
  planning->plan->least += least;
}

static gboolean
is_whole (const CwCutBlank *blank, const CwCutRules *rules)
{
  return blank->width >= rules->length && blank->height >= rules->height;
}

static void
group_free (gpointer data)
{
  Group *group = data;
  g_array_unref (group->names);
  g_array_unref (group->sizes);
  g_free (group);
}

static Group *
group_for (GHashTable *groups, GArray *order, guint number)
{
  Group *group = g_hash_table_lookup (groups, GUINT_TO_POINTER (number));
  if (group)
    return group;
  group = g_new (Group, 1);
  group->names = g_array_new (FALSE, FALSE, sizeof (guint));
  group->sizes = g_array_new (FALSE, FALSE, sizeof (CwCutSize));
  g_hash_table_insert (groups, GUINT_TO_POINTER (number), group);
  g_array_append_val (order, number);
  return group;
}

static void
take_whole (const Planning *planning, guint name)
{
  g_ptr_array_add (planning->plan->panels,
                   cw_cut_panel_new_whole (name, planning->blanks[name].group,
                                           planning->rules));
  planning->plan->least++;
}

/* Rasping takes the little that a blank is larger than the panel. */
static CwCutSize
blank_size (const CwCutBlank *blank, const CwCutRules *rules)
{
  return with_kerf (MIN (blank->width, rules->length),
                    MIN (blank->height, rules->height), rules->kerf);
}

static void
plan_all (const Planning *planning, guint n_blanks)
{
  GHashTable *groups = g_hash_table_new_full (NULL, NULL, NULL, group_free);
  GArray *order = g_array_new (FALSE, FALSE, sizeof (guint));

  for (guint i = 0; i < n_blanks; i++)
    if (is_whole (&planning->blanks[i], planning->rules))
      take_whole (planning, i);
    else
      {
        Group *group
            = group_for (groups, order, planning->blanks[i].group);
        const CwCutSize size
            = blank_size (&planning->blanks[i], planning->rules);
        g_array_append_val (group->names, i);
        g_array_append_val (group->sizes, size);
      }
  for (guint i = 0; i < order->len; i++)
    {
      const guint number = g_array_index (order, guint, i);
      plan_group (planning,
                  g_hash_table_lookup (groups, GUINT_TO_POINTER (number)),
                  number);
    }
  g_array_unref (order);
  g_hash_table_unref (groups);
}

CwCutPlan *
cw_cut_plan_new (const CwCutBlank *blanks, guint n_blanks,
                 const CwCutRules *rules, CwCutEffort effort,
                 CwCutProgress progress, gpointer data,
                 GCancellable *cancellable)
{
  g_return_val_if_fail (rules->length > 0 && rules->height > 0, NULL);
  g_return_val_if_fail (rules->kerf >= 0, NULL);

  CwCutPlan *plan = g_new0 (CwCutPlan, 1);
  g_atomic_ref_count_init (&plan->count);
  plan->rules = *rules;
  plan->panels = g_ptr_array_new_with_free_func (
      (GDestroyNotify) cw_cut_panel_free);

  const Planning planning = { blanks, rules, effort, progress,
                              data,   cancellable, plan };
  plan_all (&planning, n_blanks);
  return plan;
}

CwCutPlan *
cw_cut_plan_ref (const CwCutPlan *plan)
{
  g_atomic_ref_count_inc (&((CwCutPlan *) plan)->count);
  return (CwCutPlan *) plan;
}

void
cw_cut_plan_unref (CwCutPlan *plan)
{
  if (!g_atomic_ref_count_dec (&plan->count))
    return;
  g_ptr_array_unref (plan->panels);
  g_free (plan);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-plan.h"

#include "cw-cut-bound.h"
#include "cw-cut-panel.h"
#include "cw-cut-search.h"

/* Places looked at: for each blank and at the most for one group, and how many
 * coolings that makes. Measured with bench-cutting: some 8 to 12 ns a place.
 * Between coolings the panels seen, at the most so many, are put together by
 * set covering, with so much effort each time. */
static const struct
{
  guint64 a_blank, most;
  guint coolings, patterns;
  guint64 covering;
} efforts[] = {
  [CW_CUT_EFFORT_FIRST] = { 0, 0, 1, 0, 0 },
  [CW_CUT_EFFORT_LIVE] = { 25000, 3000000, 1, 0, 0 },
  [CW_CUT_EFFORT_LONG] = { 6000000, 450000000, 8, 3000, 25000000 },
};

/* Far above any wall's cut pieces; keeps the bound's tables in proportion. */
#define MOST_BLANKS_FOR_SEARCH 4000

/* The blanks of one group that need cutting. */
typedef struct
{
  guint number;
  GArray *names;             /* guint: places in the plan's array */
  GArray *sizes;             /* CwCutSize, kerf added */
  CwCutSearch *search;
} Group;

typedef struct
{
  const CwCutBlank *blanks;
  guint n_blanks;
  const CwCutRules *rules;
  CwCutEffort effort;
  CwCutProgress progress;
  gpointer data;
  GCancellable *cancellable;
  CwCutPlan *plan;
  GPtrArray *groups;         /* Group */
  guint n_done;              /* groups */
} Planning;

static CwCutSize
with_kerf (CwLength width, CwLength height, CwLength kerf)
{
  return (CwCutSize) { width + kerf, height + kerf };
}

static CwCutSize
panel_size (const CwCutRules *rules)
{
  return with_kerf (rules->length, rules->height, rules->kerf);
}

/* Panels so far: those that are not cut, and what each group takes. */
static guint
count_panels (const Planning *planning)
{
  guint n = planning->plan->panels->len;
  for (guint i = 0; i < planning->groups->len; i++)
    {
      const Group *group = g_ptr_array_index (planning->groups, i);
      n += cw_cut_search_n_panels (group->search);
    }
  return n;
}

/* @share: of the group at hand. */
static void
report (const Planning *planning, double share)
{
  if (planning->progress)
    planning->progress (count_panels (planning),
                        (planning->n_done + MIN (share, 1))
                            / planning->groups->len,
                        planning->data);
}

/* What the coolings threw away may make a better plan than each of them. */
static void
cover (const Planning *planning, CwCutSearch *search, const CwCutCover *seen)
{
  g_autoptr (GPtrArray) chosen = cw_cut_cover_choose (
      seen, cw_cut_search_n_panels (search), efforts[planning->effort].covering,
      planning->cancellable);
  if (!chosen)
    return;
  g_autofree const CwCutTree **panels
      = g_new (const CwCutTree *, chosen->len);
  for (guint i = 0; i < chosen->len; i++)
    panels[i] = &((CwCutChosen *) g_ptr_array_index (chosen, i))->tree;
  cw_cut_search_take (search, panels, chosen->len);
}

static gboolean
goes_on (const Planning *planning, const CwCutSearch *search, guint least)
{
  return cw_cut_search_n_panels (search) > least
         && !g_cancellable_is_cancelled (planning->cancellable);
}

static void
search_on (const Planning *planning, const Group *group, guint least)
{
  CwCutSearch *search = group->search;
  const guint n = group->sizes->len;
  const guint coolings = efforts[planning->effort].coolings;
  const guint patterns = efforts[planning->effort].patterns;
  const guint64 whole = MIN (n * efforts[planning->effort].a_blank,
                             efforts[planning->effort].most);
  g_autoptr (CwCutCover) seen
      = cw_cut_cover_new (&g_array_index (group->sizes, CwCutSize, 0), n);

  while (goes_on (planning, search, least)
         && cw_cut_search_weighed (search) < whole)
    {
      const guint64 weighed = cw_cut_search_weighed (search);
      const guint cooling = (guint) (weighed * coolings / whole);
      if (patterns > 0)
        cw_cut_search_collect (search, seen, 0, 1,
                               patterns * (cooling + 1) / coolings);
      if (!cw_cut_search_run (search, least, whole / coolings,
                              planning->cancellable)
          && patterns > 0 && goes_on (planning, search, least))
        cover (planning, search, seen);
      report (planning,
              (double) cw_cut_search_weighed (search) / (double) whole);
    }
}

static void
take_panels (const Planning *planning, const Group *group)
{
  for (guint i = 0; i < cw_cut_search_n_panels (group->search); i++)
    g_ptr_array_add (
        planning->plan->panels,
        cw_cut_panel_new (cw_cut_search_panel (group->search, i),
                          &g_array_index (group->names, guint, 0),
                          group->number, planning->rules->kerf));
}

/* Depends on nothing but the blanks, so that a plan can be had again. */
#define SEED 20

static void
begin_group (const Planning *planning, Group *group)
{
  group->search = cw_cut_search_new (
      &g_array_index (group->sizes, CwCutSize, 0), group->sizes->len,
      panel_size (planning->rules), planning->rules->turn, SEED);
}

static void
plan_group (const Planning *planning, const Group *group)
{
  const CwCutTask task = {
    .blanks = &g_array_index (group->sizes, CwCutSize, 0),
    .n_blanks = group->sizes->len,
    .panel = panel_size (planning->rules),
    .turn = planning->rules->turn,
    .enough = cw_cut_search_n_panels (group->search)
  };
  const guint least
      = cw_cut_bound (&task, planning->effort, planning->cancellable);

  if (group->sizes->len <= MOST_BLANKS_FOR_SEARCH)
    search_on (planning, group, least);
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
  g_clear_pointer (&group->search, cw_cut_search_free);
  g_array_unref (group->names);
  g_array_unref (group->sizes);
  g_free (group);
}

static Group *
group_for (const Planning *planning, GHashTable *by_number, guint number)
{
  Group *group = g_hash_table_lookup (by_number, GUINT_TO_POINTER (number));
  if (group)
    return group;
  group = g_new0 (Group, 1);
  group->number = number;
  group->names = g_array_new (FALSE, FALSE, sizeof (guint));
  group->sizes = g_array_new (FALSE, FALSE, sizeof (CwCutSize));
  g_hash_table_insert (by_number, GUINT_TO_POINTER (number), group);
  g_ptr_array_add (planning->groups, group);
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
gather (const Planning *planning)
{
  g_autoptr (GHashTable) by_number = g_hash_table_new (NULL, NULL);
  for (guint i = 0; i < planning->n_blanks; i++)
    {
      const CwCutBlank *blank = &planning->blanks[i];
      if (is_whole (blank, planning->rules))
        {
          take_whole (planning, i);
          continue;
        }
      Group *group = group_for (planning, by_number, blank->group);
      const CwCutSize size = blank_size (blank, planning->rules);
      g_array_append_val (group->names, i);
      g_array_append_val (group->sizes, size);
    }
  for (guint i = 0; i < planning->groups->len; i++)
    begin_group (planning, g_ptr_array_index (planning->groups, i));
}

CwCutPlan *
cw_cut_plan_new_empty (const CwCutRules *rules)
{
  CwCutPlan *plan = g_new0 (CwCutPlan, 1);
  g_atomic_ref_count_init (&plan->count);
  plan->rules = *rules;
  plan->panels = g_ptr_array_new_with_free_func (
      (GDestroyNotify) cw_cut_panel_free);
  return plan;
}

CwCutPlan *
cw_cut_plan_renamed (const CwCutPlan *plan, const guint *names)
{
  CwCutPlan *copy = cw_cut_plan_new_empty (&plan->rules);
  copy->least = plan->least;
  for (guint i = 0; i < plan->panels->len; i++)
    g_ptr_array_add (
        copy->panels,
        cw_cut_panel_renamed (g_ptr_array_index (plan->panels, i), names));
  return copy;
}

static gboolean
start_planning (Planning *planning)
{
  g_return_val_if_fail (planning->rules->length > 0, FALSE);
  g_return_val_if_fail (planning->rules->height > 0, FALSE);
  g_return_val_if_fail (planning->rules->kerf >= 0, FALSE);

  planning->plan = cw_cut_plan_new_empty (planning->rules);
  planning->groups = g_ptr_array_new_with_free_func (group_free);
  gather (planning);
  return TRUE;
}

static CwCutPlan *
finish_planning (Planning *planning)
{
  for (guint i = 0; i < planning->groups->len; i++)
    {
      plan_group (planning, g_ptr_array_index (planning->groups, i));
      planning->n_done++;
    }
  for (guint i = 0; i < planning->groups->len; i++)
    take_panels (planning, g_ptr_array_index (planning->groups, i));
  g_ptr_array_unref (planning->groups);
  return planning->plan;
}

CwCutPlan *
cw_cut_plan_new (const CwCutBlank *blanks, guint n_blanks,
                 const CwCutRules *rules, CwCutEffort effort,
                 CwCutProgress progress, gpointer data,
                 GCancellable *cancellable)
{
  Planning planning
      = { .blanks = blanks, .n_blanks = n_blanks, .rules = rules,
          .effort = effort, .progress = progress, .data = data,
          .cancellable = cancellable };
  return start_planning (&planning) ? finish_planning (&planning) : NULL;
}

/* Hands the panels of @former to the search of their group. */
static void
go_on_from (const Planning *planning, const CwCutPlan *former,
            const Group *group)
{
  g_autofree guint *places = g_new0 (guint, planning->n_blanks);
  g_autoptr (GPtrArray) panels = g_ptr_array_new_with_free_func (
      (GDestroyNotify) cw_cut_tree_free);
  for (guint i = 0; i < group->names->len; i++)
    places[g_array_index (group->names, guint, i)] = i;
  for (guint i = 0; i < former->panels->len; i++)
    {
      const CwCutPanel *panel = g_ptr_array_index (former->panels, i);
      if (panel->group != group->number || panel->tree.n_nodes == 0)
        continue;
      CwCutTree *tree = cw_cut_tree_dup (&panel->tree);
      cw_cut_tree_rename (tree, places);
      g_ptr_array_add (panels, tree);
    }
  cw_cut_search_take (group->search, (const CwCutTree **) panels->pdata,
                      panels->len);
}

CwCutPlan *
cw_cut_plan_improve (const CwCutPlan *former, const CwCutBlank *blanks,
                     guint n_blanks, CwCutEffort effort,
                     CwCutProgress progress, gpointer data,
                     GCancellable *cancellable)
{
  Planning planning
      = { .blanks = blanks, .n_blanks = n_blanks, .rules = &former->rules,
          .effort = effort, .progress = progress, .data = data,
          .cancellable = cancellable };
  if (!start_planning (&planning))
    return NULL;
  for (guint i = 0; i < planning.groups->len; i++)
    go_on_from (&planning, former,
                g_ptr_array_index (planning.groups, i));
  CwCutPlan *plan = finish_planning (&planning);
  plan->least = MAX (plan->least, former->least);
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

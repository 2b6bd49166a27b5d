/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-panel-plan.h"

#include <math.h>

#include "cw-panel-rests.h"

/* Gathers the pieces of @panel from walls. */
typedef struct
{
  CwPanelPlan *plan;
  guint panel;
  CwOffcuts offcuts;
  guint base;                /* first group of the wall at hand */
} Gathering;

static guint
group_of (const Gathering *gathering, const CwPiece *piece)
{
  switch (gathering->offcuts)
    {
    case CW_OFFCUTS_NONE:
      return gathering->plan->pieces->len;
    case CW_OFFCUTS_COURSE:
      return gathering->base + piece->course;
    case CW_OFFCUTS_ELEVATION:
      return gathering->base;
    case CW_OFFCUTS_PROJECT:
      return 0;
    }
  g_assert_not_reached ();
}

static void
take_sawn (Gathering *gathering, const CwPiece *piece, gboolean is_upright,
           CwPanelPiece name)
{
  const CwLength width = cw_box_width (&piece->box);
  const CwLength height = cw_box_height (&piece->box);
  const CwCutBlank blank = { .width = is_upright ? height : width,
                             .height = is_upright ? width : height,
                             .group = group_of (gathering, piece) };

  g_array_append_val (gathering->plan->pieces, name);
  g_array_append_val (gathering->plan->blanks, blank);
}

static void
gather_wall (Gathering *gathering, const CwLayout *layout, guint wall,
             guint copy)
{
  const gboolean is_upright = cw_layout_stands (layout);

  for (guint i = 0; i < layout->pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, i);

      if (piece->panel != gathering->panel)
        continue;
      if (piece->kind == CW_PIECE_CUT)
        take_sawn (gathering, piece, is_upright,
                   (CwPanelPiece) { wall, copy, i });
      else
        gathering->plan->n_whole++;
    }
  gathering->base += layout->courses->len + 1;
}

CwPanelPlan *
cw_panel_plan_new_empty (GPtrArray *layouts, guint n_whole)
{
  CwPanelPlan *plan = g_new0 (CwPanelPlan, 1);

  g_atomic_ref_count_init (&plan->count);
  plan->layouts = g_ptr_array_ref (layouts);
  plan->pieces = g_array_new (FALSE, FALSE, sizeof (CwPanelPiece));
  plan->blanks = g_array_new (FALSE, FALSE, sizeof (CwCutBlank));
  plan->rests = cw_panel_rests_new ();
  plan->n_whole = plan->n_panels = plan->least = n_whole;
  return plan;
}

static CwPanelPlan *
gather (const CwPanelWalls *walls, guint n_walls, guint panel,
        CwOffcuts offcuts)
{
  g_autoptr (GPtrArray) layouts
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_layout_unref);
  CwPanelPlan *plan = cw_panel_plan_new_empty (layouts, 0);
  Gathering gathering = { plan, panel, offcuts, 0 };

  for (guint i = 0; i < n_walls; i++)
    {
      g_ptr_array_add (plan->layouts, cw_layout_ref (walls[i].layout));
      for (guint j = 0; j < walls[i].n; j++)
        gather_wall (&gathering, walls[i].layout, i, walls[i].first + j);
    }
  return plan;
}

static gboolean
is_usable (const CwBuildup *buildup, const CwPanel *panel)
{
  const CwPanel *first = cw_list_at (buildup->panels, 0);

  return panel->thickness == first->thickness && panel->length > 0
         && panel->height > 0;
}

gboolean
cw_panel_rules (const CwBuildup *buildup, guint index, CwCutRules *rules)
{
  const CwPanel *panel = cw_list_at (buildup->panels, index);
  CwLength kerf = 0;

  for (gsize i = 0; i < cw_list_length (buildup->panels); i++)
    {
      const CwPanel *other = cw_list_at (buildup->panels, i);

      if (is_usable (buildup, other))
        kerf = MAX (kerf, other->kerf);
    }
  *rules = (CwCutRules) {
    .length = panel->length,
    .height = panel->height,
    .kerf = kerf,
    .turn = ((const CwSettingOut *) buildup->setting_out)->turn != 0
  };
  return is_usable (buildup, panel);
}

static CwCutRules
rules_of (const CwLayout *layout, guint index)
{
  CwCutRules rules;

  cw_panel_rules (layout->wall->buildup, index, &rules);
  return rules;
}

static gboolean
are_same_rules (const CwCutRules *a, const CwCutRules *b)
{
  return a->length == b->length && a->height == b->height
         && a->kerf == b->kerf && !a->turn == !b->turn;
}

static gboolean
are_same_blanks (const GArray *a, const GArray *b)
{
  if (a->len != b->len)
    return FALSE;
  for (guint i = 0; i < a->len; i++)
    {
      const CwCutBlank *one = &g_array_index (a, CwCutBlank, i);
      const CwCutBlank *other = &g_array_index (b, CwCutBlank, i);

      if (one->width != other->width || one->height != other->height
          || one->group != other->group)
        return FALSE;
    }
  return TRUE;
}

static gboolean
are_same_rests (const GArray *a, const GArray *b)
{
  if (a->len != b->len)
    return FALSE;
  for (guint i = 0; i < a->len; i++)
    {
      const CwPanelRest *one = &g_array_index (a, CwPanelRest, i);
      const CwPanelRest *other = &g_array_index (b, CwPanelRest, i);

      if (one->host != other->host || one->x != other->x || one->y != other->y
          || one->width != other->width || one->height != other->height)
        return FALSE;
    }
  return TRUE;
}

static gboolean
has_same_blanks (const CwPanelPlan *plan, const CwPanelPlan *former,
                 const CwCutRules *rules)
{
  return former && former->cut
         && are_same_rules (&former->cut->rules, rules)
         && are_same_blanks (former->blanks, plan->blanks)
         && are_same_rests (former->rests, plan->rests);
}

static void
take_cuts (CwPanelPlan *plan, CwCutPlan *cut, guint least)
{
  g_clear_pointer (&plan->cut, cw_cut_plan_unref);
  plan->cut = cut;
  plan->n_panels = plan->n_whole + cut->panels->len;
  plan->least = plan->n_whole + least;
}

/* The cuts of @former, those of its rests too. */
static void
take_over (CwPanelPlan *plan, const CwPanelPlan *former, guint least)
{
  g_array_unref (plan->rests);
  plan->rests = g_array_ref (former->rests);
  take_cuts (plan, cw_cut_plan_ref (former->cut), least);
}

typedef struct
{
  CwCutProgress progress;
  gpointer data;
  GCancellable *cancellable;
} Watch;

/* Takes the cuts, and rests too where they save a panel. */
static void
use_cuts (CwPanelPlan *plan, CwCutPlan *cut, guint least, const Watch *watch)
{
  const guint bound
      = plan->rests->len > 0
            ? cw_panel_rests_bound (plan, cut, &cut->rules, plan->effort,
                                    watch->cancellable)
            : cut->least;

  take_cuts (plan, cut, MAX (least, bound));
  if (plan->effort > CW_CUT_EFFORT_FIRST && plan->n_panels > plan->least
      && !cw_panel_rests_are_used (plan)
      && !g_cancellable_is_cancelled (watch->cancellable))
    cw_panel_rests_use (plan, 1, watch->progress, watch->data,
                        watch->cancellable);
}

static void
cut_blanks (CwPanelPlan *plan, const CwCutRules *rules, const Watch *watch)
{
  use_cuts (plan,
            cw_cut_plan_new (&g_array_index (plan->blanks, CwCutBlank, 0),
                             plan->blanks->len, rules, plan->effort,
                             watch->progress, watch->data,
                             watch->cancellable),
            0, watch);
}

/* Looks longer than for @former, whose cuts are where it begins. */
static void
look_on (CwPanelPlan *plan, const CwPanelPlan *former, const Watch *watch)
{
  const guint least = former->least - former->n_whole;

  take_over (plan, former, least);
  use_cuts (plan,
            cw_panel_rests_improve (former, plan->effort, watch->progress,
                                    watch->data, watch->cancellable),
            least, watch);
}

static void
plan_cuts (CwPanelPlan *plan, guint panel, CwCutEffort effort,
           const CwPanelPlan *former, GCancellable *cancellable)
{
  plan->effort = effort;
  plan->n_panels = plan->least = plan->n_whole;
  if (plan->blanks->len == 0)
    return;
  const CwCutRules rules
      = rules_of (g_ptr_array_index (plan->layouts, 0), panel);
  cw_panel_rests_find (plan, &rules);
  const Watch watch = { .cancellable = cancellable };
  if (!has_same_blanks (plan, former, &rules))
    cut_blanks (plan, &rules, &watch);
  else if (!cw_panel_plan_is_settled (former, effort))
    look_on (plan, former, &watch);
  else
    {
      plan->effort = MAX (effort, former->effort);
      plan->firm = former->firm ? cw_panel_plan_ref (former->firm) : NULL;
      take_over (plan, former, former->least - former->n_whole);
    }
}

static CwPanelPlan *
plan_once (const CwPanelWalls *walls, guint n_walls, guint panel,
           CwOffcuts offcuts, CwCutEffort effort, const CwPanelPlan *former,
           GCancellable *cancellable)
{
  CwPanelPlan *plan = gather (walls, n_walls, panel, offcuts);

  plan_cuts (plan, panel, effort, former, cancellable);
  return plan;
}

/* What any plan needs whose offcuts stay within their course: as many panels
 * as the areas of a course fill, less what its rests hold. */
static guint
least_by_courses (const CwPanelWalls *walls, guint n_walls, guint panel)
{
  g_autoptr (CwPanelPlan) plan
      = gather (walls, n_walls, panel, CW_OFFCUTS_COURSE);
  const CwCutRules rules = rules_of (walls[0].layout, panel);
  const double whole = (double) (rules.length + rules.kerf)
                       * (double) (rules.height + rules.kerf);
  double area = 0;
  guint least = plan->n_whole, rest = 0;

  cw_panel_rests_find (plan, &rules);
  for (guint i = 0; i < plan->blanks->len; i++)
    {
      const CwCutBlank *blank
          = &g_array_index (plan->blanks, CwCutBlank, i);
      const gboolean is_last
          = i + 1 == plan->blanks->len || blank[1].group != blank->group;

      area += (double) (MIN (blank->width, rules.length) + rules.kerf)
              * (double) (MIN (blank->height, rules.height) + rules.kerf);
      for (; rest < plan->rests->len
             && g_array_index (plan->rests, CwPanelRest, rest).host == i;
           rest++)
        area -= cw_panel_rest_area (
            &g_array_index (plan->rests, CwPanelRest, rest), rules.kerf);
      if (!is_last)
        continue;
      least += (guint) ceil (MAX (area, 0) / whole - 1e-6);
      area = 0;
    }
  return least;
}

/* A search that may use more offcuts can still end with more panels. */
static CwPanelPlan *
not_worse_than_by_courses (CwPanelPlan *plan, const CwPanelWalls *walls,
                           guint n_walls, guint panel,
                           GCancellable *cancellable)
{
  if (plan->least == plan->n_panels
      || least_by_courses (walls, n_walls, panel) >= plan->n_panels)
    return plan;
  CwPanelPlan *by_courses
      = plan_once (walls, n_walls, panel, CW_OFFCUTS_COURSE, plan->effort,
                   NULL, cancellable);
  const gboolean is_better = by_courses->n_panels < plan->n_panels;

  /* Its own bound holds for offcuts within their course alone. */
  by_courses->least = plan->least;
  cw_panel_plan_unref (is_better ? plan : by_courses);
  return is_better ? by_courses : plan;
}

CwPanelPlan *
cw_panel_plan_new (const CwPanelWalls *walls, guint n_walls, guint panel,
                   CwOffcuts offcuts, CwCutEffort effort,
                   const CwPanelPlan *former, GCancellable *cancellable)
{
  g_return_val_if_fail (walls != NULL && n_walls > 0, NULL);

  CwPanelPlan *plan = plan_once (walls, n_walls, panel, offcuts, effort,
                                 former, cancellable);
  if (effort > CW_CUT_EFFORT_FIRST && offcuts == CW_OFFCUTS_ELEVATION)
    plan = not_worse_than_by_courses (plan, walls, n_walls, panel,
                                      cancellable);
  if (g_cancellable_is_cancelled (cancellable))
    g_clear_pointer (&plan, cw_panel_plan_unref);
  return plan;
}

/* The same pieces, not planned yet. */
static CwPanelPlan *
with_pieces_of (const CwPanelPlan *plan)
{
  CwPanelPlan *copy = g_new0 (CwPanelPlan, 1);

  g_atomic_ref_count_init (&copy->count);
  copy->layouts = g_ptr_array_ref (plan->layouts);
  copy->pieces = g_array_ref (plan->pieces);
  copy->blanks = g_array_ref (plan->blanks);
  copy->rests = g_array_ref (plan->rests);
  copy->n_whole = plan->n_whole;
  return copy;
}

/* What an earlier search found before it was stopped is not lost. */
static void
keep_found (CwPanelPlan *better, const CwPanelPlan *plan)
{
  if (better->n_panels > plan->n_panels)
    take_over (better, plan, better->least - better->n_whole);
}

CwPanelPlan *
cw_panel_plan_with_rests (const CwPanelPlan *plan, GCancellable *cancellable)
{
  g_autoptr (CwPanelPlan) other = NULL;

  if (plan->cut == NULL || cw_panel_rests_are_used (plan))
    return NULL;
  other = with_pieces_of (plan);
  other->effort = plan->effort;
  take_cuts (other, cw_cut_plan_ref (plan->cut), plan->least - plan->n_whole);
  return cw_panel_rests_use (other, 0, NULL, NULL, cancellable)
             ? g_steal_pointer (&other)
             : NULL;
}

CwPanelPlan *
cw_panel_plan_improve (const CwPanelPlan *plan, CwCutProgress progress,
                       gpointer data, GCancellable *cancellable)
{
  g_return_val_if_fail (plan != NULL, NULL);

  if (!plan->cut || cw_panel_plan_is_settled (plan, CW_CUT_EFFORT_LONG))
    return cw_panel_plan_ref (plan);
  const Watch watch = { progress, data, cancellable };
  const CwPanelPlan *firm = plan->firm ? plan->firm : plan;
  CwPanelPlan *better = with_pieces_of (plan);

  better->effort = CW_CUT_EFFORT_LONG;
  look_on (better, firm, &watch);
  keep_found (better, plan);
  if (g_cancellable_is_cancelled (cancellable))
    {
      better->effort = firm->effort;
      better->firm = cw_panel_plan_ref (firm);
    }
  return better;
}

CwPanelPlan *
cw_panel_plan_ref (const CwPanelPlan *plan)
{
  g_return_val_if_fail (plan != NULL, NULL);

  g_atomic_ref_count_inc (&((CwPanelPlan *) plan)->count);
  return (CwPanelPlan *) plan;
}

void
cw_panel_plan_unref (CwPanelPlan *plan)
{
  g_return_if_fail (plan != NULL);

  if (!g_atomic_ref_count_dec (&plan->count))
    return;
  g_clear_pointer (&plan->cut, cw_cut_plan_unref);
  g_clear_pointer (&plan->firm, cw_panel_plan_unref);
  g_array_unref (plan->rests);
  g_array_unref (plan->blanks);
  g_array_unref (plan->pieces);
  g_ptr_array_unref (plan->layouts);
  g_free (plan);
}

gboolean
cw_panel_plan_is_settled (const CwPanelPlan *plan, CwCutEffort effort)
{
  g_return_val_if_fail (plan != NULL, FALSE);

  return plan->effort >= effort
         || plan->n_panels == plan->least;
}

static double
panel_saw (const CwCutPanel *panel)
{
  double length = 0;

  for (guint i = 0; i < panel->cuts->len; i++)
    {
      const CwCut *cut = &g_array_index (panel->cuts, CwCut, i);

      length += cw_length_in_m (cut->to - cut->from);
    }
  return length;
}

double
cw_panel_plan_saw (const CwPanelPlan *plan)
{
  double length = 0;

  g_return_val_if_fail (plan != NULL, 0);

  for (guint i = 0; plan->cut && i < plan->cut->panels->len; i++)
    length += panel_saw (plan->cut->panels->pdata[i]);
  for (guint i = 0; i < plan->rests->len; i++)
    {
      const CwPanelRest *rest = &g_array_index (plan->rests, CwPanelRest, i);

      if (rest->cut)
        length += panel_saw (rest->cut);
    }
  return length;
}

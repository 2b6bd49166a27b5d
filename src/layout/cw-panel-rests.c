/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-panel-rests.h"

#include "cw-cut-bound.h"
#include "cw-cut-face.h"
#include "cw-cut-fit.h"
#include "cw-cut-panel.h"
#include "cw-freed-rests.h"

static void
rest_clear (gpointer data)
{
  g_clear_pointer (&((CwPanelRest *) data)->cut, cw_cut_panel_free);
}

GArray *
cw_panel_rests_new (void)
{
  GArray *rests = g_array_new (FALSE, FALSE, sizeof (CwPanelRest));

  g_array_set_clear_func (rests, rest_clear);
  return rests;
}

double
cw_panel_rest_area (const CwPanelRest *rest, CwLength kerf)
{
  return (double) (rest->width + kerf) * (double) (rest->height + kerf);
}

static const CwCutBlank *
blank_at (const CwPanelPlan *plan, guint index)
{
  return &g_array_index (plan->blanks, CwCutBlank, index);
}

static CwPanelRest *
rest_at (const CwPanelPlan *plan, guint index)
{
  return &g_array_index (plan->rests, CwPanelRest, index);
}

static guint
group_of (const CwPanelPlan *plan, const CwPanelRest *rest)
{
  return blank_at (plan, rest->host)->group;
}

gboolean
cw_panel_rests_are_used (const CwPanelPlan *plan)
{
  for (guint i = 0; i < plan->rests->len; i++)
    if (rest_at (plan, i)->cut)
      return TRUE;
  return FALSE;
}

/* Finding the rests of a plan. */
typedef struct
{
  CwPanelPlan *plan;
  const CwCutRules *rules;
  gboolean is_upright;
  CwPoint least;             /* no blank is smaller, as it lies on the wall */
  GArray *boxes;             /* CwBox, of one piece */
} Finding;

static void
measure_least (Finding *finding)
{
  CwLength along = G_MAXINT64, across = G_MAXINT64;

  for (guint i = 0; i < finding->plan->blanks->len; i++)
    {
      along = MIN (along, blank_at (finding->plan, i)->width);
      across = MIN (across, blank_at (finding->plan, i)->height);
    }
  if (finding->rules->turn)
    along = across = MIN (along, across);
  finding->least = finding->is_upright ? cw_point (across, along)
                                       : cw_point (along, across);
}

static void
add_rest (const Finding *finding, guint host, const CwPiece *piece,
          const CwBox *box)
{
  const CwLength x = box->left - piece->box.left;
  const CwLength y = box->bottom - piece->box.bottom;
  const CwLength width = cw_box_width (box), height = cw_box_height (box);
  const CwPanelRest rest
      = finding->is_upright ? (CwPanelRest) { host, y, x, height, width, NULL }
                            : (CwPanelRest) { host, x, y, width, height,
                                              NULL };

  g_array_append_val (finding->plan->rests, rest);
}

static void
find_rests (Finding *finding, guint host)
{
  const CwPiece *piece;

  cw_cut_piece (finding->plan, host, &piece);
  if (!piece->shape)
    return;
  g_array_set_size (finding->boxes, 0);
  cw_freed_rests (piece, finding->rules->kerf, finding->least,
                  finding->boxes);
  for (guint i = 0; i < finding->boxes->len; i++)
    add_rest (finding, host, piece,
              &g_array_index (finding->boxes, CwBox, i));
}

static gboolean
fits (const CwCutBlank *blank, const CwPanelRest *rest,
      const CwCutRules *rules)
{
  return (blank->width <= rest->width && blank->height <= rest->height)
         || (rules->turn && blank->height <= rest->width
             && blank->width <= rest->height);
}

static gboolean
has_guest (const CwPanelPlan *plan, const CwPanelRest *rest,
           const CwCutRules *rules)
{
  const guint group = group_of (plan, rest);

  for (guint i = 0; i < plan->blanks->len; i++)
    if (blank_at (plan, i)->group == group
        && fits (blank_at (plan, i), rest, rules))
      return TRUE;
  return FALSE;
}

static void
drop_useless (Finding *finding)
{
  CwPanelPlan *plan = finding->plan;
  guint n = 0;

  for (guint i = 0; i < plan->rests->len; i++)
    if (has_guest (plan, rest_at (plan, i), finding->rules))
      *rest_at (plan, n++) = *rest_at (plan, i);
  g_array_set_size (plan->rests, n);
}

void
cw_panel_rests_find (CwPanelPlan *plan, const CwCutRules *rules)
{
  g_autoptr (GArray) boxes = g_array_new (FALSE, FALSE, sizeof (CwBox));
  Finding finding = { .plan = plan, .rules = rules, .boxes = boxes };

  if (plan->blanks->len == 0)
    return;
  finding.is_upright = cw_layout_stands (plan->layouts->pdata[0]);
  measure_least (&finding);
  for (guint i = 0; i < plan->pieces->len; i++)
    find_rests (&finding, i);
  drop_useless (&finding);
}

/* Blanks and rests of one group, with the kerf. */
typedef struct
{
  GArray *sizes, *rests;     /* CwCutSize */
  guint n_panels;            /* that the known plan cuts them from */
} Group;

static void
group_free (gpointer data)
{
  Group *group = data;

  g_array_unref (group->sizes);
  g_array_unref (group->rests);
  g_free (group);
}

static Group *
group_for (GHashTable *groups, guint number)
{
  Group *group = g_hash_table_lookup (groups, GUINT_TO_POINTER (number));

  if (group)
    return group;
  group = g_new0 (Group, 1);
  group->sizes = g_array_new (FALSE, FALSE, sizeof (CwCutSize));
  group->rests = g_array_new (FALSE, FALSE, sizeof (CwCutSize));
  g_hash_table_insert (groups, GUINT_TO_POINTER (number), group);
  return group;
}

static GHashTable *
collect_groups (const CwPanelPlan *plan, const CwCutPlan *cut,
                const CwCutRules *rules)
{
  GHashTable *groups = g_hash_table_new_full (NULL, NULL, NULL, group_free);
  const CwLength kerf = rules->kerf;

  for (guint i = 0; i < plan->blanks->len; i++)
    {
      const CwCutBlank *blank = blank_at (plan, i);
      const CwCutSize size = { MIN (blank->width, rules->length) + kerf,
                               MIN (blank->height, rules->height) + kerf };

      g_array_append_val (group_for (groups, blank->group)->sizes, size);
    }
  for (guint i = 0; i < plan->rests->len; i++)
    {
      const CwPanelRest *rest = rest_at (plan, i);
      const CwCutSize size = { rest->width + kerf, rest->height + kerf };

      g_array_append_val (group_for (groups, group_of (plan, rest))->rests,
                          size);
    }
  for (guint i = 0; i < cut->panels->len; i++)
    group_for (groups, ((CwCutPanel *) cut->panels->pdata[i])->group)
        ->n_panels++;
  return groups;
}

static guint
bound_of (const Group *group, const CwCutRules *rules, CwCutEffort effort,
          GCancellable *cancellable)
{
  const CwCutTask task = {
    .blanks = (const CwCutSize *) group->sizes->data,
    .n_blanks = group->sizes->len,
    .rests = (const CwCutSize *) group->rests->data,
    .n_rests = group->rests->len,
    .panel = { rules->length + rules->kerf, rules->height + rules->kerf },
    .turn = rules->turn,
    .enough = group->n_panels,
  };

  /* Not all come out of rests: hosts come first. */
  return MAX (cw_cut_bound (&task, effort, cancellable), 1);
}

guint
cw_panel_rests_bound (const CwPanelPlan *plan, const CwCutPlan *cut,
                      const CwCutRules *rules, CwCutEffort effort,
                      GCancellable *cancellable)
{
  g_autoptr (GHashTable) groups = collect_groups (plan, cut, rules);
  GHashTableIter iter;
  gpointer group;
  guint least = 0;

  g_hash_table_iter_init (&iter, groups);
  while (g_hash_table_iter_next (&iter, NULL, &group))
    least += bound_of (group, rules, effort, cancellable);
  return least;
}

/* A rest being filled. */
typedef struct
{
  CwCutTree tree;
  guint group;
} Filling;

static void
filling_clear (gpointer filling)
{
  cw_cut_tree_clear (&((Filling *) filling)->tree);
}

static GArray *
start_filling (const CwPanelPlan *plan, CwLength kerf)
{
  GArray *fillings
      = g_array_sized_new (FALSE, FALSE, sizeof (Filling), plan->rests->len);

  g_array_set_clear_func (fillings, filling_clear);
  for (guint i = 0; i < plan->rests->len; i++)
    {
      const CwPanelRest *rest = rest_at (plan, i);
      Filling filling = { .group = group_of (plan, rest) };

      cw_cut_tree_init (&filling.tree, rest->width + kerf,
                        rest->height + kerf);
      g_array_append_val (fillings, filling);
    }
  return fillings;
}

static CwCutFit
find_place (GArray *fillings, const CwCutBlank *blank,
            const CwCutRules *rules)
{
  const CwCutSize size
      = { blank->width + rules->kerf, blank->height + rules->kerf };
  CwCutFit best = { .tree = NULL };

  for (guint i = 0; i < fillings->len; i++)
    {
      Filling *filling = &g_array_index (fillings, Filling, i);

      if (filling->group == blank->group)
        cw_cut_fit_look (&filling->tree, size, rules->turn, &best);
    }
  return best;
}

static int
compare_areas (gconstpointer a, gconstpointer b, gpointer data)
{
  const guint first = *(const guint *) a, second = *(const guint *) b;
  const CwCutBlank *one = blank_at (data, first);
  const CwCutBlank *other = blank_at (data, second);
  const double here = (double) one->width * (double) one->height;
  const double there = (double) other->width * (double) other->height;

  if (here > there || here < there)
    return here > there ? -1 : 1;
  return (first > second) - (first < second);
}

static GArray *
by_area (const CwPanelPlan *plan)
{
  GArray *order = g_array_new (FALSE, FALSE, sizeof (guint));

  for (guint i = 0; i < plan->blanks->len; i++)
    g_array_append_val (order, i);
  g_array_sort_with_data (order, compare_areas, (gpointer) plan);
  return order;
}

/* Large blanks first. A blank never comes out of its own waste, nor round
 * about: what comes out of a rest is smaller than the rest's host.
 * (transfer full) (element-type guint): the blanks that stay, in their order */
static GArray *
fill_rests (const CwPanelPlan *plan, GArray *fillings)
{
  g_autoptr (GArray) order = by_area (plan);
  g_autofree guint8 *is_out = g_new0 (guint8, plan->blanks->len);
  GArray *stay = g_array_new (FALSE, FALSE, sizeof (guint));

  for (guint i = 0; i < order->len; i++)
    {
      const guint blank = g_array_index (order, guint, i);
      const CwCutFit fit = find_place (fillings, blank_at (plan, blank),
                                       &plan->cut->rules);

      if (fit.tree == NULL)
        continue;
      cw_cut_fit_put (&fit, blank);
      is_out[blank] = TRUE;
    }
  for (guint i = 0; i < plan->blanks->len; i++)
    if (!is_out[i])
      g_array_append_val (stay, i);
  return stay;
}

/* The names of blanks that were cut by themselves. */
static void
rename_blanks (CwCutPlan *cut, const GArray *names)
{
  for (guint i = 0; i < cut->panels->len; i++)
    cw_cut_panel_rename (cut->panels->pdata[i], (const guint *) names->data);
}

/* (transfer full) (element-type CwCutBlank) */
static GArray *
those (const CwPanelPlan *plan, const GArray *names)
{
  GArray *blanks = g_array_new (FALSE, FALSE, sizeof (CwCutBlank));

  for (guint i = 0; i < names->len; i++)
    g_array_append_vals (blanks,
                         blank_at (plan, g_array_index (names, guint, i)), 1);
  return blanks;
}

/* The same rests, none of them used: the plan may share those it has. */
static void
renew_rests (CwPanelPlan *plan)
{
  GArray *rests = cw_panel_rests_new ();

  g_array_append_vals (rests, plan->rests->data, plan->rests->len);
  g_array_unref (plan->rests);
  plan->rests = rests;
}

static void
take_fillings (CwPanelPlan *plan, const GArray *fillings)
{
  g_autofree guint *names = g_new (guint, plan->blanks->len);

  renew_rests (plan);

  for (guint i = 0; i < plan->blanks->len; i++)
    names[i] = i;
  for (guint i = 0; i < fillings->len; i++)
    {
      const Filling *filling = &g_array_index (fillings, Filling, i);

      if (filling->tree.n_blanks > 0)
        rest_at (plan, i)->cut
            = cw_cut_panel_new (&filling->tree, names, filling->group,
                                plan->cut->rules.kerf);
    }
}

gboolean
cw_panel_rests_use (CwPanelPlan *plan, guint saves, CwCutProgress progress,
                    gpointer data, GCancellable *cancellable)
{
  g_autoptr (GArray) fillings = NULL, stay = NULL, blanks = NULL;
  g_autoptr (CwCutPlan) cut = NULL;

  if (plan->rests->len == 0)
    return FALSE;
  fillings = start_filling (plan, plan->cut->rules.kerf);
  stay = fill_rests (plan, fillings);
  if (stay->len == plan->blanks->len)
    return FALSE;
  blanks = those (plan, stay);
  cut = cw_cut_plan_new ((const CwCutBlank *) blanks->data, blanks->len,
                         &plan->cut->rules, plan->effort, progress, data,
                         cancellable);
  if (cut->panels->len + saves > plan->cut->panels->len)
    return FALSE;
  rename_blanks (cut, stay);
  take_fillings (plan, fillings);
  cw_cut_plan_unref (plan->cut);
  plan->cut = g_steal_pointer (&cut);
  plan->n_panels = plan->n_whole + plan->cut->panels->len;
  return TRUE;
}

/* (transfer full) (element-type guint): the blanks of the plan's panels */
static GArray *
names_on_panels (const CwPanelPlan *plan)
{
  g_autofree guint8 *is_out = g_new0 (guint8, plan->blanks->len);
  GArray *names = g_array_new (FALSE, FALSE, sizeof (guint));

  for (guint i = 0; i < plan->rests->len; i++)
    {
      const CwCutPanel *cut = rest_at (plan, i)->cut;

      for (guint j = 0; cut && j < cut->placements->len; j++)
        is_out[g_array_index (cut->placements, CwCutPlacement, j).blank]
            = TRUE;
    }
  for (guint i = 0; i < plan->blanks->len; i++)
    if (!is_out[i])
      g_array_append_val (names, i);
  return names;
}

/* The plan's cuts, blanks by their places among @names. (transfer full) */
static CwCutPlan *
renumbered (const CwPanelPlan *plan, const GArray *names)
{
  g_autofree guint *numbers = g_new0 (guint, plan->blanks->len);

  for (guint i = 0; i < names->len; i++)
    numbers[g_array_index (names, guint, i)] = i;
  return cw_cut_plan_renamed (plan->cut, numbers);
}

CwCutPlan *
cw_panel_rests_improve (const CwPanelPlan *plan, CwCutEffort effort,
                        CwCutProgress progress, gpointer data,
                        GCancellable *cancellable)
{
  if (!cw_panel_rests_are_used (plan))
    return cw_cut_plan_improve (
        plan->cut, &g_array_index (plan->blanks, CwCutBlank, 0),
        plan->blanks->len, effort, progress, data, cancellable);

  g_autoptr (GArray) names = names_on_panels (plan);
  g_autoptr (GArray) blanks = those (plan, names);
  g_autoptr (CwCutPlan) former = renumbered (plan, names);
  CwCutPlan *cut = cw_cut_plan_improve (
      former, (const CwCutBlank *) blanks->data, blanks->len, effort,
      progress, data, cancellable);

  rename_blanks (cut, names);
  return cut;
}

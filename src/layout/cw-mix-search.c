/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-mix-search.h"

#include <math.h>

#include "cw-cut-cover.h"
#include "cw-cut-fit.h"
#include "cw-cut-panel.h"
#include "cw-cut-search.h"

CwMixKinds *
cw_mix_kinds_new (guint n)
{
  CwMixKinds *kinds = g_new0 (CwMixKinds, 1);

  kinds->n = n;
  kinds->is_usable = g_new0 (gboolean, n);
  kinds->rules = g_new0 (CwCutRules, n);
  kinds->costs = g_new0 (double, n);
  return kinds;
}

void
cw_mix_kinds_free (CwMixKinds *kinds)
{
  g_free (kinds->is_usable);
  g_free (kinds->rules);
  g_free (kinds->costs);
  g_free (kinds);
}

/* Costs are counted in thousandths of a hundredth: of a cent, of 100 cm². One
 * more for each panel, so that of two that cost the same fewer are taken. */
static guint64
units_of (const CwMixKinds *kinds, guint kind)
{
  return (guint64) llround (kinds->costs[kind] * 100) * 1000 + 1;
}

gboolean
cw_mix_kinds_equal (const CwMixKinds *a, const CwMixKinds *b)
{
  if (a->n != b->n)
    return FALSE;
  for (guint i = 0; i < a->n; i++)
    if (a->is_usable[i] != b->is_usable[i]
        || a->rules[i].length != b->rules[i].length
        || a->rules[i].height != b->rules[i].height
        || units_of (a, i) != units_of (b, i))
      return FALSE;
  return TRUE;
}

gboolean
cw_mix_kinds_are_several (const CwMixKinds *kinds)
{
  guint n = 0;

  for (guint i = 0; i < kinds->n; i++)
    n += kinds->is_usable[i] != FALSE;
  return n > 1;
}

/* The blanks of one group of the base, as far as they come off panels. */
typedef struct
{
  const CwPanelPlan *base;
  const CwMixKinds *kinds;
  GCancellable *cancellable;
  guint number;
  GArray *names;             /* guint: their places in the base */
  guint *places;             /* of each of the base's blanks, its place here */
  GPtrArray *panels;         /* CwCutChosen: the cheapest so far */
  guint64 units;             /* what they cost */
  CwCutCover *cover;         /* (nullable) */
} Group;

static guint
name_at (const Group *group, guint index)
{
  return g_array_index (group->names, guint, index);
}

/* FALSE when it is larger than the panel, but for the little that rasping
 * makes up for on the kind that pieces are set out for. */
static gboolean
size_on (const Group *group, guint kind, guint index, CwCutSize *size)
{
  const CwCutRules *rules = &group->kinds->rules[kind];
  const CwCutBlank *blank
      = &g_array_index (group->base->blanks, CwCutBlank,
                        name_at (group, index));
  const gboolean fits
      = (blank->width <= rules->length && blank->height <= rules->height)
        || (rules->turn && blank->height <= rules->length
            && blank->width <= rules->height);

  *size = (CwCutSize) { MIN (blank->width, rules->length) + rules->kerf,
                        MIN (blank->height, rules->height) + rules->kerf };
  if (kind != 0 && fits)
    *size = (CwCutSize) { blank->width + rules->kerf,
                          blank->height + rules->kerf };
  return kind == 0 || fits;
}

static CwCutSize
panel_of (const Group *group, guint kind)
{
  const CwCutRules *rules = &group->kinds->rules[kind];

  return (CwCutSize) { rules->length + rules->kerf,
                       rules->height + rules->kerf };
}

/* Chance is seeded: the same blanks always come to the same plan. */
#define SEED 20

/* (transfer full) (nullable): those of @blanks (element-type guint: places
 * here) that fit on the kind, which @names then holds */
static CwCutSearch *
search_on (const Group *group, guint kind, const GArray *blanks,
           GArray *names)
{
  g_autoptr (GArray) sizes = g_array_new (FALSE, FALSE, sizeof (CwCutSize));

  for (guint i = 0; i < blanks->len; i++)
    {
      const guint index = g_array_index (blanks, guint, i);
      CwCutSize size;

      if (!size_on (group, kind, index, &size))
        continue;
      g_array_append_val (sizes, size);
      g_array_append_val (names, index);
    }
  if (sizes->len == 0)
    return NULL;
  return cw_cut_search_new ((const CwCutSize *) sizes->data, sizes->len,
                            panel_of (group, kind),
                            group->kinds->rules[kind].turn, SEED);
}

/* (transfer full) (nullable): all @blanks on one panel of the kind */
static CwCutTree *
one_panel (const Group *group, guint kind, const GArray *blanks)
{
  g_autoptr (GArray) names = g_array_new (FALSE, FALSE, sizeof (guint));
  g_autoptr (CwCutSearch) search = search_on (group, kind, blanks, names);
  CwCutTree *tree;

  if (!search || names->len < blanks->len
      || cw_cut_search_n_panels (search) != 1)
    return NULL;
  tree = cw_cut_tree_dup (cw_cut_search_panel (search, 0));
  cw_cut_tree_rename (tree, (const guint *) names->data);
  return tree;
}

static void
chosen_free (gpointer data)
{
  CwCutChosen *chosen = data;

  cw_cut_tree_clear (&chosen->tree);
  g_free (chosen);
}

static CwCutChosen *
chosen_new (const Group *group, const CwCutTree *tree, guint kind)
{
  CwCutChosen *chosen = g_new0 (CwCutChosen, 1);

  cw_cut_tree_copy (&chosen->tree, tree);
  chosen->kind = kind;
  chosen->cost = units_of (group->kinds, kind);
  return chosen;
}

static GArray *
blanks_on (const CwCutTree *tree)
{
  GArray *blanks = g_array_new (FALSE, FALSE, sizeof (guint));

  for (gint32 at = 0; at < tree->n_nodes; at++)
    if (tree->nodes[at].kind == CW_CUT_NODE_BLANK)
      {
        const guint blank = (guint) tree->nodes[at].blank;

        g_array_append_val (blanks, blank);
      }
  return blanks;
}

/* The panel with these blanks on the cheapest kind that takes them; offers it
 * to the store. (transfer full) */
static CwCutChosen *
cheapest (const Group *group, const CwCutTree *tree, guint kind)
{
  g_autoptr (GArray) blanks = blanks_on (tree);
  CwCutChosen *best = chosen_new (group, tree, kind);

  for (guint i = 0; i < group->kinds->n; i++)
    {
      CwCutTree *other;

      if (!group->kinds->is_usable[i]
          || units_of (group->kinds, i) >= best->cost)
        continue;
      other = one_panel (group, i, blanks);
      if (other == NULL)
        continue;
      chosen_free (best);
      best = chosen_new (group, other, i);
      cw_cut_tree_free (other);
    }
  if (group->cover)
    cw_cut_cover_add (group->cover, &best->tree, best->kind, best->cost);
  return best;
}

/* (transfer full): a panel of the base as a tree of blanks' places here */
static CwCutTree *
tree_of (const Group *group, const CwCutPanel *panel)
{
  g_autoptr (GArray) alone = NULL;
  CwCutTree *tree;

  if (panel->tree.n_nodes > 0)
    {
      tree = cw_cut_tree_dup (&panel->tree);
      cw_cut_tree_rename (tree, group->places);
      return tree;
    }
  /* A panel that is a piece as it is. */
  alone = g_array_new (FALSE, FALSE, sizeof (guint));
  g_array_append_val (
      alone,
      group->places[g_array_index (panel->placements, CwCutPlacement, 0)
                        .blank]);
  return one_panel (group, 0, alone);
}

static void
start_from_base (Group *group)
{
  const GPtrArray *panels = group->base->cut->panels;

  for (guint i = 0; i < panels->len; i++)
    {
      const CwCutPanel *panel = panels->pdata[i];
      CwCutTree *tree;
      CwCutChosen *chosen;

      if (panel->group != group->number)
        continue;
      tree = tree_of (group, panel);
      chosen = cheapest (group, tree, 0);
      cw_cut_tree_free (tree);
      group->units += chosen->cost;
      g_ptr_array_add (group->panels, chosen);
    }
}

/* Places looked at: for each blank, at the most for a group and kind; patterns
 * kept of each kind; panels of each kind filled by chance; steps of the
 * solver. */
static const struct
{
  guint64 a_blank, most;
  guint patterns, fills;
  guint64 covering;
} efforts[] = {
  [CW_CUT_EFFORT_FIRST] = { 0, 0, 0, 0, 0 },
  [CW_CUT_EFFORT_LIVE] = { 25000, 1500000, 400, 500, 20000 },
  [CW_CUT_EFFORT_LONG] = { 3000000, 200000000, 3000, 20000, 2000000 },
};

static GArray *
all_blanks (const Group *group)
{
  GArray *blanks = g_array_new (FALSE, FALSE, sizeof (guint));

  for (guint i = 0; i < group->names->len; i++)
    g_array_append_val (blanks, i);
  return blanks;
}

static void
offer_best (const Group *group, guint kind, const CwCutSearch *search,
            const GArray *names)
{
  for (guint i = 0; i < cw_cut_search_n_panels (search); i++)
    {
      CwCutTree *tree = cw_cut_tree_dup (cw_cut_search_panel (search, i));

      cw_cut_tree_rename (tree, (const guint *) names->data);
      chosen_free (cheapest (group, tree, kind));
      cw_cut_tree_free (tree);
    }
}

/* Fills the store with panels of a kind. It looks for a plan of one panel less
 * even where there is none: the panels of states that come near are good. */
static void
look_on_kind (const Group *group, guint kind, guint n_kinds_done)
{
  const CwCutEffort effort = group->base->effort;
  g_autoptr (GArray) all = all_blanks (group);
  g_autoptr (GArray) names = g_array_new (FALSE, FALSE, sizeof (guint));
  g_autoptr (CwCutSearch) search = search_on (group, kind, all, names);

  if (search == NULL)
    return;
  /* The store knows blanks by their places here. */
  if (names->len == all->len)
    cw_cut_search_collect (search, group->cover, kind,
                           units_of (group->kinds, kind),
                           efforts[effort].patterns * (n_kinds_done + 1));
  const guint64 whole = MIN (names->len * efforts[effort].a_blank,
                             efforts[effort].most);
  while (cw_cut_search_weighed (search) < whole
         && cw_cut_search_n_panels (search) > 1
         && !g_cancellable_is_cancelled (group->cancellable))
    cw_cut_search_run (search, 0, whole, group->cancellable);
  cw_cut_search_collect (search, NULL, 0, 0, 0);
  offer_best (group, kind, search, names);
}

/* The cheapest panel for few blanks: what a dear panel is not worth cutting
 * into. */
static void
offer_few (const Group *group, const guint *few, guint n)
{
  g_autoptr (GArray) blanks = g_array_new (FALSE, FALSE, sizeof (guint));
  CwCutTree *best = NULL;
  guint kind_of_best = 0;

  g_array_append_vals (blanks, few, n);
  for (guint kind = 0; kind < group->kinds->n; kind++)
    {
      CwCutTree *tree;

      if (!group->kinds->is_usable[kind]
          || (best
              && units_of (group->kinds, kind)
                     >= units_of (group->kinds, kind_of_best))
          || (tree = one_panel (group, kind, blanks)) == NULL)
        continue;
      g_clear_pointer (&best, cw_cut_tree_free);
      best = tree;
      kind_of_best = kind;
    }
  if (best)
    cw_cut_cover_add (group->cover, best, kind_of_best,
                      units_of (group->kinds, kind_of_best));
  g_clear_pointer (&best, cw_cut_tree_free);
}

/* Beyond so many blanks pairs are too many to be tried each. */
#define MOST_BLANKS_FOR_PAIRS 120

static void
offer_singles_and_pairs (const Group *group)
{
  const guint n = group->names->len;

  for (guint i = 0; i < n; i++)
    {
      offer_few (group, &i, 1);
      for (guint j = i + 1; j < n && n <= MOST_BLANKS_FOR_PAIRS; j++)
        offer_few (group, (const guint[]) { i, j }, 2);
    }
}

static void
shuffle (GArray *blanks, CwRandom *random)
{
  for (guint i = blanks->len; i > 1; i--)
    {
      const guint j = cw_random_below (random, i);
      const guint blank = g_array_index (blanks, guint, i - 1);

      g_array_index (blanks, guint, i - 1) = g_array_index (blanks, guint, j);
      g_array_index (blanks, guint, j) = blank;
    }
}

/* One panel with as many of @blanks as fit on, one after the other. */
static void
offer_filled (const Group *group, guint kind, const GArray *blanks)
{
  const CwCutSize size = panel_of (group, kind);
  CwCutTree tree;

  cw_cut_tree_init (&tree, size.width, size.height);
  for (guint i = 0; i < blanks->len && tree.n_free > 0; i++)
    {
      const guint blank = g_array_index (blanks, guint, i);
      CwCutFit fit = { .tree = NULL };
      CwCutSize of_blank;

      if (size_on (group, kind, blank, &of_blank))
        cw_cut_fit_look (&tree, of_blank, group->kinds->rules[kind].turn,
                         &fit);
      if (fit.tree)
        cw_cut_fit_put (&fit, blank);
    }
  if (tree.n_blanks > 0)
    cw_cut_cover_add (group->cover, &tree, kind,
                      units_of (group->kinds, kind));
  cw_cut_tree_clear (&tree);
}

/* The searches know of no panels of another kind beside theirs: chance finds
 * what goes with those. */
static void
offer_by_chance (const Group *group)
{
  g_autoptr (GArray) blanks = all_blanks (group);
  CwRandom random = cw_random (SEED);

  for (guint i = 0; i < efforts[group->base->effort].fills; i++)
    for (guint kind = 0; kind < group->kinds->n; kind++)
      {
        if (!group->kinds->is_usable[kind])
          continue;
        shuffle (blanks, &random);
        offer_filled (group, kind, blanks);
      }
}

static void
cover_group (Group *group)
{
  guint n_done = 0;
  GPtrArray *chosen;

  for (guint kind = 0; kind < group->kinds->n; kind++)
    if (group->kinds->is_usable[kind])
      look_on_kind (group, kind, n_done++);
  offer_singles_and_pairs (group);
  offer_by_chance (group);
  chosen = cw_cut_cover_choose (group->cover, group->units,
                                efforts[group->base->effort].covering,
                                group->cancellable);
  if (chosen == NULL)
    return;
  g_ptr_array_unref (group->panels);
  group->panels = chosen;
}

static CwCutCover *
cover_new (const Group *group)
{
  g_autofree CwCutSize *sizes = g_new (CwCutSize, group->names->len);

  for (guint i = 0; i < group->names->len; i++)
    {
      const CwCutBlank *blank
          = &g_array_index (group->base->blanks, CwCutBlank,
                            name_at (group, i));

      sizes[i] = (CwCutSize) { blank->width, blank->height };
    }
  return cw_cut_cover_new (sizes, group->names->len);
}

/* More are planned as the base has them. */
#define MOST_BLANKS_FOR_SEARCH 2000

static void
take_panels (const Group *group, GPtrArray *cuts)
{
  const guint *names = (const guint *) group->names->data;

  for (guint i = 0; i < group->panels->len; i++)
    {
      const CwCutChosen *chosen = group->panels->pdata[i];
      CwCutPlan *cut = cuts->pdata[chosen->kind];

      g_ptr_array_add (cut->panels,
                       cw_cut_panel_new (&chosen->tree, names, group->number,
                                         cut->rules.kerf));
    }
}

static gboolean
mix_group (Group *group, GPtrArray *cuts)
{
  gboolean is_mixed = FALSE;

  group->panels = g_ptr_array_new_with_free_func (chosen_free);
  if (group->base->effort > CW_CUT_EFFORT_FIRST
      && group->names->len <= MOST_BLANKS_FOR_SEARCH)
    group->cover = cover_new (group);
  start_from_base (group);
  if (group->cover)
    cover_group (group);
  take_panels (group, cuts);
  for (guint i = 0; i < group->panels->len; i++)
    is_mixed |= ((CwCutChosen *) group->panels->pdata[i])->kind != 0;
  g_ptr_array_unref (group->panels);
  g_clear_pointer (&group->cover, cw_cut_cover_free);
  return is_mixed;
}

static GPtrArray *
cuts_new (const CwMixKinds *kinds)
{
  GPtrArray *cuts = g_ptr_array_new_with_free_func (
      (GDestroyNotify) cw_cut_plan_unref);

  for (guint i = 0; i < kinds->n; i++)
    g_ptr_array_add (cuts, cw_cut_plan_new_empty (&kinds->rules[i]));
  return cuts;
}

/* Of each group the blanks that come off panels, in the order of the panels.
 * (element-type guint GArray) */
static GHashTable *
blanks_by_group (const CwPanelPlan *base, GArray *order)
{
  GHashTable *groups = g_hash_table_new_full (
      NULL, NULL, NULL, (GDestroyNotify) g_array_unref);

  for (guint i = 0; i < base->cut->panels->len; i++)
    {
      const CwCutPanel *panel = base->cut->panels->pdata[i];
      GArray *names
          = g_hash_table_lookup (groups, GUINT_TO_POINTER (panel->group));

      if (names == NULL)
        {
          names = g_array_new (FALSE, FALSE, sizeof (guint));
          g_hash_table_insert (groups, GUINT_TO_POINTER (panel->group), names);
          g_array_append_val (order, panel->group);
        }
      for (guint j = 0; j < panel->placements->len; j++)
        g_array_append_val (
            names,
            g_array_index (panel->placements, CwCutPlacement, j).blank);
    }
  return groups;
}

GPtrArray *
cw_mix_search (const CwPanelPlan *base, const CwMixKinds *kinds,
               GCancellable *cancellable)
{
  g_autoptr (GPtrArray) cuts = cuts_new (kinds);
  g_autoptr (GArray) order = g_array_new (FALSE, FALSE, sizeof (guint));
  g_autoptr (GHashTable) groups = blanks_by_group (base, order);
  g_autofree guint *places = g_new0 (guint, base->blanks->len + 1);
  gboolean is_mixed = FALSE;

  for (guint i = 0; i < order->len; i++)
    {
      const guint number = g_array_index (order, guint, i);
      Group group = { .base = base,
                      .kinds = kinds,
                      .cancellable = cancellable,
                      .number = number,
                      .places = places,
                      .names = g_hash_table_lookup (
                          groups, GUINT_TO_POINTER (number)) };

      for (guint j = 0; j < group.names->len; j++)
        places[name_at (&group, j)] = j;
      is_mixed |= mix_group (&group, cuts);
    }
  return is_mixed ? g_steal_pointer (&cuts) : NULL;
}

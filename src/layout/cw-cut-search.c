/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-search.h"

#include <math.h>
#include <string.h>

typedef struct
{
  CwLength width, height;
  double share;              /* of the panel's area */
} Blank;

struct CwCutSearch
{
  Blank *blanks;
  guint n_blanks;
  CwCutSize panel;
  CwCutSize least;           /* no blank is narrower or lower */
  double panel_area;
  gboolean turn;
  CwRandom random;

  GPtrArray *trees;          /* CwCutTree: the plan being changed */
  GPtrArray *saved;          /* CwCutTree: what the touched ones were */
  guint *touched;            /* which trees those are */
  guint n_touched;
  guint8 *is_touched;
  GArray *out;               /* gint32: blanks without a place */
  GArray *out_saved;
  double heat;
  guint64 weighed;           /* places looked at: the measure of effort */

  GPtrArray *best;           /* CwCutTree: the best whole plan */

  CwCutCover *cover;         /* (nullable): where good panels are kept */
  guint kind, most_patterns;
  guint64 cost;
};

static CwCutTree *
tree_new (CwCutSize size)
{
  CwCutTree *tree = g_new (CwCutTree, 1);
  cw_cut_tree_init (tree, size.width, size.height);
  return tree;
}

/* How much a rest is worth: large rests more than their share, slivers that
 * take no blank nothing. */
static inline double
worth (const CwCutSearch *search, CwLength width, CwLength height)
{
  if (width < search->least.width || height < search->least.height)
    return 0;
  const double share = (double) width * (double) height / search->panel_area;
  return share * sqrt (share);
}

static double
tree_worth (const CwCutSearch *search, const CwCutTree *tree)
{
  double sum = 0;
  for (gint32 i = 0; i < tree->n_free; i++)
    {
      const CwCutNode *node = &tree->nodes[tree->free[i]];
      sum += worth (search, node->width, node->height);
    }
  return sum;
}

static double
out_share (const CwCutSearch *search)
{
  double sum = 0;
  for (guint i = 0; i < search->out->len; i++)
    sum += search->blanks[g_array_index (search->out, gint32, i)].share;
  return sum;
}

typedef struct
{
  guint tree;
  gint32 node;
  gboolean turned;
  CwCutNodeKind first;
  double gain;
} Place;

/* Looks at one free node for a blank that fits there. */
static inline void
weigh_place (const CwCutSearch *search, guint tree, gint32 at, double now,
             CwLength width, CwLength height, gboolean turned, Place *best)
{
  const CwCutTree *panel = g_ptr_array_index (search->trees, tree);
  const CwCutNode *node = &panel->nodes[at];
  const CwLength rest_width = node->width - width;
  const CwLength rest_height = node->height - height;
  const double across = worth (search, rest_width, node->height)
                        + worth (search, width, rest_height) - now;
  const double along = worth (search, node->width, rest_height)
                       + worth (search, rest_width, height) - now;
  const double gain = MAX (across, along);
  if (gain > best->gain)
    *best = (Place) { tree, at, turned,
                      across >= along ? CW_CUT_NODE_ACROSS
                                      : CW_CUT_NODE_ALONG,
                      gain };
}

static inline gboolean
fits (CwLength width, CwLength height, CwLength node_width,
      CwLength node_height)
{
  return width <= node_width && height <= node_height;
}

static inline gboolean
has_room (const CwCutSearch *search, const CwCutTree *tree,
          const Blank *blank)
{
  return fits (blank->width, blank->height, tree->most_width,
               tree->most_height)
         || (search->turn
             && fits (blank->height, blank->width, tree->most_width,
                      tree->most_height));
}

#define BLINK 0.01

static void
weigh_tree (CwCutSearch *search, guint index, const Blank *blank, Place *best)
{
  const CwCutTree *tree = g_ptr_array_index (search->trees, index);
  search->weighed++;
  if (!has_room (search, tree, blank))
    return;
  search->weighed += tree->n_free;
  for (gint32 i = 0; i < tree->n_free; i++)
    {
      const gint32 at = tree->free[i];
      const CwCutNode *node = &tree->nodes[at];
      const gboolean straight
          = fits (blank->width, blank->height, node->width, node->height);
      const gboolean turned
          = search->turn
            && fits (blank->height, blank->width, node->width, node->height);
      if ((!straight && !turned) || cw_random_unit (&search->random) < BLINK)
        continue;
      const double now = worth (search, node->width, node->height);
      if (straight)
        weigh_place (search, index, at, now, blank->width, blank->height,
                     FALSE, best);
      if (turned)
        weigh_place (search, index, at, now, blank->height, blank->width,
                     TRUE, best);
    }
}

/* Keeping and changing a panel takes as long as looking at so many places, and
 * as one for each part of it. */
#define PLACES_PER_TOUCHED 20

static CwCutTree *
touch (CwCutSearch *search, guint index)
{
  CwCutTree *tree = g_ptr_array_index (search->trees, index);
  if (!search->is_touched[index])
    {
      search->is_touched[index] = TRUE;
      search->weighed += PLACES_PER_TOUCHED + (guint) tree->n_nodes;
      while (search->saved->len <= search->n_touched)
        g_ptr_array_add (search->saved, tree_new (search->panel));
      cw_cut_tree_copy (
          g_ptr_array_index (search->saved, search->n_touched), tree);
      search->touched[search->n_touched++] = index;
    }
  return tree;
}

static gboolean
put_blank (CwCutSearch *search, gint32 index)
{
  const Blank *blank = &search->blanks[index];
  Place best = { .gain = -G_MAXDOUBLE, .node = -1 };
  for (guint i = 0; i < search->trees->len; i++)
    weigh_tree (search, i, blank, &best);
  if (best.node < 0)
    return FALSE;

  cw_cut_tree_place (touch (search, best.tree), best.node, index,
                     best.turned ? blank->height : blank->width,
                     best.turned ? blank->width : blank->height, best.turned,
                     best.first);
  return TRUE;
}

typedef struct
{
  double key;
  gint32 blank;
} Turn;

static inline gboolean
is_before (const Turn *first, const Turn *second)
{
  if (first->key > second->key)
    return TRUE;
  return !(first->key < second->key) && first->blank < second->blank;
}

static int
compare_turns (gconstpointer a, gconstpointer b)
{
  return is_before (a, b) ? -1 : 1;
}

/* A round has a few turns only: faster than what sorts thousands. */
static void
sort_few_turns (Turn *turns, guint n)
{
  for (guint i = 1; i < n; i++)
    {
      const Turn turn = turns[i];
      guint at = i;
      for (; at > 0 && is_before (&turn, &turns[at - 1]); at--)
        turns[at] = turns[at - 1];
      turns[at] = turn;
    }
}

/* In which order blanks are put back: mostly the large ones first. */
static double
turn_key (CwCutSearch *search, guint way, const Blank *blank)
{
  switch (way)
    {
    case 0:
    case 1:
    case 2:
      return blank->share;
    case 3:
      return (double) MAX (blank->width, blank->height);
    case 4:
      return (double) blank->width;
    case 5:
      return (double) blank->height;
    default:
      return cw_random_unit (&search->random);
    }
}

static void
put_back (CwCutSearch *search)
{
  const guint way = cw_random_below (&search->random, 8);
  const guint n = search->out->len;
  Turn *turns = g_newa (Turn, n);
  for (guint i = 0; i < n; i++)
    {
      turns[i].blank = g_array_index (search->out, gint32, i);
      turns[i].key = turn_key (search, way, &search->blanks[turns[i].blank]);
    }
  sort_few_turns (turns, n);

  g_array_set_size (search->out, 0);
  for (guint i = 0; i < n; i++)
    if (!put_blank (search, turns[i].blank))
      g_array_append_val (search->out, turns[i].blank);
}

/* Takes a random part of a random panel out. */
static void
take_out (CwCutSearch *search)
{
  const guint index
      = cw_random_below (&search->random, search->trees->len);
  CwCutTree *tree = g_ptr_array_index (search->trees, index);
  if (tree->n_blanks == 0)
    return;
  gint32 at;
  do
    at = (gint32) cw_random_below (&search->random, tree->n_nodes);
  while (tree->nodes[at].kind == CW_CUT_NODE_FREE
         || tree->nodes[at].kind == CW_CUT_NODE_UNUSED);
  cw_cut_tree_remove (touch (search, index), at, search->out);
}

static void
give_up (CwCutSearch *search)
{
  for (guint i = 0; i < search->n_touched; i++)
    {
      CwCutTree **tree = (CwCutTree **) &g_ptr_array_index (
          search->trees, search->touched[i]);
      CwCutTree **saved
          = (CwCutTree **) &g_ptr_array_index (search->saved, i);
      CwCutTree *changed = *tree;
      *tree = *saved;
      *saved = changed;
    }
  g_array_set_size (search->out, 0);
  g_array_append_vals (search->out, search->out_saved->data,
                       search->out_saved->len);
}

static double
touched_worth (const CwCutSearch *search, gboolean saved)
{
  double sum = 0;
  for (guint i = 0; i < search->n_touched; i++)
    sum += tree_worth (search, saved ? g_ptr_array_index (search->saved, i)
                                     : g_ptr_array_index (search->trees,
                                                          search->touched[i]));
  return sum;
}

static void
forget_touched (CwCutSearch *search)
{
  for (guint i = 0; i < search->n_touched; i++)
    search->is_touched[search->touched[i]] = FALSE;
  search->n_touched = 0;
}

static void
offer (CwCutSearch *search, const CwCutTree *tree)
{
  if (tree->n_blanks > 0
      && cw_cut_cover_n_patterns (search->cover) < search->most_patterns)
    cw_cut_cover_add (search->cover, tree, search->kind, search->cost);
}

/* In a state with few blanks left over the panels are well filled. */
#define FEW_LEFT_OVER 1

static void
offer_touched (CwCutSearch *search)
{
  if (!search->cover || search->out->len > FEW_LEFT_OVER)
    return;
  for (guint i = 0; i < search->n_touched; i++)
    offer (search, g_ptr_array_index (search->trees, search->touched[i]));
}

/* Found by trial on the published instances of tests/bench/bench-cutting.c;
 * twice or half of each makes little difference. */
#define AVERAGE_TAKEN 8
#define WORTH_WEIGHT 0.2
#define HOTTEST 0.015

static void
round_once (CwCutSearch *search)
{
  const double before = out_share (search);
  g_array_set_size (search->out_saved, 0);
  g_array_append_vals (search->out_saved, search->out->data,
                       search->out->len);

  const guint n_taken
      = 1 + cw_random_below (&search->random, 2 * AVERAGE_TAKEN - 1);
  for (guint i = 0; i < n_taken; i++)
    take_out (search);
  put_back (search);

  const double change
      = out_share (search) - before
        - WORTH_WEIGHT
              * (touched_worth (search, FALSE) - touched_worth (search, TRUE));
  /* Accepted as annealing does: a worse state with a chance that falls with
   * how much worse it is. */
  if (change > -search->heat * log (1 - cw_random_unit (&search->random)))
    give_up (search);
  else
    offer_touched (search);
  forget_touched (search);
}

static void
keep_best (CwCutSearch *search)
{
  g_ptr_array_set_size (search->best, 0);
  for (guint i = 0; i < search->trees->len; i++)
    g_ptr_array_add (
        search->best,
        cw_cut_tree_dup (g_ptr_array_index (search->trees, i)));
}

static void
add_panel (CwCutSearch *search)
{
  g_ptr_array_add (search->trees, tree_new (search->panel));
}

static void
start (CwCutSearch *search)
{
  Turn *turns = g_new (Turn, search->n_blanks);
  for (guint i = 0; i < search->n_blanks; i++)
    turns[i] = (Turn) { search->blanks[i].share, (gint32) i };
  qsort (turns, search->n_blanks, sizeof (Turn), compare_turns);
  for (guint i = 0; i < search->n_blanks; i++)
    while (!put_blank (search, turns[i].blank))
      add_panel (search);
  g_free (turns);
  forget_touched (search);
  keep_best (search);
}

CwCutSearch *
cw_cut_search_new (const CwCutSize *blanks, guint n_blanks, CwCutSize panel,
                   gboolean turn, guint64 seed)
{
  CwCutSearch *search = g_new0 (CwCutSearch, 1);
  search->n_blanks = n_blanks;
  search->blanks = g_new (Blank, n_blanks);
  search->panel = panel;
  search->panel_area = (double) panel.width * (double) panel.height;
  search->turn = turn;
  search->random = cw_random (seed);
  search->least = panel;
  for (guint i = 0; i < n_blanks; i++)
    {
      const CwCutSize size = blanks[i];
      const CwLength lesser = MIN (size.width, size.height);
      search->blanks[i] = (Blank) {
        size.width, size.height,
        (double) size.width * (double) size.height / search->panel_area
      };
      search->least.width
          = MIN (search->least.width, turn ? lesser : size.width);
      search->least.height
          = MIN (search->least.height, turn ? lesser : size.height);
    }
  search->trees = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_cut_tree_free);
  search->saved = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_cut_tree_free);
  search->best = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_cut_tree_free);
  search->touched = g_new0 (guint, n_blanks);
  search->is_touched = g_new0 (guint8, n_blanks + 1);
  search->out = g_array_new (FALSE, FALSE, sizeof (gint32));
  search->out_saved = g_array_new (FALSE, FALSE, sizeof (gint32));
  start (search);
  return search;
}

void
cw_cut_search_free (CwCutSearch *search)
{
  g_ptr_array_unref (search->trees);
  g_ptr_array_unref (search->saved);
  g_ptr_array_unref (search->best);
  g_array_unref (search->out);
  g_array_unref (search->out_saved);
  g_free (search->touched);
  g_free (search->is_touched);
  g_free (search->blanks);
  g_free (search);
}

void
cw_cut_search_collect (CwCutSearch *search, CwCutCover *cover, guint kind,
                       guint64 cost, guint most)
{
  search->cover = cover;
  search->kind = kind;
  search->cost = cost;
  search->most_patterns = most;
  for (guint i = 0; cover && i < search->best->len; i++)
    offer (search, g_ptr_array_index (search->best, i));
}

/* Gives up the panel with the least on it. */
static void
drop_panel (CwCutSearch *search)
{
  guint emptiest = 0;
  double most = -1;
  for (guint i = 0; i < search->trees->len; i++)
    {
      const double rest
          = tree_worth (search, g_ptr_array_index (search->trees, i));
      if (rest > most)
        {
          most = rest;
          emptiest = i;
        }
    }
  cw_cut_tree_remove (g_ptr_array_index (search->trees, emptiest), 0,
                      search->out);
  g_ptr_array_remove_index_fast (search->trees, emptiest);
}

/* A moment's work. */
#define ROUNDS_TO_CANCEL 256

/* One slow cooling over @effort places weighed; TRUE when every blank has
 * found a place on the way. */
static gboolean
cool_down (CwCutSearch *search, guint64 effort, GCancellable *cancellable)
{
  const guint64 start = search->weighed;
  for (guint round = 1; search->out->len > 0; round++)
    {
      const guint64 done = search->weighed - start;
      if (done >= effort
          || (round % ROUNDS_TO_CANCEL == 0
              && g_cancellable_is_cancelled (cancellable)))
        return FALSE;
      search->heat = HOTTEST * (1 - (double) done / (double) effort) + 1e-9;
      round_once (search);
    }
  return TRUE;
}

gboolean
cw_cut_search_run (CwCutSearch *search, guint least, guint64 effort,
                   GCancellable *cancellable)
{
  /* What there is needs a panel, however little it weighs. */
  if (search->best->len <= MAX (least, 1))
    return FALSE;
  if (search->out->len == 0)
    drop_panel (search);
  if (!cool_down (search, effort, cancellable))
    return FALSE;
  keep_best (search);
  return TRUE;
}

void
cw_cut_search_take (CwCutSearch *search, const CwCutTree **panels,
                    guint n_panels)
{
  if (n_panels > search->best->len)
    return;
  g_array_set_size (search->out, 0);
  g_ptr_array_set_size (search->trees, 0);
  for (guint i = 0; i < n_panels; i++)
    g_ptr_array_add (search->trees, cw_cut_tree_dup (panels[i]));
  keep_best (search);
}

guint64
cw_cut_search_weighed (const CwCutSearch *search)
{
  return search->weighed;
}

guint
cw_cut_search_n_panels (const CwCutSearch *search)
{
  return search->best->len;
}

const CwCutTree *
cw_cut_search_panel (const CwCutSearch *search, guint index)
{
  return g_ptr_array_index (search->best, index);
}

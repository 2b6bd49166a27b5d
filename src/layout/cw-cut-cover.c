/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-cover.h"

#include <string.h>

#include "cw-cut-choose.h"
#include "cw-cut-sizes.h"

struct CwCutCover
{
  guint n_blanks;
  guint *size_of;            /* of each blank */
  CwCutSizes sizes;
  GPtrArray *patterns;       /* CwCutPattern */
  GHashTable *known;         /* set of CwCutPattern, borrowed */
};

static void
pattern_free (gpointer data)
{
  CwCutPattern *pattern = data;
  cw_cut_tree_clear (&pattern->tree);
  g_free (pattern->sizes);
  g_free (pattern);
}

static guint
pattern_hash (gconstpointer data)
{
  const CwCutPattern *pattern = data;
  guint hash = 5381;
  for (guint i = 0; i < pattern->n_sizes; i++)
    hash = hash * 33 + pattern->sizes[i];
  return hash;
}

static gboolean
pattern_equal (gconstpointer a, gconstpointer b)
{
  const CwCutPattern *first = a, *second = b;
  return first->n_sizes == second->n_sizes
         && memcmp (first->sizes, second->sizes,
                    first->n_sizes * sizeof (guint))
                == 0;
}

CwCutCover *
cw_cut_cover_new (const CwCutSize *blanks, guint n_blanks)
{
  CwCutCover *cover = g_new0 (CwCutCover, 1);
  cover->n_blanks = n_blanks;
  cover->size_of = g_new (guint, n_blanks);
  cover->patterns = g_ptr_array_new_with_free_func (pattern_free);
  cover->known = g_hash_table_new (pattern_hash, pattern_equal);
  cw_cut_sizes_init (&cover->sizes, blanks, NULL, n_blanks, cover->size_of);
  return cover;
}

void
cw_cut_cover_free (CwCutCover *cover)
{
  g_hash_table_unref (cover->known);
  g_ptr_array_unref (cover->patterns);
  cw_cut_sizes_clear (&cover->sizes);
  g_free (cover->size_of);
  g_free (cover);
}

/* @sizes must hold as many as there are blanks on @tree. */
static guint
list_sizes (const CwCutCover *cover, const CwCutTree *tree, guint *sizes)
{
  guint n = 0;
  for (gint32 at = 0; at < tree->n_nodes; at++)
    {
      if (tree->nodes[at].kind != CW_CUT_NODE_BLANK)
        continue;
      const guint size = cover->size_of[tree->nodes[at].blank];
      guint place = n++;
      for (; place > 0 && sizes[place - 1] > size; place--)
        sizes[place] = sizes[place - 1];
      sizes[place] = size;
    }
  return n;
}

static void
pattern_take_tree (CwCutPattern *pattern, const CwCutTree *tree, guint kind,
                   guint64 cost)
{
  cw_cut_tree_copy (&pattern->tree, tree);
  pattern->kind = kind;
  pattern->cost = cost;
}

gboolean
cw_cut_cover_add (CwCutCover *cover, const CwCutTree *tree, guint kind,
                  guint64 cost)
{
  g_return_val_if_fail (tree->n_blanks > 0, FALSE);

  CwCutPattern key = { .sizes = g_newa (guint, tree->n_blanks) };
  key.n_sizes = list_sizes (cover, tree, key.sizes);
  CwCutPattern *known = g_hash_table_lookup (cover->known, &key);
  if (known)
    {
      if (known->cost <= cost)
        return FALSE;
      pattern_take_tree (known, tree, kind, cost);
      return TRUE;
    }

  CwCutPattern *pattern = g_new0 (CwCutPattern, 1);
  pattern->n_sizes = key.n_sizes;
  pattern->sizes = g_memdup2 (key.sizes, key.n_sizes * sizeof (guint));
  pattern_take_tree (pattern, tree, kind, cost);
  g_ptr_array_add (cover->patterns, pattern);
  g_hash_table_add (cover->known, pattern);
  return TRUE;
}

guint
cw_cut_cover_n_patterns (const CwCutCover *cover)
{
  return cover->patterns->len;
}

/* The blanks of each size that have no panel yet, as linked lists. */
typedef struct
{
  gint32 *first;             /* of each size; -1: none left */
  gint32 *next;              /* after each blank */
} Waiting;

static void
waiting_fill (Waiting *waiting, const CwCutCover *cover)
{
  waiting->first = g_new (gint32, cover->sizes.n);
  waiting->next = g_new (gint32, cover->n_blanks);
  for (guint size = 0; size < cover->sizes.n; size++)
    waiting->first[size] = -1;
  for (guint i = cover->n_blanks; i-- > 0;)
    {
      waiting->next[i] = waiting->first[cover->size_of[i]];
      waiting->first[cover->size_of[i]] = (gint32) i;
    }
}

/* Gives every blank on @tree the number of one that still waits; takes off
 * what nobody waits for. */
static void
name_blanks (const CwCutCover *cover, CwCutTree *tree, Waiting *waiting)
{
  g_autoptr (GArray) spare = g_array_new (FALSE, FALSE, sizeof (gint32));
  g_autoptr (GArray) taken_off = g_array_new (FALSE, FALSE, sizeof (gint32));
  for (gint32 at = 0; at < tree->n_nodes; at++)
    {
      CwCutNode *node = &tree->nodes[at];
      if (node->kind != CW_CUT_NODE_BLANK)
        continue;
      gint32 *first = &waiting->first[cover->size_of[node->blank]];
      if (*first < 0)
        {
          g_array_append_val (spare, at);
          continue;
        }
      node->blank = *first;
      *first = waiting->next[*first];
    }
  for (guint i = 0; i < spare->len; i++)
    cw_cut_tree_remove (tree, g_array_index (spare, gint32, i), taken_off);
}

static void
chosen_free (gpointer data)
{
  CwCutChosen *chosen = data;
  cw_cut_tree_clear (&chosen->tree);
  g_free (chosen);
}

static void
take_pattern (const CwCutCover *cover, const CwCutPattern *pattern,
              Waiting *waiting, GPtrArray *panels)
{
  CwCutChosen *chosen = g_new0 (CwCutChosen, 1);
  cw_cut_tree_copy (&chosen->tree, &pattern->tree);
  chosen->kind = pattern->kind;
  chosen->cost = pattern->cost;
  name_blanks (cover, &chosen->tree, waiting);
  if (chosen->tree.n_blanks > 0)
    g_ptr_array_add (panels, chosen);
  else
    chosen_free (chosen);
}

static GPtrArray *
take_choice (const CwCutCover *cover, const guint *times)
{
  GPtrArray *panels = g_ptr_array_new_with_free_func (chosen_free);
  Waiting waiting;
  waiting_fill (&waiting, cover);
  for (guint i = 0; i < cover->patterns->len; i++)
    for (guint j = 0; j < times[i]; j++)
      take_pattern (cover, g_ptr_array_index (cover->patterns, i), &waiting,
                    panels);
  g_free (waiting.first);
  g_free (waiting.next);
  return panels;
}

GPtrArray *
cw_cut_cover_choose (const CwCutCover *cover, guint64 below, guint64 effort,
                     GCancellable *cancellable)
{
  const CwCutCovering covering
      = { cover->patterns, cover->sizes.counts, cover->sizes.n };
  if (cover->patterns->len == 0 || below == 0)
    return NULL;
  g_autofree guint *times
      = cw_cut_choose (&covering, below, effort, cancellable);
  return times ? take_choice (cover, times) : NULL;
}

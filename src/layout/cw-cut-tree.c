/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-tree.h"

#include <string.h>

void
cw_cut_tree_init (CwCutTree *tree, CwLength width, CwLength height)
{
  *tree = (CwCutTree) { .unused = -1, .n_nodes = 1, .n_allocated = 8 };
  tree->nodes = g_new (CwCutNode, tree->n_allocated);
  tree->nodes[0] = (CwCutNode) {
    width, height, -1, -1, -1, -1, CW_CUT_NODE_FREE, FALSE
  };
  tree->n_free_allocated = 4;
  tree->free = g_new (gint32, tree->n_free_allocated);
  tree->free[tree->n_free++] = 0;
  tree->most_width = width;
  tree->most_height = height;
}

void
cw_cut_tree_clear (CwCutTree *tree)
{
  g_clear_pointer (&tree->nodes, g_free);
  g_clear_pointer (&tree->free, g_free);
}

static void
reserve (CwCutTree *tree, gint32 n_nodes, gint32 n_free)
{
  if (n_nodes > tree->n_allocated)
    {
      tree->n_allocated = MAX (n_nodes, 2 * tree->n_allocated);
      tree->nodes = g_renew (CwCutNode, tree->nodes, tree->n_allocated);
    }
  if (n_free > tree->n_free_allocated)
    {
      tree->n_free_allocated = MAX (n_free, 2 * tree->n_free_allocated);
      tree->free = g_renew (gint32, tree->free, tree->n_free_allocated);
    }
}

void
cw_cut_tree_copy (CwCutTree *to, const CwCutTree *from)
{
  reserve (to, from->n_nodes, MAX (from->n_free, 1));
  memcpy (to->nodes, from->nodes, from->n_nodes * sizeof (CwCutNode));
  memcpy (to->free, from->free, from->n_free * sizeof (gint32));
  to->n_nodes = from->n_nodes;
  to->unused = from->unused;
  to->n_blanks = from->n_blanks;
  to->n_free = from->n_free;
  to->most_width = from->most_width;
  to->most_height = from->most_height;
}

CwCutTree *
cw_cut_tree_dup (const CwCutTree *tree)
{
  CwCutTree *copy = g_new0 (CwCutTree, 1);
  cw_cut_tree_copy (copy, tree);
  return copy;
}

void
cw_cut_tree_free (CwCutTree *tree)
{
  cw_cut_tree_clear (tree);
  g_free (tree);
}

static void
measure_room (CwCutTree *tree)
{
  tree->most_width = tree->most_height = 0;
  for (gint32 i = 0; i < tree->n_free; i++)
    {
      const CwCutNode *node = &tree->nodes[tree->free[i]];
      tree->most_width = MAX (tree->most_width, node->width);
      tree->most_height = MAX (tree->most_height, node->height);
    }
}

static void
note_free (CwCutTree *tree, gint32 at)
{
  reserve (tree, 0, tree->n_free + 1);
  tree->free[tree->n_free++] = at;
}

static void
forget_free (CwCutTree *tree, gint32 at)
{
  for (gint32 i = 0; i < tree->n_free; i++)
    if (tree->free[i] == at)
      {
        tree->free[i] = tree->free[--tree->n_free];
        return;
      }
  g_assert_not_reached ();
}

/* A new node under @parent; pointers into the array are void after it. */
static gint32
add_node (CwCutTree *tree, gint32 parent, CwCutNodeKind kind, CwLength width,
          CwLength height)
{
  gint32 at = tree->unused;
  if (at >= 0)
    tree->unused = tree->nodes[at].next;
  else
    {
      reserve (tree, tree->n_nodes + 1, 0);
      at = tree->n_nodes++;
    }

  tree->nodes[at] = (CwCutNode) { width, height, parent, -1,
                                  tree->nodes[parent].first, -1,
                                  (gint16) kind, FALSE };
  tree->nodes[parent].first = at;
  if (kind == CW_CUT_NODE_FREE)
    note_free (tree, at);
  return at;
}

static void
drop_node (CwCutTree *tree, gint32 at)
{
  if (tree->nodes[at].kind == CW_CUT_NODE_FREE)
    forget_free (tree, at);
  tree->nodes[at].kind = CW_CUT_NODE_UNUSED;
  tree->nodes[at].next = tree->unused;
  tree->unused = at;
}

static void
unlink_child (CwCutTree *tree, gint32 at)
{
  gint32 *link = &tree->nodes[tree->nodes[at].parent].first;
  while (*link != at)
    link = &tree->nodes[*link].next;
  *link = tree->nodes[at].next;
}

/* What lies along the cuts of that kind: width for upright cuts. */
static CwLength *
extent (CwCutNode *node, CwCutNodeKind cut)
{
  return cut == CW_CUT_NODE_ACROSS ? &node->width : &node->height;
}

/*
 * Cuts the free node @at so that a part of @size along @cut comes off it.
 * Returns the part, still marked free but no longer in the list; @at keeps
 * the rest, or is gone when nothing is left of it.
 */
static gint32
cut_off (CwCutTree *tree, gint32 at, CwCutNodeKind cut, CwLength size)
{
  const gint32 parent = tree->nodes[at].parent;
  if (*extent (&tree->nodes[at], cut) == size)
    {
      forget_free (tree, at);
      return at;
    }

  CwLength width = tree->nodes[at].width, height = tree->nodes[at].height;
  *(cut == CW_CUT_NODE_ACROSS ? &width : &height) = size;
  gint32 part;
  if (parent >= 0 && tree->nodes[parent].kind == (gint16) cut)
    {
      /* One more cut of the set that made this node. */
      part = add_node (tree, parent, CW_CUT_NODE_FREE, width, height);
      *extent (&tree->nodes[at], cut) -= size;
    }
  else
    {
      CwLength rest_width = tree->nodes[at].width;
      CwLength rest_height = tree->nodes[at].height;
      *(cut == CW_CUT_NODE_ACROSS ? &rest_width : &rest_height) -= size;
      forget_free (tree, at);
      tree->nodes[at].kind = (gint16) cut;
      add_node (tree, at, CW_CUT_NODE_FREE, rest_width, rest_height);
      part = add_node (tree, at, CW_CUT_NODE_FREE, width, height);
    }
  forget_free (tree, part);
  return part;
}

gint32
cw_cut_tree_place (CwCutTree *tree, gint32 at, gint32 blank, CwLength width,
                   CwLength height, gboolean turned, CwCutNodeKind first)
{
  const CwLength size[] = { width, height };
  const gboolean along_first = first == CW_CUT_NODE_ALONG;
  const CwCutNodeKind second
      = along_first ? CW_CUT_NODE_ACROSS : CW_CUT_NODE_ALONG;

  g_assert (tree->nodes[at].kind == CW_CUT_NODE_FREE);
  g_assert (width <= tree->nodes[at].width);
  g_assert (height <= tree->nodes[at].height);

  gint32 part = cut_off (tree, at, first, size[along_first]);
  note_free (tree, part);
  part = cut_off (tree, part, second, size[!along_first]);
  tree->nodes[part].kind = CW_CUT_NODE_BLANK;
  tree->nodes[part].blank = blank;
  tree->nodes[part].turned = (gint16) turned;
  tree->n_blanks++;
  measure_room (tree);
  return part;
}

static void
empty_node (CwCutTree *tree, gint32 at, GArray *blanks)
{
  CwCutNode *node = &tree->nodes[at];
  if (node->kind == CW_CUT_NODE_BLANK)
    {
      g_array_append_val (blanks, node->blank);
      tree->n_blanks--;
    }
  gint32 child = node->first;
  while (child >= 0)
    {
      const gint32 next = tree->nodes[child].next;
      empty_node (tree, child, blanks);
      drop_node (tree, child);
      child = next;
    }
  tree->nodes[at].first = -1;
}

static gint32
free_sibling (const CwCutTree *tree, gint32 at)
{
  gint32 child = tree->nodes[tree->nodes[at].parent].first;
  while (child >= 0
         && (child == at || tree->nodes[child].kind != CW_CUT_NODE_FREE))
    child = tree->nodes[child].next;
  return child;
}

static void
become_free (CwCutTree *tree, gint32 at)
{
  tree->nodes[at].kind = CW_CUT_NODE_FREE;
  tree->nodes[at].blank = -1;
  note_free (tree, at);
}

/* Takes the free space beside @at into it. */
static void
join_sibling (CwCutTree *tree, gint32 at)
{
  const CwCutNodeKind cut = tree->nodes[tree->nodes[at].parent].kind;
  const gint32 sibling = free_sibling (tree, at);
  if (sibling < 0)
    return;
  *extent (&tree->nodes[at], cut) += *extent (&tree->nodes[sibling], cut);
  unlink_child (tree, sibling);
  drop_node (tree, sibling);
}

static gboolean
is_only_child (const CwCutTree *tree, gint32 at)
{
  return tree->nodes[tree->nodes[at].parent].first == at
         && tree->nodes[at].next < 0;
}

/* Joins the free node @at with what is free beside it, as far up as nothing
 * else is left. */
static void
join_free (CwCutTree *tree, gint32 at)
{
  while (tree->nodes[at].parent >= 0)
    {
      const gint32 parent = tree->nodes[at].parent;
      join_sibling (tree, at);
      if (!is_only_child (tree, at))
        return;
      /* Nothing but free space is left: the cuts need not be made. */
      tree->nodes[parent].first = -1;
      drop_node (tree, at);
      become_free (tree, parent);
      at = parent;
    }
}

void
cw_cut_tree_remove (CwCutTree *tree, gint32 at, GArray *blanks)
{
  if (tree->nodes[at].kind == CW_CUT_NODE_FREE)
    return;
  empty_node (tree, at, blanks);
  become_free (tree, at);
  join_free (tree, at);
  measure_room (tree);
}

void
cw_cut_tree_rename (CwCutTree *tree, const guint *names)
{
  for (gint32 at = 0; at < tree->n_nodes; at++)
    if (tree->nodes[at].kind == CW_CUT_NODE_BLANK)
      tree->nodes[at].blank = (gint32) names[tree->nodes[at].blank];
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "cw-node.h"

struct CwList
{
  gatomicrefcount count;
  gsize n;
  CwNode *nodes[];
};

/* Room for @n nodes, to be filled in before the list is given away. */
static CwList *
list_alloc (gsize n)
{
  CwList *list = g_malloc (sizeof (CwList) + n * sizeof (CwNode *));

  g_atomic_ref_count_init (&list->count);
  list->n = n;
  return list;
}

static void
list_fill (CwList *list, gsize at, CwNode *const *nodes, gsize n)
{
  for (gsize i = 0; i < n; i++)
    list->nodes[at + i] = cw_node_ref (nodes[i]);
}

CwList *
cw_list_new (CwNode *const *nodes, gsize n)
{
  CwList *list = list_alloc (n);

  list_fill (list, 0, nodes, n);
  return list;
}

CwList *
cw_list_ref (const CwList *list)
{
  g_return_val_if_fail (list != NULL, NULL);

  g_atomic_ref_count_inc (&((CwList *) list)->count);
  return (CwList *) list;
}

void
cw_list_unref (CwList *list)
{
  g_return_if_fail (list != NULL);

  if (!g_atomic_ref_count_dec (&list->count))
    return;
  for (gsize i = 0; i < list->n; i++)
    cw_node_unref (list->nodes[i]);
  g_free (list);
}

gsize
cw_list_length (const CwList *list)
{
  return list->n;
}

gpointer
cw_list_at (const CwList *list, gsize index)
{
  g_return_val_if_fail (index < list->n, NULL);

  return list->nodes[index];
}

CwList *
cw_list_insert (const CwList *list, gsize index, const CwNode *node)
{
  CwList *grown;

  g_return_val_if_fail (index <= list->n, NULL);
  g_return_val_if_fail (node != NULL, NULL);

  grown = list_alloc (list->n + 1);
  list_fill (grown, 0, list->nodes, index);
  grown->nodes[index] = cw_node_ref (node);
  list_fill (grown, index + 1, list->nodes + index, list->n - index);
  return grown;
}

CwList *
cw_list_append (const CwList *list, const CwNode *node)
{
  return cw_list_insert (list, list->n, node);
}

CwList *
cw_list_remove (const CwList *list, gsize index)
{
  CwList *shrunk;

  g_return_val_if_fail (index < list->n, NULL);

  shrunk = list_alloc (list->n - 1);
  list_fill (shrunk, 0, list->nodes, index);
  list_fill (shrunk, index, list->nodes + index + 1, list->n - index - 1);
  return shrunk;
}

CwList *
cw_list_set (const CwList *list, gsize index, const CwNode *node)
{
  CwList *changed;

  g_return_val_if_fail (index < list->n, NULL);
  g_return_val_if_fail (node != NULL, NULL);

  changed = list_alloc (list->n);
  list_fill (changed, 0, list->nodes, index);
  changed->nodes[index] = cw_node_ref (node);
  list_fill (changed, index + 1, list->nodes + index + 1,
             list->n - index - 1);
  return changed;
}

int
cw_list_index (const CwList *list, const CwNode *node)
{
  for (gsize i = 0; i < list->n; i++)
    if (list->nodes[i] == node)
      return (int) i;
  return -1;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-free-ids.h"

#include <string.h>

struct CwFreeIds
{
  GHashTable *taken;    /* id */
  guint next;
};

static void
collect (const CwNode *node, GHashTable *taken)
{
  const char *id = cw_node_id (node);

  if (id && *id)
    g_hash_table_add (taken, g_strdup (id));
  for (guint slot = 0; slot < node->type->n_slots; slot++)
    if (node->type->slots[slot].is_list)
      {
        const CwList *list = cw_node_list (node, slot);

        for (gsize i = 0; i < cw_list_length (list); i++)
          collect (cw_list_at (list, i), taken);
      }
    else if (cw_node_child (node, slot))
      collect (cw_node_child (node, slot), taken);
}

CwFreeIds *
cw_free_ids_new (const CwProject *project)
{
  CwFreeIds *ids;

  g_return_val_if_fail (project != NULL, NULL);

  ids = g_new0 (CwFreeIds, 1);
  ids->taken = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  collect (&project->node, ids->taken);
  return ids;
}

void
cw_free_ids_free (CwFreeIds *ids)
{
  g_hash_table_unref (ids->taken);
  g_free (ids);
}

char *
cw_free_ids_take (CwFreeIds *ids, const char *like)
{
  g_autofree char *stem = g_strdup (like);

  for (gsize n = strlen (stem); n > 1 && g_ascii_isdigit (stem[n - 1]); n--)
    stem[n - 1] = '\0';
  for (;;)
    {
      char *id = g_strdup_printf ("%s%u", stem, ++ids->next);

      if (g_hash_table_add (ids->taken, id))
        return g_strdup (id);
    }
}

CwNode *
cw_free_ids_copy (CwFreeIds *ids, const CwNode *node)
{
  CwNode *copy = cw_node_copy (node);

  if (cw_node_id (node))
    {
      g_autofree char *id = cw_free_ids_take (ids, cw_node_id (node));

      cw_node_put_text (copy, "id", id);
    }
  return copy;
}

CwList *
cw_free_ids_copy_list (CwFreeIds *ids, const CwList *list)
{
  g_autoptr (GPtrArray) copies
      = g_ptr_array_new_with_free_func (cw_node_unref);

  for (gsize i = 0; i < cw_list_length (list); i++)
    g_ptr_array_add (copies, cw_free_ids_copy (ids, cw_list_at (list, i)));
  return cw_list_new ((CwNode *const *) copies->pdata, copies->len);
}

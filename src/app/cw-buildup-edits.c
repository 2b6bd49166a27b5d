/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-buildup-edits.h"

/* Takes @by. */
static CwProject *
replaced (const CwProject *project, const CwNode *old, CwNode *by)
{
  CwNode *next = cw_node_replace (&project->node, old, by);
  cw_node_unref (by);
  return (CwProject *) next;
}

GPtrArray *
cw_buildup_users (const CwProject *project, const char *id)
{
  GPtrArray *users = g_ptr_array_new ();
  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    {
      CwElevation *elevation = cw_list_at (project->elevations, i);
      if (g_strcmp0 (elevation->buildup, id) == 0)
        g_ptr_array_add (users, elevation);
    }
  return users;
}

static gboolean
is_name_taken (const CwProject *project, const char *name)
{
  for (gsize i = 0; i < cw_list_length (project->buildups); i++)
    {
      const CwBuildup *buildup = cw_list_at (project->buildups, i);
      if (g_strcmp0 (buildup->name, name) == 0)
        return TRUE;
    }
  return FALSE;
}

static char *
free_name (const CwProject *project, const char *name)
{
  char *free = g_strdup (name);
  for (guint n = 2; is_name_taken (project, free); n++)
    {
      g_free (free);
      free = g_strdup_printf ("%s (%u)", name, n);
    }
  return free;
}

/* Nodes of its own all the way down: what is edited is found by its pointer,
 * which must not be that of another buildup's layer too. (transfer full) */
static CwNode *
deep_copy (const CwNode *node)
{
  CwNode *copy = cw_node_copy (node);
  for (guint slot = 0; slot < node->type->n_slots; slot++)
    if (node->type->slots[slot].is_list)
      {
        const CwList *list = cw_node_list (node, slot);
        g_autoptr (GPtrArray) copies
            = g_ptr_array_new_with_free_func (cw_node_unref);
        for (gsize i = 0; i < cw_list_length (list); i++)
          g_ptr_array_add (copies, deep_copy (cw_list_at (list, i)));
        g_autoptr (CwList) copied
            = cw_list_new ((CwNode *const *) copies->pdata, copies->len);
        cw_node_set_list (copy, slot, copied);
      }
    else if (cw_node_child (node, slot))
      {
        g_autoptr (CwNode) child = deep_copy (cw_node_child (node, slot));
        cw_node_set_child (copy, slot, child);
      }
  return copy;
}

/* (transfer full): the same under a free id and name. */
static CwNode *
made_free (const CwProject *project, const CwBuildup *buildup)
{
  CwNode *copy = deep_copy (&buildup->node);
  g_autofree char *id = cw_project_free_id (project, "b");
  g_autofree char *name = free_name (project, buildup->name);
  cw_node_put_text (copy, "id", id);
  cw_node_put_text (copy, "name", name);
  return copy;
}

CwProject *
cw_buildup_add (const CwProject *project, const CwBuildup *buildup, char **id)
{
  g_autoptr (CwNode) copy = made_free (project, buildup);
  *id = g_strdup (cw_node_id (copy));
  return cw_project_with_list (project, CW_PROJECT_BUILDUPS,
                               cw_list_append (project->buildups, copy));
}

CwProject *
cw_buildup_duplicate (const CwProject *project, const char *id, char **new_id)
{
  const CwBuildup *buildup = cw_project_buildup (project, id);
  g_return_val_if_fail (buildup != NULL, NULL);
  g_autoptr (CwNode) copy = made_free (project, buildup);
  *new_id = g_strdup (cw_node_id (copy));
  int index = cw_list_index (project->buildups, &buildup->node);
  return cw_project_with_list (project, CW_PROJECT_BUILDUPS,
                               cw_list_insert (project->buildups,
                                               (gsize) index + 1, copy));
}

CwProject *
cw_buildup_give (const CwProject *project, const char *elevation_id,
                 const char *id)
{
  const CwElevation *elevation = cw_project_elevation (project, elevation_id);
  g_return_val_if_fail (elevation != NULL, NULL);
  int field = cw_node_type_field (&cw_elevation_type, "buildup");
  return replaced (project, &elevation->node,
                   cw_node_with_text (&elevation->node, (guint) field, id));
}

CwProject *
cw_buildup_remove (const CwProject *project, const char *id,
                   const char *instead)
{
  const CwBuildup *buildup = cw_project_buildup (project, id);
  g_autoptr (GPtrArray) users = cw_buildup_users (project, id);
  g_return_val_if_fail (buildup != NULL, NULL);
  g_return_val_if_fail (users->len == 0 || instead != NULL, NULL);
  CwProject *next
      = (CwProject *) cw_node_replace (&project->node, &buildup->node, NULL);
  for (guint i = 0; i < users->len; i++)
    {
      g_autoptr (CwNode) former = (CwNode *) next;
      next = cw_buildup_give ((CwProject *) former,
                              ((CwElevation *) users->pdata[i])->id, instead);
    }
  return next;
}

/* An unfrozen copy of the buildup, and the one it is a copy of. */
static CwNode *
open_buildup (const CwProject *project, const char *id, guint slot,
              const CwNode **old)
{
  const CwBuildup *buildup = cw_project_buildup (project, id);
  g_return_val_if_fail (buildup != NULL, NULL);
  g_return_val_if_fail (slot < cw_buildup_type.n_slots, NULL);
  *old = &buildup->node;
  return cw_node_copy (*old);
}

CwProject *
cw_buildup_add_layer (const CwProject *project, const char *id, guint slot)
{
  const CwNode *old;
  CwNode *copy = open_buildup (project, id, slot, &old);
  g_return_val_if_fail (copy != NULL, NULL);
  g_autoptr (CwNode) layer
      = cw_node_new (cw_buildup_type.slots[slot].types[0]);
  cw_node_set_child (copy, slot, layer);
  return replaced (project, old, copy);
}

CwProject *
cw_buildup_remove_layer (const CwProject *project, const char *id, guint slot)
{
  const CwNode *old;
  CwNode *copy = open_buildup (project, id, slot, &old);
  g_return_val_if_fail (copy != NULL, NULL);
  g_return_val_if_fail (!cw_buildup_type.slots[slot].always, NULL);
  cw_node_set_child (copy, slot, NULL);
  return replaced (project, old, copy);
}

/* Takes @list. */
static CwProject *
with_items (const CwProject *project, const char *id, guint slot, CwList *list)
{
  const CwNode *old;
  CwNode *copy = open_buildup (project, id, slot, &old);
  cw_node_set_list (copy, slot, list);
  cw_list_unref (list);
  return replaced (project, old, copy);
}

static const CwList *
items_of (const CwProject *project, const char *id, guint slot)
{
  const CwBuildup *buildup = cw_project_buildup (project, id);
  g_return_val_if_fail (buildup != NULL, NULL);
  return cw_node_list (&buildup->node, slot);
}

CwProject *
cw_buildup_add_item (const CwProject *project, const char *id, guint slot,
                     gsize like)
{
  const CwList *items = items_of (project, id, slot);
  g_return_val_if_fail (like < cw_list_length (items), NULL);
  g_autoptr (CwNode) copy = deep_copy (cw_list_at (items, like));
  return with_items (project, id, slot,
                     cw_list_insert (items, like + 1, copy));
}

CwProject *
cw_buildup_remove_item (const CwProject *project, const char *id, guint slot,
                        gsize index)
{
  const CwList *items = items_of (project, id, slot);
  if (cw_list_length (items) < 2)
    return cw_node_ref (project);
  return with_items (project, id, slot, cw_list_remove (items, index));
}

CwProject *
cw_buildup_move_item (const CwProject *project, const char *id, guint slot,
                      gsize index, int by)
{
  const CwList *items = items_of (project, id, slot);
  int last = (int) cw_list_length (items) - 1;
  int to = CLAMP ((int) index + by, 0, last);
  if (to == (int) index)
    return cw_node_ref (project);
  g_autoptr (CwNode) item = cw_node_ref (cw_list_at (items, index));
  g_autoptr (CwList) less = cw_list_remove (items, index);
  return with_items (project, id, slot,
                     cw_list_insert (less, (gsize) to, item));
}

CwProject *
cw_buildup_alone (const CwProject *project, const char *id)
{
  const CwBuildup *buildup = cw_project_buildup (project, id);
  g_return_val_if_fail (buildup != NULL, NULL);
  CwNode *alone = cw_node_new (&cw_project_type);
  CwNode *node = (CwNode *) &buildup->node;
  cw_node_put (alone, "format", project->format);
  cw_node_put (alone, "units", project->units);
  cw_node_put_text (alone, "currency", project->currency);
  g_autoptr (CwList) list = cw_list_new (&node, 1);
  cw_node_set_list (alone, CW_PROJECT_BUILDUPS, list);
  cw_node_freeze (alone);
  return (CwProject *) alone;
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Trees of nodes: children, equality, finding and replacing.
 */
#include <string.h>

#include "cw-foreign.h"
#include "cw-node-private.h"

static const CwSlot *
node_slot (const CwNode *node, guint slot)
{
  g_assert (slot < node->type->n_slots);
  return &node->type->slots[slot];
}

CwNode *
cw_node_child (const CwNode *node, guint slot)
{
  const CwSlot *place = node_slot (node, slot);

  g_return_val_if_fail (!place->is_list, NULL);

  return *cw_node_child_at (node, place);
}

CwList *
cw_node_list (const CwNode *node, guint slot)
{
  const CwSlot *place = node_slot (node, slot);

  g_return_val_if_fail (place->is_list, NULL);

  return *cw_node_list_at (node, place);
}

static gboolean
slot_takes (const CwSlot *slot, const CwNode *child)
{
  for (const CwNodeType *const *type = slot->types; *type; type++)
    if (*type == child->type)
      return TRUE;
  return FALSE;
}

static gboolean
slot_takes_list (const CwSlot *slot, const CwList *list)
{
  if (slot->always && cw_list_length (list) == 0)
    return FALSE;
  for (gsize i = 0; i < cw_list_length (list); i++)
    if (!slot_takes (slot, cw_list_at (list, i)))
      return FALSE;
  return TRUE;
}

void
cw_node_set_child (CwNode *node, guint slot, const CwNode *child)
{
  const CwSlot *place = node_slot (node, slot);
  CwNode **where = cw_node_child_at (node, place);
  CwNode *former = *where;

  g_return_if_fail (!node->frozen && !place->is_list);
  g_return_if_fail (child ? slot_takes (place, child) : !place->always);

  *where = child ? cw_node_ref (child) : NULL;
  g_clear_pointer (&former, cw_node_unref);
}

void
cw_node_set_list (CwNode *node, guint slot, const CwList *list)
{
  const CwSlot *place = node_slot (node, slot);
  CwList **where = cw_node_list_at (node, place);
  CwList *former = *where;

  g_return_if_fail (!node->frozen && place->is_list);
  g_return_if_fail (list != NULL && slot_takes_list (place, list));

  *where = cw_list_ref (list);
  cw_list_unref (former);
}

static gboolean
fields_equal (const CwNode *a, const CwNode *b)
{
  for (guint i = 0; i < a->type->n_fields; i++)
    {
      const CwField *field = &a->type->fields[i];

      if (cw_field_is_text (field)
              ? strcmp (*cw_node_text_at (a, field),
                        *cw_node_text_at (b, field)) != 0
              : *cw_node_value_at (a, field) != *cw_node_value_at (b, field))
        return FALSE;
    }
  return TRUE;
}

static gboolean
lists_equal (const CwList *a, const CwList *b)
{
  gsize n = cw_list_length (a);

  if (a == b)
    return TRUE;
  if (n != cw_list_length (b))
    return FALSE;
  for (gsize i = 0; i < n; i++)
    if (!cw_node_equal (cw_list_at (a, i), cw_list_at (b, i)))
      return FALSE;
  return TRUE;
}

static gboolean
slots_equal (const CwNode *a, const CwNode *b)
{
  for (guint i = 0; i < a->type->n_slots; i++)
    {
      const CwSlot *slot = &a->type->slots[i];

      if (slot->is_list
              ? !lists_equal (*cw_node_list_at (a, slot),
                              *cw_node_list_at (b, slot))
              : !cw_node_equal (*cw_node_child_at (a, slot),
                                *cw_node_child_at (b, slot)))
        return FALSE;
    }
  return TRUE;
}

gboolean
cw_node_equal (gconstpointer one, gconstpointer other)
{
  const CwNode *a = one;
  const CwNode *b = other;

  if (a == b)
    return TRUE;
  if (a == NULL || b == NULL)
    return FALSE;
  return a->type == b->type && a->stated == b->stated && fields_equal (a, b)
         && cw_foreign_equal (a->foreign, b->foreign) && slots_equal (a, b);
}

static CwNode *replace_below (const CwNode *node, const CwNode *old,
                              const CwNode *by);

/* What comes instead of @node when @old is it or below it. FALSE when it is
 * neither; *@changed is NULL for a removed node. */
static gboolean
replace_node (const CwNode *node, const CwNode *old, const CwNode *by,
              CwNode **changed)
{
  if (node == old)
    {
      *changed = by ? cw_node_ref (by) : NULL;
      return TRUE;
    }
  *changed = node->type->n_slots > 0 ? replace_below (node, old, by) : NULL;
  return *changed != NULL;
}

static CwList *
replace_in_list (const CwList *list, const CwNode *old, const CwNode *by)
{
  gsize n = cw_list_length (list);

  for (gsize i = 0; i < n; i++)
    {
      g_autoptr (CwNode) changed = NULL;

      if (replace_node (cw_list_at (list, i), old, by, &changed))
        return changed ? cw_list_set (list, i, changed)
                       : cw_list_remove (list, i);
    }
  return NULL;
}

static CwNode *
replace_in_list_slot (const CwNode *node, guint slot, const CwNode *old,
                      const CwNode *by)
{
  g_autoptr (CwList) list
      = replace_in_list (cw_node_list (node, slot), old, by);
  CwNode *copy;

  if (list == NULL)
    return NULL;
  copy = cw_node_copy (node);
  cw_node_set_list (copy, slot, list);
  return copy;
}

static CwNode *
replace_in_child_slot (const CwNode *node, guint slot, const CwNode *old,
                       const CwNode *by)
{
  const CwNode *child = cw_node_child (node, slot);
  g_autoptr (CwNode) changed = NULL;
  CwNode *copy;

  if (child == NULL || !replace_node (child, old, by, &changed))
    return NULL;
  copy = cw_node_copy (node);
  cw_node_set_child (copy, slot, changed);
  return copy;
}

/* A frozen copy of @node with the change, or NULL when @old is not below. */
static CwNode *
replace_below (const CwNode *node, const CwNode *old, const CwNode *by)
{
  for (guint i = 0; i < node->type->n_slots; i++)
    {
      CwNode *copy = node->type->slots[i].is_list
                         ? replace_in_list_slot (node, i, old, by)
                         : replace_in_child_slot (node, i, old, by);

      if (copy)
        {
          cw_node_freeze (copy);
          return copy;
        }
    }
  return NULL;
}

CwNode *
cw_node_replace (const CwNode *root, const CwNode *old, const CwNode *by)
{
  CwNode *changed;

  g_return_val_if_fail (root != NULL && old != NULL, NULL);
  g_return_val_if_fail (by != NULL || root != old, NULL);

  if (by == old || !replace_node (root, old, by, &changed))
    return cw_node_ref (root);
  return changed;
}

static const CwNode *
find_in_list (const CwList *list, const char *id)
{
  gsize n = cw_list_length (list);

  for (gsize i = 0; i < n; i++)
    {
      const CwNode *found = cw_node_find (cw_list_at (list, i), id);

      if (found)
        return found;
    }
  return NULL;
}

static const CwNode *
find_in_slot (const CwNode *node, const CwSlot *slot, const char *id)
{
  const CwNode *child;

  if (slot->is_list)
    return find_in_list (*cw_node_list_at (node, slot), id);
  child = *cw_node_child_at (node, slot);
  return child ? cw_node_find (child, id) : NULL;
}

const CwNode *
cw_node_find (const CwNode *root, const char *id)
{
  const char *own = cw_node_id (root);

  /* An empty id is a reference to nothing. */
  if (own && *own && strcmp (own, id) == 0)
    return root;
  for (guint i = 0; i < root->type->n_slots; i++)
    {
      const CwNode *found = find_in_slot (root, &root->type->slots[i], id);

      if (found)
        return found;
    }
  return NULL;
}

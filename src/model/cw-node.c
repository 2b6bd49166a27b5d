/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-node.h"

#include <string.h>

#include "cw-foreign.h"
#include "cw-node-private.h"

static const CwField *
node_field (const CwNode *node, guint index)
{
  g_assert (index < node->type->n_fields);
  return &node->type->fields[index];
}

static void
init_fields (CwNode *node)
{
  for (guint i = 0; i < node->type->n_fields; i++)
    {
      const CwField *field = &node->type->fields[i];

      if (cw_field_is_text (field))
        *cw_node_text_at (node, field) = g_strdup ("");
      else
        *cw_node_value_at (node, field) = field->fallback;
    }
}

static void
init_slot (CwNode *node, const CwSlot *slot)
{
  g_autoptr (CwNode) child = NULL;

  if (slot->always)
    child = cw_node_new (slot->types[0]);
  if (slot->is_list)
    *cw_node_list_at (node, slot) = cw_list_new (&child, child ? 1 : 0);
  else if (child)
    *cw_node_child_at (node, slot) = cw_node_ref (child);
}

CwNode *
cw_node_new (const CwNodeType *type)
{
  CwNode *node;

  g_return_val_if_fail (type != NULL, NULL);

  node = g_malloc0 (type->size);
  node->type = type;
  g_atomic_ref_count_init (&node->count);
  init_fields (node);
  for (guint i = 0; i < type->n_slots; i++)
    init_slot (node, &type->slots[i]);
  return node;
}

static void
copy_slot (CwNode *copy, const CwNode *node, const CwSlot *slot)
{
  CwNode *child;

  if (slot->is_list)
    {
      *cw_node_list_at (copy, slot)
          = cw_list_ref (*cw_node_list_at (node, slot));
      return;
    }
  child = *cw_node_child_at (node, slot);
  *cw_node_child_at (copy, slot) = child ? cw_node_ref (child) : NULL;
}

CwNode *
cw_node_copy (const CwNode *node)
{
  CwNode *copy;

  g_return_val_if_fail (node != NULL, NULL);

  copy = g_memdup2 (node, node->type->size);
  g_atomic_ref_count_init (&copy->count);
  copy->frozen = FALSE;
  if (node->foreign)
    copy->foreign = cw_foreign_ref (node->foreign);
  for (guint i = 0; i < node->type->n_fields; i++)
    {
      const CwField *field = &node->type->fields[i];

      if (cw_field_is_text (field))
        *cw_node_text_at (copy, field)
            = g_strdup (*cw_node_text_at (node, field));
    }
  for (guint i = 0; i < node->type->n_slots; i++)
    copy_slot (copy, node, &node->type->slots[i]);
  return copy;
}

/* Only an unfrozen node is written to: it has one holder, so that readers on
 * other threads never see the mark change. */
void
cw_node_freeze (CwNode *node)
{
  g_return_if_fail (node != NULL);

  if (!node->frozen)
    node->frozen = TRUE;
}

gpointer
cw_node_ref (gconstpointer node)
{
  CwNode *shared = (CwNode *) node;

  g_return_val_if_fail (shared != NULL, NULL);

  cw_node_freeze (shared);
  g_atomic_ref_count_inc (&shared->count);
  return shared;
}

static void
release_slot (CwNode *node, const CwSlot *slot)
{
  if (slot->is_list)
    cw_list_unref (*cw_node_list_at (node, slot));
  else
    g_clear_pointer (cw_node_child_at (node, slot), cw_node_unref);
}

void
cw_node_unref (gpointer data)
{
  CwNode *node = data;

  g_return_if_fail (node != NULL);

  if (!g_atomic_ref_count_dec (&node->count))
    return;
  for (guint i = 0; i < node->type->n_fields; i++)
    if (cw_field_is_text (&node->type->fields[i]))
      g_free (*cw_node_text_at (node, &node->type->fields[i]));
  for (guint i = 0; i < node->type->n_slots; i++)
    release_slot (node, &node->type->slots[i]);
  if (node->foreign)
    cw_foreign_unref (node->foreign);
  g_free (node);
}

gint64
cw_node_get (const CwNode *node, guint index)
{
  const CwField *field = node_field (node, index);

  g_return_val_if_fail (!cw_field_is_text (field), 0);

  return *cw_node_value_at (node, field);
}

const char *
cw_node_get_text (const CwNode *node, guint index)
{
  const CwField *field = node_field (node, index);

  g_return_val_if_fail (cw_field_is_text (field), NULL);

  return *cw_node_text_at (node, field);
}

/* Writing to a shared value would change other projects, undo steps and what
 * another thread is reading: never go on. */
static void
assert_unfrozen (const CwNode *node)
{
  if (node->frozen)
    g_error ("A shared <%s> cannot be changed", node->type->element);
}

static void
store_text (CwNode *node, const CwField *field, const char *text)
{
  char **place = cw_node_text_at (node, field);
  char *former = *place;

  *place = g_strdup (text);
  g_free (former);
}

void
cw_node_set (CwNode *node, guint index, gint64 value)
{
  const CwField *field = node_field (node, index);

  g_return_if_fail (!cw_field_is_text (field));
  assert_unfrozen (node);

  *cw_node_value_at (node, field) = value;
  node->stated |= G_GUINT64_CONSTANT (1) << index;
}

void
cw_node_set_text (CwNode *node, guint index, const char *text)
{
  const CwField *field = node_field (node, index);

  g_return_if_fail (cw_field_is_text (field));
  g_return_if_fail (text != NULL);
  assert_unfrozen (node);

  store_text (node, field, text);
  node->stated |= G_GUINT64_CONSTANT (1) << index;
}

void
cw_node_unset (CwNode *node, guint index)
{
  const CwField *field = node_field (node, index);

  assert_unfrozen (node);

  if (cw_field_is_text (field))
    store_text (node, field, "");
  else
    *cw_node_value_at (node, field) = field->fallback;
  node->stated &= ~(G_GUINT64_CONSTANT (1) << index);
}

gboolean
cw_node_states (const CwNode *node, guint index)
{
  g_return_val_if_fail (index < node->type->n_fields, FALSE);

  return (node->stated >> index & 1) != 0;
}

int
cw_node_type_field (const CwNodeType *type, const char *name)
{
  for (guint i = 0; i < type->n_fields; i++)
    if (strcmp (type->fields[i].name, name) == 0)
      return (int) i;
  return -1;
}

static guint
named_field (const CwNode *node, const char *name)
{
  int index = cw_node_type_field (node->type, name);

  if (index < 0)
    g_error ("<%s> has no attribute %s", node->type->element, name);
  return (guint) index;
}

void
cw_node_put (CwNode *node, const char *field, gint64 value)
{
  cw_node_set (node, named_field (node, field), value);
}

void
cw_node_put_text (CwNode *node, const char *field, const char *text)
{
  cw_node_set_text (node, named_field (node, field), text);
}

static CwNode *
frozen (CwNode *node)
{
  cw_node_freeze (node);
  return node;
}

CwNode *
cw_node_with (const CwNode *node, guint index, gint64 value)
{
  CwNode *copy = cw_node_copy (node);

  cw_node_set (copy, index, value);
  return frozen (copy);
}

CwNode *
cw_node_with_text (const CwNode *node, guint index, const char *text)
{
  CwNode *copy = cw_node_copy (node);

  cw_node_set_text (copy, index, text);
  return frozen (copy);
}

CwNode *
cw_node_without (const CwNode *node, guint index)
{
  CwNode *copy = cw_node_copy (node);

  cw_node_unset (copy, index);
  return frozen (copy);
}

const char *
cw_node_id (const CwNode *node)
{
  const CwNodeType *type = node->type;

  if (type->n_fields == 0 || type->fields[0].kind != CW_FIELD_ID)
    return NULL;
  return *cw_node_text_at (node, &type->fields[0]);
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-project.h"

#include <string.h>

static gpointer
find_of_type (const CwList *list, const char *id)
{
  for (gsize i = 0; i < cw_list_length (list); i++)
    {
      CwNode *node = cw_list_at (list, i);

      if (strcmp (cw_node_id (node), id) == 0)
        return node;
    }
  return NULL;
}

/* The empty id is the reference to nothing. */
static gpointer
find_named (const CwList *list, const char *id)
{
  return id && *id ? find_of_type (list, id) : NULL;
}

const CwElevation *
cw_project_elevation (const CwProject *project, const char *id)
{
  return find_named (project->elevations, id);
}

CwProject *
cw_project_with_list (const CwProject *project, guint slot, CwList *list)
{
  CwNode *next;

  g_return_val_if_fail (project != NULL && list != NULL, NULL);

  next = cw_node_copy (&project->node);
  cw_node_set_list (next, slot, list);
  cw_list_unref (list);
  cw_node_freeze (next);
  return (CwProject *) next;
}

const CwBuildup *
cw_project_buildup (const CwProject *project, const char *id)
{
  return find_named (project->buildups, id);
}

const CwSheet *
cw_project_sheet (const CwProject *project, const char *id)
{
  return find_named (project->sheets, id);
}

const CwMark *
cw_project_mark (const CwProject *project, const char *id)
{
  return find_named (project->marks, id);
}

/* The number at the end of an id made of @stem and a number, else 0. */
static guint64
number_after (const char *id, const char *stem)
{
  gsize length = strlen (stem);
  guint64 number = 0;

  if (strncmp (id, stem, length) != 0
      || !g_ascii_string_to_unsigned (id + length, 10, 1, CW_FIELD_COUNT_MOST,
                                      &number, NULL))
    return 0;
  return number;
}

static guint64
highest_number (const CwNode *node, const char *stem)
{
  const char *id = cw_node_id (node);
  guint64 highest = id ? number_after (id, stem) : 0;

  for (guint slot = 0; slot < node->type->n_slots; slot++)
    if (node->type->slots[slot].is_list)
      {
        const CwList *list = cw_node_list (node, slot);

        for (gsize i = 0; i < cw_list_length (list); i++)
          highest = MAX (highest, highest_number (cw_list_at (list, i), stem));
      }
  return highest;
}

char *
cw_project_free_id (const CwProject *project, const char *stem)
{
  return g_strdup_printf ("%s%" G_GUINT64_FORMAT, stem,
                          highest_number (&project->node, stem) + 1);
}

/* Takes field @index of @opening from @mark when only the mark states it. */
static void
take_from_mark (CwNode *opening, guint index, const CwNode *mark)
{
  const CwField *field = &opening->type->fields[index];
  int there;

  if (!(field->flags & CW_FIELD_FROM_MARK) || cw_node_states (opening, index))
    return;
  there = cw_node_type_field (mark->type, field->name);
  g_assert (there >= 0);
  if (cw_node_states (mark, (guint) there))
    cw_node_set (opening, index, cw_node_get (mark, (guint) there));
}

CwOpening *
cw_project_resolve_opening (const CwProject *project, const CwOpening *opening)
{
  const CwMark *mark = cw_project_mark (project, opening->mark);
  CwNode *resolved;

  if (mark == NULL)
    return cw_node_ref (opening);
  resolved = cw_node_copy (&opening->node);
  for (guint i = 0; i < resolved->type->n_fields; i++)
    take_from_mark (resolved, i, &mark->node);
  cw_node_freeze (resolved);
  return (CwOpening *) resolved;
}

CwOpeningKind
cw_opening_kind (const CwOpening *opening)
{
  if (opening->node.type == &cw_door_type)
    return CW_OPENING_DOOR;
  return opening->node.type == &cw_arch_type ? CW_OPENING_ARCH
                                             : CW_OPENING_WINDOW;
}

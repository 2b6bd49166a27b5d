/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-edit-marks.h"

#include <string.h>

static const char *const given[]
    = { "width", "height", "rise", "head", "reveal" };

static void
unset (CwNode *node, const char *field)
{
  int index = cw_node_type_field (node->type, field);

  if (index >= 0)
    cw_node_unset (node, (guint) index);
}

static CwNode *
broken_away (const CwProject *project, const CwOpening *opening)
{
  g_autoptr (CwOpening) resolved
      = cw_project_resolve_opening (project, opening);
  CwNode *by;

  if (*opening->mark == '\0')
    return cw_node_ref (opening);
  by = cw_node_copy (&resolved->node);
  unset (by, "mark");
  return by;
}

static CwNode *
following (const CwOpening *opening, const char *mark)
{
  CwNode *by = cw_node_copy (&opening->node);

  cw_node_put_text (by, "mark", mark);
  for (guint i = 0; i < G_N_ELEMENTS (given); i++)
    unset (by, given[i]);
  return by;
}

/* @mark NULL: they break away. */
static CwProject *
change_openings (const CwProject *project, const CwElevation *elevation,
                 const char *const *ids, const CwMark *mark)
{
  CwProject *next = cw_node_ref (project);

  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    {
      const CwNode *item = cw_list_at (elevation->items, i);
      const CwOpening *opening = (const CwOpening *) item;
      g_autoptr (CwProject) former = NULL;
      g_autoptr (CwNode) by = NULL;

      if (!cw_node_is_opening (item)
          || !g_strv_contains (ids, cw_node_id (item))
          || (mark && mark->kind != (gint64) cw_opening_kind (opening)))
        continue;
      by = mark ? following (opening, mark->id)
                : broken_away (project, opening);
      former = next;
      next = cw_node_equal (by, item) ? cw_node_ref (former)
                                      : cw_edit_replace (former, item, by);
    }
  return next;
}

CwProject *
cw_edit_break_away (const CwProject *project, const CwElevation *elevation,
                    const char *const *ids)
{
  g_return_val_if_fail (project && elevation && ids, NULL);

  return change_openings (project, elevation, ids, NULL);
}

CwProject *
cw_edit_follow_mark (const CwProject *project, const CwElevation *elevation,
                     const char *const *ids, const char *mark)
{
  const CwMark *found;

  g_return_val_if_fail (project && elevation && ids && mark, NULL);

  found = cw_project_mark (project, mark);
  return found ? change_openings (project, elevation, ids, found)
               : cw_node_ref (project);
}

static const CwOpening *
first_opening (const CwElevation *elevation, const char *const *ids)
{
  for (; *ids; ids++)
    {
      const CwNode *node = cw_node_find (&elevation->node, *ids);

      if (node && cw_node_is_opening (node))
        return (const CwOpening *) node;
    }
  return NULL;
}

static gboolean
is_name_taken (const CwProject *project, const char *name)
{
  for (gsize i = 0; i < cw_list_length (project->marks); i++)
    if (g_ascii_strcasecmp (
            ((const CwMark *) cw_list_at (project->marks, i))->name, name)
        == 0)
      return TRUE;
  return FALSE;
}

static char *
free_name (const CwProject *project, CwOpeningKind kind)
{
  const char letters[] = { 'W', 'D', 'A' };

  for (guint i = 1;; i++)
    {
      g_autofree char *name = g_strdup_printf ("%c%u", letters[kind], i);

      if (!is_name_taken (project, name))
        return g_steal_pointer (&name);
    }
}

static CwNode *
new_mark (const CwProject *project, const CwOpening *like)
{
  g_autoptr (CwOpening) resolved = cw_project_resolve_opening (project, like);
  CwOpeningKind kind = cw_opening_kind (like);
  CwNode *mark = cw_node_new (&cw_mark_type);
  g_autofree char *id = cw_project_free_id (project, "w");
  g_autofree char *name = free_name (project, kind);

  cw_node_put_text (mark, "id", id);
  cw_node_put (mark, "kind", kind);
  cw_node_put_text (mark, "name", name);
  for (guint i = 0; i < G_N_ELEMENTS (given); i++)
    {
      int field = cw_node_type_field (resolved->node.type, given[i]);

      if (field >= 0 && cw_node_states (&resolved->node, (guint) field))
        cw_node_put (mark, given[i],
                     cw_node_get (&resolved->node, (guint) field));
    }
  return mark;
}

CwProject *
cw_edit_make_mark (const CwProject *project, const CwElevation *elevation,
                   const char *const *ids, char **mark)
{
  const CwOpening *like;
  g_autoptr (CwNode) node = NULL;
  g_autoptr (CwProject) with = NULL;

  g_return_val_if_fail (project && elevation && ids && mark, NULL);

  *mark = NULL;
  like = first_opening (elevation, ids);
  if (like == NULL)
    return cw_node_ref (project);
  node = new_mark (project, like);
  *mark = g_strdup (cw_node_id (node));
  with = cw_project_with_list (project, CW_PROJECT_MARKS,
                               cw_list_append (project->marks, node));
  return cw_edit_follow_mark (with, elevation, ids, *mark);
}

CwProject *
cw_edit_place_mark (const CwProject *project, const CwElevation *elevation,
                    const CwMark *mark, CwPoint at, char **id)
{
  static const CwNodeType *const types[]
      = { [CW_OPENING_WINDOW] = &cw_window_type,
          [CW_OPENING_DOOR] = &cw_door_type,
          [CW_OPENING_ARCH] = &cw_arch_type };
  g_autoptr (CwNode) opening = NULL;

  g_return_val_if_fail (project && elevation && mark && id, NULL);

  opening = cw_node_new (types[mark->kind]);
  *id = cw_project_free_id (project, "o");
  cw_node_put_text (opening, "id", *id);
  cw_node_put_text (opening, "mark", mark->id);
  cw_node_put (opening, "x", at.x);
  cw_node_put (opening, "y", at.y);
  return cw_edit_add_item (project, elevation, opening);
}

guint
cw_project_count_mark (const CwProject *project, const char *mark)
{
  guint n = 0;

  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    {
      const CwElevation *elevation = cw_list_at (project->elevations, i);

      for (gsize j = 0; j < cw_list_length (elevation->items); j++)
        {
          const CwNode *item = cw_list_at (elevation->items, j);

          n += cw_node_is_opening (item)
               && strcmp (((const CwOpening *) item)->mark, mark) == 0;
        }
    }
  return n;
}

const CwMark *
cw_edit_common_mark (const CwProject *project, const char *const *ids)
{
  const CwMark *common = NULL;

  for (; *ids; ids++)
    {
      const CwNode *node = cw_node_find (&project->node, *ids);
      const CwMark *mark;

      if (node == NULL || !cw_node_is_opening (node))
        continue;
      mark = cw_project_mark (project, ((const CwOpening *) node)->mark);
      if (mark == NULL || (common && mark != common))
        return NULL;
      common = mark;
    }
  return common;
}

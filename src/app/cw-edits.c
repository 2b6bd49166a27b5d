/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-edits.h"

#include "cw-buildup-edits.h"
#include "cw-edit-arrange.h"
#include "cw-free-ids.h"

#include <math.h>

static CwProject *
replaced (const CwProject *project, const CwNode *old, CwNode *by)
{
  CwNode *next = cw_node_replace (&project->node, old, by);
  if (by)
    cw_node_unref (by);
  return (CwProject *) next;
}

CwProject *
cw_edit_add_elevation (const CwProject *project, const char *name,
                       const CwSheetPlace *place, char **id)
{
  g_autoptr (CwNode) node = cw_node_new (&cw_elevation_type);
  *id = cw_project_free_id (project, "e");
  cw_node_put_text (node, "id", *id);
  cw_node_put_text (node, "name", name);
  if (cw_list_length (project->buildups) > 0)
    {
      const CwBuildup *buildup = cw_list_at (project->buildups, 0);
      cw_node_put_text (node, "buildup", buildup->id);
    }
  if (place && place->sheet)
    {
      cw_node_put_text (node, "sheet", place->sheet);
      cw_node_put (node, "at-x", llround (place->at_x * CW_DECIMAL_ONE));
      cw_node_put (node, "at-y", llround (place->at_y * CW_DECIMAL_ONE));
    }
  return cw_project_with_list (project, CW_PROJECT_ELEVATIONS,
                               cw_list_append (project->elevations, node));
}

gboolean
cw_edit_is_name_taken (const CwProject *project, const char *name)
{
  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    {
      const CwElevation *elevation = cw_list_at (project->elevations, i);
      if (g_strcmp0 (elevation->name, name) == 0)
        return TRUE;
    }
  return FALSE;
}

char *
cw_edit_free_name (const CwProject *project, const char *stem)
{
  for (guint i = 1;; i++)
    {
      g_autofree char *name = g_strdup_printf ("%s %u", stem, i);
      if (!cw_edit_is_name_taken (project, name))
        return g_steal_pointer (&name);
    }
}

CwProject *
cw_edit_duplicate_elevation (const CwProject *project, const char *id,
                             const char *name, char **new_id)
{
  const CwElevation *elevation = cw_project_elevation (project, id);
  g_return_val_if_fail (elevation != NULL, NULL);

  g_autoptr (CwFreeIds) ids = cw_free_ids_new (project);
  g_autoptr (CwNode) copy = cw_free_ids_copy (ids, &elevation->node);
  *new_id = g_strdup (cw_node_id (copy));
  cw_node_put_text (copy, "name", name);
  g_autoptr (CwList) items = cw_free_ids_copy_list (ids, elevation->items);
  cw_node_set_list (copy, CW_ELEVATION_ITEMS, items);
  int index = cw_list_index (project->elevations, &elevation->node);
  return cw_project_with_list (
      project, CW_PROJECT_ELEVATIONS,
      cw_list_insert (project->elevations, (gsize) index + 1, copy));
}

/* Off the sheet, and no longer placed on it. */
static CwNode *
without_sheet (const CwElevation *elevation)
{
  CwNode *copy = cw_node_copy (&elevation->node);
  for (const char *const *name
       = (const char *const[]) { "sheet", "at-x", "at-y", NULL };
       *name; name++)
    cw_node_unset (copy,
                   (guint) cw_node_type_field (&cw_elevation_type, *name));
  return copy;
}

CwProject *
cw_edit_duplicate_mirrored (const CwProject *project, const char *id,
                            const char *name, char **new_id)
{
  g_autoptr (CwProject) both
      = cw_edit_duplicate_elevation (project, id, name, new_id);
  g_return_val_if_fail (both != NULL, NULL);
  const CwElevation *copy = cw_project_elevation (both, *new_id);
  g_autoptr (CwProject) off
      = replaced (both, &copy->node, without_sheet (copy));
  return cw_edit_mirror_elevation (off, cw_project_elevation (off, *new_id));
}

CwProject *
cw_edit_remove_elevation (const CwProject *project, const char *id)
{
  const CwElevation *elevation = cw_project_elevation (project, id);
  g_return_val_if_fail (elevation != NULL, NULL);
  return replaced (project, &elevation->node, NULL);
}

CwProject *
cw_edit_move_elevation (const CwProject *project, const char *id, int by)
{
  const CwElevation *elevation = cw_project_elevation (project, id);
  g_return_val_if_fail (elevation != NULL, NULL);
  int from = cw_list_index (project->elevations, &elevation->node);
  int last = (int) cw_list_length (project->elevations) - 1;
  int to = CLAMP (from + by, 0, last);
  if (to == from)
    return cw_node_ref (project);
  g_autoptr (CwList) less
      = cw_list_remove (project->elevations, (gsize) from);
  return cw_project_with_list (
      project, CW_PROJECT_ELEVATIONS,
      cw_list_insert (less, (gsize) to, &elevation->node));
}

CwProject *
cw_edit_rename (const CwProject *project, const char *id, const char *name)
{
  const CwNode *node = cw_node_find (&project->node, id);
  g_return_val_if_fail (node != NULL, NULL);
  int field = cw_node_type_field (node->type, "name");
  g_return_val_if_fail (field >= 0, NULL);
  return replaced (project, node,
                   cw_node_with_text (node, (guint) field, name));
}

CwProject *
cw_edit_vary_buildup (const CwProject *project, const char *elevation_id,
                      const char *name)
{
  const CwElevation *elevation = cw_project_elevation (project, elevation_id);
  g_return_val_if_fail (elevation != NULL, NULL);
  const CwBuildup *from = cw_project_buildup (project, elevation->buildup);
  g_return_val_if_fail (from != NULL, NULL);

  g_autofree char *id = NULL;
  g_autoptr (CwProject) both = cw_buildup_duplicate (project, from->id, &id);
  g_autoptr (CwProject) named = cw_edit_rename (both, id, name);
  return cw_buildup_give (named, elevation_id, id);
}

CwProject *
cw_edit_add_mark (const CwProject *project)
{
  g_autoptr (CwNode) node = cw_node_new (&cw_mark_type);
  g_autofree char *id = cw_project_free_id (project, "w");
  g_autofree char *name = g_ascii_strup (id, -1);
  cw_node_put_text (node, "id", id);
  cw_node_put_text (node, "name", name);
  cw_node_put (node, "kind", CW_OPENING_WINDOW);
  cw_node_put (node, "width", CW_MM (1200));
  cw_node_put (node, "height", CW_MM (1200));
  return cw_project_with_list (project, CW_PROJECT_MARKS,
                               cw_list_append (project->marks, node));
}

CwProject *
cw_edit_add_sheet (const CwProject *project, const CwSheetEntry *entry,
                   char **id)
{
  g_autoptr (CwNode) node = cw_node_new (&cw_sheet_type);
  *id = cw_project_free_id (project, "s");
  cw_node_put_text (node, "id", *id);
  cw_node_put_text (node, "name", entry->name);
  cw_node_put_text (node, "file", entry->file);
  if (entry->sha256)
    cw_node_put_text (node, "sha256", entry->sha256);
  cw_node_put (node, "page", entry->page);
  return cw_project_with_list (project, CW_PROJECT_SHEETS,
                               cw_list_append (project->sheets, node));
}

CwProject *
cw_edit_remove_sheet (const CwProject *project, const char *id)
{
  const CwSheet *sheet = cw_project_sheet (project, id);
  g_return_val_if_fail (sheet != NULL, NULL);
  CwProject *next = replaced (project, &sheet->node, NULL);
  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    {
      const CwElevation *elevation = cw_list_at (project->elevations, i);
      if (g_strcmp0 (elevation->sheet, id) != 0)
        continue;
      g_autoptr (CwNode) former = (CwNode *) next;
      next = replaced ((CwProject *) former, &elevation->node,
                       without_sheet (elevation));
    }
  return next;
}

CwProject *
cw_edit_turn_sheet (const CwProject *project, const char *sheet_id,
                    gint64 turn)
{
  const CwSheet *sheet = cw_project_sheet (project, sheet_id);
  g_return_val_if_fail (sheet != NULL, NULL);
  CwNode *copy = cw_node_copy (&sheet->node);
  cw_node_put (copy, "turn", turn);
  return replaced (project, &sheet->node, copy);
}

CwProject *
cw_edit_rewrite_sheets (const CwProject *project, CwRewriteFunc rewrite,
                        gpointer data)
{
  CwProject *next = cw_node_ref (project);
  for (gsize i = 0; i < cw_list_length (project->sheets); i++)
    {
      const CwSheet *sheet = cw_list_at (project->sheets, i);
      g_autofree char *file = rewrite (sheet->file, data);
      if (g_strcmp0 (file, sheet->file) == 0)
        continue;
      int field = cw_node_type_field (&cw_sheet_type, "file");
      g_autoptr (CwNode) former = (CwNode *) next;
      next = replaced ((CwProject *) former, &sheet->node,
                       cw_node_with_text (&sheet->node, (guint) field, file));
    }
  return next;
}

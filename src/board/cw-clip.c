/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-clip.h"

#include <string.h>

#include "cw-choose.h"
#include "cw-edit-arrange.h"
#include "cw-free-ids.h"

static CwList *
chosen_items (const CwElevation *elevation, const char *const *ids)
{
  g_autoptr (GPtrArray) items = g_ptr_array_new ();

  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    {
      CwNode *item = cw_list_at (elevation->items, i);

      if (g_strv_contains (ids, cw_node_id (item)))
        g_ptr_array_add (items, item);
    }
  return cw_list_new ((CwNode *const *) items->pdata, items->len);
}

static CwList *
marks_of (const CwProject *project, const CwList *items)
{
  g_autoptr (GPtrArray) marks = g_ptr_array_new ();

  for (gsize i = 0; i < cw_list_length (items); i++)
    {
      const CwNode *item = cw_list_at (items, i);
      const CwMark *mark
          = cw_node_is_opening (item)
                ? cw_project_mark (project, ((const CwOpening *) item)->mark)
                : NULL;

      if (mark && !g_ptr_array_find (marks, mark, NULL))
        g_ptr_array_add (marks, (gpointer) mark);
    }
  return cw_list_new ((CwNode *const *) marks->pdata, marks->len);
}

/* An elevation that has nothing but @items, without a buildup of its own. */
static CwList *
bare_elevation (const CwProject *in, const CwElevation *from,
                const CwList *items)
{
  g_autoptr (CwNode) elevation = cw_node_new (&cw_elevation_type);
  const CwBuildup *buildup = cw_list_at (in->buildups, 0);
  CwNode *nodes[1] = { elevation };

  cw_node_put_text (elevation, "id", from->id);
  cw_node_put_text (elevation, "name", from->name);
  cw_node_put_text (elevation, "buildup", buildup->id);
  cw_node_set_list (elevation, CW_ELEVATION_ITEMS, items);
  return cw_list_new (nodes, 1);
}

/* The usual buildup under an id that nothing copied can have. */
static CwNode *
empty_project (const CwProject *like)
{
  g_autoptr (CwProject) usual
      = cw_project_new_default ((CwUnits) like->units);
  g_autoptr (CwFreeIds) ids = cw_free_ids_new (like);
  g_autoptr (CwList) buildups
      = cw_free_ids_copy_list (ids, usual->buildups);
  CwNode *clip = cw_node_copy (&usual->node);

  cw_node_set_list (clip, CW_PROJECT_BUILDUPS, buildups);
  return clip;
}

CwProject *
cw_clip_new (const CwProject *project, const CwElevation *elevation,
             const char *const *ids)
{
  g_autoptr (CwList) items = NULL;
  g_autoptr (CwList) marks = NULL;
  g_autoptr (CwList) elevations = NULL;
  CwNode *clip;

  g_return_val_if_fail (project && elevation && ids, NULL);

  items = chosen_items (elevation, ids);
  if (cw_list_length (items) == 0)
    return NULL;
  clip = empty_project (project);
  marks = marks_of (project, items);
  elevations = bare_elevation ((CwProject *) clip, elevation, items);
  cw_node_set_list (clip, CW_PROJECT_MARKS, marks);
  cw_node_set_list (clip, CW_PROJECT_ELEVATIONS, elevations);
  cw_node_freeze (clip);
  return (CwProject *) clip;
}

static const CwElevation *
copied (const CwProject *clip)
{
  return cw_list_at (clip->elevations, 0);
}

gboolean
cw_clip_is_one (const CwProject *project)
{
  return cw_list_length (project->elevations) == 1
         && copied (project)->outline == NULL
         && cw_list_length (copied (project)->items) > 0;
}

gboolean
cw_clip_bounds (const CwProject *clip, CwBox *box)
{
  g_auto (GStrv) ids = NULL;

  g_return_val_if_fail (clip && cw_clip_is_one (clip), FALSE);

  ids = cw_choose_all (copied (clip));
  return cw_edit_bounds (clip, copied (clip), (const char *const *) ids, box);
}

static gboolean
gives_the_same (const CwMark *a, const CwMark *b)
{
  return a->kind == b->kind && strcmp (a->name, b->name) == 0
         && a->width == b->width && a->height == b->height
         && a->rise == b->rise && a->head == b->head
         && a->reveal == b->reveal;
}

static const CwMark *
find_like (const CwList *marks, const CwMark *mark)
{
  for (gsize i = 0; i < cw_list_length (marks); i++)
    if (gives_the_same (cw_list_at (marks, i), mark))
      return cw_list_at (marks, i);
  return NULL;
}

/* The id of the mark in the project that stands for each one of the clip;
 * adds to @marks those that are not there yet. */
static GHashTable *
match_marks (const CwProject *clip, CwFreeIds *ids, CwList **marks)
{
  GHashTable *matches
      = g_hash_table_new_full (g_str_hash, g_str_equal, NULL, g_free);

  for (gsize i = 0; i < cw_list_length (clip->marks); i++)
    {
      const CwMark *mark = cw_list_at (clip->marks, i);
      const CwMark *found = find_like (*marks, mark);

      if (found == NULL)
        {
          g_autoptr (CwNode) own = cw_free_ids_copy (ids, &mark->node);
          g_autoptr (CwList) former = *marks;

          *marks = cw_list_append (former, own);
          found = find_like (*marks, mark);
        }
      g_hash_table_insert (matches, mark->id, g_strdup (found->id));
    }
  return matches;
}

static CwNode *
pasted (const CwNode *item, CwFreeIds *ids, GHashTable *marks, CwPoint way)
{
  g_autoptr (CwNode) copy = cw_free_ids_copy (ids, item);

  if (cw_node_is_opening (copy))
    {
      const char *mark = g_hash_table_lookup (
          marks, ((const CwOpening *) item)->mark);

      if (mark)
        cw_node_put_text (copy, "mark", mark);
    }
  return cw_edit_moved (copy, way.x, way.y);
}

static CwProject *
with_pasted (const CwProject *project, const CwElevation *elevation,
             const CwList *items, const CwList *marks)
{
  g_autoptr (CwNode) by = cw_node_copy (&elevation->node);
  g_autoptr (CwProject) next = NULL;

  cw_node_set_list (by, CW_ELEVATION_ITEMS, items);
  next = cw_edit_replace (project, &elevation->node, by);
  return cw_project_with_list (next, CW_PROJECT_MARKS, cw_list_ref (marks));
}

CwProject *
cw_edit_paste (const CwProject *project, const CwElevation *elevation,
               const CwProject *clip, CwPoint way, char ***ids)
{
  g_autoptr (CwFreeIds) free_ids = NULL;
  g_autoptr (CwList) marks = NULL;
  g_autoptr (CwList) items = NULL;
  g_autoptr (GHashTable) matches = NULL;
  g_autoptr (GStrvBuilder) made = g_strv_builder_new ();

  g_return_val_if_fail (project && elevation && clip && ids, NULL);
  g_return_val_if_fail (cw_clip_is_one (clip), NULL);

  free_ids = cw_free_ids_new (project);
  marks = cw_list_ref (project->marks);
  items = cw_list_ref (elevation->items);
  matches = match_marks (clip, free_ids, &marks);
  for (gsize i = 0; i < cw_list_length (copied (clip)->items); i++)
    {
      g_autoptr (CwNode) item = pasted (
          cw_list_at (copied (clip)->items, i), free_ids, matches, way);
      g_autoptr (CwList) former = items;

      items = cw_list_append (former, item);
      g_strv_builder_add (made, cw_node_id (item));
    }
  *ids = g_strv_builder_end (made);
  return with_pasted (project, elevation, items, marks);
}

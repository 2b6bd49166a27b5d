/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sound-project.h"

#include <string.h>

#include "board-cases.h"
#include "cw-checks.h"
#include "cw-project-file.h"

/* Points across a box, each way. */
#define RASTER 5
/* Overlaps of less are a matter of rounding. */
#define CLEAR CW_MM (1)

static void
assert_item (const CwNode *item, GHashTable *ids)
{
  g_assert_nonnull (cw_node_id (item));
  g_assert_true (g_hash_table_add (ids, (gpointer) cw_node_id (item)));
  if (item->type == &cw_unclad_type)
    {
      g_autoptr (CwRegion) shape = cw_unclad_shape ((const CwUnclad *) item);

      g_assert_nonnull (shape);
      return;
    }
  if (item->type == &cw_dimension_type)
    return;
  g_assert_cmpint (case_get (item, "width"), >, 0);
  g_assert_cmpint (case_get (item, "height"), >, 0);
}

static void
assert_elevation (const CwElevation *elevation, GHashTable *ids)
{
  g_assert_true (g_hash_table_add (ids, elevation->id));
  if (elevation->outline)
    {
      g_autoptr (CwRegion) shape
          = cw_outline_shape ((const CwOutline *) elevation->outline);

      g_assert_nonnull (shape);
    }
  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    assert_item (cw_list_at (elevation->items, i), ids);
}

void
sound_assert_project (const CwProject *project)
{
  g_autoptr (GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);

  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    assert_elevation (cw_list_at (project->elevations, i), ids);
}

void
sound_assert_selection (CwDocument *document)
{
  const CwNode *project = &cw_document_project (document)->node;
  const char *shown = cw_document_elevation_id (document);
  g_autoptr (GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);

  g_assert_true (shown == NULL || cw_node_find (project, shown) != NULL);
  for (const char *const *id = cw_document_selection (document); *id; id++)
    {
      g_assert_nonnull (cw_node_find (project, *id));
      g_assert_true (g_hash_table_add (ids, (gpointer) *id));
    }
}

/* ------------------------------------------------------------ the checks */

typedef struct
{
  const GPtrArray *checks;
  const char *elevation_id;
  guint n_faults;
} Looking;

static gboolean
is_about (const CwCheck *check, const char *elevation_id, const char *code,
          const char *item)
{
  return g_strcmp0 (check->elevation_id, elevation_id) == 0
         && g_str_has_prefix (check->type->code, code)
         && strcmp (check->item, item) == 0;
}

static void
assert_told (Looking *looking, const char *code, const char *item)
{
  looking->n_faults++;
  for (guint i = 0; i < looking->checks->len; i++)
    if (is_about (looking->checks->pdata[i], looking->elevation_id, code,
                  item))
      return;
  g_error ("nothing is said of %s on %s, item “%s”", code,
           looking->elevation_id, item);
}

static gboolean
is_rectangle (const CwWallOpening *opening)
{
  return opening->opening->node.type != &cw_arch_type;
}

/* A point of the box, strictly inside, is not on the wall. */
static gboolean
leaves_wall (const CwRegion *outline, const CwBox *box)
{
  const CwLength across = cw_box_width (box) / RASTER;
  const CwLength up = cw_box_height (box) / RASTER;

  for (int i = 0; i < RASTER; i++)
    for (int j = 0; j < RASTER; j++)
      {
        const CwPoint at = { box->left + across / 2 + i * across,
                             box->bottom + up / 2 + j * up };

        if (!cw_region_contains (outline, at))
          return TRUE;
      }
  return FALSE;
}

/* Large enough that a point of the raster stands for some area. */
static gboolean
has_area (const CwBox *box)
{
  return cw_box_width (box) > 10 * CLEAR && cw_box_height (box) > 10 * CLEAR;
}

static gboolean
shares_area (const CwBox *a, const CwBox *b)
{
  return MIN (a->right, b->right) - MAX (a->left, b->left) > CLEAR
         && MIN (a->top, b->top) - MAX (a->bottom, b->bottom) > CLEAR;
}

static void
look_at_pair (Looking *looking, const CwWallOpening *one,
              const CwWallOpening *other)
{
  const CwBox a = cw_region_box (one->shape), b = cw_region_box (other->shape);
  g_autofree char *item = NULL;

  if (!is_rectangle (one) || !is_rectangle (other) || !shares_area (&a, &b))
    return;
  item = g_strdup_printf ("%s+%s", one->opening->id, other->opening->id);
  assert_told (looking, "opening-overlap", item);
}

static void
look_at_openings (Looking *looking, const CwWall *wall)
{
  for (guint i = 0; i < wall->openings->len; i++)
    {
      const CwWallOpening *opening
          = &g_array_index (wall->openings, CwWallOpening, i);
      const CwBox box = cw_region_box (opening->shape);

      if (is_rectangle (opening) && has_area (&box)
          && leaves_wall (wall->outline, &box))
        assert_told (looking, "opening-", opening->opening->id);
      for (guint j = i + 1; j < wall->openings->len; j++)
        look_at_pair (looking, opening,
                      &g_array_index (wall->openings, CwWallOpening, j));
    }
}

static void
look_at_stub_outs (Looking *looking, const CwWall *wall)
{
  for (guint i = 0; i < wall->stub_outs->len; i++)
    {
      const CwStubOut *stub_out = wall->stub_outs->pdata[i];

      if (!cw_region_contains (wall->outline,
                               cw_point (stub_out->x, stub_out->y)))
        assert_told (looking, "stub-out-outside", stub_out->id);
    }
}

static void
look_at_wall (Looking *looking, const CwProject *project,
              const CwElevation *elevation)
{
  g_autoptr (CwWall) wall = cw_wall_new (project, elevation);

  looking->elevation_id = elevation->id;
  if (elevation->outline == NULL)
    {
      assert_told (looking, "outline-missing", "");
      return;
    }
  g_assert_nonnull (wall->outline);
  look_at_openings (looking, wall);
  look_at_stub_outs (looking, wall);
}

guint
sound_assert_checked (const CwProject *project)
{
  g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
  const CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  g_autoptr (GPtrArray) checks = cw_checks_find (takeoff, &style, NULL);
  Looking looking = { .checks = checks };

  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    look_at_wall (&looking, project, cw_list_at (project->elevations, i));
  return looking.n_faults;
}

/* ---------------------------------------------------------- file, history */

void
sound_assert_file (const CwProject *project)
{
  g_autoptr (GBytes) bytes = cw_project_to_xml (project);
  g_autoptr (GError) error = NULL;
  g_autoptr (CwProject) again = cw_project_from_xml (bytes, &error);

  g_assert_no_error (error);
  g_assert_true (cw_node_equal (project, again));
}

void
sound_assert_history (CwDocument *document, const CwProject *first)
{
  const CwProject *last;

  while (cw_document_can_redo (document))
    cw_document_redo (document);
  last = cw_document_project (document);
  while (cw_document_can_undo (document))
    {
      cw_document_undo (document);
      sound_assert_selection (document);
    }
  g_assert_true (cw_document_project (document) == first);
  while (cw_document_can_redo (document))
    {
      cw_document_redo (document);
      sound_assert_selection (document);
    }
  g_assert_true (cw_document_project (document) == last);
}

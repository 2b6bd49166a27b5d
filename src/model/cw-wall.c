/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-wall.h"

static void
clear_opening (gpointer data)
{
  CwWallOpening *opening = data;

  cw_node_unref ((CwOpening *) opening->opening);
  if (opening->mark)
    cw_node_unref ((CwMark *) opening->mark);
  cw_region_unref (opening->shape);
}

static CwWall *
wall_alloc (const CwProject *project, const CwElevation *elevation)
{
  const CwBuildup *buildup
      = cw_project_buildup (project, elevation->buildup);
  CwWall *wall = g_new0 (CwWall, 1);

  g_atomic_ref_count_init (&wall->count);
  wall->elevation = cw_node_ref (elevation);
  wall->buildup = buildup ? cw_node_ref (buildup) : NULL;
  wall->measure = cw_node_ref (project->measure);
  wall->limits = cw_node_ref (project->limits);
  wall->marks = cw_list_ref (project->marks);
  wall->openings = g_array_new (FALSE, FALSE, sizeof (CwWallOpening));
  g_array_set_clear_func (wall->openings, clear_opening);
  wall->stub_outs = g_ptr_array_new ();
  wall->unclads = g_ptr_array_new ();
  wall->bands = g_ptr_array_new ();
  wall->dimensions = g_ptr_array_new ();
  return wall;
}

static void
add_opening (CwWall *wall, const CwProject *project, const CwOpening *drawn)
{
  const CwMark *mark = cw_project_mark (project, drawn->mark);
  const CwOpening *resolved = cw_project_resolve_opening (project, drawn);
  CwWallOpening opening = {
    .opening = resolved,
    .drawn = drawn,
    .mark = mark ? cw_node_ref (mark) : NULL,
    .shape = cw_opening_shape (resolved),
  };

  g_array_append_val (wall->openings, opening);
}

/* An area that is no area is left out; a check tells of it. */
static void
add_unclad (CwWall *wall, const CwUnclad *unclad, GPtrArray *shapes)
{
  CwRegion *shape = cw_unclad_shape (unclad);

  if (shape == NULL)
    return;
  g_ptr_array_add (wall->unclads, (gpointer) unclad);
  g_ptr_array_add (shapes, shape);
}

static void
add_items (CwWall *wall, const CwProject *project, GPtrArray *unclad_shapes)
{
  const CwList *items = wall->elevation->items;

  for (gsize i = 0; i < cw_list_length (items); i++)
    {
      CwNode *item = cw_list_at (items, i);

      if (cw_node_is_opening (item))
        add_opening (wall, project, (const CwOpening *) item);
      else if (item->type == &cw_stub_out_type)
        g_ptr_array_add (wall->stub_outs, item);
      else if (item->type == &cw_unclad_type)
        add_unclad (wall, (const CwUnclad *) item, unclad_shapes);
      else if (item->type == &cw_band_type)
        g_ptr_array_add (wall->bands, item);
      else
        g_ptr_array_add (wall->dimensions, item);
    }
}

/* The single loop of an opening's @shape with the tags that `net` has. */
static CwRegion *
tagged_opening (const CwRegion *shape)
{
  CwLoop loop = cw_region_loop (shape, 0);
  g_autofree CwSide *sides = g_memdup2 (loop.sides,
                                        loop.n_sides * sizeof (CwSide));

  for (gsize i = 0; i < loop.n_sides; i++)
    sides[i].tag += CW_WALL_TAG_OPENING;
  return cw_region_new_loop (sides, loop.n_sides);
}

static CwRegion *
join (GPtrArray *shapes)
{
  return cw_region_union ((const CwRegion *const *) shapes->pdata,
                          shapes->len);
}

static CwRegion *
joined_openings (const CwWall *wall)
{
  g_autoptr (GPtrArray) shapes
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_region_unref);

  for (guint i = 0; i < wall->openings->len; i++)
    {
      CwWallOpening *opening
          = &g_array_index (wall->openings, CwWallOpening, i);

      g_ptr_array_add (shapes, tagged_opening (opening->shape));
    }
  return join (shapes);
}

static void
measure_regions (CwWall *wall, GPtrArray *unclad_shapes)
{
  g_autoptr (CwRegion) openings = joined_openings (wall);
  g_autoptr (CwRegion) unclads = join (unclad_shapes);
  g_autoptr (CwRegion) walled_unclads
      = cw_region_intersect (unclads, wall->outline);
  g_autoptr (CwRegion) unopened
      = cw_region_subtract (wall->outline, openings);

  wall->opened = cw_region_intersect (openings, wall->outline);
  wall->unclad = cw_region_subtract (walled_unclads, openings);
  wall->net = cw_region_subtract (unopened, unclads);
}

static CwRegion *
outline_of (const CwElevation *elevation)
{
  return elevation->outline
             ? cw_outline_shape ((const CwOutline *) elevation->outline)
             : NULL;
}

CwWall *
cw_wall_new (const CwProject *project, const CwElevation *elevation)
{
  g_autoptr (GPtrArray) unclad_shapes
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_region_unref);
  CwWall *wall;

  g_return_val_if_fail (project != NULL && elevation != NULL, NULL);

  wall = wall_alloc (project, elevation);
  wall->outline = outline_of (elevation);
  add_items (wall, project, unclad_shapes);
  if (wall->outline)
    {
      measure_regions (wall, unclad_shapes);
      return wall;
    }
  wall->opened = cw_region_new_empty ();
  wall->unclad = cw_region_new_empty ();
  wall->net = cw_region_new_empty ();
  return wall;
}

CwWall *
cw_wall_ref (const CwWall *wall)
{
  g_return_val_if_fail (wall != NULL, NULL);

  g_atomic_ref_count_inc (&((CwWall *) wall)->count);
  return (CwWall *) wall;
}

CwWall *
cw_wall_with_buildup (const CwWall *wall, const CwBuildup *buildup)
{
  CwWall *other;

  g_return_val_if_fail (wall != NULL && buildup != NULL, NULL);

  other = g_memdup2 (wall, sizeof *wall);
  g_atomic_ref_count_init (&other->count);
  cw_node_ref (other->elevation);
  other->buildup = cw_node_ref (buildup);
  cw_node_ref (other->measure);
  cw_node_ref (other->limits);
  cw_list_ref (other->marks);
  if (other->outline)
    cw_region_ref (other->outline);
  g_array_ref (other->openings);
  g_ptr_array_ref (other->stub_outs);
  g_ptr_array_ref (other->unclads);
  g_ptr_array_ref (other->bands);
  g_ptr_array_ref (other->dimensions);
  cw_region_ref (other->opened);
  cw_region_ref (other->unclad);
  cw_region_ref (other->net);
  return other;
}

static void
wall_free (CwWall *wall)
{
  g_array_unref (wall->openings);
  g_ptr_array_unref (wall->stub_outs);
  g_ptr_array_unref (wall->unclads);
  g_ptr_array_unref (wall->bands);
  g_ptr_array_unref (wall->dimensions);
  g_clear_pointer (&wall->outline, cw_region_unref);
  cw_region_unref (wall->opened);
  cw_region_unref (wall->unclad);
  cw_region_unref (wall->net);
  cw_list_unref (wall->marks);
  cw_node_unref ((CwMeasure *) wall->measure);
  cw_node_unref ((CwLimits *) wall->limits);
  if (wall->buildup)
    cw_node_unref ((CwBuildup *) wall->buildup);
  cw_node_unref ((CwElevation *) wall->elevation);
  g_free (wall);
}

void
cw_wall_unref (CwWall *wall)
{
  g_return_if_fail (wall != NULL);

  if (g_atomic_ref_count_dec (&wall->count))
    wall_free (wall);
}

static gboolean
marks_unchanged (const CwWall *wall, const CwProject *project)
{
  if (wall->marks == project->marks)
    return TRUE;
  for (guint i = 0; i < wall->openings->len; i++)
    {
      const CwWallOpening *opening
          = &g_array_index (wall->openings, CwWallOpening, i);

      if (cw_project_mark (project, opening->drawn->mark) != opening->mark)
        return FALSE;
    }
  return TRUE;
}

CwWall *
cw_wall_renew (const CwWall *former, const CwProject *project,
               const CwElevation *elevation)
{
  if (former && former->elevation == elevation
      && (const CwNode *) former->measure == project->measure
      && (const CwNode *) former->limits == project->limits
      && former->buildup == cw_project_buildup (project, elevation->buildup)
      && marks_unchanged (former, project))
    return cw_wall_ref (former);
  return cw_wall_new (project, elevation);
}

/* Of the same elevation, so that the openings stand in the same order. */
static gboolean
same_marks (const CwWall *a, const CwWall *b)
{
  for (guint i = 0; i < a->openings->len; i++)
    if (g_array_index (a->openings, CwWallOpening, i).mark
        != g_array_index (b->openings, CwWallOpening, i).mark)
      return FALSE;
  return TRUE;
}

gboolean
cw_wall_same (const CwWall *a, const CwWall *b)
{
  return a == b
         || (a->elevation == b->elevation && a->buildup == b->buildup
             && a->measure == b->measure && a->limits == b->limits
             && same_marks (a, b));
}

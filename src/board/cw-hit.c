/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-hit.h"

#include <math.h>
#include <string.h>

#include "cw-dimension.h"

static CwBox
band_box (const CwBand *band)
{
  return (CwBox) { band->x, band->y, band->x + band->width,
                   band->y + band->height };
}

static gboolean
is_in_box (const CwBox *box, CwPoint at)
{
  return at.x >= box->left && at.x <= box->right && at.y >= box->bottom
         && at.y <= box->top;
}

/* Small ones have at least the reach all round. */
static gboolean
hits_stub_out (const CwStubOut *stub_out, CwPoint at, CwLength reach)
{
  CwLength half_width = MAX (stub_out->width / 2, reach);
  CwLength half_height = MAX (stub_out->height / 2, reach);
  double dx = (double) (at.x - stub_out->x) / (double) half_width;
  double dy = (double) (at.y - stub_out->y) / (double) half_height;

  if (stub_out->shape == CW_SHAPE_ROUND)
    return dx * dx + dy * dy <= 1;
  return fabs (dx) <= 1 && fabs (dy) <= 1;
}

static gboolean
hits_band (const CwBand *band, CwPoint at, CwLength reach)
{
  CwBox box = band_box (band);
  CwLength short_by = reach - cw_box_height (&box) / 2;

  if (short_by > 0)
    {
      box.bottom -= short_by;
      box.top += short_by;
    }
  return is_in_box (&box, at);
}

static gboolean
hits_unclad (const CwUnclad *unclad, CwPoint at)
{
  g_autoptr (CwRegion) shape = cw_unclad_shape (unclad);

  return shape && cw_region_contains (shape, at);
}

/* The thing on top of everything, and the thinnest. */
static const CwNode *
hit_dimensions (const CwWall *wall, CwPoint at, CwLength reach)
{
  for (guint i = wall->dimensions->len; i-- > 0;)
    if (cw_dimension_distance (g_ptr_array_index (wall->dimensions, i), at)
        <= (double) reach / 2)
      return g_ptr_array_index (wall->dimensions, i);
  return NULL;
}

static const CwNode *
hit_stub_outs (const CwWall *wall, CwPoint at, CwLength reach)
{
  for (guint i = wall->stub_outs->len; i-- > 0;)
    if (hits_stub_out (g_ptr_array_index (wall->stub_outs, i), at, reach))
      return g_ptr_array_index (wall->stub_outs, i);
  return NULL;
}

static const CwNode *
hit_openings (const CwWall *wall, CwPoint at)
{
  for (guint i = wall->openings->len; i-- > 0;)
    {
      const CwWallOpening *opening
          = &g_array_index (wall->openings, CwWallOpening, i);
      CwBox box = cw_region_box (opening->shape);

      if (is_in_box (&box, at) && cw_region_contains (opening->shape, at))
        return &opening->drawn->node;
    }
  return NULL;
}

static const CwNode *
hit_areas (const CwWall *wall, CwPoint at, CwLength reach)
{
  for (guint i = wall->bands->len; i-- > 0;)
    if (hits_band (g_ptr_array_index (wall->bands, i), at, reach))
      return g_ptr_array_index (wall->bands, i);
  for (guint i = wall->unclads->len; i-- > 0;)
    if (hits_unclad (g_ptr_array_index (wall->unclads, i), at))
      return g_ptr_array_index (wall->unclads, i);
  return NULL;
}

static gboolean
hits_face (const CwWall *wall, CwPoint at)
{
  return wall->outline && cw_region_contains (wall->outline, at);
}

const CwNode *
cw_hit_at (const CwWall *wall, CwPoint at, CwLength reach)
{
  const CwNode *hit;

  g_return_val_if_fail (wall != NULL, NULL);

  hit = hit_dimensions (wall, at, reach);
  if (hit == NULL)
    hit = hit_stub_outs (wall, at, reach);
  if (hit == NULL)
    hit = hit_openings (wall, at);
  if (hit == NULL)
    hit = hit_areas (wall, at, reach);
  if (hit == NULL && hits_face (wall, at))
    hit = &wall->elevation->node;
  return hit;
}

const CwWallOpening *
cw_hit_opening (const CwWall *wall, const char *id)
{
  for (guint i = 0; i < wall->openings->len; i++)
    {
      const CwWallOpening *opening
          = &g_array_index (wall->openings, CwWallOpening, i);

      if (strcmp (opening->drawn->id, id) == 0)
        return opening;
    }
  return NULL;
}

/* The item of the elevation with that id that is no opening. */
static const CwNode *
find_item (const CwWall *wall, const char *id)
{
  const CwList *items = wall->elevation->items;

  for (gsize i = 0; i < cw_list_length (items); i++)
    {
      const CwNode *item = cw_list_at (items, i);

      if (g_strcmp0 (cw_node_id (item), id) == 0)
        return item;
    }
  return NULL;
}

static CwRegion *
item_shape (const CwNode *item)
{
  if (item->type == &cw_stub_out_type)
    return cw_stub_out_shape ((const CwStubOut *) item, FALSE);
  if (item->type == &cw_unclad_type)
    return cw_unclad_shape ((const CwUnclad *) item);
  if (item->type == &cw_band_type)
    {
      CwBox box = band_box ((const CwBand *) item);

      return cw_region_new_box (&box, 0);
    }
  return NULL;
}

CwRegion *
cw_hit_shape (const CwWall *wall, const char *id)
{
  const CwWallOpening *opening;
  const CwNode *item;

  g_return_val_if_fail (wall != NULL && id != NULL, NULL);

  if (strcmp (wall->elevation->id, id) == 0)
    return wall->outline ? cw_region_ref (wall->outline) : NULL;
  opening = cw_hit_opening (wall, id);
  if (opening)
    return cw_region_ref (opening->shape);
  item = find_item (wall, id);
  return item ? item_shape (item) : NULL;
}

const CwDimension *
cw_hit_dimension (const CwWall *wall, const char *id)
{
  g_return_val_if_fail (wall != NULL && id != NULL, NULL);

  for (guint i = 0; i < wall->dimensions->len; i++)
    {
      const CwDimension *dimension
          = g_ptr_array_index (wall->dimensions, i);

      if (strcmp (dimension->id, id) == 0)
        return dimension;
    }
  return NULL;
}

gboolean
cw_hit_bounds (const CwWall *wall, const char *id, CwBox *box)
{
  g_autoptr (CwRegion) shape = NULL;
  const CwDimension *dimension = cw_hit_dimension (wall, id);

  if (dimension)
    {
      *box = cw_dimension_box (dimension);
      return TRUE;
    }
  shape = cw_hit_shape (wall, id);
  if (shape == NULL || cw_region_is_empty (shape))
    return FALSE;
  *box = cw_region_box (shape);
  return TRUE;
}

GPtrArray *
cw_hit_within (const CwWall *wall, const CwBox *box)
{
  GPtrArray *found = g_ptr_array_new ();
  const CwList *items;

  g_return_val_if_fail (wall != NULL && box != NULL, found);

  items = wall->elevation->items;
  for (gsize i = 0; i < cw_list_length (items); i++)
    {
      CwNode *item = cw_list_at (items, i);
      CwBox bounds;

      if (cw_hit_bounds (wall, cw_node_id (item), &bounds)
          && bounds.left >= box->left && bounds.right <= box->right
          && bounds.bottom >= box->bottom && bounds.top <= box->top)
        g_ptr_array_add (found, item);
    }
  return found;
}

/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From the elements of an elevation to regions.
 */
#include "cw-wall.h"

static CwLength
possible_rise (const CwOpening *opening)
{
  CwArchHead head = (CwArchHead) opening->head;
  CwLength least, most;

  if (cw_arch_is_possible (head, opening->width, opening->rise))
    return opening->rise;
  cw_arch_rise_limits (head, opening->width, &least, &most);
  return CLAMP (opening->rise, least, most);
}

CwRegion *
cw_opening_shape (const CwOpening *resolved)
{
  CwLength rise = resolved->node.type == &cw_arch_type
                      ? possible_rise (resolved)
                      : 0;

  return cw_opening_region (cw_point (resolved->x, resolved->y),
                            resolved->width, resolved->height,
                            (CwArchHead) resolved->head, rise);
}

/* Half of an odd number of nanometres falls to the right and upward. */
static CwBox
box_about (CwLength x, CwLength y, CwLength width, CwLength height)
{
  CwLength left = x - width / 2;
  CwLength bottom = y - height / 2;

  return (CwBox) { left, bottom, left + width, bottom + height };
}

CwRegion *
cw_stub_out_shape (const CwStubOut *stub_out, gboolean with_clearance)
{
  CwLength all_round = with_clearance ? 2 * stub_out->clearance : 0;
  CwBox box = box_about (stub_out->x, stub_out->y,
                         stub_out->width + all_round,
                         stub_out->height + all_round);

  if (stub_out->shape == CW_SHAPE_ROUND)
    return cw_hole_region_round (cw_point (stub_out->x, stub_out->y),
                                 stub_out->width + all_round,
                                 CW_WALL_TAG_STUB_OUT);
  return cw_region_new_box (&box, CW_WALL_TAG_STUB_OUT);
}

CwRegion *
cw_outline_shape (const CwOutline *outline)
{
  g_autoptr (GArray) corners = cw_corners_from_list (outline->corners);

  return cw_outline_region ((const CwCorner *) corners->data, corners->len);
}

CwRegion *
cw_unclad_shape (const CwUnclad *unclad)
{
  g_autoptr (GArray) corners = cw_corners_from_list (unclad->corners);

  for (guint i = 0; i < corners->len; i++)
    g_array_index (corners, CwCorner, i).tag = CW_WALL_TAG_UNCLAD;
  return cw_outline_region ((const CwCorner *) corners->data, corners->len);
}

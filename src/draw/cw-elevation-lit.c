/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a quantity comes from, lit up.
 */
#include "cw-elevation-drawing.h"
#include "cw-elevation-layers.h"

static void
light_region (CwDisplayList *list, const CwRegion *region)
{
  if (region)
    cw_display_list_add_region (list, CW_STYLE_LIT, NULL, region);
}

static void
light_sides (CwDisplayList *list, const CwRegion *region, guint mask)
{
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      const CwLoop loop = cw_region_loop (region, i);
      for (gsize j = 0; j < loop.n_sides; j++)
        if (mask & 1u << loop.sides[j].tag)
          cw_display_list_add_side (list, CW_STYLE_LIT, NULL, &loop.sides[j],
                                    cw_loop_end (&loop, j));
    }
}

/* A door has no sill. */
static guint
sides_of (const CwWallOpening *opening, guint sides)
{
  return opening->opening->node.type == &cw_door_type
             ? sides & ~(1u << CW_OPENING_SIDE_SILL)
             : sides;
}

static void
light_openings (CwDisplayList *list, const CwWall *wall)
{
  for (guint i = 0; i < wall->openings->len; i++)
    light_region (list,
                  g_array_index (wall->openings, CwWallOpening, i).shape);
}

static void
light_opening_sides (CwDisplayList *list, const CwWall *wall, guint sides)
{
  for (guint i = 0; i < wall->openings->len; i++)
    {
      const CwWallOpening *opening
          = &g_array_index (wall->openings, CwWallOpening, i);
      light_sides (list, opening->shape, sides_of (opening, sides));
    }
}

static void
light_bands (CwDisplayList *list, const CwWall *wall)
{
  for (guint i = 0; i < wall->bands->len; i++)
    {
      const CwBand *band = g_ptr_array_index (wall->bands, i);
      const CwBox box = { band->x, band->y, band->x + band->width,
                          band->y + band->height };
      cw_display_list_add_box (list, CW_STYLE_LIT, band->id, &box);
    }
}

static void
light_pieces (CwDisplayList *list, const CwLayout *layout, guint kinds)
{
  for (guint i = 0; i < layout->pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, i);
      if (kinds & 1u << piece->kind)
        cw_draw_piece (list, CW_STYLE_LIT, NULL, piece);
    }
}

static void
light_joints (CwDisplayList *list, const CwLayout *layout, gboolean beds)
{
  for (guint i = 0; i < layout->joints->len; i++)
    {
      const CwJoint *joint = &g_array_index (layout->joints, CwJoint, i);
      if (!joint->is_bed == !beds)
        cw_display_list_add_line (list, CW_STYLE_LIT, NULL, joint->from,
                                  joint->to);
    }
}

static void
light_studs (CwDisplayList *list, const CwWallTakeoff *takeoff)
{
  const GArray *studs = takeoff->layout->studs;
  const CwBox box = cw_region_box (takeoff->wall->outline);
  for (guint i = 0; i < studs->len; i++)
    {
      const CwLength x = g_array_index (studs, CwLength, i);
      cw_display_list_add_line (list, CW_STYLE_LIT, NULL,
                                cw_point (x, box.bottom),
                                cw_point (x, box.top));
    }
}

static void
light (CwDisplayList *list, const CwWallTakeoff *takeoff,
       const CwQuantityType *type)
{
  const CwWall *wall = takeoff->wall;
  switch (type->shows)
    {
    case CW_SHOWS_OUTLINE:
    case CW_SHOWS_BARRIER:
      light_region (list, wall->outline);
      break;
    case CW_SHOWS_NET:
      light_region (list, wall->net);
      break;
    case CW_SHOWS_OPENINGS:
      light_openings (list, wall);
      break;
    case CW_SHOWS_OPENING_SIDES:
      light_opening_sides (list, wall, type->detail);
      break;
    case CW_SHOWS_UNCLAD:
      light_region (list, wall->unclad);
      break;
    case CW_SHOWS_EDGES:
      light_sides (list, wall->outline, 1u << type->detail);
      break;
    case CW_SHOWS_BANDS:
      light_bands (list, wall);
      break;
    case CW_SHOWS_PIECES:
      light_pieces (list, takeoff->layout, type->detail);
      break;
    case CW_SHOWS_BED_JOINTS:
    case CW_SHOWS_HEAD_JOINTS:
      light_joints (list, takeoff->layout,
                    type->shows == CW_SHOWS_BED_JOINTS);
      break;
    case CW_SHOWS_FASTENERS:
      light_studs (list, takeoff);
      break;
    case CW_SHOWS_NOTHING:
      break;
    }
}

CwDisplayList *
cw_elevation_drawing_lit (const CwWallTakeoff *takeoff,
                          const CwQuantityType *type)
{
  CwDisplayList *list = cw_display_list_new ();
  if (takeoff->wall->outline)
    light (list, takeoff, type);
  return list;
}

/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-snap-private.h"

#include <math.h>

/* Guides and middles draw a little less far than corners do. */
#define GUIDE_SHARE 0.75
#define ARC_STEPS 48

static double
distance (CwPoint a, CwPoint b)
{
  return hypot ((double) (a.x - b.x), (double) (a.y - b.y));
}

static void
offer (CwSnapNearest *nearest, CwPoint at, double away, double within)
{
  if (away > within || (nearest->found && away >= nearest->distance))
    return;
  *nearest = (CwSnapNearest) { TRUE, away, at, CW_SNAP_NONE };
}

/* A guide is chosen by how far it would move the point; of several on one
 * line, the one that needs the shortest guide. */
static void
offer_guide (CwSnapSearch *search, CwSnapNearest *nearest, CwPoint from,
             CwLength off)
{
  double within = GUIDE_SHARE * (double) search->field->radius;
  double away = fabs ((double) off);

  if (away > within)
    return;
  if (nearest->found && !(away < nearest->distance)
      && distance (from, search->at) >= distance (nearest->at, search->at))
    return;
  if (!nearest->found || away <= nearest->distance)
    *nearest = (CwSnapNearest) { TRUE, away, from, CW_SNAP_NONE };
}

static void
offer_point (CwSnapSearch *search, CwPoint corner, CwSnapKind kind)
{
  double away = distance (corner, search->at);
  gboolean nearer = !search->corner.found || away < search->corner.distance;

  offer (&search->corner, corner, away, (double) search->field->radius);
  if (nearer && search->corner.found)
    search->corner.kind = kind;
  offer_guide (search, &search->guide_x, corner, corner.x - search->at.x);
  offer_guide (search, &search->guide_y, corner, corner.y - search->at.y);
}

static void
offer_corner (CwSnapSearch *search, CwPoint corner)
{
  offer_point (search, corner, CW_SNAP_CORNER);
}

static CwPoint
rounded (double x, double y)
{
  return cw_point ((CwLength) llround (x), (CwLength) llround (y));
}

static CwPoint
foot_on_straight (CwPoint from, CwPoint to, CwPoint at)
{
  double dx = (double) (to.x - from.x), dy = (double) (to.y - from.y);
  double squared = dx * dx + dy * dy;
  double share;

  if (!(squared > 0))
    return from;
  share = ((double) (at.x - from.x) * dx + (double) (at.y - from.y) * dy)
          / squared;
  share = CLAMP (share, 0, 1);
  return rounded ((double) from.x + share * dx, (double) from.y + share * dy);
}

static double
arc_distance (const CwSide *side, CwPoint end, double share, CwPoint at,
              CwPoint *on)
{
  double x, y;

  cw_side_at (side, end, share, &x, &y);
  *on = rounded (x, y);
  return hypot (x - (double) at.x, y - (double) at.y);
}

/* The best of evenly spread points, then halving steps about it. */
static CwPoint
foot_on_arc (const CwSide *side, CwPoint end, CwPoint at)
{
  CwPoint best, on;
  double share = 0, nearest = arc_distance (side, end, 0, at, &best);

  for (guint i = 1; i <= ARC_STEPS; i++)
    {
      double away = arc_distance (side, end, (double) i / ARC_STEPS, at, &on);

      if (away < nearest)
        nearest = away, best = on, share = (double) i / ARC_STEPS;
    }
  for (double step = 0.5 / ARC_STEPS; step > 1e-9; step /= 2)
    for (int way = -1; way <= 1; way += 2)
      {
        double there = CLAMP (share + way * step, 0, 1);
        double away = arc_distance (side, end, there, at, &on);

        if (away < nearest)
          nearest = away, best = on, share = there;
      }
  return best;
}

static gboolean
is_near_box (const CwBox *box, CwPoint at, CwLength radius)
{
  return at.x >= box->left - radius && at.x <= box->right + radius
         && at.y >= box->bottom - radius && at.y <= box->top + radius;
}

static void
offer_side (CwSnapSearch *search, const CwSide *side, CwPoint end)
{
  CwBox box = cw_side_box (side, end);
  double within = GUIDE_SHARE * (double) search->field->radius;
  CwPoint foot;
  double x, y;

  if (!is_near_box (&box, search->at, search->field->radius))
    return;
  cw_side_at (side, end, 0.5, &x, &y);
  offer (&search->middle, rounded (x, y),
         distance (rounded (x, y), search->at), within);
  foot = side->is_arc ? foot_on_arc (side, end, search->at)
                      : foot_on_straight (side->start, end, search->at);
  if (search->side.found
      && distance (foot, search->at) >= search->side.distance)
    return;
  offer (&search->side, foot, distance (foot, search->at), within);
  search->side.kind = CW_SNAP_SIDE;
  if (search->side.found && cw_point_equal (search->side.at, foot))
    search->on = *side, search->on_end = end;
}

static void
offer_region (CwSnapSearch *search, const CwRegion *region)
{
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      CwLoop loop = cw_region_loop (region, i);

      for (gsize j = 0; j < loop.n_sides; j++)
        {
          offer_corner (search, loop.sides[j].start);
          offer_side (search, &loop.sides[j], cw_loop_end (&loop, j));
        }
    }
}

static void
offer_corners (CwSnapSearch *search, const CwList *corners)
{
  for (gsize i = 0; i < cw_list_length (corners); i++)
    {
      const CwCornerNode *corner = cw_list_at (corners, i);

      offer_corner (search, cw_point (corner->x, corner->y));
    }
}

static gboolean
is_skipped (const CwSnapField *field, const char *id)
{
  return field->skip_ids && g_strv_contains (field->skip_ids, id);
}

static void
offer_outline (CwSnapSearch *search)
{
  const CwWall *wall = search->field->wall;
  const CwOutline *outline
      = wall ? (const CwOutline *) wall->elevation->outline : NULL;

  if (outline == NULL || is_skipped (search->field, wall->elevation->id))
    return;
  if (wall->outline)
    offer_region (search, wall->outline);
  else
    offer_corners (search, outline->corners);
}

static void
offer_box (CwSnapSearch *search, CwLength x, CwLength y, CwLength width,
           CwLength height)
{
  offer_corner (search, cw_point (x, y));
  offer_corner (search, cw_point (x + width, y));
  offer_corner (search, cw_point (x + width, y + height));
  offer_corner (search, cw_point (x, y + height));
}

/* Before its corners, which are at the same places. */
static void
offer_arch (CwSnapSearch *search, const CwOpening *arch)
{
  CwLength springing = arch->y + arch->height;

  if (arch->node.type != &cw_arch_type || arch->rise <= 0)
    return;
  offer_point (search, cw_point (arch->x, springing), CW_SNAP_SPRINGING);
  offer_point (search, cw_point (arch->x + arch->width, springing),
               CW_SNAP_SPRINGING);
  offer_point (search,
               cw_point (arch->x + arch->width / 2, springing + arch->rise),
               CW_SNAP_CROWN);
}

static void
offer_openings (CwSnapSearch *search)
{
  const CwWall *wall = search->field->wall;
  const GArray *openings = wall ? wall->openings : NULL;

  for (guint i = 0; openings && i < openings->len; i++)
    {
      const CwWallOpening *opening
          = &g_array_index (openings, CwWallOpening, i);

      if (is_skipped (search->field, opening->drawn->id))
        continue;
      offer_arch (search, opening->opening);
      offer_region (search, opening->shape);
    }
}

static void
offer_other_items (CwSnapSearch *search)
{
  const CwWall *wall = search->field->wall;

  if (wall == NULL)
    return;
  for (guint i = 0; i < wall->stub_outs->len; i++)
    {
      const CwStubOut *stub_out = g_ptr_array_index (wall->stub_outs, i);

      if (!is_skipped (search->field, stub_out->id))
        offer_corner (search, cw_point (stub_out->x, stub_out->y));
    }
  for (guint i = 0; i < wall->bands->len; i++)
    {
      const CwBand *band = g_ptr_array_index (wall->bands, i);

      if (!is_skipped (search->field, band->id))
        offer_box (search, band->x, band->y, band->width, band->height);
    }
  for (guint i = 0; i < wall->unclads->len; i++)
    {
      const CwUnclad *unclad = g_ptr_array_index (wall->unclads, i);

      if (!is_skipped (search->field, unclad->id))
        offer_corners (search, unclad->corners);
    }
}

/* Shown from its end that is nearer. Most joints are too far off even for
 * their ends to be measured. */
static void
offer_joint (CwSnapSearch *search, CwSnapNearest *nearest, const CwJoint *joint,
             CwLength off)
{
  if (ABS (off) > search->field->radius)
    return;
  offer_guide (search, nearest,
               distance (joint->from, search->at)
                       <= distance (joint->to, search->at)
                   ? joint->from
                   : joint->to,
               off);
}

static void
offer_joints (CwSnapSearch *search)
{
  const GArray *joints = search->field->joints;

  for (guint i = 0; joints && i < joints->len; i++)
    {
      const CwJoint *joint = &g_array_index (joints, CwJoint, i);

      if (joint->from.y == joint->to.y)
        offer_joint (search, &search->joint_y, joint,
                     joint->from.y - search->at.y);
      else if (joint->from.x == joint->to.x)
        offer_joint (search, &search->joint_x, joint,
                     joint->from.x - search->at.x);
    }
}

static void
offer_points (CwSnapSearch *search)
{
  for (gsize i = 0; i < search->field->n_points; i++)
    offer_corner (search, search->field->points[i]);
}

static CwPoint
stepped (const CwSnapSearch *search, CwPoint at)
{
  return cw_point (cw_snap_on_grid (at.x, search->field->drawn_step),
                   cw_snap_on_grid (at.y, search->field->drawn_step));
}

/* A line of the sheet is a side where the wall has none; where the wall has a
 * corner, nothing of the sheet can be taken. */
static void
offer_drawn (CwSnapSearch *search)
{
  const CwSnapField *field = search->field;
  CwSheetSpot spot;

  if (field->drawn == NULL || search->corner.found)
    return;
  spot = cw_sheet_snap (field->drawn, &field->drawn_at, search->at,
                        (CwLength) (GUIDE_SHARE * (double) field->radius));
  if (spot.kind == CW_DRAWN_NOTHING)
    return;
  if (spot.kind != CW_DRAWN_RUN)
    search->drawn = (CwSnapNearest) { TRUE, distance (spot.at, search->at),
                                stepped (search, spot.at),
                                CW_SNAP_SHEET_CORNER };
  else if (!search->side.found)
    {
      search->side = (CwSnapNearest) { TRUE, distance (spot.at, search->at),
                                 stepped (search, spot.at),
                                 CW_SNAP_SHEET_LINE };
      search->on = (CwSide) { .start = stepped (search, spot.from) };
      search->on_end = stepped (search, spot.to);
    }
}

/* Each knows one kind of thing that can be fallen on, and offers what of it is
 * near; which of all that is taken is settled by cw_snap(). That of the sheet
 * comes last: it looks whether there was a side. */
static void (*const sources[]) (CwSnapSearch *search) = {
  offer_joints, offer_points,      offer_outline,
  offer_openings, offer_other_items, offer_drawn,
};

void
cw_snap_look_around (CwSnapSearch *search)
{
  for (guint i = 0; i < G_N_ELEMENTS (sources); i++)
    sources[i](search);
}

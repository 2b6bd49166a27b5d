/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-snap.h"

#include <math.h>

#include "cw-drawn-runs.h"

/* Guides and middles draw a little less far than corners do. */
#define GUIDE_SHARE 0.75
#define ARC_STEPS 48

typedef struct
{
  gboolean found;
  double distance;
  CwPoint at;
  CwSnapKind kind;
} Nearest;

typedef struct
{
  const CwSnapField *field;
  CwPoint at;
  Nearest corner, middle, guide_x, guide_y, joint_x, joint_y, side;
  Nearest drawn;        /* a corner of the sheet */
  CwSide on;            /* the side of `side` */
  CwPoint on_end;
} Search;

static double
distance (CwPoint a, CwPoint b)
{
  return hypot ((double) (a.x - b.x), (double) (a.y - b.y));
}

static void
offer (Nearest *nearest, CwPoint at, double away, double within)
{
  if (away > within || (nearest->found && away >= nearest->distance))
    return;
  *nearest = (Nearest) { TRUE, away, at, CW_SNAP_NONE };
}

/* A guide is chosen by how far it would move the point; of several on one
 * line, the one that needs the shortest guide. */
static void
offer_guide (Search *search, Nearest *nearest, CwPoint from, CwLength off)
{
  double within = GUIDE_SHARE * (double) search->field->radius;
  double away = fabs ((double) off);

  if (away > within)
    return;
  if (nearest->found && !(away < nearest->distance)
      && distance (from, search->at) >= distance (nearest->at, search->at))
    return;
  if (!nearest->found || away <= nearest->distance)
    *nearest = (Nearest) { TRUE, away, from, CW_SNAP_NONE };
}

static void
offer_point (Search *search, CwPoint corner, CwSnapKind kind)
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
offer_corner (Search *search, CwPoint corner)
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
offer_side (Search *search, const CwSide *side, CwPoint end)
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
offer_region (Search *search, const CwRegion *region)
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
offer_corners (Search *search, const CwList *corners)
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
offer_outline (Search *search)
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
offer_box (Search *search, CwLength x, CwLength y, CwLength width,
           CwLength height)
{
  offer_corner (search, cw_point (x, y));
  offer_corner (search, cw_point (x + width, y));
  offer_corner (search, cw_point (x + width, y + height));
  offer_corner (search, cw_point (x, y + height));
}

/* Before its corners, which are at the same places. */
static void
offer_arch (Search *search, const CwOpening *arch)
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
offer_openings (Search *search)
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
offer_other_items (Search *search)
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
offer_joint (Search *search, Nearest *nearest, const CwJoint *joint,
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
offer_joints (Search *search)
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
offer_points (Search *search)
{
  for (gsize i = 0; i < search->field->n_points; i++)
    offer_corner (search, search->field->points[i]);
}

static CwLength
on_grid (CwLength value, CwLength grid)
{
  CwLength rest;

  if (grid <= 0)
    return value;
  rest = ((value % grid) + grid) % grid;
  return value - rest + (2 * rest >= grid ? grid : 0);
}

static CwPoint
stepped (const Search *search, CwPoint at)
{
  return cw_point (on_grid (at.x, search->field->drawn_step),
                   on_grid (at.y, search->field->drawn_step));
}

/* A line of the sheet is a side where the wall has none. */
static void
offer_drawn (Search *search)
{
  const CwSnapField *field = search->field;
  CwSheetSpot spot;

  if (field->drawn == NULL)
    return;
  spot = cw_sheet_snap (field->drawn, &field->drawn_at, search->at,
                        (CwLength) (GUIDE_SHARE * (double) field->radius));
  if (spot.kind == CW_DRAWN_NOTHING)
    return;
  if (spot.kind != CW_DRAWN_RUN)
    search->drawn = (Nearest) { TRUE, distance (spot.at, search->at),
                                stepped (search, spot.at),
                                CW_SNAP_SHEET_CORNER };
  else if (!search->side.found)
    {
      search->side = (Nearest) { TRUE, distance (spot.at, search->at),
                                 stepped (search, spot.at),
                                 CW_SNAP_SHEET_LINE };
      search->on = (CwSide) { .start = stepped (search, spot.from) };
      search->on_end = stepped (search, spot.to);
    }
}

/* Each knows one kind of thing that can be fallen on, and offers what of it is
 * near; which of all that is taken is settled by cw_snap(). That of the sheet
 * comes last: it looks whether there was a side. */
static void (*const sources[]) (Search *search) = {
  offer_joints, offer_points,      offer_outline,
  offer_openings, offer_other_items, offer_drawn,
};

static void
look_around (Search *search)
{
  for (guint i = 0; i < G_N_ELEMENTS (sources); i++)
    sources[i](search);
}

static CwSnap
snap_to_point (CwPoint at, CwSnapKind kind)
{
  return (CwSnap) { at, kind, kind, at, at };
}

static CwSnap
snap_to_guides (const Search *search)
{
  CwLength grid = search->field->grid;
  CwSnapKind otherwise = grid > 0 ? CW_SNAP_GRID : CW_SNAP_NONE;
  CwSnap snap = snap_to_point (cw_point (on_grid (search->at.x, grid),
                                         on_grid (search->at.y, grid)),
                               otherwise);

  if (search->joint_x.found)
    {
      snap.at.x = search->joint_x.at.x;
      snap.x_kind = CW_SNAP_JOINT_X;
      snap.x_from = search->joint_x.at;
    }
  if (search->joint_y.found)
    {
      snap.at.y = search->joint_y.at.y;
      snap.y_kind = CW_SNAP_JOINT_Y;
      snap.y_from = search->joint_y.at;
    }
  if (search->guide_x.found)
    {
      snap.at.x = search->guide_x.at.x;
      snap.x_kind = CW_SNAP_ALIGN_X;
      snap.x_from = search->guide_x.at;
    }
  if (search->guide_y.found)
    {
      snap.at.y = search->guide_y.at.y;
      snap.y_kind = CW_SNAP_ALIGN_Y;
      snap.y_from = search->guide_y.at;
    }
  return snap;
}

/* Where the straight side through @from and @to is at the given x (or, with
 * the coordinates changed about, at the given y). */
static CwLength
across (CwLength from, CwLength to, CwLength from_other, CwLength to_other,
        CwLength at)
{
  double share = (double) (at - from) / (double) (to - from);

  return from_other
         + (CwLength) llround (share * (double) (to_other - from_other));
}

static gboolean
is_between (CwLength value, CwLength a, CwLength b)
{
  return value >= MIN (a, b) && value <= MAX (a, b);
}

/* How far apart what the sheet shows and a guide may be and still be meant for
 * one: drawings are no finer than that. */
static CwLength
sheet_slack (const CwSnapField *field, double mm_per_point)
{
  return field->drawn ? (CwLength) (CW_DRAWN_REACH * mm_per_point * 1e6) : 0;
}

/* A corner that is level or plumb with one of the wall by the sheet is so
 * exactly. */
static CwSnap
snap_to_sheet (const Search *search)
{
  const CwSnapField *field = search->field;
  CwSnap snap = snap_to_point (search->drawn.at, search->drawn.kind);

  if (search->guide_x.found
      && ABS (search->guide_x.at.x - snap.at.x)
             <= sheet_slack (field, field->drawn_at.across))
    snap.at.x = search->guide_x.at.x;
  if (search->guide_y.found
      && ABS (search->guide_y.at.y - snap.at.y)
             <= sheet_slack (field, field->drawn_at.along))
    snap.at.y = search->guide_y.at.y;
  return snap;
}

/* A line of the sheet gives way to a guide that it lies on. */
static gboolean
keeps_guide (const Search *search, const Nearest *guide, CwLength apart,
             double mm_per_point)
{
  return search->side.kind == CW_SNAP_SHEET_LINE && guide->found
         && ABS (apart) <= sheet_slack (search->field, mm_per_point);
}

static void
put_y_on_side (CwSnap *snap, const Search *search, CwLength y)
{
  if (keeps_guide (search, &search->guide_y, search->guide_y.at.y - y,
                   search->field->drawn_at.along))
    return;
  snap->at.y = y;
  snap->y_kind = search->side.kind;
  snap->y_from = search->on.start;
}

static void
put_x_on_side (CwSnap *snap, const Search *search, CwLength x)
{
  if (keeps_guide (search, &search->guide_x, search->guide_x.at.x - x,
                   search->field->drawn_at.across))
    return;
  snap->at.x = x;
  snap->x_kind = search->side.kind;
  snap->x_from = search->on.start;
}

/* Keeps what the guides found along the side; the side gives the rest. */
static CwSnap
snap_to_side (const Search *search)
{
  CwSnap snap = snap_to_guides (search);
  CwPoint a = search->on.start, b = search->on_end;

  if (search->on.is_arc)
    return snap_to_point (search->side.at, search->side.kind);
  if (a.x == b.x)
    put_x_on_side (&snap, search, a.x);
  else if (a.y == b.y)
    put_y_on_side (&snap, search, a.y);
  else if (snap.x_kind == CW_SNAP_ALIGN_X && is_between (snap.at.x, a.x, b.x))
    put_y_on_side (&snap, search, across (a.x, b.x, a.y, b.y, snap.at.x));
  else if (snap.y_kind == CW_SNAP_ALIGN_Y && is_between (snap.at.y, a.y, b.y))
    put_x_on_side (&snap, search, across (a.y, b.y, a.x, b.x, snap.at.y));
  else
    return snap_to_point (search->side.at, search->side.kind);
  return snap;
}

CwSnap
cw_snap (const CwSnapField *field, CwPoint at)
{
  Search search = { .field = field, .at = at };

  g_return_val_if_fail (field != NULL,
                        snap_to_point (at, CW_SNAP_NONE));

  if (field->radius > 0)
    look_around (&search);
  if (search.corner.found)
    return snap_to_point (search.corner.at, search.corner.kind);
  if (search.drawn.found)
    return snap_to_sheet (&search);
  if (search.middle.found)
    return snap_to_point (search.middle.at, CW_SNAP_MIDDLE);
  if (search.side.found)
    return snap_to_side (&search);
  return snap_to_guides (&search);
}

static gboolean
is_of_note (CwSnapKind kind)
{
  return kind != CW_SNAP_NONE && kind != CW_SNAP_GRID;
}

/* Whether moving by @a is the better choice over @b. */
static gboolean
is_better (CwSnapKind a_kind, CwLength a, CwSnapKind b_kind, CwLength b)
{
  if (is_of_note (a_kind) != is_of_note (b_kind))
    return is_of_note (a_kind);
  return is_of_note (a_kind) && ABS (a) < ABS (b);
}

CwSnap
cw_snap_box (const CwSnapField *field, const CwBox *box, CwPoint *move)
{
  CwPoint corners[] = {
    { box->left, box->bottom },
    { box->right, box->top },
    { box->left, box->top },
    { box->right, box->bottom },
  };
  CwSnap best = cw_snap (field, corners[0]);

  *move = cw_point (best.at.x - corners[0].x, best.at.y - corners[0].y);
  for (guint i = 1; i < G_N_ELEMENTS (corners); i++)
    {
      CwSnap snap = cw_snap (field, corners[i]);
      CwPoint by = { snap.at.x - corners[i].x, snap.at.y - corners[i].y };

      if (is_better (snap.x_kind, by.x, best.x_kind, move->x))
        {
          move->x = by.x;
          best.at.x = snap.at.x;
          best.x_kind = snap.x_kind;
          best.x_from = snap.x_from;
        }
      if (is_better (snap.y_kind, by.y, best.y_kind, move->y))
        {
          move->y = by.y;
          best.at.y = snap.at.y;
          best.y_kind = snap.y_kind;
          best.y_from = snap.y_from;
        }
    }
  return best;
}

CwLength
cw_snap_grid (CwUnits units, double nm_per_pixel)
{
  static const CwLength metric[]
      = { CW_MM (1),  CW_MM (2),  CW_MM (5),  CW_MM (10),
          CW_MM (20), CW_MM (50), CW_MM (100) };
  static const CwLength us[]
      = { CW_NM_PER_INCH / 16, CW_NM_PER_INCH / 8, CW_NM_PER_INCH / 4,
          CW_NM_PER_INCH / 2,  CW_INCHES (1),      CW_INCHES (2),
          CW_INCHES (3) };
  const CwLength *steps = units == CW_UNITS_US ? us : metric;
  CwLength grid = steps[0];

  G_STATIC_ASSERT (G_N_ELEMENTS (us) == G_N_ELEMENTS (metric));
  for (guint i = 1; i < G_N_ELEMENTS (metric); i++)
    if ((double) steps[i] <= nm_per_pixel)
      grid = steps[i];
  return grid;
}

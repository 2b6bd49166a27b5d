/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-snap-private.h"

#include <math.h>

#include "cw-drawn-runs.h"

CwLength
cw_snap_on_grid (CwLength value, CwLength grid)
{
  CwLength rest;

  if (grid <= 0)
    return value;
  rest = ((value % grid) + grid) % grid;
  return value - rest + (2 * rest >= grid ? grid : 0);
}

static CwSnap
snap_to_point (CwPoint at, CwSnapKind kind)
{
  return (CwSnap) { at, kind, kind, at, at };
}

static CwSnap
snap_to_guides (const CwSnapSearch *search)
{
  CwLength grid = search->field->grid;
  CwSnapKind otherwise = grid > 0 ? CW_SNAP_GRID : CW_SNAP_NONE;
  CwSnap snap = snap_to_point (cw_point (cw_snap_on_grid (search->at.x, grid),
                                         cw_snap_on_grid (search->at.y, grid)),
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

/* Whether what the sheet shows is meant to lie on a guide that it is @apart
 * from: drawings are no finer than that. */
static gboolean
is_on_guide (const CwSnapNearest *guide, CwLength apart, double mm_per_point)
{
  return guide->found
         && ABS (apart) <= (CwLength) (CW_DRAWN_REACH * mm_per_point * 1e6);
}

/* A corner that is level or plumb with one of the wall by the sheet is so
 * exactly. */
static CwSnap
snap_to_sheet (const CwSnapSearch *search)
{
  const CwPlacing *placing = &search->field->drawn_at;
  const CwSnapNearest *x = &search->guide_x, *y = &search->guide_y;
  CwSnap snap = snap_to_point (search->drawn.at, search->drawn.kind);

  if (is_on_guide (x, x->at.x - snap.at.x, placing->across))
    snap.at.x = x->at.x;
  if (is_on_guide (y, y->at.y - snap.at.y, placing->along))
    snap.at.y = y->at.y;
  return snap;
}

/* A line of the sheet gives way to a guide that it lies on. */
static gboolean
gives_way (const CwSnapSearch *search, const CwSnapNearest *guide,
           CwLength apart, double mm_per_point)
{
  return search->side.kind == CW_SNAP_SHEET_LINE
         && is_on_guide (guide, apart, mm_per_point);
}

static void
put_y_on_side (CwSnap *snap, const CwSnapSearch *search, CwLength y)
{
  if (gives_way (search, &search->guide_y, search->guide_y.at.y - y,
                 search->field->drawn_at.along))
    return;
  snap->at.y = y;
  snap->y_kind = search->side.kind;
  snap->y_from = search->on.start;
}

static void
put_x_on_side (CwSnap *snap, const CwSnapSearch *search, CwLength x)
{
  if (gives_way (search, &search->guide_x, search->guide_x.at.x - x,
                 search->field->drawn_at.across))
    return;
  snap->at.x = x;
  snap->x_kind = search->side.kind;
  snap->x_from = search->on.start;
}

/* Keeps what the guides found along the side; the side gives the rest. */
static CwSnap
snap_to_side (const CwSnapSearch *search)
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
  CwSnapSearch search = { .field = field, .at = at };

  g_return_val_if_fail (field != NULL,
                        snap_to_point (at, CW_SNAP_NONE));

  if (field->radius > 0)
    cw_snap_look_around (&search);
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
